using System.Globalization;

namespace TieRodCalc.Benchmarks;

/// <summary>
/// Times some ways to the same thing in turn, in many rounds, by what they take of the processor, and keeps the best round of each: so
/// what else runs on the machine changes little of what they are to each other.
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
                best[way] = Math.Min(best[way], Taken(ways[way]));
            }
        }

        return best;
    }

    /// <summary>What a way takes of the processor, on all threads, in milliseconds.</summary>
    public static double Taken(Action way)
    {
        TimeSpan before = Environment.CpuUsage.TotalTime;
        way();
        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
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
