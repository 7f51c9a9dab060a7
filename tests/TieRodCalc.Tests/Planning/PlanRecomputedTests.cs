using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>The figures of a plan at its setting, recomputed from the parts by the formulas.</summary>
public class PlanRecomputedTests(PlannedRods rods) : IClassFixture<PlannedRods>
{
    private const double Tolerance = 1e-6;

    /// <summary>Places over the wanted adjustment at which the limits are recomputed, both ends of it among them.</summary>
    private const int Places = 9;

    private static readonly RodSide[] s_sides = [RodSide.Inner, RodSide.Outer];

    [Fact]
    public void Joints_agree_with_the_formulas_at_the_setting_and_over_the_adjustment()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            Setting[] along = [.. Along(planned)];
            foreach (RodSide side in s_sides)
            {
                JointCase joint = planned.Rod.Joint(side);
                JointPlan plan = planned.JointPlan(side);
                double x = planned.Recommended.Of(side);
                double s = planned.Setting.Of(side);
                findings.Near(planned.Rod, $"{side} showing", joint.ThreadLength.Mm - x - s, plan.Showing, Tolerance);
                findings.Near(planned.Rod, $"{side} engaged", LimitTable.Engaged(joint, s, x), plan.Engaged, Tolerance);
                findings.Near(planned.Rod, $"{side} room", LimitTable.Room(joint, s, x), plan.NutRoom, Tolerance);
                findings.Near(
                    planned.Rod,
                    $"{side} least engaged",
                    along.Min(at => LimitTable.Engaged(joint, at.Of(side), x)),
                    plan.EngagedLeast,
                    Tolerance);
                findings.Near(
                    planned.Rod,
                    $"{side} least room",
                    along.Min(at => LimitTable.Room(joint, at.Of(side), x)),
                    plan.NutRoomLeast,
                    Tolerance);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Required_engagement_is_what_the_rule_says_and_names_what_governs()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            foreach (RodSide side in s_sides)
            {
                RequiredEngagement required = planned.JointPlan(side).Required;
                JointCase joint = planned.Rod.Joint(side);
                double expected = planned.Rod.RequiredMm(joint);
                EngagementSource governs = expected > planned.Rod.AskedMm(joint) ? EngagementSource.Strength
                    : planned.Rod.Engagement?.Length is null ? EngagementSource.Rule
                    : EngagementSource.Job;
                findings.Near(planned.Rod, $"{side} required", expected, required.Required, Tolerance);
                findings.That(planned.Rod, $"{side} governed by {required.GovernedBy}", governs == required.GovernedBy);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Every_limit_holds_over_the_whole_adjustment_at_the_recommended_cut()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            foreach (Setting at in Along(planned))
            {
                foreach (Slack slack in LimitTable.Slacks(planned.Rod, planned.Recommended, at))
                {
                    // One millionth for the comparison constant, and a hundredth of it for the sums.
                    findings.That(
                        planned.Rod, $"{slack.Limit} {slack.End} misses by {-slack.Left}", slack.Left >= -1.01 * Millimeters.Negligible);
                }
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Settings_over_the_adjustment_give_the_lengths_that_were_wanted()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            double[] lengths =
                [.. Along(planned).Select(at => planned.Rod.LengthOf(LimitTable.Axial(planned.Rod, planned.Recommended, at)))];
            double shorter = planned.Rod.SleeveAdjusts ? planned.Rod.Shorter.Mm : 0;
            double longer = planned.Rod.SleeveAdjusts ? planned.Rod.Longer.Mm : 0;
            findings.Near(planned.Rod, "shortest", planned.Rod.Target.Mm - shorter, lengths[0], Tolerance);
            findings.Near(planned.Rod, "longest", planned.Rod.Target.Mm + longer, lengths[^1], Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Available_adjustment_ends_where_a_limit_ends_it()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            Check(findings, planned, "shorter", -1, planned.Plan.Solution!.Shorter);
            Check(findings, planned, "longer", 1, planned.Plan.Solution.Longer);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Available_adjustment_covers_the_wanted_one()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved.Where(planned => planned.Rod.SleeveAdjusts))
        {
            RodSolution solution = planned.Plan.Solution!;
            findings.That(planned.Rod, "shorter", solution.Shorter.Length.Millimeters >= planned.Rod.Shorter.Mm - Tolerance);
            findings.That(planned.Rod, "longer", solution.Longer.Length.Millimeters >= planned.Rod.Longer.Mm - Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_witness_hole_proves_the_thread_from_the_countersink_to_its_far_edge()
    {
        Findings findings = new();
        int holes = 0;
        foreach ((PlannedRod planned, RodSide side) in rods.Solved.SelectMany(planned => s_sides.Select(side => (planned, side))))
        {
            JointCase joint = planned.Rod.Joint(side);
            JointPlan plan = planned.JointPlan(side);
            findings.That(planned.Rod, $"{side} witness", plan.WitnessProves is null == joint.Witness is null);
            if (joint.Witness is { } witness && plan.WitnessProves is { } proved)
            {
                holes++;
                double expected = Math.Max(0, Math.Min(joint.Depth.Mm, witness.Mm) - joint.CountersinkMm);
                findings.Near(planned.Rod, $"{side} witness proves", expected, proved, Tolerance);
            }
        }

        findings.AssertNone();
        Assert.True(holes > RandomCounts.Rods / 50);
    }

    [Theory]
    [InlineData(0.5, 0.0)]
    [InlineData(0.75, 0.0)]
    [InlineData(20.0, 19.25)]
    [InlineData(35.0, 34.25)]
    [InlineData(40.0, 34.25)]
    [InlineData(null, null)]
    public void A_witness_hole_proves_no_thread_that_is_not_there(double? farEdge, double? proved)
    {
        // A sleeve end with 35 mm of thread behind a countersink of 0.75 mm; the bore beyond is open.
        RodCase rod = CheckCases.OpenInnerBore.Rod;
        RodCase seen = rod with { Inner = rod.Inner with { Witness = farEdge is { } mm ? Dim.OfMm(mm) : null } };
        Assert.Equal(proved, seen.Plan().Solution!.Inner.WitnessProves?.Millimeters);
    }

    [Fact]
    public void A_nut_loosens_against_its_hand_and_no_nut_does_not()
    {
        Findings findings = new();
        Dictionary<(bool Nut, Hand Hand), int> seen = [];
        foreach ((PlannedRod planned, RodSide side) in rods.Solved.SelectMany(planned => s_sides.Select(side => (planned, side))))
        {
            JointCase joint = planned.Rod.Joint(side);
            (bool Nut, Hand Hand) kind = (joint.Nut is not null, joint.Thread.Hand);
            seen[kind] = seen.GetValueOrDefault(kind) + 1;
            TurnDirection? expected = kind switch
            {
                (false, _) => null,
                (_, Hand.Right) => TurnDirection.Counterclockwise,
                _ => TurnDirection.Clockwise,
            };
            findings.That(planned.Rod, $"{side} nut loosens", planned.JointPlan(side).NutLoosens == expected);
        }

        findings.AssertNone();
        Assert.Equal(4, seen.Count(kind => kind.Value > RandomCounts.Rods / 50));
    }

    /// <summary>The settings that turning the sleeve passes from the shortest to the longest wanted length.</summary>
    private static IEnumerable<Setting> Along(PlannedRod planned)
    {
        RodCase rod = planned.Rod;
        double from = LimitTable.TurnsTo(rod, rod.Target.Mm - rod.Shorter.Mm);
        double to = LimitTable.TurnsTo(rod, rod.Target.Mm + rod.Longer.Mm);
        return Enumerable.Range(0, Places)
            .Select(place => LimitTable.Turned(rod, planned.Setting, from + (to - from) * place / (Places - 1)));
    }

    private static void Check(Findings findings, PlannedRod planned, string way, int sign, Travel travel)
    {
        RodCase rod = planned.Rod;
        if (!rod.SleeveAdjusts)
        {
            findings.That(rod, $"{way}: no travel", travel is { Turns: 0, EndsAt: null, End: null } && travel.Length.Value == 0);
            return;
        }

        // Clockwise turns that go this way, counted by what runs out first of every limit.
        int turning = sign * Math.Sign(rod.AxialPerTurn);
        Slack[] start = [.. LimitTable.Slacks(rod, planned.Recommended, planned.Setting)];
        Slack[] next = [.. LimitTable.Slacks(rod, planned.Recommended, LimitTable.Turned(rod, planned.Setting, turning))];
        double turns = start.Zip(next)
            .Where(pair => pair.First.Left - pair.Second.Left > Millimeters.Negligible)
            .Min(pair => Math.Max(0, pair.First.Left) / (pair.First.Left - pair.Second.Left));
        Setting end = LimitTable.Turned(rod, planned.Setting, turning * turns);
        double length = rod.LengthOf(LimitTable.Axial(rod, planned.Recommended, end));
        findings.Near(rod, $"{way} length", sign * (length - rod.Target.Mm), travel.Length, Tolerance);
        findings.Near(rod, $"{way} turns", turns, travel.Turns, Tolerance);
        findings.That(
            rod,
            $"{way} ends at {travel.EndsAt} {travel.End}",
            LimitTable.Slacks(rod, planned.Recommended, end)
                .Any(slack => slack.Limit == travel.EndsAt && slack.End == travel.End && Math.Abs(slack.Left) < 2 * Tolerance));
    }
}
