using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Yaml;

public class SteeringKeyTests
{
    private const string Left = "{axis: [[0 in, 20 in, 5 in], [0 in, 21 in, 15 in]], outer: [-6 in, 20 in, 6 in], inner: [-6 in, 6 in, 6 in]}";
    private const string Right = "{axis: [[0 in, -20 in, 5 in], [0 in, -21 in, 15 in]], outer: [-6 in, -20 in, 6 in], inner: [-6 in, -6 in, 6 in]}";

    private static readonly Length Target = Length.FromInches(15.75);

    [Theory]
    [InlineData("{arm: 6 in, joint: ahead of axle}", "left", 6, JointPlace.AheadOfAxle, 0)]
    [InlineData("{arm: 6 in, joint: ahead of axle}", "right", 6, JointPlace.AheadOfAxle, 0)]
    [InlineData("{arm: 6 in, joint: behind axle, rod_angle: -4 deg}", "left", 6, JointPlace.BehindAxle, -4)]
    [InlineData("{arm: 6 in, joint: behind axle, left: {arm: 5 in, rod_angle: 3 deg}}", "left", 5, JointPlace.BehindAxle, 3)]
    [InlineData("{arm: 6 in, joint: behind axle, left: {arm: 5 in}}", "right", 6, JointPlace.BehindAxle, 0)]
    [InlineData("{joint: behind axle, left: {arm: 5 in}, right: {arm: 6 in}}", "right", 6, JointPlace.BehindAxle, 0)]
    [InlineData("{arm: 6 in, left: {joint: behind axle}}", "left", 6, JointPlace.BehindAxle, 0)]
    public void An_arm_for_both_sides_or_for_each(string steering, string side, double arm, JointPlace joint, double angle)
    {
        CarSide wanted = side == "left" ? CarSide.Left : CarSide.Right;
        Assert.Equal(
            SteeringGeometry.FromArm(wanted, Length.FromInches(arm), joint, Angle.FromDegrees(angle), Target), Request(steering, side).Steering);
    }

    [Fact]
    public void Points_of_one_side()
    {
        Point At(double x, double y, double z) => new(Length.FromInches(x), Length.FromInches(y), Length.FromInches(z));
        SteeringGeometry right = SteeringGeometry.FromPoints(CarSide.Right, At(0, -20, 5), At(0, -21, 15), At(-6, -20, 6), At(-6, -6, 6));
        SteeringGeometry left = SteeringGeometry.FromPoints(CarSide.Left, At(0, 20, 5), At(0, 21, 15), At(-6, 20, 6), At(-6, 6, 6));
        Assert.Equal(right, Request($"{{right: {Right}}}", "right").Steering);
        Assert.Equal(left, Request($"{{left: {Left}}}", "left").Steering);
        Assert.Null(Request($"{{right: {Right}}}", "left").Steering);
        Assert.NotNull(Request($"{{arm: 6 in, joint: behind axle, right: {Right}}}", "left").Steering);

        // Both joints are behind the axle: a longer rod turns either wheel in.
        foreach ((SteeringGeometry wheel, CarSide side) in new[] { (right, CarSide.Right), (left, CarSide.Left) })
        {
            Assert.Equal(side, wheel.Side);
            Assert.Equal(14, wheel.RodLength.Inches, 1e-9);
            Assert.True(Toe.FromLength(wheel, Length.FromInches(14.1)).Toe!.Value.Degrees > 0.5);
        }
    }

    [Theory]
    [InlineData("{layout: one rod between wheels, arm: 6 in, joint: behind axle}", true)]
    [InlineData("{layout: rod per side, arm: 6 in, joint: behind axle}", false)]
    [InlineData("{arm: 6 in, joint: behind axle}", false)]
    public void One_rod_between_the_wheels_has_the_toe_of_both(string steering, bool expected)
    {
        Assert.Equal(expected, Request(steering, "left").ToeOfBothWheels);
        Assert.Equal(expected, Request(steering, "right").ToeOfBothWheels);
    }

    [Theory]
    [InlineData("{layout: one rod between wheels, left: {arm: 6 in, joint: behind axle}, right: {arm: 5 in, joint: behind axle}}", true)]
    [InlineData("{layout: one rod between wheels, arm: 6 in, joint: behind axle, right: {rod_angle: 3 deg}}", true)]
    [InlineData("{layout: one rod between wheels, arm: 6 in, joint: behind axle, left: {joint: ahead of axle}, right: {arm: 6 in}}", true)]
    [InlineData("{layout: one rod between wheels, left: {arm: 6 in, joint: behind axle}, right: {arm: 6 in, joint: behind axle}}", false)]
    [InlineData("{layout: one rod between wheels, left: {arm: 6 in, joint: behind axle}}", false)]
    [InlineData("{layout: one rod between wheels, right: {arm: 6 in, joint: behind axle}}", false)]
    [InlineData("{layout: one rod between wheels, arm: 6 in, joint: behind axle}", false)]
    [InlineData("{layout: one rod between wheels, held: right, arm: 6 in, joint: behind axle, right: {arm: 5 in}}", false)]
    [InlineData("{layout: rod per side, left: {arm: 6 in, joint: behind axle}, right: {arm: 5 in, joint: behind axle}}", false)]
    public void Which_wheel_is_held_is_noted_where_it_matters_and_is_not_said(string steering, bool noted)
    {
        string job = Job(steering, "left");
        Problem[] notes = [.. Notes(job, "toe is counted with the right wheel held by the steering and the left one turning")];
        Assert.Equal(noted ? 1 : 0, notes.Length);
        Assert.All(notes, note => Assert.Equal("right", note.SourceLine!.Substring(note.Column - 1, note.Length)));
    }

    [Theory]
    [InlineData("left", 20, 6, false)]
    [InlineData("left", -6, -20, false)]
    [InlineData("left", -20, -6, true)]
    [InlineData("left", 6, 6, true)]
    [InlineData("right", -20, -6, false)]
    [InlineData("right", 6, 20, false)]
    [InlineData("right", 20, 6, true)]
    [InlineData("right", 6, 6, true)]
    public void Signs_of_y_that_are_inverted_are_noted(string side, int outer, int inner, bool noted)
    {
        string steering = $"{{{side}: {{axis: [[0 in, {outer} in, 5 in], [0 in, {outer} in, 15 in]], "
            + $"outer: [-6 in, {outer} in, 6 in], inner: [-9 in, {inner} in, 6 in]}}}}";
        Problem[] notes = [.. Notes(Job(steering, side), $"the outer joint of the {side} wheel lies no further to the {side} than the inner joint")];
        Assert.Equal(noted ? 1 : 0, notes.Length);
        Assert.All(notes, note =>
        {
            Assert.Contains("y points to the car's left", note.Message, StringComparison.Ordinal);
            Assert.Equal($"[-6 in, {outer} in, 6 in]", note.SourceLine!.Substring(note.Column - 1, note.Length));
        });
    }

    [Fact]
    public void One_rod_between_the_wheels_has_the_left_geometry_whatever_its_side()
    {
        SteeringGeometry left = SteeringGeometry.FromArm(CarSide.Left, Length.FromInches(6), JointPlace.BehindAxle, Angle.Zero, Target);
        Assert.Equal(left, Request("{layout: one rod between wheels, arm: 6 in, joint: behind axle}", "right").Steering);
        Assert.Equal(
            left, Request("{layout: one rod between wheels, left: {arm: 6 in, joint: behind axle}, right: {arm: 5 in, joint: behind axle}}", null).Steering);
        Assert.Equal(CarSide.Right, Request("{layout: one rod between wheels, right: {arm: 5 in, joint: behind axle}}", "left").Steering!.Side);
    }

    [Fact]
    public void Without_a_side_or_an_arm_there_is_no_geometry()
    {
        Assert.Null(Request("{arm: 6 in, joint: behind axle}", null).Steering);
        Assert.Null(Request("{plates: 24 in}", "left").Steering);
        Assert.Equal(609.6, Request("{plates: 24 in}", "left").Plates!.Value.Millimeters, 1e-9);
        Assert.Null(Request("{layout: rod per side}", "left").Plates);
    }

    [Theory]
    [InlineData("{«layuot»: rod per side}", "'steering' of the job has no key 'layuot'", "layout")]
    [InlineData("{layout: «rod per sides»}", "'layout' must be rod per side or one rod between wheels", "rod per side")]
    [InlineData("{arm: «0 in», joint: behind axle}", "'arm' must be above zero")]
    [InlineData("{arm: 6 in, joint: «behind axel»}", "'joint' must be behind axle or ahead of axle", "behind axle")]
    [InlineData("{arm: 6 in, joint: behind axle, rod_angle: «90 deg»}", "'rod_angle' must be above -90 and below 90 deg")]
    [InlineData("{arm: 6 in, joint: behind axle, rod_angle: «-90 deg»}", "'rod_angle' must be above -90 and below 90 deg")]
    [InlineData("{plates: «0 in»}", "'plates' must be above zero")]
    [InlineData("«{arm: 6 in}»", "'joint' is missing in 'steering' of the job")]
    [InlineData("«{joint: behind axle}»", "'arm' is missing in 'steering' of the job")]
    [InlineData("{left: «{arm: 6 in}»}", "'joint' is missing in 'left' of 'steering' of the job")]
    [InlineData("{joint: behind axle, left: «{rod_angle: 3 deg}»}", "'arm' is missing in 'left'")]
    [InlineData("{left: «{axis: [[0 in, 0 in, 0 in], [0 in, 0 in, 1 in]], outer: [1 in, 0 in, 0 in]}»}", "'inner' is missing in 'left'")]
    [InlineData("{left: «{arm: 6 in, joint: behind axle, outer: [1 in, 0 in, 0 in]}»}", "not by both")]
    [InlineData("{left: {axis: «[[0 in, 0 in, 0 in], [0 mm, 0 in, 0 in]]», outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "the two points of the steer axis are the same")]
    [InlineData("{left: {axis: «[[0 in, 0 in, 0 in]]», outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "'axis' must be two points")]
    [InlineData("{left: {axis: [[0 in, 0 in, 0 in], «[0 in]»], outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "a point has three coordinates")]
    [InlineData("{left: {axis: [[0 in, 0 in, 0«»], [0 in, 0 in, 1 in]], outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "the unit is missing")]
    [InlineData("{toe: {now: «x»}}", "toe")]
    [InlineData("{toe: {now: 0 in, «each»: {left: 0 in, right: 0 in}}}", "not by both")]
    [InlineData("{toe: {now: {each: {left: 0 in, right: 0 in, «front»: 0 in}}}}", "'each' of 'now' of 'toe' of 'steering' of the job has no key 'front'")]
    [InlineData("{toe: «1/8 in out»}", "'toe' must be keys and values")]
    [InlineData("{toe: {now: {each: «{left: 0 in}»}}}", "'right' is missing in 'each' of 'now' of 'toe'")]
    [InlineData("{toe: {«nwo»: 0 in}}", "'toe' of 'steering' of the job has no key 'nwo'", "now")]
    [InlineData("{toe: {now: 1/8 in«»}}", "the direction is missing")]
    [InlineData("{plates: 24 in, toe: {now: «48 in out»}}", "no wheel has such a toe")]
    [InlineData("{plates: 24 in, toe: {now: {each: {left: «24 in out», right: 0 in}}}}", "no wheel has such a toe")]
    [InlineData("{toe: {now: {each: {left: 0 deg, right: «90 deg in»}}}}", "no wheel has such a toe")]
    [InlineData("{plates: 24 in, toe: {at: «tire», now: 0 in}}", "'tire' is missing in 'steering' of the job")]
    [InlineData("{plates: 24 in, toe: {at: «plate», now: 0 in}}", "'at' must be plates or tire", "plates")]
    [InlineData("{tire: «0 in»}", "'tire' must be above zero")]
    [InlineData("{«held»: left, arm: 6 in, joint: behind axle}", "'held' is for 'one rod between wheels'")]
    [InlineData("{layout: one rod between wheels, held: «left», left: {arm: 6 in, joint: behind axle}}", "the steering of the right wheel, which the rod turns then, is not given")]
    [InlineData("{arm: 6 in, joint: behind axle, camber: «60 deg»}", "'camber' must be above -60 and below 60 deg")]
    [InlineData("{left: {arm: 6 in, joint: behind axle, camber: «x»}}", "angle")]
    [InlineData("{left: {axis: «{inclination: 8 deg, through: [0 in, 0 in, 0 in]}», outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "'caster' is missing in 'axis'")]
    [InlineData("{left: {axis: «{caster: 8 deg, through: [0 in, 0 in, 0 in]}», outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "'inclination' is missing in 'axis'")]
    [InlineData("{left: {axis: «{caster: 8 deg, inclination: 1 deg}», outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "'through' is missing in 'axis'")]
    [InlineData("{left: {axis: {caster: «-60 deg», inclination: 1 deg, through: [0 in, 0 in, 0 in]}, outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "'caster' must be above -60 and below 60 deg")]
    [InlineData("{left: {axis: {caster: 1 deg, inclination: «61 deg», through: [0 in, 0 in, 0 in]}, outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "'inclination' must be above -60 and below 60 deg")]
    [InlineData("{left: {axis: {«castor»: 1 deg, inclination: 1 deg, through: [0 in, 0 in, 0 in]}, outer: [1 in, 0 in, 0 in], inner: [1 in, 1 in, 0 in]}}", "has no key 'castor'", "caster")]
    [InlineData("{layout: one rod between wheels, left: {axis: [[0 in, 20 in, 0 in], [0 in, 20 in, 1 in]], outer: [1 in, 20 in, 0 in], inner: [1 in, -20 in, 0 in]}, right: {axis: [[0 in, -20 in, 0 in], [0 in, -20 in, 1 in]], outer: [1 in, -20 in, 0 in], inner: «[1 in, 19.9 in, 0 in]»}}", "the inner joint of the right wheel is the outer joint of the left one, and they are 2.54 mm apart")]
    public void Is_checked(string steering, string phrase, string? suggestion = null) =>
        new Marked(Job(steering, "left")).Problem(phrase, suggestion);

    private static IEnumerable<Problem> Notes(string job, string phrase)
    {
        CheckedFile read = Marked.Check(job);
        Assert.Empty(read.Problems);
        return read.Notes.Where(note => note.Message.Contains(phrase, StringComparison.Ordinal));
    }

    private static string Job(string steering, string? side) => Samples.Job
        .Replace("    side: left\n", side is null ? "" : $"    side: {side}\n", StringComparison.Ordinal)
        .Replace("rods:\n", $"steering: {steering}\nrods:\n", StringComparison.Ordinal);

    private static RodRequest Request(string steering, string? side)
    {
        CheckedFile read = Marked.Check(Job(steering, side));
        Assert.Empty(read.Problems);
        return read.Job!.Rods[0].Request!;
    }
}
