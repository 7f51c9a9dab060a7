using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>What the linear programme says about a rod, before any cut is chosen.</summary>
internal sealed record PlanReference
{
    /// <summary>By how much all limits must be loosened to hold without a cut; zero where they hold.</summary>
    public required double LooseningUncut { get; init; }

    /// <summary>The same with the best cut that the parts allow.</summary>
    public required double Loosening { get; init; }

    /// <summary>The least cut with the most of it from the inner end; null where no cut works.</summary>
    public required CutPair? LeastCut { get; init; }

    /// <summary>The limits that press on the least total cut.</summary>
    public required IReadOnlyList<Limit> Pressing { get; init; }

    /// <summary>Axial lengths that the uncut parts reach, the adjustment not reserved; null where no setting exists.</summary>
    public required Span? UncutAxial { get; init; }

    /// <summary>The inner insertions that the least cut allows at the target.</summary>
    public required Span? LeastCutInsertions { get; init; }

    public static PlanReference Of(RodCase rod, LinearProgram program)
    {
        bool ruledOut = rod.WantsAdjustment && !rod.SleeveAdjusts;
        program.Load(rod);
        Span? uncut = program.AxialSpan(default);
        double looseningUncut = ruledOut ? double.PositiveInfinity : program.LeastLoosening(default(CutPair));
        double loosening = ruledOut ? double.PositiveInfinity : program.LeastLoosening(null);
        (CutPair Cut, IReadOnlyList<Limit> Pressing)? least = null;
        Span? insertions = null;
        if (loosening <= Millimeters.Negligible)
        {
            program.Load(rod, loosenedAll: loosening);
            least = program.LeastCut();
            insertions = program.InnerInsertionSpan(least!.Value.Cut);
        }

        return new PlanReference
        {
            LooseningUncut = looseningUncut,
            Loosening = loosening,
            LeastCut = least?.Cut,
            Pressing = least?.Pressing ?? [],
            UncutAxial = uncut,
            LeastCutInsertions = insertions,
        };
    }
}
