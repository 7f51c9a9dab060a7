using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>A toe as it is measured or wanted: a length across a width, or an angle; toe-in positive.</summary>
/// <param name="AsLength">The length, behind less in front, or null.</param>
/// <param name="AsAngle">The angle, or null.</param>
public sealed record ToeReading(Length? AsLength, Angle? AsAngle)
{
    /// <summary>The toe of one wheel as an angle: a length <c>l</c> across a width <c>W</c> is <c>asin(l / W)</c>.</summary>
    /// <param name="width">The width <c>W</c>, above zero, or null where the toe is an angle or zero.</param>
    /// <param name="wheels">The wheels, 1 or 2, that share the toe equally.</param>
    /// <returns>The angle; null where the wheel would not be below 90 degrees, or there is no width for a length.</returns>
    public Angle? OfWheel(Length? width, int wheels)
    {
        if (AsAngle is { } angle)
        {
            return Math.Abs(angle.Degrees) < 90.0 * wheels ? Angle.FromDegrees(angle.Degrees / wheels) : null;
        }

        double sine = AsLength is not { } length ? double.NaN
            : Millimeters.Of(length) == 0 ? 0
            : width is { } across ? Millimeters.Of(length) / wheels / Millimeters.Of(across)
            : double.NaN;
        return Math.Abs(sine) < 1 ? Angle.FromRadians(Math.Asin(sine)) : null;
    }
}
