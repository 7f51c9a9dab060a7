using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>The rod of a corner: its joints moved at ride height, and toe from its length there.</summary>
public class CornerRodTests
{
    private const double Fine = 1e-9;

    private static readonly (RandomCorner Corner, CornerGeometry Geometry, JointMoves Moves)[] s_cases = Draw();

    [Fact]
    public void Moved_joints_are_where_they_were_moved_to_and_all_else_is_kept() => Assert.All(s_cases, each =>
    {
        (RandomCorner corner, CornerGeometry geometry, JointMoves moves) = each;
        CornerGeometry moved = geometry.Moved(moves)!;
        double part = moves.RodLonger / geometry.RodLength;
        Point outer = corner.Outer;
        Point inner = corner.Inner;
        Point outerThen = outer with { Z = outer.Z + moves.OuterRaised };
        Point innerThen = new(
            inner.X + part * (inner.X - outer.X),
            inner.Y + part * (inner.Y - outer.Y),
            inner.Z + part * (inner.Z - outer.Z) + moves.InnerRaised);
        Assert.Equal(0, moved.Outer.DistanceTo(outerThen).Millimeters, Fine);
        Assert.Equal(0, moved.Inner.DistanceTo(innerThen).Millimeters, Fine);
        Assert.Equal(outerThen.DistanceTo(innerThen).Millimeters, moved.RodLength.Millimeters, Fine);
        Assert.Equal((corner.Side, corner.Lower, corner.Upper, corner.Wheel), (moved.Side, moved.Lower, moved.Upper, moved.Wheel));

        CornerPosition before = geometry.At(Length.Zero)!;
        CornerPosition after = moved.At(Length.Zero)!;
        Assert.Equal(before.Toe.Radians, after.Toe.Radians, Fine);
        Assert.Equal(before.Camber.Radians, after.Camber.Radians, Fine);

        // Over the travel it is the corner that those points make.
        RandomCorner anew = corner with { Outer = outerThen, Inner = innerThen };
        Length travel = Length.FromMillimeters(40);
        Angle wanted = anew.Geometry.Aligned(before.Toe, before.Camber).At(travel)!.Toe;
        Assert.Equal(wanted.Radians, moved.At(travel)!.Toe.Radians, Fine);
    });

    [Fact]
    public void No_move_changes_nothing() => Assert.All(s_cases, each =>
    {
        Length travel = Length.FromMillimeters(-40);
        Assert.Equal(each.Geometry.At(travel), each.Geometry.Moved(default)!.At(travel));
    });

    [Theory]
    [InlineData(1e200, 0, 0)]
    [InlineData(0, -1e200, 0)]
    [InlineData(0, 0, 1e200)]
    [InlineData(101, 0, 0)]
    [InlineData(0, -101, 0)]
    [InlineData(0, 0, 101)]
    public void Meters_that_no_car_has_leave_no_corner(double raised, double lifted, double longer)
    {
        JointMoves moves = new(Length.FromMeters(raised), Length.FromMeters(lifted), Length.FromMeters(longer));
        Assert.Null(s_cases[0].Geometry.Moved(moves));
    }

    [Fact]
    public void An_inner_joint_that_is_moved_into_the_outer_one_leaves_no_corner() => Assert.All(s_cases, each =>
        Assert.Null(each.Geometry.Moved(new JointMoves(Length.Zero, Length.Zero, -each.Geometry.RodLength))));

    [Fact]
    public void Length_per_toe_is_the_derivative_of_length_over_toe_and_of_toe_over_length() => Assert.All(s_cases, each =>
    {
        const double small = 1e-4;
        SteeringGeometry wheel = each.Geometry.Steering;
        Angle toe = each.Geometry.At(Length.Zero)!.Toe;
        double longer = LengthAt(small) - LengthAt(-small);
        Assert.Equal(1, wheel.LengthPerToe / (longer / (2 * small)), 1e-5);
        double turned = ToeAt(wheel.LengthPerToe * small) - ToeAt(-wheel.LengthPerToe * small);
        Assert.Equal(1, turned / (2 * small), 1e-5);
        Assert.Equal(each.Corner.Place == JointPlace.BehindAxle ? 1 : -1, Math.Sign(wheel.LengthPerToe));

        double LengthAt(double more) => Toe.LengthFor(wheel, toe + Angle.FromRadians(more)).Length!.Value.Millimeters;
        double ToeAt(double more) => Toe.FromLength(wheel, wheel.RodLength + Length.FromMillimeters(more)).Toe!.Value.Radians;
    });

    [Fact]
    public void The_wheel_at_ride_height_has_the_rod_the_toe_and_the_side_of_the_corner() => Assert.All(s_cases, each =>
    {
        SteeringGeometry wheel = each.Geometry.Steering;
        Assert.Equal(each.Corner.Side, wheel.Side);
        Assert.Equal(each.Geometry.RodLength.Millimeters, wheel.RodLength.Millimeters, Fine);
        Assert.Equal(each.Geometry.At(Length.Zero)!.Toe.Radians, Toe.FromLength(wheel, wheel.RodLength).Toe!.Value.Radians, Fine);
        Assert.True(wheel.IsLikely);
    });

    /// <summary>The same rod from an inner joint that went away from the outer one by so much is a rod that is so much shorter.</summary>
    [Fact]
    public void Steering_a_little_turns_the_wheel_as_length_per_toe_says() => Assert.All(s_cases, each =>
    {
        const double small = 0.01;
        double away = (each.Corner.Inner.Y - each.Corner.Outer.Y) / each.Geometry.RodLength;
        double turned = ToeAt(small) - ToeAt(-small);
        Assert.Equal(1, turned / (2 * small) / (-away / each.Geometry.Steering.LengthPerToe), 1e-5);

        double ToeAt(double steer) => each.Geometry.At(Length.Zero, Length.FromMillimeters(steer))!.Toe.Radians;
    });

    private static (RandomCorner Corner, CornerGeometry Geometry, JointMoves Moves)[] Draw()
    {
        // One source for all: those of two numbers give values that go with one another.
        Random random = RandomCounts.For(RandomCounts.Corners);
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
        Length Move(double most) => Length.FromMillimeters(Between(-most, most));

        return
        [
            .. RandomCorners.All.Select(corner => (
                corner,
                corner.Geometry.Aligned(Angle.FromRadians(Between(-0.03, 0.03)), Angle.FromRadians(Between(-0.1, 0.1))),
                new JointMoves(Move(20), Move(20), Move(60)))),
        ];
    }
}
