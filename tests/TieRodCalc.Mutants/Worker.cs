using System.Globalization;
using Xunit.Sdk;

namespace TieRodCalc.Mutants;

/// <summary>
/// A process that tests one mutant after another: it reads its number and its place, switches that mutant on, runs the tests that reach it
/// until one fails, and says which.
/// </summary>
/// <param name="mutant">The mutant of this process alone; -1 where it is told which.</param>
/// <param name="tests">The tests, in the order in which they are run.</param>
/// <param name="earlier">What came of mutants before.</param>
/// <param name="most">How many tests at most.</param>
internal sealed class Worker(int mutant, IReadOnlyList<KnownTest> tests, IEnumerable<Result> earlier, int most)
{
    /// <summary>What starts a line meant for the one who started the process; the tests may write as well.</summary>
    public const string Mark = "#mutants\t";

    private const int Chunk = 32;

    private readonly Dictionary<(string Place, string Test), int> _kills = [];

    /// <summary>Whether a test that failed passes where no mutant is on; with other random cases than it was known by it may not.</summary>
    private readonly Dictionary<IXunitTestCase, bool> _sound = [];

    public void Run()
    {
        foreach (Result result in earlier)
        {
            Count(result.Place, result.Killer);
        }
        Mutation mutation = new() { Active = mutant };
        if (mutant < 0)
        {
            Say(string.Join(',', mutation.Reached(mutation.Initialize)));
        }
        else
        {
            mutation.Initialize();
            Say("");
        }
        using TestSuite suite = new(tests);
        while (Console.ReadLine() is { } line)
        {
            string[] words = line.Split('\t');
            int id = int.Parse(words[0], CultureInfo.InvariantCulture);
            string place = words[1];
            string room = $".{place.Split('/')[0]}.";

            // Those that have found something in the same file go first, then those of its room.
            List<IXunitTestCase> reaching = [.. suite.Tests.Where(test => mutant >= 0 || test.Reached.Contains(id))
                .Select(test => test.Test)
                .OrderByDescending(test => _kills.GetValueOrDefault((place, test.DisplayName)))
                .ThenByDescending(test => test.DisplayName.Contains(room, StringComparison.Ordinal))
                .Take(most)];
            string? killer = Killer(suite, mutation, id, reaching)?.DisplayName;
            Count(place, killer);
            Say(killer is not null ? $"killed\t{killer}" : $"survived\t{reaching.Count} tests");
        }
    }

    /// <summary>The first test that fails, and that passes where no mutant is on.</summary>
    private IXunitTestCase? Killer(TestSuite suite, Mutation mutation, int id, List<IXunitTestCase> reaching)
    {
        IXunitTestCase? killer;
        do
        {
            suite.Forget();
            mutation.Active = id;
            killer = reaching.Where(test => _sound.GetValueOrDefault(test, true)).Chunk(Chunk).Select(suite.FirstFailed)
                .FirstOrDefault(test => test is not null);
            mutation.Active = -1;
            if (killer is not null && !_sound.ContainsKey(killer))
            {
                suite.Forget();
                _sound[killer] = mutant >= 0 || suite.FirstFailed([killer]) is null;
            }
        }
        while (killer is not null && !_sound[killer]);
        return killer;
    }

    private void Count(string place, string? killer)
    {
        if (killer is not null)
        {
            _kills[(place, killer)] = _kills.GetValueOrDefault((place, killer)) + 1;
        }
    }

    private static void Say(string text)
    {
        Console.Out.WriteLine(Mark + text);
        Console.Out.Flush();
    }
}
