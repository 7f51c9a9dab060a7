using System.Globalization;
using TieRodCalc.Threads;

namespace TieRodCalc.Text;

/// <summary>Writes diameter and pitch as the standards do.</summary>
internal static class ThreadSizeFormat
{
    /// <summary>Decimals of a diameter in inches: three at least, as in <c>0.190</c>.</summary>
    private const int LeastInchDecimals = 3;

    private const int SixtyFourths = 64;

    public static string Format(ThreadSize size) => size.Form == ThreadForm.Metric
        ? "M" + Trimmed(size.DiameterMm) + "x" + Trimmed(size.PitchMm)
        : Unified(size);

    /// <summary>A diameter in inches with three decimals or as many more as it needs, up to six.</summary>
    public static string DecimalInches(double inches)
    {
        for (int decimals = LeastInchDecimals; decimals < ThreadSizeReader.MostDecimals; decimals++)
        {
            if (Math.Abs(Math.Round(inches, decimals) - inches) < Millimeters.Negligible / 10)
            {
                return inches.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            }
        }

        return inches.ToString("F" + ThreadSizeReader.MostDecimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    public static string Trimmed(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Unified(ThreadSize size)
    {
        double inches = size.DiameterMm / Millimeters.Inch;
        string threadsPerInch = Trimmed(Millimeters.Inch / size.PitchMm);
        string fraction = LengthFormat.BareFraction((decimal)size.DiameterMm);
        return (IsBestAsDecimal(size) ? DecimalInches(inches) : fraction) + "-" + threadsPerInch;
    }

    /// <summary>No sixty-fourth, or whole inches that would be read as a number size (1-64).</summary>
    private static bool IsBestAsDecimal(ThreadSize size)
    {
        double sixtyFourths = size.DiameterMm / Millimeters.Inch * SixtyFourths;
        double nearest = Math.Round(sixtyFourths);
        return Math.Abs(sixtyFourths - nearest) > Millimeters.Negligible
            || (nearest % SixtyFourths == 0
                && StandardThreads.NumberSizeInches(nearest / SixtyFourths, Math.Round(Millimeters.Inch / size.PitchMm)) is not null);
    }
}
