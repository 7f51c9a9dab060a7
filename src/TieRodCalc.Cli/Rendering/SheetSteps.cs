using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What is done at the bench, in its order.</summary>
internal sealed class SheetSteps(RodParts parts, LengthDisplay unit)
{
    /// <summary>The steps by which a rod is made.</summary>
    public IEnumerable<string> Of(RodSolution made)
    {
        if (made.InnerCut is { IsNeeded: true } inner)
        {
            yield return Cut(RodSide.Inner, inner);
        }

        if (made.OuterCut is { IsNeeded: true } outer)
        {
            yield return Cut(RodSide.Outer, outer);
        }

        foreach (string step in new StartText(unit).Steps(parts, made))
        {
            yield return step;
        }

        (RodSide Side, JointPlan Plan)[] joints =
            made.Outer is { } other ? [(RodSide.Inner, made.Inner), (RodSide.Outer, other)] : [(RodSide.Inner, made.Inner)];
        string[] letters = ["B", "H"];
        string shows = string.Join(" and ", joints.Select((joint, index) => $"{letters[index]} {Both(joint.Plan.Showing)}"));
        yield return $"Set it by the thread that shows: {shows}. Counted turns are a guide only.";

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

        string[] nuts =
        [
            .. from joint in joints
               where joint.Plan.NutLoosens is not null
               select $"the {Names.Of(joint.Side)} one loosens {Names.Of(joint.Plan.NutLoosens!.Value)}",
        ];
        string tighten = nuts.Length == 0
            ? "tighten what locks the rod"
            : $"tighten the nuts ({string.Join(", ", nuts)}, seen from its ball toward the thread)";
        yield return $"Both joints in mid-swing, free from lock to lock: {tighten}. Recheck after the first run.";
    }

    private string Cut(RodSide side, CutAdvice cut)
    {
        string letter = side == RodSide.Inner ? "K" : "P";
        string die = parts.EndAt(side).Thread.Hand == Hand.Left ? ", a left-hand die" : string.Empty;
        return $"CUT {Both(cut.Recommended)} off the {Names.Of(side)} end: run a nut on first, scribe at {letter}, saw on the waste side of the "
            + $"line; no torch, no hot wheel. File the lead chamfer again, run the nut off over it{die}. At least "
            + $"{Both(cut.Least, LengthRounding.Up)}, at most {Both(cut.Most, LengthRounding.Down)}; when unsure cut less.";
    }

    private string Both(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Both(length, unit, rounding));
}
