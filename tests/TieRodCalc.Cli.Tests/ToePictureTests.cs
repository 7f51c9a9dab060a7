using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using static TieRodCalc.Cli.Tests.ToeJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>The picture of toe over turns, measured: what is drawn stands where its numbers say.</summary>
public sealed partial class ToePictureTests : IDisposable
{
    private const double HalfAUnit = 0.5;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-").FullName;

    /// <summary>Ordinary, refused, by steps, without limits, without an answer; one rod; hardly any and very much to turn.</summary>
    public static TheoryData<string, int> Jobs => new()
    {
        { Both, 0 },
        { Both.WithToe("{now: 0 in, want: 120 mm in}"), 1 },
        { Both.WithToe("{now: 120 mm out, want: 400 mm in}"), 1 },
        { Both.WithToe("{now: 0 in, want: 0 in}"), 0 },
        { Both.With("units: mm", "units: in"), 0 },
        { Both.With("  plates: 610 mm\n", string.Empty).WithToe("{now: 0.2 deg out, want: 0.1 deg in}"), 0 },
        { SameHand, 0 },
        { Socket, 0 },
        { Socket.With("thread_length: 110 mm}", "thread_length: 110 mm, max_cut: 20 mm}"), 1 },
        { Both.WithToe("{now: {each: {left: 0 deg, right: 0 deg}}, want: {each: {left: 85 deg out, right: 0 deg}}}"), 1 },
        { Both.With("name: l,", "name: " + new string('w', 90) + ","), 0 },
        { Both.With("units: mm\n", $"units: mm\njob: {new string('W', 49)}\U0001F527{new string('W', 40)}\n")
            .With("name: l,", $"name: {new string('W', 39)}\U0001F527{new string('W', 40)},"), 0 },
        { CheckJobs.W6.Replace("rods:\n  - {name: w6, ", "rods:\n  - {name: l, side: left, ", StringComparison.Ordinal)
            + "\nsteering: {layout: one rod between wheels, arm: 150 mm, joint: ahead of axle, tire: 650 mm, toe: {now: 0 in, want: 2 mm in}}\n", 0 },
    };

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Marks_and_limits_stand_where_the_numbers_say()
    {
        JsonElement side = Json(Both).GetProperty("sides")[0];
        XElement panel = Draw(Both).Elements(Svg + "g").First();
        (Func<double, double> across, Func<double, double> up) = Axes(panel);

        // In the order of drawing: the symbols beside the words, then those on the curve.
        XElement[] circles = [.. panel.Elements(Svg + "circle")];
        Stands(circles[2], across(0), up(side.Number("toe_now_deg")));
        Stands(circles[3], across(side.Number("exact_turns")), up(side.Number("toe_want_deg")));
        double[] square = Numbers(panel.Elements(Svg + "path").Select(path => (string)path.Attribute("d")!).Last(path => path.EndsWith("h-16 Z", StringComparison.Ordinal)));
        Assert.Equal(across(side.Number("turns")), square[0] + 8, HalfAUnit);
        Assert.Equal(up(side.Number("toe_after_deg")), square[1] + 8, HalfAUnit);

        double[] limits = Numbers(Paths(panel).Single(path => Count(path, 'M') == 2 && Count(path, 'V') == 2));
        Assert.Equal(across(-side.GetProperty("adjust").Number("shorter_turns")), limits[0], HalfAUnit);
        Assert.Equal(across(side.GetProperty("adjust").Number("longer_turns")), limits[3], HalfAUnit);
        Assert.Contains("tips", Texts(panel));
        Assert.Contains("engagement of the outer end", Texts(panel));
    }

    [Fact]
    public void The_curve_is_the_toe_over_the_turns()
    {
        XElement panel = Draw(Both).Elements(Svg + "g").First();
        (Func<double, double> across, Func<double, double> up) = Axes(panel);
        double[] curve = Numbers(Paths(panel).First(path => Count(path, 'L') > 50));
        double turn = across(1) - across(0);
        for (int point = 0; point < curve.Length; point += 2)
        {
            double turns = (curve[point] - across(0)) / turn;
            Assert.Equal(up(Degrees(-1.5) + ToeJobs.Toe(turns * PerTurn)), curve[point + 1], HalfAUnit);
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void It_is_black_on_white_inside_its_frame_and_no_words_overlap(string job, int status)
    {
        XElement picture = Draw(job, status);
        double[] frame = Numbers((string)picture.Attribute("viewBox")!);
        Assert.All(picture.DescendantsAndSelf().Attributes("fill").Concat(picture.Descendants().Attributes("stroke")), color =>
            Assert.Contains(color.Value, (string[])["black", "white", "none", "url(#closed)"]));
        Assert.Equal(4, Numbers((string)picture.Attribute("width")!)[0] * 4 / 180);
        Assert.NotEmpty(picture.Element(Svg + "title")!.Value);
        Assert.NotEmpty(picture.Element(Svg + "desc")!.Value);

        List<(double Left, double Top, double Right, double Bottom, string Text)> boxes = [];
        foreach (XElement text in picture.Descendants(Svg + "text"))
        {
            double down = text.Parent!.Attribute("transform") is { } moved ? Numbers(moved.Value)[1] : 0;
            double width = text.Value.Sum(letter => letter == 'W' ? 0.95 : 0.56) * 14;
            double x = (double)text.Attribute("x")!;
            double y = (double)text.Attribute("y")! + down;
            double left = x - (width * ((string)text.Attribute("text-anchor")! switch { "middle" => 0.5, "end" => 1, _ => 0 }));
            boxes.Add(text.Attribute("transform") is null
                ? (left, y - 11, left + width, y + 3, text.Value)
                : (x - 11, y - (width / 2), x + 3, y + (width / 2), text.Value));
        }

        Assert.All(boxes, box => Assert.True(
            box.Left >= 0 && box.Top >= 0 && box.Right <= frame[2] && box.Bottom <= frame[3], $"outside: {box}"));
        for (int one = 0; one < boxes.Count; one++)
        {
            for (int other = one + 1; other < boxes.Count; other++)
            {
                bool apart = boxes[one].Right <= boxes[other].Left || boxes[other].Right <= boxes[one].Left
                    || boxes[one].Bottom <= boxes[other].Top || boxes[other].Bottom <= boxes[one].Top;
                Assert.True(apart, $"'{boxes[one].Text}' and '{boxes[other].Text}' overlap");
            }
        }
    }

    [Fact]
    public void Names_are_told_as_they_are_and_the_picture_is_the_same_in_every_culture()
    {
        string job = Both.With("name: l,", "name: '<l> & \"r\"',");
        string drawn = Draw(job).ToString();
        Assert.Contains("left wheel, rod <l> & \"r\"", Texts(XElement.Parse(drawn).Elements(Svg + "g").First()));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE", useUserOverride: false);
            Assert.Equal(drawn, Draw(job).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Where_only_steps_exist_they_are_dots()
    {
        XElement panel = Draw(SameHand).Elements(Svg + "g").First();
        (Func<double, double> across, _) = Axes(panel);
        double[] dots = [.. panel.Elements(Svg + "circle").Where(circle => (double)circle.Attribute("r")! < 3).Select(circle => (double)circle.Attribute("cx")!)];

        Assert.True(dots.Length > 4);
        Assert.All(dots, dot => Assert.Contains(Enumerable.Range(-60, 120), step => Math.Abs(across(step * 0.5) - dot) < HalfAUnit));
    }

    private XElement Draw(string job, int expectedStatus = 0)
    {
        string path = Path.Combine(_folder, $"{Guid.NewGuid()}.svg");
        CommandLine run = CommandLine.RunWith(job, "toe", "-", "--picture", path);
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        return XDocument.Load(path).Root!;
    }

    /// <summary>The scales of a panel, from the ticks and the numbers beside them.</summary>
    private static (Func<double, double> Across, Func<double, double> Up) Axes(XElement panel)
    {
        XElement[] texts = [.. panel.Elements(Svg + "text").Where(text => text.Attribute("transform") is null)];
        double bottom = texts.Where(text => text.Value.StartsWith("turns of", StringComparison.Ordinal)).Select(text => (double)text.Attribute("y")!).Single() - 20;
        (double Value, double Place)[] turns =
            [.. texts.Where(text => (double)text.Attribute("y")! == bottom).Select(text => (Value(text.Value), (double)text.Attribute("x")!))];
        (double Value, double Place)[] toes =
            [.. texts.Where(text => (string)text.Attribute("text-anchor")! == "end" && (double)text.Attribute("x")! < 84)
                .Select(text => (Value(text.Value), (double)text.Attribute("y")! - 5))];
        return (Line(turns), Line(toes));
    }

    private static Func<double, double> Line((double Value, double Place)[] ticks)
    {
        (double Value, double Place) first = ticks.MinBy(tick => tick.Value);
        (double Value, double Place) last = ticks.MaxBy(tick => tick.Value);
        return value => first.Place + ((value - first.Value) / (last.Value - first.Value) * (last.Place - first.Place));
    }

    /// <summary>A number as it stands at a tick: <c>−1 1/2</c>, <c>0.5</c>.</summary>
    private static double Value(string text)
    {
        double sum = text.TrimStart('−').Split(' ').Sum(part => part.Split('/') is [var above, var below]
            ? double.Parse(above, CultureInfo.InvariantCulture) / double.Parse(below, CultureInfo.InvariantCulture)
            : double.Parse(part, CultureInfo.InvariantCulture));
        return text.StartsWith('−') ? -sum : sum;
    }

    private static void Stands(XElement circle, double x, double y)
    {
        Assert.Equal(x, (double)circle.Attribute("cx")!, HalfAUnit);
        Assert.Equal(y, (double)circle.Attribute("cy")!, HalfAUnit);
    }

    private static int Count(string text, char letter) => text.Count(each => each == letter);

    private static IEnumerable<string> Paths(XElement panel) => panel.Elements(Svg + "path").Select(path => (string)path.Attribute("d")!);

    private static string[] Texts(XElement panel) => [.. panel.Elements(Svg + "text").Select(text => text.Value)];

    private static double[] Numbers(string text) =>
        [.. Number().Matches(text).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex Number();
}
