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
        if (check.LeastInnerCut is { } least && check.MostInnerCut is { } most)
        {
            Near(least, plan.Solution!.InnerCut!.Least);
            Near(most, plan.Solution.InnerCut.Most);
            Assert.Null(plan.Solution.OuterCut);
        }
        else
        {
            Assert.Equal(0, plan.Solution?.InnerCut?.Recommended.Millimeters ?? 0);
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

        Near(inner, plan.Solution!.LeastCutSetting.Inner);
        Near(outer ?? plan.Solution.LeastCutSetting.Outer.Millimeters, plan.Solution.LeastCutSetting.Outer);
        Near(check.Axial ?? check.Rod.Target.Mm, plan.Axial);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Joints_of_the_rod_cut_by_the_least_are_as_worked_out(string name)
    {
        (CheckCase check, RodPlan plan) = Planned(name);
        if (plan.Solution is null)
        {
            return;
        }

        double least = plan.Solution.InnerCut?.Least.Millimeters ?? 0;
        RodPlan cut = check.Rod.Cut(new CutPair(least, 0)).Plan();
        Assert.Equal(Verdict.Buildable, cut.Verdict);
        JointPlan inner = cut.Solution!.Inner;
        JointPlan outer = cut.Solution.Outer;
        Near(check.LeastCutSetting!.Value.Inner, inner.Insertion);
        Near(check.Free?.Low ?? inner.InsertionSpan.Shortest.Millimeters, inner.InsertionSpan.Shortest);
        Near(check.Free?.High ?? inner.InsertionSpan.Longest.Millimeters, inner.InsertionSpan.Longest);
        Near(check.Engaged?.Inner ?? inner.Engaged.Millimeters, inner.Engaged);
        Near(check.Engaged?.Outer ?? outer.Engaged.Millimeters, outer.Engaged);
        Near(check.Room?.Inner ?? inner.NutRoom.Millimeters, inner.NutRoom);
        Near(check.Room?.Outer ?? outer.NutRoom.Millimeters, outer.NutRoom);
    }

    [Fact]
    public void The_limit_that_asks_for_the_cut_is_as_worked_out()
    {
        using LinearProgram program = new();
        Assert.All(
            CheckCases.All.Where(check => check.Presses is not null),
            check => Assert.Contains(check.Presses!.Value, PlanReference.Of(check.Rod, program).Pressing));
    }

    [Fact]
    public void A_turn_changes_the_length_as_worked_out()
    {
        Assert.All(
            CheckCases.All.Where(check => check.AxialPerTurn is not null),
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
