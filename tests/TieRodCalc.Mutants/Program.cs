using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using TieRodCalc.Mutants;

switch (args)
{
    case ["know", string assembly, string names, string milliseconds]:
        Mutation mutation = new() { Active = -1 };
        mutation.Initialize();
        foreach (KnownTest test in TestSuite.Known(assembly, new(names), double.Parse(milliseconds, CultureInfo.InvariantCulture), mutation))
        {
            Console.WriteLine(test);
        }
        return 0;
    case ["work", string mutant, string tests, string results, string most]:
        Worker worker = new(
            int.Parse(mutant, CultureInfo.InvariantCulture),
            [.. File.ReadLines(tests).Select(KnownTest.Read)],
            File.Exists(results) ? File.ReadLines(results).Select(Result.Read) : [],
            int.Parse(most, CultureInfo.InvariantCulture));
        worker.Run();
        return 0;
    case ["run", string report, string results, string tests, string most, string seconds, .. string[] places]:
        Run(report, results, tests, most, TimeSpan.FromSeconds(int.Parse(seconds, CultureInfo.InvariantCulture)), places);
        return 0;
    default:
        Console.Error.WriteLine("usage: know ASSEMBLY NAMES MILLISECONDS | run REPORT RESULTS TESTS MOST SECONDS PLACE...");
        return 2;
}

static void Run(string report, string results, string tests, string most, TimeSpan patience, string[] places)
{
    // A mutant killed in an earlier run stays so; what has survived is tried again with the tests of this run.
    Dictionary<int, string> known = [];
    foreach (Result result in File.Exists(results) ? File.ReadLines(results).Select(Result.Read) : [])
    {
        known[result.Mutant] = result.Outcome;
    }
    using JsonDocument document = JsonDocument.Parse(File.ReadAllBytes(report));
    List<Mutant> mutants = [.. Mutant.Of(document)
        .Where(mutant => places.Any(place => mutant.Place.StartsWith(place, StringComparison.Ordinal)))];
    ConcurrentQueue<Mutant> left = new(mutants.Where(mutant => known.GetValueOrDefault(mutant.Id, "survived") == "survived"));
    Console.WriteLine($"{mutants.Count} mutants, {left.Count} to be tested");
    Lock written = new();
    Parallel.For(0, Environment.ProcessorCount, _ =>
    {
        using WorkerProcess worker = new([tests, results, most], patience);
        while (left.TryDequeue(out Mutant? mutant))
        {
            Result result = new(mutant.Id, mutant.Place, worker.Try(mutant));
            lock (written)
            {
                known[mutant.Id] = result.Outcome;
                File.AppendAllText(results, $"{result}\t{mutant}\n");
            }
        }
    });
    foreach (IGrouping<string, Mutant> room in mutants.GroupBy(mutant => mutant.Room))
    {
        Console.WriteLine($"{room.Key,-10} {Score([.. room])}");
    }
    Console.WriteLine($"{"all",-10} {Score(mutants)}");

    string Score(IReadOnlyCollection<Mutant> some)
    {
        int survived = some.Count(mutant => known[mutant.Id] == "survived");
        return $"{some.Count} mutants, {some.Count - survived} killed (of these {some.Count(mutant => known[mutant.Id] == "endless")} without end), "
            + $"{100.0 * (some.Count - survived) / some.Count:F1} percent";
    }
}
