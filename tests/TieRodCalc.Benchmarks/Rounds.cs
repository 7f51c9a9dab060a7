using System.Diagnostics;
using System.Globalization;

namespace TieRodCalc.Benchmarks;

/// <summary>
/// Times some ways to the same thing in turn, in many short rounds, and keeps the best round of each: what else runs on the machine
/// spoils rounds, and not what their best are to each other.
/// </summary>
internal static class Rounds
{
    private const double Kibi = 1024;

    /// <summary>The best round of each way, in milliseconds.</summary>
    public static double[] Best(int rounds, params Action[] ways)
    {
        double[] best = [.. ways.Select(_ => double.PositiveInfinity)];
        for (int round = 0; round < rounds; round++)
        {
            for (int way = 0; way < ways.Length; way++)
            {
                long start = Stopwatch.GetTimestamp();
                ways[way]();
                best[way] = Math.Min(best[way], Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            }
        }

        return best;
    }

    /// <summary>What a way allocates on this thread, in KiB.</summary>
    public static double Allocated(Action way)
    {
        way();
        long before = GC.GetAllocatedBytesForCurrentThread();
        way();
        return (GC.GetAllocatedBytesForCurrentThread() - before) / Kibi;
    }

    /// <summary>Prints a line, the same whatever the culture.</summary>
    public static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
