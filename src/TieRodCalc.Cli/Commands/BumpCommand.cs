using System.CommandLine;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>bump JOB</c>: what the readings of a bump gauge say of joint height and rod length.</summary>
internal static class BumpCommand
{
    private const string Example = "gauge: {spacing: 10 in, zeroed: once, grows: outward, resolution: 0.001 in}, "
        + "readings: [{travel: 1 in, front: -0.011 in, rear: -0.004 in}]}";

    private static readonly string[] s_sides = [Names.Of(CarSide.Left), Names.Of(CarSide.Right)];

    public static Command Make(Terminal terminal)
    {
        JobSource source = new();
        Option<string?> side = new("--side") { Description = "The wheel of this side alone: left or right.", HelpName = "SIDE" };
        side.CompletionSources.Add(s_sides);
        side.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var word }] && !s_sides.Contains(word))
            {
                result.AddError($"--side is left or right, not '{word}'.{Suggestion.Of(word, s_sides)}");
            }
        });
        NamedFile picture = new("--picture", "Draw toe over travel into this file, as SVG.");
        Command command = source.AddTo(new Command(
            "bump",
            "Read a bump gauge's sheet: how far a wheel steers itself, and what to change.\n"
            + "Toe change per inch of travel with its grade; how much higher or lower the outer joint and how much longer or shorter "
            + "the rod "
            + "would have to be, and whether the rod can be made so; with the corner's points the exact curve and the swing of the "
            + "joints.\n"
            + "Example: tierodcalc bump catalog-samples/jobs/car-27-bump.yaml --side left"));
        command.Add(side);
        picture.AddTo(command);
        command.SetAction(parsed => Run(source, parsed.GetValue(side), picture, parsed, terminal));
        return command;
    }

    private static int Run(JobSource source, string? only, NamedFile picture, ParseResult parsed, Terminal terminal)
    {
        if (source.Read(parsed, terminal, planned: false, rodless: true) is not { } read)
        {
            return ExitStatus.WrongInput;
        }

        Job job = read.Reading.Value!;
        CarSide[] asked = [.. new[] { CarSide.Left, CarSide.Right }.Where(side => only is null || Names.Of(side) == only)];
        if (Refused(job, read.Rods, asked, only) is { } refused)
        {
            terminal.Complain(refused);
            return ExitStatus.WrongInput;
        }

        BumpReport report = new(
            job,
            [.. asked.Select(side => BumpReport.OfSide(job, side, RodsOf(read.Rods, side).SingleOrDefault())).OfType<BumpSide>()],
            read.Reading.Notes);
        if (!picture.Write(parsed, () => BumpPicture.Of(report), terminal))
        {
            return ExitStatus.WrongInput;
        }

        string text = source.WantsJson(parsed) ? BumpJson.Of(report) : BumpText.Of(report);
        int? notWritten = terminal.Write(terminal.AsciiAlone && !source.WantsJson(parsed) ? SketchGrid.InAscii(text) : text);
        return notWritten ?? (report.Holds ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }

    private static JobRod[] RodsOf(IReadOnlyList<JobRod> rods, CarSide side) => [.. rods.Where(rod => rod.Side == side)];

    private static string? Refused(Job job, IReadOnlyList<JobRod> rods, CarSide[] asked, string? only)
    {
        bool Told(CarSide side) => job.Bump.Any(sheet => sheet.Side == side) || job.Corners.Any(corner => corner.Side == side);
        if (!asked.Any(Told))
        {
            string of = only is null ? string.Empty : $" of the {only} wheel";
            return $"tierodcalc: the job gives no readings{of} and no points of {(only is null ? "a" : "its")} corner. Write them "
                + "under 'bump:', a "
                + $"sheet a line:\n  - {{side: {only ?? "left"}, {Example}\n";
        }

        foreach (CarSide side in asked.Where(Told))
        {
            if (RodsOf(rods, side) is { Length: > 1 } many)
            {
                return $"tierodcalc: {many.Length} rods are on the {Names.Of(side)}: "
                    + $"{string.Join(", ", many.Select(rod => rod.Name))}. Choose one "
                    + "with --rod.\n";
            }
        }

        return null;
    }
}
