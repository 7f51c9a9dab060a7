using System.Globalization;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>The unit that a job's results are shown in first.</summary>
public enum LengthDisplay
{
    /// <summary>Inches, decimals and fractions.</summary>
    Inch,

    /// <summary>Millimeters.</summary>
    Millimeter,
}

/// <summary>Lengths as a person sees them, the same in every culture; halves are rounded away from zero.</summary>
public static class LengthFormat
{
    /// <summary>The finest line of a fractional steel rule.</summary>
    private const int FinestDenominator = 64;

    /// <summary>A fraction that is off by more than this says so: the last decimal of an inch that is shown.</summary>
    private const decimal FractionMaySwallow = 0.001m;

    /// <summary>1000 km: everything a rod can be, with room for nonsense, and safe to count in decimals.</summary>
    private const double MostMm = 1e9;

    private const decimal MillimetersPerInch = 25.4m;

    /// <summary>The length in one unit: <c>8.938 in</c> with three decimals, <c>227.01 mm</c> with two.</summary>
    /// <param name="value">Any finite length up to 1000 km, negative ones too.</param>
    /// <param name="unit">The unit.</param>
    /// <exception cref="ArgumentException">The length is not finite or out of range.</exception>
    public static string Decimal(Length value, LengthDisplay unit)
    {
        decimal mm = Checked(value);
        return unit == LengthDisplay.Inch
            ? Rounded(mm / MillimetersPerInch, 3, "0.000") + " in"
            : Rounded(mm, 2, "0.00") + " mm";
    }

    /// <summary>The nearest sixty-fourth of an inch, reduced: <c>8 15/16 in</c>; <c>~8 15/16 in</c> where it is off by more than
    /// 0.001 in.</summary>
    /// <param name="value">Any finite length up to 1000 km, negative ones too.</param>
    /// <exception cref="ArgumentException">The length is not finite or out of range.</exception>
    public static string Fraction(Length value) => BareFraction(Checked(value)) + " in";

    /// <summary>The length in the job's unit, the other beside it: <c>8.938 in (8 15/16, 227.01 mm)</c> or
    /// <c>227.01 mm (8 15/16 in)</c>.</summary>
    /// <param name="value">Any finite length up to 1000 km, negative ones too.</param>
    /// <param name="unit">The unit that comes first.</param>
    /// <exception cref="ArgumentException">The length is not finite or out of range.</exception>
    public static string Both(Length value, LengthDisplay unit) => unit == LengthDisplay.Inch
        ? $"{Decimal(value, unit)} ({BareFraction(Checked(value))}, {Decimal(value, LengthDisplay.Millimeter)})"
        : $"{Decimal(value, unit)} ({Fraction(value)})";

    /// <summary>The conversion keeps 15 digits, so that a half that a double misses by a hair is rounded as a half.</summary>
    private static decimal Checked(Length value)
    {
        double mm = Millimeters.Of(value);
        return Math.Abs(mm) <= MostMm
            ? (decimal)mm
            : throw new ArgumentException("A length to be shown must be finite and at most 1000 km.", nameof(value));
    }

    private static string Rounded(decimal value, int decimals, string format) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString(format, CultureInfo.InvariantCulture);

    /// <summary>The fraction without its unit.</summary>
    private static string BareFraction(decimal mm)
    {
        decimal inches = mm / MillimetersPerInch;
        decimal counted = Math.Round(inches * FinestDenominator, MidpointRounding.AwayFromZero);
        string about = Math.Abs((counted / FinestDenominator) - inches) > FractionMaySwallow ? "~" : string.Empty;
        string sign = counted < 0 ? "-" : string.Empty;
        return about + sign + Reduced((long)Math.Abs(counted));
    }

    /// <summary>So many sixty-fourths, zero or more, in lowest terms: <c>8 15/16</c>.</summary>
    internal static string Reduced(long sixtyFourths)
    {
        long whole = sixtyFourths / FinestDenominator;
        long numerator = sixtyFourths % FinestDenominator;
        long denominator = FinestDenominator;
        while (numerator != 0 && numerator % 2 == 0)
        {
            numerator /= 2;
            denominator /= 2;
        }

        string fraction = string.Create(CultureInfo.InvariantCulture, $"{numerator}/{denominator}");
        string wholes = whole.ToString(CultureInfo.InvariantCulture);
        return numerator == 0 ? wholes : whole == 0 ? fraction : wholes + " " + fraction;
    }
}
