using TieRodCalc.Planning;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Yaml;

/// <summary>Rules of the job and of a rod: each key by itself, and nothing but the rules.</summary>
public class RuleTests
{
    private const string Adjust = "adjust: 3/16 in";

    private static readonly Length Marks = Length.FromMillimeters(0.25);

    [Fact]
    public void Each_rule_of_a_rod_replaces_that_of_the_job_alone()
    {
        PlanRules job = Read("tip_gap: 2 mm, mark: 1 mm, allowance: 3 mm, engagement: 1.75 diameters", null).Request!.Rules;
        Assert.Equal(
            (2, 1, 3, 1.75), (job.TipGap.Millimeters, job.Mark.Millimeters, job.Allowance.Millimeters, job.Engagement!.InDiameters));
        Assert.Equal(PlanRules.Inch, Read(null, null).Request!.Rules);
        Assert.Equal(PlanRules.Inch with { Mark = Marks }, Read("mark: 0.25 mm", null).Request!.Rules);
        Assert.Equal(PlanRules.Inch with { Mark = Marks }, Read(null, "mark: 0.25 mm").Request!.Rules);
        foreach ((string rule, Func<PlanRules, PlanRules> changed) in new (string, Func<PlanRules, PlanRules>)[]
            {
                ("tip_gap: 0 mm", rules => rules with { TipGap = Length.FromMillimeters(0) }),
                ("mark: 0.25 mm", rules => rules with { Mark = Marks }),
                ("allowance: 0 mm", rules => rules with { Allowance = Length.FromMillimeters(0) }),
                ("engagement: 28 mm", rules => rules with { Engagement = EngagementRule.FromLength(Length.FromMillimeters(28)) }),
            })
        {
            PlanRules read = Read("tip_gap: 2 mm, mark: 1 mm, allowance: 3 mm, engagement: 1.75 diameters", rule).Request!.Rules;
            Assert.Equal(changed(job), read);
        }
    }

    [Fact]
    public void Rules_change_no_part_and_nothing_else_that_is_wanted()
    {
        JobRod without = Read(null, null);
        JobRod with = Read("tip_gap: 2 mm, engagement: 28 mm", "mark: 1 mm, allowance: 0 mm");
        Assert.Equal(without.Rod!.Parts, with.Rod!.Parts);
        Assert.Equal("jn-58r", with.Rod.Parts.OuterNut!.Info.Id);
        Assert.Equal(without.Request, with.Request! with { Rules = without.Request!.Rules });
    }

    [Fact]
    public void Rules_of_one_rod_are_not_those_of_the_next()
    {
        string two = Samples.Job.Replace(Adjust, Adjust + "\n    rules: {mark: 0.25 mm}", StringComparison.Ordinal);
        int rod = two.IndexOf("  - name: left", StringComparison.Ordinal);
        string entry = Samples.Job[rod..(Samples.Job.IndexOf(Adjust, StringComparison.Ordinal) + Adjust.Length)];
        CheckedFile read = Marked.Check(two.Insert(two.IndexOf("materials:", StringComparison.Ordinal), entry.Replace("name: left", "name: next", StringComparison.Ordinal) + "\n"));
        Assert.Empty(read.Problems);
        Assert.Equal([PlanRules.Inch with { Mark = Marks }, PlanRules.Inch], read.Job!.Rods.Select(each => each.Request!.Rules));
    }

    private static JobRod Read(string? job, string? rod)
    {
        string text = rod is null
            ? Samples.Job
            : Samples.Job.Replace(Adjust, $"{Adjust}\n    rules: {{{rod}}}", StringComparison.Ordinal);
        CheckedFile read = Marked.Check(
            job is null ? text : text.Replace("rods:\n", $"rules: {{{job}}}\nrods:\n", StringComparison.Ordinal));
        Assert.Empty(read.Problems);
        return Assert.Single(read.Job!.Rods);
    }
}
