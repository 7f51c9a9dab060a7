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
        foreach (string message in parsed.Errors.Select(error => error.Message).Distinct())
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
