using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Parsing;

namespace TieRodCalc.Cli.Commands;

/// <summary>What can stand at a place of a command line that is being written.</summary>
/// <remarks>
/// The scripts of <see cref="CompletionCommand"/> ask by <c>[complete:N] WORD…</c>, the words after the program's name, of which the
/// one numbered N, from 0, is being written and carries an equals sign in front, so that an empty one gets through every shell. That
/// of bash, which does not take a line apart, asks by <c>[complete:bash] BEFORE AFTER BREAKS</c>: the line before and after the
/// cursor and the characters at which bash breaks words. The first line of the answer is <c>files</c> where the shell is to complete
/// a file, otherwise <c>words</c>, and then each further line is a word.
/// </remarks>
internal static class ShellCompletion
{
    private const string Files = "files\n";
    private const string Words = "words\n";

    private static readonly TimeSpan s_longestWait = TimeSpan.FromSeconds(5);

    /// <summary>Arguments and values of options by these names are files and folders.</summary>
    private static readonly string[] s_files = ["JOB", "FILE", "DIR"];

    /// <summary>The answer, or null where the command line does not ask for one.</summary>
    public static string? Answer(string[] args, RootCommand root)
    {
        const string Asked = "[complete:";
        if (args is not [{ } asked, .. var words] || !asked.StartsWith(Asked, StringComparison.Ordinal))
        {
            return null;
        }

        // A job can be long and a disk slow, and somebody waits at the keyboard.
        Task<string> answer = Task.Run(() => Answer(asked[Asked.Length..].TrimEnd(']'), words, root));
        return answer.Wait(s_longestWait) ? answer.Result : Words;
    }

    private static string Answer(string place, string[] words, RootCommand root)
    {
        if (place == "bash")
        {
            return words is [{ } before, { } after, { } breaks] ? BashAnswer(BashLine.Of(before, after, breaks), root) : Words;
        }

        return int.TryParse(place, out int at) && at >= 0 && at < words.Length && words[at].StartsWith('=')
            ? Shown(Candidates(words[..at], words[at][1..], words[(at + 1)..], root), word => word)
            : Words;
    }

    private static string BashAnswer(BashLine line, RootCommand root) =>
        Shown(Candidates(line.Before, line.Word, line.After, root), line.Quote);

    private static string Shown(IEnumerable<string>? candidates, Func<string, string> quoted) => candidates is null
        ? Files
        : Words + string.Concat(candidates.Where(word => !word.Any(char.IsControl)).Select(word => $"{quoted(word)}\n"));

    /// <summary>The words that the one being written can become, or null where it becomes a file.</summary>
    private static IEnumerable<string>? Candidates(string[] before, string word, string[] after, RootCommand root)
    {
        bool optionsEnded = before.Contains("--");
        Command command = root.Parse(before, Application.Parsing).CommandResult.Command;
        Option[] options = [.. command.Options.Concat(root.Options.Where(option => option.Recursive)).Distinct()];
        int equals = word.StartsWith('-') ? word.IndexOf('=') : -1;
        string name = equals > 0 ? word[..equals] : before.LastOrDefault() ?? string.Empty;
        if (!optionsEnded && options.FirstOrDefault(option => TakesValue(option) && IsCalled(option, name)) is { } valued)
        {
            string start = equals > 0 ? word[..(equals + 1)] : string.Empty;
            return Values(valued, root.Parse([.. before, word, .. after], Application.Parsing), word[start.Length..], start);
        }

        ParseResult parsed = root.Parse([.. before, .. after], Application.Parsing);
        if (!optionsEnded && word.StartsWith('-'))
        {
            return Names(options, parsed, word);
        }

        Argument? argument = command.Arguments.FirstOrDefault(
            argument => (parsed.GetResult(argument)?.Tokens.Count ?? 0) < argument.Arity.MaximumNumberOfValues);
        return argument is null
            ? Beginning(word, command.Subcommands.Where(other => !other.Hidden).Select(other => other.Name))
                .Concat(command.Arguments.Count > 0 && !optionsEnded ? Names(options, parsed, word) : [])
            : s_files.Contains(argument.Name) ? null : Beginning(word, Labels(argument.CompletionSources, parsed));
    }

    private static IEnumerable<string>? Values(Option option, ParseResult parsed, string word, string start)
    {
        if (s_files.Contains(option.HelpName))
        {
            return null;
        }

        // A rod that is asked for already is not asked for once more; the word itself is among those given.
        List<string> given = [.. parsed.GetResult(option)?.Tokens.Select(token => token.Value) ?? []];
        given.Remove(word);
        return Beginning(word, Labels(option.CompletionSources, parsed)).Except(given).Select(value => start + value);
    }

    private static IEnumerable<string> Labels(
        IEnumerable<Func<CompletionContext, IEnumerable<CompletionItem>>> sources, ParseResult parsed) =>
        sources.SelectMany(source => source(parsed.GetCompletionContext())).Select(item => item.Label);

    /// <summary>Options that are not given yet, or may be given again.</summary>
    private static IEnumerable<string> Names(IEnumerable<Option> options, ParseResult parsed, string word) => Beginning(
        word,
        options
            .Where(option => option.Arity.MaximumNumberOfValues > 1 || parsed.GetResult(option) is null or { Implicit: true })
            .Select(option => option.Aliases.Prepend(option.Name).MaxBy(name => name.Length)!));

    private static IEnumerable<string> Beginning(string word, IEnumerable<string> words) =>
        words.Where(each => each.StartsWith(word, StringComparison.Ordinal));

    private static bool TakesValue(Option option) => option.HelpName is not null;

    private static bool IsCalled(Option option, string name) => option.Name == name || option.Aliases.Contains(name);
}
