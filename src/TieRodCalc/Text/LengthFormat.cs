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

/// <summary>Which way a length that is shown is rounded.</summary>
public enum LengthRounding
{
    /// <summary>To the nearest; halves away from zero.</summary>
    Nearest,

    /// <summary>Never above the length: for what is there at most.</summary>
    Down,

    /// <summary>Never below the length: for what is needed at least.</summary>
    Up,
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
    /// <param name="rounding">Which way it is rounded; what is within a ten-thousandth of the last place is taken as exact.</param>
    /// <exception cref="ArgumentException">The length is not finite or out of range.</exception>
    public static string Decimal(Length value, LengthDisplay unit, LengthRounding rounding = LengthRounding.Nearest)
    {
        decimal mm = Checked(value);
        return unit == LengthDisplay.Inch
            ? Rounded(mm / MillimetersPerInch, 3, rounding) + " in"
            : Rounded(mm, 2, rounding) + " mm";
    }

    /// <summary>A sixty-fourth of an inch, reduced: <c>8 15/16 in</c>; <c>~8 15/16 in</c> where it is off by more than 0.001 in.</summary>
    /// <param name="value">Any finite length up to 1000 km, negative ones too.</param>
    /// <param name="rounding">Which way it is rounded; what is within a ten-thousandth of a sixty-fourth is taken as exact.</param>
    /// <exception cref="ArgumentException">The length is not finite or out of range.</exception>
    public static string Fraction(Length value, LengthRounding rounding = LengthRounding.Nearest) =>
        BareFraction(Checked(value), rounding) + " in";

    /// <summary>
    /// The length in the job's unit, the other beside it: <c>8.938 in (8 15/16, 227.01 mm)</c> or <c>227.01 mm (8 15/16 in)</c>.
    /// </summary>
    /// <param name="value">Any finite length up to 1000 km, negative ones too.</param>
    /// <param name="unit">The unit that comes first.</param>
    /// <param name="rounding">Which way each of the spellings is rounded.</param>
    /// <exception cref="ArgumentException">The length is not finite or out of range.</exception>
    public static string Both(Length value, LengthDisplay unit, LengthRounding rounding = LengthRounding.Nearest) =>
        unit == LengthDisplay.Inch
            ? $"{Decimal(value, unit, rounding)} ({BareFraction(Checked(value), rounding)}, "
                + $"{Decimal(value, LengthDisplay.Millimeter, rounding)})"
            : $"{Decimal(value, unit, rounding)} ({Fraction(value, rounding)})";

    /// <summary>A limit of size in one unit, as fine as the standards print it: <c>0.6236 in</c>, <c>15.839 mm</c>.</summary>
    /// <param name="value">Any finite length up to 1000 km, negative ones too.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="rounding">Which way it is rounded; what is within a ten-thousandth of the last place is taken as exact.</param>
    /// <exception cref="ArgumentException">The length is not finite or out of range.</exception>
    public static string Fine(Length value, LengthDisplay unit, LengthRounding rounding = LengthRounding.Nearest)
    {
        decimal mm = Checked(value);
        return unit == LengthDisplay.Inch
            ? Rounded(mm / MillimetersPerInch, 4, rounding) + " in"
            : Rounded(mm, 3, rounding) + " mm";
    }

    /// <summary>The same in both units: <c>0.6236 in (15.839 mm)</c> or <c>15.839 mm (0.6236 in)</c>.</summary>
    /// <param name="value">Any finite length up to 1000 km, negative ones too.</param>
    /// <param name="unit">The unit that comes first.</param>
    /// <param name="rounding">Which way each of the spellings is rounded.</param>
    /// <exception cref="ArgumentException">The length is not finite or out of range.</exception>
    public static string FineBoth(Length value, LengthDisplay unit, LengthRounding rounding = LengthRounding.Nearest)
    {
        LengthDisplay other = unit == LengthDisplay.Inch ? LengthDisplay.Millimeter : LengthDisplay.Inch;
        return $"{Fine(value, unit, rounding)} ({Fine(value, other, rounding)})";
    }

    /// <summary>The conversion keeps 15 digits, so that a half that a double misses by a hair is rounded as a half.</summary>
    private static decimal Checked(Length value)
    {
        double mm = Millimeters.Of(value);
        return Math.Abs(mm) <= MostMm
            ? (decimal)mm
            : throw new ArgumentException("A length to be shown must be finite and at most 1000 km.", nameof(value));
    }

    private static string Rounded(decimal value, int decimals, LengthRounding rounding)
    {
        decimal scale = decimals switch { 2 => 100, 3 => 1000, _ => 10000 };
        decimal rounded = Whole(value * scale, rounding) / scale;

        // A decimal keeps the sign of a value that was rounded to zero.
        return (rounded == 0 ? 0 : rounded).ToString(
            decimals switch { 2 => "0.00", 3 => "0.000", _ => "0.0000" }, CultureInfo.InvariantCulture);
    }

    /// <summary>A whole number; one that is as near as doubles of millimeters can tell is not left for the next.</summary>
    private static decimal Whole(decimal value, LengthRounding rounding)
    {
        const decimal Same = 1e-4m;
        return rounding switch
        {
            LengthRounding.Down => Math.Floor(value + Same),
            LengthRounding.Up => Math.Ceiling(value - Same),
            _ => Math.Round(value, MidpointRounding.AwayFromZero),
        };
    }

    /// <summary>The fraction without its unit.</summary>
    private static string BareFraction(decimal mm, LengthRounding rounding)
    {
        decimal inches = mm / MillimetersPerInch;
        decimal counted = Whole(inches * FinestDenominator, rounding);
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
