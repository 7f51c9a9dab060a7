using System.CommandLine;
using TieRodCalc.Cli.Rendering;
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
            "Plan the rods of a job: verdict, cut, setting, limits, adjustment, what a turn does, how to start the threads.\n"
            + "Example: tierodcalc plan catalog-samples/jobs/car-27-short-sleeve.yaml --with longer-sleeve"));
        Option<string?> with = With();
        command.Add(with);
        NamedFile picture = new("--picture", "The drawings of the rods, to scale, as SVG, into this file.");
        picture.AddTo(command);
        command.SetAction(parsed => Run(source, parsed.GetValue(with), picture, parsed, terminal));
        return command;
    }

    /// <summary>The option by which a remedy is asked for.</summary>
    public static Option<string?> With() => new("--with")
    {
        Description = "Plan the rods that do not fit with this remedy, as a plan without it names them.",
        HelpName = "REMEDY",
    };

    /// <summary>Prints the plans of some rods.</summary>
    /// <returns>The exit status.</returns>
    public static int Print(Reading<Job> reading, List<PlannedRod> plans, bool json, Terminal terminal)
    {
        int? notWritten = terminal.Write(json
            ? PlanJson.Of(reading.Value!, plans, reading.Notes)
            : PlanText.Of(reading.Value!, plans, reading.Notes));
        return notWritten ?? (plans.TrueForAll(planned => planned.Holds) ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }

    private static int Run(JobSource source, string? with, NamedFile picture, ParseResult parsed, Terminal terminal)
    {
        if (source.Read(parsed, terminal) is not { } read)
        {
            return ExitStatus.WrongInput;
        }

        Job job = read.Reading.Value!;
        if (PlannedRod.Of(read.Rods, job.Units, with, out string? refused) is not { } plans)
        {
            terminal.Complain(refused!);
            return ExitStatus.WrongInput;
        }

        return picture.Write(parsed, () => PlanPicture.Of(job, plans), terminal)
            ? Print(read.Reading, plans, source.WantsJson(parsed), terminal)
            : ExitStatus.WrongInput;
    }
}
