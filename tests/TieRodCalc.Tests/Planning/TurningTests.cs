using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Turning the sleeve and starting the threads, from the pitches and hands.</summary>
public class TurningTests(PlannedRods rods) : IClassFixture<PlannedRods>
{
    private const double Tolerance = 1e-6;

    [Fact]
    public void A_turn_moves_the_length_by_the_pitches_in_the_direction_named()
    {
        Findings findings = new();
        foreach (PlannedRod planned in Adjusting())
        {
            RodSolution solution = planned.Plan.Solution!;
            findings.That(
                planned.Rod,
                $"lengthens {solution.Lengthens}",
                solution.Lengthens == (planned.Rod.AxialPerTurn > 0 ? TurnDirection.Clockwise : TurnDirection.Counterclockwise));
            findings.Near(planned.Rod, "per turn", ByTurns(planned, 1), solution.PerTurn!.Length, Tolerance);
            findings.Near(planned.Rod, "per half turn", ByTurns(planned, 0.5), solution.PerHalfTurn!.Length, Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_flat_is_a_sixth_of_a_turn_and_only_a_hexagon_has_flats()
    {
        Findings findings = new();
        Dictionary<OutsideShape, int> seen = Enum.GetValues<OutsideShape>().ToDictionary(shape => shape, _ => 0);
        foreach (PlannedRod planned in Adjusting())
        {
            RodSolution solution = planned.Plan.Solution!;
            OutsideShape? shape = planned.Rod.Outside?.Shape;
            findings.That(planned.Rod, "per flat", solution.PerFlat is not null == (shape == OutsideShape.Hexagon));
            if (shape is { } said)
            {
                seen[said]++;
            }

            if (solution.PerFlat is { } flat)
            {
                findings.Near(planned.Rod, "per flat", ByTurns(planned, 1.0 / 6), flat.Length, Tolerance);
            }
        }

        findings.AssertNone();
        Assert.All(seen.Values, count => Assert.True(count > RandomCounts.Rods / 50));
    }

    [Fact]
    public void Turning_to_the_end_of_the_travel_and_back_returns_to_the_setting()
    {
        Findings findings = new();
        foreach (PlannedRod planned in Adjusting())
        {
            RodSolution solution = planned.Plan.Solution!;
            foreach ((int sign, Travel travel) in new[] { (-1, solution.Shorter), (1, solution.Longer) })
            {
                double clockwise = sign * travel.Turns * (solution.Lengthens == TurnDirection.Clockwise ? 1 : -1);
                Setting there = LimitTable.Turned(planned.Rod, planned.Setting, clockwise);
                double length = planned.Rod.LengthOf(LimitTable.Axial(planned.Rod, planned.Recommended, there));
                findings.Near(planned.Rod, "there", planned.Rod.Target.Mm + sign * travel.Length.Millimeters, length, Tolerance);

                RodCase cut = planned.Rod.Cut(planned.Recommended);
                RodCase moved = cut with { Target = Dim.OfMm(length), Shorter = default, Longer = default };
                RodPlan plan = moved.Plan();
                findings.That(planned.Rod, $"there it is {plan.Verdict}", plan.Verdict == Verdict.Buildable);
                if (plan.Solution is { } at)
                {
                    findings.That(
                        planned.Rod,
                        "the insertion there is allowed",
                        there.Inner >= at.Inner.InsertionSpan.Shortest.Millimeters - Tolerance
                        && there.Inner <= at.Inner.InsertionSpan.Longest.Millimeters + Tolerance);
                }

                Setting back = LimitTable.Turned(planned.Rod, there, LimitTable.TurnsTo(planned.Rod, planned.Rod.Target.Mm)
                    - LimitTable.TurnsTo(planned.Rod, length));
                findings.Near(planned.Rod, "inner, back", planned.Setting.Inner, back.Inner, Tolerance);
                findings.Near(planned.Rod, "outer, back", planned.Setting.Outer, back.Outer, Tolerance);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Another_start_moves_the_insertion_by_the_step_of_the_pitches()
    {
        Findings findings = new();
        int halved = 0;
        int bentRodEnds = 0;
        foreach (PlannedRod planned in Adjusting())
        {
            double p1 = planned.Rod.Inner.Thread.PitchMm;
            double p2 = planned.Rod.Outer.Thread.PitchMm;
            double step = p1 * p2 / Math.Abs(planned.Rod.AxialPerTurn) * planned.Rod.StartTurns;
            halved += planned.Rod.StartTurns < 1 ? 1 : 0;
            bentRodEnds += planned.Rod is { StartTurns: 1, Inner.Joint: JointKind.RodEnd } or { StartTurns: 1, Outer.Joint: JointKind.RodEnd }
                ? 1
                : 0;
            findings.Near(planned.Rod, "start step", step, planned.Plan.Solution!.StartStep!.Value, Tolerance);
            bool narrow = planned.InsertionsRecommended!.Value.Width < step - Tolerance;
            bool wide = planned.InsertionsRecommended.Value.Width > step + Tolerance;
            bool warned = planned.Plan.Warnings.Any(warning => warning.Code == WarningCode.StartMayNotMatch);
            findings.That(planned.Rod, "warns of a start that may not match", warned ? !wide : !narrow);
        }

        findings.AssertNone();
        Assert.True(halved > RandomCounts.Rods / 50);
        Assert.True(bentRodEnds > RandomCounts.Rods / 200);
    }

    [Fact]
    public void A_sleeve_that_cannot_adjust_leaves_lengths_a_pitch_apart_or_half_of_one_with_a_straight_rod_end()
    {
        Findings findings = new();
        Dictionary<double, int> steps = new() { [0.5] = 0, [1] = 0 };
        foreach (PlannedRod planned in rods.All)
        {
            PlanWarning? told = planned.Plan.Warnings.SingleOrDefault(warning => warning.Code == WarningCode.SleeveCannotAdjust);
            findings.That(planned.Rod, "says that the sleeve cannot adjust the rod", told is null == planned.Rod.SleeveAdjusts);
            if (told is not null)
            {
                steps[planned.Rod.StartTurns]++;
                double step = planned.Rod.Inner.Thread.PitchMm * planned.Rod.StartTurns;
                findings.Near(planned.Rod, "step", step, told.Value!.Value, Tolerance);
            }
        }

        findings.AssertNone();
        Assert.All(steps.Values, count => Assert.True(count > RandomCounts.Rods / 200));
    }

    [Fact]
    public void With_opposite_hands_the_start_and_the_sleeve_turns_lead_to_the_setting()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved.Where(planned => planned.Rod.Inner.Thread.Hand != planned.Rod.Outer.Thread.Hand))
        {
            StartProcedure start = planned.Plan.Solution!.Start;
            RodSide second = start.First == RodSide.Inner ? RodSide.Outer : RodSide.Inner;
            JointCase first = planned.Rod.Joint(start.First);
            double firstPitch = first.Thread.PitchMm;
            double secondPitch = planned.Rod.Joint(second).Thread.PitchMm;
            double sleeve = start.SleeveTurns ?? double.NaN;
            findings.That(planned.Rod, "first end is not turned out", start.AloneTurns >= 0);
            findings.That(planned.Rod, "no turns of the end", start.EndTurns is null);
            findings.Near(planned.Rod, "second end", planned.Setting.Of(second), sleeve * secondPitch, Tolerance);
            findings.Near(planned.Rod, "first end", planned.Setting.Of(start.First), (start.AloneTurns + sleeve) * firstPitch, Tolerance);
            double left = first.ThreadLength.Mm - planned.Recommended.Of(start.First);
            findings.Near(planned.Rod, "showing", left - start.AloneTurns * firstPitch, start.ShowingBeforeSecond, Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void With_the_same_hand_the_sleeve_goes_onto_the_inner_end_and_the_outer_end_into_it()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved.Where(planned => planned.Rod.Inner.Thread.Hand == planned.Rod.Outer.Thread.Hand))
        {
            StartProcedure start = planned.Plan.Solution!.Start;
            findings.That(planned.Rod, "inner first", start.First == RodSide.Inner);
            findings.That(planned.Rod, "no turns of the sleeve with both ends in", start.SleeveTurns is null);
            findings.Near(planned.Rod, "inner", planned.Setting.Inner, start.AloneTurns * planned.Rod.Inner.Thread.PitchMm, Tolerance);
            findings.Near(
                planned.Rod, "outer", planned.Setting.Outer, (start.EndTurns ?? double.NaN) * planned.Rod.Outer.Thread.PitchMm, Tolerance);
            findings.Near(
                planned.Rod, "showing", planned.Plan.Solution.Inner.Showing.Millimeters, start.ShowingBeforeSecond, Tolerance);
        }

        findings.AssertNone();
    }

    private IEnumerable<PlannedRod> Adjusting() => rods.Solved.Where(planned => planned.Rod.SleeveAdjusts);

    /// <summary>Change of the length by turns that lengthen: the axial length grows in proportion, the length not on a bent rod.</summary>
    private static double ByTurns(PlannedRod planned, double turns) =>
        planned.Rod.LengthOf(planned.Rod.AxialOf(planned.Rod.Target.Mm) + Math.Abs(planned.Rod.AxialPerTurn) * turns)
        - planned.Rod.Target.Mm;
}
