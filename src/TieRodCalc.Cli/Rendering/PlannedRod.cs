using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Rendering;

/// <summary>An end that is cut.</summary>
/// <param name="Side">Which end.</param>
/// <param name="End">The part.</param>
/// <param name="Cut">What to cut off it.</param>
internal sealed record EndCut(RodSide Side, ThreadedEnd End, CutAdvice Cut);

/// <summary>A rod of a job with its plan and, where it cannot be built, what would make it so.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Rod">The rod, changed where a remedy was asked for.</param>
/// <param name="Request">What is wanted of it, changed where a remedy was asked for.</param>
/// <param name="Plan">Its plan.</param>
/// <param name="Remedies">What would make it buildable.</param>
/// <param name="With">The remedy that was asked for, or null.</param>
/// <param name="WithText">The same in words, or null.</param>
internal sealed record PlannedRod(
    string Name,
    Rod Rod,
    RodRequest Request,
    RodPlan Plan,
    IReadOnlyList<Remedy> Remedies,
    string? With = null,
    string? WithText = null)
{
    /// <summary>How the same rod as one that was measured is made of new parts, or null.</summary>
    public SpareRod? Spare { get; init; }

    /// <summary>What its joints swing over travel and steering, where the job gives the corner's points.</summary>
    public IReadOnlyList<SwingCheck> Swing { get; init; } = [];

    /// <summary>The plan's warnings, and that nothing was found.</summary>
    public IEnumerable<PlanWarning> Warnings => Plan.Verdict == Verdict.NotBuildable && Remedies.Count == 0
        ? Plan.Warnings.Append(new PlanWarning(WarningCode.NoRemedy))
        : Plan.Warnings;

    /// <summary>What a heading must say beside the verdict: that it does not hold.</summary>
    public string But =>
        $"{(Plan.GivesWayUnderLoad ? ", GIVES WAY UNDER THE LOAD" : string.Empty)}"
        + (Plan.Solution is null || Rod.AllLocked ? string.Empty : ", NOT ALL JOINTS LOCKED")
        + (Swing.Any(swing => swing.RunsOut) ? ", A JOINT RUNS OUT OF SWING" : string.Empty);

    /// <summary>The ends that are cut, the inner one first.</summary>
    public IReadOnlyList<EndCut> Cuts =>
    [
        .. from side in Rod.Parts.Joints
           let cut = side == RodSide.Inner ? Plan.Solution?.InnerCut : Plan.Solution?.OuterCut
           where cut is { IsNeeded: true }
           select new EndCut(side, Rod.Parts.EndAt(side), cut),
    ];

    /// <summary>Whether everything that was asked for holds.</summary>
    public bool Holds => Plan.Verdict != Verdict.NotBuildable && Plan.Locking != Locking.None && !Plan.GivesWayUnderLoad
        && Swing.All(swing => swing.Passes);

    /// <summary>Plans rods.</summary>
    /// <param name="rods">The rods; none has a part left open.</param>
    /// <param name="job">Their job.</param>
    /// <param name="with">The remedy with which those that do not fit are planned, or null.</param>
    /// <param name="refused">Why nothing was planned, in words.</param>
    /// <returns>The plans, or null where the remedy is none of a rod's, or no rod needs one.</returns>
    public static List<PlannedRod>? Of(IEnumerable<JobRod> rods, Job job, string? with, out string? refused)
    {
        List<PlannedRod> plans = [];
        foreach (JobRod rod in rods)
        {
            RodPlan plan = RodPlanner.Plan(rod.Rod!, rod.Request!);
            IReadOnlyList<Remedy> remedies = RodRemedies.Of(rod.Rod!, rod.Request!);
            PlannedRod planned = new(rod.Name, rod.Rod!, rod.Request!, plan, remedies)
            {
                Swing = CornerUse.SwingOf(job, rod.Side, rod.Rod!),
                Spare = rod.Built is { } built && AsBuilt.Check(rod.Rod!, rod.Request!, built) is { Verdict: Verdict.Buildable } check
                    ? check.Spare
                    : null,
            };
            if (with is not null && plan.Verdict == Verdict.NotBuildable)
            {
                if (remedies.FirstOrDefault(remedy => Names.Of(remedy) == with) is not { } remedy)
                {
                    string[] known = [.. remedies.Select(Names.Of)];
                    string others = known.Length == 0 ? "none was found" : string.Join(", ", known);
                    refused = $"tierodcalc: '{with}' is no remedy of rod {rod.Name}; its remedies: {others}.{Suggestion.Of(with, known)}\n";
                    return null;
                }

                string words = new RemedySentences(job.Units).Of(remedy);
                planned = new(rod.Name, remedy.Rod, remedy.Request, remedy.Plan, [], with, words) { Swing = planned.Swing };
            }

            plans.Add(planned);
        }

        refused = with is not null && plans.TrueForAll(planned => planned.With is null)
            ? $"tierodcalc: every rod can be built as it is, so there is no remedy to plan with, neither '{with}' nor another; "
                + "leave --with out.\n"
            : null;
        return refused is null ? plans : null;
    }
}
