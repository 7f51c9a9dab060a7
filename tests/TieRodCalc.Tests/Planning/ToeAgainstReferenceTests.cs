using TieRodCalc.Planning;
using TieRodCalc.Steering;
using UnitsNet;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Planning;

/// <summary>Turns and toe of random rods on random wheels held against a root finder over quaternions.</summary>
public class ToeAgainstReferenceTests(ITestOutputHelper output)
{
    private const double Radians = 1e-9;
    private const double Mm = 1e-7;

    /// <summary>Turns that lie this near to the middle of two steps may be rounded either way.</summary>
    private const double Undecided = 1e-6;

    private const double KindShare = 0.02;

    [Fact]
    public void Length_and_exact_turns_for_the_toe_agree()
    {
        Findings findings = new();
        foreach ((ToeCase drawn, _, ToeMove move) in PlannedToes.All)
        {
            findings.Near(drawn, "wanted toe", drawn.Want, move.Want!.Value.Radians, Radians);
            findings.Near(drawn, "toe now", drawn.Now, move.Now.Radians, 0);
            findings.Near(drawn, "present", drawn.Rod.Present.Mm, move.Present.Millimeters, 1e-12);
            findings.Near(drawn, "wanted length", drawn.Rod.LengthAt(drawn.Turns), move.Wanted?.Millimeters, Mm);
            findings.Near(drawn, "exact turns", drawn.Turns, move.ExactTurns, Mm / drawn.Rod.PerTurn);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Turns_are_the_nearest_step_of_what_is_turned()
    {
        Findings findings = new();
        int undecided = 0;
        foreach ((ToeCase drawn, _, ToeMove move) in PlannedToes.All)
        {
            double step = drawn.Rod.Step;
            findings.That(drawn, move.Part == drawn.Rod.Part, "part", move.Part);
            findings.Near(drawn, "step", step, move.Step, 0);
            double turns = move.Turns ?? double.NaN;
            double off = Math.Abs(turns - drawn.Turns);
            findings.That(drawn, off <= step / 2 + Undecided && Math.IEEERemainder(turns, step) == 0, "turns", turns);
            undecided += off > step / 2 - Undecided ? 1 : 0;
            findings.That(drawn, move.Direction == drawn.Rod.Direction(turns), "direction", move.Direction);
            findings.Near(drawn, "flats", drawn.Rod.HasFlats ? Math.Abs(turns) * 6 : null, move.Flats, 0);
        }

        output.WriteLine($"{RandomCounts.Description}; {undecided} between two steps");
        findings.AssertNone();
    }

    [Fact]
    public void Toe_after_the_rounded_turns_and_what_is_left_over_agree()
    {
        Findings findings = new();
        foreach ((ToeCase drawn, _, ToeMove move) in PlannedToes.All)
        {
            double? after = move.Outcome == MoveOutcome.Refused ? null : drawn.ToeAt(move.Turns!.Value);
            findings.Near(drawn, "toe after", after, move.After?.Radians, Radians);
            findings.Near(drawn, "left over", drawn.Want - after, move.LeftOver?.Radians, Radians);
            findings.Near(drawn, "toe per step", drawn.ToeAt(drawn.Rod.Step) - drawn.Now, move.ToePerStep?.Radians, Radians);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Toe_at_any_turns_agrees_and_no_turn_is_no_change()
    {
        Findings findings = new();
        foreach (((ToeCase drawn, _, ToeMove move), int index) in PlannedToes.All.Select((planned, index) => (planned, index)))
        {
            double turns = 4 * RandomCounts.For(index).NextDouble() - 2;
            findings.Near(drawn, "toe at some turns", drawn.ToeAt(turns), move.ToeAt(turns)?.Radians, Radians);
            findings.Near(drawn, "toe at no turn", drawn.Now, move.ToeAt(0)?.Radians, 1e-12);
        }

        findings.AssertNone();
    }

    [Fact]
    public void The_plan_has_the_toe_of_both_wheels_after_all_moves()
    {
        Findings findings = new();
        foreach ((ToeCase drawn, ToePlan plan, ToeMove move) in PlannedToes.All)
        {
            CarSide other = move.Side == CarSide.Left ? CarSide.Right : CarSide.Left;
            ToeMove? moved = plan.Moves.SingleOrDefault(one => one.Side == other);
            bool made = move.Outcome != MoveOutcome.Refused && moved?.Outcome != MoveOutcome.Refused;
            findings.That(drawn, made == plan.After is not null, "toe of both", plan.After);
            bool holds = plan.Moves.All(one => one is { Outcome: MoveOutcome.Holds, SteeringUnlikely: false })
                && plan.Stays is not { PastALimit: true };
            findings.That(drawn, plan.Holds == holds, "holds", plan.Holds);
            if (plan.After is { } after)
            {
                findings.Near(drawn, "own toe", move.After!.Value.Radians, after[move.Side].Radians, 0);
                findings.Near(drawn, "toe of the other", (moved?.After ?? plan.Now[other]).Radians, after[other].Radians, 0);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_rod_alone_brings_the_total_across_any_width_to_what_is_wanted()
    {
        Findings findings = new();
        foreach ((ToeCase drawn, ToePlan plan, ToeMove move) in PlannedToes.All.Where(planned => planned.Plan.Moves.Count == 1))
        {
            Length plates = Length.FromInches(24);
            Length reached = plan.Now.With(move.Side, move.ToeAt(move.ExactTurns!.Value)!.Value).Across(plates);
            findings.Near(drawn, "total", plan.Want.Across(plates).Millimeters, reached.Millimeters, 1e-6);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Every_kind_of_rod_and_wheel_is_drawn()
    {
        (string Kind, Func<PlannedToe, bool> Is)[] kinds =
        [
            ("left", planned => planned.Move.Side == CarSide.Left),
            ("longer gives toe-out", planned => planned.Move.ToePerStep?.Radians < 0),
            ("longer gives toe-in", planned => planned.Move.ToePerStep?.Radians > 0),
            ("both rods", planned => planned.Plan.Moves.Count == 2),
            ("one rod alone", planned => planned.Plan.Moves.Count == 1),
            ("no camber", planned => planned.Case.Camber == 0),
            ("short form", planned => planned.Case.Wheel.Text.Contains("arm", StringComparison.Ordinal)),
            ("inclination", planned => planned.Case.Wheel.Text.Contains("inclination", StringComparison.Ordinal)),
            ("sleeve clockwise longer", planned => planned.Case.Rod is { TurnsSleeve: true, Rod.AxialPerTurn: > 0 }),
            ("differential", planned => planned.Case.Rod is { TurnsSleeve: true, PerTurn: < 0.6 }),
            ("flats", planned => planned.Move.Flats > 0),
            ("bent", planned => planned.Case.Rod.Rod.OffsetSquared > 0),
            ("no turn", planned => planned.Move.Turns == 0),
            ("not at the planned length", planned => planned.Case.Rod.Present.Mm != planned.Case.Rod.Rod.Target.Mm),
            ("inner end", planned => planned.Move.Part == TurnedPart.InnerEnd),
            ("outer end by halves", planned => planned.Move is { Part: TurnedPart.OuterEnd, Step: 0.5 }),
            ("outer end by whole turns", planned => planned.Move is { Part: TurnedPart.OuterEnd, Step: 1 }),
            ("one joint", planned => planned.Case.Rod.OneJoint),
        ];
        foreach ((string kind, Func<PlannedToe, bool> isOne) in kinds)
        {
            int count = PlannedToes.All.Count(isOne);
            output.WriteLine($"{kind}: {count}");
            Assert.True(count >= KindShare * RandomCounts.Rods, $"{kind}: {count} of {RandomCounts.Description}");
        }
    }
}
