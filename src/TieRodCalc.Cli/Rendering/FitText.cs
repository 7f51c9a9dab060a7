using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The parts of a plan that say how well it fits: the worst case, or what is in the way and what would help.</summary>
internal sealed class FitText(Page page, LengthDisplay unit)
{
    /// <summary>What tolerances leave of a plan.</summary>
    public void AddWorstCase(WorstCase worst)
    {
        page.Heading("In the worst case");
        WorstCaseSentences sentences = new(unit);
        page.Sentence(sentences.Of(worst));
        foreach (ToleranceEffect effect in worst.Dimensions)
        {
            page.Row(Names.Of(effect.Dimension, effect.End), sentences.Of(effect));
        }
    }

    /// <summary>What is in the way of a rod, and what would make it fit.</summary>
    public void AddObstacles(PlannedRod planned)
    {
        RodPlan plan = planned.Plan;
        PlanSentences sentences = new(unit, planned.Rod.Parts.OneJoint);
        page.Heading("What is in the way");
        page.Sentence($"{RemedySentences.Reason(planned.Rod, plan)} {PlanSentences.DoNotCut}");
        foreach (BindingLimit binding in plan.Binding)
        {
            page.Point(sentences.Of(binding));
        }

        foreach (PlanWarning warning in plan.Warnings.Where(warning => warning.Code == WarningCode.SleeveCannotAdjust))
        {
            page.Point(sentences.Of(warning));
        }

        if (planned.Remedies.Count > 0)
        {
            AddRemedies(planned.Remedies);
        }
    }

    /// <summary>Pairs are many; the smallest are shown.</summary>
    private void AddRemedies(IReadOnlyList<Remedy> remedies)
    {
        const int MostPairs = 6;
        bool pairs = remedies[0].Changes.Count > 1;
        RemedySentences sentences = new(unit);
        page.Heading(pairs
            ? "What would make it buildable: no single change, but these two together"
            : "What would make it buildable, each by itself");
        foreach (Remedy remedy in remedies.Take(pairs ? MostPairs : remedies.Count))
        {
            string binds = remedy.Binding is { } binding ? $" With less: {Names.Of(binding.Limit, binding.End)}." : string.Empty;
            page.Point($"{Names.Of(remedy)}: {sentences.Of(remedy)} Then {RemedySentences.Verdict(remedy)}.{binds}");
        }

        if (pairs && remedies.Count > MostPairs)
        {
            page.Point($"and {remedies.Count - MostPairs} more pairs; --json lists them all.");
        }

        page.Sentence("These sizes are the least that work, with nothing to spare. Ask for the whole plan of one by --with and its name.");
    }
}
