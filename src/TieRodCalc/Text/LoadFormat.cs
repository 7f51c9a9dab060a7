using System.Globalization;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>Writes forces and stresses with three significant digits, the other system's unit beside them.</summary>
public static class LoadFormat
{
    private const int Digits = 3;

    /// <summary>A force in lbf with kN beside it, or the other way round in a metric job.</summary>
    /// <param name="force">The force, zero or more.</param>
    /// <param name="unit">The unit of the job's lengths.</param>
    /// <param name="rounding">Down for what a part can carry.</param>
    public static string Of(Force force, LengthDisplay unit, LengthRounding rounding = LengthRounding.Nearest)
    {
        string kilonewtons = Significant(force.Kilonewtons, rounding) + " kN";
        string pounds = Significant(force.PoundsForce, rounding) + " lbf";
        return unit == LengthDisplay.Inch ? $"{pounds} ({kilonewtons})" : $"{kilonewtons} ({pounds})";
    }

    /// <summary>A stress in ksi with MPa beside it, or the other way round in a metric job.</summary>
    /// <param name="stress">The stress, zero or more.</param>
    /// <param name="unit">The unit of the job's lengths.</param>
    /// <param name="rounding">Down for what a part can carry, up for what it has to.</param>
    public static string Of(Pressure stress, LengthDisplay unit, LengthRounding rounding = LengthRounding.Nearest)
    {
        string megapascals = Significant(stress.Megapascals, rounding) + " MPa";
        string ksi = Significant(stress.KilopoundsForcePerSquareInch, rounding) + " ksi";
        return unit == LengthDisplay.Inch ? $"{ksi} ({megapascals})" : $"{megapascals} ({ksi})";
    }

    private static string Significant(double value, LengthRounding rounding)
    {
        const double Noise = 1e-9;
        if (value <= 0)
        {
            return "0";
        }

        double step = Math.Pow(10, Math.Floor(Math.Log10(value)) - (Digits - 1));
        double steps = value / step;
        double whole = rounding switch
        {
            LengthRounding.Down => Math.Floor(steps + Noise),
            LengthRounding.Up => Math.Ceiling(steps - Noise),
            _ => Math.Round(steps, MidpointRounding.AwayFromZero),
        };
        int decimals = Math.Max(0, (int)Math.Round(-Math.Log10(step)));
        return (whole * step).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
