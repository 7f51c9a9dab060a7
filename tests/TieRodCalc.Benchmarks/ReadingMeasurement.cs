using System.Runtime.CompilerServices;
using System.Text;
using TieRodCalc.Yaml;
using YamlDotNet.Core;

namespace TieRodCalc.Benchmarks;

/// <summary>Reading part files of some sizes, beside a bare walk over the parser's events of the same text.</summary>
internal static class ReadingMeasurement
{
    private const int Repeats = 9;
    private const double Mebi = 1024;

    public static void Run(int[] counts)
    {
        string file = Path.Combine(Path.GetTempPath(), $"parts-{Environment.ProcessId}.yaml");
        try
        {
            foreach (int count in counts)
            {
                string text = PartFileText.Of(count);
                File.WriteAllText(file, text);
                Reading<PartCatalog> reading = JobReader.ReadParts(file);
                int read = reading.Value is { } catalog
                    ? catalog.InnerEnds.Count + catalog.Sleeves.Count + catalog.OuterEnds.Count + catalog.JamNuts.Count
                    : 0;
                if (read != count)
                {
                    throw new InvalidOperationException(
                        $"{read} parts of {count} were read. {(reading.Problems is [var first, ..] ? first.Message : string.Empty)}");
                }

                int events = 0;
                double[] best = Rounds.Best(Repeats, () => events = Walk(file), () => JobReader.ReadParts(file));
                double held = Held(file) / Mebi / Mebi;
                double walked = Rounds.Allocated(() => Walk(file)) / Mebi;
                double allocated = Rounds.Allocated(() => JobReader.ReadParts(file)) / Mebi;
                Rounds.Print($"{count} parts, {Encoding.UTF8.GetByteCount(text) / Mebi / Mebi:0.00} MiB, {events} events:");
                Rounds.Print($"  walk {best[0]:0} ms, read {best[1]:0} ms, {best[1] / best[0]:0.00} times");
                Rounds.Print($"  allocated {walked:0.0} and {allocated:0.0} MiB, {allocated / walked:0.00} times");
                Rounds.Print($"  the parts hold {held:0.0} MiB");
            }
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>Bytes that the parts of a file hold once it is read.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static long Held(string file)
    {
        long before = GC.GetTotalMemory(forceFullCollection: true);
        Reading<PartCatalog> kept = JobReader.ReadParts(file);
        long after = GC.GetTotalMemory(forceFullCollection: true);
        GC.KeepAlive(kept);
        return after - before;
    }

    private static int Walk(string file)
    {
        using StringReader reader = new(File.ReadAllText(file));
        Parser parser = new(reader);
        int events = 0;
        while (parser.MoveNext())
        {
            events++;
        }

        return events;
    }
}
