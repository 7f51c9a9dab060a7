using BenchmarkDotNet.Running;
using TieRodCalc.Benchmarks;

BenchmarkSwitcher.FromAssembly(typeof(PlanBenchmarks).Assembly).Run(args);
