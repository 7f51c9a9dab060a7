using System.Diagnostics;
using System.Globalization;

namespace TieRodCalc.Benchmarks;

/// <summary>
/// How long the whole process of <c>plan</c> on the demo takes, beside a program that prints one line and is built the same way: the
/// two by turns in one run, compiled ahead of time for an installed runtime, together with a runtime of their own, and as native programs.
/// </summary>
internal static class StartMeasurement
{
    private const int Warm = 5;
    private const string Job = "catalog-samples/jobs/car-27.yaml";
    private const string Output = "artifacts/start";

    public static void Run(int repeats)
    {
        Measure("ReadyToRun, for an installed runtime", repeats, "ready", "-p:PublishReadyToRun=true", "--self-contained", "false");
        Measure(
            "ReadyToRun, with the runtime as one piece",
            repeats,
            "whole",
            "-p:PublishReadyToRun=true",
            "-p:PublishReadyToRunComposite=true",
            "--self-contained",
            "true");
        Measure("native", repeats, "native", "-p:PublishAot=true");
    }

    private static void Measure(string name, int repeats, string folder, params string[] settings)
    {
        string command = Publish("src/TieRodCalc.Cli", folder, settings, "tierodcalc", "TieRodCalc.Cli");
        string line = Publish("tests/TieRodCalc.OneLine", folder, settings, "TieRodCalc.OneLine");
        (string Name, string Program, string[] Arguments)[] runs =
        [
            ("one line", line, []),
            ("plan", command, ["plan", Job]),
            ("plan --json", command, ["plan", Job, "--json"]),
            ("toe", command, ["toe", Job]),
        ];
        List<double>[] times = [.. runs.Select(_ => new List<double>())];
        for (int repeat = -Warm; repeat < repeats; repeat++)
        {
            for (int i = 0; i < runs.Length; i++)
            {
                double taken = Taken(runs[i].Program, runs[i].Arguments);
                if (repeat >= 0)
                {
                    times[i].Add(taken);
                }
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}, {repeats} runs each, by turns"));
        for (int i = 0; i < runs.Length; i++)
        {
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"  {runs[i].Name,-12} median {Median(times[i]),6:0.0} ms, least {times[i].Min(),6:0.0} ms, ratio of medians "
                    + $"{Median(times[i]) / Median(times[0]):0.00}, of the least {times[i].Min() / times[0].Min():0.00}"));
        }
    }

    private static string Publish(string project, string folder, string[] settings, params string[] names)
    {
        string output = Path.Combine(Output, folder, Path.GetFileName(project));

        // What was compiled ahead with other settings is taken for done.
        foreach (string stale in new[] { output, Path.Combine(project, "obj", "Release", "net10.0", "linux-x64") }.Where(Directory.Exists))
        {
            Directory.Delete(stale, recursive: true);
        }

        string[] arguments = ["publish", project, "-c", "Release", "-r", "linux-x64", "-nologo", "-v", "quiet", "-o", output, .. settings];
        Start("dotnet", arguments, quiet: false);
        return names.Select(name => Path.Combine(output, name)).First(File.Exists);
    }

    private static double Taken(string program, string[] arguments)
    {
        long start = Stopwatch.GetTimestamp();
        Start(program, arguments, quiet: true);
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    private static void Start(string program, string[] arguments, bool quiet)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = quiet })!;
        if (quiet)
        {
            process.StandardOutput.ReadToEnd();
        }

        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with status {process.ExitCode}");
        }
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
