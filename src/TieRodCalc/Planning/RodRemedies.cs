using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>Finds what would make a rod buildable that is not.</summary>
public static class RodRemedies
{
    /// <summary>How much shorter than the least a change is tried for the limit that is in its way then.</summary>
    private const double Hair = 1e-3;

    /// <summary>
    /// Every single change that alone makes the rod buildable, each with its least size, or, where none does, every pair of changes
    /// that does, smallest first; a jam nut left out comes last. Each is solved anew from the changed parts.
    /// </summary>
    /// <param name="rod">The parts.</param>
    /// <param name="request">What is wanted of them.</param>
    /// <returns>Nothing where the rod can be built, or where nothing that is offered makes it so.</returns>
    /// <exception cref="ArgumentException">As <see cref="RodPlanner.Plan"/>.</exception>
    public static IReadOnlyList<Remedy> Of(Rod rod, RodRequest request)
    {
        if (RodPlanner.Plan(rod, request).Verdict != Verdict.NotBuildable)
        {
            return [];
        }

        PossibleChanges possible = new(rod, request);
        List<Remedy> found = [];
        foreach (PossibleChange change in possible.All)
        {
            if (change.Size(possible.Wanted) is { } size)
            {
                found.Add(Solved(possible, [(change, size)]));
            }
        }

        return found.Count > 0 ? found : Pairs(possible);
    }

    private static List<Remedy> Pairs(PossibleChanges possible)
    {
        List<Remedy> found = [];
        for (int i = 0; i < possible.All.Count; i++)
        {
            for (int j = i + 1; j < possible.All.Count; j++)
            {
                PossibleChange one = possible.All[i];
                PossibleChange other = possible.All[j];
                if (PossibleChanges.GoTogether(one, other) && one.Size(possible.Wanted, other) is { } sizes
                    && Math.Min(sizes.One, sizes.Other) > Millimeters.Negligible)
                {
                    found.Add(Solved(possible, [(one, sizes.One), (other, sizes.Other)]));
                }
            }
        }

        return [.. found.OrderBy(remedy => remedy.LeavesOutNut).ThenBy(remedy => Millimeters.Of(remedy.Size))];
    }

    /// <exception cref="InvalidOperationException">The changed rod cannot be built: a fault of this program.</exception>
    private static Remedy Solved(PossibleChanges possible, IReadOnlyList<(PossibleChange Change, double Size)> changes)
    {
        RodParts parts = possible.Rod.Parts;
        RodRequest request = possible.Request;
        List<RodChange> made = [];
        foreach ((PossibleChange change, double size) in changes)
        {
            (parts, request) = change.Make(parts, request, size);
            made.Add(new(change.Kind, change.End, Length.FromMillimeters(size), Length.FromMillimeters(change.Becomes(size))));
        }

        RodFaults? faults = Rod.Make(parts, out Rod? rod);
        RodPlan? plan = rod is null ? null : RodPlanner.Plan(rod, request);
        return plan is { Verdict: not Verdict.NotBuildable }
            ? new Remedy(made, Binding(possible.Wanted, changes), rod!, request, plan)
            : throw new InvalidOperationException(
                $"A remedy does not make the rod buildable: {string.Join(", ", made)}; {faults?.PartFaults.Count ?? 0} faults.");
    }

    private static BindingLimit? Binding(RodProblem wanted, IReadOnlyList<(PossibleChange Change, double Size)> changes)
    {
        foreach ((PossibleChange change, double size) in changes)
        {
            wanted = change.Kind == ChangeKind.NoNut
                ? changes.Count == 1 ? wanted : change.Apply(wanted, size)
                : change.Apply(wanted, Math.Max(0, size - Hair));
        }

        IReadOnlyList<BindingLimit> conflicts = wanted.Setting.Conflicts();
        return conflicts.FirstOrDefault(limit => limit.Limit != Limit.Cut) ?? (conflicts is [var first, ..] ? first : null);
    }
}
