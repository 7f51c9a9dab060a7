using TieRodCalc.Parts;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>What is cut off the two ends, in millimeters.</summary>
internal readonly record struct CutPair(double Inner, double Outer)
{
    public double Total => Inner + Outer;

    public double Of(RodSide side) => side == RodSide.Inner ? Inner : Outer;
}

/// <summary>How far the two tips are past the sleeve's faces, in millimeters.</summary>
internal readonly record struct Setting(double Inner, double Outer)
{
    public double Of(RodSide side) => side == RodSide.Inner ? Inner : Outer;
}

/// <summary>A span of millimeters.</summary>
internal readonly record struct Span(double Low, double High)
{
    public double Middle => (Low + High) / 2;

    public double Width => High - Low;
}

/// <summary>What is left to a limit, in millimeters along the thread; below zero where it does not hold.</summary>
internal readonly record struct Slack(Limit Limit, RodSide? End, double Left);

/// <summary>
/// The formulas of a threaded joint as plain sums over a test case, written down for the tests on their own:
/// <c>engaged(s) = max(0, min(d, s - l) - max(m, s - (t - x)))</c>, <c>room(s) = (t - x) - s - n</c>,
/// <c>axial = (c1 - x1) + (c2 - x2) + S - s1 - s2</c>, and the eight limits.
/// </summary>
internal static class LimitTable
{
    public static JointCase Joint(this RodCase rod, RodSide side) => side == RodSide.Inner ? rod.Inner : rod.Outer;

    public static double Engaged(JointCase joint, double s, double x) => Math.Max(
        0,
        Math.Min(joint.Depth.Mm, s - joint.LeadMm) - Math.Max(joint.CountersinkMm, s - (joint.ThreadLength.Mm - x)));

    public static double Room(JointCase joint, double s, double x) => joint.ThreadLength.Mm - x - s - joint.NutMm;

    public static double Axial(RodCase rod, CutPair x, Setting s) =>
        rod.Inner.CenterToTip.Mm - x.Inner + rod.Outer.CenterToTip.Mm - x.Outer + rod.SleeveLength.Mm - s.Inner - s.Outer;

    /// <summary>Where a setting comes to by turning the sleeve: s1 by -h1 P1, s2 by +h2 P2 a clockwise turn.</summary>
    public static Setting Turned(RodCase rod, Setting s, double clockwiseTurns) => new(
        s.Inner - rod.Inner.Thread.Sign * rod.Inner.Thread.PitchMm * clockwiseTurns,
        s.Outer + rod.Outer.Thread.Sign * rod.Outer.Thread.PitchMm * clockwiseTurns);

    /// <summary>Clockwise turns that take the rod from its target to another length; zero where turning does nothing.</summary>
    public static double TurnsTo(RodCase rod, double length) => rod.SleeveAdjusts
        ? (rod.AxialOf(length) - rod.AxialOf(rod.Target.Mm)) / rod.AxialPerTurn
        : 0;

    public static IEnumerable<Slack> Slacks(RodCase rod, CutPair x, Setting s)
    {
        double sleeve = rod.SleeveLength.Mm;
        yield return new Slack(Limit.Tips, null, sleeve - rod.TipGap.Mm - s.Inner - s.Outer);
        foreach (RodSide side in (RodSide[])[RodSide.Inner, RodSide.Outer])
        {
            JointCase joint = rod.Joint(side);
            JointCase other = side == RodSide.Inner ? rod.Outer : rod.Inner;
            double required = rod.RequiredMm(joint);
            double into = s.Of(side);
            yield return new Slack(Limit.Engagement, side, into - joint.LeadMm - joint.CountersinkMm - required);
            yield return new Slack(Limit.Engagement, side, joint.Depth.Mm - joint.CountersinkMm - required);
            yield return new Slack(Limit.NutRoom, side, Room(joint, into, x.Of(side)));
            yield return joint.Bore == Bore.Closed
                ? new Slack(Limit.ClosedBore, side, joint.Depth.Mm - into)
                : new Slack(Limit.FarThread, side, sleeve - other.Depth.Mm - into);
            if (joint.Witness is { } witness)
            {
                yield return new Slack(Limit.Witness, side, into - joint.LeadMm - witness.Mm);
            }

            if (joint.Clamp is { } clamp)
            {
                yield return new Slack(Limit.Clamp, side, into - joint.LeadMm - clamp.Mm);
            }

            yield return new Slack(Limit.Cut, side, joint.MaxCut.Mm - x.Of(side));
        }
    }
}
