using System.CommandLine;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>sheet JOB -o FILE</c>: the bench sheet.</summary>
internal static class SheetCommand
{
    public static Command Make(Terminal terminal)
    {
        JobSource source = new();
        Command command = source.AddTo(new Command(
            "sheet",
            "Write the bench sheet of a job: one HTML file, one printed page a rod.\n"
            + "For Letter or A4, black and white: the rod drawn to scale, what to cut and set, boxes to tick and lines to write measured "
            + "values on.\n"
            + "Example: tierodcalc sheet catalog-samples/jobs/car-27.yaml -o sheet.html"));
        Option<string?> with = PlanCommand.With(source);
        command.Add(with);
        NamedFile sheet = new("-o", "The HTML file to be written.", required: true);
        sheet.AddTo(command);
        command.SetAction(parsed => Run(source, parsed.GetValue(with), sheet, parsed, terminal));
        return command;
    }

    private static int Run(JobSource source, string? with, NamedFile sheet, ParseResult parsed, Terminal terminal)
    {
        if (source.Read(parsed, terminal) is not { } read)
        {
            return ExitStatus.WrongInput;
        }

        Job job = read.Reading.Value!;
        if (PlannedRod.Of(read.Rods, job, with, out string? refused) is not { } plans)
        {
            terminal.Complain(refused!);
            return ExitStatus.WrongInput;
        }

        if (!sheet.Write(parsed, () => SheetPage.Of(job, plans), terminal))
        {
            return ExitStatus.WrongInput;
        }

        string pages = plans.Count == 1 ? "1 page" : $"{plans.Count} pages";
        int? notWritten = terminal.Write(source.WantsJson(parsed)
            ? PlanJson.Of(job, plans, read.Reading.Notes)
            : $"{sheet.Path(parsed)}: {pages}\n"
                + string.Concat(plans.Select(planned => $"  rod {planned.Name}: {Names.Of(planned.Plan.Verdict)}\n"))
                + string.Concat(read.Reading.Notes.Select(note => $"  {ProblemText.Place(note)}: {note.Message}\n")));
        return notWritten ?? (plans.TrueForAll(planned => planned.Holds) ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }
}
