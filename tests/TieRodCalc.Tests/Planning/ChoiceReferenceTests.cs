using TieRodCalc.Planning;

namespace TieRodCalc.Tests.Planning;

/// <summary>What trying every combination finds is what the planner plans, so that the reference of the choice is one.</summary>
public class ChoiceReferenceTests(ChoiceCatalogs catalogs) : IClassFixture<ChoiceCatalogs>
{
    private const double Tolerance = 1e-6;

    [Fact]
    public void Every_rod_that_is_found_is_planned_with_the_same_cut_and_setting()
    {
        Findings findings = new();
        int found = 0;
        int cut = 0;
        int oneJoint = 0;
        foreach ((_, _, ReadCatalog read, IReadOnlyList<ReferenceChoice> all) in catalogs.All)
        {
            foreach (ReferenceChoice choice in all)
            {
                found++;
                cut += choice.IsCut ? 1 : 0;
                oneJoint += choice.OneJoint ? 1 : 0;
                Check(findings, choice, read.Plan(choice));
            }
        }

        findings.AssertNone();
        Assert.True(found >= 2 * RandomCounts.Catalogs, $"only {found} rods");
        Assert.True(RandomCounts.Catalogs < 100 || cut > found / 20, $"only {cut} of {found} are cut");
        Assert.True(RandomCounts.Catalogs < 100 || oneJoint > found / 100, $"only {oneJoint} of {found} have one joint");
    }

    private static void Check(Findings findings, ReferenceChoice choice, RodPlan plan)
    {
        Verdict expected = choice.IsCut ? Verdict.BuildableAfterCutting : Verdict.Buildable;
        if (plan.Verdict != expected || plan.Solution is not { } solution)
        {
            findings.Add(choice.Rod, $"expected {expected}, was {plan.Verdict}");
            return;
        }

        findings.Near(choice.Rod, "inner cut", choice.Least.Inner, solution.InnerCut?.Least.Millimeters ?? 0, Tolerance);
        findings.Near(choice.Rod, "outer cut", choice.Least.Outer, solution.OuterCut?.Least.Millimeters ?? 0, Tolerance);
        findings.Near(choice.Rod, "inner insertion", choice.Setting.Inner, solution.Inner.Insertion, Tolerance);
        findings.Near(choice.Rod, "outer insertion", choice.Setting.Outer, solution.Outer?.Insertion.Millimeters ?? 0, Tolerance);
        findings.Near(choice.Rod, "recommended inner cut", choice.Cut.Inner, solution.InnerCut?.Recommended.Millimeters ?? 0, Tolerance);
        findings.Near(choice.Rod, "recommended outer cut", choice.Cut.Outer, solution.OuterCut?.Recommended.Millimeters ?? 0, Tolerance);
    }
}
