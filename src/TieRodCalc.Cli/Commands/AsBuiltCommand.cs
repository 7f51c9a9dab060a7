using System.CommandLine;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>asbuilt JOB</c>: engagement, room and verdict of made-up rods, and what a spare needs.</summary>
internal static class AsBuiltCommand
{
    public static Command Make(Terminal terminal)
    {
        JobSource source = new();
        NamedFile record = new("--record", "Write the build record, a job file with all that is known of the rods, into this file.");
        Command command = source.AddTo(new Command(
            "asbuilt",
            "Check rods that are made up already, and say how a spare is made.\n"
            + "Goes by what was measured ('built' in the job): thread showing, center to center, and the cut of each end or how deep its "
            + "tip is.\n"
            + "Example: tierodcalc asbuilt catalog-samples/jobs/car-27-built.yaml"));
        record.AddTo(command);
        command.SetAction(parsed => Run(source, record, parsed, terminal));
        return command;
    }

    private static int Run(JobSource source, NamedFile record, ParseResult parsed, Terminal terminal)
    {
        if (source.Read(parsed, terminal) is not { } read)
        {
            return ExitStatus.WrongInput;
        }

        Job job = read.Reading.Value!;
        List<(JobRod Rod, BuiltRod Built)> checks =
        [
            .. read.Rods.Select(rod => (rod, AsBuilt.Check(rod.Rod!, rod.Request!, rod.Built ?? new BuiltReadings()))),
        ];
        if (!record.Write(
            parsed, () => JobWriter.Record(job, [.. checks.Select(check => (check.Rod, check.Built.Readings))]), terminal))
        {
            return ExitStatus.WrongInput;
        }

        bool holds = checks.TrueForAll(check => check.Built.Verdict == Verdict.Buildable && check.Built.Locking != Locking.None);
        int? notWritten = terminal.Write(source.WantsJson(parsed)
            ? BuiltJson.Of(job, checks, read.Reading.Notes)
            : BuiltText.Of(job, checks, read.Reading.Notes));
        return notWritten ?? (holds ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }
}
