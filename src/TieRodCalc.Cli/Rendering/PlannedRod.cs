using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Cli.Rendering;

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

    /// <summary>The plan's warnings, and that nothing was found.</summary>
    public IEnumerable<PlanWarning> Warnings => Plan.Verdict == Verdict.NotBuildable && Remedies.Count == 0
        ? Plan.Warnings.Append(new PlanWarning(WarningCode.NoRemedy))
        : Plan.Warnings;

    /// <summary>Whether everything that was asked for holds.</summary>
    public bool Holds => Plan.Verdict != Verdict.NotBuildable && Plan.Locking != Locking.None && !Plan.GivesWayUnderLoad;
}
