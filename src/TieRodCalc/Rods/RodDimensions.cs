using System.Diagnostics.CodeAnalysis;
using TieRodCalc.Parts;
using TieRodCalc.Threads;

namespace TieRodCalc.Rods;

/// <summary>The dimensions of a rod in millimeters: two joints on one sleeve.</summary>
internal readonly record struct RodDimensions
{
    private readonly JointDimensions _inner;
    private readonly JointDimensions _outer;

    /// <summary>The joint at the inner end.</summary>
    public required JointDimensions Inner
    {
        get => _inner;
        init => _inner = value;
    }

    /// <summary>The joint at the outer end.</summary>
    public required JointDimensions Outer
    {
        get => _outer;
        init => _outer = value;
    }

    /// <summary>Length of the sleeve, <c>S</c>.</summary>
    public required double Sleeve { get; init; }

    /// <summary>Least distance between the tips.</summary>
    public required double TipGap { get; init; }

    /// <summary>Distance of the ball centers at axial length zero, <c>O</c>.</summary>
    public required double Offset { get; init; }

    /// <summary>
    /// True for a rod with one threaded joint: its outer end is a sleeve that ends in the ball center, where a joint without thread
    /// stands still. There are no two tips to meet.
    /// </summary>
    public bool OneJoint { get; init; }

    /// <summary>The nominal dimensions of a rod.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="innerRequired">Required engagement of the inner joint.</param>
    /// <param name="outerRequired">Required engagement of the outer joint, where there is one.</param>
    /// <param name="tipGap">Least distance between the tips, where there are two.</param>
    public static RodDimensions Nominal(RodParts parts, double innerRequired, double outerRequired, double tipGap) => new()
    {
        Inner = Joint(parts, RodSide.Inner, innerRequired),
        Outer = parts.OneJoint
            ? default(JointDimensions) with { ClosedBore = true }
            : Joint(parts, RodSide.Outer, outerRequired),
        Sleeve = parts.Sleeve?.Length.Mm ?? parts.Socket!.CenterToFace.Mm,
        TipGap = parts.OneJoint ? double.NegativeInfinity : tipGap,
        Offset = Rod.OffsetMm(parts),
        OneJoint = parts.OneJoint,
    };

    /// <summary>The joint at an end, in its place: a joint is large, and its numbers are asked for again and again.</summary>
    [UnscopedRef]
    public ref readonly JointDimensions this[RodSide side] => ref (side == RodSide.Inner ? ref _inner : ref _outer);

    /// <summary>The same rod with another joint at one end.</summary>
    public RodDimensions With(RodSide side, JointDimensions joint) =>
        side == RodSide.Inner ? this with { Inner = joint } : this with { Outer = joint };

    /// <summary>Axial length with nothing inserted and nothing cut: <c>c1 + c2 + S</c>.</summary>
    public double Stretched => _inner.CenterToTip + _outer.CenterToTip + Sleeve;

    /// <summary>The most insertion that the sleeve allows one end, at any cut.</summary>
    public Bound Deepest(RodSide side) => this[side].ClosedBore
        ? new(this[side].Depth, Limit.ClosedBore)
        : new(Sleeve - this[Other(side)].Depth, Limit.FarThread);

    /// <summary>Length from ball center to ball center: <c>sqrt(axial^2 + O^2)</c>.</summary>
    public double Length(double axial) => Math.Sqrt(axial * axial + Offset * Offset);

    /// <summary>Axial length of a rod of a length, zero where the length is not above <c>O</c>.</summary>
    public double Axial(double length) => Math.Sqrt(Math.Max(0, (length - Offset) * (length + Offset)));

    /// <summary>The same rod of parts that may be cut without end.</summary>
    public RodDimensions CutFreely() => this with
    {
        Inner = Inner with { MostCut = double.PositiveInfinity },
        Outer = Outer with { MostCut = double.PositiveInfinity },
    };

    public static RodSide Other(RodSide side) => side == RodSide.Inner ? RodSide.Outer : RodSide.Inner;

    private static JointDimensions Joint(RodParts parts, RodSide side, double required)
    {
        ThreadedEnd end = parts.EndAt(side);
        TappedHole hole = parts.HoleAt(side);
        return new()
        {
            CenterToTip = end.CenterToTip.Mm,
            ThreadLength = end.ThreadLength.Mm,
            Lead = end.LeadMm,
            Pitch = end.Thread.Size.PitchMm,
            Hand = end.Thread.Hand == Hand.Right ? 1 : -1,
            Depth = hole.Depth.Mm,
            Mouth = hole.CountersinkMm,

            // How far a socket is open beyond its thread is not known: the ball's housing is somewhere there.
            ClosedBore = parts.OneJoint || hole.Bore == Bore.Closed,
            Nut = parts.NutAt(side)?.Thickness.Mm ?? 0,
            Required = required,
            Witness = hole.Witness?.Mm ?? 0,
            Clamp = hole.Clamp?.Mm ?? 0,
            MostCut = end.MaxCut.Mm,
        };
    }
}
