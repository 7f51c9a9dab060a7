using System.CommandLine;
using System.Text;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>check FILE…</c>: reads files and reports every error.</summary>
internal static class CheckCommand
{
    public static Command Make(Terminal terminal)
    {
        Argument<string[]> files = new("FILE")
        {
            Description = "Part and job files; - reads one from standard input.",
            Arity = ArgumentArity.OneOrMore,
        };
        Command command = new(
            "check",
            "Read part and job files and report every error at its line.\n"
            + "Example: tierodcalc check catalog-samples/jobs/car-27.yaml")
        {
            files,
        };
        files.Validators.Add(JobSource.RefuseOptions);
        command.SetAction(parsed => Run(parsed.GetValue(files)!, terminal));
        return command;
    }

    private static int Run(string[] paths, Terminal terminal)
    {
        StringBuilder found = new();
        List<Problem> problems = [];
        HashSet<Problem> notes = [];
        foreach (string path in paths)
        {
            CheckedFile file = path == JobSource.StandardInput
                ? JobReader.Check(terminal.Input(), path, JobSource.CurrentFolder)
                : JobReader.Check(path);
            problems.AddRange(file.Problems.Where(problem => !problems.Contains(problem)));
            found.Append(path).Append(": ").Append(Content(file)).Append('\n');
            foreach (Problem note in file.Notes.Where(notes.Add))
            {
                ProblemText.Append(found, note, "note");
            }
        }

        if (problems.Count > 0)
        {
            terminal.Complain(ProblemText.Of(problems));
            return ExitStatus.WrongInput;
        }

        return terminal.Write(found.ToString()) ?? ExitStatus.Holds;
    }

    private static string Content(CheckedFile file) => file switch
    {
        { Job: { } job } => $"sound; a job with {Count(job.Rods.Count, "rod")}",
        { Parts: { } parts } =>
            "sound; "
            + $"{Count(parts.InnerEnds.Count, "inner end")}, {Count(parts.Sleeves.Count, "sleeve")}, "
            + $"{Count(parts.OuterEnds.Count + parts.SocketEnds.Count, "outer end")}, {Count(parts.JamNuts.Count, "jam nut")}, "
            + Count(parts.Materials.Count, "material"),
        _ => "has errors",
    };

    private static string Count(int count, string noun) => $"{count} {noun}{(count == 1 ? string.Empty : "s")}";
}
