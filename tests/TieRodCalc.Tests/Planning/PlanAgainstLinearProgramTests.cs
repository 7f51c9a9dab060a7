using TieRodCalc.Planning;
using TieRodCalc.Rods;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Planning;

/// <summary>Plans of random rods held against a linear programme over the limits.</summary>
public class PlanAgainstLinearProgramTests(PlannedRods rods, ITestOutputHelper output) : IClassFixture<PlannedRods>
{
    /// <summary>To how much two results in millimeters must agree.</summary>
    private const double Tolerance = 1e-6;

    /// <summary>A verdict may fall either way where all limits must be loosened by no more than this, and by more than rounding.</summary>
    private const double Undecided = 2e-6;
    private const double Rounding = 1e-8;

    /// <summary>Of how many rods each verdict, and each limit in the way, must be seen in at the least.</summary>
    private const double VerdictShare = 0.15;
    private const double LimitShare = 0.01;
    private const double KindShare = 0.005;

    private static readonly RodSide[] s_sides = [RodSide.Inner, RodSide.Outer];

    [Fact]
    public void Verdicts_agree()
    {
        Findings findings = new();
        int undecided = 0;
        foreach (PlannedRod planned in rods.All)
        {
            bool eitherWay = Near(planned.Reference.Loosening) || Near(planned.Reference.LooseningUncut);
            undecided += eitherWay ? 1 : 0;
            Verdict expected = planned.Reference switch
            {
                { LooseningUncut: <= Millimeters.Negligible } => Verdict.Buildable,
                { Loosening: <= Millimeters.Negligible } => Verdict.BuildableAfterCutting,
                _ => Verdict.NotBuildable,
            };
            findings.That(planned.Rod, $"expected {expected}, was {planned.Plan.Verdict}", eitherWay || expected == planned.Plan.Verdict);
            findings.That(
                planned.Rod,
                "a solution goes with every verdict but not buildable",
                planned.Plan.Solution is null == (planned.Plan.Verdict == Verdict.NotBuildable));
        }

        output.WriteLine($"{RandomCounts.Description}; {undecided} within the comparison constant");
        findings.AssertNone();

        static bool Near(double loosening) => loosening is > Rounding and < Undecided;
    }

    [Fact]
    public void Verdicts_and_limits_are_all_represented()
    {
        Dictionary<Verdict, int> verdicts = rods.All
            .GroupBy(planned => planned.Plan.Verdict)
            .ToDictionary(group => group.Key, group => group.Count());
        Dictionary<Limit, int> limits = rods.All
            .SelectMany(planned => planned.Plan.Verdict switch
            {
                Verdict.NotBuildable => planned.Plan.Binding.Select(binding => binding.Limit).Distinct(),
                Verdict.BuildableAfterCutting => planned.Reference.Pressing,
                _ => [],
            })
            .GroupBy(limit => limit)
            .ToDictionary(group => group.Key, group => group.Count());
        int exact = rods.All.Count(planned => planned.Reference.LeastCutInsertions is { Width: < Tolerance });
        output.WriteLine($"{string.Join(", ", verdicts)}; in the way: {string.Join(", ", limits)}; exact fits: {exact}");
        PlannedRod[] cut = [.. rods.Solved.Where(planned => planned.Plan.Verdict == Verdict.BuildableAfterCutting)];
        int[] kinds =
        [
            cut.Count(planned => planned.Reference.LeastCut is { Inner: > Tolerance, Outer: > Tolerance }),
            cut.Count(planned => planned.Reference.LeastCut is { Inner: < Tolerance }),
            cut.Count(planned => planned.Rod.Inner.Thread.Hand == planned.Rod.Outer.Thread.Hand),
            cut.Count(planned => planned.Rod.OffsetSquared > 0),
            cut.Count(planned => planned.Rod.ClockingDegrees is not null),
        ];
        output.WriteLine($"cut at both ends, the outer alone, same hand, bent, bent at both ends: {string.Join(", ", kinds)}");
        Assert.All(kinds, count => Assert.True(count >= KindShare * RandomCounts.Rods));
        Assert.All(
            Enum.GetValues<Verdict>().Except([Verdict.NotChecked]), verdict => Assert.True(verdicts[verdict] >= VerdictShare * RandomCounts.Rods));
        Assert.All(Enum.GetValues<Limit>(), limit => Assert.True(limits[limit] >= LimitShare * RandomCounts.Rods));
    }

    [Fact]
    public void Least_cuts_agree_in_total_and_in_split()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            CutPair expected = planned.Reference.LeastCut!.Value;
            CutPair actual = new(
                planned.Advice(RodSide.Inner)?.Least.Millimeters ?? 0, planned.Advice(RodSide.Outer)?.Least.Millimeters ?? 0);
            findings.Near(planned.Rod, "least total cut", expected.Total, actual.Total, Tolerance);
            findings.Near(planned.Rod, "least inner cut", expected.Inner, actual.Inner, Tolerance);
            findings.Near(planned.Rod, "least outer cut", expected.Outer, actual.Outer, Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void An_end_has_cut_advice_where_it_may_be_cut_and_zeros_where_it_need_not_be()
    {
        Findings findings = new();
        foreach ((PlannedRod planned, RodSide side) in Ends())
        {
            CutAdvice? advice = planned.Advice(side);
            findings.That(planned.Rod, $"{side} advice", advice is null == (planned.Rod.Joint(side).MaxCut.Mm == 0));
            if (advice is not null && planned.Plan.Verdict == Verdict.Buildable)
            {
                findings.Near(planned.Rod, $"{side} least", 0, advice.Least, 0);
                findings.Near(planned.Rod, $"{side} recommended", 0, advice.Recommended, 0);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Reach_of_the_uncut_parts_agrees()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.All)
        {
            Compare(findings, planned.Rod, "uncut", planned.Reference.UncutAxial, planned.Plan.UncutReach);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Reach_with_the_recommended_cuts_agrees()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            Compare(findings, planned.Rod, "with the recommended cuts", planned.AxialRecommended, planned.Plan.Solution!.Reach);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Setting_at_the_least_cut_is_the_middle_of_what_is_allowed()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            Span allowed = planned.Reference.LeastCutInsertions!.Value;
            UnitsNet.Length inner = planned.Plan.Solution!.LeastCutSetting.Inner;
            UnitsNet.Length outer = planned.Plan.Solution.LeastCutSetting.Outer!.Value;
            findings.Near(planned.Rod, "inner insertion", allowed.Middle, inner, Tolerance);
            Setting withInner = new(allowed.Middle, 0);
            double axial = planned.Rod.AxialOf(planned.Rod.Target.Mm);
            double rest = LimitTable.Axial(planned.Rod, planned.Reference.LeastCut!.Value, withInner) - axial;
            findings.Near(planned.Rod, "outer insertion", rest, outer, Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Setting_and_its_span_at_the_recommended_cut_agree()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            RodSolution solution = planned.Plan.Solution!;
            double axial = planned.Rod.AxialOf(planned.Rod.Target.Mm);
            double sum = LimitTable.Axial(planned.Rod, planned.Recommended, default) - axial;
            Span inner = planned.InsertionsRecommended!.Value;
            findings.Near(planned.Rod, "axial length", axial, planned.Plan.Axial, Tolerance);
            findings.Near(planned.Rod, "inner from", inner.Low, solution.Inner.InsertionSpan.Shortest, Tolerance);
            findings.Near(planned.Rod, "inner to", inner.High, solution.Inner.InsertionSpan.Longest, Tolerance);
            findings.Near(planned.Rod, "inner setting", inner.Middle, solution.Inner.Insertion, Tolerance);
            findings.Near(planned.Rod, "outer from", sum - inner.High, solution.Outer!.InsertionSpan.Shortest, Tolerance);
            findings.Near(planned.Rod, "outer to", sum - inner.Low, solution.Outer.InsertionSpan.Longest, Tolerance);
            findings.Near(planned.Rod, "outer setting", sum - inner.Middle, solution.Outer.Insertion, Tolerance);
            findings.Near(planned.Rod, "tip gap", planned.Rod.SleeveLength.Mm - sum, solution.TipGap!.Value, Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Most_that_may_be_cut_agrees()
    {
        Findings findings = new();
        foreach ((PlannedRod planned, RodSide side) in Ends().Where(end => end.Planned.Advice(end.Side) is { IsNeeded: true }))
        {
            CutAdvice advice = planned.Advice(side)!;
            double most = planned.Window(side)!.Value.High;
            findings.Near(planned.Rod, $"{side} most", most, advice.Most, Tolerance);
            findings.Near(planned.Rod, $"{side} spare", most - planned.Recommended.Of(side), advice.Spare, Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void More_cut_would_help_exactly_where_parts_that_may_be_cut_without_end_would_make_the_rod()
    {
        Findings findings = new();
        Dictionary<bool, int> seen = new() { [false] = 0, [true] = 0 };
        using LinearProgram program = new();
        foreach (PlannedRod planned in rods.All)
        {
            if (planned.Plan.Solution is not null)
            {
                findings.That(planned.Rod, "what can be built needs no more cut", !planned.Plan.MoreCutWouldHelp);
                continue;
            }

            program.Load(planned.Rod, row => row.Limit == Limit.Cut ? double.PositiveInfinity : 0);
            double loosening = program.LeastLoosening(null);

            // A sleeve that cannot adjust keeps a rod from being built, whatever the limits say.
            bool expected = loosening <= Millimeters.Negligible && !(planned.Rod.WantsAdjustment && !planned.Rod.SleeveAdjusts);
            if (loosening is not (> Rounding and < Undecided))
            {
                findings.That(planned.Rod, $"more cut would help: expected {expected}", planned.Plan.MoreCutWouldHelp == expected);
                seen[expected]++;
            }
        }

        findings.AssertNone();
        Assert.All(seen.Values, count => Assert.True(count > RandomCounts.Rods / 50));
    }

    private IEnumerable<(PlannedRod Planned, RodSide Side)> Ends() =>
        rods.Solved.SelectMany(planned => s_sides.Select(side => (planned, side)));

    private static void Compare(Findings findings, RodCase rod, string what, Span? axial, LengthSpan? reach)
    {
        findings.That(rod, $"whether there is a reach {what}", axial is null == reach is null);
        if (axial is { } span && reach is not null)
        {
            findings.Near(rod, $"shortest {what}", rod.LengthOf(span.Low), reach.Shortest, Tolerance);
            findings.Near(rod, $"longest {what}", rod.LengthOf(span.High), reach.Longest, Tolerance);
        }
    }
}
