using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Threads;

/// <summary>Random threads with random classes, and the classes from the tightest to the loosest.</summary>
internal static class RandomThreads
{
    /// <summary>Chains of classes of which each is looser than the one before, outside and inside.</summary>
    public static readonly string[][] ExternalChains =
    [
        ["3A", "2A", "1A"],
        ["4h", "6h", "6g", "6f", "6e"], ["4h", "4g6g", "6g", "7g6g", "8g"], ["3h4h", "5h6h", "5g6g", "6g", "9g8g"],
    ];

    /// <summary>The same inside.</summary>
    public static readonly string[][] InternalChains =
    [
        ["3B", "2B", "1B"], ["4H", "5H", "6H", "7H", "8H"], ["4H5H", "5H", "6H", "6G", "7G"], ["4G", "5G", "6G", "7G", "8G"],
    ];

    private static readonly (double DiameterMm, double ThreadsPerInch)[] UnifiedSizes = [.. StandardThreads.All];

    /// <summary>From a pitch of 0.8 mm up, which have all grades.</summary>
    private static readonly (double DiameterMm, double PitchMm)[] MetricSizes =
        [.. MetricSeries.All.Where(listed => listed.PitchMm >= 0.8)];

    /// <summary>Every standard size of both systems.</summary>
    public static IEnumerable<ThreadSize> Standard => UnifiedSizes.Select(Unified).Concat(MetricSeries.All.Select(Metric));

    /// <summary>A size of either system, standard or special.</summary>
    public static ThreadSize Size(Random random)
    {
        return random.Next(4) switch
        {
            0 => Unified(UnifiedSizes[random.Next(UnifiedSizes.Length)]),
            1 => Metric(MetricSizes[random.Next(MetricSizes.Length)]),
            2 => Unified((6.35 + (44 * random.NextDouble()), random.Next(10, 33))),
            _ => Metric((6.5 + (43 * random.NextDouble()), 0.8 + (0.05 * random.Next(25)))),
        };
    }

    /// <summary>A pair of chains for a form.</summary>
    public static (string[] External, string[] Internal) Chains(ThreadForm form, Random random) => form == ThreadForm.Unified
        ? (ExternalChains[0], InternalChains[0])
        : (ExternalChains[1 + random.Next(ExternalChains.Length - 1)], InternalChains[1 + random.Next(InternalChains.Length - 1)]);

    /// <summary>A pair of a size, its classes said.</summary>
    public static ThreadedPair Pair(ThreadSize size, string male, string female) => ThreadedPair.Of(
        new(size, Hand.Right) { ToleranceClass = male }, new(size, Hand.Right) { ToleranceClass = female })!;

    /// <summary>A pair of a random size and random classes.</summary>
    public static ThreadedPair Pair(Random random)
    {
        ThreadSize size = Size(random);
        (string[] external, string[] @internal) = Chains(size.Form, random);
        return Pair(size, external[random.Next(external.Length)], @internal[random.Next(@internal.Length)]);
    }

    private static ThreadSize Unified((double DiameterMm, double ThreadsPerInch) size) =>
        ThreadSize.Unified(Length.FromMillimeters(size.DiameterMm), size.ThreadsPerInch);

    private static ThreadSize Metric((double DiameterMm, double PitchMm) size) =>
        ThreadSize.Metric(Length.FromMillimeters(size.DiameterMm), Length.FromMillimeters(size.PitchMm));
}
