using System.Text.Json;

namespace TieRodCalc.Browser.Checks;

/// <summary>The text of one section.</summary>
/// <param name="Place">Which section it is.</param>
/// <param name="Heading">Its heading.</param>
/// <param name="Text">All its text, its blanks made single.</param>
internal sealed record SectionText(string Place, string Heading, string Text);

/// <summary>What the checks need to know of a page.</summary>
/// <param name="Sections">Its sections, one a rod.</param>
/// <param name="MarginX">Left and right margin together, in millimeters.</param>
/// <param name="MarginY">Top and bottom margin together, in millimeters.</param>
internal sealed record PageFacts(IReadOnlyList<SectionText> Sections, double MarginX, double MarginY)
{
    public static PageFacts Of(JsonElement facts)
    {
        JsonElement margin = facts.GetProperty("margin");
        double Of(string side) => margin.GetProperty(side).GetDouble();
        return new PageFacts(
            [
                .. facts.GetProperty("sections").EnumerateArray().Select(section =>
                    new SectionText(Json.Text(section, "place"), Json.Text(section, "heading"), Json.Text(section, "text"))),
            ],
            Of("left") + Of("right"),
            Of("top") + Of("bottom"));
    }

    /// <summary>What of a paper can be printed on, in whole pixels.</summary>
    public (int Width, int Height) Printable(Paper paper) =>
        ((int)((paper.Width - MarginX) * Paper.PixelsPerMillimeter), (int)((paper.Height - MarginY) * Paper.PixelsPerMillimeter));
}
