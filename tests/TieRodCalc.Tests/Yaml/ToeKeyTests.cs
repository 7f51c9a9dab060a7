using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Yaml;

/// <summary>What a job says of toe and of the rods on the car.</summary>
public class ToeKeyTests
{
    private const string Arm = "arm: 6 in, joint: behind axle";

    private static readonly Length Target = Length.FromInches(15.75);

    [Theory]
    [InlineData("plates: 24 in, toe: {now: 1/8 in out, want: 1/16 in in}", GaugePlace.Plates, 609.6, -1.5875, 0.79375)]
    [InlineData("tire: 26 in, toe: {now: 3 mm in, want: 0 in}", GaugePlace.Tire, 660.4, 1.5, 0)]
    [InlineData("plates: 24 in, tire: 26 in, toe: {at: tire, now: 3 mm in, want: 0 in}", GaugePlace.Tire, 660.4, 1.5, 0)]
    [InlineData("plates: 24 in, tire: 26 in, toe: {at: plates, now: 3 mm in, want: 2 mm in}", GaugePlace.Plates, 609.6, 1.5, 1)]
    public void A_total_as_a_length_is_half_of_each_wheel(string said, GaugePlace place, double width, double now, double want)
    {
        JobToe toe = Read(said).Toe!;
        Assert.Equal(place, toe.Gauge!.Place);
        Assert.Equal(width, toe.Gauge.Width.Millimeters, 1e-9);
        Assert.Equal((toe.NowOfWheels.Left, toe.WantOfWheels.Left), (toe.NowOfWheels.Right, toe.WantOfWheels.Right));
        Assert.Equal(Math.Asin(now / width), toe.NowOfWheels.Left.Radians, 1e-12);
        Assert.Equal(Math.Asin(want / width), toe.WantOfWheels.Right.Radians, 1e-12);
        Assert.NotNull(toe.Now.Total);
    }

    [Theory]
    [InlineData("toe: {now: {each: {left: 0.5 deg in, right: 3 mm out}}, want: 0.2 deg out}")]
    [InlineData("toe: {each: {left: 0.5 deg in, right: 3 mm out}, want: {each: {left: 0.1 deg out, right: 0.1 deg out}}}")]
    public void Toe_of_each_wheel_stands_for_itself(string said)
    {
        JobToe toe = Read($"plates: 600 mm, {said}").Toe!;
        Assert.Equal(0.5, toe.NowOfWheels.Left.Degrees, 1e-12);
        Assert.Equal(Math.Asin(-3 / 600.0), toe.NowOfWheels.Right.Radians, 1e-12);
        Assert.Equal((-0.1, -0.1), (toe.WantOfWheels.Left.Degrees, toe.WantOfWheels.Right.Degrees));
        Assert.Null(toe.Now.Total);
    }

    [Fact]
    public void Angles_and_zero_need_no_width()
    {
        JobToe toe = Read("toe: {now: 0.4 deg out, want: 0 in}").Toe!;
        Assert.Null(toe.Gauge);
        Assert.Equal(-0.2, toe.NowOfWheels.Left.Degrees, 1e-12);
        Assert.Equal(0, toe.WantOfWheels.Left.Degrees);
        Assert.Equal(GaugePlace.Plates, Read("plates: 24 in, tire: 26 in, toe: {now: 0.4 deg out, want: 0 in}").Toe!.Gauge!.Place);
    }

    [Theory]
    [InlineData("", "steering", "the job gives no toe: write toe: {now: ")]
    [InlineData("toe: {want: 0 in}", "toe", "the job gives no measured toe")]
    [InlineData("toe: {now: 0 in}", "toe", "the job gives no wanted toe")]
    [InlineData("toe: {now: 3 mm in, want: 0 in}", "toe", "a toe as a length needs what it is measured across: 'plates' or 'tire'")]
    [InlineData("plates: 24 in, tire: 26 in, toe: {now: 3 mm in, want: 0 in}", "toe", "say in 'toe' of 'steering' which of them")]
    public void What_is_missing_has_its_place_and_is_no_error_of_the_file(string said, string key, string phrase)
    {
        Job job = Read(said);
        Assert.Null(job.Toe);
        Assert.Contains(phrase, job.NoToe!.Message, StringComparison.Ordinal);
        Assert.Equal(key, job.NoToe.SourceLine!.Substring(job.NoToe.Column - 1, job.NoToe.Length));
    }

    [Fact]
    public void Without_steering_the_job_itself_is_the_place()
    {
        CheckedFile read = Marked.Check(Samples.Job);
        Assert.Equal("the job gives no 'steering', so there is no toe to count", read.Job!.NoToe!.Message);
        Assert.Equal("the steering of the left wheel is not given", read.Job.Rods[0].NotOnCar!.Message);
    }

    [Fact]
    public void A_rod_on_the_car_has_the_wanted_length_unless_one_was_measured()
    {
        JobRod planned = Read("").Rods[0];
        Assert.Null(planned.NotOnCar);
        Assert.False(planned.OnCar!.PresentMeasured);
        Assert.Equal(Target.Millimeters, planned.OnCar.Present.Millimeters, 1e-9);
        Assert.Equal(SteeringGeometry.FromArm(CarSide.Left, Length.FromInches(6), JointPlace.BehindAxle, Angle.Zero, Target), planned.OnCar.Steering);

        JobRod measured = Read("", "adjust: 3/16 in", "adjust: 3/16 in\n    built: {center_to_center: 401 mm ± 1 mm}").Rods[0];
        Assert.Equal((401, true), (measured.OnCar!.Present.Millimeters, measured.OnCar.PresentMeasured));
        Assert.Equal(401, measured.OnCar.Steering.RodLength.Millimeters, 1e-9);
        Assert.Equal(Target.Millimeters, measured.OnCar.Request.Target.Millimeters, 1e-9);
        Assert.Equal(1, measured.Built!.CenterToCenter!.Value.PlusMinus.Millimeters);
    }

    [Fact]
    public void A_measured_length_that_bent_ends_cannot_have_is_an_error()
    {
        CheckedFile read = Marked.Check(Text("", "adjust: 3/16 in", "adjust: 3/16 in\n    built: {center_to_center: 12 mm}"));
        Assert.Contains(read.Problems, problem => problem.Message.StartsWith("the rod's length of 12.00 mm is not above 14.00 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_rod_without_a_side_is_not_on_the_car_unless_one_rod_joins_the_wheels()
    {
        JobRod rod = Read("", "    side: left\n", string.Empty).Rods[0];
        Assert.Null(rod.OnCar);
        Assert.Equal("rod left does not say which wheel it turns: side: left or side: right", rod.NotOnCar!.Message);
        Assert.Equal(CarSide.Left, Read("layout: one rod between wheels", "    side: left\n", string.Empty).Rods[0].OnCar!.Steering.Side);
    }

    [Theory]
    [InlineData("layout: one rod between wheels, toe: {now: 0 in, want: 0 in}", CarSide.Left)]
    [InlineData("layout: one rod between wheels, held: right, toe: {now: 0 in, want: 0 in}", CarSide.Left)]
    [InlineData("layout: one rod between wheels, held: left, toe: {now: 0 in, want: 0 in}", CarSide.Right)]
    [InlineData("layout: rod per side, toe: {now: 0 in, want: 0 in}", null)]
    public void One_rod_turns_the_wheel_that_is_not_held(string said, CarSide? turns)
    {
        Job job = Read(said);
        Assert.Equal(turns, job.Toe!.OneRodTurns);
        Assert.Equal(turns ?? CarSide.Left, job.Rods[0].OnCar!.Steering.Side);
        Assert.Equal(job.Rods[0].OnCar!.Steering, job.Rods[0].Request!.Steering);
    }

    [Theory]
    [InlineData("camber: -1.5 deg", -1.5)]
    [InlineData("camber: -1.5 deg, left: {camber: 0.5 deg}", 0.5)]
    [InlineData("right: {camber: 2 deg}", 0)]
    public void Camber_may_be_said_once_or_of_a_wheel(string said, double degrees) =>
        Assert.Equal(degrees, Read(said).Rods[0].OnCar!.Camber.Degrees, 1e-12);

    [Fact]
    public void Camber_counts_in_plans_too()
    {
        JobRod rod = Read("camber: 5 deg").Rods[0];
        Assert.Equal(rod.OnCar!.Steering.Aligned(Angle.Zero, Angle.FromDegrees(5)), rod.Request!.Steering);
        Assert.NotEqual(rod.OnCar.Steering, rod.Request.Steering);
    }

    [Fact]
    public void An_axis_may_be_given_by_its_angles()
    {
        string steering = "{left: {axis: {inclination: 8 deg, caster: -3 deg, through: [0 mm, 600 mm, 0 mm]}, "
            + "outer: [-150 mm, 610 mm, 5 mm], inner: [-140 mm, 215 mm, 0 mm], camber: 1 deg}}";
        ToeRod rod = Marked.Check(Samples.Job.Replace("rods:\n", $"steering: {steering}\nrods:\n", StringComparison.Ordinal)).Job!.Rods[0].OnCar!;
        Point At(double x, double y, double z) => new(Length.FromMillimeters(x), Length.FromMillimeters(y), Length.FromMillimeters(z));
        Assert.Equal(
            SteeringGeometry.FromInclination(
                CarSide.Left, Angle.FromDegrees(8), Angle.FromDegrees(-3), At(0, 600, 0), At(-150, 610, 5), At(-140, 215, 0)),
            rod.Steering);
        Assert.Equal(1, rod.Camber.Degrees, 1e-12);
    }

    private static Job Read(string said, string piece = "rods:", string instead = "rods:")
    {
        CheckedFile read = Marked.Check(Text(said, piece, instead));
        Assert.Empty(read.Problems);
        return read.Job!;
    }

    private static string Text(string said, string piece, string instead) => Samples.Job
        .Replace("rods:\n", $"steering: {{{Arm}{(said.Length == 0 ? string.Empty : ", ")}{said}}}\nrods:\n", StringComparison.Ordinal)
        .Replace(piece, instead, StringComparison.Ordinal);
}
