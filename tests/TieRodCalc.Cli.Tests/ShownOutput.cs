using System.Text;
using System.Text.RegularExpressions;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Output that a document shows, as a comment above it asks for it: the command, then perhaps the exit status that is due (0 or 1
/// unless said), then perhaps where an excerpt begins and ends, by how those lines begin:
/// <c>output: plan job.yaml | status 1 | from "How to set it" to "rod, ball to ball"</c>. Quotes within are written as '.
/// </summary>
internal sealed partial record ShownOutput(string Command, int? Status, string? From, string? To)
{
    /// <summary>What a line asks for; null where it does not.</summary>
    public static ShownOutput? Asked(string line)
    {
        Match match = Marker().Match(line);
        Assert.True(match.Success || !line.StartsWith("<!-- output", StringComparison.Ordinal), $"not understood: {line}");
        return match.Success
            ? new(
                match.Groups["command"].Value,
                match.Groups["status"] is { Success: true } status ? status.Value[0] - '0' : null,
                Word(match.Groups["from"]),
                Word(match.Groups["to"]))
            : null;
    }

    /// <summary>The block that shows it.</summary>
    public string In(DocumentFolder folder)
    {
        (int status, string shown) = folder.RunOnce(Command);
        Assert.True(Status is { } due ? status == due : status is 0 or 1, $"tierodcalc {Command}: status {status}\n{shown}");
        string[] lines = shown.TrimEnd('\n').Split('\n');
        int first = From is null ? 0 : At(lines, From, 0);
        int last = To is null ? lines.Length - 1 : At(lines, To, first);
        StringBuilder block = new($"```\n$ tierodcalc {Command}\n");
        block.Append(first > 0 ? "…\n" : string.Empty);
        foreach (string line in lines[first..(last + 1)])
        {
            block.Append(line).Append('\n');
        }

        return block.Append(last + 1 < lines.Length ? "…\n" : string.Empty).Append("```\n").ToString();
    }

    private int At(string[] lines, string start, int after)
    {
        int at = Array.FindIndex(lines, after, line => line.TrimStart().StartsWith(start, StringComparison.Ordinal));
        Assert.True(at >= 0, $"tierodcalc {Command} prints no line that begins with {start}");
        return at;
    }

    private static string? Word(Group group) => group.Success ? group.Value.Replace('\'', '"') : null;

    [GeneratedRegex(
        """^<!-- output: (?<command>.+?)( \| status (?<status>\d))?( \|( from "(?<from>[^"]+)")?( to "(?<to>[^"]+)")?)? -->$""")]
    private static partial Regex Marker();
}
