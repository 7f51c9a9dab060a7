using System.Text.RegularExpressions;

namespace TieRodCalc.Cli.Tests;

/// <summary>Numbers at the edges of what can be written, at every place of a job that takes one: a result or an error, never nonsense.</summary>
public partial class EdgeNumberTests
{
    private static readonly string[] s_edges =
    [
        "0", "-1", "0.00000000000000000001", "0.000001", "99999999999999999999", "100000", "1e400", "1/3", "0/1", "1/0", new string('9', 400),
        $"{new string('9', 400)}/{new string('9', 399)}",
    ];

    public static TheoryData<string, string> Jobs => new()
    {
        { "plan", "car-27-aluminum-sleeve.yaml" },
        { "plan", "car-27-tolerances.yaml" },
        { "toe", "car-27.yaml" },
        { "toe", "car-27-wheel-by-wheel.yaml" },
        { "asbuilt", "car-27-built.yaml" },
        { "choose", "car-27-choose.yaml" },
        { "bump", "car-27-bump.yaml" },
        { "bump", "car-27-corner.yaml" },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_number_at_the_edge_gives_a_result_or_an_error(string command, string sample)
    {
        string job = OneFile(sample);
        MatchCollection numbers = Number().Matches(job);
        int read = 0;
        foreach (Match number in numbers)
        {
            // Three of the edges at each number, others at the next.
            for (int edge = number.Index % 4; edge < s_edges.Length; edge += 4)
            {
                string changed = job[..number.Index] + s_edges[edge] + job[(number.Index + number.Length)..];
                string[] form = number.Index % 2 == 0 ? ["--json"] : [];
                CommandLine run = CommandLine.RunWith(changed, [command, "-", .. form]);
                Assert.True(run.Status is 0 or 1 or 2, $"{changed}\n{run.Error}");
                Assert.Equal(run.Status == ExitStatus.WrongInput, run.Output.Length == 0);
                Assert.DoesNotMatch(Nonsense(), run.Output);
                read += run.Status == ExitStatus.WrongInput ? 0 : 1;
            }
        }

        Assert.True(numbers.Count > 20 && read > 10, $"{numbers.Count} numbers, {read} results");
    }

    /// <summary>A sample with its parts in it.</summary>
    private static string OneFile(string sample)
    {
        string job = File.ReadAllText(Repository.Sample("jobs", sample));
        string parts = PartsLine().Match(job).Groups["file"].Value;
        return PartsLine().Replace(job, string.Empty) + "\n" + (parts.Length == 0
            ? string.Empty
            : File.ReadAllText(Repository.Sample("jobs", parts)).Replace("tierodcalc: 1\n", string.Empty, StringComparison.Ordinal));
    }

    [GeneratedRegex("""(?<=[ \[{])\d+(\.\d+)?(?= (in|mm|cm|deg|kN|MPa|ksi|kg|lb|USD|diameters)\b)""")]
    private static partial Regex Number();

    [GeneratedRegex("NaN|Infinity|∞|E[+-][0-9]")]
    private static partial Regex Nonsense();

    [GeneratedRegex(@"^parts: \[(?<file>[^\]]*)\].*$", RegexOptions.Multiline)]
    private static partial Regex PartsLine();
}
