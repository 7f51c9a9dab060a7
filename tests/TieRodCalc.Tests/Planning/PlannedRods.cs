using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>A random rod with the plan made for it, and what the linear programme says at the plan's recommended cuts.</summary>
internal sealed record PlannedRod(RodCase Rod, RodPlan Plan, PlanReference Reference)
{
    /// <summary>The recommended cuts; zero where the plan has none.</summary>
    public CutPair Recommended { get; } = new(
        Plan.Solution?.InnerCut?.Recommended.Millimeters ?? 0, Plan.Solution?.OuterCut?.Recommended.Millimeters ?? 0);

    /// <summary>Axial lengths reached with the recommended cuts.</summary>
    public Span? AxialRecommended { get; init; }

    /// <summary>The inner insertions that the recommended cuts allow at the target.</summary>
    public Span? InsertionsRecommended { get; init; }

    /// <summary>Least and most cut of the inner end, the outer one cut as recommended.</summary>
    public Span? InnerWindow { get; init; }

    /// <summary>Least and most cut of the outer end, the inner one cut as recommended.</summary>
    public Span? OuterWindow { get; init; }

    /// <summary>The setting that the plan gives at the recommended cuts.</summary>
    public Setting Setting => new(Plan.Solution!.Inner.Insertion.Millimeters, Plan.Solution.Outer!.Insertion.Millimeters);

    public CutAdvice? Advice(RodSide side) => side == RodSide.Inner ? Plan.Solution!.InnerCut : Plan.Solution!.OuterCut;

    public JointPlan JointPlan(RodSide side) => side == RodSide.Inner ? Plan.Solution!.Inner : Plan.Solution!.Outer!;

    public Span? Window(RodSide side) => side == RodSide.Inner ? InnerWindow : OuterWindow;
}

/// <summary>The plans of all random rods, made once for all test classes.</summary>
public sealed class PlannedRods
{
    private static readonly Lazy<IReadOnlyList<PlannedRod>> s_all = new(PlanAll);

    internal IReadOnlyList<PlannedRod> All => s_all.Value;

    internal IEnumerable<PlannedRod> Solved => All.Where(planned => planned.Plan.Solution is not null);

    /// <summary>Plans the rods on all cores; one programme a core, since a solver is not for several at once.</summary>
    private static PlannedRod[] PlanAll()
    {
        PlannedRod[] all = new PlannedRod[RandomCounts.Rods];
        Parallel.For(
            0,
            all.Length,
            () => new LinearProgram(),
            (index, _, program) =>
            {
                all[index] = Planned(RandomRods.Draw(index), program);
                return program;
            },
            program => program.Dispose());
        return all;
    }

    private static PlannedRod Planned(RodCase rod, LinearProgram program)
    {
        PlanReference reference = PlanReference.Of(rod, program);
        PlannedRod planned = new(rod, rod.Plan(), reference);
        if (planned.Plan.Solution is null)
        {
            return planned;
        }

        program.Load(rod, loosenedAll: Math.Min(reference.Loosening, Millimeters.Negligible));
        return planned with
        {
            AxialRecommended = program.AxialSpan(planned.Recommended),
            InsertionsRecommended = program.InnerInsertionSpan(planned.Recommended),
            InnerWindow = program.CutSpan(RodSide.Inner, planned.Recommended.Outer),
            OuterWindow = program.CutSpan(RodSide.Outer, planned.Recommended.Inner),
        };
    }
}
