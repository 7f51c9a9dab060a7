using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>What trying every combination finds is what the planner plans, so that the reference of the choice is one.</summary>
public class ChoiceReferenceTests
{
    private const double Tolerance = 1e-6;

    [Fact]
    public void Every_rod_that_is_found_is_planned_with_the_same_cut_and_setting()
    {
        Findings findings = new();
        int found = 0;
        int cut = 0;
        for (int index = 0; index < RandomCounts.Catalogs; index++)
        {
            foreach (ReferenceChoice choice in ChoiceReference.All(RandomCatalogs.Draw(index)).Where(choice => !choice.OneJoint))
            {
                found++;
                cut += choice.IsCut ? 1 : 0;
                Check(findings, choice);
            }
        }

        findings.AssertNone();
        Assert.True(found >= 2 * RandomCounts.Catalogs, $"only {found} rods");
        Assert.True(RandomCounts.Catalogs < 100 || cut > found / 20, $"only {cut} of {found} are cut");
    }

    private static void Check(Findings findings, ReferenceChoice choice)
    {
        RodPlan plan = choice.Rod.Plan();
        Verdict expected = choice.IsCut ? Verdict.BuildableAfterCutting : Verdict.Buildable;
        if (plan.Verdict != expected || plan.Solution is not { } solution)
        {
            findings.Add(choice.Rod, $"expected {expected}, was {plan.Verdict}");
            return;
        }

        findings.Near(choice.Rod, "inner cut", choice.Least.Inner, solution.InnerCut?.Least.Millimeters ?? 0, Tolerance);
        findings.Near(choice.Rod, "outer cut", choice.Least.Outer, solution.OuterCut?.Least.Millimeters ?? 0, Tolerance);
        BuiltCase built = BuiltCase.Of(choice.Rod, solution);
        double margin = new[] { choice.Rod.Target.Mm - choice.Rod.Shorter.Mm, choice.Rod.Target.Mm + choice.Rod.Longer.Mm }
            .Select(length => LimitTable.Turned(choice.Rod, built.Setting, LimitTable.TurnsTo(choice.Rod, length)))
            .SelectMany(setting => LimitTable.Slacks(choice.Rod, built.Cut, setting))
            .Where(slack => slack.Limit != Limit.Cut)
            .Min(slack => slack.Left);
        findings.Near(choice.Rod, "margin", margin, choice.Margin, Tolerance);
    }
}
