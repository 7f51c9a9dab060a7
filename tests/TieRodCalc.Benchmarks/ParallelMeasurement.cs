using System.Diagnostics;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Benchmarks;

/// <summary>A hundred thousand plans on one thread and on all cores: by the clock, and what they take of the processor in all.</summary>
internal static class ParallelMeasurement
{
    private const int Plans = 100_000;
    private const int Repeats = 5;

    public static void Run()
    {
        PlanSample sample = new();
        int cores = Environment.ProcessorCount;
        Compare("kernel", cores, i =>
        {
            (RodProblem problem, double allowance, double mark) = sample.Problems[i % PlanSample.Count];
            return new PlanKernel(problem, allowance, mark).Figures.Setting.Inner;
        });
        Compare("public", cores, i =>
        {
            (Rod rod, RodRequest request) = sample.Rods[i % PlanSample.Count];
            return RodPlanner.Plan(rod, request).Warnings.Count;
        });
        Rounds.Print($"garbage collector: {(System.Runtime.GCSettings.IsServerGC ? "server" : "workstation")}");
    }

    private static void Compare(string name, int cores, Func<int, double> plan)
    {
        (double Wall, double Processor) one = (double.PositiveInfinity, double.PositiveInfinity);
        (double Wall, double Processor) all = one;
        for (int repeat = 0; repeat < Repeats; repeat++)
        {
            one = Better(one, Measure(1, plan));
            all = Better(all, Measure(cores, plan));
        }

        Rounds.Print($"{name}: {Plans} plans, one thread {one.Wall:0} ms, {cores} threads {all.Wall:0} ms");
        Rounds.Print($"  {one.Wall / all.Wall:0.00} times as fast, {all.Processor / one.Processor:0.00} times as much of the processor");
    }

    private static (double Wall, double Processor) Better((double Wall, double Processor) one, (double Wall, double Processor) other) =>
        (Math.Min(one.Wall, other.Wall), Math.Min(one.Processor, other.Processor));

    private static (double Wall, double Processor) Measure(int threads, Func<int, double> plan)
    {
        long start = Stopwatch.GetTimestamp();
        double taken = Rounds.Taken(
            () => Parallel.For(0, Plans, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => plan(i)));
        return (Stopwatch.GetElapsedTime(start).TotalMilliseconds, taken);
    }
}
