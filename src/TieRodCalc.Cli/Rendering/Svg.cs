using System.Globalization;
using System.Xml.Linq;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The pieces that pictures are drawn of: black on white, made for paper.</summary>
internal static class Svg
{
    /// <summary>Units of a drawing to the millimeter of paper.</summary>
    public const double UnitsPerMm = 4;

    /// <summary>A letter of this height is 9.9 points on paper.</summary>
    public const int FontSize = 14;

    /// <summary>The namespace of the pieces.</summary>
    public static readonly XNamespace Space = "http://www.w3.org/2000/svg";

    public static XElement Element(string name, (string Name, string Value)[] attributes, params XElement[] content) =>
        new(Space + name, attributes.Select(attribute => new XAttribute(attribute.Name, attribute.Value)), content);

    public static XElement Label(double x, double y, string text, string anchor = "start") => new(
        Space + "text", new XAttribute("x", Number(x)), new XAttribute("y", Number(y)), new XAttribute("text-anchor", anchor), text);

    public static XElement Path(string points, double stroke, string? dashes = null) => Element(
        "path",
        [("d", points), ("fill", "none"), ("stroke", "black"), ("stroke-width", Number(stroke)), .. Dashed(dashes)]);

    public static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A number that somebody may measure by.</summary>
    public static string Exact(double value) => JsonNumber.Of(value).ToString(CultureInfo.InvariantCulture);

    /// <summary>A whole picture with its name and what it says in words, on white paper.</summary>
    public static XElement Picture(double width, double height, string name, string words, params IEnumerable<XElement> content) => Element(
        "svg",
        [
            ("width", $"{Number(width / UnitsPerMm)}mm"),
            ("height", $"{Number(height / UnitsPerMm)}mm"),
            ("viewBox", $"0 0 {Number(width)} {Number(height)}"),
            ("font-family", "Arial, Helvetica, Liberation Sans, sans-serif"),
            ("font-size", FontSize.ToString(CultureInfo.InvariantCulture)),
            ("role", "img"),
        ],
        [
            new XElement(Space + "title", name),
            new XElement(Space + "desc", words),
            Element("rect", [("width", Number(width)), ("height", Number(height)), ("fill", "white")]),
            .. content,
        ]);

    /// <summary>Slanted lines to fill an area with; it is filled with <c>url(#id)</c>.</summary>
    public static XElement Hatching(string id) => Element(
        "defs",
        [],
        Element(
            "pattern",
            [("id", id), ("width", "8"), ("height", "8"), ("patternUnits", "userSpaceOnUse")],
            Element("path", [("d", "M0 8 L8 0"), ("stroke", "black"), ("stroke-width", "0.7")])));

    /// <summary>
    /// An area filled with slanted lines. They are lines, no pattern: printed patterns become coarse pictures.
    /// </summary>
    /// <param name="id">An id for the area, of its own on a page.</param>
    /// <param name="points">The area.</param>
    /// <param name="left">A rectangle around it.</param>
    /// <param name="top">Its top.</param>
    /// <param name="right">Its right.</param>
    /// <param name="bottom">Its bottom.</param>
    public static IEnumerable<XElement> Hatched(string id, string points, double left, double top, double right, double bottom)
    {
        const double Step = 6;
        double height = bottom - top;
        IEnumerable<string> lines =
            from line in Enumerable.Range(0, (int)((right - left + height) / Step) + 1)
            select $"M{Number(left - height + (line * Step))} {Number(bottom)} l{Number(height)} -{Number(height)}";
        yield return Element("defs", [], Element("clipPath", [("id", id)], Element("path", [("d", points)])));
        XElement hatching = Path(string.Join(' ', lines), 0.6);
        hatching.SetAttributeValue("clip-path", $"url(#{id})");
        yield return hatching;
    }

    /// <summary>How wide a text is at most, about.</summary>
    public static double WidthOf(string text)
    {
        double width = 0;
        StringInfo info = new(text);
        for (int letter = 0; letter < info.LengthInTextElements; letter++)
        {
            width += WidthOf(info, letter);
        }

        return width;
    }

    /// <summary>A text cut to a width of the drawing; what belongs together as one letter stays together.</summary>
    public static string Shortened(string text, double width)
    {
        StringInfo info = new(text);
        for (int letter = 0; letter < info.LengthInTextElements; letter++)
        {
            width -= WidthOf(info, letter);
            if (width < 0)
            {
                return info.SubstringByTextElements(0, Math.Max(0, letter - 1)) + "…";
            }
        }

        return text;
    }

    /// <summary>Capitals and signs beyond ASCII are taken as wide as the widest, other letters as wide as they are on average.</summary>
    private static double WidthOf(StringInfo text, int letter)
    {
        const double Wide = 0.95;
        const double Usual = 0.56;
        char first = text.SubstringByTextElements(letter, 1)[0];
        return FontSize * (char.IsAsciiLetterUpper(first) || !char.IsAscii(first) ? Wide : Usual);
    }

    private static (string, string)[] Dashed(string? dashes) => dashes is null ? [] : [("stroke-dasharray", dashes)];
}
