using System.CommandLine;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Help, for 80 columns whatever the terminal.</summary>
/// <remarks>
/// The description of a command is its text, one paragraph a line, and then a line that begins with <c>Example:</c>, which ends the
/// help and is never wrapped.
/// </remarks>
internal static class HelpText
{
    private const string ExampleMark = "Example: ";

    /// <summary>The help of a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="root">The command that it belongs to, or itself.</param>
    public static string Of(Command command, RootCommand root)
    {
        Page page = new();
        (string[] paragraphs, string? example) = Parts(command);
        foreach (string paragraph in paragraphs)
        {
            page.Sentence(paragraph, indent: 0);
        }

        page.Heading($"Usage: tierodcalc {Usage(command, root)}");
        Argument[] arguments = [.. command.Arguments];
        if (arguments.Length > 0)
        {
            page.Heading(arguments.Length == 1 ? "Argument" : "Arguments");
            foreach (Argument argument in arguments)
            {
                page.Row(argument.Name, argument.Description!);
            }
        }

        if (command == root)
        {
            page.Heading("Commands");
            foreach (Command other in root.Subcommands)
            {
                page.Row(Label(other), Parts(other).Paragraphs[0]);
            }
        }

        page.Heading("Options");
        foreach (Option option in command.Options.Concat(root.Options.Where(option => option.Recursive)).Distinct())
        {
            page.Row(Label(option), option.Description!);
        }

        if (command == root)
        {
            page.Heading("Cautions");
            foreach (string caution in Cautions.All)
            {
                page.Point(caution);
            }
        }

        return $"{page}{(example is null ? string.Empty : $"\n{ExampleMark}{example}\n")}";
    }

    /// <summary>The example of a command, or null.</summary>
    public static string? Example(Command command) => Parts(command).Example;

    private static (string[] Paragraphs, string? Example) Parts(Command command)
    {
        string[] lines = command.Description!.Split('\n');
        return lines[^1].StartsWith(ExampleMark, StringComparison.Ordinal) ? (lines[..^1], lines[^1][ExampleMark.Length..]) : (lines, null);
    }

    private static string Usage(Command command, RootCommand root)
    {
        if (command == root)
        {
            return "COMMAND [options]";
        }

        IEnumerable<string> required = command.Options.Where(option => option.Required).Select(Label);
        return string.Join(' ', [Label(command), .. required, "[options]"]);
    }

    private static string Label(Command command) => string.Join(' ', command.Arguments
        .Select(argument => argument.Arity.MaximumNumberOfValues > 1 ? $"{argument.Name}..." : argument.Name)
        .Prepend(command.Name));

    private static string Label(Option option)
    {
        string names = string.Join(", ", option.Aliases.Prepend(option.Name).Where(name => name[0] == '-').OrderBy(name => name.Length));
        return option.HelpName is { } value ? $"{names} {value}" : names;
    }
}
