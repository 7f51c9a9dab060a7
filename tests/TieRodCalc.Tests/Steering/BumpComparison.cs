using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>Holds what two readings of bump sheets found against each other.</summary>
/// <param name="scale">What the lengths of the second are multiplied by.</param>
/// <param name="toe">-1 where toe-in of the first is toe-out of the second.</param>
internal sealed class BumpComparison(double scale = 1, int toe = 1)
{
    /// <summary>Of what the figures are, or of one millimeter or radian.</summary>
    private const double Tolerance = 1e-7;

    public void Same(BumpFindings first, BumpFindings second)
    {
        Assert.Equal(first.Warnings.Select(Code), second.Warnings.Select(Code));
        Assert.All(first.Warnings.Zip(second.Warnings), pair => Lengths(pair.First.Value, pair.Second.Value));
        Assert.Equal(first.Suffices, second.Suffices);
        Assert.All(first.Sheets.Zip(second.Sheets), pair => Same(pair.First, pair.Second));
        Same(first.Both, second.Both);
        Same(first.HeightAlone, second.HeightAlone);
        Same(first.LengthAlone, second.LengthAlone);
        Assert.Equal(first.Measured is null, second.Measured is null);
        if (first.Measured is { } measured && second.Measured is { } other)
        {
            Assert.Equal(measured.Sheets, other.Sheets);
            Near(measured.Raising, other.Raising);
            Near(measured.Length, other.Length);
        }
    }

    private static (BumpWarningCode Code, int? Sheet) Code(BumpWarning warning) => (warning.Code, warning.Sheet);

    private static void Near(double expected, double actual)
    {
        Assert.Equal(double.IsFinite(expected), double.IsFinite(actual));
        Assert.True(
            !double.IsFinite(expected) || Math.Abs(expected - actual) <= Tolerance * Math.Max(1, Math.Abs(expected)),
            $"{expected:R} and {actual:R}");
    }

    private void Same(BumpSheetFindings first, BumpSheetFindings second)
    {
        Points(first.Points, second.Points);
        Points(first.Fitted, second.Fitted);
        Assert.Equal(first.Grade, second.Grade);
        Assert.Equal(first.Steps.Count, second.Steps.Count);
        Assert.Equal(first.Worst.From.Millimeters * scale, second.Worst.From.Millimeters, Tolerance);
        Assert.All(first.Steps.Zip(second.Steps), pair =>
        {
            (BumpStep one, BumpStep other) = pair;
            Lengths(one.From, other.From);
            Lengths(one.To, other.To);
            Near(toe * one.ToeChange.Radians, other.ToeChange.Radians);
            Near(toe * scale * one.AtGauge.Millimeters, other.AtGauge.Millimeters);
            Near(toe * one.PerInch.Millimeters, other.PerInch.Millimeters);
        });
        Assert.Equal(first.SlopePerMm is null, second.SlopePerMm is null);
        if (first.SlopePerMm is { } slope)
        {
            // Radians a millimeter and a square millimeter are small: what they come to at 50 mm is compared.
            Near(toe * slope * 50, second.SlopePerMm!.Value * scale * 50);
            Near(toe * first.CurvaturePerMm2!.Value * 2500, second.CurvaturePerMm2!.Value * scale * scale * 2500);
        }
    }

    private void Same(BumpAdvice? first, BumpAdvice? second)
    {
        Assert.Equal(first is null, second is null);
        if (first is null || second is null)
        {
            return;
        }

        Changes(first.Change, second.Change);
        Changes(first.Uncertainty, second.Uncertainty);
        Changes(first.Rounded, second.Rounded);
        Lengths(first.WantedLength, second.WantedLength);
        Lengths(first.RoundedLength, second.RoundedLength);
        Near(first.PredictedWorst.Millimeters, second.PredictedWorst.Millimeters);
        Near(first.RoundedWorst.Millimeters, second.RoundedWorst.Millimeters);
        Points(first.Predicted, second.Predicted);
        Points(first.RoundedPredicted, second.RoundedPredicted);
    }

    private void Changes(BumpChange? first, BumpChange? second)
    {
        Lengths(first?.OuterRaised, second?.OuterRaised);
        Lengths(first?.RodLonger, second?.RodLonger);
    }

    private void Lengths(Length? first, Length? second)
    {
        Assert.Equal(first is null, second is null);
        if (first is { } one && second is { } other)
        {
            Near(scale * one.Millimeters, other.Millimeters);
        }
    }

    private void Points(IReadOnlyList<BumpPoint> first, IReadOnlyList<BumpPoint> second)
    {
        Assert.Equal(first.Count, second.Count);
        Assert.All(first.Zip(second), pair =>
        {
            Lengths(pair.First.Travel, pair.Second.Travel);
            Near(toe * pair.First.Toe.Radians, pair.Second.Toe.Radians);
            Near(toe * scale * pair.First.AtGauge.Millimeters, pair.Second.AtGauge.Millimeters);
        });
    }
}
