using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>Toe of two wheels, as total or of each, as length or angle.</summary>
public class CarToeTests
{
    private static readonly Length s_width = Length.FromMillimeters(600);

    [Fact]
    public void Half_of_a_total_is_each_wheels()
    {
        WheelToes byLength = CarToe.OfTotal(Mm(6)).ToWheels(s_width)!.Value;
        Assert.Equal(Math.Asin(3 / 600.0), byLength.Left.Radians, 1e-15);
        Assert.Equal(byLength.Left, byLength.Right);
        Assert.Equal(6, byLength.Across(s_width).Millimeters, 1e-9);
        WheelToes byAngle = CarToe.OfTotal(Deg(-0.5)).ToWheels(null)!.Value;
        Assert.Equal((-0.25, -0.25, -0.5), (byAngle.Left.Degrees, byAngle.Right.Degrees, byAngle.Total.Degrees));
    }

    [Fact]
    public void Each_wheel_may_be_told_in_its_own_way()
    {
        WheelToes toes = CarToe.OfEach(Mm(-3), Deg(0.2)).ToWheels(s_width)!.Value;
        Assert.Equal(Math.Asin(-3 / 600.0), toes[CarSide.Left].Radians, 1e-15);
        Assert.Equal(0.2, toes[CarSide.Right].Degrees, 1e-12);
        Assert.Equal(2, CarToe.OfEach(Mm(-3), Deg(0.2)).Readings.Count);
        Assert.Single(CarToe.OfTotal(Mm(1)).Readings);
    }

    [Fact]
    public void A_length_needs_a_width_and_must_be_below_it()
    {
        Assert.Null(CarToe.OfTotal(Mm(1)).ToWheels(null));
        Assert.Equal(0, CarToe.OfTotal(Mm(0)).ToWheels(null)!.Value.Left.Radians);
        Assert.Null(CarToe.OfTotal(Mm(1200)).ToWheels(s_width));
        Assert.NotNull(CarToe.OfTotal(Mm(1199)).ToWheels(s_width));
        Assert.Null(CarToe.OfEach(Mm(0), Mm(-600)).ToWheels(s_width));
        Assert.Null(CarToe.OfEach(Deg(0), Deg(90)).ToWheels(s_width));
        Assert.NotNull(CarToe.OfTotal(Deg(90)).ToWheels(s_width));
    }

    [Theory]
    [InlineData(CarSide.Left)]
    [InlineData(CarSide.Right)]
    public void One_wheel_alone_makes_up_the_total_across_any_width(CarSide side)
    {
        Random random = RandomCounts.For(1);
        Angle Drawn() => Angle.FromDegrees(20 * random.NextDouble() - 10);
        for (int i = 0; i < 1000; i++)
        {
            WheelToes now = new(Drawn(), Drawn());
            WheelToes want = new(Drawn(), Drawn());
            WheelToes after = now.With(side, now.AloneFor(side, want)!.Value);
            foreach (double width in (double[])[400, 700])
            {
                Length across = Length.FromMillimeters(width);
                Assert.Equal(want.Across(across).Millimeters, after.Across(across).Millimeters, 1e-9);
            }

            CarSide other = side == CarSide.Left ? CarSide.Right : CarSide.Left;
            Assert.Equal(now[other], after[other]);
        }

        WheelToes straight = new(Angle.Zero, Angle.FromDegrees(-60));
        Assert.Null(straight.AloneFor(CarSide.Left, new WheelToes(Angle.FromDegrees(30), Angle.Zero)));
    }

    [Fact]
    public void What_no_text_can_say_throws()
    {
        SteeringGeometry wheel = SteeringGeometry.FromArm(
            CarSide.Left, Length.FromMillimeters(150), JointPlace.BehindAxle, Angle.Zero, Length.FromMillimeters(400));
        Point origin = default;
        Point other = new(Length.FromMillimeters(100), Length.Zero, Length.Zero);
        foreach (double bad in (double[])[90, -90, 400])
        {
            Angle angle = Angle.FromDegrees(bad);
            Assert.Throws<ArgumentException>(() => wheel.Aligned(angle, Angle.Zero));
            Assert.Throws<ArgumentException>(() => wheel.Aligned(Angle.Zero, angle));
            Assert.Throws<ArgumentException>(() => SteeringGeometry.FromInclination(CarSide.Left, angle, Angle.Zero, origin, other, other));
            Assert.Throws<ArgumentException>(() => SteeringGeometry.FromInclination(CarSide.Left, Angle.Zero, angle, origin, other, other));
        }

        Point far = new(Length.FromMillimeters(1e160), Length.Zero, Length.Zero);
        Assert.Throws<ArgumentException>("outer", () => SteeringGeometry.FromPoints(CarSide.Left, origin, other, far, origin));
        Assert.Throws<ArgumentException>("axis", () => SteeringGeometry.FromPoints(CarSide.Left, origin, origin, other, origin));
        Assert.Throws<ArgumentException>("axis", () => SteeringGeometry.FromPoints(CarSide.Left, origin, far, other, origin));
        Assert.Throws<ArgumentNullException>(() => CarToe.OfTotal(null!));
        Assert.Throws<ArgumentNullException>(() => CarToe.OfEach(null!, Mm(0)));
        Assert.Throws<ArgumentNullException>(() => CarToe.OfEach(Mm(0), null!));
    }

    /// <summary>With the rod square to the arm, the arm alone turns the wheel.</summary>
    [Theory]
    [InlineData(29.99, false)]
    [InlineData(30.01, true)]
    [InlineData(499.99, true)]
    [InlineData(500.01, false)]
    public void An_arm_that_no_steering_has_is_unlikely(double arm, bool likely) => Assert.Equal(likely, SteeringGeometry.FromArm(
        CarSide.Right, Of(arm), JointPlace.AheadOfAxle, Angle.Zero, Of(400)).IsLikely);

    [Theory]
    [InlineData(CarSide.Left, 400, true)]
    [InlineData(CarSide.Left, 0, false)]
    [InlineData(CarSide.Left, -400, false)]
    [InlineData(CarSide.Right, -400, true)]
    [InlineData(CarSide.Right, 0, false)]
    [InlineData(CarSide.Right, 400, false)]
    public void A_rod_that_does_not_run_inward_is_unlikely(CarSide side, double toTheRight, bool likely)
    {
        Point axis = new(Of(0), Of(0), Of(100));
        Point outer = new(Of(-110), Of(100), Of(0));
        Point inner = new(Of(-250), Of(100 - toTheRight), Of(0));
        Assert.Equal(likely, SteeringGeometry.FromPoints(side, default, axis, outer, inner).IsLikely);
    }

    [Fact]
    public void A_rod_out_of_reach_turns_no_wheel()
    {
        SteeringGeometry wheel = SteeringGeometry.FromArm(
            CarSide.Left, Length.FromMillimeters(150), JointPlace.BehindAxle, Angle.Zero, Length.FromMillimeters(400));
        double far = Math.Sqrt(150 * 150 + 400 * 400);
        Assert.Null(wheel.Turned(Length.FromMillimeters(far + 151)));
        Assert.Null(wheel.Turned(Length.FromMillimeters(far - 151)));
        Assert.NotNull(wheel.Turned(Length.FromMillimeters(far + 149)));
        Assert.Same(wheel, wheel.Turned(Length.FromMillimeters(400)));
    }

    [Fact]
    public void The_lengths_that_are_named_as_reachable_are_reached_and_none_below_zero()
    {
        SteeringGeometry wheel = SteeringGeometry.FromPoints(
            CarSide.Left,
            new Triple(8, 640, -70).ToPoint(),
            new Triple(-16, 600, 190).ToPoint(),
            new Triple(-150, 628, -35).ToPoint(),
            new Triple(-128, 205, -22).ToPoint());
        ToeAnswer own = Toe.FromLength(wheel, wheel.RodLength);
        Length hair = Length.FromMillimeters(2 * Millimeters.Negligible);
        Assert.Equal(ToeOutcome.Reached, Toe.FromLength(wheel, own.Shortest).Outcome);
        Assert.Equal(ToeOutcome.Reached, Toe.FromLength(wheel, own.Longest).Outcome);
        Assert.Equal(ToeOutcome.OutOfReach, Toe.FromLength(wheel, own.Shortest - hair).Outcome);
        Assert.Equal(ToeOutcome.OutOfReach, Toe.FromLength(wheel, own.Longest + hair).Outcome);
        Assert.Equal(ToeOutcome.OutOfReach, Toe.FromLength(wheel, -wheel.RodLength).Outcome);
        Assert.Null(wheel.Turned(-wheel.RodLength));
    }

    /// <summary>
    /// The axis leans inward by 60 degrees: the spin axis, 30 degrees from it, goes round a cone that a level direction touches at
    /// asin(sin 30 / cos 30) = 35.3 degrees, and no turn brings the ground line beyond.
    /// </summary>
    [Theory]
    [InlineData(20, ToeOutcome.Reached)]
    [InlineData(-20, ToeOutcome.Reached)]
    [InlineData(40, ToeOutcome.OutOfReach)]
    [InlineData(-40, ToeOutcome.OutOfReach)]
    public void A_toe_that_no_turn_about_a_leaning_axis_gives_is_out_of_reach(double degrees, ToeOutcome expected)
    {
        SteeringGeometry wheel = SteeringGeometry.FromInclination(
            CarSide.Left,
            Angle.FromDegrees(60),
            Angle.Zero,
            new Triple(0, 600, 0).ToPoint(),
            new Triple(-150, 600, 0).ToPoint(),
            new Triple(-150, 300, -150).ToPoint());
        Assert.Equal(expected, Toe.LengthFor(wheel, Angle.FromDegrees(degrees)).Outcome);
    }

    [Fact]
    public void Nothing_is_allocated()
    {
        SteeringGeometry wheel = SteeringGeometry.FromArm(
            CarSide.Left, Length.FromMillimeters(150), JointPlace.BehindAxle, Angle.Zero, Length.FromMillimeters(400));
        Length plates = Length.FromMillimeters(610);
        double sum = 0;
        long Allocated()
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            for (int i = 0; i < 1000; i++)
            {
                Angle toe = Toe.FromLength(wheel, Length.FromMillimeters(400 + i * 0.01)).Toe!.Value;
                sum += Toe.LengthFor(wheel, toe).Length!.Value.Millimeters + Toe.AtPlates(toe, plates).Millimeters;
            }

            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Allocated();
        Assert.Equal(0, Allocated());
        Assert.True(sum > 0);
    }

    private static Length Of(double mm) => Length.FromMillimeters(mm);

    private static ToeReading Mm(double mm) => new(Length.FromMillimeters(mm), null);

    private static ToeReading Deg(double degrees) => new(null, Angle.FromDegrees(degrees));
}
