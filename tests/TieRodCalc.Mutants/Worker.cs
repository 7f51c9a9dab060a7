using System.Globalization;
using Xunit.Sdk;

namespace TieRodCalc.Mutants;

/// <summary>
/// A process that tests one mutant after another: it reads its number, its file and its room, switches that mutant on, runs the tests that reach
/// it until one fails, and says which.
/// </summary>
internal static class Worker
{
    /// <summary>What starts a line meant for the one who started the process; the tests may write as well.</summary>
    public const string Mark = "#mutants\t";

    private const int Chunk = 32;

    /// <param name="mutant">The mutant of this process alone; -1 where it is told which.</param>
    /// <param name="tests">The tests, in the order in which they are run.</param>
    public static void Run(int mutant, IReadOnlyList<KnownTest> tests)
    {
        Mutation mutation = new() { Active = mutant };
        Say(string.Join(',', mutation.Initialize()));
        using TestSuite suite = new(tests);
        Dictionary<(string File, IXunitTestCase Test), int> kills = [];
        while (Console.ReadLine() is { } line)
        {
            string[] words = line.Split('\t');
            int id = int.Parse(words[0], CultureInfo.InvariantCulture);

            // Those that have found something in the same file go first, then those of its room.
            List<IXunitTestCase> reaching = [.. suite.Tests.Where(test => mutant >= 0 || test.Reached.Contains(id)).Select(test => test.Test)
                .OrderByDescending(test => kills.GetValueOrDefault((words[1], test)))
                .ThenByDescending(test => test.DisplayName.Contains($".{words[2]}.", StringComparison.Ordinal))];
            suite.Forget();
            mutation.Active = id;
            IXunitTestCase? killer = reaching.Chunk(Chunk).Select(suite.FirstFailed).FirstOrDefault(test => test is not null);
            mutation.Active = -1;
            if (killer is not null)
            {
                kills[(words[1], killer)] = kills.GetValueOrDefault((words[1], killer)) + 1;
            }
            Say(killer is not null ? $"killed\t{killer.DisplayName}" : $"survived\t{reaching.Count} tests");
        }
    }

    private static void Say(string text)
    {
        Console.Out.WriteLine(Mark + text);
        Console.Out.Flush();
    }
}
