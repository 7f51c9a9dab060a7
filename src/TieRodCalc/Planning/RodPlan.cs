using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What came of planning a rod.</summary>
public sealed record RodPlan
{
    /// <summary>Whether the rod can be made.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Which joints are locked.</summary>
    public required Locking Locking { get; init; }

    /// <summary>Wanted length, center to center.</summary>
    public required Length Target { get; init; }

    /// <summary>The axial length of a rod of the wanted length.</summary>
    public required Length Axial { get; init; }

    /// <summary>Reach of the uncut parts, or null where their limits leave no setting at all.</summary>
    public required LengthSpan? UncutReach { get; init; }

    /// <summary>The engagement that the inner joint is required to have.</summary>
    public required RequiredEngagement InnerRequired { get; init; }

    /// <summary>The engagement that the outer joint is required to have, or null where there is one joint only.</summary>
    public required RequiredEngagement? OuterRequired { get; init; }

    /// <summary>True where a joint is known to give way under the load that the job gives.</summary>
    public bool GivesWayUnderLoad => Solution is { } made && (GivesWay(made.Inner) || GivesWay(made.Outer));

    /// <summary>How the rod is made and set, or null where it cannot be built.</summary>
    public required RodSolution? Solution { get; init; }

    /// <summary>The limits in the way, greatest miss first; empty where the rod can be built.</summary>
    public required IReadOnlyList<BindingLimit> Binding { get; init; }

    /// <summary>
    /// True where the rod cannot be built, but could be if the parts allowed more to be cut; false where no cut helps.
    /// </summary>
    public required bool MoreCutWouldHelp { get; init; }

    /// <summary>Warnings, and what was not checked.</summary>
    public required IReadOnlyList<PlanWarning> Warnings { get; init; }

    private static bool GivesWay(JointPlan? joint) => joint?.Strength.Load?.LeastFactor < 1;
}
