using System.Globalization;
using System.Xml.Linq;
using TieRodCalc.Planning;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Toe over turns for the whole adjustment of each rod, as SVG: black on white, made for paper.</summary>
internal static class ToePicture
{
    /// <summary>Units of the drawing: four to the millimeter.</summary>
    public const int Width = 720;

    /// <summary>A letter of this height is 9.9 points on paper.</summary>
    public const int FontSize = 14;

    private const double TitleWidth = 690;

    private const double UnitsPerMm = 4;
    private const int Header = 34;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The picture of a plan of toe.</summary>
    public static string Of(ToeReport report)
    {
        IReadOnlyList<ToeMove> moves = report.Plan.Moves;
        int height = Header + (moves.Count * ToePanel.Height);
        List<XElement> drawn = [];
        List<string> words = [];
        for (int index = 0; index < moves.Count; index++)
        {
            ToePanel panel = new(moves[index], report.RodNames[index], report.Toe, report.Job.Units);
            drawn.Add(Element("g", [("transform", $"translate(0 {Header + (index * ToePanel.Height)})")], [.. panel.Draw()]));
            words.AddRange(panel.Words);
        }

        string name = report.Job.Name is { } job ? $"Toe over turns: {job}" : "Toe over turns";
        XElement picture = Element(
            "svg",
            [
                ("width", $"{Number(Width / UnitsPerMm)}mm"),
                ("height", $"{Number(height / UnitsPerMm)}mm"),
                ("viewBox", $"0 0 {Width} {height}"),
                ("font-family", "sans-serif"),
                ("font-size", FontSize.ToString(CultureInfo.InvariantCulture)),
                ("role", "img"),
            ],
            [
                new XElement(Svg + "title", name),
                new XElement(Svg + "desc", string.Join(" ", words)),
                Element(
                    "defs",
                    [],
                    Element(
                        "pattern",
                        [("id", "closed"), ("width", "8"), ("height", "8"), ("patternUnits", "userSpaceOnUse")],
                        Element("path", [("d", "M0 8 L8 0"), ("stroke", "black"), ("stroke-width", "0.7")]))),
                Element("rect", [("width", $"{Width}"), ("height", $"{height}"), ("fill", "white")]),
                Label(Width / 2, 22, Shortened(name, TitleWidth), "middle"),
                .. drawn,
            ]);
        return picture + "\n";
    }

    public static XElement Element(string name, (string Name, string Value)[] attributes, params XElement[] content) =>
        new(Svg + name, attributes.Select(attribute => new XAttribute(attribute.Name, attribute.Value)), content);

    public static XElement Label(double x, double y, string text, string anchor = "start") => new(
        Svg + "text", new XAttribute("x", Number(x)), new XAttribute("y", Number(y)), new XAttribute("text-anchor", anchor), text);

    public static XElement Path(string points, double stroke, string? dashes = null) => Element(
        "path",
        [("d", points), ("fill", "none"), ("stroke", "black"), ("stroke-width", Number(stroke)), .. Dashed(dashes)]);

    public static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A text cut to a width of the drawing; what belongs together as one letter stays together.</summary>
    public static string Shortened(string text, double width)
    {
        // Capitals and signs beyond ASCII are taken as wide as the widest, other letters as wide as they are on average.
        const double Wide = 0.95;
        const double Usual = 0.56;
        double left = width / FontSize;
        StringInfo info = new(text);
        for (int letter = 0; letter < info.LengthInTextElements; letter++)
        {
            char first = info.SubstringByTextElements(letter, 1)[0];
            left -= char.IsAsciiLetterUpper(first) || !char.IsAscii(first) ? Wide : Usual;
            if (left < 0)
            {
                return info.SubstringByTextElements(0, Math.Max(0, letter - 1)) + "…";
            }
        }

        return text;
    }

    private static (string, string)[] Dashed(string? dashes) => dashes is null ? [] : [("stroke-dasharray", dashes)];
}
