using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Worked rods with tolerances, every figure by hand.</summary>
public class WorstCaseExampleTests
{
    private const double Tolerance = 1e-6;

    [Fact]
    public void Tolerances_and_the_mark_are_added_to_the_least_cut()
    {
        // 12.7 has to be cut: c1 + c2 + S less what the bore and the outer nut leave. 0.5 more of the inner end, 0.25 less of its bore
        // and a mark of 0.5 too little sawn make it 13.95. What the nominal window leaves up to 38.1 is far.
        WorstCase worst = Of(
            CheckCases.Inch.Rod,
            new(PartDimension.CenterToTip, RodSide.Inner, 0.5),
            new(PartDimension.Depth, RodSide.Inner, 0.25)).WorstCase;
        Assert.True(worst.TolerancesStated);
        Assert.Equal(Verdict.BuildableAfterCutting, worst.Verdict);
        Assert.Equal(13.95, worst.LeastCut!.Value.Millimeters, Tolerance);
    }

    [Fact]
    public void Without_a_tolerance_only_the_mark_is_added()
    {
        WorstCase worst = Of(CheckCases.Inch.Rod).WorstCase;
        Assert.False(worst.TolerancesStated);
        Assert.Equal(13.2, worst.LeastCut!.Value.Millimeters, Tolerance);
    }

    [Fact]
    public void The_recommended_cut_moves_to_where_it_is_safe()
    {
        // By the rules 12.7 + 1.5 = 14.2, on the next mark 14.5. With 2 of the inner end and a mark 12.7 + 2 + 0.5 = 15.2 are safe: 15.5.
        Assert.Equal(14.5, Of(CheckCases.Inch.Rod).InnerCut!.Recommended.Millimeters, Tolerance);
        RodSolution safe = Of(CheckCases.Inch.Rod, new ToleranceCase(PartDimension.CenterToTip, RodSide.Inner, 2));
        Assert.Equal(15.5, safe.InnerCut!.Recommended.Millimeters, Tolerance);
        Assert.True(safe.WorstCase.PlanIsSafe);
        Assert.Equal(0.3, safe.WorstCase.Slack!.Value.Millimeters, Tolerance);
    }

    [Fact]
    public void A_tolerance_that_the_window_takes_leaves_the_plan_safe()
    {
        // s1 from 33 (outer nut) and 31 (engagement) up to 41 (inner bore) and 40.75 (outer engagement). The two that the outer end sets
        // move with K, 1 each way: 41 - 34 = 7 is the least that is left.
        WorstCase worst = Of(CheckCases.SameHand.Rod, new ToleranceCase(PartDimension.CenterToTip, RodSide.Inner, 1)).WorstCase;
        Assert.Equal(Verdict.Buildable, worst.Verdict);
        Assert.True(worst.PlanIsSafe);
        Assert.Equal(7, worst.Slack!.Value.Millimeters, Tolerance);
        ToleranceEffect effect = Assert.Single(worst.Dimensions);
        Assert.Equal((RodDimension.CenterToTip, (RodSide?)RodSide.Inner), (effect.Dimension, effect.End));
        Assert.Equal(1, effect.Takes.Millimeters, Tolerance);
        Assert.Null(effect.Needed);
    }

    [Fact]
    public void A_plan_that_holds_only_at_nominal_says_how_well_the_dimension_must_be_known()
    {
        // 30 + 3 x 2.1 <= s1 <= 45 - 4 x 2.1 leaves 0.3, and 0.5 of the inner end's length takes it. Nothing may be cut.
        RodCase rod = CheckCases.SameHand.Rod with { Shorter = Dim.OfMm(2.1), Longer = Dim.OfMm(2.1) };
        WorstCase worst = Of(rod, new ToleranceCase(PartDimension.CenterToTip, RodSide.Inner, 0.5)).WorstCase;
        Assert.Equal(Verdict.NotBuildable, worst.Verdict);
        Assert.False(worst.PlanIsSafe);
        Assert.Null(worst.LeastCut);
        Assert.Equal(-0.2, worst.Slack!.Value.Millimeters, Tolerance);
        Assert.Equal(0.3, Assert.Single(worst.Dimensions).Needed!.Value.Millimeters, Tolerance);
    }

    [Fact]
    public void Two_ends_bent_alike_may_stand_in_line_inside_the_tolerances()
    {
        // Offsets of 20 ± 1 and 20.5 ± 1 to the same side: O is 0.5 at nominal, 0.5 to 2.5 at the corners, and 0 where both are alike.
        RodCase twin = CaseVariants.Twin with
        {
            Inner = CaseVariants.Twin.Inner with { Offset = Dim.OfMm(20) },
            Outer = CaseVariants.Twin.Outer with { Offset = Dim.OfMm(20.5) },
            ClockingDegrees = 0,
            Shorter = default,
            Longer = default,
        };

        // Ends of 100 on a sleeve of 120, in by 26.25 each at the least: axial at most 267.5. At O = 0.5 that is a length just above
        // 267.5, at O = 0 that length asks for as much of axial length: sqrt(267.5^2 + 0.25) - 267.5 = 0.000467 too much.
        double length = Math.Sqrt(267.5 * 267.5 + 0.25);
        WorstCase worst = Of(
            twin with { Target = Dim.OfMm(length) },
            new(PartDimension.Offset, RodSide.Inner, 1),
            new(PartDimension.Offset, RodSide.Outer, 1)).WorstCase;
        Assert.Equal(267.5 - length, worst.Slack!.Value.Millimeters, Tolerance);
        Assert.False(worst.PlanIsSafe);
    }

    private static RodSolution Of(RodCase rod, params ToleranceCase[] tolerances) =>
        RodPlanner.Plan(RodJob.Made(new TolerancedRod(rod, tolerances).Parts()), rod.ToRequest()).Solution!;
}
