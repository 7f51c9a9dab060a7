using System.Xml.Linq;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The pieces of a page for a browser.</summary>
internal static class Html
{
    /// <summary>An element with text or elements; one without content is still closed by a tag of its own.</summary>
    public static XElement Element(string name, params object?[] content)
    {
        XElement element = new(name, content);
        if (element.IsEmpty && name is not "meta" and not "br")
        {
            element.Add(string.Empty);
        }

        return element;
    }

    /// <summary>The same with a class.</summary>
    public static XElement Classed(string name, string classes, params object?[] content) =>
        Element(name, [new XAttribute("class", classes), .. content]);

    /// <summary>A list of points.</summary>
    public static XElement Points(IEnumerable<string> points) =>
        Element("ul", points.Select(point => Element("li", Page.WithWholeBrackets(point))));

    /// <summary>A line to write on.</summary>
    public static XElement Line(string about) =>
        Classed("span", "line", new XAttribute("role", "img"), new XAttribute("aria-label", $"line to write on: {about}"));

    /// <summary>A box to tick.</summary>
    public static XElement Box() => Classed("span", "box", new XAttribute("role", "img"), new XAttribute("aria-label", "box to tick"));
}
