using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>What must hold of every plan, whatever the numbers are.</summary>
public class PlanPropertyTests(PlannedRods rods) : IClassFixture<PlannedRods>
{
    private const double Tolerance = 1e-6;
    private const double Relative = 1e-9;

    private static readonly RodSide[] s_sides = [RodSide.Inner, RodSide.Outer];

    private static readonly string[] s_directions =
        ["/Solution/Lengthens", "/Solution/Inner/NutLoosens", "/Solution/Outer/NutLoosens", "/Solution/Start/SleeveDirection"];

    [Fact]
    public void Inches_and_millimeters_give_the_same_figures()
    {
        Findings findings = new();
        foreach (RodCase rod in rods.All.Select(planned => planned.Rod))
        {
            foreach (string difference in PlanFigures
                .Differences(Sorted(rod.InUnit(true).Plan()), Sorted(rod.InUnit(false).Plan()), Relative)
                .Where(OtherThanWhichLimitOfTwo))
            {
                findings.Add(rod, difference);
            }
        }

        findings.AssertNone();

        // Which of two ends is named where both do is the next test.
        static RodPlan Sorted(RodPlan plan) => plan with
        {
            Binding = [.. plan.Binding.OrderBy(binding => (binding.Limit, binding.End, binding.At))],
            Solution = plan.Solution is { Start.AloneTurns: < Relative } solution
                ? solution with { Start = solution.Start with { First = default, ShowingBeforeSecond = default } }
                : plan.Solution,
        };
    }

    [Fact]
    public void Inches_and_millimeters_name_the_same_of_two_that_are_equal()
    {
        Findings findings = new();
        foreach (RodCase rod in rods.All.Select(planned => planned.Rod))
        {
            RodPlan inches = rod.InUnit(true).Plan();
            RodPlan millimeters = rod.InUnit(false).Plan();
            findings.That(rod, "order of the limits in the way", Names(inches).SequenceEqual(Names(millimeters)));
            findings.That(rod, "end of the travel", Ends(inches) == Ends(millimeters));
            findings.That(rod, "end to start", inches.Solution?.Start.First == millimeters.Solution?.Start.First);
        }

        findings.AssertNone();

        static IEnumerable<(Limit, RodSide?, AdjustmentPoint)> Names(RodPlan plan) =>
            plan.Binding.Select(binding => (binding.Limit, binding.End, binding.At));

        static (Limit?, RodSide?, Limit?, RodSide?) Ends(RodPlan plan) => (
            plan.Solution?.Shorter.EndsAt, plan.Solution?.Shorter.End, plan.Solution?.Longer.EndsAt, plan.Solution?.Longer.End);
    }

    [Fact]
    public void Hands_seen_in_a_mirror_change_only_directions_of_turning()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.All)
        {
            RodPlan mirrored = planned.Rod.Mirrored().Plan();
            foreach (string difference in PlanFigures.Differences(planned.Plan, mirrored, 0)
                .Where(difference => !s_directions.Any(name => difference.StartsWith(name, StringComparison.Ordinal))))
            {
                findings.Add(planned.Rod, difference);
            }

            findings.That(
                planned.Rod,
                "the other turn lengthens",
                planned.Plan.Solution?.Lengthens is null || planned.Plan.Solution.Lengthens != mirrored.Solution!.Lengthens);
            findings.That(
                planned.Rod,
                "the other turn loosens the nuts",
                planned.Plan.Solution is not { } solution
                || (Flipped(solution.Inner.NutLoosens, mirrored.Solution!.Inner.NutLoosens)
                    && Flipped(solution.Outer!.NutLoosens, mirrored.Solution.Outer!.NutLoosens)
                    && Flipped(solution.Start.SleeveDirection, mirrored.Solution.Start.SleeveDirection)));
        }

        findings.AssertNone();

        static bool Flipped(TurnDirection? one, TurnDirection? other) => one is null ? other is null : other is not null && one != other;
    }

    [Fact]
    public void Turned_end_for_end_a_rod_keeps_verdict_reach_and_least_total_cut()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.All)
        {
            RodPlan swapped = planned.Rod.Swapped().Plan();
            findings.That(planned.Rod, $"verdict {swapped.Verdict}", swapped.Verdict == planned.Plan.Verdict);
            LengthSpan reach = planned.Plan.UncutReach ?? new(default, default);
            LengthSpan swappedReach = swapped.UncutReach ?? new(default, default);
            findings.Near(planned.Rod, "uncut shortest", reach.Shortest.Millimeters, swappedReach.Shortest, Tolerance);
            findings.Near(planned.Rod, "uncut longest", reach.Longest.Millimeters, swappedReach.Longest, Tolerance);
            findings.Near(planned.Rod, "least total cut", LeastTotal(planned.Plan), LeastTotal(swapped), Tolerance);
        }

        findings.AssertNone();

        static double LeastTotal(RodPlan plan) =>
            (plan.Solution?.InnerCut?.Least.Millimeters ?? 0) + (plan.Solution?.OuterCut?.Least.Millimeters ?? 0);
    }

    [Fact]
    public void Turned_end_for_end_a_rod_with_one_end_to_cut_at_most_keeps_everything()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved.Where(OneEndAtMost))
        {
            RodPlan swapped = planned.Rod.Swapped().Plan();
            RodPlan back = swapped with
            {
                Solution = swapped.Solution! with
                {
                    InnerCut = swapped.Solution.OuterCut,
                    OuterCut = swapped.Solution.InnerCut,
                    WorstCase = swapped.Solution.WorstCase with
                    {
                        InnerCut = swapped.Solution.WorstCase.OuterCut,
                        OuterCut = swapped.Solution.WorstCase.InnerCut,

                        // Of limits that are equally near the inner end's counts, whichever way the rod is turned.
                        Dimensions = planned.Plan.Solution!.WorstCase.Dimensions,
                    },
                    Inner = swapped.Solution.Outer!,
                    Outer = swapped.Solution.Inner,
                    LeastCutSetting = new(swapped.Solution.LeastCutSetting.Outer!.Value, swapped.Solution.LeastCutSetting.Inner),
                    Shorter = swapped.Solution.Shorter with { End = Other(swapped.Solution.Shorter.End) },
                    Longer = swapped.Solution.Longer with { End = Other(swapped.Solution.Longer.End) },

                    // The end that is started first is the inner one with the same hand, and the turn is seen from the inner end.
                    Start = planned.Plan.Solution!.Start,
                    Lengthens = planned.Plan.Solution.Lengthens,
                },
                InnerRequired = swapped.OuterRequired!,
                OuterRequired = swapped.InnerRequired,
                Locking = planned.Plan.Locking,
                Warnings = planned.Plan.Warnings,
            };
            foreach (string difference in PlanFigures.Differences(planned.Plan, back, Tolerance).Where(OtherThanWhichLimitOfTwo))
            {
                findings.Add(planned.Rod, difference);
            }
        }

        findings.AssertNone();

        static bool OneEndAtMost(PlannedRod planned) => planned.Recommended is { Inner: 0, Outer: 0 }
            || planned.Plan.Solution!.InnerCut is null
            || planned.Plan.Solution.OuterCut is null;

        static RodSide? Other(RodSide? side) => side is { } end ? s_sides.Single(other => other != end) : null;
    }

    [Fact]
    public void A_rod_cut_as_recommended_needs_no_further_cut_and_is_set_the_same()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            RodPlan cut = planned.Rod.Cut(planned.Recommended).Plan();
            findings.That(planned.Rod, $"verdict {cut.Verdict}", cut.Verdict == Verdict.Buildable);
            if (cut.Solution is { } solution)
            {
                LengthSpan reach = planned.Plan.Solution!.Reach;
                findings.Near(planned.Rod, "shortest", reach.Shortest.Millimeters, solution.Reach.Shortest, Tolerance);
                findings.Near(planned.Rod, "longest", reach.Longest.Millimeters, solution.Reach.Longest, Tolerance);
                findings.Near(planned.Rod, "inner insertion", planned.Setting.Inner, solution.Inner.Insertion, Tolerance);
                findings.Near(planned.Rod, "outer insertion", planned.Setting.Outer, solution.Outer!.Insertion, Tolerance);
                findings.Near(planned.Rod, "shorter", planned.Plan.Solution.Shorter.Length.Millimeters, solution.Shorter.Length, Tolerance);
                findings.Near(planned.Rod, "longer", planned.Plan.Solution.Longer.Length.Millimeters, solution.Longer.Length, Tolerance);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void No_smaller_total_cut_works_however_it_is_split()
    {
        const double Less = 1e-3;
        const int Splits = 7;
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            double inner = planned.Advice(RodSide.Inner)?.Least.Millimeters ?? 0;
            double outer = planned.Advice(RodSide.Outer)?.Least.Millimeters ?? 0;
            findings.That(planned.Rod, "the least works", Insertions(planned.Rod, new CutPair(inner, outer)).Width >= -Tolerance);
            double total = inner + outer - Less;
            for (int split = 0; split <= Splits && total > 0; split++)
            {
                CutPair cut = new(total * split / Splits, total * (Splits - split) / Splits);
                bool allowed = cut.Inner <= planned.Rod.Inner.MaxCut.Mm && cut.Outer <= planned.Rod.Outer.MaxCut.Mm;
                findings.That(planned.Rod, $"{cut} works", !allowed || Insertions(planned.Rod, cut).Width < 0);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void The_same_pitch_and_hand_at_both_ends_is_planned_only_where_no_adjustment_is_wanted()
    {
        Findings findings = new();
        PlannedRod[] rigid = [.. rods.All.Where(planned => !planned.Rod.SleeveAdjusts)];
        foreach (PlannedRod planned in rigid)
        {
            findings.That(planned.Rod, "not buildable", !planned.Rod.WantsAdjustment || planned.Plan.Verdict == Verdict.NotBuildable);
            findings.That(
                planned.Rod,
                "says that the sleeve cannot adjust the rod",
                planned.Plan.Warnings.Any(warning => warning.Code == WarningCode.SleeveCannotAdjust));
            findings.That(
                planned.Rod,
                "no turn lengthens",
                planned.Plan.Solution is null or { Lengthens: null, PerTurn: null, PerHalfTurn: null, PerFlat: null, StartStep: null });
        }

        findings.AssertNone();
        Assert.True(rigid.Count(planned => planned.Plan.Solution is not null) > RandomCounts.Rods / 500);
        Assert.True(rigid.Count(planned => planned.Rod.WantsAdjustment) > RandomCounts.Rods / 100);
    }

    /// <summary>False for the name of the limit that ends the travel: where two end it at once, either may be named.</summary>
    private static bool OtherThanWhichLimitOfTwo(string difference) =>
        !difference.StartsWith("/Solution/Shorter/End", StringComparison.Ordinal)
        && !difference.StartsWith("/Solution/Longer/End", StringComparison.Ordinal);

    /// <summary>
    /// The inner insertions at the target that cuts allow, by interval algebra: every limit is a straight line over the inner
    /// insertion, at the shortest and at the longest wanted length.
    /// </summary>
    private static Span Insertions(RodCase rod, CutPair cut)
    {
        double sum = LimitTable.Axial(rod, cut, default) - rod.AxialOf(rod.Target.Mm);
        double low = double.NegativeInfinity;
        double high = double.PositiveInfinity;
        foreach (double wish in (double[])[rod.Target.Mm - rod.Shorter.Mm, rod.Target.Mm + rod.Longer.Mm])
        {
            double turns = LimitTable.TurnsTo(rod, wish);
            IEnumerable<Slack> At(double inner) =>
                LimitTable.Slacks(rod, cut, LimitTable.Turned(rod, new Setting(inner, sum - inner), turns));
            foreach ((Slack atZero, Slack atOne) in At(0).Zip(At(1)))
            {
                double slope = Math.Round(atOne.Left - atZero.Left);
                double zero = slope == 0 ? 0 : -atZero.Left / slope;
                low = slope > 0 ? Math.Max(low, zero) : slope == 0 && atZero.Left < -Tolerance ? double.PositiveInfinity : low;
                high = slope < 0 ? Math.Min(high, zero) : high;
            }
        }

        return new Span(low, high);
    }
}
