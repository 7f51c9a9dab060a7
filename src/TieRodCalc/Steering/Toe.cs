using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>Whether a question about toe has a finite answer.</summary>
public enum ToeOutcome
{
    /// <summary>It has.</summary>
    Reached,

    /// <summary>No angle of the wheel reaches it; the answer says what is reachable.</summary>
    OutOfReach,

    /// <summary>The rod is in line with the steer axis: no finite answer.</summary>
    InLine,
}

/// <summary>The toe that a rod length gives.</summary>
/// <param name="Outcome">Whether there is an answer.</param>
/// <param name="Toe">
/// Toe-in positive; null where there is no answer. At the geometry's own rod length it is zero, or what was given.
/// </param>
/// <param name="Shortest">Shortest rod that an angle of the wheel reaches.</param>
/// <param name="Longest">Longest rod that an angle of the wheel reaches.</param>
public readonly record struct ToeAnswer(ToeOutcome Outcome, Angle? Toe, Length Shortest, Length Longest);

/// <summary>The rod length that gives a toe.</summary>
/// <param name="Outcome">Whether there is an answer.</param>
/// <param name="Length">The rod length, or null where there is no answer.</param>
/// <param name="Shortest">Shortest rod that an angle of the wheel reaches.</param>
/// <param name="Longest">Longest rod that an angle of the wheel reaches.</param>
public readonly record struct RodLengthAnswer(ToeOutcome Outcome, Length? Length, Length Shortest, Length Longest);

/// <summary>Toe of a wheel and length of its rod, each from the other, exactly (not for small angles alone).</summary>
public static class Toe
{
    /// <summary>The toe that a rod of a length gives.</summary>
    /// <param name="geometry">The wheel.</param>
    /// <param name="length">Length of the rod, ball center to ball center.</param>
    public static ToeAnswer FromLength(SteeringGeometry geometry, Length length)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        double turn = geometry.InLine ? double.NaN : geometry.TurnFor(Millimeters.Of(length));
        bool reached = double.IsFinite(turn);
        return new ToeAnswer(
            Outcome(geometry, reached), reached ? Angle.FromRadians(geometry.ToeAfter(turn)) : null, Shortest(geometry), Longest(geometry));
    }

    /// <summary>The length of the rod that gives a toe.</summary>
    /// <param name="geometry">The wheel.</param>
    /// <param name="toe">Toe, toe-in positive; at the geometry's own rod length it is zero, or what was given.</param>
    public static RodLengthAnswer LengthFor(SteeringGeometry geometry, Angle toe)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        double turn = geometry.InLine ? double.NaN : geometry.TurnForToe(toe.Radians);
        (double length, bool within) = double.IsFinite(turn) ? geometry.LengthAt(turn) : default;
        return new RodLengthAnswer(
            Outcome(geometry, within), within ? Length.FromMillimeters(length) : null, Shortest(geometry), Longest(geometry));
    }

    /// <summary>What a toe of one wheel comes to at toe plates: <c>W sin(toe)</c>, behind less in front.</summary>
    /// <param name="toe">Toe of the wheel.</param>
    /// <param name="plates">Width <c>W</c> of the plates.</param>
    public static Length AtPlates(Angle toe, Length plates) =>
        Length.FromMillimeters(Millimeters.Of(plates) * Math.Sin(toe.Radians));

    private static ToeOutcome Outcome(SteeringGeometry geometry, bool reached) =>
        reached ? ToeOutcome.Reached : geometry.InLine ? ToeOutcome.InLine : ToeOutcome.OutOfReach;

    private static Length Shortest(SteeringGeometry geometry) => Length.FromMillimeters(geometry.ShortestMm);

    private static Length Longest(SteeringGeometry geometry) => Length.FromMillimeters(geometry.LongestMm);
}
