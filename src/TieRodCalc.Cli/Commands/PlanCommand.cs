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
            "Plan the rods of a job: verdict, cut, setting, limits, adjustment, what a turn does, how to start the threads.\n"
            + "Example: tierodcalc plan catalog-samples/jobs/car-27-short-sleeve.yaml --with longer-sleeve"));
        Option<string?> with = new("--with")
        {
            Description = "Plan the rods that do not fit with this remedy, as a plan without it names them.",
            HelpName = "REMEDY",
        };
        command.Add(with);
        command.SetAction(parsed => Run(source, parsed.GetValue(with), parsed, terminal));
        return command;
    }

    private static int Run(JobSource source, string? with, ParseResult parsed, Terminal terminal)
    {
        if (source.Read(parsed, terminal) is not { } read)
        {
            return ExitStatus.WrongInput;
        }

        Job job = read.Reading.Value!;
        RemedySentences sentences = new(job.Units);
        List<PlannedRod> plans = [];
        foreach (JobRod rod in read.Rods)
        {
            RodPlan plan = RodPlanner.Plan(rod.Rod!, rod.Request!);
            IReadOnlyList<Remedy> remedies = RodRemedies.Of(rod.Rod!, rod.Request!);
            PlannedRod planned = new(rod.Name, rod.Rod!, rod.Request!, plan, remedies)
            {
                Spare = rod.Built is { } built ? AsBuilt.Check(rod.Rod!, rod.Request!, built).Spare : null,
            };
            if (with is not null && plan.Verdict == Verdict.NotBuildable)
            {
                if (remedies.FirstOrDefault(remedy => Names.Of(remedy) == with) is not { } remedy)
                {
                    string others = remedies.Count == 0 ? "none was found" : string.Join(", ", remedies.Select(Names.Of));
                    terminal.Complain($"tierodcalc: '{with}' is no remedy of rod {rod.Name}; its remedies: {others}.\n");
                    return ExitStatus.WrongInput;
                }

                planned = new(rod.Name, remedy.Rod, remedy.Request, remedy.Plan, [], with, sentences.Of(remedy));
            }

            plans.Add(planned);
        }

        if (with is not null && plans.TrueForAll(planned => planned.With is null))
        {
            terminal.Complain("tierodcalc: every rod can be built as it is; a remedy is asked for where one cannot.\n");
            return ExitStatus.WrongInput;
        }

        int? notWritten = terminal.Write(source.WantsJson(parsed)
            ? PlanJson.Of(job, plans, read.Reading.Notes)
            : PlanText.Of(job, plans, read.Reading.Notes));
        return notWritten ?? (plans.TrueForAll(planned => planned.Holds) ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }
}
