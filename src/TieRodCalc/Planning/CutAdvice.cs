using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What to cut off one end. All zero where nothing need be cut.</summary>
/// <param name="Least">The least cut that works, with the least total cut.</param>
/// <param name="Most">The most that still works, the other end at its recommended cut.</param>
/// <param name="Recommended">What to cut.</param>
/// <param name="MarkFromCenter">From the ball center along the thread axis to the cut: center to tip less the cut.</param>
/// <param name="ThreadLeft">Full thread that is left: thread length less the cut.</param>
/// <param name="StraightFromCenter">
/// On a bent end the straight line from ball center to the new tip, <c>sqrt((c - x)^2 + o^2)</c>; null on a straight end.
/// </param>
/// <param name="OnMark">Whether the recommended cut lies on the mark grid; false where no mark lies in the window.</param>
public sealed record CutAdvice(
    Length Least,
    Length Most,
    Length Recommended,
    Length MarkFromCenter,
    Length ThreadLeft,
    Length? StraightFromCenter,
    bool OnMark)
{
    /// <summary>Nothing need be cut.</summary>
    internal static CutAdvice None { get; } = new(Length.Zero, Length.Zero, Length.Zero, Length.Zero, Length.Zero, null, OnMark: true);

    /// <summary>What may still be taken off by mistake: most less recommended.</summary>
    public Length Spare => Most - Recommended;

    /// <summary>Whether anything has to be cut.</summary>
    public bool IsNeeded => Millimeters.Of(Recommended) > 0;
}
