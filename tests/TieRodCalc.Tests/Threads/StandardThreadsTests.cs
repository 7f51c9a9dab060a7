using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Threads;

public class StandardThreadsTests
{
    /// <summary>ISO 261 table, from memory.</summary>
    [Theory]
    [InlineData(1, 0.25)]
    [InlineData(1.6, 0.35)]
    [InlineData(2, 0.4)]
    [InlineData(2.5, 0.45)]
    [InlineData(3, 0.5)]
    [InlineData(3.5, 0.6)]
    [InlineData(4, 0.7)]
    [InlineData(5, 0.8)]
    [InlineData(6, 1d)]
    [InlineData(7, 1d)]
    [InlineData(8, 1.25)]
    [InlineData(10, 1.5)]
    [InlineData(12, 1.75)]
    [InlineData(14, 2d)]
    [InlineData(16, 2d)]
    [InlineData(18, 2.5)]
    [InlineData(20, 2.5)]
    [InlineData(22, 2.5)]
    [InlineData(24, 3d)]
    [InlineData(27, 3d)]
    [InlineData(30, 3.5)]
    [InlineData(33, 3.5)]
    [InlineData(36, 4d)]
    [InlineData(39, 4d)]
    [InlineData(42, 4.5)]
    [InlineData(45, 4.5)]
    [InlineData(48, 5d)]
    [InlineData(52, 5d)]
    [InlineData(56, 5.5)]
    [InlineData(60, 5.5)]
    [InlineData(64, 6d)]
    [InlineData(13, null)]
    [InlineData(15, null)]
    [InlineData(17, null)]
    [InlineData(18.1, null)]
    [InlineData(72, null)]
    public void A_metric_size_has_its_coarse_pitch(double diameter, double? pitch) =>
        Assert.Equal(pitch, MetricSeries.CoarsePitch(diameter));

    /// <summary>ASME B1.1 table 1, from memory.</summary>
    [Theory]
    [InlineData(0.25, 20d, 28d, 32d)]
    [InlineData(0.3125, 18d, 24d, 32d)]
    [InlineData(0.375, 16d, 24d, 32d)]
    [InlineData(0.4375, 14d, 20d, 28d)]
    [InlineData(0.5, 13d, 20d, 28d)]
    [InlineData(0.5625, 12d, 18d, 24d)]
    [InlineData(0.625, 11d, 18d, 24d)]
    [InlineData(0.6875, null, null, 24d)]
    [InlineData(0.75, 10d, 16d, 20d)]
    [InlineData(0.8125, null, null, 20d)]
    [InlineData(0.875, 9d, 14d, 20d)]
    [InlineData(0.9375, null, null, 20d)]
    [InlineData(1, 8d, 12d, 20d)]
    [InlineData(1.0625, null, null, 18d)]
    [InlineData(1.125, 7d, 12d, 18d)]
    [InlineData(1.25, 7d, 12d, 18d)]
    [InlineData(1.375, 6d, 12d, 18d)]
    [InlineData(1.5, 6d, 12d, 18d)]
    [InlineData(1.6875, null, null, 18d)]
    [InlineData(1.75, 5d, null, null)]
    [InlineData(2, 4.5, null, null)]
    [InlineData(2.25, 4.5, null, null)]
    [InlineData(2.5, 4d, null, null)]
    [InlineData(3, 4d, null, null)]
    [InlineData(4, 4d, null, null)]
    [InlineData(0.06, null, 80d, null)]
    [InlineData(0.073, 64d, 72d, null)]
    [InlineData(0.086, 56d, 64d, null)]
    [InlineData(0.099, 48d, 56d, null)]
    [InlineData(0.112, 40d, 48d, null)]
    [InlineData(0.125, 40d, 44d, null)]
    [InlineData(0.138, 32d, 40d, null)]
    [InlineData(0.164, 32d, 36d, null)]
    [InlineData(0.19, 24d, 32d, null)]
    [InlineData(0.216, 24d, 28d, 32d)]
    [InlineData(0.65, null, null, null)]
    public void A_unified_size_has_its_threads_per_inch(double inches, double? coarse, double? fine, double? extraFine)
    {
        double mm = Millimeters.FromInches(inches);
        Assert.Equal(coarse, StandardThreads.ThreadsPerInch(mm, UnifiedSeries.Unc));
        Assert.Equal(fine, StandardThreads.ThreadsPerInch(mm, UnifiedSeries.Unf));
        Assert.Equal(extraFine, StandardThreads.ThreadsPerInch(mm, UnifiedSeries.Unef));
        foreach ((double? threads, UnifiedSeries series) in
            new[] { (coarse, UnifiedSeries.Unc), (fine, UnifiedSeries.Unf), (extraFine, UnifiedSeries.Unef) })
        {
            Assert.True(threads is null || StandardThreads.SeriesOf(mm, threads.Value) == series);
        }
    }

    /// <summary>ASME B1.1 table 1, from memory: 0.060 in and 0.013 in for each number.</summary>
    [Theory]
    [InlineData(0, 80d, 0.060)]
    [InlineData(1, 64d, 0.073)]
    [InlineData(2, 56d, 0.086)]
    [InlineData(3, 48d, 0.099)]
    [InlineData(4, 40d, 0.112)]
    [InlineData(5, 44d, 0.125)]
    [InlineData(6, 32d, 0.138)]
    [InlineData(8, 36d, 0.164)]
    [InlineData(10, 24d, 0.190)]
    [InlineData(10, 32d, 0.190)]
    [InlineData(12, 28d, 0.216)]
    [InlineData(1, 8d, null)]
    [InlineData(1, 12d, null)]
    [InlineData(1, 14d, null)]
    [InlineData(2, 4.5, null)]
    [InlineData(4, 4d, null)]
    [InlineData(7, 32d, null)]
    [InlineData(14, 20d, null)]
    public void A_number_size_is_known_by_number_and_threads_per_inch(double number, double threadsPerInch, double? inches) =>
        Assert.Equal(inches, StandardThreads.NumberSizeInches(number, threadsPerInch));

    /// <summary>ASME B1.1, the constant-pitch series, from memory: diameters by sixteenths up to 2 in, by eighths from there.</summary>
    [Theory]
    [InlineData(1.9375, 12, true)]
    [InlineData(2.0, 12, true)]
    [InlineData(2.0625, 12, false)]
    [InlineData(2.125, 12, true)]
    [InlineData(6.0, 12, true)]
    [InlineData(6.125, 12, false)]
    [InlineData(0.5625, 16, true)]
    [InlineData(0.3125, 16, false)]
    [InlineData(2.5, 4.0, true)]
    [InlineData(6.0, 4.0, true)]
    public void The_constant_pitch_series_are_among_all(double inches, double threadsPerInch, bool listed) => Assert.Equal(
        listed,
        StandardThreads.All.Any(size => Math.Abs(size.DiameterMm - 25.4 * inches) < 1e-9 && size.ThreadsPerInch == threadsPerInch));

    [Theory]
    [InlineData(0.0, 1.0)]
    [InlineData(-5.0, 1.0)]
    [InlineData(5.0, 0.0)]
    [InlineData(5.0, -1.0)]
    [InlineData(5.0, 5.0)]
    [InlineData(5.0, 6.0)]
    public void A_size_has_a_diameter_and_a_smaller_pitch(double diameter, double pitch)
    {
        Assert.Throws<ArgumentException>(() => ThreadSize.Metric(Length.FromMillimeters(diameter), Length.FromMillimeters(pitch)));
        Assert.Equal(4.9, ThreadSize.Metric(Length.FromMillimeters(5), Length.FromMillimeters(4.9)).Pitch.Millimeters);
    }
}
