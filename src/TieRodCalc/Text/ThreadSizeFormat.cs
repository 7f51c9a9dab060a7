using System.Globalization;
using TieRodCalc.Threads;

namespace TieRodCalc.Text;

/// <summary>Writes diameter and pitch as the standards do.</summary>
internal static class ThreadSizeFormat
{
    /// <summary>Decimals of a diameter in inches: three at least, as in <c>0.190</c>.</summary>
    private const int LeastInchDecimals = 3;

    /// <summary>What arithmetic may add to a diameter in inches; a tenth of the last decimal that is written.</summary>
    private const double Noise = 1e-7;

    private const int SixtyFourths = 64;

    public static string Format(ThreadSize size) => size.Form == ThreadForm.Metric
        ? "M" + Trimmed(size.DiameterMm) + "x" + Trimmed(size.PitchMm)
        : Unified(size.DiameterMm / Millimeters.Inch, Millimeters.Inch / size.PitchMm);

    /// <summary>A diameter in inches with three decimals or as many more as it needs, up to six.</summary>
    public static string DecimalInches(double inches)
    {
        int decimals = LeastInchDecimals;
        while (decimals < ThreadSizeReader.MostDecimals && Math.Abs(Math.Round(inches, decimals) - inches) > Noise)
        {
            decimals++;
        }

        return inches.ToString(string.Create(CultureInfo.InvariantCulture, $"F{decimals}"), CultureInfo.InvariantCulture);
    }

    public static string Trimmed(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Unified(double inches, double threadsPerInch)
    {
        double sixtyFourths = Math.Round(inches * SixtyFourths);
        bool isFraction = Math.Abs((sixtyFourths / SixtyFourths) - inches) <= Noise;

        // Whole inches with the pitch of a number size (1-64) would be read as that.
        bool isMistakable = sixtyFourths % SixtyFourths == 0
            && StandardThreads.NumberSizeInches(sixtyFourths / SixtyFourths, Math.Round(threadsPerInch)) is not null;
        string diameter = isFraction && !isMistakable ? LengthFormat.Reduced((long)sixtyFourths) : DecimalInches(inches);
        return diameter + "-" + Trimmed(threadsPerInch);
    }
}
