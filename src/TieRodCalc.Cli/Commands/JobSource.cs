using System.CommandLine;
using System.CommandLine.Parsing;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary>What the commands that compute from a job share: the job, the choice of rods, the form of the answer.</summary>
internal sealed class JobSource
{
    /// <summary>The name that stands for standard input.</summary>
    public const string StandardInput = "-";

    /// <summary>The folder that the paths of a job from standard input are relative to.</summary>
    public const string CurrentFolder = "";

    /// <summary>What the argument is called that names the job.</summary>
    public const string JobName = "JOB";

    private readonly Argument<string> _job = new(JobName) { Description = "The job file; - reads it from standard input." };

    private readonly Option<string[]> _rods = new("--rod")
    {
        Description = "The rod of this name alone; may be given more than once.",
        HelpName = "NAME",
        DefaultValueFactory = _ => [],
    };

    private readonly Option<bool> _json = new("--json") { Description = "Print the result as JSON." };

    /// <summary>A word that is written like an option is none of the files, nor is an empty one.</summary>
    public static void RefuseOptions(ArgumentResult files)
    {
        foreach (string word in files.Tokens.Select(token => token.Value).Where(word => word.Length > 1 && word.StartsWith('-')))
        {
            files.AddError(UsageErrors.NoSuchOption(word, files));
        }

        if (files.Tokens.Any(token => token.Value.Length == 0))
        {
            files.AddError($"{files.Argument.Name} is empty, and is to be the name of a file.");
        }
    }

    /// <summary>Adds argument and options to a command.</summary>
    public Command AddTo(Command command)
    {
        _job.Validators.Add(RefuseOptions);
        _rods.CompletionSources.Add(context => Rods(context.ParseResult).Select(rod => rod.Name));
        command.Add(_job);
        command.Add(_rods);
        command.Add(_json);
        return command;
    }

    /// <summary>Whether the result is wanted as JSON.</summary>
    public bool WantsJson(ParseResult parsed) => parsed.GetValue(_json);

    /// <summary>The job and the rods asked for, or null where something is wrong; that has been said then.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="terminal">Where it is said.</param>
    /// <param name="planned">Whether all the rods must be such that this version can plan them.</param>
    /// <param name="rodless">Whether a job without rods will do.</param>
    public (Reading<Job> Reading, IReadOnlyList<JobRod> Rods)? Read(
        ParseResult parsed, Terminal terminal, bool planned = true, bool rodless = false)
    {
        string path = parsed.GetValue(_job)!;
        Reading<Job> reading = path == StandardInput
            ? JobReader.Read(terminal.Input(), StandardInput, CurrentFolder)
            : JobReader.Read(path);
        if (reading.Value is not { } job)
        {
            terminal.Complain(ProblemText.Of(reading.Problems));
            return null;
        }

        List<JobRod>? rods = rodless && job.Rods.Count == 0 ? [] : Chosen(job, parsed.GetValue(_rods)!, path, planned, terminal);
        return rods is null ? null : (reading, rods);
    }

    /// <summary>
    /// For completion: the rods of the job that a command line names. None where it cannot be read, and none from standard input,
    /// which is somebody's terminal then.
    /// </summary>
    public IReadOnlyList<JobRod> Rods(ParseResult parsed) =>
        parsed.GetResult(_job)?.Tokens is [{ Value: not StandardInput and var path }] ? JobReader.Read(path).Value?.Rods ?? [] : [];

    /// <summary>For completion: those of them that the command line asks for, all where it asks for none.</summary>
    public IEnumerable<JobRod> Asked(ParseResult parsed)
    {
        string[] names = [.. parsed.GetResult(_rods)?.Tokens.Select(token => token.Value) ?? []];
        return Rods(parsed).Where(rod => names.Length == 0 || names.Contains(rod.Name));
    }

    private static List<JobRod>? Chosen(Job job, string[] names, string path, bool planned, Terminal terminal)
    {
        if (job.Rods.Count == 0)
        {
            terminal.Complain($"tierodcalc: {path} has no rods; nothing was computed.\n");
            return null;
        }

        string[] known = [.. job.Rods.Select(rod => rod.Name)];
        string[] unknown = [.. names.Except(known)];
        if (unknown.Length > 0)
        {
            terminal.Complain(string.Concat(unknown.Select(name =>
                $"tierodcalc: no rod is called '{name}'; the job has {string.Join(", ", known)}.{Suggestion.Of(name, known)}\n")));
            return null;
        }

        List<JobRod> chosen = [.. job.Rods.Where(rod => names.Length == 0 || names.Contains(rod.Name))];
        Problem[] notPlanned = [.. chosen.Where(_ => planned).Select(rod => rod.NotPlanned).OfType<Problem>()];
        if (notPlanned.Length > 0)
        {
            terminal.Complain(ProblemText.Of(notPlanned));
            return null;
        }

        return chosen;
    }
}
