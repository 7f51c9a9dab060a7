using System.Collections.Immutable;
using static TieRodCalc.Threads.UnifiedSeries;

namespace TieRodCalc.Threads;

/// <summary>The sizes of the standard series of ASME B1.1; from memory.</summary>
/// <remarks>Number sizes and UNC to 4 in, UNF to 1 1/2 in, UNEF to 1 11/16 in; the constant pitches to 6 in.</remarks>
internal static class StandardThreads
{
    /// <summary>Number size n has the diameter 0.060 in + n * 0.013 in.</summary>
    private const double SmallestNumberSize = 0.060;

    private const double NumberSizeStep = 0.013;
    private const int LargestNumberSize = 12;

    private static readonly ImmutableArray<UnifiedSize> UnifiedSizes =
    [
        Number(1, 64, Unc), Number(2, 56, Unc), Number(3, 48, Unc), Number(4, 40, Unc), Number(5, 40, Unc), Number(6, 32, Unc),
        Number(8, 32, Unc), Number(10, 24, Unc), Number(12, 24, Unc),
        Number(0, 80, Unf), Number(1, 72, Unf), Number(2, 64, Unf), Number(3, 56, Unf), Number(4, 48, Unf), Number(5, 44, Unf),
        Number(6, 40, Unf), Number(8, 36, Unf), Number(10, 32, Unf), Number(12, 28, Unf),
        Number(12, 32, Unef),
        new(1 / 4d, 20, Unc), new(5 / 16d, 18, Unc), new(3 / 8d, 16, Unc), new(7 / 16d, 14, Unc), new(1 / 2d, 13, Unc),
        new(9 / 16d, 12, Unc), new(5 / 8d, 11, Unc), new(3 / 4d, 10, Unc), new(7 / 8d, 9, Unc), new(1, 8, Unc),
        new(1 + (1 / 8d), 7, Unc), new(1 + (1 / 4d), 7, Unc), new(1 + (3 / 8d), 6, Unc), new(1 + (1 / 2d), 6, Unc),
        new(1 + (3 / 4d), 5, Unc), new(2, 4.5, Unc), new(2 + (1 / 4d), 4.5, Unc), new(2 + (1 / 2d), 4, Unc),
        new(2 + (3 / 4d), 4, Unc), new(3, 4, Unc), new(3 + (1 / 4d), 4, Unc), new(3 + (1 / 2d), 4, Unc),
        new(3 + (3 / 4d), 4, Unc), new(4, 4, Unc),
        new(1 / 4d, 28, Unf), new(5 / 16d, 24, Unf), new(3 / 8d, 24, Unf), new(7 / 16d, 20, Unf), new(1 / 2d, 20, Unf),
        new(9 / 16d, 18, Unf), new(5 / 8d, 18, Unf), new(3 / 4d, 16, Unf), new(7 / 8d, 14, Unf), new(1, 12, Unf),
        new(1 + (1 / 8d), 12, Unf), new(1 + (1 / 4d), 12, Unf), new(1 + (3 / 8d), 12, Unf), new(1 + (1 / 2d), 12, Unf),
        new(1 / 4d, 32, Unef), new(5 / 16d, 32, Unef), new(3 / 8d, 32, Unef), new(7 / 16d, 28, Unef), new(1 / 2d, 28, Unef),
        new(9 / 16d, 24, Unef), new(5 / 8d, 24, Unef), new(11 / 16d, 24, Unef), new(3 / 4d, 20, Unef), new(13 / 16d, 20, Unef),
        new(7 / 8d, 20, Unef), new(15 / 16d, 20, Unef), new(1, 20, Unef), new(1 + (1 / 16d), 18, Unef),
        new(1 + (1 / 8d), 18, Unef), new(1 + (3 / 16d), 18, Unef), new(1 + (1 / 4d), 18, Unef), new(1 + (5 / 16d), 18, Unef),
        new(1 + (3 / 8d), 18, Unef), new(1 + (7 / 16d), 18, Unef), new(1 + (1 / 2d), 18, Unef), new(1 + (9 / 16d), 18, Unef),
        new(1 + (5 / 8d), 18, Unef), new(1 + (11 / 16d), 18, Unef),
    ];

    /// <summary>The constant-pitch series: threads per inch, and the diameters in inches that they begin and end with.</summary>
    private static readonly ImmutableArray<(double ThreadsPerInch, double From, double To)> ConstantPitches =
    [
        (4, 2.5, 6), (6, 1.375, 6), (8, 1, 6), (12, 0.5625, 6), (16, 0.375, 6), (20, 0.25, 3), (28, 0.25, 1.5), (32, 0.25, 1),
    ];

    /// <summary>Every size of UNC, UNF, UNEF and UN.</summary>
    public static IEnumerable<(double DiameterMm, double ThreadsPerInch)> All =>
        UnifiedSizes.Select(size => (Millimeters.FromInches(size.Inches), size.ThreadsPerInch)).Concat(
            from size in ConstantPitches
            from inches in ConstantPitchDiameters(size.From, size.To)
            where SeriesOf(Millimeters.FromInches(inches), size.ThreadsPerInch) is null
            select (Millimeters.FromInches(inches), size.ThreadsPerInch));

    /// <summary>The series that has this size: UNS where it is in none, and so is special.</summary>
    public static UnifiedSeries SeriesOrSpecial(double diameterMm, double pitchMm)
    {
        const double Digits = 1e9;
        double threadsPerInch = Math.Round(Millimeters.Inch / pitchMm * Digits) / Digits;
        return SeriesOf(diameterMm, threadsPerInch) ?? (IsConstantPitch(diameterMm / Millimeters.Inch, threadsPerInch) ? Un : Uns);
    }

    /// <summary>The threads per inch of a diameter in UNC, UNF or UNEF, null where the series does not have it.</summary>
    public static double? ThreadsPerInch(double diameterMm, UnifiedSeries series)
    {
        foreach (UnifiedSize size in UnifiedSizes)
        {
            if (size.Series == series && Same(Millimeters.FromInches(size.Inches), diameterMm))
            {
                return size.ThreadsPerInch;
            }
        }

        return null;
    }

    /// <summary>UNC, UNF or UNEF where one of them has this size, null otherwise.</summary>
    public static UnifiedSeries? SeriesOf(double diameterMm, double threadsPerInch)
    {
        foreach (UnifiedSize size in UnifiedSizes)
        {
            if (size.ThreadsPerInch == threadsPerInch && Same(Millimeters.FromInches(size.Inches), diameterMm))
            {
                return size.Series;
            }
        }

        return null;
    }

    /// <summary>The diameter in inches of a number size, null where ASME B1.1 has none with these threads per inch.</summary>
    /// <remarks>2-56 is a number size, 2-4.5 a diameter of two inches.</remarks>
    public static double? NumberSizeInches(double number, double threadsPerInch)
    {
        if (number is < 0 or > LargestNumberSize)
        {
            return null;
        }

        double inches = InchesOfNumber(number);
        return SeriesOf(Millimeters.FromInches(inches), threadsPerInch) is null ? null : inches;
    }

    /// <summary>Sixteenths up to 2 in, eighths from there.</summary>
    private static IEnumerable<double> ConstantPitchDiameters(double from, double to)
    {
        for (double inches = from; inches <= to; inches += inches < 2 ? 1 / 16d : 1 / 8d)
        {
            yield return inches;
        }
    }

    private static bool IsConstantPitch(double inches, double threadsPerInch)
    {
        double step = inches < 2 ? 1 / 16d : 1 / 8d;
        if (!Same(Math.Round(inches / step) * step, inches))
        {
            return false;
        }

        foreach ((double threads, double from, double to) in ConstantPitches)
        {
            if (threads == threadsPerInch)
            {
                return inches >= from - Millimeters.Negligible && inches <= to + Millimeters.Negligible;
            }
        }

        return false;
    }

    private static UnifiedSize Number(int number, double threadsPerInch, UnifiedSeries series) =>
        new(InchesOfNumber(number), threadsPerInch, series);

    private static double InchesOfNumber(double number) => Math.Round(SmallestNumberSize + (NumberSizeStep * number), 3);

    private static bool Same(double mm, double otherMm) => Math.Abs(mm - otherMm) <= Millimeters.Negligible;

    private readonly record struct UnifiedSize(double Inches, double ThreadsPerInch, UnifiedSeries Series);
}
