using TieRodCalc.Parts;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>One threaded joint in plain millimeters.</summary>
internal sealed record JointNumbers
{
    public required double CenterToTip { get; init; }

    public required double ThreadLength { get; init; }

    public required double Lead { get; init; }

    public required double Pitch { get; init; }

    /// <summary>+1 right-hand, -1 left-hand.</summary>
    public required int Sign { get; init; }

    public required double Offset { get; init; }

    public required double MostCut { get; init; }

    public required double Nut { get; init; }

    public required double Depth { get; init; }

    public required double Countersink { get; init; }

    public required Bore Bore { get; init; }

    public required double? Witness { get; init; }

    public required double? Clamp { get; init; }

    public required double Required { get; init; }

    public static JointNumbers Of(RodCase rod, JointCase joint) => new()
    {
        CenterToTip = joint.CenterToTip.Mm,
        ThreadLength = joint.ThreadLength.Mm,
        Lead = joint.LeadMm,
        Pitch = joint.Thread.PitchMm,
        Sign = joint.Thread.Sign,
        Offset = joint.Offset.Mm,
        MostCut = joint.MaxCut.Mm,
        Nut = joint.NutMm,
        Depth = joint.Depth.Mm,
        Countersink = joint.CountersinkMm,
        Bore = joint.Bore,
        Witness = joint.Witness?.Mm,
        Clamp = joint.Clamp?.Mm,
        Required = rod.RequiredMm(joint),
    };
}

/// <summary>A rod and what is wanted of it in plain millimeters, to be changed dimension by dimension.</summary>
internal sealed record RodNumbers
{
    public required JointNumbers Inner { get; init; }

    public required JointNumbers Outer { get; init; }

    /// <summary>
    /// The outer end carries the internal thread: <see cref="Sleeve"/> is center to face, and of the outer joint nothing counts.
    /// </summary>
    public required bool OneJoint { get; init; }

    public required double Sleeve { get; init; }

    public required double TipGap { get; init; }

    public required double ClockingRadians { get; init; }

    public required double Target { get; init; }

    public required double Shorter { get; init; }

    public required double Longer { get; init; }

    /// <summary>O^2 where it is not what the two offsets give.</summary>
    public double? OffsetSquaredWithin { get; init; }

    /// <summary>O^2 = o1^2 + o2^2 - 2 o1 o2 cos(clocking); one joint has the inner offset alone.</summary>
    public double OffsetSquared => OffsetSquaredWithin ?? OffsetSquaredOf(Inner.Offset, OneJoint ? 0 : Outer.Offset, ClockingRadians);

    /// <summary>
    /// Change of the inner and of the outer insertion by one millimeter more of axial length, turned by the sleeve alone; by the inner
    /// end where there is one joint. A clockwise turn moves s1 by -h1 P1, s2 by +h2 P2, the axial length by h1 P1 - h2 P2; with one
    /// joint s grows by h P and the axial length falls by h P.
    /// </summary>
    public (double Inner, double Outer) Shares
    {
        get
        {
            double perTurn = Inner.Sign * Inner.Pitch - Outer.Sign * Outer.Pitch;
            return OneJoint ? (-1, 0)
                : !Adjusts ? (0, 0)
                : (-Inner.Sign * Inner.Pitch / perTurn, Outer.Sign * Outer.Pitch / perTurn);
        }
    }

    /// <summary>False with the same hand and the same pitch.</summary>
    public bool Adjusts => OneJoint || Math.Abs(Inner.Sign * Inner.Pitch - Outer.Sign * Outer.Pitch) > 1e-6;

    public static RodNumbers Of(RodCase rod, bool oneJoint = false) => new()
    {
        Inner = JointNumbers.Of(rod, rod.Inner),
        Outer = JointNumbers.Of(rod, rod.Outer),
        OneJoint = oneJoint,
        Sleeve = rod.SleeveLength.Mm,
        TipGap = rod.TipGap.Mm,
        ClockingRadians = (rod.ClockingDegrees ?? 0) * Math.PI / 180,
        Target = rod.Target.Mm,
        Shorter = rod.Shorter.Mm,
        Longer = rod.Longer.Mm,
    };

    public static double OffsetSquaredOf(double inner, double outer, double clocking) =>
        inner * inner + outer * outer - 2 * inner * outer * Math.Cos(clocking);

    public JointNumbers Joint(RodSide side) => side == RodSide.Inner ? Inner : Outer;

    public RodNumbers With(RodSide side, Func<JointNumbers, JointNumbers> change) =>
        side == RodSide.Inner ? this with { Inner = change(Inner) } : this with { Outer = change(Outer) };

    /// <summary>length^2 = axial^2 + O^2.</summary>
    public double Axial(double length) => Math.Sqrt(Math.Max(0, length * length - OffsetSquared));
}
