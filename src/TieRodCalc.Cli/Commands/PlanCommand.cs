using System.CommandLine;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
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
            + "Example: tierodcalc plan catalog-samples/jobs/car-27.yaml --rod left"));
        command.SetAction(parsed => Run(source, parsed, terminal));
        return command;
    }

    private static int Run(JobSource source, ParseResult parsed, Terminal terminal)
    {
        if (source.Read(parsed, terminal) is not { } read)
        {
            return ExitStatus.WrongInput;
        }

        Job job = read.Reading.Value!;
        List<(JobRod Rod, RodPlan Plan)> plans = [.. read.Rods.Select(rod => (rod, RodPlanner.Plan(rod.Rod!, rod.Request!)))];
        bool holds = plans.All(planned => planned.Plan.Verdict != Verdict.NotBuildable && planned.Plan.Locking != Locking.None
            && !planned.Plan.GivesWayUnderLoad);
        int? notWritten = terminal.Write(source.WantsJson(parsed)
            ? PlanJson.Of(job, plans, read.Reading.Notes)
            : PlanText.Of(job, plans, read.Reading.Notes));
        return notWritten ?? (holds ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }
}
