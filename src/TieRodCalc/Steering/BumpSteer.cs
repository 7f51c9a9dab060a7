using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>Reads bump sheets: how far a wheel steers itself over its travel, and what change of its rod's joints ends that.</summary>
/// <remarks>
/// With <c>L</c> the rod's length, <c>r</c> what it gets longer by for a radian of toe-in, <c>e = r toe</c>, and <c>e1</c> and
/// <c>e2</c> its first and second derivative over travel at ride height: raise the outer joint by <c>L e1</c>, and
/// <c>1 / L_wanted = 1 / L + e2</c>. The derivation is in docs/bump.md.
/// </remarks>
public static class BumpSteer
{
    /// <summary>Reads the sheets of a wheel.</summary>
    /// <param name="request">The sheets, and what is known of the wheel.</param>
    /// <exception cref="ArgumentException">
    /// There is no sheet, a sheet has no reading or one that no wheel gives, or a length that must be above zero is not.
    /// </exception>
    public static BumpFindings Read(BumpRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        Millimeters.Positive(request.Shim, nameof(request));
        foreach (BumpSheet sheet in request.Sheets)
        {
            Millimeters.Positive(sheet.Spacing, nameof(request));
            if (sheet.Resolution is { } resolution)
            {
                Millimeters.Positive(resolution, nameof(request));
            }

            if (sheet.Readings.Count == 0 || sheet.FirstWrong is not null)
            {
                throw new ArgumentException("A sheet has no reading, or one that no wheel gives.", nameof(request));
            }
        }

        return request.Sheets.Count > 0
            ? new BumpReadout(request).Findings()
            : throw new ArgumentException("There is no bump sheet.", nameof(request));
    }

    /// <summary>The steps of a curve, and the one with the greatest toe change per inch.</summary>
    internal static (BumpStep[] Steps, BumpStep Worst) StepsOf(IReadOnlyList<BumpPoint> points)
    {
        BumpStep[] steps = [.. points.Zip(points.Skip(1), (low, high) => new BumpStep(
            low.Travel,
            high.Travel,
            high.Toe - low.Toe,
            high.AtGauge - low.AtGauge,
            Length.FromMillimeters(
                (high.AtGauge - low.AtGauge).Millimeters / (high.Travel - low.Travel).Millimeters * Millimeters.Inch)))];
        return (steps, steps.MaxBy(step => Math.Abs(step.PerInch.Millimeters)));
    }
}
