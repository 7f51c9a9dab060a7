using MathNet.Numerics.RootFinding;
using TieRodCalc.Steering;
using TieRodCalc.Tests.Steering;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>A length that follows from the toe of an existing rod, held against a root finder.</summary>
public class LengthFromToeTests
{
    private const double Mm = 1e-6;
    private const string Arm = "arm: 150 mm, joint: behind axle, plates: 600 mm";

    /// <summary>Toe in radians of 1 mm of one wheel at the plates.</summary>
    private static readonly double s_oneMm = Math.Asin(1 / 600.0);

    [Theory]
    [InlineData("{rod: 400 mm, toe: 2 mm out, want: 4 mm in}", 1, -1, 2)]
    [InlineData("{rod: 400 mm ± 1 mm, toe: {each: 2 mm out}, want: {each: 4 mm in}}", 1, -2, 4)]
    [InlineData("{rod: 400 mm, toe: {each: 2 mm out}, want: 4 mm in}", 1, -2, 2)]
    public void With_a_rod_per_side_a_total_is_half_of_this_wheel(string length, double joint, double now, double want) =>
        Assert.Equal(Square(150 * joint, Toe(want) - Toe(now)), Target(Arm, length), Mm);

    [Fact]
    public void Ahead_of_the_axle_it_gets_shorter() => Assert.Equal(
        Square(150, Toe(-1) - Toe(2)),
        Target(Arm.Replace("behind", "ahead of", StringComparison.Ordinal), "{rod: 400 mm, toe: 2 mm out, want: 4 mm in}"),
        Mm);

    [Fact]
    public void One_rod_makes_up_the_whole_change()
    {
        // The held wheel stays 1 mm out: the other one goes from there to 5 mm in.
        Assert.Equal(
            Square(150, Toe(5) - Toe(-1)),
            Target($"layout: one rod between wheels, {Arm}", "{rod: 400 mm, toe: 2 mm out, want: 4 mm in}"),
            Mm);
    }

    [Fact]
    public void Points_count_from_where_the_existing_rod_stands()
    {
        const string Points = "plates: 600 mm, left: {axis: [[8 mm, 640 mm, -70 mm], [-16 mm, 600 mm, 190 mm]], "
            + "outer: [-150 mm, 628 mm, -35 mm], inner: [-128 mm, 205 mm, -22 mm]}";
        WheelCase wheel = new(CarSide.Left, new(8, 640, -70), new(-16, 600, 190), new(-150, 628, -35), new(-128, 205, -22));
        double stands = wheel.TurnFor(427);

        // With toe and camber zero where the existing rod stands, the wheel turns on from there.
        Triple turned = wheel.JointAfter(stands);
        WheelCase there = wheel with { Outer = turned };
        double turn = Brent.FindRoot(angle => there.ToeAt(angle) - 2 * Toe(1), -0.3, 0.3, 1e-14, 500);
        Assert.Equal(there.RodLengthAt(turn), Target(Points, "{rod: 427 mm, toe: 0 in, want: 4 mm in}"), 1e-5);
    }

    [Fact]
    public void It_is_noted_what_was_worked_out()
    {
        CheckedFile read = Marked.Check(Job(Arm, "{rod: 400 mm, toe: 2 mm out, want: 4 mm in}"));
        Problem note = Assert.Single(read.Notes, note => note.Message.StartsWith("the length follows", StringComparison.Ordinal));
        Assert.Contains("400.75 mm", note.Message, StringComparison.Ordinal);
        Assert.Contains("this rod makes up half of the change", note.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "half", Marked.Check(Job(Arm, "{rod: 400 mm, toe: {each: 0 in}, want: {each: 1 mm in}}")).Notes[0].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("arm: 150 mm, joint: behind axle", "«{rod: 400 mm, toe: 2 mm out, want: 4 mm in}»", "needs what it is measured across")]
    [InlineData("right: {arm: 150 mm, joint: behind axle}, plates: 600 mm", "«{rod: 400 mm, toe: 2 mm out, want: 4 mm in}»", "the steering of the left wheel is not given")]
    [InlineData(Arm, "«{rod: 400 mm, toe: 0 in, want: {each: 85 deg out}}»", "no length of the rod gives the wanted toe; the steering as given can have rods from")]
    [InlineData(Arm, "{rod: 400 mm, toe: «1300 mm out», want: 0 in}", "no wheel has such a toe")]
    [InlineData(Arm, "{rod: 400 mm, toe: {each: 1 in«}», want: 0 in}", "the direction is missing")]
    [InlineData(Arm, "{rod: 400 mm, toe: «{left: 0 in}», want: 0 in}", "'each' is missing")]
    [InlineData(Arm, "{rod: 400«,» toe: 0 in, want: 0 in}", "the unit is missing")]
    public void What_has_no_answer_is_said_at_its_place(string steering, string length, string phrase)
    {
        string text = Job(steering, length.Replace("«", string.Empty, StringComparison.Ordinal).Replace("»", string.Empty, StringComparison.Ordinal));
        CheckedFile read = Marked.Check(text);
        Problem problem = read.Problems.First(problem => problem.Message.Contains(phrase, StringComparison.Ordinal));
        int start = length.IndexOf('«', StringComparison.Ordinal);
        Assert.Equal(
            length[(start + 1)..length.IndexOf('»', StringComparison.Ordinal)], problem.SourceLine!.Substring(problem.Column - 1, problem.Length));
        Assert.Null(read.Job);
    }

    [Theory]
    [InlineData("arm: 150, joint: behind axle, plates: 600 mm")]
    [InlineData("arm: 150 mm, joint: behind axle, plate: 600 mm")]
    public void Steering_that_could_not_be_read_is_not_also_called_missing(string steering) =>
        Assert.Single(Marked.Check(Job(steering, "{rod: 400 mm, toe: 2 mm out, want: 4 mm in}")).Problems);

    [Fact]
    public void A_rod_without_a_side_is_asked_for_it()
    {
        CheckedFile read = Marked.Check(Job(Arm, "{rod: 400 mm, toe: 0 in, want: 2 mm in}").Replace("    side: left\n", string.Empty, StringComparison.Ordinal));
        Assert.Contains("say the 'side' of rod left", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
    }

    private static double Toe(double mm) => Math.Asin(mm * Math.Sin(s_oneMm));

    /// <summary>Length after a turn from where a rod of 400 mm stands square to the arm, by a root finder over the law of cosines.</summary>
    private static double Square(double arm, double turn)
    {
        double far = Math.Sqrt(400 * 400 + arm * arm);
        double Turn(double rod) => Math.Acos((arm * arm + far * far - rod * rod) / (2 * arm * far)) - Math.Atan2(400, arm);
        return Brent.FindRoot(rod => Turn(rod) - turn, 350, 450, 1e-12, 500);
    }

    private static double Target(string steering, string length)
    {
        CheckedFile read = Marked.Check(Job(steering, length));
        Assert.Empty(read.Problems);
        return read.Job!.Rods[0].Request!.Target.Millimeters;
    }

    private static string Job(string steering, string length) => Samples.Job
        .Replace("rods:\n", $"steering: {{{steering}}}\nrods:\n", StringComparison.Ordinal)
        .Replace("length: 15 3/4 in", $"length: {length}", StringComparison.Ordinal);
}
