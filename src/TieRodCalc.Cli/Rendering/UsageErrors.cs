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

        // At the top a word that is no command makes the parser say first that a command is missing; the word itself says more.
        bool noCommand = parsed.CommandResult.Parent is null && parsed.UnmatchedTokens.Count > 0;
        foreach (string message in messages.Skip(noCommand ? 1 : 0))
        {
            text.Append("tierodcalc: ").Append(message).Append('\n');
        }

        return text.Append(Help(parsed)).ToString();
    }

    /// <summary>Where help is.</summary>
    public static string Help(ParseResult parsed)
    {
        List<string> path = [];
        for (System.CommandLine.Parsing.CommandResult? command = parsed.CommandResult;
            command?.Parent is System.CommandLine.Parsing.CommandResult parent;
            command = parent)
        {
            path.Insert(0, command.Command.Name);
        }

        return $"Help: {string.Join(' ', ["tierodcalc", .. path, "--help"])}\n";
    }
}
