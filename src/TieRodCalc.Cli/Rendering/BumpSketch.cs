using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Toe over travel in characters: a row for a travel, full bump above; to the right toe-in.</summary>
internal static class BumpSketch
{
    private const int LabelWidth = 17;
    private const int Half = 28;
    private const int MostRows = 25;

    public static IEnumerable<string> Lines(BumpSheetFindings sheet, IReadOnlyList<BumpPoint>? then, LengthDisplay unit)
    {
        BumpSentences sentences = new(unit);
        IReadOnlyList<BumpPoint>[] curves = [sheet.Fitted, then ?? [], sheet.Points];
        double most = curves.SelectMany(curve => curve).Max(point => Math.Abs(point.AtGauge.Millimeters));
        BumpPoint[] points = [.. sheet.Points.Reverse()];
        string name = LengthFormat.Fine(Length.FromMillimeters(most), unit);
        yield return new string(' ', LabelWidth) + $"{name} toe-out".PadRight(Half) + "0" + $"toe-in {name}".PadLeft(Half);
        double gap = points.Zip(points.Skip(1), (high, low) => high.Travel.Millimeters - low.Travel.Millimeters).Min();
        double span = points[0].Travel.Millimeters - points[^1].Travel.Millimeters;
        int rows = span / gap < MostRows ? Nearest(span / gap) : points.Length - 1;
        for (int row = 0; row <= rows; row++)
        {
            int index = rows == points.Length - 1
                ? row
                : Array.FindIndex(points, point => Nearest((points[0].Travel.Millimeters - point.Travel.Millimeters) / gap) == row);
            yield return index < 0
                ? new string(' ', LabelWidth) + new string(' ', Half) + SketchGrid.Wall
                : Line(sentences.Travel(points[index].Travel), curves.Select(curve => At(curve, points[index].Travel)), most);
        }
    }

    /// <summary>Halves always go up, so that travels a gap apart or more never share a row; a hair below a half is one too.</summary>
    private static int Nearest(double rows) => (int)Math.Floor(rows + 0.5 + 1e-9);

    /// <summary>What the signs mean.</summary>
    public static string Legend(bool fitted, bool then) =>
        "o measured" + (fitted ? "   + two terms" : string.Empty) + (then ? "   x with the change" : string.Empty);

    private static double? At(IReadOnlyList<BumpPoint> curve, Length travel) =>
        curve.Where(point => point.Travel.Millimeters == travel.Millimeters)
            .Select(point => (double?)point.AtGauge.Millimeters).FirstOrDefault();

    /// <summary>One row; a later sign covers an earlier one.</summary>
    private static string Line(string label, IEnumerable<double?> values, double most)
    {
        char[] row = new string(' ', (2 * Half) + 1).ToCharArray();
        row[Half] = SketchGrid.Wall;
        foreach ((double? value, char sign) in values.Zip("+xo"))
        {
            if (value is { } toe)
            {
                row[Half + (most > 0 ? (int)Math.Round(toe / most * Half, MidpointRounding.AwayFromZero) : 0)] = sign;
            }
        }

        return label.PadRight(LabelWidth) + new string(row).TrimEnd();
    }
}
