using System.CommandLine;
using System.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Faults of the command line, in words.</summary>
internal static class UsageErrors
{
    /// <summary>Each fault once, and where help is.</summary>
    public static string Of(ParseResult parsed)
    {
        StringBuilder text = new();
        string[] messages = [.. parsed.Errors.Select(error => error.Message).Distinct()];

        // A command that is not known is also a command that is not there; only the first is worth a line.
        bool unknown = parsed.UnmatchedTokens.Count > 0 && messages.Length > parsed.UnmatchedTokens.Distinct().Count();
        foreach (string message in messages.Skip(unknown ? 1 : 0))
        {
            text.Append("tierodcalc: ").Append(message).Append('\n');
        }

        List<string> path = [];
        for (System.CommandLine.Parsing.CommandResult? command = parsed.CommandResult;
            command?.Parent is System.CommandLine.Parsing.CommandResult parent;
            command = parent)
        {
            path.Insert(0, command.Command.Name);
        }

        return text.Append("Help: ").AppendJoin(' ', ["tierodcalc", .. path, "--help"]).Append('\n').ToString();
    }
}
