using BenchmarkDotNet.Attributes;
using TieRodCalc.Planning;

namespace TieRodCalc.Benchmarks;

/// <summary>What planning a rod costs: by hand in doubles, the kernel, and the public face with quantities and warnings.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private readonly PlanSample _sample = new();

    /// <summary>Written by hand for this one purpose; what the others are compared with.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = PlanSample.Count)]
    public double ByHand()
    {
        double sum = 0;
        foreach (HandWrittenPlan plan in _sample.ByHand)
        {
            plan.Solve(out HandWrittenAnswer answer);
            sum += answer.Inner;
        }

        return sum;
    }

    /// <summary>The planner's own steps in doubles.</summary>
    [Benchmark(OperationsPerInvoke = PlanSample.Count)]
    public double Kernel()
    {
        double sum = 0;
        foreach ((RodProblem problem, double allowance, double mark) in _sample.Problems)
        {
            PlanKernel kernel = new(problem, allowance, mark);
            sum += kernel.Figures.Setting.Inner;
        }

        return sum;
    }

    /// <summary>The plan as it is asked for: parts in, quantities, worst case, strength and warnings out.</summary>
    [Benchmark(OperationsPerInvoke = PlanSample.Count)]
    public int Plan()
    {
        int warnings = 0;
        foreach ((Rods.Rod rod, RodRequest request) in _sample.Rods)
        {
            warnings += RodPlanner.Plan(rod, request).Warnings.Count;
        }

        return warnings;
    }
}
