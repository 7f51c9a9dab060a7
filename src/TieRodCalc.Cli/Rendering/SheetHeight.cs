using System.Globalization;
using System.Xml.Linq;

namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// How high a page of a bench sheet comes out, about: with much to say its letters are smaller, so that a rod keeps to its page.
/// </summary>
internal static class SheetHeight
{
    /// <summary>What the shorter of the two papers leaves between its margins, in millimeters, less what the estimate may be off.</summary>
    private const double Page = 258;

    private const double Full = 184;
    private const double Half = 90;

    /// <summary>Points of the letters of each density of the page's style, and that style's name.</summary>
    private static readonly (double Points, string Name)[] s_densities =
        [(9.5, string.Empty), (8.7, "dense"), (8.1, "denser"), (7.5, "densest")];

    /// <summary>The name of the least dense style in which the content keeps to a page.</summary>
    public static string Density(IReadOnlyList<XElement> content)
    {
        foreach ((double points, string name) in s_densities)
        {
            if (content.Sum(element => Of(element, points, Full)) <= Page)
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
        double Lines() => Math.Ceiling(element.Value.Length / letters);
        return (element.Name.LocalName, (string?)element.Attribute("class")) switch
        {
            ("svg", _) => double.Parse(element.Attribute("height")!.Value[..^2], CultureInfo.InvariantCulture),
            ("tr", _) => line * 1.25,
            ("p", "headline") => (Lines() * line * 1.1) + 3,
            ("p", _) => (Lines() * line) + 0.8,
            ("li", _) => (Lines() * line * (element.Parent?.Attribute("class") is null ? 1 : 1.2)) + 0.5,
            ("h3", _) => (1.13 * line) + 3,
            ("h2", _) => 7.5 * Math.Ceiling(element.Value.Length / 45.0),
            ("div", "two") => element.Elements().Max(column => Of(column, points, Half)),
            ("div", "narrow") => element.Elements().Sum(child => Of(child, points, Half)),
            ("div", "cautions") => 15,
            ("div", "head") => 6 + element.Elements().First().Elements().Sum(child => Of(child, points, width * 0.75)),
            _ => element.Elements().Sum(child => Of(child, points, width)),
        };
    }
}
