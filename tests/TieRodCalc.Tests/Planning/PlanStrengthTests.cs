using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>Strength and loads of the random rods' joints, held against formulas written once more.</summary>
public class PlanStrengthTests(PlannedRods rods) : IClassFixture<PlannedRods>
{
    private const double Relative = 1e-6;

    private static readonly RodSide[] s_sides = [RodSide.Inner, RodSide.Outer];

    [Fact]
    public void Strength_is_what_the_formulas_give_and_governs_often()
    {
        Findings findings = new();
        int governs = 0;
        foreach ((PlannedRod planned, RodSide side) in Ends(rods.All))
        {
            RequiredEngagement required = side == RodSide.Inner ? planned.Plan.InnerRequired : planned.Plan.OuterRequired!;
            StrengthReference? expected = StrengthReference.Of(planned.Rod, planned.Rod.Joint(side));
            Same(findings, planned, $"{side} strength", expected?.RequiredMm, required.Strength?.Required.Millimeters);
            Same(findings, planned, $"{side} J", expected?.J, required.Strength?.StrengthRatio);
            governs += required.GovernedBy == EngagementSource.Strength && planned.Plan.Solution is not null ? 1 : 0;
        }

        findings.AssertNone();
        Assert.InRange(governs, RandomCounts.Rods / 100, int.MaxValue);
    }

    [Fact]
    public void Loads_at_which_a_joint_gives_way_are_those_of_the_least_engagement()
    {
        Findings findings = new();
        Dictionary<GivesWay, int> first = Enum.GetValues<GivesWay>().ToDictionary(way => way, _ => 0);
        foreach ((PlannedRod planned, RodSide side) in Ends(rods.Solved))
        {
            JointCase joint = planned.Rod.Joint(side);
            JointPlan plan = planned.JointPlan(side);
            StrengthReference? expected = StrengthReference.Of(planned.Rod, joint);
            double engaged = plan.EngagedLeast.Millimeters;
            PairLoads? loads = plan.Strength.Loads;
            Same(findings, planned, $"{side} male", expected?.MaleStrip(engaged, joint.TensileMpa!.Value), loads?.MaleStrip.Newtons);
            Same(
                findings,
                planned,
                $"{side} female",
                expected?.FemaleStrip(engaged, planned.Rod.SleeveTensileMpa!.Value),
                loads?.FemaleStrip.Newtons);
            Same(findings, planned, $"{side} breaks", loads?.Tensile.Newtons ?? plan.Strength.Breaks?.Newtons, plan.Strength.Breaks?.Newtons);
            if (loads is not null)
            {
                first[loads.First]++;
                double least = new[] { loads.Tensile, loads.MaleStrip, loads.FemaleStrip }.Min(load => load.Newtons);
                double named = loads.First switch
                {
                    GivesWay.MaleBreaks => loads.Tensile.Newtons,
                    GivesWay.MaleStrips => loads.MaleStrip.Newtons,
                    _ => loads.FemaleStrip.Newtons,
                };
                Same(findings, planned, $"{side} first", least, named);
            }
        }

        findings.AssertNone();

        // What is required keeps the threads from stripping first.
        Assert.Equal(0, first[GivesWay.MaleStrips] + first[GivesWay.FemaleStrips]);
        Assert.InRange(first[GivesWay.MaleBreaks], RandomCounts.Rods / 100, int.MaxValue);
    }

    /// <summary>
    /// The line of force from ball to ball, as points in space: axes of the threads along x, the inner ball off by its offset along y,
    /// the outer one by its own at the clocking angle.
    /// </summary>
    [Fact]
    public void Stress_under_the_load_counts_how_far_the_line_of_the_balls_passes_from_the_axis()
    {
        Findings findings = new();
        int overloaded = 0;
        foreach ((PlannedRod planned, RodSide side) in Ends(rods.Solved))
        {
            JointCase joint = planned.Rod.Joint(side);
            JointLoad? load = planned.JointPlan(side).Strength.Load;
            if (planned.Rod.LoadNewtons is not { } newtons)
            {
                findings.That(planned.Rod, "no load", load is null);
                continue;
            }

            double cut = planned.Recommended.Of(side);
            double arm = Math.Max(joint.Offset.Mm, LineOff(planned, side, joint.CenterToTip.Mm - cut - planned.Setting.Of(side)));
            double area = joint.Thread.Unified
                ? Math.PI / 4 * Math.Pow(joint.Thread.DiameterMm - 0.9743 * joint.Thread.PitchMm, 2)
                : Math.PI / 4 * Math.Pow(joint.Thread.DiameterMm - 0.9381941874 * joint.Thread.PitchMm, 2);
            double shank = Math.Sqrt(4 * area / Math.PI);
            double axial = newtons / area;
            double bending = 32 * newtons * arm / (Math.PI * Math.Pow(shank, 3));
            Same(findings, planned, $"{side} arm", arm, load!.Arm.Millimeters);
            Same(findings, planned, $"{side} axial", axial, load.Axial.Megapascals);
            Same(findings, planned, $"{side} bending", bending, load.Bending.Megapascals);
            double? factor = joint.TensileMpa / (axial + bending);
            if (StrengthReference.Of(planned.Rod, joint) is { } strength)
            {
                factor = Math.Min(factor!.Value, joint.TensileMpa!.Value * strength.TensileArea * 645.16 / newtons);
                Same(findings, planned, $"{side} breaking", factor, load.BreakingFactor);
                Same(findings, planned, $"{side} strip", planned.JointPlan(side).Strength.Loads!.MaleStrip.Newtons / newtons, load.MaleStripFactor);
                Same(findings, planned, $"{side} strip", planned.JointPlan(side).Strength.Loads!.FemaleStrip.Newtons / newtons, load.FemaleStripFactor);
            }

            bool gives = load.LeastFactor < 1;
            overloaded += gives ? 1 : 0;
            findings.That(
                planned.Rod,
                $"{side} gives way",
                planned.Plan.Warnings.Any(warning => warning.Code == WarningCode.GivesWayUnderLoad && warning.End == side) == gives);
            findings.That(planned.Rod, "plan gives way", !gives || planned.Plan.GivesWayUnderLoad);
        }

        findings.AssertNone();
        Assert.InRange(overloaded, RandomCounts.Rods / 100, int.MaxValue);
    }

    [Fact]
    public void What_is_missing_for_a_strength_is_told()
    {
        Findings findings = new();
        foreach ((PlannedRod planned, RodSide side) in Ends(rods.All))
        {
            MissingStrength missing = (planned.Rod.Joint(side).TensileMpa is null ? MissingStrength.End : 0)
                | (planned.Rod.SleeveTensileMpa is null ? MissingStrength.Sleeve : 0);
            PlanWarning? told = planned.Plan.Warnings.SingleOrDefault(
                warning => warning.Code == WarningCode.StrengthNotChecked && warning.End == side);
            findings.That(planned.Rod, $"{side} missing {missing}", (told?.Missing ?? MissingStrength.None) == missing);
            bool load = planned.Plan.Warnings.Any(warning => warning.Code == WarningCode.LoadNotChecked && warning.End == side);
            findings.That(
                planned.Rod, $"{side} load", load == (missing != MissingStrength.None && planned.Rod.LoadNewtons is not null));
            bool slit = planned.Plan.Warnings.Any(warning => warning.Code == WarningCode.SleeveSlit && warning.End == side);
            findings.That(
                planned.Rod, $"{side} slit", slit == (missing == MissingStrength.None && planned.Rod.Joint(side).Clamp is not null));
        }

        findings.AssertNone();
    }

    private static IEnumerable<(PlannedRod Planned, RodSide Side)> Ends(IEnumerable<PlannedRod> planned) =>
        planned.SelectMany(one => s_sides.Select(side => (one, side)));

    private static double LineOff(PlannedRod planned, RodSide side, double fromBall)
    {
        double clocking = (planned.Rod.ClockingDegrees ?? 0) * Math.PI / 180;
        (double Y, double Z) inner = (planned.Rod.Inner.Offset.Mm, 0);
        double outerOffset = planned.Rod.Outer.Offset.Mm;
        (double Y, double Z) outer = (outerOffset * Math.Cos(clocking), outerOffset * Math.Sin(clocking));
        double length = planned.Rod.AxialOf(planned.Rod.Target.Mm);
        double x = side == RodSide.Inner ? fromBall : length - fromBall;
        double share = x / length;
        return Math.Sqrt(
            Math.Pow(inner.Y + (outer.Y - inner.Y) * share, 2) + Math.Pow(inner.Z + (outer.Z - inner.Z) * share, 2));
    }

    private static void Same(Findings findings, PlannedRod planned, string what, double? expected, double? actual)
    {
        bool same = expected is { } one && actual is { } other
            ? Math.Abs(one - other) <= Relative * Math.Max(1, Math.Abs(one))
            : expected is null && actual is null;
        findings.That(planned.Rod, $"{what}: {expected} and {actual}", same);
    }
}
