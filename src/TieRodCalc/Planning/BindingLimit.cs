using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>Where in the wanted adjustment a limit is in the way.</summary>
public enum AdjustmentPoint
{
    /// <summary>At the shortest wanted length.</summary>
    Shortest,

    /// <summary>At the longest wanted length.</summary>
    Longest,

    /// <summary>At every length alike.</summary>
    Any,

    /// <summary>As a made-up rod stands.</summary>
    Present,
}

/// <summary>A limit that is in the way of a rod.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="End">The end that it belongs to, or null where it belongs to both (the tips).</param>
/// <param name="At">Where in the wanted adjustment it is in the way.</param>
/// <param name="MissedBy">
/// By how much the limit, together with the others that contradict the same wish, misses: the least change of any one of
/// them that would lift that contradiction. Along the thread axis.
/// </param>
public sealed record BindingLimit(Limit Limit, RodSide? End, AdjustmentPoint At, Length MissedBy);
