using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>A toe as it is measured or wanted: a length across a width, or an angle; toe-in positive.</summary>
/// <param name="AsLength">The length, behind less in front, or null.</param>
/// <param name="AsAngle">The angle, or null.</param>
public sealed record ToeReading(Length? AsLength, Angle? AsAngle)
{
    /// <summary>The toe of one wheel as an angle: a length <c>l</c> across a width <c>W</c> is <c>asin(l / W)</c>.</summary>
    /// <param name="width">The width <c>W</c>, above zero, or null where the toe is an angle.</param>
    /// <param name="wheels">The wheels, 1 or 2, that share the toe equally.</param>
    /// <returns>The angle; null where a length is not below the width, or there is no width for it.</returns>
    public Angle? OfWheel(Length? width, int wheels)
    {
        if (AsAngle is { } angle)
        {
            return Angle.FromRadians(angle.Radians / wheels);
        }

        double sine = AsLength is { } length && width is { } across
            ? Millimeters.Of(length) / wheels / Millimeters.Of(across)
            : double.NaN;
        return Math.Abs(sine) < 1 ? Angle.FromRadians(Math.Asin(sine)) : null;
    }
}
