using TieRodCalc.Steering;
using UnitsNet;
using UnitsNet.Units;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Steering;

/// <summary>The moves that make the toe change of a corner least, against a general-purpose minimizer and corners by hand.</summary>
public class CornerOptimumTests(ITestOutputHelper output)
{
    /// <summary>Bounds are kept to what doubles of millimeters can tell.</summary>
    private const double Kept = 1e-9;

    private const double Same = 1e-3;

    /// <summary>Where two joints may be raised, raising one does nearly what lowering the other does: the best is flat that way.</summary>
    private const double Searched = 0.02;

    /// <summary>Corners that are searched once more, of every kind of limits.</summary>
    private const int Some = 20;

    private static readonly Length s_travel = Length.FromMillimeters(50);

    [Fact]
    public void What_is_left_is_within_a_percent_of_what_a_general_minimizer_leaves()
    {
        double most = 0;
        double least = double.PositiveInfinity;
        Assert.All(MoveCase.Solved, each =>
        {
            double left = each.Case.ToeLeft(each.Best.Corner);
            double reference = each.Case.LeastByMinimizer();
            (most, least) = (Math.Max(most, left / reference), Math.Min(least, left / reference));
            Assert.InRange(left, 0.99 * reference, 1.01 * reference);
        });
        output.WriteLine($"{MoveCase.All.Count} corners, left against the minimizer's {least} to {most}");
    }

    [Fact]
    public void There_are_enough_corners_with_a_move_at_its_limit_and_without()
    {
        Assert.True(MoveCase.All.Count >= 40);
        (double Move, double Least, double Most)[][] all = [.. MoveCase.Solved.Select(each => each.Case.Held(each.Best.Moves).ToArray())];
        int atLimit = all.Count(moves => moves.Any(held => held.Most > held.Least
            && (held.Move < held.Least + Kept || held.Move > held.Most - Kept)));
        output.WriteLine($"{atLimit} of {all.Length} with a move at its limit");
        Assert.InRange(atLimit, all.Length / 5, all.Length * 4 / 5);
    }

    [Fact]
    public void Moves_keep_to_their_limits() => Assert.All(MoveCase.Solved, each =>
        Assert.All(each.Case.Held(each.Best.Moves), held => Assert.InRange(held.Move, held.Least - Kept, held.Most + Kept)));

    [Fact]
    public void The_toe_change_never_grows_and_the_corner_is_the_moved_one() => Assert.All(MoveCase.Solved, each =>
    {
        ((MoveCase drawn, CornerBest best), CornerGeometry corner) = (each, each.Case.Corner);
        CornerGeometry moved = corner.Moved(best.Moves)!;
        Assert.True(drawn.ToeLeft(best.Corner) <= drawn.ToeLeft(corner) * (1 + 1e-9));
        Assert.Equal(0, moved.Inner.DistanceTo(best.Corner.Inner).Millimeters, Kept);
        Assert.Equal(0, moved.Outer.DistanceTo(best.Corner.Outer).Millimeters, Kept);
        Assert.Equal(corner.At(Length.Zero)!.Toe.Radians, best.Corner.At(Length.Zero)!.Toe.Radians, 1e-12);
    });

    [Fact]
    public void What_may_not_move_stays()
    {
        Assert.Contains(MoveCase.All, each => each.Held(default).Any(held => held.Least == held.Most));
        Assert.All(MoveCase.Solved, each => Assert.All(
            each.Case.Held(each.Best.Moves).Where(held => held.Least == held.Most), held => Assert.Equal(0, held.Move)));
        MoveLimits none = new(default, default, default);
        Assert.All(MoveCase.All, each =>
        {
            MoveCase held = each with { Limits = none };
            Assert.All(held.Held(held.Best().Moves), move => Assert.Equal(0, move.Move));
        });
    }

    [Fact]
    public void A_mirrored_car_gets_the_same_moves() => Assert.All(MoveCase.Solved.Take(Some), each =>
        AssertSame(each.Case, each.Best, (each.Case with { Drawn = each.Case.Drawn.Mirrored() }).Best()));

    [Fact]
    public void Units_do_not_matter() => Assert.All(MoveCase.Solved.Take(Some), solved =>
    {
        MoveCase each = solved.Case;
        static Length Inches(Length length) => length.ToUnit(LengthUnit.Inch);
        static MoveRange In(MoveRange range) => new(Inches(range.Less), Inches(range.More));
        RandomCorner drawn = each.Drawn.EachPoint(point => new Point(Inches(point.X), Inches(point.Y), Inches(point.Z)));
        AssertSame(each, solved.Best, (each with
        {
            Drawn = drawn,
            Limits = new MoveLimits(In(each.Limits.Outer), In(each.Limits.Inner), In(each.Limits.Rod)),
        }).Best());
    });

    [Fact]
    public void The_same_question_has_the_same_answer() => Assert.All(MoveCase.Solved.Take(Some), each =>
        Assert.Equal(each.Best.Moves, each.Case.Best().Moves));

    /// <summary>
    /// The upright of the level corner goes on a circle of the arms' length without turning; a rod keeps it from turning where the
    /// inner joint is that circle's center: level with the outer joint and as far inward as the arms are long.
    /// </summary>
    [Theory]
    [InlineData(380, -10)]
    [InlineData(420, 8)]
    [InlineData(405, -4)]
    public void Level_arms_want_a_level_rod_as_long_as_they_are(double inward, double higher)
    {
        CornerGeometry corner = LevelCorner.With(inward, higher);

        // Along the rod first, until it is as far inward; what that leaves in height is taken up by either joint.
        double longer = (LevelCorner.Arm - inward) * Math.Sqrt(inward * inward + higher * higher) / inward;
        double height = higher * LevelCorner.Arm / inward;

        JointMoves byOuter = Best(corner, MoveLimits.Usual).Moves;
        Assert.Equal(height, byOuter.OuterRaised.Millimeters, Same);
        Assert.Equal(0, byOuter.InnerRaised.Millimeters);
        Assert.Equal(longer, byOuter.RodLonger.Millimeters, Same);

        CornerBest byInner = Best(corner, new MoveLimits(default, MoveLimits.Usual.Outer, MoveLimits.Usual.Rod));
        Assert.Equal(-height, byInner.Moves.InnerRaised.Millimeters, Same);
        Assert.Equal(longer, byInner.Moves.RodLonger.Millimeters, Same);
        Assert.Equal(LevelCorner.Arm, byInner.Corner.RodLength.Millimeters, Same);
        Assert.Equal(0, byInner.Corner.At(s_travel)!.Toe.Radians, 1e-7);
    }

    [Fact]
    public void A_corner_without_toe_change_is_left_as_it_is()
    {
        JointMoves moves = Best(LevelCorner.With(LevelCorner.Arm, 0), MoveLimits.Usual).Moves;
        Assert.Equal(0, moves.OuterRaised.Millimeters, Same);
        Assert.Equal(0, moves.RodLonger.Millimeters, Same);
    }

    [Fact]
    public void A_limit_that_is_too_near_is_where_the_move_ends()
    {
        MoveLimits near = new(MoveRange.EachWay(Length.FromMillimeters(4)), default, default);
        Assert.Equal(-4, Best(LevelCorner.With(LevelCorner.Arm, -10), near).Moves.OuterRaised.Millimeters, Kept);
        Assert.Equal(4, Best(LevelCorner.With(LevelCorner.Arm, 10), near).Moves.OuterRaised.Millimeters, Kept);
    }

    [Fact]
    public void A_travel_out_of_reach_has_no_answer_and_a_negative_one_is_refused()
    {
        CornerGeometry corner = LevelCorner.With(380, -10);
        Length far = Length.FromMillimeters(LevelCorner.Arm + 1);
        Assert.Null(CornerOptimum.Find(corner, far, s_travel, MoveLimits.Usual));
        Assert.Null(CornerOptimum.Find(corner, s_travel, far, MoveLimits.Usual));
        Assert.Throws<ArgumentException>(() => CornerOptimum.Find(corner, -s_travel, s_travel, MoveLimits.Usual));
        Assert.Throws<ArgumentException>(() => CornerOptimum.Find(
            corner, s_travel, s_travel, MoveLimits.Usual with { Rod = MoveRange.EachWay(-s_travel) }));
    }

    [Fact]
    public void Travel_counts_at_even_steps_from_end_to_end_without_ride_height()
    {
        Assert.Equal(Enumerable.Range(-12, 25).Where(step => step != 0).Select(step => 5.0 * step), CornerOptimum.TravelGrid(60, 60));
        Assert.Equal(Enumerable.Range(1, 24).Select(step => 2.0 * step), CornerOptimum.TravelGrid(0, 48));
        Assert.Equal(25, CornerOptimum.TravelGrid(10, 13).Length);
    }

    private static CornerBest Best(CornerGeometry corner, MoveLimits limits) => CornerOptimum.Find(corner, s_travel, s_travel, limits)!;

    private static void AssertSame(MoveCase each, CornerBest first, CornerBest second)
    {
        Assert.Equal(first.Moves.OuterRaised.Millimeters, second.Moves.OuterRaised.Millimeters, Searched);
        Assert.Equal(first.Moves.InnerRaised.Millimeters, second.Moves.InnerRaised.Millimeters, Searched);
        Assert.Equal(first.Moves.RodLonger.Millimeters, second.Moves.RodLonger.Millimeters, Searched);
        double left = each.ToeLeft(first.Corner);
        Assert.Equal(left, each.ToeLeft(second.Corner), 1e-6 * left);
    }
}
