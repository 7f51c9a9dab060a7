using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>Points that are none of a corner.</summary>
public class CornerFaultTests
{
    private static readonly RandomCorner s_sound = new(
        CarSide.Left,
        new Wishbone(At(120, 320, -75), At(-130, 320, -75), At(5, 640, -70)),
        new Wishbone(At(110, 360, 150), At(-120, 360, 150), At(-15, 605, 170)),
        At(-130, 632, 20),
        At(-125, 300, 25),
        At(0, 725, 15));

    /// <summary>A sound corner with one thing wrong.</summary>
    public static TheoryData<CornerFault> Faults => [.. Enum.GetValues<CornerFault>()];

    [Fact]
    public void The_sound_corner_has_none()
    {
        Assert.Null(FaultOf(s_sound));
        Assert.NotNull(s_sound.Geometry.At(Length.FromMillimeters(60)));
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void Each_is_named_and_refused(CornerFault fault)
    {
        RandomCorner spoiled = Spoiled(fault);
        Assert.Equal(fault, FaultOf(spoiled));
        Assert.Contains($"{fault}", Assert.Throws<ArgumentException>(() => spoiled.Geometry).Message, StringComparison.Ordinal);
        Assert.Equal(fault, FaultOf(spoiled.Mirrored()));
        Assert.Equal(fault, FaultOf(spoiled.EachPoint(CornerGeometryTests.InInches)));
    }

    /// <summary>Each of the coordinates in turn. What is infinite or not a number, no length of UnitsNet can be.</summary>
    [Theory]
    [InlineData(1e200)]
    [InlineData(-1e100)]
    [InlineData(1e30)]
    [InlineData(-100.1)]
    public void Coordinates_far_beyond_any_car_are_refused(double meters)
    {
        for (int number = 0; number < 27; number++)
        {
            int counted = 0;
            Length Replaced(Length coordinate) => counted++ == number ? Length.FromMeters(meters) : coordinate;
            RandomCorner spoiled = s_sound.EachPoint(point => new Point(Replaced(point.X), Replaced(point.Y), Replaced(point.Z)));
            Assert.Throws<ArgumentException>(() => spoiled.Geometry);
            Assert.Throws<ArgumentException>(() => FaultOf(spoiled));
        }
    }

    /// <summary>Points without any sense in them: what is taken for a corner has to stand at ride height as it was given.</summary>
    [Fact]
    public void Whatever_is_accepted_stands_as_it_was_given()
    {
        Random random = RandomCounts.For(RandomCounts.Corners);
        int accepted = 0;
        for (int index = 0; index < RandomCounts.Corners; index++)
        {
            double size = Math.Pow(10, 5 * random.NextDouble());
            Length Anywhere() => Length.FromMillimeters(size * (2 * random.NextDouble() - 1));
            RandomCorner corner = s_sound.EachPoint(_ => new Point(Anywhere(), Anywhere(), Anywhere()));
            if (FaultOf(corner) is null)
            {
                accepted++;
                CornerPosition there = corner.Geometry.At(Length.Zero)!;
                Point[] points = [there.LowerBall, there.UpperBall, there.Outer, there.Inner, there.Wheel];
                Point[] given = [corner.Lower.Ball, corner.Upper.Ball, corner.Outer, corner.Inner, corner.Wheel];
                Assert.All(points.Zip(given), pair => Assert.Equal(0, pair.First.DistanceTo(pair.Second).Millimeters, 1e-6));
            }
        }

        Assert.True(accepted > RandomCounts.Corners / 2, $"{accepted}");
    }

    [Fact]
    public void Null_arms_are_refused()
    {
        Assert.Throws<ArgumentNullException>(() => (s_sound with { Lower = null! }).Geometry);
        Assert.Throws<ArgumentNullException>(() => (s_sound with { Upper = null! }).Geometry);
        Assert.Throws<ArgumentNullException>(() => FaultOf(s_sound with { Lower = null! }));
        Assert.Throws<ArgumentNullException>(() => FaultOf(s_sound with { Upper = null! }));
    }

    /// <summary>The bounds are those of the documentation: 1 mm.</summary>
    [Theory]
    [InlineData(0.9, CornerFault.LowerBallOnAxis)]
    [InlineData(1.1, null)]
    public void A_ball_joint_just_off_the_axis_is_none_of_a_corner(double off, CornerFault? fault) => Assert.Equal(
        fault, FaultOf(s_sound with { Lower = s_sound.Lower with { Ball = At(5, 320 + off, -75) } }));

    private static RandomCorner Spoiled(CornerFault fault)
    {
        Wishbone lower = s_sound.Lower;
        Wishbone upper = s_sound.Upper;
        return fault switch
        {
            CornerFault.LowerAxisIsAPoint => s_sound with { Lower = lower with { Second = lower.First } },
            CornerFault.UpperAxisIsAPoint => s_sound with { Upper = upper with { Second = upper.First } },
            CornerFault.LowerBallOnAxis => s_sound with { Lower = lower with { Ball = At(5, 320, -75) } },
            CornerFault.UpperBallOnAxis => s_sound with { Upper = upper with { Ball = At(0, 360, 150) } },
            CornerFault.BallsMeet => s_sound with { Upper = upper with { Ball = lower.Ball } },

            // Axis, upper and lower ball joint in one plane.
            CornerFault.UprightInLine => s_sound with { Upper = upper with { Ball = At(-15, 640 + 28, -70 - 22) } },

            // The inner joint where the line from the outer one through the steer axis goes.
            CornerFault.RodInLine => s_sound with { Inner = Between(s_sound.Outer, Between(lower.Ball, upper.Ball, 0.5), 2.5) },

            // The lower arm hangs straight down, so it moves the lower ball joint sideways only; the upright turns about the upper one,
            // and the wheel center is straight below that.
            CornerFault.WheelDoesNotRise => s_sound with
            {
                Lower = new Wishbone(At(120, 640, 130), At(-130, 640, 130), At(5, 640, -70)),
                Upper = new Wishbone(At(110, 360, 170), At(-120, 360, 170), At(5, 640, 170)),
                Wheel = At(5, 640, 15),
            },
            _ => throw new ArgumentOutOfRangeException(nameof(fault)),
        };
    }

    private static Point Between(Point from, Point to, double part) =>
        new(from.X + part * (to.X - from.X), from.Y + part * (to.Y - from.Y), from.Z + part * (to.Z - from.Z));

    private static CornerFault? FaultOf(RandomCorner corner) =>
        CornerGeometry.FaultOf(corner.Side, corner.Lower, corner.Upper, corner.Outer, corner.Inner, corner.Wheel);

    private static Point At(double x, double y, double z) =>
        new(Length.FromMillimeters(x), Length.FromMillimeters(y), Length.FromMillimeters(z));
}
