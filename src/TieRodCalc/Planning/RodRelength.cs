using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>A made-up rod that is to get another length: what is cut off already cannot be put back.</summary>
public sealed record RodRelength
{
    /// <summary>The wanted length.</summary>
    public required Length Wanted { get; init; }

    /// <summary>What is cut off the inner end already; null where that is not known.</summary>
    public required Length? InnerCut { get; init; }

    /// <summary>What is cut off the outer end already; null where that is not known or there is no such thread.</summary>
    public required Length? OuterCut { get; init; }

    /// <summary>Whether a cut was not recorded, and is taken from the rod's plan.</summary>
    public required bool CutsFromPlan { get; init; }

    /// <summary>
    /// The plan of the wanted length with the ends as they are cut, further cuts counted from there; null where the cuts are not
    /// known or leave no thread.
    /// </summary>
    public required RodPlan? AsMade { get; init; }

    /// <summary>The plan of the wanted length with new parts.</summary>
    public required RodPlan NewParts { get; init; }

    /// <summary>Whether the rod that is there can be made so long.</summary>
    public bool Holds => AsMade is { Verdict: not Verdict.NotBuildable, Locking: not Locking.None, GivesWayUnderLoad: false };

    /// <summary>Plans the wanted length.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="request">What was wanted of it when it was made; adjustment and rules are kept.</param>
    /// <param name="built">What was written down as it was made, or null.</param>
    /// <param name="wanted">The wanted length.</param>
    /// <returns>The plan, or null where the parts leave no such length.</returns>
    public static RodRelength? Of(Rod rod, RodRequest request, BuiltReadings? built, Length wanted)
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(request);
        if (!rod.CanHave(wanted - request.Shorter))
        {
            return null;
        }

        RodRequest again = request with { Target = wanted, Steering = null };
        RodPlan first = RodPlanner.Plan(rod, request);
        double? inner = CutOf(rod.Parts.Inner, built?.Inner, first.Solution?.InnerCut, first);
        double? outer = rod.Parts.Outer is { } end ? CutOf(end, built?.Outer, first.Solution?.OuterCut, first) : null;
        bool known = inner is not null && (rod.Parts.Outer is null || outer is not null);
        return new RodRelength
        {
            Wanted = wanted,
            InnerCut = inner is { } one ? Length.FromMillimeters(one) : null,
            OuterCut = outer is { } other ? Length.FromMillimeters(other) : null,
            CutsFromPlan = first.Solution is not null
                && (Planned(rod.Parts.Inner, built?.Inner) || (rod.Parts.Outer is { } far && Planned(far, built?.Outer))),
            AsMade = known && CutRod(rod.Parts, inner!.Value, outer ?? 0) is { } made ? RodPlanner.Plan(made, again) : null,
            NewParts = RodPlanner.Plan(rod, again),
        };
    }

    private static bool Planned(ThreadedEnd end, EndReadings? readings) =>
        readings?.Cut is null && end.MaxCut.Mm > Millimeters.Negligible;

    /// <summary>What was recorded, or planned; zero where the part must not be cut; null where the plan has no answer.</summary>
    private static double? CutOf(ThreadedEnd end, EndReadings? readings, CutAdvice? planned, RodPlan plan) =>
        readings?.Cut is { } cut ? cut.Mm
        : !Planned(end, readings) ? 0
        : plan.Solution is null ? null
        : Millimeters.Of(planned?.Recommended ?? Length.Zero);

    private static Rod? CutRod(RodParts parts, double inner, double outer)
    {
        if (Cut(parts.Inner, inner) is not { } shorter)
        {
            return null;
        }

        RodParts cut = parts with { Inner = shorter };
        if (parts.Outer is { } end)
        {
            if (Cut(end, outer) is not { } shorterOuter)
            {
                return null;
            }

            cut = cut with { Outer = shorterOuter };
        }

        Rod.Make(cut, out Rod? made);
        return made;
    }

    /// <summary>An end with so much cut off its tip, its lead filed again; null where that leaves no thread beyond the lead.</summary>
    private static ThreadedEnd? Cut(ThreadedEnd end, double by) => by <= Millimeters.Negligible ? end
        : end.ThreadLength.Mm - by <= end.LeadMm ? null
        : end with
        {
            CenterToTip = Less(end.CenterToTip, by),
            ThreadLength = Less(end.ThreadLength, by),
            MaxCut = new Measured(Length.FromMillimeters(Math.Max(0, end.MaxCut.Mm - by)), end.MaxCut.PlusMinus),
        };

    private static Measured Less(Measured from, double by) =>
        new(Length.FromMillimeters(from.Mm - by), from.PlusMinus);
}
