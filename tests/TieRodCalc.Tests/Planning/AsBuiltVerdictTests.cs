using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// Rods that are set otherwise than planned: each limit is held against the table of limits as the rod stands, and at both ends of the
/// wanted adjustment as the sleeve alone reaches them from there.
/// </summary>
public class AsBuiltVerdictTests(MadeRods rods) : IClassFixture<MadeRods>
{
    private const double Tolerance = 2e-6;

    [Fact]
    public void Every_limit_that_is_missed_is_told_and_no_other()
    {
        Findings findings = new();
        int missed = 0;
        int held = 0;
        foreach ((MadeRod made, BuiltCase built) in Misset())
        {
            BuiltRod answer = made.Check((made with { Built = built }).Readings());
            Dictionary<(Limit Limit, RodSide? End), double> expected = Missed(built, out bool doubtful);
            if (doubtful)
            {
                continue;
            }

            _ = expected.Count > 0 ? missed++ : held++;
            findings.That(
                made.Case,
                $"{built.Cut} {built.Setting}: verdict {answer.Verdict}, contradictions {string.Join(", ", answer.Contradictions)}",
                answer.Verdict == (expected.Count > 0 ? Verdict.NotBuildable : Verdict.Buildable));
            findings.That(
                made.Case,
                $"{built.Cut} {built.Setting}: expected {string.Join(", ", expected.Keys)}, was {string.Join(", ", answer.Binding)}",
                expected.Keys.ToHashSet().SetEquals(answer.Binding.Select(limit => (limit.Limit, limit.End))));
            foreach (BindingLimit limit in answer.Binding)
            {
                double expectedMiss = expected.GetValueOrDefault((limit.Limit, limit.End), double.NaN);
                if (limit.At == AdjustmentPoint.Present)
                {
                    Slack[] now = [.. built.Slacks(built.Setting).Where(slack => (slack.Limit, slack.End) == (limit.Limit, limit.End))];
                    expectedMiss = -now.Min(slack => slack.Left);
                }

                findings.Near(made.Case, $"{limit.Limit} {limit.End} {limit.At}", expectedMiss, limit.MissedBy, Tolerance);
            }
        }

        findings.AssertNone();
        Assert.True(missed > held / 4 && held > missed / 20, $"{missed} missed, {held} held");
    }

    [Fact]
    public void A_sleeve_that_does_not_adjust_cannot_give_a_wanted_adjustment()
    {
        Findings findings = new();
        foreach (MadeRod made in rods.All.Where(made => !made.Built.OneJoint && !made.Case.SleeveAdjusts))
        {
            RodRequest wants = made.Request with { Longer = UnitsNet.Length.FromMillimeters(1) };
            findings.That(made.Case, "plan", RodPlanner.Plan(made.Rod, wants).Verdict == Verdict.NotBuildable);
            BuiltRod built = AsBuilt.Check(made.Rod, wants, made.Readings());
            findings.That(made.Case, $"verdict {built.Verdict}", built.Verdict == Verdict.NotBuildable);
        }

        findings.AssertNone();
    }

    /// <summary>Through an open bore the tip may go on, but no more than the hole's own thread holds it.</summary>
    [Fact]
    public void A_hole_that_is_too_shallow_holds_too_little_however_far_the_end_is_in()
    {
        RodCase deep = CheckCases.OpenInnerBore.Rod;
        RodPlan plan = deep.Plan();
        BuiltReadings read = new MadeRod(BuiltCase.Of(deep, plan.Solution!), deep.ToRod(), deep.ToRequest(), plan).Readings();
        RodCase shallow = deep.WithInner(joint =>
            joint with { Depth = Dim.OfMm(deep.RequiredMm(joint) + joint.CountersinkMm - 1) });
        BuiltRod built = AsBuilt.Check(shallow.ToRod(), shallow.ToRequest(), read);
        BindingLimit engagement = Assert.Single(built.Binding, limit => (limit.Limit, limit.End) == (Limit.Engagement, RodSide.Inner));
        Assert.Equal(1, engagement.MissedBy.Millimeters, Tolerance);
        Assert.Equal(Verdict.NotBuildable, built.Verdict);
        Assert.Empty(AsBuilt.Check(deep.ToRod(), deep.ToRequest(), read).Binding);
    }

    /// <summary>The rods with one end turned in or out, or cut otherwise; now and then both.</summary>
    private IEnumerable<(MadeRod Made, BuiltCase Built)> Misset()
    {
        int index = 0;
        foreach (MadeRod made in rods.All)
        {
            Random random = RandomCounts.For(800_000 + index++);
            double inner = random.Next(3) == 0 ? 0 : 16 * random.NextDouble() - 8;
            double outer = made.Built.OneJoint || random.Next(3) == 0 ? 0 : 16 * random.NextDouble() - 8;
            double cut = random.Next(3) == 0 ? 4 * random.NextDouble() : 0;
            BuiltCase built = made.Built with
            {
                Setting = new Setting(made.Built.Setting.Inner + inner, made.Built.Setting.Outer + outer),
                Cut = made.Built.Cut with { Inner = made.Built.Cut.Inner + cut },
            };
            bool possible = built.Joints.All(side => built.Showing(side) >= 0 && built.Setting.Of(side) > 0);
            if (possible && (made.Built.OneJoint || made.Case.SleeveAdjusts || !made.Case.WantsAdjustment))
            {
                yield return (made, built);
            }
        }
    }

    /// <summary>The greatest miss of every limit that does not hold; doubtful where one hangs on the comparison constant.</summary>
    private static Dictionary<(Limit Limit, RodSide? End), double> Missed(BuiltCase built, out bool doubtful)
    {
        Slack[] slacks = [.. built.Ways.SelectMany(way => built.Slacks(built.Turned(built.Setting, way)))];
        doubtful = slacks.Any(slack => slack.Left is < 0 and > -10 * Millimeters.Negligible);
        return slacks
            .GroupBy(slack => (slack.Limit, slack.End))
            .Select(same => (same.Key, Least: same.Min(slack => slack.Left)))
            .Where(same => same.Least < -2 * Millimeters.Negligible)
            .ToDictionary(same => same.Key, same => -same.Least);
    }
}
