using System.Globalization;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The readings of a sheet as a table, from full bump down to full droop.</summary>
internal static class BumpTable
{
    private static readonly int[] s_widths = [16, 18, 11, 11, 0];

    public static IEnumerable<string> Lines(BumpSheetFindings sheet, Length? plates, LengthDisplay unit)
    {
        BumpSentences sentences = new(unit);
        yield return Row("travel", "toe at gauge", "angle", plates is null ? string.Empty : "at plates", "step, per inch");
        foreach (BumpPoint point in sheet.Points.Reverse())
        {
            yield return Row(
                sentences.Travel(point.Travel),
                Signed(LengthFormat.Fine(point.AtGauge.Abs(), unit), point.Toe),
                Signed(point.Toe.Degrees.ToString("0.000", CultureInfo.InvariantCulture).TrimStart('-') + " deg", default),
                plates is { } width ? LengthFormat.Fine(Toe.AtPlates(point.Toe, width).Abs(), unit) : string.Empty,
                StepTo(sheet, point) is not { } step ? string.Empty
                    : Signed(
                        LengthFormat.Fine(step.PerInch.Abs(), unit),
                        point.Travel > Length.Zero ? step.ToeChange : -step.ToeChange)
                        + (step == sheet.Worst ? " *" : string.Empty));
        }
    }

    /// <summary>The step to a point from the one next to it toward ride height; null at ride height.</summary>
    private static BumpStep? StepTo(BumpSheetFindings sheet, BumpPoint point) => point.Travel.Value == 0
        ? null
        : sheet.Steps.First(step => (point.Travel > Length.Zero ? step.To : step.From).Millimeters == point.Travel.Millimeters);

    private static string Signed(string size, Angle toe) =>
        size.AsSpan().IndexOfAnyInRange('1', '9') < 0 || toe.Value == 0 ? size : $"{size} toe-{(toe.Value > 0 ? "in" : "out")}";

    private static string Row(params string[] cells) =>
        string.Concat(cells.Select((cell, index) => cell.Length < s_widths[index] ? cell.PadRight(s_widths[index]) : cell + " ")).TrimEnd();
}
