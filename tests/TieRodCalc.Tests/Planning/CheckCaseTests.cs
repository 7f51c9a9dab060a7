using TieRodCalc.Planning;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>The worked rods, every stated figure.</summary>
public class CheckCaseTests
{
    /// <summary>The figures are stated to 0.001 mm and must be met to 0.01 mm.</summary>
    private const double Tolerance = 0.01;

    /// <summary>The change by a turn is stated to 0.0001 mm.</summary>
    private const double PerTurnTolerance = 0.0001;

    public static TheoryData<string> Names => [.. CheckCases.All.Select(check => check.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Verdict_is_as_worked_out(string name)
    {
        (CheckCase check, RodPlan plan) = Planned(name);
        Assert.Equal(check.Verdict, plan.Verdict);
        Assert.Equal(Locking.Both, plan.Locking);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Uncut_reach_is_as_worked_out(string name)
    {
        (CheckCase check, RodPlan plan) = Planned(name);
        Near(check.UncutReach.Low, plan.UncutReach!.Shortest);
        Near(check.UncutReach.High, plan.UncutReach.Longest);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Cut_is_as_worked_out(string name)
    {
        (CheckCase check, RodPlan plan) = Planned(name);
        if (check.Verdict == Verdict.NotBuildable)
        {
            Assert.Null(plan.Solution);
            return;
        }

        Assert.Null(plan.Solution!.OuterCut);
        Assert.Equal(check.Rod.Inner.MaxCut.Mm > 0, plan.Solution.InnerCut is not null);
        Assert.Equal(check.LeastInnerCut is not null, plan.Solution.InnerCut is { IsNeeded: true });
        if (check.LeastInnerCut is { } least && check.MostInnerCut is { } most)
        {
            Near(least, plan.Solution.InnerCut!.Least);
            Near(most, plan.Solution.InnerCut.Most);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Limits_in_the_way_are_as_worked_out(string name)
    {
        (CheckCase check, RodPlan plan) = Planned(name);
        Assert.Equal(check.InTheWay.Order(), plan.Binding.Select(binding => (binding.Limit, binding.End, binding.At)).Order());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Setting_at_the_least_cut_is_as_worked_out(string name)
    {
        (CheckCase check, RodPlan plan) = Planned(name);
        if (check.LeastCutSetting is not ({ } inner, var outer))
        {
            Assert.Null(plan.Solution);
            return;
        }

        // Where the outer insertion is not stated, it is what the stated figures leave.
        double axial = check.Axial ?? check.Rod.Target.Mm;
        double left = LimitTable.Axial(check.Rod, new CutPair(check.LeastInnerCut ?? 0, 0), new Setting(inner, 0)) - axial;
        Near(inner, plan.Solution!.LeastCutSetting.Inner);
        Near(outer ?? left, plan.Solution.LeastCutSetting.Outer!.Value);
        Near(axial, plan.Axial);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Joints_of_the_rod_cut_by_the_least_are_as_worked_out(string name)
    {
        (CheckCase check, RodPlan plan) = Planned(name);
        if (check.Verdict == Verdict.NotBuildable)
        {
            Assert.Null(plan.Solution);
            return;
        }

        double least = plan.Solution!.InnerCut?.Least.Millimeters ?? 0;
        RodCase shortened = check.Rod.Cut(new CutPair(least, 0));
        RodPlan cut = shortened.Plan();
        Assert.Equal(Verdict.Buildable, cut.Verdict);
        JointPlan inner = cut.Solution!.Inner;
        JointPlan outer = cut.Solution.Outer!;
        double into = check.LeastCutSetting!.Value.Inner;
        double outerInto = LimitTable.Axial(shortened, default, new Setting(into, 0)) - (check.Axial ?? check.Rod.Target.Mm);
        Near(into, inner.Insertion);

        // What is not stated is worked out from the stated setting, and the free interval by the linear programme.
        using LinearProgram program = new();
        Span free = check.Free ?? PlanReference.Of(shortened, program).LeastCutInsertions!.Value;
        Near(free.Low, inner.InsertionSpan.Shortest);
        Near(free.High, inner.InsertionSpan.Longest);
        Near(check.Engaged?.Inner ?? LimitTable.Engaged(shortened.Inner, into, 0), inner.Engaged);
        Near(check.Engaged?.Outer ?? LimitTable.Engaged(shortened.Outer, outerInto, 0), outer.Engaged);
        Near(check.Room?.Inner ?? LimitTable.Room(shortened.Inner, into, 0), inner.NutRoom);
        Near(check.Room?.Outer ?? LimitTable.Room(shortened.Outer, outerInto, 0), outer.NutRoom);
    }

    [Fact]
    public void The_limit_that_asks_for_the_cut_is_as_worked_out()
    {
        using LinearProgram program = new();
        CheckCase[] stated = [.. CheckCases.All.Where(check => check.Presses is not null)];
        Assert.Equal([CheckCases.Inch, CheckCases.TipsMeet], stated);
        Assert.All(
            stated,
            check => Assert.Contains(check.Presses!.Value, PlanReference.Of(check.Rod, program).Pressing));
    }

    [Fact]
    public void A_turn_changes_the_length_as_worked_out()
    {
        CheckCase[] stated = [.. CheckCases.All.Where(check => check.AxialPerTurn is not null)];
        Assert.Equal([CheckCases.Inch, CheckCases.SameHand], stated);
        Assert.All(
            stated,
            check => Assert.Equal(
                check.AxialPerTurn!.Value, check.Rod.Plan().Solution!.PerTurn!.Length.Millimeters, PerTurnTolerance));
    }

    [Fact]
    public void With_left_hand_inside_the_counterclockwise_turn_lengthens()
    {
        // h1 P1 - h2 P2 is below zero: the clockwise turn runs both ends in.
        Assert.Equal(TurnDirection.Counterclockwise, CheckCases.Inch.Rod.Plan().Solution!.Lengthens);
        Assert.Equal(TurnDirection.Clockwise, CheckCases.Inch.Rod.Swapped().Plan().Solution!.Lengthens);
    }

    [Fact]
    public void With_the_same_hand_one_end_runs_out_as_the_other_runs_in()
    {
        RodPlan plan = CheckCases.SameHand.Rod.Plan();
        Assert.Equal(TurnDirection.Clockwise, plan.Solution!.Lengthens);
        Assert.Equal(RodSide.Inner, plan.Solution.Start.First);
        Assert.Null(plan.Solution.Start.SleeveTurns);
        Assert.NotNull(plan.Solution.Start.EndTurns);
    }

    private static (CheckCase Check, RodPlan Plan) Planned(string name)
    {
        CheckCase check = CheckCases.All.Single(candidate => candidate.Name == name);
        return (check, check.Rod.Plan());
    }

    private static void Near(double expectedMm, Length actual) => Assert.Equal(expectedMm, actual.Millimeters, Tolerance);
}
