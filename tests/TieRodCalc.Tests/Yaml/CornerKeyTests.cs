using System.Text.RegularExpressions;
using TieRodCalc.Steering;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Yaml;

/// <summary>Points of the corners of a job, and the wheels of its steering.</summary>
public class CornerKeyTests
{
    private const string Rod = "outer: [-6 in, 20 in, 6 in], inner: [-6 in, 8 in, 6 in]";
    private const string Axis = "axis: [[0 in, 20 in, 5 in], [0 in, 19 in, 15 in]]";
    private const string Steering = "steering: {left: {" + Axis + ", " + Rod + "}}\n";
    private const string Lower = "lower: {axis: [[-6 in, 8 in, 5 in], [6 in, 8 in, 5 in]], ball: [0 in, 20 in, 5 in]}";
    private const string Upper = "upper: {axis: [[-6 in, 10 in, 13 in], [6 in, 10 in, 13 in]], ball: [0 in, 19 in, 15 in]}";
    private const string Wheel = "wheel: [0 in, 22 in, 9 in]";
    private const string Points = Lower + ", " + Upper + ", " + Wheel;
    private const string Corner = "corner: {left: {" + Points + "}}";

    [Fact]
    public void Points_make_a_corner()
    {
        CheckedFile read = Check(Steering + Corner);
        Assert.Empty(read.Notes);
        JobCorner corner = Assert.Single(read.Job!.Corners);
        Assert.Equal((CarSide.Left, null), (corner.Side, corner.Missing));
        Assert.Equal((null, null, null, null), (corner.BumpTravel, corner.DroopTravel, corner.Steer, corner.Moves));
        CornerGeometry geometry = corner.Geometry!;
        Assert.Equal(CarSide.Left, geometry.Side);
        AssertAt(-6, 8, 5, geometry.Lower.First);
        AssertAt(6, 8, 5, geometry.Lower.Second);
        AssertAt(0, 20, 5, geometry.Lower.Ball);
        AssertAt(-6, 10, 13, geometry.Upper.First);
        AssertAt(6, 10, 13, geometry.Upper.Second);
        AssertAt(0, 19, 15, geometry.Upper.Ball);
        AssertAt(-6, 20, 6, geometry.Outer);
        AssertAt(-6, 8, 6, geometry.Inner);
        AssertAt(0, 22, 9, geometry.Wheel);
    }

    [Theory]
    [InlineData("steering: {camber: -1.5 deg, left: {" + Axis + ", " + Rod + "}}\n", -1.5)]
    [InlineData("steering: {camber: -1.5 deg, left: {" + Axis + ", " + Rod + ", camber: 0.5 deg}}\n", 0.5)]
    [InlineData(Steering, 0)]
    public void Camber_is_that_of_the_steering(string steering, double camber)
    {
        CornerPosition stands = Check(steering + Corner).Job!.Corners[0].Geometry!.At(Length.Zero)!;
        Assert.Equal((0, camber), (Math.Round(stands.Toe.Degrees, 9), Math.Round(stands.Camber.Degrees, 9)));
    }

    [Fact]
    public void The_right_side_is_the_left_one_mirrored()
    {
        string both = "steering: {camber: -1 deg, left: {" + Axis + ", " + Rod + "}, right: {" + Mirrored(Axis + ", " + Rod) + "}}\n"
            + "corner: {right: {" + Mirrored(Points) + "}, left: {" + Points + "}}";
        CheckedFile read = Check(both);
        Assert.Empty(read.Notes);
        Assert.Equal([CarSide.Left, CarSide.Right], read.Job!.Corners.Select(corner => corner.Side));
        AssertAt(0, -22, 9, read.Job.Corners[1].Geometry!.Wheel);
        CornerPosition[] inBump = [.. read.Job.Corners.Select(corner => corner.Geometry!.At(Length.FromInches(2))!)];
        Assert.NotEqual(0, inBump[0].Toe.Degrees, 0.001);
        Assert.Equal(inBump[0].Toe.Degrees, inBump[1].Toe.Degrees, 1e-9);
        Assert.Equal(inBump[0].Camber.Degrees, inBump[1].Camber.Degrees, 1e-9);
    }

    [Fact]
    public void Travel_steering_and_moves_are_read()
    {
        JobCorner whole = ReadWith(
            "travel: {bump: 3 in, droop: 50 mm}, steer: 2 in, moves: "
                + "{outer: {up: 1 mm, down: 2 mm}, inner: {up: 3 mm, down: 4 mm}, length: {shorter: 5 mm, longer: 6 mm}}");
        Assert.Equal((76.2, 50, 50.8), (Mm(whole.BumpTravel), Mm(whole.DroopTravel), Mm(whole.Steer)));
        AssertMoves((2, 1), (4, 3), (5, 6), whole);
        AssertMoves((7, 7), (0, 0), (25.4, 25.4), ReadWith("moves: {outer: 7 mm, length: 1 in}"));
        AssertMoves((0, 7), (0, 0), (8, 0), ReadWith("moves: {outer: {up: 7 mm}, inner: 0 in, length: {shorter: 8 mm}}"));
        AssertMoves((0, 0), (9, 0), (0, 8), ReadWith("moves: {inner: {down: 9 mm}, length: {longer: 8 mm}}"));
        AssertMoves((0, 0), (0, 0), (0, 0), ReadWith("moves: {}"));
        JobCorner up = ReadWith("travel: {bump: 2 in}");
        Assert.Equal((50.8, null, null), (Mm(up.BumpTravel), up.DroopTravel, up.Steer));
        JobCorner down = ReadWith("travel: {droop: 1 in}");
        Assert.Equal((null, 25.4), (down.BumpTravel, Mm(down.DroopTravel)));
    }

    [Theory]
    [InlineData("", "'outer' and 'inner' in 'left' of 'steering'")]
    [InlineData("steering: {arm: 6 in, joint: behind axle}\n", "'outer' and 'inner' in 'left' of 'steering'")]
    [InlineData("steering: {left: {arm: 6 in, joint: behind axle}}\n", "'outer' and 'inner' in 'left' of 'steering'")]
    [InlineData("steering: {layout: one rod between wheels, left: {" + Axis + ", " + Rod + "}}\n", "'steering' says one rod between wheels")]
    public void What_is_missing_has_its_place(string steering, string phrase)
    {
        CheckedFile read = Check($"{steering}corner:\n  left: {{{Points}, steer: 2 in}}\n");
        JobCorner corner = Assert.Single(read.Job!.Corners);
        Assert.Null(corner.Geometry);
        Assert.Equal(50.8, Mm(corner.Steer));
        Problem missing = corner.Missing!;
        Assert.Contains(phrase, missing.Message, StringComparison.Ordinal);
        Assert.Equal(("-", steering.Length > 0 ? 5 : 4, 3, 4), (missing.File, missing.Line, missing.Column, missing.Length));
        Assert.Empty(read.Notes);
    }

    [Fact]
    public void A_job_may_have_no_corner()
    {
        Assert.Empty(Check("units: mm").Job!.Corners);
        Assert.Empty(Check("corner: {}").Job!.Corners);
    }

    [Theory]
    [InlineData(Axis, "lower", "ball: [0 in, 20 in, 5 in]", "ball: [0 in, 20.05 in, 5 in]", "1.26 mm from the corner's lower ball joint")]
    [InlineData(Axis, "upper", "ball: [0 in, 19 in, 15 in]", "ball: [-2 mm, 19 in, 15 in]", "2.00 mm from the corner's upper ball joint")]
    [InlineData("axis: {inclination: 5.7106 deg, caster: 0 deg, through: [0 in, 20 in, 5 in]}", "lower", "20 in", "20 in", null)]
    [InlineData("axis: {inclination: -5.7106 deg, caster: 0 deg, through: [0 in, 20 in, 5 in]}", "upper", "20 in", "20 in", "50.55 mm from the corner's upper ball joint")]
    [InlineData("axis: {inclination: 5.7106 deg, caster: 1 deg, through: [0 in, 20 in, 5 in]}", "upper", "20 in", "20 in", "4.43 mm from the corner's upper ball joint")]
    [InlineData(Axis, "lower", "ball: [0 in, 20 in, 5 in]", "ball: [0.9 mm, 20 in, 5 in]", null)]
    public void A_steer_axis_beside_the_ball_joints_is_noted(string axis, string arm, string piece, string instead, string? phrase)
    {
        string lower = arm == "lower" ? Lower.Replace(piece, instead, StringComparison.Ordinal) : Lower;
        string upper = arm == "upper" ? Upper.Replace(piece, instead, StringComparison.Ordinal) : Upper;
        string left = $"{axis}, {Rod}";
        string corner = $"{lower}, {upper}, {Wheel}";
        foreach ((string side, string steering, string points) in
            new[] { ("left", left, corner), ("right", Mirrored(left), Mirrored(corner)) })
        {
            CheckedFile read = Check($"steering: {{{side}: {{{steering}}}}}\ncorner: {{{side}: {{{points}}}}}");
            Assert.Equal(phrase is null ? 0 : 1, read.Notes.Count);
            Assert.NotNull(read.Job!.Corners[0].Geometry);
            foreach (Problem note in read.Notes)
            {
                Assert.Equal(
                    $"the steer axis of the {side} wheel in 'steering' passes {phrase}; the toe of 'bump' goes by the ball joints", note.Message);
                Assert.Equal((4, 10, side.Length), (note.Line, note.Column, note.Length));
            }
        }
    }

    [Theory]
    [InlineData(Steering + "corner: {left: {lower: {axis: «[[6 in, 8 in, 5 in], [6 in, 8 in, 5 in]]», ball: [0 in, 20 in, 5 in]}, " + Upper + ", " + Wheel + "}}", "the two points of the lower arm's axis are nearer than 1 mm")]
    [InlineData(Steering + "corner: {left: {" + Lower + ", upper: {axis: «[[6 in, 8 in, 5 in], [6 in, 8 in, 128 mm]]», ball: [0 in, 19 in, 15 in]}, " + Wheel + "}}", "the two points of the upper arm's axis are nearer than 1 mm")]
    [InlineData(Steering + "corner: {left: {lower: {axis: [[-6 in, 8 in, 5 in], [6 in, 8 in, 5 in]], ball: «[0 in, 8 in, 5 in]»}, " + Upper + ", " + Wheel + "}}", "the ball joint lies on the axis of its arm")]
    [InlineData(Steering + "corner: {left: {" + Lower + ", upper: {axis: [[-6 in, 10 in, 13 in], [6 in, 10 in, 13 in]], ball: «[0 in, 10 in, 13 in]»}, " + Wheel + "}}", "the ball joint lies on the axis of its arm")]
    [InlineData(Steering + "corner: {left: {" + Lower + ", upper: {axis: [[-6 in, 10 in, 13 in], [6 in, 10 in, 13 in]], ball: «[0 in, 20 in, 5 in]»}, " + Wheel + "}}", "the upper ball joint is nearer than 1 mm to the lower one")]
    [InlineData(Steering + "corner: {left: {" + Lower + ", upper: {axis: [[-6 in, 18 in, 25 in], [6 in, 18 in, 25 in]], ball: «[0 in, 19 in, 15 in]»}, " + Wheel + "}}", "the upper arm stands in line with the upright")]
    [InlineData(Steering + "corner: {left: {lower: {axis: «[[-6 in, 8 in, 0 in], [-6 in, 8 in, 9 in]]», ball: [0 in, 20 in, 5 in]}, upper: {axis: [[-6 in, 7 in, 0 in], [-6 in, 7 in, 9 in]], ball: [0 in, 19 in, 15 in]}, " + Wheel + "}}", "turning the lower arm about this axis does not raise the wheel")]
    [InlineData("steering: {left: {" + Axis + ", outer: [0 in, 22 in, 6 in], inner: «[0 in, 8 in, 6 in]»}}\n" + Corner, "the rod is in line with the steer axis")]
    [InlineData("corner: {«front»: {}}", "'corner' of the job has no key 'front'")]
    [InlineData("corner: {left: «{" + Lower + ", " + Upper + "}»}", "'wheel' is missing in 'left' of 'corner' of the job")]
    [InlineData("corner: {left: «{" + Lower + ", " + Wheel + "}»}", "'upper' is missing")]
    [InlineData("corner: {left: «{" + Upper + ", " + Wheel + "}»}", "'lower' is missing")]
    [InlineData("corner: {left: {lower: «{ball: [0 in, 20 in, 5 in]}», " + Upper + ", " + Wheel + "}}", "'axis' is missing in 'lower' of 'left'")]
    [InlineData("corner: {left: {" + Lower + ", upper: «{axis: [[1 in, 1 in, 1 in], [0 in, 1 in, 1 in]]}», " + Wheel + "}}", "'ball' is missing in 'upper' of 'left'")]
    [InlineData("corner: {left: {lower: {axis: [[1 in, 1 in, 1 in], [0 in, 1 in, 1 in]], ball: «[1 in]»}, " + Upper + ", " + Wheel + "}}", "a point has three coordinates")]
    [InlineData("corner: {left: {" + Lower + ", upper: {axis: [[1 in, 1 in, 1 in], «2 in»], ball: [0 in, 19 in, 15 in]}, " + Wheel + "}}", "'axis' must be a point")]
    [InlineData("corner: {left: {" + Points + ", travel: {bump: «0 in»}}}", "'bump' must be above zero")]
    [InlineData("corner: {left: {" + Points + ", travel: {droop: «0 mm»}}}", "'droop' must be above zero")]
    [InlineData("corner: {left: {" + Points + ", travel: «2 in»}}", "'travel' must be keys and values, not a single value")]
    [InlineData("corner: {left: {" + Points + ", steer: «0 mm»}}", "'steer' must be above zero")]
    [InlineData("corner: {left: {" + Points + ", moves: «2 in»}}", "'moves' must be keys and values")]
    [InlineData("corner: {left: {" + Points + ", moves: {outer: {«shorter»: 2 in}}}}", "'outer' of 'moves' of 'left' of 'corner' of the job has no key 'shorter'")]
    [InlineData("corner: {left: {" + Points + ", moves: {length: {«up»: 2 in}}}}", "'length' of 'moves' of 'left' of 'corner' of the job has no key 'up'")]
    [InlineData("corner: {left: {" + Points + ", moves: {outer: «[]»}}}", "'outer' must be a single value, not a list")]
    [InlineData("corner: {left: {" + Points + ", moves: {inner: 2«»}}}", "the unit is missing")]
    [InlineData("corner: {left: {" + Points + ", moves: {inner: {up: «-»2 in}}}}", "")]
    public void Corners_are_checked(string entry, string phrase, string? suggestion = null) =>
        new Marked($"tierodcalc: 1\njob: x\n{entry}\n").Problem(phrase, suggestion);

    [Fact]
    public void A_wheel_of_the_steering_for_a_rod_of_a_length()
    {
        Length rod = Length.FromInches(15);
        Job job = Check("steering: {camber: -1 deg, left: {arm: 6 in, joint: ahead of axle}, right: {" + Mirrored(Axis + ", " + Rod) + "}}").Job!;
        Assert.False(job.OneRod);
        Assert.Equal(
            SteeringGeometry.FromArm(CarSide.Left, Length.FromInches(6), JointPlace.AheadOfAxle, Angle.Zero, rod)
                .Aligned(Angle.Zero, Angle.FromDegrees(-1)),
            job.WheelOf(CarSide.Left, rod));
        SteeringGeometry right = job.WheelOf(CarSide.Right, rod)!;
        Assert.Equal((CarSide.Right, 12), (right.Side, Math.Round(right.RodLength.Inches, 9)));
        Assert.Null(Check("steering: {left: {arm: 6 in, joint: ahead of axle}}").Job!.WheelOf(CarSide.Right, rod));
        Assert.Null(Check("units: mm").Job!.WheelOf(CarSide.Left, rod));
        Assert.Throws<ArgumentException>("rod", () => job.WheelOf(CarSide.Right, Length.Zero));
        Assert.Throws<ArgumentException>("rod", () => job.WheelOf(CarSide.Left, Length.FromInches(-15)));
    }

    [Fact]
    public void With_one_rod_each_side_has_its_own_wheel()
    {
        Job job = Check("steering: {layout: one rod between wheels, held: left, left: {arm: 6 in, joint: behind axle}, right: {arm: 5 in, joint: behind axle}}").Job!;
        Assert.True(job.OneRod);
        foreach ((CarSide side, double arm) in new[] { (CarSide.Left, 6.0), (CarSide.Right, 5.0) })
        {
            Length rod = Length.FromInches(40);
            Assert.Equal(
                SteeringGeometry.FromArm(side, Length.FromInches(arm), JointPlace.BehindAxle, Angle.Zero, rod), job.WheelOf(side, rod));
        }
    }

    /// <summary>Every point with its y reversed; all have it above zero.</summary>
    private static string Mirrored(string points) =>
        Regex.Replace(points, @"\[([^][,]+), ([^][,]+), ([^][,]+)\]", "[$1, -$2, $3]");

    private static CheckedFile Check(string entries)
    {
        CheckedFile read = Marked.Check($"tierodcalc: 1\njob: x\n{entries}\n");
        Assert.Empty(read.Problems);
        return read;
    }

    private static JobCorner ReadWith(string more) => Check($"{Steering}corner: {{left: {{{Points}, {more}}}}}").Job!.Corners[0];

    private static double? Mm(Length? length) => length is { } said ? Math.Round(said.Millimeters, 9) : null;

    private static void AssertAt(double x, double y, double z, Point point) =>
        Assert.Equal(0, point.DistanceTo(new Point(Length.FromInches(x), Length.FromInches(y), Length.FromInches(z))).Millimeters, 1e-9);

    private static void AssertMoves(
        (double Less, double More) outer, (double Less, double More) inner, (double Less, double More) rod, JobCorner corner)
    {
        static (double, double) Of(MoveRange range) => (Math.Round(range.Less.Millimeters, 9), Math.Round(range.More.Millimeters, 9));
        Assert.Equal((outer, inner, rod), (Of(corner.Moves!.Outer), Of(corner.Moves.Inner), Of(corner.Moves.Rod)));
    }
}
