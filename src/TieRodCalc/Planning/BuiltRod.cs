using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What measurements say of a made-up rod.</summary>
public sealed record BuiltRod
{
    /// <summary>
    /// Whether all limits hold at the present setting and over the whole wanted adjustment, reached from there by the sleeve alone;
    /// not checked where the measurements do not suffice.
    /// </summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Which joints are locked.</summary>
    public required Locking Locking { get; init; }

    /// <summary>
    /// Length, ball center to ball center: as measured, or else as it follows from the thread showing; null where neither is known.
    /// </summary>
    public required Length? Present { get; init; }

    /// <summary>The inner joint.</summary>
    public required BuiltJoint Inner { get; init; }

    /// <summary>The outer joint, or null where there is one joint only.</summary>
    public required BuiltJoint? Outer { get; init; }

    /// <summary>Measurements that do not go together, by more than their tolerances.</summary>
    public required IReadOnlyList<Contradiction> Contradictions { get; init; }

    /// <summary>The limits that are missed.</summary>
    public required IReadOnlyList<BindingLimit> Binding { get; init; }

    /// <summary>Adjustment toward shorter from the present setting, or null where that is not known.</summary>
    public required Travel? Shorter { get; init; }

    /// <summary>Adjustment toward longer from the present setting, or null where that is not known.</summary>
    public required Travel? Longer { get; init; }

    /// <summary>How the same rod is made of new parts, or null where not enough is known or it is past a limit as it stands.</summary>
    public required SpareRod? Spare { get; init; }

    /// <summary>What was assumed of the parts, and what was not checked.</summary>
    public required IReadOnlyList<PlanWarning> Warnings { get; init; }

    /// <summary>The readings, with what follows from them filled in.</summary>
    public required BuiltReadings Readings { get; init; }
}

/// <summary>One joint of a made-up rod; null what is not known.</summary>
public sealed record BuiltJoint
{
    /// <summary>Thread outside the face.</summary>
    public required Length? Showing { get; init; }

    /// <summary>What was cut off the tip.</summary>
    public required Length? Cut { get; init; }

    /// <summary>How far the tip is past the face.</summary>
    public required Length? Insertion { get; init; }

    /// <summary>
    /// The same over every cut that the part allows; where the cut is known, over the tolerances that are stated of thread, reading
    /// and cut.
    /// </summary>
    public required LengthSpan? InsertionSpan { get; init; }

    /// <summary>Full-form thread on full-form thread.</summary>
    public required Length? Engaged { get; init; }

    /// <summary>The same, as <see cref="InsertionSpan"/>.</summary>
    public required LengthSpan? EngagedSpan { get; init; }

    /// <summary>The least engagement over the wanted adjustment.</summary>
    public required Length? EngagedLeast { get; init; }

    /// <summary>The engagement that is required.</summary>
    public required RequiredEngagement Required { get; init; }

    /// <summary>Thread left outside the nut; it does not depend on the cut.</summary>
    public required Length? NutRoom { get; init; }

    /// <summary>The least thread left outside the nut over the wanted adjustment.</summary>
    public required Length? NutRoomLeast { get; init; }
}

/// <summary>What contradicts what.</summary>
public enum ContradictionKind
{
    /// <summary>Center to center is not what the parts and the thread showing add up to.</summary>
    Length,

    /// <summary>Thread showing, cut and depth of one end do not add up to its thread.</summary>
    End,

    /// <summary>More thread shows than the end has left.</summary>
    Showing,

    /// <summary>The tip would be deeper in a closed bore than it can be.</summary>
    Bore,
}

/// <summary>Measurements that do not go together.</summary>
/// <param name="Kind">What contradicts what.</param>
/// <param name="End">At which end, or null.</param>
/// <param name="MissedBy">By how much they miss each other beyond the tolerances that are stated.</param>
public sealed record Contradiction(ContradictionKind Kind, RodSide? End, Length MissedBy);

/// <summary>How a rod like one that was measured is made of new parts that are not cut yet.</summary>
/// <param name="Length">Its length, ball center to ball center.</param>
/// <param name="Inner">The inner end.</param>
/// <param name="Outer">The outer end, or null where there is one joint only.</param>
/// <param name="Start">How to start the threads.</param>
public sealed record SpareRod(Length Length, SpareEnd Inner, SpareEnd? Outer, StartProcedure Start);

/// <summary>One end of a spare.</summary>
/// <param name="Cut">What to cut off the tip of a new one.</param>
/// <param name="MarkFromCenter">From the ball center along the thread axis to the cut.</param>
/// <param name="StraightFromCenter">On a bent end the straight line from ball center to the new tip; null on a straight end.</param>
/// <param name="ThreadLeft">Full thread that is left.</param>
/// <param name="Insertion">How far the tip goes past the face.</param>
/// <param name="Showing">Thread that shows then.</param>
public sealed record SpareEnd(
    Length Cut, Length MarkFromCenter, Length? StraightFromCenter, Length ThreadLeft, Length Insertion, Length Showing);
