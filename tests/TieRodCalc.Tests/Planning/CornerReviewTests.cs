using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Tests.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>What is put together of the points of a corner: its curves, and the swing that the ends of the rod allow.</summary>
public class CornerReviewTests
{
    private const double Tolerance = 1e-9;

    private static readonly Length s_spacing = Mm(300);

    private static readonly (CornerGeometry Corner, SwingRange Range)[] s_cases =
    [
        .. Enumerable.Range(0, 3)
            .Select(index => (
                RandomCorners.Draw(index).Geometry.Aligned(Angle.FromDegrees(0.4), Angle.FromDegrees(-1)),
                new SwingRange(Mm(20 + index), Mm(30 - index), Mm(2 * index)))),
    ];

    /// <summary>A rod with a sleeve, and one whose outer end carries the thread.</summary>
    private static readonly Rod[] s_rods =
    [
        CheckCases.Bent.Rod.ToRod(),
        RodJob.Made(new RodJob(CheckCases.Bent.Rod with { ClockingDegrees = null }, default, default, true).Parts()),
    ];

    [Fact]
    public void Each_end_that_says_what_it_allows_is_held_against_its_own_swing() => Assert.All(s_cases, each => Assert.All(s_rods, rod =>
    {
        foreach (StudDirection inner in Enum.GetValues<StudDirection>())
        {
            StudDirection outer = inner == StudDirection.Vertical ? StudDirection.AlongAxle : StudDirection.Vertical;
            Angle insideAllows = Angle.FromDegrees(11);
            Angle outsideAllows = Angle.FromDegrees(17);
            SwingCheck[] both = [.. SwingCheck.Of(With(rod, (insideAllows, inner), (outsideAllows, outer)), each.Corner, each.Range)];
            Assert.Equal([RodSide.Inner, RodSide.Outer], both.Select(check => check.End));
            Assert.Equal([insideAllows, outsideAllows], both.Select(check => check.Allowed));
            Assert.Equal(Swings.OfInner(each.Corner, AxisOf(inner), each.Range), both[0].Most);
            Assert.Equal(Swings.OfOuter(each.Corner, AxisOf(outer), each.Range), both[1].Most);
            Assert.All(both, check => Assert.True(check.StudKnown));

            SwingCheck only = Assert.Single(SwingCheck.Of(With(rod, null, (outsideAllows, outer)), each.Corner, each.Range));
            Assert.Equal((RodSide.Outer, both[1].Most), (only.End, only.Most));
            only = Assert.Single(SwingCheck.Of(With(rod, (insideAllows, inner), null), each.Corner, each.Range));
            Assert.Equal((RodSide.Inner, both[0].Most), (only.End, only.Most));
        }

        Assert.Empty(SwingCheck.Of(With(rod, null, null), each.Corner, each.Range));
    }));

    [Fact]
    public void A_stud_that_stands_nobody_knows_how_passes_and_holds_nothing() => Assert.All(s_rods, rod =>
    {
        (CornerGeometry corner, SwingRange range) = s_cases[0];
        SwingCheck check = SwingCheck.Of(With(rod, null, (Angle.FromDegrees(20), null)), corner, range).Single();
        Assert.Equal((false, null, null), (check.StudKnown, check.Most, check.MissedBy));
        Assert.Equal((true, false, false), (check.Passes, check.Holds, check.RunsOut));
    });

    [Theory]
    [InlineData(20.0, 21.0, 0.0)]
    [InlineData(20.0, 20.0, 0.0)]
    [InlineData(20.0, 20 - 9e-7, 0.0)]
    [InlineData(20.0, 20 - 1.1e-6, 1.1e-6)]
    [InlineData(20.0, 12.5, 7.5)]
    public void A_joint_runs_out_where_it_swings_more_than_it_allows(double swings, double allows, double missed)
    {
        SwingCheck check = new(RodSide.Inner, Angle.FromDegrees(allows), true, new JointSwing(Angle.FromDegrees(swings), Mm(1), Mm(2)));
        Assert.Equal(missed, check.MissedBy!.Value.Degrees, Tolerance);
        Assert.Equal(missed == 0, check.Holds);
        Assert.Equal(missed == 0, check.Passes);
        Assert.Equal(missed > 0, check.RunsOut);
    }

    [Fact]
    public void A_corner_that_does_not_reach_everywhere_neither_passes_nor_runs_out()
    {
        SwingCheck check = new(RodSide.Inner, Angle.FromDegrees(20), true, null);
        Assert.Equal((false, false, false, null), (check.Passes, check.Holds, check.RunsOut, check.MissedBy));
    }

    [Fact]
    public void Its_curve_is_the_corners_own_evenly_over_the_travel() => Assert.All(s_cases, each =>
    {
        CornerReview review = CornerReview.Of(Request(each.Corner, each.Range));
        double[] travels =
        [
            .. new[] { 1, 0.75, 0.5, 0.25 }.Select(part => -part * each.Range.Droop.Millimeters),
            .. new[] { 0, 0.25, 0.5, 0.75, 1 }.Select(part => part * each.Range.Bump.Millimeters),
        ];
        AssertCurve(each.Corner, travels, review.Now!);
        Assert.Null(review.WithAdvice);
        Assert.Empty(review.Swing);
        Assert.True(review.Holds);
        Assert.Equal(each.Range, review.Range);
        CornerBest best = CornerOptimum.Find(each.Corner, each.Range.Droop, each.Range.Bump, MoveLimits.Usual)!;
        Assert.Equal(best.Moves, review.Best);
        AssertCurve(best.Corner, travels, review.WithBest!);
        double longer = best.Corner.RodLength.Millimeters - each.Corner.RodLength.Millimeters;
        Assert.Equal(longer, review.BestRodLonger!.Value.Millimeters, Tolerance);
    });

    [Fact]
    public void With_a_sheet_it_is_at_the_travels_of_the_sheet()
    {
        BumpSheetFindings sheet = Enumerable.Range(0, 50).Select(index => BumpCase.Draw(index).Read().Sheets[^1])
            .First(sheet => sheet.Points.Count > 3 && sheet.Points.All(point => Math.Abs(point.Travel.Millimeters) < 40));
        (CornerGeometry corner, SwingRange range) = s_cases[0];
        CornerReview review = CornerReview.Of(Request(corner, range) with { Measured = sheet });
        AssertCurve(corner, [.. sheet.Points.Select(point => point.Travel.Millimeters)], review.Now!);
    }

    [Fact]
    public void Advice_is_tried_on_the_corner() => Assert.All(s_cases, each =>
    {
        BumpChange advice = new(Mm(3), Mm(-8));
        CornerReview review = CornerReview.Of(Request(each.Corner, each.Range) with { Advice = advice });
        CornerGeometry changed = each.Corner.Moved(new JointMoves(Mm(3), Length.Zero, Mm(-8)))!;
        AssertCurve(changed, [.. review.Now!.Points.Select(point => point.Travel.Millimeters)], review.WithAdvice!);
        Assert.Null(CornerReview.Of(Request(each.Corner, each.Range) with { Advice = default(BumpChange) }).WithAdvice);
    });

    [Fact]
    public void A_travel_out_of_reach_leaves_nothing_and_does_not_hold()
    {
        CornerReview review = CornerReview.Of(Request(s_cases[0].Corner, new SwingRange(Mm(0), Mm(900), Mm(0))));
        Assert.Null(review.Now);
        Assert.Null(review.Best);
        Assert.Null(review.WithBest);
        Assert.Null(review.BestRodLonger);
        Assert.False(review.Holds);
    }

    [Fact]
    public void It_holds_where_both_joints_do()
    {
        (CornerGeometry corner, SwingRange range) = s_cases[0];
        foreach ((double inner, double outer, bool holds) in new[] { (89.0, 89, true), (0, 89, false), (89, 0, false), (0, 0, false) })
        {
            Rod rod = With(
                s_rods[0],
                (Angle.FromDegrees(inner), StudDirection.Vertical),
                (Angle.FromDegrees(outer), StudDirection.Vertical));
            Assert.Equal(holds, CornerReview.Of(Request(corner, range) with { Rod = rod }).Holds);
        }
    }

    private static CornerReviewRequest Request(CornerGeometry corner, SwingRange range) => new()
    {
        Corner = corner,
        Spacing = s_spacing,
        Range = range,
        Moves = MoveLimits.Usual,
    };

    private static void AssertCurve(CornerGeometry corner, double[] travels, CornerCurve curve)
    {
        Assert.Equal(travels.Length, curve.Points.Count);
        double start = corner.At(Length.Zero)!.Toe.Radians;
        double[] toes = [.. travels.Select(travel => corner.At(Mm(travel))!.Toe.Radians - start)];
        double worst = 0;
        for (int i = 0; i < travels.Length; i++)
        {
            Assert.Equal(travels[i], curve.Points[i].Travel.Millimeters, Tolerance);
            Assert.Equal(toes[i], curve.Points[i].Toe.Radians, Tolerance);
            Assert.Equal(AtGauge(i), curve.Points[i].AtGauge.Millimeters, 1e-6);
            worst = i == 0 ? 0 : Math.Max(worst, Math.Abs(AtGauge(i) - AtGauge(i - 1)) / (travels[i] - travels[i - 1]) * 25.4);
        }

        Assert.Equal(worst, curve.Worst.Millimeters, 1e-5);

        double AtGauge(int i) => s_spacing.Millimeters * Math.Sin(toes[i]);
    }

    private static Rod With(Rod rod, (Angle Swing, StudDirection? Stud)? inner, (Angle Swing, StudDirection? Stud)? outer)
    {
        RodParts parts = rod.Parts;
        return RodJob.Made(parts with
        {
            Inner = parts.Inner with { Swing = inner?.Swing, Stud = inner?.Stud },
            Outer = parts.Outer is { } end ? end with { Swing = outer?.Swing, Stud = outer?.Stud } : null,
            Socket = parts.Socket is { } socket ? socket with { Swing = outer?.Swing, Stud = outer?.Stud } : null,
        });
    }

    private static StudAxis AxisOf(StudDirection stud) => Enum.Parse<StudAxis>(stud.ToString());

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
