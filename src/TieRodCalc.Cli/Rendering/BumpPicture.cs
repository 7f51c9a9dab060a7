using System.Xml.Linq;
using TieRodCalc.Steering;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Toe over travel of each side, as SVG: black on white, made for paper.</summary>
internal static class BumpPicture
{
    private const int Header = 34;
    private const double TitleWidth = 690;

    private const double SheetWidth = 356;
    private const double SheetHeight = 128;

    /// <summary>The same of one side for a bench sheet, small and without its words, which stand below it.</summary>
    public static (XElement Picture, string Words) OfSide(BumpSide side, LengthDisplay unit)
    {
        BumpPanel panel = new(side, unit, SheetWidth, SheetHeight, titled: false);
        return (Svg.Picture(SheetWidth, SheetHeight, "Toe over travel", string.Join("; ", panel.Words), panel.Draw()), Legend(side, unit));
    }

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

    private static string Legend(BumpSide side, LengthDisplay unit)
    {
        BumpSentences sentences = new(unit);
        BumpSheetFindings newest = side.Findings!.Newest;
        string then = side.Advice is { } advice
            ? $"squares: predicted, {sentences.Task(advice.Rounded)}, worst {sentences.PerInch(advice.RoundedWorst)}"
            : "nothing to be changed that the readings can tell";
        return $"Dots: measured, worst {sentences.PerInch(newest.Worst.PerInch)} of travel, {Names.Of(newest.Grade)}; {then}.";
    }
}
