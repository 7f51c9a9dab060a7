using TieRodCalc.Planning;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>What must hold of every change of toe, whatever the numbers are.</summary>
public class ToePropertyTests
{
    private const double Radians = 1e-9;
    private const double Turns = 1e-6;

    private static readonly IReadOnlyList<ToeCase> s_cases = [.. RandomToes.All.Take(RandomCounts.Geometries)];

    [Fact]
    public void Asked_again_after_the_move_there_is_nothing_to_turn()
    {
        Findings findings = new();
        int made = 0;
        foreach (ToeCase drawn in s_cases)
        {
            ToeMove move = drawn.Move();
            if (move.After is not { } after)
            {
                continue;
            }

            made++;
            ToeMove again = drawn.At(drawn.Rod.LengthAt(move.Turns!.Value), after.Radians, 0).Move();
            findings.That(drawn, again.Turns == 0 && again.Outcome == move.Outcome, "turns", again);
            findings.Near(drawn, "exact turns", 0, again.ExactTurns, Turns);
            foreach ((MovedJoint then, MovedJoint now) in move.Joints.Zip(again.Joints))
            {
                findings.Near(drawn, "showing", then.Showing.Millimeters, now.ShowingNow.Millimeters, Turns);
                findings.Near(drawn, "engaged", then.Engaged.Millimeters, now.Engaged.Millimeters, Turns);
            }
        }

        findings.AssertNone();
        Assert.True(made > s_cases.Count / 2);
    }

    [Fact]
    public void The_way_back_takes_the_same_turns_the_other_way()
    {
        Findings findings = new();
        foreach (ToeCase drawn in s_cases)
        {
            // Camber is that of the present length; on a vertical axis it stays as the wheel turns, so that the state there can be stated.
            if (drawn.Wheel.Axis.Z == 1)
            {
                ToeMove back = drawn.At(drawn.Rod.LengthAt(drawn.Turns), drawn.Want, -drawn.Turns).Move();
                findings.Near(drawn, "exact turns", -drawn.Turns, back.ExactTurns, Turns);
                findings.Near(drawn, "toe", drawn.Now, back.Want?.Radians, Radians);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void The_car_in_a_mirror_takes_the_same_turns()
    {
        Findings findings = new();
        foreach (ToeCase drawn in s_cases)
        {
            ToeMove move = drawn.Move();
            ToeMove mirrored = drawn.Mirrored().Move();
            findings.That(drawn, mirrored.Side != move.Side, "side", mirrored.Side);
            Same(findings, drawn, move, mirrored);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Inches_and_degrees_take_the_same_turns()
    {
        Findings findings = new();
        foreach (ToeCase drawn in s_cases)
        {
            Same(findings, drawn, drawn.Move(), drawn.Move(inches: true));
        }

        findings.AssertNone();
    }

    [Fact]
    public void Of_a_total_alike_wheels_take_the_same_turns_and_one_alone_comes_to_the_same_total()
    {
        Findings findings = new();
        Length plates = Length.FromInches(24);
        foreach (ToeCase drawn in s_cases)
        {
            ToeWheel mirrored = drawn.Wheel.Mirrored();
            bool left = drawn.Wheel.Side == CarSide.Left;
            ToeRequest both = new()
            {
                Now = Halves(drawn.Now),
                Want = Halves(drawn.Now + Math.Clamp(drawn.Want - drawn.Now, -0.05, 0.05)),
                Left = drawn.Rod.OnCar(left ? drawn.Wheel : mirrored, drawn.Camber),
                Right = drawn.Rod.OnCar(left ? mirrored : drawn.Wheel, drawn.Camber),
            };
            ToePlan plan = ToePlanner.Plan(both);
            findings.Near(drawn, "turns of both", plan.Moves[0].ExactTurns, plan.Moves[1].ExactTurns, Turns);
            findings.That(drawn, plan.Moves[0].Direction == plan.Moves[1].Direction, "direction", plan.Moves[1].Direction);
            double total = Exact(plan);
            findings.Near(drawn, "total of both", both.Want.Across(plates).Millimeters, total, Turns);
            foreach (ToeShare alone in (ToeShare[])[ToeShare.LeftOnly, ToeShare.RightOnly])
            {
                findings.Near(drawn, $"{alone}", total, Exact(ToePlanner.Plan(both with { Share = alone })), Turns);
            }
        }

        findings.AssertNone();

        static WheelToes Halves(double radians) => new(Angle.FromRadians(radians), Angle.FromRadians(radians));

        double Exact(ToePlan plan) => plan.Moves
            .Aggregate(plan.Now, (toes, move) => toes.With(move.Side, move.ToeAt(move.ExactTurns!.Value)!.Value))
            .Across(plates)
            .Millimeters;
    }

    [Fact]
    public void Half_of_the_turns_made_the_other_half_is_left()
    {
        Findings findings = new();
        foreach (ToeCase drawn in s_cases)
        {
            if (drawn.Wheel.Axis.Z == 1)
            {
                double half = drawn.Turns / 2;
                ToeMove rest = drawn.At(drawn.Rod.LengthAt(half), drawn.ToeAt(half), half).Move();
                findings.Near(drawn, "the rest of the turns", half, rest.ExactTurns, Turns);
                findings.Near(drawn, "toe at the end", drawn.Want, rest.ToeAt(half)?.Radians, Radians);
            }
        }

        findings.AssertNone();
    }

    private static void Same(Findings findings, ToeCase drawn, ToeMove one, ToeMove other)
    {
        findings.That(
            drawn,
            (one.Outcome, one.Part, one.Step, one.Turns, one.Flats, one.Direction)
                == (other.Outcome, other.Part, other.Step, other.Turns, other.Flats, other.Direction),
            $"{one.Outcome} {one.Turns} {one.Direction}",
            $"{other.Outcome} {other.Turns} {other.Direction}");
        findings.Near(drawn, "exact turns", one.ExactTurns, other.ExactTurns, Turns);
        findings.Near(drawn, "toe after", one.After?.Radians, other.After?.Radians, Radians);
        findings.Near(drawn, "reachable turns", one.Refusal?.ReachableTurns, other.Refusal?.ReachableTurns, 0);
        findings.That(drawn, one.PastALimit == other.PastALimit, "passed", other.Refusal);
        foreach ((MovedJoint first, MovedJoint second) in one.Joints.Zip(other.Joints))
        {
            findings.Near(drawn, "showing", first.Showing.Millimeters, second.Showing.Millimeters, Turns);
            findings.Near(drawn, "engaged", first.Engaged.Millimeters, second.Engaged.Millimeters, Turns);
        }
    }
}
