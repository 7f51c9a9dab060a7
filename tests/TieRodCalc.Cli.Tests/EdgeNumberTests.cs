using System.Text.RegularExpressions;

namespace TieRodCalc.Cli.Tests;

/// <summary>Numbers at the edges of what can be written, at the places of a job that take one: a result or an error.</summary>
public partial class EdgeNumberTests
{
    private static readonly string[] s_edges =
    [
        "0", "-1", "0.0000000000000000001", "0.000001", "99999999999999999999", "100000", "1e400", "1/3", "0/1", "1/0",
        new string('9', 400),
        $"{new string('9', 400)}/{new string('9', 399)}",
    ];

    /// <summary>Command, sample, and how many numbers are passed over for one that is changed, where a run takes its time.</summary>
    public static TheoryData<string, string, int> Jobs => new()
    {
        { "plan", "car-27-aluminum-sleeve.yaml", 1 },
        { "plan", "car-27-tolerances.yaml", 1 },
        { "toe", "car-27.yaml", 1 },
        { "toe", "car-27-wheel-by-wheel.yaml", 1 },
        { "asbuilt", "car-27-built.yaml", 1 },
        { "choose", "car-27-choose.yaml", 30 },
        { "bump", "car-27-bump.yaml", 1 },
        { "bump", "car-27-corner.yaml", 4 },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_number_at_the_edge_gives_a_result_or_an_error(string command, string sample, int every)
    {
        string job = WithParts(sample);
        int tried = 0;
        int read = 0;
        foreach (Match number in Number().Matches(job).Where((_, at) => at % every == 0))
        {
            // Three of the edges at each number, others at the next.
            for (int edge = tried % 4; edge < s_edges.Length; edge += 4)
            {
                bool json = tried % 2 == 0;
                string changed = job[..number.Index] + s_edges[edge] + job[(number.Index + number.Length)..];
                CommandLine run = CommandLine.RunWith(changed, [command, "-", .. json ? (string[])["--json"] : []]);
                Assert.True(run.Status is 0 or 1 or 2, $"{changed}\n{run.Error}");
                Assert.Equal(run.Status == ExitStatus.WrongInput, run.Output.Length == 0);
                Assert.DoesNotMatch(json ? NoNumber() : NoNumberForPeople(), run.Output);
                read += run.Status == ExitStatus.WrongInput ? 0 : 1;
            }

            tried++;
        }

        Assert.True(tried > 5 && read > 3, $"{tried} numbers, {read} results");
    }

    /// <summary>A sample with its parts in it, or where it has parts of its own with the place of the others.</summary>
    private static string WithParts(string sample)
    {
        string job = File.ReadAllText(Repository.Sample("jobs", sample));
        string parts = Repository.Sample("jobs", PartsLine().Match(job).Groups["file"].Value);
        string text = File.ReadAllText(parts).Replace("tierodcalc: 1\n", string.Empty, StringComparison.Ordinal);
        return OwnParts().IsMatch(job)
            ? PartsLine().Replace(job, $"parts: ['{parts}']")
            : PartsLine().Replace(job, string.Empty) + "\n" + text;
    }

    [GeneratedRegex("""(?<=[ \[{])\d+(\.\d+)?(?= (in|mm|cm|deg|kN|MPa|ksi|kg|lb|USD|diameters)\b)""")]
    private static partial Regex Number();

    [GeneratedRegex("NaN|Infinity|∞")]
    private static partial Regex NoNumber();

    [GeneratedRegex("NaN|Infinity|∞|[0-9]E[+-][0-9]")]
    private static partial Regex NoNumberForPeople();

    [GeneratedRegex(@"^parts: \[(?<file>[^\]]*)\].*$", RegexOptions.Multiline)]
    private static partial Regex PartsLine();

    [GeneratedRegex("^(materials|inner_ends|sleeves|outer_ends|jam_nuts):", RegexOptions.Multiline)]
    private static partial Regex OwnParts();
}
