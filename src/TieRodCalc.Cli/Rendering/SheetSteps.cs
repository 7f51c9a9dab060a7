using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What is done at the bench, in its order.</summary>
internal sealed class SheetSteps(PlannedRod planned, LengthDisplay unit)
{
    /// <summary>The steps by which a rod is made.</summary>
    public IEnumerable<string> Of(RodSolution made)
    {
        if (planned.Cuts.Count > 0)
        {
            bool left = planned.Cuts.Any(cut => cut.End.Thread.Hand == Hand.Left);
            yield return $"CUT {string.Join(", and ", planned.Cuts.Select(Cut))}. Run a nut on first, scribe, saw on the waste side of the "
                + "line; no torch, no hot wheel. File the lead chamfer again, run the nut off over it"
                + $"{(left ? " (a left-hand thread: left-hand die)" : string.Empty)}. {Unsure()}";
        }

        foreach (string step in new StartText(unit).Steps(planned.Rod.Parts, made, brief: true))
        {
            yield return step;
        }

        (RodSide Side, JointPlan Plan)[] joints =
            made.Outer is { } other ? [(RodSide.Inner, made.Inner), (RodSide.Outer, other)] : [(RodSide.Inner, made.Inner)];
        string[] letters = ["B", "H"];
        string shows = string.Join(" and ", joints.Select((joint, index) => $"{letters[index]} {Both(joint.Plan.Showing)}"));
        yield return $"Set it by the thread that shows: {shows}; turns are only a guide.";

        string[] proofs =
        [
            .. from joint in joints
               where joint.Plan.WitnessProves is not null
               select $"{Both(joint.Plan.WitnessProves!.Value, LengthRounding.Down)} of the {Names.Of(joint.Side)} end",
        ];
        if (proofs.Length > 0)
        {
            yield return $"Look into the witness hole: full thread must cover it. That proves engaged: {string.Join(", ", proofs)}.";
        }

        (RodSide Side, JointPlan Plan)[] nuts = [.. joints.Where(joint => joint.Plan.NutLoosens is not null)];
        string loosens = string.Join(", ", nuts.Select(joint =>
            $"{(nuts.Length > 1 ? $"the {Names.Of(joint.Side)} one" : "it")} loosens {Names.Of(joint.Plan.NutLoosens!.Value)}"));
        string[] locks =
        [
            .. nuts.Select(_ => $"the {(nuts.Length > 1 ? "nuts" : "nut")} ({loosens}, seen from its ball toward the thread)").Take(1),
            .. from side in planned.Rod.Parts.Joints
               where planned.Rod.Parts.NutAt(side) is null && planned.Rod.Parts.HoleAt(side).Clamp is not null
               select $"the clamp of the {Names.Of(side)} end",
        ];
        string held = StartText.Clocking(planned.Rod.Parts) is { } clocking ? $" Hold {clocking}." : string.Empty;
        yield return locks.Length == 0
            ? $"Nothing locks this rod: do not drive it.{held}"
            : $"Both joints in mid-swing, free from lock to lock: tighten {string.Join(" and ", locks)}.{held} Recheck after the first run.";
    }

    private string Cut(EndCut cut) =>
        $"{Both(cut.Cut.Recommended)} off the {Names.Of(cut.Side)} end, {Where(cut)}; at least "
        + $"{Both(cut.Cut.Least, LengthRounding.Up)} and at most {Both(cut.Cut.Most, LengthRounding.Down)}";

    /// <summary>Less than the recommended cut is no advice where that is the least that works.</summary>
    private string Unsure() => planned.Cuts.Any(cut => cut.Cut.Recommended <= cut.Cut.Least)
        ? "Not less and hardly more: there is little to spare."
        : "When unsure cut less.";

    private static string Where(EndCut cut)
    {
        IReadOnlyList<Measure> measures = RodMeasures.Of(cut);
        string axis = $"at {measures[0].Letter} from the ball center";
        return measures.FirstOrDefault(measure => measure.Straight) is { } straight
            ? $"{axis} along the thread axis, which is {straight.Letter} straight across the bend"
            : axis;
    }

    private string Both(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Both(length, unit, rounding));
}
