using System.Runtime.CompilerServices;

namespace TieRodCalc.Tests.Threads;

/// <summary>
/// docs/threads.md lists where a printed limit is not ours. Set the environment variable TIERODCALC_UPDATE_DOCS to write it anew.
/// </summary>
public class PrintedDifferencesTests
{
    private const string Start = "<!-- differences -->\n";
    private const string End = "<!-- end -->";

    [Fact]
    public void Every_difference_from_the_printed_tables_is_listed()
    {
        string path = Path.Combine(Folder(), "..", "..", "..", "docs", "threads.md");
        string before = File.ReadAllText(path);
        int start = before.IndexOf(Start, StringComparison.Ordinal) + Start.Length;
        string after = before[..start] + Listed() + before[before.IndexOf(End, start, StringComparison.Ordinal)..];
        if (Environment.GetEnvironmentVariable("TIERODCALC_UPDATE_DOCS") is { Length: > 0 })
        {
            File.WriteAllText(path, after);
        }

        Assert.Equal(after, before);
    }

    private static string Listed() => string.Concat(
        PrintedUnifiedLimitsTests.Exceptions.Select(exception => (exception.Reason, exception.Limit, Unit: "in"))
            .Concat(PrintedMetricLimitsTests.Differing.Select(exception => (exception.Reason, exception.Limit, Unit: "mm")))
            .GroupBy(exception => exception.Reason)
            .Select(group =>
                $"- {char.ToUpperInvariant(group.Key[0])}{group.Key[1..]}: {string.Join("; ", group.Select(one => Shown(one.Limit, one.Unit)))}.\n"));

    private static string Shown(PrintedLimit limit, string unit) => FormattableString.Invariant(
        $"{limit.Name} {limit.Printed.Value} {unit} (ours {(unit == "in" ? Math.Round(limit.Ours, 4) : Math.Round(limit.Ours, 3))})");

    private static string Folder([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
