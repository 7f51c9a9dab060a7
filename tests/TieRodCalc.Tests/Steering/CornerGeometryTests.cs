using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>What must hold of every corner, however it is computed.</summary>
public class CornerGeometryTests
{
    /// <summary>Millimeters and radians.</summary>
    private const double Fine = 1e-9;

    private static readonly Case[] s_cases = Draw();

    /// <summary>A point with its coordinates in inches.</summary>
    internal static Point InInches(Point point) =>
        new(Length.FromInches(point.X.Inches), Length.FromInches(point.Y.Inches), Length.FromInches(point.Z.Inches));

    [Fact]
    public void The_other_side_of_the_car_has_the_same_toe_and_camber() => Assert.All(s_cases, each =>
    {
        CornerPosition mirrored = each.Aligned(each.Corner.Mirrored()).At(each.Travel, -each.Steer)!;
        Assert.Equal(0, Apart(each.There, mirrored, point => point with { Y = -point.Y }), Fine);
    });

    [Fact]
    public void Units_of_the_points_and_the_travel_do_not_matter() => Assert.All(s_cases, each =>
    {
        CornerGeometry inches = each.Aligned(each.Corner.EachPoint(InInches));
        CornerPosition there = inches.At(Length.FromInches(each.Travel.Inches), Length.FromInches(each.Steer.Inches))!;
        Assert.Equal(0, Apart(each.There, there, point => point), Fine);
        Assert.Equal(each.Geometry.RodLength.Millimeters, inches.RodLength.Millimeters, Fine);
    });

    [Fact]
    public void The_points_of_an_axis_may_come_in_any_order() => Assert.All(s_cases, each =>
    {
        static Wishbone Swapped(Wishbone arm) => new(arm.Second, arm.First, arm.Ball);
        RandomCorner other = each.Corner with { Lower = Swapped(each.Corner.Lower), Upper = Swapped(each.Corner.Upper) };
        Assert.Equal(0, Apart(each.There, each.Aligned(other).At(each.Travel, each.Steer)!, point => point), Fine);
    });

    [Fact]
    public void At_ride_height_it_is_as_it_was_given() => Assert.All(s_cases, each =>
    {
        CornerPosition start = each.Geometry.At(Length.Zero)!;
        Assert.Equal(0, start.Travel.Millimeters, Fine);
        Assert.Equal(each.Toe.Radians, start.Toe.Radians, Fine);
        Assert.Equal(each.Camber.Radians, start.Camber.Radians, Fine);
        Assert.Equal(0, start.LowerBall.DistanceTo(each.Corner.Lower.Ball).Millimeters, Fine);
        Assert.Equal(0, start.UpperBall.DistanceTo(each.Corner.Upper.Ball).Millimeters, Fine);
        Assert.Equal(0, start.Outer.DistanceTo(each.Corner.Outer).Millimeters, Fine);
        Assert.Equal(0, start.Inner.DistanceTo(each.Corner.Inner).Millimeters, Fine);
        Assert.Equal(0, start.Wheel.DistanceTo(each.Corner.Wheel).Millimeters, Fine);
        Assert.Equal(
            (each.Corner.Outer, each.Corner.Inner, each.Corner.Wheel), (each.Geometry.Outer, each.Geometry.Inner, each.Geometry.Wheel));
        Assert.Equal(each.Corner.Outer.DistanceTo(each.Corner.Inner).Millimeters, each.Geometry.RodLength.Millimeters, Fine);
    });

    [Fact]
    public void The_wheel_is_where_it_was_asked_for() => Assert.All(s_cases, each =>
    {
        CornerPosition straight = each.Geometry.At(each.Travel)!;
        Assert.Equal(each.Travel.Millimeters, straight.Travel.Millimeters, Fine);
        Assert.Equal(each.Travel.Millimeters, (straight.Wheel.Z - each.Corner.Wheel.Z).Millimeters, Fine);
    });

    /// <summary>The reference turns the ball joint by a rotation matrix.</summary>
    [Fact]
    public void The_angle_of_the_lower_arm_is_right_handed_and_gives_what_its_travel_gives() => Assert.All(s_cases, each =>
    {
        Wishbone arm = each.Corner.Lower;
        double angle = each.Travel.Millimeters / 400;
        CornerPosition there = each.Geometry.AtLowerArm(Angle.FromRadians(angle))!;
        Triple turned = new WheelCase(each.Corner.Side, Of(arm.First), Of(arm.Second), Of(arm.Ball), default).JointAfter(angle);
        Assert.Equal(0, turned.Less(Of(there.LowerBall)).Size, Fine);
        Assert.Equal(0, Apart(there, each.Geometry.At(there.Travel)!, point => point), Fine);
    });

    /// <summary>
    /// A lower arm 4 degrees from upright raises this wheel for half a degree of its turn, by 0.019 mm, and lowers it from there on.
    /// </summary>
    [Theory]
    [InlineData(0.002)]
    [InlineData(0.005)]
    [InlineData(0.008)]
    public void A_wheel_that_soon_turns_back_is_found_before_it_does(double angle)
    {
        (double up, double across) = Math.SinCos(86 * Math.PI / 180);
        Wishbone Arm(Triple ball, double inward, double below) => new(
            ball.Plus(new(120, -inward, -below)).ToPoint(), ball.Plus(new(-140, -inward, -below)).ToPoint(), ball.ToPoint());
        CornerGeometry corner = CornerGeometry.FromPoints(
            CarSide.Left,
            Arm(new(5, 640, -70), 320 * across, 320 * up),
            Arm(new(5, 640, 170), 320, 0),
            new Triple(-130, 632, 20).ToPoint(),
            new Triple(-130, 312, 20).ToPoint(),
            new Triple(0, 660, 15).ToPoint());
        CornerPosition wanted = corner.AtLowerArm(Angle.FromRadians(angle))!;
        Assert.InRange(wanted.Travel.Millimeters, 0.005, 0.019);
        Assert.Equal(0, wanted.LowerBall.DistanceTo(corner.At(wanted.Travel)!.LowerBall).Millimeters, 1e-6);
        Assert.Null(corner.At(Length.FromMillimeters(0.02)));
    }

    /// <summary>
    /// Toe and camber at ride height change how far the wheel steers by a product of two small angles, theirs and the upright's: with
    /// half the travel and half the toe and camber a quarter is left. Camber alone does it, as far as the upright turns about x.
    /// </summary>
    [Fact]
    public void Toe_and_camber_at_ride_height_are_as_given_and_count_in_the_second_order() => Assert.All(s_cases, each =>
    {
        (Angle toe, Angle camber) = (0.2 * each.Toe, 0.2 * each.Camber);
        double far = Difference(1);
        Assert.InRange(Math.Abs(far), 0, 2e-5);
        Assert.InRange(Math.Abs(Difference(0.5) - far / 4), 0, 1e-7);

        double Difference(double part)
        {
            Length travel = Length.FromMillimeters(part);
            CornerGeometry aligned = each.Corner.Geometry.Aligned(part * toe, part * camber);
            double plain = each.Corner.Geometry.At(travel)!.Toe.Radians;
            return aligned.At(travel)!.Toe.Radians - part * toe.Radians - plain;
        }
    });

    [Theory]
    [InlineData(1.58, 0)]
    [InlineData(0, -1.58)]
    public void Toe_and_camber_that_no_wheel_has_are_refused(double toe, double camber) => Assert.Throws<ArgumentException>(
        () => s_cases[0].Geometry.Aligned(Angle.FromRadians(toe), Angle.FromRadians(camber)));

    [Fact]
    public void Steered_the_inner_joint_is_to_the_left_and_every_part_keeps_its_size() => Assert.All(s_cases, each =>
    {
        CornerPosition straight = each.Geometry.At(each.Travel)!;
        CornerPosition there = each.There;
        Point inner = each.Corner.Inner;
        Assert.Equal(0, there.Inner.DistanceTo(inner with { Y = inner.Y + each.Steer }).Millimeters, Fine);
        Assert.Equal(0, there.LowerBall.DistanceTo(straight.LowerBall).Millimeters, Fine);
        Assert.Equal(0, there.UpperBall.DistanceTo(straight.UpperBall).Millimeters, Fine);
        double[] before = Distances(each.Geometry.At(Length.Zero)!);
        Assert.All(Distances(there).Zip(before), pair => Assert.Equal(pair.Second, pair.First, Fine));

        // To the left, a rod behind the axle turns the front of the wheels to the right: toe-in on the left side.
        int wanted = (each.Corner.Place == JointPlace.BehindAxle ? 1 : -1) * (each.Corner.Side == CarSide.Left ? 1 : -1);
        Assert.Equal(wanted, Math.Sign((there.Toe - straight.Toe).Radians) * Math.Sign(each.Steer.Millimeters));
    });

    [Fact]
    public void What_is_no_travel_and_no_steering_is_not_reached()
    {
        CornerGeometry corner = s_cases[0].Geometry;
        Length[] nowhere =
        [
            Length.FromMeters(1e200), Length.FromMeters(-1e200), Length.FromMeters(1e30),
            Length.FromMillimeters(-5000), Length.FromMillimeters(5000),
        ];
        Assert.All(nowhere, far =>
        {
            Assert.Null(corner.At(far));
            Assert.Null(corner.At(Length.Zero, far));
            Assert.Null(corner.At(Length.FromMillimeters(10), far));
        });
    }

    private static Case[] Draw()
    {
        // One source for all: those of two numbers give values that go with one another.
        Random random = RandomCounts.For(RandomCounts.Corners);
        return [.. RandomCorners.All.Select(corner => new Case(corner, random))];
    }

    private static double[] Distances(CornerPosition at) =>
    [
        at.LowerBall.DistanceTo(at.UpperBall).Millimeters, at.LowerBall.DistanceTo(at.Outer).Millimeters,
        at.UpperBall.DistanceTo(at.Outer).Millimeters, at.Outer.DistanceTo(at.Inner).Millimeters,
        at.Wheel.DistanceTo(at.LowerBall).Millimeters, at.Wheel.DistanceTo(at.UpperBall).Millimeters,
        at.Wheel.DistanceTo(at.Outer).Millimeters,
    ];

    /// <summary>By how much two positions differ, the points of the first replaced, millimeters and radians added up.</summary>
    private static double Apart(CornerPosition one, CornerPosition other, Func<Point, Point> replace) =>
        Math.Abs((one.Toe - other.Toe).Radians)
        + Math.Abs((one.Camber - other.Camber).Radians)
        + Math.Abs((one.Travel - other.Travel).Millimeters)
        + replace(one.LowerBall).DistanceTo(other.LowerBall).Millimeters
        + replace(one.UpperBall).DistanceTo(other.UpperBall).Millimeters
        + replace(one.Outer).DistanceTo(other.Outer).Millimeters
        + replace(one.Inner).DistanceTo(other.Inner).Millimeters
        + replace(one.Wheel).DistanceTo(other.Wheel).Millimeters;

    private static Triple Of(Point point) => new(point.X.Millimeters, point.Y.Millimeters, point.Z.Millimeters);

    /// <summary>A corner with toe and camber of its own, somewhere in its travel and steered.</summary>
    private sealed class Case
    {
        public Case(RandomCorner corner, Random random)
        {
            double Between(double low, double high) => low + (high - low) * random.NextDouble();

            Corner = corner;
            Toe = Angle.FromRadians(Between(-0.03, 0.03));
            Camber = Angle.FromRadians(Between(-0.1, 0.1));
            Travel = Length.FromMillimeters(Between(-60, 60));
            Steer = Length.FromMillimeters(Between(5, 40) * (random.Next(2) == 0 ? 1 : -1));
            Geometry = Aligned(corner);
            There = Geometry.At(Travel, Steer)!;
        }

        public RandomCorner Corner { get; }

        public Angle Toe { get; }

        public Angle Camber { get; }

        public Length Travel { get; }

        public Length Steer { get; }

        public CornerGeometry Geometry { get; }

        public CornerPosition There { get; }

        public CornerGeometry Aligned(RandomCorner corner) => corner.Geometry.Aligned(Toe, Camber);
    }
}
