using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>The figures that warnings carry, and the thresholds just below, at and just above them.</summary>
public class WarningFigureTests
{
    private const double Tolerance = 1e-9;

    /// <summary>Below the comparison constant, and above it.</summary>
    private const double Hair = 5e-7;
    private const double Seen = 1e-5;

    /// <summary>M16x1.5 at both ends: 1.5 diameters are 24 mm, 2 are 32 mm.</summary>
    private static RodCase Even => CheckCases.OpenInnerBore.Rod;

    [Fact]
    public void An_end_may_ask_for_its_own_engagement()
    {
        RodRequest request = Even.ToRequest();
        EngagementRule own = EngagementRule.FromLength(UnitsNet.Length.FromMillimeters(7));
        EngagementRule both = EngagementRule.FromLength(UnitsNet.Length.FromMillimeters(9));
        foreach ((EngagementRule? inner, EngagementRule? outer) in new[] { (own, null), (null, own), (own, own), (null, (EngagementRule?)null) })
        {
            RodPlan plan = RodPlanner.Plan(Even.ToRod(), request with
            {
                Rules = request.Rules with { Engagement = both, InnerEngagement = inner, OuterEngagement = outer },
            });
            Assert.Equal(inner is null ? 9 : 7, plan.InnerRequired.Asked.Millimeters, 1e-9);
            Assert.Equal(outer is null ? 9 : 7, plan.OuterRequired!.Asked.Millimeters, 1e-9);
        }
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Diameters_are_finite_and_above_zero(double value) =>
        Assert.Throws<ArgumentException>("diameters", () => EngagementRule.Diameters(value));

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    public void A_load_is_above_zero(double newtons)
    {
        RodRequest request = Even.ToRequest();
        UnitsNet.Force load = UnitsNet.Force.FromNewtons(newtons);
        Assert.Throws<ArgumentException>(
            "request", () => RodPlanner.Plan(Even.ToRod(), request with { Rules = request.Rules with { Load = load } }));
    }

    [Theory]
    [InlineData(MaterialKind.Steel, 1.2, 19.2, 24.0)]
    [InlineData(MaterialKind.Other, 1.2, 19.2, 24.0)]
    [InlineData(MaterialKind.Steel, 1.499999, 23.999984, 24.0)]
    [InlineData(MaterialKind.Steel, 1.49999999, null, null)]
    [InlineData(MaterialKind.Steel, 1.5, null, null)]
    [InlineData(MaterialKind.Steel, 1.9, null, null)]
    [InlineData(MaterialKind.Aluminum, 1.2, 19.2, 32.0)]
    [InlineData(MaterialKind.Aluminum, 1.9, 30.4, 32.0)]
    [InlineData(MaterialKind.Aluminum, 2.0, null, null)]
    [InlineData(MaterialKind.Aluminum, 2.1, null, null)]
    public void Less_engagement_than_the_rule_is_told_where_it_is_asked_in_diameters(
        MaterialKind kind, double diameters, double? asked, double? usual) =>
        AssertBelowRule(Even with { SleeveKind = kind, Engagement = new(diameters, null) }, asked, usual);

    [Theory]
    [InlineData(null, 23.99, 23.99, 24.0)]
    [InlineData(null, 24 - Hair, null, null)]
    [InlineData(null, 24.0, null, null)]
    [InlineData(MaterialKind.Aluminum, 24.0, 24.0, 32.0)]
    [InlineData(MaterialKind.Aluminum, 32 - Seen, 32 - Seen, 32.0)]
    [InlineData(MaterialKind.Aluminum, 32.0, null, null)]
    public void Less_engagement_than_the_rule_is_told_where_it_is_asked_as_a_length(
        MaterialKind? kind, double length, double? asked, double? usual) =>
        AssertBelowRule(Even with { SleeveKind = kind, Engagement = new(null, Dim.OfMm(length)) }, asked, usual);

    [Fact]
    public void The_usual_rule_is_not_below_itself() => AssertBelowRule(Even with { SleeveKind = MaterialKind.Aluminum }, null, null);

    [Theory]
    [InlineData(23 - Seen, null, null)]
    [InlineData(23.0, null, null)]
    [InlineData(23 + Hair, null, null)]
    [InlineData(23 + Seen, 0.75 - Seen / 2, 0.75)]
    [InlineData(24.0, 0.25, 0.75)]
    [InlineData(24.5, 0.0, 0.75)]
    public void A_start_may_not_match_where_the_free_interval_is_narrower_than_the_step(double longer, double? free, double? step)
    {
        // The outer end has 13.75 mm to go, and each end takes half of the adjustment of 3 mm and more.
        RodPlan plan = (Even with { Longer = Dim.OfMm(longer) }).Plan();
        Assert.Equal(Verdict.Buildable, plan.Verdict);
        PlanWarning? told = plan.Warnings.SingleOrDefault(warning => warning.Code == WarningCode.StartMayNotMatch);
        AssertNear(free, told?.Value?.Millimeters);
        AssertNear(step, told?.Other?.Millimeters);
        Assert.Null(told?.End);
    }

    [Theory]
    [InlineData(18.5 - Seen, null)]
    [InlineData(18.5, null)]
    [InlineData(18.5 + Hair, null)]
    [InlineData(18.5 + 4 * Seen, 1.5 - Seen)]
    [InlineData(20.5, 1.0)]
    public void Less_than_a_pitch_to_back_the_nut_off_is_told(double longer, double? room)
    {
        // 6.875 mm less a quarter of the whole adjustment are left to the outer nut at the shortest length.
        RodPlan plan = (Even with { Longer = Dim.OfMm(longer) }).Plan();
        AssertOnly(plan, WarningCode.LittleRoomForTheNut, RodSide.Outer, room);
    }

    [Fact]
    public void Without_a_nut_there_is_none_to_back_off() => Assert.DoesNotContain(
        (Even with { Longer = Dim.OfMm(24) }).WithOuter(joint => joint with { Nut = null, ThreadLength = Dim.OfMm(40) }).Plan().Warnings,
        warning => warning.Code == WarningCode.LittleRoomForTheNut);

    [Theory]
    [InlineData(17.0875 + Seen, null)]
    [InlineData(17.0875, null)]
    [InlineData(17.0875 - Hair, null)]
    [InlineData(17.0875 - Seen, 1.5875 - Seen)]
    [InlineData(17.0, 1.5)]
    public void Less_than_a_sixteenth_to_spare_is_told(double mostCut, double? spare)
    {
        // 14 mm must be cut, 15.5 mm are recommended: the least and the allowance of 1.5 mm, on a mark.
        RodPlan plan = CheckCases.TipsMeet.Rod.WithInner(joint => joint with { MaxCut = Dim.OfMm(mostCut) }).Plan();
        Assert.Equal(15.5, plan.Solution!.InnerCut!.Recommended.Millimeters, Tolerance);
        AssertOnly(plan, WarningCode.LittleCutToSpare, RodSide.Inner, spare);
        AssertOnly(plan, WarningCode.CutOffTheMarks, RodSide.Inner, null);
    }

    [Fact]
    public void A_cut_off_the_marks_is_told_with_its_figure()
    {
        RodCase rod = CheckCases.TipsMeet.Rod with { Mark = Dim.OfMm(5) };
        RodPlan plan = rod.WithInner(joint => joint with { MaxCut = Dim.OfMm(14.4) }).Plan();
        AssertOnly(plan, WarningCode.CutOffTheMarks, RodSide.Inner, 14.2);
        AssertOnly(plan, WarningCode.LittleCutToSpare, RodSide.Inner, 0.2);
    }

    [Theory]
    [InlineData("end")]
    [InlineData("sleeve")]
    [InlineData("nut")]
    public void One_class_that_is_not_said_is_enough_to_say_that_it_was_assumed(string part)
    {
        static ThreadDesignation Classed(ThreadDesignation thread, bool said) => thread with { ToleranceClass = said ? "6H" : null };
        foreach ((RodSide side, string? silent) in new[] { (RodSide.Inner, part), (RodSide.Outer, part), (RodSide.Inner, null) })
        {
            RodPlan plan = Even.PlanWith(parts => Exchanged(parts, (at, which, thread) => Classed(thread, at != side || which != silent)));
            RodSide[] told = [.. plan.Warnings.Where(warning => warning.Code == WarningCode.ClassAssumed).Select(warning => warning.End!.Value)];
            Assert.Equal(silent is null ? [] : [side], told);
        }
    }

    [Theory]
    [InlineData("end")]
    [InlineData("sleeve")]
    [InlineData("nut")]
    public void One_pitch_that_is_assumed_is_enough_to_say_so(string part)
    {
        foreach ((RodSide side, string? assumed) in new[] { (RodSide.Inner, part), (RodSide.Outer, part), (RodSide.Inner, null) })
        {
            RodPlan plan = Even.PlanWith(parts => Exchanged(
                parts, (at, which, thread) => thread with { CoarsePitchAssumed = at == side && which == assumed }));
            AssertOnly(plan, WarningCode.CoarsePitchAssumed, side, assumed is null ? null : 1.5);
        }
    }

    [Fact]
    public void Lead_and_countersink_that_are_not_said_are_told_with_what_was_taken()
    {
        RodCase said = Even.WithInner(Said).WithOuter(Said);
        AssertOnly(said.Plan(), WarningCode.LeadAssumed, RodSide.Inner, null);
        AssertOnly(said.Plan(), WarningCode.CountersinkAssumed, RodSide.Inner, null);
        AssertOnly(said.WithInner(joint => joint with { Lead = null }).Plan(), WarningCode.LeadAssumed, RodSide.Inner, 1.5);
        AssertOnly(said.WithOuter(joint => joint with { Lead = null }).Plan(), WarningCode.LeadAssumed, RodSide.Outer, 1.5);
        AssertOnly(said.WithInner(joint => joint with { Countersink = null }).Plan(), WarningCode.CountersinkAssumed, RodSide.Inner, 0.75);
        AssertOnly(said.WithOuter(joint => joint with { Countersink = null }).Plan(), WarningCode.CountersinkAssumed, RodSide.Outer, 0.75);

        static JointCase Said(JointCase joint) => joint with { Lead = Dim.OfMm(1.2), Countersink = Dim.OfMm(0.6) };
    }

    /// <summary>The parts with each of the six threads exchanged.</summary>
    private static RodParts Exchanged(RodParts parts, Func<RodSide, string, ThreadDesignation, ThreadDesignation> exchange) => parts with
    {
        Inner = parts.Inner with { Thread = exchange(RodSide.Inner, "end", parts.Inner.Thread) },
        Outer = parts.Outer! with { Thread = exchange(RodSide.Outer, "end", parts.Outer.Thread) },
        Sleeve = parts.Sleeve! with
        {
            Inner = parts.Sleeve.Inner with { Thread = exchange(RodSide.Inner, "sleeve", parts.Sleeve.Inner.Thread) },
            Outer = parts.Sleeve.Outer with { Thread = exchange(RodSide.Outer, "sleeve", parts.Sleeve.Outer.Thread) },
        },
        InnerNut = parts.InnerNut! with { Thread = exchange(RodSide.Inner, "nut", parts.InnerNut.Thread) },
        OuterNut = parts.OuterNut! with { Thread = exchange(RodSide.Outer, "nut", parts.OuterNut.Thread) },
    };

    private static void AssertBelowRule(RodCase rod, double? asked, double? usual)
    {
        PlanWarning[] told = [.. rod.Plan().Warnings.Where(warning => warning.Code == WarningCode.EngagementBelowRule)];
        Assert.Equal(asked is null ? [] : [RodSide.Inner, RodSide.Outer], told.Select(warning => warning.End!.Value));
        Assert.All(told, warning => AssertNear(asked, warning.Value!.Value.Millimeters));
        Assert.All(told, warning => AssertNear(usual, warning.Other!.Value.Millimeters));
    }

    /// <summary>Warns of one end alone with a figure, or not at all where the figure is null.</summary>
    private static void AssertOnly(RodPlan plan, WarningCode code, RodSide side, double? value)
    {
        PlanWarning? told = plan.Warnings.SingleOrDefault(warning => warning.Code == code);
        Assert.Equal(value is null ? null : side, told?.End);
        AssertNear(value, told?.Value?.Millimeters);
    }

    private static void AssertNear(double? expected, double? actual)
    {
        Assert.Equal(expected is null, actual is null);
        if (expected is { } wanted)
        {
            Assert.Equal(wanted, actual!.Value, Tolerance);
        }
    }
}
