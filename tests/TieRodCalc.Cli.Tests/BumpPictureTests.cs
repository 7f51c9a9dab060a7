using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using static TieRodCalc.Cli.Tests.BumpJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>The picture of toe over travel, measured: what is drawn stands where its numbers say.</summary>
public sealed partial class BumpPictureTests : IDisposable
{
    private const double HalfAUnit = 0.5;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-").FullName;

    /// <summary>Both samples, each in the other unit; each work and none; one reading; points alone, near, and out of reach; long names.</summary>
    public static TheoryData<string, int> Jobs => new()
    {
        { Both, 1 },
        { Both.With("units: in", "units: mm"), 1 },
        { Corner, 0 },
        { Corner.With("units: mm", "units: in"), 0 },
        { Height, 0 },
        { Job(1, Rod), 0 },
        { Job(6, 293), 0 },
        { Job(-100, 350), 1 },
        { Unread + Bump(Sheet(1e-4, 0, travels: 40)), 1 },
        { Unread + Bump(Sheet(0, 0)), 0 },
        { Unread + Bump(Sheet(1e-6, 0, travels: [2, -1])), 0 },
        { CornerAlone, 0 },
        { CornerAlone.With("travel: {bump: 60 mm, droop: 60 mm}", "travel: {bump: 400 mm, droop: 60 mm}"), 1 },
        { Height.With("name: l,", "name: " + new string('w', 90) + ","), 0 },
        { Height.With("units: mm\n", $"units: mm\njob: {new string('W', 90)}\n").With("name: l,", $"name: {new string('W', 70)},"), 0 },
    };

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Jobs))]
    public void It_is_black_on_white_inside_its_frame_and_no_words_overlap(string job, int status)
    {
        XElement picture = Draw(job, status);
        double[] frame = Numbers((string)picture.Attribute("viewBox")!);
        Assert.All(picture.DescendantsAndSelf().Attributes("fill").Concat(picture.Descendants().Attributes("stroke")), color =>
            Assert.Contains(color.Value, (string[])["black", "white", "none"]));
        Assert.NotEmpty(picture.Element(Svg + "title")!.Value);
        Assert.NotEmpty(picture.Element(Svg + "desc")!.Value);

        DrawnBox[] boxes = [.. picture.Descendants(Svg + "text").Select(Box)];
        Assert.All(boxes, box => Assert.True(box.Left >= 0 && box.Top >= 0 && box.Right <= frame[2] && box.Bottom <= frame[3], $"outside: {box}"));
        for (int one = 0; one < boxes.Length; one++)
        {
            Assert.All(boxes[(one + 1)..], other => Assert.False(boxes[one].Meets(other), $"'{boxes[one].What}' and '{other.What}' overlap"));
        }
    }

    /// <summary>Dots are readings, squares are what is predicted, lines lead through them; each from the numbers beside the ticks.</summary>
    [Theory]
    [MemberData(nameof(Jobs))]
    public void Readings_stand_where_the_numbers_say(string job, int status)
    {
        JsonElement[] sides = [.. Json(job, status).GetProperty("sides").EnumerateArray()];
        XElement[] panels = [.. Draw(job, status).Elements(Svg + "g")];
        Assert.Equal(sides.Length, panels.Length);
        double inUnit = job.Contains("units: in", StringComparison.Ordinal) ? 25.4 : 1;
        foreach ((JsonElement side, XElement panel) in sides.Zip(panels))
        {
            // The first dot is the symbol beside the words.
            XElement[] dots = [.. panel.Elements(Svg + "circle").Skip(1)];
            JsonElement[] points = side.GetProperty("sheets") is var sheets && sheets.GetArrayLength() == 0 ? []
                : [.. sheets[sheets.GetArrayLength() - 1].GetProperty("points").EnumerateArray()];
            Assert.Equal(points.Length, dots.Length);
            if (points.Length == 0)
            {
                continue;
            }

            (Func<double, double> across, Func<double, double> up) = Axes(panel);
            foreach ((JsonElement point, XElement dot) in points.Zip(dots))
            {
                Assert.Equal(across(point.Number("at_gauge_mm") / inUnit), (double)dot.Attribute("cx")!, HalfAUnit);
                Assert.Equal(up(point.Number("travel_mm") / inUnit), (double)dot.Attribute("cy")!, HalfAUnit);
            }

            double[] line = Numbers(Paths(panel).Last(path => path.Contains(" L", StringComparison.Ordinal)));
            Assert.Equal(dots.SelectMany(dot => (double[])[(double)dot.Attribute("cx")!, (double)dot.Attribute("cy")!]), line);
        }
    }

    [Fact]
    public void What_is_predicted_are_squares_at_the_toe_that_is_left()
    {
        // Height and length are taken away wholly, so the squares stand at zero toe.
        XElement panel = Assert.Single(Draw(Job(6, 293)).Elements(Svg + "g"));
        (Func<double, double> across, Func<double, double> up) = Axes(panel);
        XElement[] squares = [.. panel.Elements(Svg + "rect").Skip(1)];
        Assert.Equal(7, squares.Length);
        Assert.All(squares, square => Assert.Equal(across(0), (double)square.Attribute("x")! + 5, HalfAUnit));
        Assert.Equal(up(-120), (double)squares[0].Attribute("y")! + 5, HalfAUnit);
        Assert.Equal(up(120), (double)squares[^1].Attribute("y")! + 5, HalfAUnit);
        Assert.True(across(1) > across(0) && up(1) < up(0));
        Assert.Empty(Draw(Job(1, Rod)).Descendants(Svg + "rect").Skip(1));
    }

    [Fact]
    public void The_curve_of_the_points_is_that_of_the_json()
    {
        XElement panel = Draw(Corner).Elements(Svg + "g").Single();
        (Func<double, double> across, Func<double, double> up) = Axes(panel);
        JsonElement corner = Side(Corner).GetProperty("corner");
        string[] curves = [.. Paths(panel).Where(path => path.Contains(" L", StringComparison.Ordinal))];
        foreach ((JsonElement curve, string drawn) in ((JsonElement[])[corner.GetProperty("now"), corner.GetProperty("best").GetProperty("curve")]).Zip(curves))
        {
            double[] numbers = Numbers(drawn);
            double[] expected = [.. curve.GetProperty("points").EnumerateArray()
                .SelectMany(point => (double[])[across(point.Number("at_gauge_mm")), up(point.Number("travel_mm"))])];
            Assert.Equal(expected.Length, numbers.Length);
            Assert.All(expected.Zip(numbers), pair => Assert.Equal(pair.First, pair.Second, HalfAUnit));
        }
    }

    [Fact]
    public void Its_words_say_each_curve_and_names_are_told_as_they_are()
    {
        string[] texts = [.. Draw(Height.With("name: l,", "name: '<l> & \"r\"',")).Descendants(Svg + "text").Select(text => text.Value)];
        Assert.Contains("left wheel, rod <l> & \"r\"", texts);
        Assert.Contains("height and length fitted (two terms)", texts);
        Assert.Contains("predicted: raise the outer joint 3.00 mm: worst 0.000 mm per inch", texts);
        Assert.Contains("measured, worst 0.453 mm per inch", texts);
        Assert.Contains("toe at the gauge, mm; right of 0 toe-in, left toe-out", texts);
    }

    [Fact]
    public void One_side_asked_for_is_one_panel()
    {
        Assert.Equal(2, Draw(Both, 1).Elements(Svg + "g").Count());
        Assert.Single(Draw(Both, 0, "--side", "left").Elements(Svg + "g"));
    }

    private XElement Draw(string job, int expectedStatus = 0, params string[] options)
    {
        string path = Path.Combine(_folder, $"{Guid.NewGuid()}.svg");
        CommandLine run = CommandLine.RunWith(job, ["bump", "-", "--picture", path, .. options]);
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        return XDocument.Load(path).Root!;
    }

    internal static DrawnBox Box(XElement text)
    {
        double down = text.Parent!.Attribute("transform") is { } moved ? Numbers(moved.Value)[1] : 0;
        double width = text.Value.Sum(letter => letter == 'W' ? 0.95 : 0.56) * 14;
        double x = (double)text.Attribute("x")!;
        double y = (double)text.Attribute("y")! + down;
        double left = x - (width * ((string)text.Attribute("text-anchor")! switch { "middle" => 0.5, "end" => 1, _ => 0 }));
        return text.Attribute("transform") is null
            ? new DrawnBox(left, y - 11, left + width, y + 3, text.Value)
            : new DrawnBox(x - 11, y - (width / 2), x + 3, y + (width / 2), text.Value);
    }

    /// <summary>The scales of a panel, from the numbers beside the ticks.</summary>
    private static (Func<double, double> Across, Func<double, double> Up) Axes(XElement panel)
    {
        XElement[] texts = [.. panel.Elements(Svg + "text").Where(text => text.Attribute("transform") is null && Tick().IsMatch(text.Value))];
        return (
            Line([.. texts.Where(text => (string)text.Attribute("text-anchor")! == "middle").Select(text => (Value(text.Value), (double)text.Attribute("x")!))]),
            Line([.. texts.Where(text => (string)text.Attribute("text-anchor")! == "end").Select(text => (Value(text.Value), (double)text.Attribute("y")! - 5))]));
    }

    private static Func<double, double> Line((double Value, double Place)[] ticks)
    {
        (double Value, double Place) first = ticks.MinBy(tick => tick.Value);
        (double Value, double Place) last = ticks.MaxBy(tick => tick.Value);
        return value => first.Place + ((value - first.Value) / (last.Value - first.Value) * (last.Place - first.Place));
    }

    private static double Value(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    private static IEnumerable<string> Paths(XElement panel) => panel.Elements(Svg + "path").Select(path => (string)path.Attribute("d")!);

    private static double[] Numbers(string text) => DrawnPicture.Numbers(text);

    [GeneratedRegex(@"^−?\d+(\.\d+)?$")]
    private static partial Regex Tick();
}
