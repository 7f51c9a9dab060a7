using System.Xml.Linq;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Toe over travel of each side, as SVG: black on white, made for paper.</summary>
internal static class BumpPicture
{
    private const int Header = 34;
    private const double TitleWidth = 690;

    /// <summary>The picture of a report.</summary>
    public static string Of(BumpReport report)
    {
        string name = report.Job.Name is { } job ? $"Toe over travel: {job}" : "Toe over travel";
        BumpPanel[] panels = [.. report.Sides.Select(side => new BumpPanel(side, report.Job.Units))];
        XElement picture = Svg.Picture(
            BumpPanel.Width,
            Header + panels.Length * BumpPanel.Height,
            name,
            string.Join(" ", panels.SelectMany(panel => panel.Words)),
            [
                Svg.Label(BumpPanel.Width / 2, 22, Svg.Shortened(name, TitleWidth), "middle"),
                .. panels.Select((panel, index) => Svg.Element(
                    "g", [("transform", $"translate(0 {Header + index * BumpPanel.Height})")], [.. panel.Draw()])),
            ]);
        return picture + "\n";
    }
}
