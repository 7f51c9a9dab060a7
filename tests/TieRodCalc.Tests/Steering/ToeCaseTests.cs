using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>Worked toe figures, and the questions that have no answer.</summary>
public class ToeCaseTests
{
    /// <summary>The figures are stated to 0.00001 degrees and 0.001 mm.</summary>
    private const double Degrees = 0.0005;
    private const double Mm = 0.01;

    private static readonly WheelCase s_corner = new(
        CarSide.Left, new(8, 640, -70), new(-16, 600, 190), new(-150, 628, -35), new(-128, 205, -22));

    [Theory]
    [InlineData(JointPlace.BehindAxle, 2.911111, 1.09452)]
    [InlineData(JointPlace.BehindAxle, 10, 3.76222)]
    [InlineData(JointPlace.AheadOfAxle, 2.911111, -1.09452)]
    public void Short_form_gives_the_worked_toe(JointPlace joint, double longer, double degrees)
    {
        SteeringGeometry wheel = Arm(CarSide.Left, joint, 0);
        Assert.Equal(degrees, ToeOf(wheel, 400 + longer).Degrees, Degrees);
        Assert.Equal(degrees, ToeOf(Arm(CarSide.Right, joint, 0), 400 + longer).Degrees, Degrees);
    }

    [Theory]
    [InlineData(2.911111, 1.08261)]
    [InlineData(-2.911111, -1.08200)]
    [InlineData(5, 1.86003)]
    [InlineData(-5, -1.85825)]
    public void Points_give_the_worked_toe(double longer, double degrees)
    {
        SteeringGeometry wheel = s_corner.Geometry;
        Assert.Equal(degrees, ToeOf(wheel, s_corner.RodLength + longer).Degrees, Degrees);
        Assert.Equal(s_corner.RodLength, wheel.RodLength.Millimeters, Mm);
    }

    [Fact]
    public void Toe_at_the_plates_is_the_width_times_the_sine()
    {
        // 1.09452 degrees at 610 mm.
        Length plates = Length.FromMillimeters(610);
        Angle toe = ToeOf(Arm(CarSide.Left, JointPlace.BehindAxle, 0), 402.911111);
        Assert.Equal(11.652, Toe.AtPlates(toe, plates).Millimeters, Mm);
        Assert.Equal(0, Toe.AtPlates(Angle.Zero, plates).Millimeters, 0.0);
    }

    [Fact]
    public void The_present_length_is_no_change_of_toe()
    {
        Assert.Equal(0, ToeOf(s_corner.Geometry, s_corner.RodLength).Degrees, 1e-9);
        Assert.Equal(s_corner.RodLength, Toe.LengthFor(s_corner.Geometry, Angle.Zero).Length!.Value.Millimeters, 1e-9);
    }

    [Fact]
    public void A_longer_rod_behind_the_axle_gives_toe_in_and_ahead_of_it_toe_out()
    {
        foreach (CarSide side in Enum.GetValues<CarSide>())
        {
            foreach (double angle in (double[])[-10, 0, 10])
            {
                Assert.True(ToeOf(Arm(side, JointPlace.BehindAxle, angle), 403).Degrees > 0);
                Assert.True(ToeOf(Arm(side, JointPlace.AheadOfAxle, angle), 403).Degrees < 0);
            }
        }
    }

    [Theory]
    [InlineData(CarSide.Left, JointPlace.BehindAxle, 0)]
    [InlineData(CarSide.Right, JointPlace.BehindAxle, 12)]
    [InlineData(CarSide.Left, JointPlace.AheadOfAxle, 7)]
    [InlineData(CarSide.Right, JointPlace.AheadOfAxle, -9)]
    public void Short_form_is_an_upright_axis_with_the_rod_level(CarSide side, JointPlace joint, double degreesOver)
    {
        // The rod angle is positive where the angle between arm and rod is over 90 degrees: the inner joint is then
        // further from the axis, beyond the outer joint as seen along the arm.
        (double sine, double cosine) = Math.SinCos(degreesOver * Math.PI / 180);
        double along = joint == JointPlace.AheadOfAxle ? 1 : -1;
        double inward = side == CarSide.Left ? -1 : 1;
        Triple outer = new(along * 152.4, 0, 0);
        Triple inner = outer.Plus(new Triple(along * sine, inward * cosine, 0), 400);
        WheelCase points = new(side, default, new(0, 0, 250), outer, inner);
        foreach (double length in (double[])[380, 397, 400, 404.5, 415])
        {
            Assert.Equal(ToeOf(points.Geometry, length).Degrees, ToeOf(Arm(side, joint, degreesOver), length).Degrees, 1e-9);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(8)]
    [InlineData(-8)]
    public void For_small_changes_toe_is_the_change_over_the_arm(double degreesOver)
    {
        const double ArmLength = 152.4;
        const double Rod = 400;
        (double sine, double cosine) = Math.SinCos(Math.Abs(degreesOver) * Math.PI / 180);
        foreach (double change in (double[])[-2, -0.5, 0.01, 0.5, 2])
        {
            // L' = r cos a, |L''| at most r sin a + r^2 sin^2 a / L; the term that change / (r cos a) leaves out is
            // L'' change^2 / (2 L'^3), and the next one is of the size of (change / r)^3.
            double slope = ArmLength * cosine;
            double second = (ArmLength * sine + ArmLength * ArmLength * sine * sine / Rod) * change * change / (2 * Math.Pow(slope, 3));
            double leftOut = second + Math.Pow(Math.Abs(change) / ArmLength, 3);
            double toe = ToeOf(Arm(CarSide.Left, JointPlace.BehindAxle, degreesOver), Rod + change).Radians;
            Assert.InRange(toe - change / slope, -leftOut, leftOut);
        }
    }

    [Fact]
    public void A_length_out_of_reach_says_what_is_reachable()
    {
        double shortest = double.PositiveInfinity;
        double longest = 0;
        for (double turn = -Math.PI; turn < Math.PI; turn += 1e-4)
        {
            shortest = Math.Min(shortest, s_corner.RodLengthAt(turn));
            longest = Math.Max(longest, s_corner.RodLengthAt(turn));
        }

        foreach (double length in (double[])[shortest - 1, longest + 1])
        {
            ToeAnswer answer = Toe.FromLength(s_corner.Geometry, Length.FromMillimeters(length));
            Assert.Equal(ToeOutcome.OutOfReach, answer.Outcome);
            Assert.Null(answer.Toe);
            Assert.Equal(shortest, answer.Shortest.Millimeters, 1e-3);
            Assert.Equal(longest, answer.Longest.Millimeters, 1e-3);
        }

        foreach (double length in (double[])[shortest + 1, longest - 1])
        {
            Assert.Equal(ToeOutcome.Reached, Toe.FromLength(s_corner.Geometry, Length.FromMillimeters(length)).Outcome);
        }
    }

    [Theory]
    [InlineData(108)]
    [InlineData(150)]
    [InlineData(-80)]
    [InlineData(-110)]
    [InlineData(-150)]
    public void A_toe_out_of_reach_says_what_is_reachable(double degrees)
    {
        // Toe of this corner goes from -69.8 to 107.2 degrees between its two dead centers; a wheel that is half a turn
        // further has the same ground line the other way round, which is another toe.
        RodLengthAnswer answer = Toe.LengthFor(s_corner.Geometry, Angle.FromDegrees(degrees));
        Assert.Equal(ToeOutcome.OutOfReach, answer.Outcome);
        Assert.Null(answer.Length);
        ToeAnswer other = Toe.FromLength(s_corner.Geometry, Length.FromMillimeters(1));
        Assert.Equal((other.Shortest.Millimeters, other.Longest.Millimeters), (answer.Shortest.Millimeters, answer.Longest.Millimeters));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    public void A_rod_in_line_with_the_steer_axis_says_so(int side)
    {
        // The inner joint stands in the plane of axis and outer joint: before it and beyond it.
        WheelCase wheel = new(CarSide.Left, new(0, 600, -80), new(0, 600, 150), new(-150, 600, 0), new(side * 300, 600, 20));
        Assert.Equal(ToeOutcome.InLine, Toe.FromLength(wheel.Geometry, Length.FromMillimeters(wheel.RodLength)).Outcome);
        Assert.Equal(ToeOutcome.InLine, Toe.LengthFor(wheel.Geometry, Angle.FromDegrees(1)).Outcome);
        Assert.Null(Toe.FromLength(wheel.Geometry, Length.FromMillimeters(wheel.RodLength)).Toe);
    }

    private static SteeringGeometry Arm(CarSide side, JointPlace joint, double degreesOver) => SteeringGeometry.FromArm(
        side, Length.FromMillimeters(152.4), joint, Angle.FromDegrees(degreesOver), Length.FromMillimeters(400));

    private static Angle ToeOf(SteeringGeometry wheel, double length)
    {
        ToeAnswer answer = Toe.FromLength(wheel, Length.FromMillimeters(length));
        Assert.Equal(ToeOutcome.Reached, answer.Outcome);
        return answer.Toe!.Value;
    }
}
