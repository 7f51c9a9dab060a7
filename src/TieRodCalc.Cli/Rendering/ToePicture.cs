using System.Xml.Linq;
using TieRodCalc.Planning;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Toe over turns for the whole adjustment of each rod, as SVG: black on white, made for paper.</summary>
internal static class ToePicture
{
    /// <summary>Units of the drawing: four to the millimeter.</summary>
    public const int Width = 720;

    private const double TitleWidth = 690;

    private const int Header = 34;

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
            drawn.Add(Svg.Element("g", [("transform", $"translate(0 {Header + (index * ToePanel.Height)})")], [.. panel.Draw()]));
            words.AddRange(panel.Words);
        }

        string name = report.Job.Name is { } job ? $"Toe over turns: {job}" : "Toe over turns";
        XElement picture = Svg.Picture(
            Width,
            height,
            name,
            string.Join(" ", words),
            [Svg.Hatching("closed"), Svg.Label(Width / 2, 22, Svg.Shortened(name, TitleWidth), "middle"), .. drawn]);
        return picture + "\n";
    }
}
