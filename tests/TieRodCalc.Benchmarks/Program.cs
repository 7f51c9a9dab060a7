using System.Globalization;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using TieRodCalc.Benchmarks;

static int[] Counts(string[] written, params int[] usual) =>
    written.Length == 0 ? usual : [.. written.Select(count => int.Parse(count, CultureInfo.InvariantCulture))];

switch (args)
{
    case ["choose", .. string[] counts]:
        ChoiceMeasurement.Run(Counts(counts, 3300));
        break;
    case ["choose-large", .. string[] counts]:
        LargeChoiceMeasurement.Run(Counts(counts, 3300, 10_000, 33_000));
        break;
    case ["ratios"]:
        RatioMeasurement.Run();
        break;
    case ["parallel"]:
        ParallelMeasurement.Run();
        break;
    case ["read", .. string[] counts]:
        ReadingMeasurement.Run(Counts(counts, 5_000, 10_000, 20_000));
        break;
    case ["start", .. string[] repeats]:
        StartMeasurement.Run(Counts(repeats, 40)[0]);
        break;
    case ["linear-program"]:
        LinearProgramMeasurement.Run();
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(PlanBenchmarks).Assembly).Run(
            args, ManualConfig.Create(DefaultConfig.Instance).WithBuildTimeout(TimeSpan.FromMinutes(10)));
        break;
}
