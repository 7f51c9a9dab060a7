using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>The moves of a rod's joints that make the toe change least.</summary>
/// <param name="Moves">The moves.</param>
/// <param name="Corner">The corner with them.</param>
public sealed record CornerBest(JointMoves Moves, CornerGeometry Corner);

/// <summary>Finds the moves of a rod's joints that make the toe change of a corner least, exactly and not by two terms.</summary>
public static class CornerOptimum
{
    private const int Intervals = 24;

    /// <summary>
    /// Least squares of the toe change from ride height at even steps of travel, within limits of the moves (Levenberg and
    /// Marquardt's steps, with the moves at a limit that they push against held there).
    /// </summary>
    /// <param name="corner">The corner.</param>
    /// <param name="droop">The travel below ride height that counts, zero or more.</param>
    /// <param name="bump">The travel above ride height that counts, zero or more; one of the two above zero.</param>
    /// <param name="limits">How far the joints may be moved.</param>
    /// <returns>The best moves, or null where the corner does not reach the travel as it stands.</returns>
    /// <exception cref="ArgumentException">A length is negative or not finite.</exception>
    public static CornerBest? Find(CornerGeometry corner, Length droop, Length bump, MoveLimits limits)
    {
        ArgumentNullException.ThrowIfNull(corner);
        ArgumentNullException.ThrowIfNull(limits);
        MoveSearch search = new(
            corner,
            TravelGrid(Millimeters.NotNegative(droop, nameof(droop)), Millimeters.NotNegative(bump, nameof(bump))),
            [Range(limits.Outer), Range(limits.Inner), Range(limits.Rod)]);
        return search.Best() is { } moves && corner.Moved(moves) is { } moved ? new CornerBest(moves, moved) : null;
    }

    /// <summary>The travels at which the toe change counts, ride height left out.</summary>
    internal static double[] TravelGrid(double droop, double bump) =>
    [
        .. Enumerable.Range(0, Intervals + 1)
            .Select(step => -droop + step * (droop + bump) / Intervals)
            .Where(travel => Math.Abs(travel) > Millimeters.Negligible),
    ];

    private static (double Least, double Most) Range(MoveRange range) =>
        (-Millimeters.NotNegative(range.Less, nameof(range)), Millimeters.NotNegative(range.More, nameof(range)));
}
