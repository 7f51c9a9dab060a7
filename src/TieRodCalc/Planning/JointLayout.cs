using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>
/// Where everything of one threaded joint lies: places along the thread axis, measured from the inner ball center toward the outer
/// one. Of a bent end the ball center counts where it stands square beside the axis.
/// </summary>
public sealed record JointLayout
{
    /// <summary>The end that the joint belongs to.</summary>
    public required RodSide Side { get; init; }

    /// <summary>The ball center of the end.</summary>
    public required Length Ball { get; init; }

    /// <summary>Where the full thread of the end begins, next to the shank.</summary>
    public required Length ThreadStart { get; init; }

    /// <summary>Where the full thread ends and the lead begins.</summary>
    public required Length Lead { get; init; }

    /// <summary>The tip, after the cut.</summary>
    public required Length Tip { get; init; }

    /// <summary>Where the tip would be without the cut.</summary>
    public required Length UncutTip { get; init; }

    /// <summary>The face of the internal thread.</summary>
    public required Length Face { get; init; }

    /// <summary>Where the countersink of the internal thread ends.</summary>
    public required Length Mouth { get; init; }

    /// <summary>Where the full internal thread ends.</summary>
    public required Length HoleEnd { get; init; }

    /// <summary>How far the tip must reach at least for the required engagement.</summary>
    public required Length NeededTip { get; init; }

    /// <summary>The face of the jam nut that looks to the ball, the nut tight on the sleeve; null where there is no nut.</summary>
    public required Length? Nut { get; init; }

    /// <summary>The far edge of the witness hole, or null.</summary>
    public required Length? Witness { get; init; }

    /// <summary>The inner edge of the clamp, or null.</summary>
    public required Length? Clamp { get; init; }

    /// <summary>Full-form thread on full-form thread; null where none is engaged.</summary>
    public required LengthSpan? Engaged { get; init; }

    /// <summary>Places of a joint at a setting.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="rod">Their dimensions.</param>
    /// <param name="side">Which joint.</param>
    /// <param name="setting">Insertions and cuts.</param>
    /// <param name="axial">Axial length of the rod at that setting.</param>
    internal static JointLayout Of(RodParts parts, in RodDimensions rod, RodSide side, Setting setting, double axial)
    {
        JointDimensions joint = rod[side];
        TappedHole hole = parts.HoleAt(side);
        double cut = setting.Cuts[side];
        double tip = joint.CenterToTip - cut;
        double start = joint.CenterToTip - joint.ThreadLength;
        double face = tip - setting[side];
        double engaged = joint.Engaged(setting[side], cut);
        double engagedTo = Math.Min(face + joint.Depth, tip - joint.Lead);

        // Places are counted from the end's own ball; those of the outer end run the other way.
        Length At(double fromBall) => Length.FromMillimeters(side == RodSide.Inner ? fromBall : axial - fromBall);
        return new JointLayout
        {
            Side = side,
            Ball = At(0),
            ThreadStart = At(start),
            Lead = At(tip - joint.Lead),
            Tip = At(tip),
            UncutTip = At(joint.CenterToTip),
            Face = At(face),
            Mouth = At(face + joint.Mouth),
            HoleEnd = At(face + joint.Depth),
            NeededTip = At(face + joint.Mouth + joint.Required + joint.Lead),
            Nut = parts.NutAt(side) is null ? null : At(face - joint.Nut),
            Witness = hole.Witness is { } witness ? At(face + witness.Mm) : null,
            Clamp = hole.Clamp is { } clamp ? At(face + clamp.Mm) : null,
            Engaged = engaged > 0 ? Ordered(At(engagedTo - engaged), At(engagedTo)) : null,
        };
    }

    /// <summary>The span between two places, whichever comes first.</summary>
    internal static LengthSpan Ordered(Length one, Length other) => one <= other ? new(one, other) : new(other, one);
}
