using TieRodCalc.Planning;
using TieRodCalc.Rods;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Planning;

/// <summary>Tolerances carried through plans of random rods, held against every corner of the tolerance box.</summary>
public class WorstCaseTests(WorstCases cases, ITestOutputHelper output) : IClassFixture<WorstCases>
{
    private const double Tolerance = 3e-6;

    /// <summary>Closer to the edge than this a verdict may fall either way.</summary>
    private const double Edge = 3e-6;

    /// <summary>Offsets act through a root: to how much what is needed of them, reckoned in proportion, must suffice.</summary>
    private const double Curved = 0.01;

    [Fact]
    public void Cuts_of_the_plan_are_safe_exactly_where_every_corner_leaves_a_setting()
    {
        Findings findings = new();
        foreach (WorstCaseOf one in cases.All)
        {
            double? slack = one.Reference.Slack(one.Planned);
            findings.That(one.Rod.Rod, $"{one.Rod}: slack {slack}", slack is null == one.WorstCase.Slack is null);
            findings.Near(
                one.Rod.Rod, $"{one.Rod}: slack at {one.Planned}", slack ?? 0, one.WorstCase.Slack?.Millimeters ?? 0, Tolerance);
            findings.That(
                one.Rod.Rod,
                $"{one.Rod}: margin {one.Margin}, safe {one.WorstCase.PlanIsSafe}",
                Math.Abs(one.Margin) < Edge || one.WorstCase.PlanIsSafe == one.Margin >= 0);
        }

        int safe = cases.All.Count(one => one.WorstCase.PlanIsSafe);
        output.WriteLine($"{RandomCounts.Description}: {cases.All.Count} that can be built, {safe} safe as planned");
        findings.AssertNone();
    }

    [Fact]
    public void Verdict_and_least_safe_cut_are_those_of_all_corners_together()
    {
        Findings findings = new();
        foreach (WorstCaseOf one in cases.All.Where(one => !one.IsUndecided))
        {
            Verdict expected = one.LeastSafe switch
            {
                null => Verdict.NotBuildable,
                { Total: 0 } => Verdict.Buildable,
                _ => Verdict.BuildableAfterCutting,
            };
            findings.That(one.Rod.Rod, $"{one.Rod}: expected {expected}, was {one.WorstCase.Verdict}", expected == one.WorstCase.Verdict);
            findings.That(
                one.Rod.Rod, $"{one.Rod}: least safe cut {one.LeastSafe}", one.LeastSafe is null == one.WorstCase.LeastCut is null);
            if (one is { LeastSafe: { } least, WorstCase.LeastCut: { } actual })
            {
                findings.Near(one.Rod.Rod, $"{one.Rod}: least safe cut", least.Total, actual, Tolerance);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_safe_cut_is_recommended_where_something_has_to_be_cut_and_one_exists()
    {
        Findings findings = new();
        foreach (WorstCaseOf one in cases.All.Where(one => one.LeastSafe is not null && !one.IsUndecided))
        {
            if (one.Planned.Total > 0)
            {
                findings.That(
                    one.Rod.Rod, $"{one.Rod}: {one.Planned} leaves {one.Margin}, but {one.LeastSafe} is safe", one.Margin >= -Edge);
            }

            CutPair safe = new(one.WorstCase.InnerCut!.Value.Millimeters, one.WorstCase.OuterCut!.Value.Millimeters);
            findings.That(one.Rod.Rod, $"{one.Rod}: {safe} called safe", one.Reference.IsSafe(safe, Edge));
            findings.That(
                one.Rod.Rod, $"{one.Rod}: {safe} in place of the safe {one.Planned}", one.Margin < Edge || safe == one.Planned);
        }

        findings.AssertNone();
    }

    /// <summary>Held against the cuts of the same rod without tolerances, and every safe cut on the marks of those ends alone.</summary>
    [Fact]
    public void A_safe_cut_keeps_to_the_ends_that_are_cut_without_tolerances_where_it_can()
    {
        Findings findings = new();
        int moved = 0;
        foreach (WorstCaseOf one in cases.All.Where(one => one.LeastSafe is not null && !one.IsUndecided))
        {
            RodCase rod = one.Rod.Rod;
            RodSolution plain = RodPlanner.Plan(
                RodJob.Made(new RodJob(rod, default, default, one.Rod.OneJoint).Parts()), rod.ToRequest()).Solution!;
            CutPair ruled = new(
                plain.InnerCut?.Recommended.Millimeters ?? 0, plain.OuterCut?.Recommended.Millimeters ?? 0);
            CutPair safe = new(one.WorstCase.InnerCut!.Value.Millimeters, one.WorstCase.OuterCut!.Value.Millimeters);
            if (ruled.Inner > 0 == ruled.Outer > 0 || one.Reference.IsSafe(ruled, Edge))
            {
                continue;
            }

            bool inner = ruled.Inner > 0;
            double most = (inner ? rod.Inner : rod.Outer).MaxCut.Mm;
            if (Enumerable.Range(1, (int)(most / rod.Mark.Mm)).Any(mark => one.Reference.IsSafe(Alone(mark * rod.Mark.Mm), -Edge)))
            {
                moved++;
                findings.That(rod, $"{one.Rod}: {ruled} becomes {safe}", (inner ? safe.Outer : safe.Inner) == 0);
            }

            CutPair Alone(double cut) => inner ? new(cut, 0) : new(0, cut);
        }

        output.WriteLine($"{moved} were moved at one end alone");
        findings.AssertNone();
    }

    [Fact]
    public void Where_dimensions_are_known_as_well_as_needed_the_plan_holds_at_every_corner()
    {
        Findings findings = new();
        int asked = 0;
        foreach (WorstCaseOf one in cases.All.Where(one => !one.WorstCase.PlanIsSafe))
        {
            ToleranceEffect[] effects = [.. one.WorstCase.Dimensions];
            if (effects.Any(effect => effect.Dimension == RodDimension.Cut || effect.Needed is null))
            {
                // The saw is not measured better, and where nothing is left at the nominal dimensions measuring does not help.
                continue;
            }

            asked++;
            ToleranceCase[] better = [.. one.Rod.Tolerances.Select(tolerance => Better(tolerance, effects, one.Rod.OneJoint))];
            double margin = new WorstCaseReference(one.Rod with { Tolerances = better }).Margin(one.Planned);
            findings.That(
                one.Rod.Rod,
                $"{one.Rod}: at {one.Planned} {margin} is left with {string.Join(", ", better.Select(tolerance => tolerance.ToString()))}",
                margin >= (one.Rod.Tolerances.Any(tolerance => tolerance.Dimension == PartDimension.Offset) ? -Curved : -Edge));
        }

        Assert.True(asked > 0);
        findings.AssertNone();
    }

    [Fact]
    public void All_kinds_of_worst_case_are_represented()
    {
        int[] kinds =
        [
            cases.All.Count(one => one.WorstCase.Verdict == Verdict.Buildable),
            cases.All.Count(one => one.WorstCase.Verdict == Verdict.BuildableAfterCutting),
            cases.All.Count(one => one.WorstCase.Verdict == Verdict.NotBuildable),
            cases.All.Count(one => one.Plan.Verdict == Verdict.Buildable && one.WorstCase.Verdict == Verdict.BuildableAfterCutting),
            cases.All.Count(one => one is { Planned.Total: > 0, WorstCase.Verdict: Verdict.BuildableAfterCutting }),
            cases.All.Count(one => one.Rod.Tolerances.Count == RandomTolerances.Most),
            cases.All.Count(one => one.Rod.OneJoint),
            cases.All.Count(one => one.Reference.LeastAcrossLiesInside),
        ];
        output.WriteLine(
            "uncut, cut, none; safe only if cut; cut both nominally and in the worst case; most tolerances; one joint; inner extreme: "
            + string.Join(", ", kinds));
        Assert.All(kinds, count => Assert.True(count > 0));
    }

    private static ToleranceCase Better(ToleranceCase tolerance, ToleranceEffect[] effects, bool oneJoint)
    {
        ToleranceEffect? effect = effects.SingleOrDefault(
            named => named.Dimension == Named(tolerance.Dimension, oneJoint) && named.End == tolerance.Side);
        return effect?.Needed is { } needed ? tolerance with { PlusMinus = needed.Millimeters } : tolerance;
    }

    private static RodDimension Named(PartDimension dimension, bool oneJoint) => dimension switch
    {
        PartDimension.Nut => RodDimension.Thickness,
        PartDimension.Sleeve => oneJoint ? RodDimension.CenterToFace : RodDimension.SleeveLength,
        _ => Enum.Parse<RodDimension>(dimension.ToString()),
    };
}
