using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The part of a plan that says what to cut and where to scribe.</summary>
internal sealed class CutText(Page page, LengthDisplay unit)
{
    public void Add(RodParts parts, RodSolution solution)
    {
        page.Heading("What to cut");
        AddEnd(RodSide.Inner, parts.Inner, solution.InnerCut);
        if (parts.Outer is { } outer)
        {
            AddEnd(RodSide.Outer, outer, solution.OuterCut);
        }

        if (solution.InnerCut is { IsNeeded: true } || solution.OuterCut is { IsNeeded: true })
        {
            page.Sentence(
                "Run a nut on first. Saw on the waste side of the line; no torch, no hot wheel. File the lead chamfer again, then "
                + "run the nut off over the new end to clean the thread. When unsure cut less: it can be cut again, and not put back.");
        }
    }

    private string Both(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Both(length, unit, rounding));

    private void AddEnd(RodSide side, ThreadedEnd end, CutAdvice? cut)
    {
        string name = $"{Names.Of(side)} end";
        if (cut is null)
        {
            page.Row(name, "must not be cut, and need not be");
            return;
        }

        if (!cut.IsNeeded)
        {
            page.Row(name, "no cut");
            return;
        }

        IReadOnlyList<Measure> measures = RodMeasures.Of(new EndCut(side, end, cut));
        page
            .Drawing(RodSketch.Of(end, cut, measures))
            .Row(name, $"CUT {Both(cut.Recommended)} off the tip; scribe it by any of these, they are one place:")
            .Row($"  {measures[1].Letter} from the old tip", Both(cut.Recommended))
            .Row($"  {measures[0].Letter} from the ball center", $"{Both(cut.MarkFromCenter)}, along the thread axis");
        if (cut.StraightFromCenter is { } straight)
        {
            page.Row($"  {measures[3].Letter} the same, straight", $"{Both(straight)}, ball center to new tip across the bend");
        }

        page
            .Row($"  {measures[2].Letter} full thread left", Both(cut.ThreadLeft))
            .Row("  least that works", Both(cut.Least, LengthRounding.Up))
            .Row("  most that works", $"{Both(cut.Most, LengthRounding.Down)}: {Both(cut.Spare, LengthRounding.Down)} may still be "
                + "taken off by mistake");
        if (end.Thread.Hand == Hand.Left)
        {
            page.Row(string.Empty, "A left-hand thread needs a left-hand die.");
        }
    }
}
