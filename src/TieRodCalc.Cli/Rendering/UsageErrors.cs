using System.CommandLine;
using System.CommandLine.Parsing;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Faults of the command line, in words for somebody who does not know how it is parsed.</summary>
internal static class UsageErrors
{
    private const string Program = "tierodcalc";

    /// <summary>Each fault once, and where help is.</summary>
    public static string Of(ParseResult parsed)
    {
        string[] faults = UnknownOptions(parsed);
        if (faults.Length == 0)
        {
            faults = StrayWords(parsed);
        }

        // What an unknown or a stray word displaces is missing as well, and said only where there is no such word.
        if (faults.Length == 0)
        {
            faults = [.. parsed.Errors.Select(error => InPlainWords(error, parsed)).Distinct()];
        }

        return All(faults, parsed);
    }

    /// <summary>
    /// An option that takes no value and is given one, which the parser would take for a word of its own; null where there is none.
    /// </summary>
    public static string? OfFlags(IEnumerable<string> args, ParseResult parsed)
    {
        string[] flags =
        [
            .. parsed.CommandResult.Command.Options.Where(option => option.ValueType == typeof(bool)).Select(option => option.Name),
        ];
        string[] faults =
        [
            .. args.TakeWhile(word => word != "--")
                .Select(word => word.Split('=', ':'))
                .Where(parts => parts.Length > 1 && flags.Contains(parts[0]))
                .Select(parts => $"{parts[0]} takes no value, and is given '{parts[1]}'.")
                .Distinct(),
        ];
        return faults.Length == 0 ? null : All(faults, parsed);
    }

    /// <summary>Where help is.</summary>
    public static string Help(ParseResult parsed) => $"Help: {PathOf(parsed.CommandResult)} --help\n";

    /// <summary>A word that is written like an option and is none of a command; which command has it, or the nearest.</summary>
    /// <param name="word">The word, perhaps with a value after an equals sign.</param>
    /// <param name="inside">The command, or an argument or option of it.</param>
    public static string NoSuchOption(string word, SymbolResult inside)
    {
        SymbolResult result = inside;
        while (result is not CommandResult)
        {
            result = result.Parent!;
        }

        CommandResult command = (CommandResult)result;
        Command root = Root(command);
        string option = word.Split('=', ':')[0];
        string[] own = [.. OptionsOf(command.Command, root)];
        if (own.Contains(option))
        {
            return $"'{option}' stands where no option can; options come after the command: {PathOf(command)} {option}";
        }

        string fault = command.Parent is null ? $"there is no option '{option}'" : $"{command.Command.Name} has no option '{option}'";
        if (OptionsOf(root, root).Contains(option))
        {
            return $"{fault}; it stands alone: {Program} {option}";
        }

        string[] others = [.. root.Subcommands.Where(other => OptionsOf(other, root).Contains(option)).Select(other => other.Name)];
        return others.Length > 0
            ? $"{fault}{(command.Parent is null ? " before a command" : string.Empty)}; {string.Join(", ", others)} "
                + (others.Length == 1 ? "has it." : "have it.")
            : $"{fault}.{Suggestion.Of(option, own.Where(IsWord))}";
    }

    private static string All(string[] faults, ParseResult parsed) =>
        string.Concat(faults.Select(fault => $"{Program}: {fault}\n")) + Help(parsed);

    private static string[] UnknownOptions(ParseResult parsed)
    {
        HashSet<string> messages = [.. parsed.Errors.Select(error => error.Message)];
        return
        [
            .. parsed.Tokens
                .Where(token => token is { Type: TokenType.Argument, Value: ['-', _, ..] })
                .Select(token => (token.Value, Fault: NoSuchOption(token.Value, parsed.CommandResult)))
                .Where(word => parsed.UnmatchedTokens.Contains(word.Value) || messages.Contains(word.Fault))
                .Select(word => word.Fault)
                .Distinct(),
        ];
    }

    private static string[] StrayWords(ParseResult parsed)
    {
        if (parsed.UnmatchedTokens.Count == 0)
        {
            return [];
        }

        Command command = parsed.CommandResult.Command;
        string first = parsed.UnmatchedTokens[0];
        if (parsed.CommandResult.Parent is null)
        {
            return [NoSuchCommand(first, command)];
        }

        if (parsed.Tokens[0] is { Type: TokenType.Argument } before)
        {
            return IsLikeFile(before.Value)
                ? [$"'{first}' stands before the command; the command comes first: {PathOf(parsed.CommandResult)} {first}"]
                : [NoSuchCommand(before.Value, parsed.RootCommandResult.Command)];
        }

        return
        [
            .. parsed.UnmatchedTokens.Distinct().Select(word => command.Arguments is [{ } argument, ..]
                ? $"'{word}' is one word too many: {command.Name} takes one {argument.Name}. What holds a blank is written in quotes."
                : $"'{word}' is one word too many: {command.Name} takes options alone."),
        ];
    }

    private static string NoSuchCommand(string word, Command root)
    {
        string nearest = Suggestion.Of(word, root.Subcommands.Select(command => command.Name).Concat(OptionsOf(root, root).Where(IsWord)));
        return nearest.Length == 0 && IsLikeFile(word)
            ? $"'{word}' is no command; the command comes first, as in: {Program} {root.Subcommands[0].Name} {word}"
            : $"there is no command '{word}'" + (nearest.Length > 0 ? $".{nearest}" : $"; {Commands(root)}.");
    }

    /// <summary>A message of the parser, told by how it begins, said anew; one of our own as it is.</summary>
    private static string InPlainWords(ParseError error, ParseResult parsed)
    {
        Option? option = (error.SymbolResult as OptionResult ?? error.SymbolResult?.Parent as OptionResult)?.Option;
        string message = error.Message;
        return (option, error.SymbolResult) switch
        {
            (VersionOption, _) => $"{option.Name} stands alone, without any other word.",
            ({ }, _) when Begins("Required argument missing") => $"{option.Name} needs a value after it: {option.Name} {ValueOf(option)}",
            ({ }, _) when message.Contains("expects a single argument", StringComparison.Ordinal) =>
                $"{option.Name} is given more than once.",
            (null, _) when Begins("Required argument '") && parsed.CommandResult.Command is { } command
                && command.Arguments.FirstOrDefault(each => message.Contains($"'{each.Name}'", StringComparison.Ordinal)) is { } argument =>
                $"{command.Name} needs {argument.Name}: {Lower(argument.Description)}",
            (_, CommandResult { Command: { } command }) when Begins("Required command") => $"a command is missing; {Commands(command)}.",
            _ when Begins("Option '") && parsed.CommandResult.Command is { } command
                && command.Options.FirstOrDefault(each => each.Required && message.Contains($"'{each.Name}'", StringComparison.Ordinal))
                    is { } missing => $"{command.Name} needs {missing.Name} {ValueOf(missing)}: {Lower(missing.Description)}",
            _ => message,
        };

        bool Begins(string words) => message.StartsWith(words, StringComparison.Ordinal);
    }

    private static string ValueOf(Option option) => option.HelpName ?? "VALUE";

    private static string Lower(string? description) =>
        string.IsNullOrEmpty(description) ? string.Empty : char.ToLowerInvariant(description[0]) + description[1..];

    private static string Commands(Command root) =>
        $"the commands are {string.Join(", ", root.Subcommands.Where(command => !command.Hidden).Select(command => command.Name))}";

    private static IEnumerable<string> OptionsOf(Command command, Command root) => command.Options
        .Concat(root.Options.Where(option => option.Recursive))
        .SelectMany(option => option.Aliases.Prepend(option.Name));

    /// <summary>Of single letters each is near any other.</summary>
    private static bool IsWord(string option) => option.StartsWith("--", StringComparison.Ordinal);

    private static bool IsLikeFile(string word) => word.AsSpan().ContainsAny('.', '/', '\\') || File.Exists(word);

    private static Command Root(CommandResult command) => command.Parent is CommandResult parent ? Root(parent) : command.Command;

    private static string PathOf(CommandResult command) =>
        command.Parent is CommandResult parent ? $"{PathOf(parent)} {command.Command.Name}" : Program;
}
