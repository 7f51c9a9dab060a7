using System.CommandLine;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>toe JOB</c>: the turns that take each side from the measured to the wanted toe.</summary>
internal static class ToeCommand
{
    public static Command Make(Terminal terminal)
    {
        JobSource source = new();
        Option<bool> leftOnly = new("--left-only") { Description = "The left rod alone makes up the whole change of the total." };
        Option<bool> rightOnly = new("--right-only") { Description = "The right rod alone makes up the whole change of the total." };
        NamedFile picture = new("--picture", "Draw toe over turns into this file, as SVG.");
        Command command = source.AddTo(new Command(
            "toe",
            "Count the turns of each rod from the measured to the wanted toe.\n"
            + "Says which way, how far, what the plates say then, and whether a rod runs out of thread on the way.\n"
            + "Example: tierodcalc toe catalog-samples/jobs/car-27.yaml --picture toe.svg"));
        command.Add(leftOnly);
        command.Add(rightOnly);
        picture.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetValue(leftOnly) && result.GetValue(rightOnly))
            {
                result.AddError("--left-only and --right-only exclude each other.");
            }
        });
        command.SetAction(parsed => Run(
            source,
            parsed.GetValue(leftOnly) ? ToeShare.LeftOnly : parsed.GetValue(rightOnly) ? ToeShare.RightOnly : ToeShare.BothRods,
            picture,
            parsed,
            terminal));
        return command;
    }

    private static int Run(JobSource source, ToeShare share, NamedFile picture, ParseResult parsed, Terminal terminal)
    {
        if (source.Read(parsed, terminal, planned: false) is not { } read)
        {
            return ExitStatus.WrongInput;
        }

        ToeTask task = new(read.Reading.Value!, read.Rods, share);
        if (task.Refused(parsed) is { } refused)
        {
            terminal.Complain(refused);
            return ExitStatus.WrongInput;
        }

        ToeReport report = task.Report(read.Reading.Notes);
        if (!picture.Write(parsed, () => ToePicture.Of(report), terminal))
        {
            return ExitStatus.WrongInput;
        }

        int? notWritten = terminal.Write(source.WantsJson(parsed) ? ToeJson.Of(report) : ToeText.Of(report));
        return notWritten ?? (report.Holds ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }
}
