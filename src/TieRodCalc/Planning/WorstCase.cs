using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>
/// What is left of a plan where every dimension may be off by its tolerance, and every cut by one mark. The cuts are fixed then, the
/// setting may be readjusted: a cut is safe where some setting keeps all limits whatever the dimensions are within their tolerances.
/// </summary>
public sealed record WorstCase
{
    /// <summary>Whether nothing need be cut, some cut is safe, or none is.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Whether any dimension of the parts carries a tolerance; where none does, only the saw is counted.</summary>
    public required bool TolerancesStated { get; init; }

    /// <summary>The least total cut that is safe, or null where none is.</summary>
    public required Length? LeastCut { get; init; }

    /// <summary>A safe cut of the inner end, as near to the plan's as one is, or null where no cut is safe.</summary>
    public required Length? InnerCut { get; init; }

    /// <summary>A safe cut of the outer end, or null where no cut is safe.</summary>
    public required Length? OuterCut { get; init; }

    /// <summary>Whether the cuts that the plan recommends are safe.</summary>
    public required bool PlanIsSafe { get; init; }

    /// <summary>
    /// By how much the limit that fails first is kept with the plan's cuts at the worst dimensions, of those limits that a tolerance
    /// can change; below zero it is missed by that. Along the thread axis. Null where no tolerance changes any.
    /// </summary>
    public required Length? Slack { get; init; }

    /// <summary>The dimensions that the plan depends on, the one that matters most first.</summary>
    public required IReadOnlyList<ToleranceEffect> Dimensions { get; init; }
}

/// <summary>What the tolerance of one dimension does to a plan.</summary>
/// <param name="Dimension">Which dimension.</param>
/// <param name="End">Of which end; null where it belongs to the whole rod.</param>
/// <param name="PlusMinus">Its tolerance, each way.</param>
/// <param name="Takes">What that takes from the limit that fails first, along the thread axis.</param>
/// <param name="Needed">
/// How well it must be known, each way, for the plan to hold in the worst case, if all that are named here are measured better by the
/// same share; null where the plan is safe as it is, or where no measuring makes it so.
/// </param>
public sealed record ToleranceEffect(RodDimension Dimension, RodSide? End, Length PlusMinus, Length Takes, Length? Needed);
