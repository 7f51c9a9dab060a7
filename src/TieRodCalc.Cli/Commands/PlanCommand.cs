using System.CommandLine;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>plan JOB</c>: the main job.</summary>
internal static class PlanCommand
{
    public static Command Make(Terminal terminal)
    {
        JobSource source = new();
        Command command = source.AddTo(new Command(
            "plan",
            "Plan the rods of a job: what to cut, how to set them, how far they adjust.\n"
            + "Says of each rod whether it can be built, how much to cut and where to scribe it, how to start the threads and set them, "
            + "how far it adjusts and what ends that, what a turn does, and what would help where it cannot be built.\n"
            + "Example: tierodcalc plan catalog-samples/jobs/car-27.yaml --rod left"));
        Option<string?> with = With(source);
        command.Add(with);
        NamedFile picture = new("--picture", "Draw the rods to scale into this file, as SVG.");
        picture.AddTo(command);
        command.SetAction(parsed => Run(source, parsed.GetValue(with), picture, parsed, terminal));
        return command;
    }

    /// <summary>The option by which a remedy is asked for.</summary>
    public static Option<string?> With(JobSource source)
    {
        Option<string?> with = new("--with")
        {
            Description = "Plan a rod that cannot be built with this remedy, one of those that its plan names, such as longer-sleeve.",
            HelpName = "REMEDY",
        };
        with.CompletionSources.Add(context => Remedies(source.Asked(context.ParseResult)));
        return with;
    }

    /// <summary>For completion: what the plan of some rods names as remedies.</summary>
    private static IEnumerable<string> Remedies(IEnumerable<JobRod> rods) => rods
        .Where(rod => rod is { Rod: not null, Request: not null })
        .SelectMany(rod => RodRemedies.Of(rod.Rod!, rod.Request!))
        .Select(Names.Of)
        .Distinct();

    /// <summary>Prints the plans of some rods.</summary>
    /// <returns>The exit status.</returns>
    public static int Print(Reading<Job> reading, List<PlannedRod> plans, bool json, Terminal terminal)
    {
        string text = json ? PlanJson.Of(reading.Value!, plans, reading.Notes) : PlanText.Of(reading.Value!, plans, reading.Notes);
        int? notWritten = terminal.Write(terminal.AsciiAlone && !json ? SketchGrid.InAscii(text) : text);
        return notWritten ?? (plans.TrueForAll(planned => planned.Holds) ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }

    private static int Run(JobSource source, string? with, NamedFile picture, ParseResult parsed, Terminal terminal)
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

        return picture.Write(parsed, () => PlanPicture.Of(job, plans), terminal)
            ? Print(read.Reading, plans, source.WantsJson(parsed), terminal)
            : ExitStatus.WrongInput;
    }
}
