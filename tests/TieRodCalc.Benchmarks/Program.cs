using System.Globalization;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using TieRodCalc.Benchmarks;

if (args is ["choose", .. string[] counts])
{
    ChoiceMeasurement.Run(counts.Length == 0 ? 3300 : int.Parse(counts[0], CultureInfo.InvariantCulture));
}
else if (args is ["start", .. string[] repeats])
{
    StartMeasurement.Run(repeats.Length == 0 ? 40 : int.Parse(repeats[0], CultureInfo.InvariantCulture));
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(PlanBenchmarks).Assembly).Run(
        args, ManualConfig.Create(DefaultConfig.Instance).WithBuildTimeout(TimeSpan.FromMinutes(10)));
}
