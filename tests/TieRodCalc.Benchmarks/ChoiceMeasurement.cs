using System.Diagnostics;
using System.Globalization;
using TieRodCalc.Planning;
using UnitsNet;

namespace TieRodCalc.Benchmarks;

/// <summary>
/// How long the best 20 of generated catalogs take, beside a plain loop over all combinations whose threads match, target by target in
/// one run on one core; and whether both give the same.
/// </summary>
internal static class ChoiceMeasurement
{
    private const int Catalogs = 5;
    private const int Top = 20;
    private const int Repeats = 3;

    // Hardly anything reaches the first two and the last two.
    private static readonly double[] s_targets = [196, 206, 260, 300, 340, 400, 470, 540, 630, 652];

    public static void Run(int[] counts)
    {
        foreach (int count in counts)
        {
            Run(count);
        }
    }

    private static void Run(int count)
    {
        Console.WriteLine("catalog, target mm, combinations, found, search ms, plain loop ms, same");
        List<double> search = [];
        List<double> plain = [];
        long least = long.MaxValue;
        for (int catalog = 0; catalog < Catalogs; catalog++)
        {
            RodCandidates candidates = ChoiceCatalog.Of(count, 1000 + catalog);
            foreach (double target in s_targets)
            {
                RodRequest request = new()
                {
                    Target = Length.FromMillimeters(target),
                    Shorter = Length.FromMillimeters(4),
                    Longer = Length.FromMillimeters(4),
                    Rules = PlanRules.Metric,
                };
                (double fast, RodChoices found) = Timed(Repeats, () => RodChooser.Choose(candidates, request, ChoiceOrder.Best, Top));
                (double slow, string[] all) = Timed(1, () => PlainLoop.First(candidates, request, Top));
                bool same = all.SequenceEqual(found.Found.Select(choice => PlainLoop.Name(choice.Rod.Parts)));
                search.Add(fast);
                plain.Add(slow);
                least = Math.Min(least, found.Combinations);
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"{catalog}, {target}, {found.Combinations}, {found.Found.Count}, {fast:0.0}, {slow:0}, {(same ? "yes" : "NO")}"));
            }
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} of each kind, at least {least} combinations: search median {Median(search):0.0} ms, worst {search.Max():0.0} ms; "
                + $"plain loop median {Median(plain):0} ms; ratio of the medians {Median(plain) / Median(search):0}"));
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);

    /// <summary>The median of some runs, the first one not counted.</summary>
    private static (double Milliseconds, T Result) Timed<T>(int repeats, Func<T> run)
    {
        T result = repeats > 1 ? run() : default!;
        List<double> times = [];
        for (int i = 0; i < repeats; i++)
        {
            long start = Stopwatch.GetTimestamp();
            result = run();
            times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        return (Median(times), result);
    }
}
