using System.Globalization;
using System.Xml.Linq;

namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// How high a page of a bench sheet comes out, about: with much to say its letters are smaller, so that a rod keeps to its page.
/// </summary>
internal static class SheetHeight
{
    /// <summary>What the shorter of the two papers leaves between its margins, in millimeters.</summary>
    private const double Page = 262;

    private const double Full = 184;
    private const double Half = 90;

    /// <summary>
    /// Points of the letters of each density of the page's style, how much a browser was seen to come out above the estimate at most, in
    /// millimeters, and that style's name.
    /// </summary>
    private static readonly (double Points, double Above, string Name)[] s_densities =
    [
        (10.5, 30, string.Empty), (10, 18, "dense"), (9.5, 4, "denser"), (9, 3, "densest"), (8.2, -7, "crowded"), (7.5, 0, "fullest"),
    ];

    /// <summary>The name of the least dense style in which the content keeps to a page.</summary>
    public static string Density(IReadOnlyList<XElement> content)
    {
        foreach ((double points, double above, string name) in s_densities)
        {
            if (content.Sum(element => Of(element, points, Full)) + above <= Page)
            {
                return name;
            }
        }

        return s_densities[^1].Name;
    }

    /// <summary>Height in millimeters of an element in letters of so many points, in a column of so many millimeters.</summary>
    private static double Of(XElement element, double points, double width)
    {
        const double MmPerPoint = 25.4 / 72;
        double line = 1.15 * points * MmPerPoint;
        double letters = width / (0.47 * points * MmPerPoint);

        // Beside its words a row has a number, a letter perhaps and a line to write on.
        bool Wraps(XElement row) => row.Value.Length > (letters * (row.Descendants("span").Any() ? (width - 20) / width : 1)) - 3;
        double Lines() => Math.Ceiling(element.Value.Length / letters);
        return (element.Name.LocalName, (string?)element.Attribute("class")) switch
        {
            ("svg", _) => double.Parse(element.Attribute("height")!.Value[..^2], CultureInfo.InvariantCulture),
            ("tr", _) when element.Parent!.Name.LocalName == "thead" => 3.6,
            ("tr", _) when element.Elements().Any(cell => (string?)cell.Attribute("class") == "part") => (1.5 * points * MmPerPoint) + 0.3,
            ("tr", _) => ((element.Descendants("span").Any() ? 1.27 : 1.15) * points * MmPerPoint) + 0.6 + (Wraps(element) ? line : 0),
            ("p", "headline") => (Lines() * line * 1.1) + 3,
            ("p", _) => (Lines() * line) + 0.6,
            ("li", _) => (Lines() * line * 1) + 0.5,
            ("h3", _) => (1.89 * points * MmPerPoint) + 0.35,
            ("h2", _) => 7.5 * Math.Ceiling(element.Value.Length / 45.0),
            ("div", "two") => element.Elements().Max(column => Of(column, points, Half)),
            ("div", "narrow") => element.Elements().Sum(child => Of(child, points, Half)),
            ("div", "small") => element.Descendants("li").Sum(point => Math.Ceiling(point.Value.Length / 75.0) * 3.2) / 2 + 7,
            ("div", "head") => 6 + element.Elements().First().Elements().Sum(child => Of(child, points, width * 0.75)),
            _ => element.Elements().Sum(child => Of(child, points, width)),
        };
    }
}
