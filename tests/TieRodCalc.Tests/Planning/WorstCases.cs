using TieRodCalc.Planning;

namespace TieRodCalc.Tests.Planning;

/// <summary>A random rod with tolerances that can be built at its nominal dimensions, its plan, and what all corners say.</summary>
internal sealed record WorstCaseOf(TolerancedRod Rod, RodPlan Plan, WorstCaseReference Reference)
{
    public WorstCase WorstCase => Plan.Solution!.WorstCase;

    /// <summary>The cuts that the plan recommends.</summary>
    public CutPair Planned { get; } = new(
        Plan.Solution?.InnerCut?.Recommended.Millimeters ?? 0, Plan.Solution?.OuterCut?.Recommended.Millimeters ?? 0);

    /// <summary>What the worst corner leaves between the limits with the plan's cuts.</summary>
    public double Margin { get; init; }

    /// <summary>The least total cut that is safe, or null where none is.</summary>
    public CutPair? LeastSafe { get; init; }

    /// <summary>Whether the comparison constant decides if a cut is safe, or if nothing need be cut.</summary>
    public bool IsUndecided { get; init; }
}

/// <summary>The plans of all random rods with tolerances, made once.</summary>
public sealed class WorstCases
{
    private const double Edge = 3e-6;

    private static readonly Lazy<IReadOnlyList<WorstCaseOf>> s_all = new(MakeAll);

    internal IReadOnlyList<WorstCaseOf> All => s_all.Value;

    /// <summary>Draws on until as many were found as are asked for.</summary>
    private static WorstCaseOf[] MakeAll() =>
    [
        .. Enumerable.Range(0, int.MaxValue)
            .Chunk(Math.Min(256, 4 * RandomCounts.TolerancedRods))
            .SelectMany(indices => indices.AsParallel().AsOrdered().Select(Make).ToArray())
            .OfType<WorstCaseOf>()
            .Take(RandomCounts.TolerancedRods),
    ];

    private static WorstCaseOf? Make(int index)
    {
        TolerancedRod rod = RandomTolerances.Draw(index);
        RodPlan plan = RodPlanner.Plan(RodJob.Made(rod.Parts()), rod.Rod.ToRequest());
        if (plan.Solution is null)
        {
            return null;
        }

        WorstCaseOf made = new(rod, plan, new WorstCaseReference(rod));
        double uncut = made.Reference.Margin(default);
        CutPair? strict = made.Reference.LeastSafeCut();
        return made with
        {
            Margin = made.Reference.Margin(made.Planned),
            LeastSafe = strict,
            IsUndecided = Math.Abs(uncut) < Edge || strict is null != made.Reference.LeastSafeCut(2 * Edge) is null,
        };
    }
}
