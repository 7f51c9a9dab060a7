using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace TieRodCalc.Cli.Tests;

/// <summary>A dimension as it stands in a drawing, in units of the drawing; its length in millimeters where it says one.</summary>
internal sealed record DrawnDimension(string Name, double? LengthMm, double X, double Y, double Degrees, double Drawn)
{
    public double EndX => X + (Drawn * Math.Cos(Degrees * Math.PI / 180));

    public double EndY => Y + (Drawn * Math.Sin(Degrees * Math.PI / 180));
}

/// <summary>An upright box in units of the drawing.</summary>
internal sealed record DrawnBox(double Left, double Top, double Right, double Bottom, string What)
{
    public bool Meets(DrawnBox other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
}

/// <summary>A drawing of one rod or of one end, read from the text of the SVG alone.</summary>
internal sealed partial class DrawnPicture
{
    /// <summary>Units of a drawing to the millimeter of paper: what width and viewBox say.</summary>
    public const double UnitsPerMm = 4;

    private readonly XElement _root;

    public DrawnPicture(XElement root) => _root = root;

    public static XNamespace Svg => "http://www.w3.org/2000/svg";

    /// <summary>Millimeters of paper to the millimeter of the part.</summary>
    public double Scale => Number(_root, "data-scale");

    public IReadOnlyList<DrawnDimension> Dimensions =>
    [
        .. from element in _root.Descendants(Svg + "g")
           where (string?)element.Attribute("class") == "dimension"
           let place = Numbers((string)element.Attribute("transform")!)
           let line = (string)element.Elements(Svg + "path").First().Attribute("d")!
           select new DrawnDimension(
               (string)element.Attribute("data-name")!,
               element.Attribute("data-length-mm") is null ? null : Number(element, "data-length-mm"),
               place[0],
               place[1],
               place[2],
               Numbers(line)[2]),
    ];

    /// <summary>Centers of the balls, from the inner one.</summary>
    public IReadOnlyList<(double X, double Y)> Balls =>
        [.. _root.Elements(Svg + "circle").Select(circle => (Number(circle, "cx"), Number(circle, "cy"))).OrderBy(ball => ball.Item1)];

    /// <summary>The engaged threads, both flanks of each joint.</summary>
    public IReadOnlyList<DrawnBox> Engaged =>
        [.. _root.Elements(Svg + "rect").Where(rect => (string?)rect.Attribute("class") == "engaged").Select(rect => Box(rect, "engaged"))];

    /// <summary>The thread axis: from where to where the drawing needs its width.</summary>
    public (double From, double To) Axis => _root.Elements(Svg + "path")
        .Where(path => (string?)path.Attribute("stroke-dasharray") == "14 3 2 3")
        .Select(path => Numbers((string)path.Attribute("d")!))
        .Select(numbers => (numbers[0], numbers[2]))
        .Single();

    /// <summary>Places of upright lines from the thread axis down, of which every dimension below has two.</summary>
    public IReadOnlyList<double> Extensions =>
    [
        .. _root.Elements(Svg + "path")
            .Select(path => ExtensionLines().Match((string)path.Attribute("d")!))
            .Where(match => match.Success)
            .SelectMany(match => (double[])[Parse(match.Groups[1].Value), Parse(match.Groups[2].Value)]),
    ];

    /// <summary>Labels of dimensions by their white ground, each with its words.</summary>
    public IReadOnlyList<DrawnBox> Labels =>
    [
        .. from text in _root.Elements(Svg + "text")
           where text.Attribute("font-weight") is not null
           select Box(text.ElementsBeforeSelf().Last(), text.Value),
    ];

    /// <summary>Words that are no labels, by a width that is about that of the letters.</summary>
    public IReadOnlyList<DrawnBox> Notes =>
        [.. _root.Elements(Svg + "text").Where(text => text.Attribute("font-weight") is null).Select(TextBox)];

    /// <summary>What the words of labels take, letters of common bold type.</summary>
    public IReadOnlyList<DrawnBox> LabelTexts =>
        [.. _root.Elements(Svg + "text").Where(text => text.Attribute("font-weight") is not null).Select(TextBox)];

    /// <summary>Every point that something is drawn at, but for what is clipped to another area, and for the white ground of labels.</summary>
    public IEnumerable<(double X, double Y, string Of)> Points =>
        from element in _root.Descendants()
        where element.Attribute("clip-path") is null && element.Parent!.Attribute("class") is null
            && (element.Name != Svg + "rect" || (string?)element.Attribute("fill") != "white" || element.Attribute("x") is null)
        from point in PointsOf(element)
        select (point.X, point.Y, element.ToString());

    private static List<(double X, double Y)> PointsOf(XElement element)
    {
        switch (element.Name.LocalName)
        {
            case "rect":
                DrawnBox box = Box(element, string.Empty);
                return [(box.Left, box.Top), (box.Right, box.Bottom)];
            case "circle":
                (double x, double y, double r) = (Number(element, "cx"), Number(element, "cy"), Number(element, "r"));
                return [(x - r, y - r), (x + r, y + r)];
            case "path":
                return Walk((string)element.Attribute("d")!);
            default:
                return [];
        }
    }

    /// <summary>Follows a path of straight lines.</summary>
    private static List<(double X, double Y)> Walk(string path)
    {
        (double x, double y) = (0, 0);
        List<(double, double)> points = [];
        foreach (Match step in Steps().Matches(path))
        {
            double[] by = Numbers(step.Groups[2].Value);
            (x, y) = step.Groups[1].Value switch
            {
                "M" or "L" => (by[0], by[1]),
                "m" or "l" => (x + by[0], y + by[1]),
                "H" => (by[0], y),
                "h" => (x + by[0], y),
                "V" => (x, by[0]),
                "v" => (x, y + by[0]),
                _ => (x, y),
            };
            points.Add((x, y));
        }

        return points;
    }

    private static DrawnBox TextBox(XElement text)
    {
        double size = text.Attribute("font-size") is { } own ? Parse(own.Value) : 14;
        double width = size * text.Value.Sum(letter => char.IsAsciiLetterUpper(letter) || letter == 'm' ? 0.8 : char.IsAscii(letter) ? 0.5 : 0.9);
        (double x, double y) = (Number(text, "x"), Number(text, "y"));
        double left = x - (width * ((string?)text.Attribute("text-anchor") switch { "middle" => 0.5, "end" => 1, _ => 0 }));
        return new DrawnBox(left, y - (size * 0.75), left + width, y + (size * 0.2), text.Value);
    }

    private static DrawnBox Box(XElement rect, string what)
    {
        double left = rect.Attribute("x") is null ? 0 : Number(rect, "x");
        double top = rect.Attribute("y") is null ? 0 : Number(rect, "y");
        return new DrawnBox(left, top, left + Number(rect, "width"), top + Number(rect, "height"), what);
    }

    private static double Number(XElement element, string attribute) => Parse((string)element.Attribute(attribute)!);

    private static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    public static double[] Numbers(string text) => [.. AnyNumber().Matches(text).Select(match => Parse(match.Value))];

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex AnyNumber();

    [GeneratedRegex(@"([A-Za-z])([^A-Za-z]*)")]
    private static partial Regex Steps();

    [GeneratedRegex(@"^M(\S+) \S+ V\S+ M(\S+) \S+ V\S+$")]
    private static partial Regex ExtensionLines();
}
