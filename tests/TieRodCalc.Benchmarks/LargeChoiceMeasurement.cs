using TieRodCalc.Planning;
using UnitsNet;

namespace TieRodCalc.Benchmarks;

/// <summary>How time and memory of a choice grow with the catalog, in every order; a plain loop could not be waited for.</summary>
internal static class LargeChoiceMeasurement
{
    private const int Top = 20;
    private const double Mebi = 1024 * 1024;

    private static readonly ChoiceOrder[] s_orders =
        [ChoiceOrder.Best, ChoiceOrder.Cut, ChoiceOrder.Price, ChoiceOrder.Mass, ChoiceOrder.Margin];

    private static readonly double[] s_targets = [206, 300, 400, 540, 652];

    public static void Run(int[] counts)
    {
        Console.WriteLine("of each kind, combinations, order, median ms, worst ms, allocated MiB at the worst, held MiB");
        foreach (int count in counts)
        {
            RodCandidates candidates = ChoiceCatalog.Of(count, 1000);
            foreach (ChoiceOrder order in s_orders)
            {
                Measure(count, candidates, order);
            }
        }
    }

    private static void Measure(int count, RodCandidates candidates, ChoiceOrder order)
    {
        List<double> times = [];
        long combinations = 0;
        double allocated = 0;
        foreach (double target in s_targets)
        {
            RodRequest request = new()
            {
                Target = Length.FromMillimeters(target),
                Shorter = Length.FromMillimeters(4),
                Longer = Length.FromMillimeters(4),
                Rules = PlanRules.Metric,
            };
            long before = GC.GetAllocatedBytesForCurrentThread();
            times.Add(Rounds.Taken(() => combinations = RodChooser.Choose(candidates, request, order, Top).Combinations));
            allocated = Math.Max(allocated, (GC.GetAllocatedBytesForCurrentThread() - before) / Mebi);
        }

        double median = times.Order().ElementAt(times.Count / 2);
        double held = GC.GetTotalMemory(forceFullCollection: true) / Mebi;
        Rounds.Print($"{count}, {combinations}, {order}, {median:0}, {times.Max():0}, {allocated:0}, {held:0}");
    }
}
