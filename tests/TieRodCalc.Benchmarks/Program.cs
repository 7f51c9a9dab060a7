using System.Globalization;
using BenchmarkDotNet.Running;
using TieRodCalc.Benchmarks;

if (args is ["choose", .. string[] counts])
{
    ChoiceMeasurement.Run(counts.Length == 0 ? 3300 : int.Parse(counts[0], CultureInfo.InvariantCulture));
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(PlanBenchmarks).Assembly).Run(args);
}
