using System.CommandLine;
using System.Runtime.InteropServices;
using TieRodCalc.Cli.Dialog;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>new</c>: asks for the measurements, writes part and job file, and plans the rods.</summary>
internal static class NewCommand
{
    public static Command Make(Terminal terminal)
    {
        Option<string> folder = new("--folder")
        {
            Description = "The folder that the files go into; the current one where unsaid.",
            HelpName = "DIR",
            DefaultValueFactory = _ => JobSource.CurrentFolder,
        };
        Option<bool> force = new("--force") { Description = "Overwrite files that exist." };
        Option<bool> json = new("--json") { Description = "Print the plan as JSON." };
        Command command = new(
            "new",
            "Ask for the measurements of a job, one at a time, say how each is taken, write a part file and a job file, and plan the "
            + "rods. Answers may come from a file: one a line.\n"
            + "Example: tierodcalc new --folder jobs")
        {
            folder,
            force,
            json,
        };
        command.SetAction(parsed => Run(
            parsed.GetValue(folder)!, parsed.GetValue(force), parsed.GetValue(json), terminal));
        return command;
    }

    private static int Run(string folder, bool overwrite, bool json, Terminal terminal)
    {
        if (folder.Length > 0 && !Directory.Exists(folder))
        {
            terminal.Complain($"tierodcalc: there is no folder {folder}; nothing was asked.\n");
            return ExitStatus.WrongInput;
        }

        if (OutputFile.FaultOf(folder) is { } fault)
        {
            terminal.Complain($"tierodcalc: no file can be written into {Named(folder)}: {fault}\n");
            return ExitStatus.WrongInput;
        }

        terminal.Complain(Welcome(folder));
        using AnswerReader reader = new(terminal.Input());
        Answers? answers;
        using (terminal.IsTyped ? PosixSignalRegistration.Create(PosixSignal.SIGINT, _ => Leave(terminal)) : null)
        {
            answers = new Interview(new Script(new FileQuestions(folder, overwrite)), reader, terminal).Run();
        }

        if (answers is null)
        {
            return ExitStatus.WrongInput;
        }

        Scope files = new(answers, JobText.Files);
        string partFile = files[FileQuestions.Parts]!;
        string parts = Path.Combine(folder, partFile);
        string job = Path.Combine(folder, files[FileQuestions.Job]!);
        if (!OutputFile.WriteAll(
            [(parts, () => JobText.PartFile(answers).ToString()), (job, () => JobText.JobFile(answers, partFile).ToString())],
            overwrite,
            terminal))
        {
            return ExitStatus.WrongInput;
        }

        string typed = job.Contains(' ', StringComparison.Ordinal) ? $"\"{job}\"" : job;
        terminal.Complain($"\nWritten: {parts} and {job}.\nThe plan again: tierodcalc plan {typed}\n\n");
        Reading<Job> reading = JobReader.Read(job);
        if (reading.Value is not { } written)
        {
            terminal.Complain(ProblemText.Of(reading.Problems));
            return ExitStatus.WrongInput;
        }

        List<PlannedRod> plans = PlannedRod.Of(written.Rods, written, with: null, out _)!;
        return PlanCommand.Print(reading, plans, json, terminal);
    }

    /// <summary>A person has interrupted the questions: there is nothing to take back.</summary>
    private static void Leave(Terminal terminal)
    {
        terminal.Complain("\ntierodcalc: interrupted; nothing was written.\n");
        Environment.Exit(ExitStatus.Interrupted);
    }

    private static string Named(string folder) => folder.Length == 0 ? "the current folder" : folder;

    private static string Welcome(string folder) => new Page()
        .Sentence("The measurements of a job, one question at a time, from the inner end outward. At the end they are written into a part "
            + $"file and a job file in {Named(folder)}, and the rods are planned. Nothing is written before.", indent: 0)
        .Sentence("Lengths with their unit: 9 in, 8 15/16 in, 8-15/16\", 2.625in, 212 mm, 21.2 cm; a tolerance of a part behind it: 212 mm "
            + "+/- 0.5 mm.", indent: 0)
        .Sentence("An empty line takes what stands in [brackets]. At every question: back goes to the one before, ? says more, quit leaves "
            + "and writes nothing.", indent: 0)
        .ToString();
}
