using UnitsNet;
using UnitsNet.Units;

namespace TieRodCalc;

/// <summary>The bridge between the quantities of the public signatures and the doubles in millimeters inside.</summary>
internal static class Millimeters
{
    /// <summary>The one comparison constant: a limit holds when it is missed by no more than this, and a smaller cut is no cut.</summary>
    /// <remarks>Sixty-fourths of an inch in doubles of millimeters would make a plain comparison refuse exact fits.</remarks>
    public const double Negligible = 1e-6;

    /// <summary>One inch, exactly 25.4 mm (international yard and pound agreement of 1959).</summary>
    public const double Inch = 25.4;

    /// <summary>Millimeters of a length in inches; exact for every sixty-fourth up to 30 in.</summary>
    public static double FromInches(double inches) => inches * 254 / 10;

    public static double Of(Length length) => length.Unit switch
    {
        LengthUnit.Millimeter => (double)length.Value,
        LengthUnit.Inch => FromInches((double)length.Value),
        _ => length.Millimeters,
    };

    /// <summary>Millimeters of a length that must be finite and not negative.</summary>
    /// <exception cref="ArgumentException">The length is negative, infinite or not a number.</exception>
    public static double NotNegative(Length length, string name)
    {
        double value = Of(length);
        return double.IsFinite(value) && value >= 0
            ? value
            : throw new ArgumentException("The length must be finite and not negative.", name);
    }

    /// <summary>Millimeters of a length that must be finite and above zero.</summary>
    /// <exception cref="ArgumentException">The length is not above zero, infinite or not a number.</exception>
    public static double Positive(Length length, string name)
    {
        double value = Of(length);
        return double.IsFinite(value) && value > 0
            ? value
            : throw new ArgumentException("The length must be finite and above zero.", name);
    }
}
