using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Tests.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>Worked moves that are refused, and those that have no answer.</summary>
public class ToeRefusalTests
{
    private const double Turns = 0.00001;
    private const double Mm = 0.00001;

    // The twin is 256 mm long, each end 32 mm in; a turn of its sleeve is 3 mm, 1.5 mm at each end. Longer by 2 x (32 - 26.25) = 11.5 mm
    // the engagement ends, shorter by 2 x (40 - 32) = 16 mm the bores.
    private const double TwinLength = 256;
    private const double TwinTurn = 3;

    [Theory]
    [InlineData(11.25, 3.75, true)]
    [InlineData(11.6, 3.875, false)]
    [InlineData(-15.8, -5.25, true)]
    [InlineData(-16.1, -5.375, false)]
    public void A_move_is_made_up_to_the_limit_and_refused_beyond(double longer, double turns, bool holds)
    {
        ToeMove move = ToeCars.Twin.MoveBy(longer);
        Assert.Equal(turns, move.Turns);
        Assert.Equal(holds ? MoveOutcome.Holds : MoveOutcome.Refused, move.Outcome);
        Assert.Equal((11.5 / 3, 16.0 / 3), (Near(move.Longer!.Turns, 11.5 / 3), Near(move.Shorter!.Turns, 16.0 / 3)));
        if (holds)
        {
            Assert.Null(move.Refusal);
            Assert.Equal(18 + 1.5 * turns, move.Joints[0].Showing.Millimeters, Mm);
            Assert.Equal(10 + 1.5 * turns, move.Joints[1].NutRoom.Millimeters, Mm);
            Assert.Equal(32 - 1.5 * turns - 1.5 - 0.75, move.Joints[0].Engaged.Millimeters, Mm);
            return;
        }

        MoveRefusal refusal = move.Refusal!;
        Limit limit = longer > 0 ? Limit.Engagement : Limit.ClosedBore;
        Assert.Equal((limit, RodSide.Inner, false), (refusal.Limit, refusal.End, move.PastALimit));
        double reachable = longer > 0 ? 3.75 : -5.25;
        Assert.Equal(reachable, refusal.ReachableTurns);
        Assert.Null(refusal.ReachableFlats);
        double toe = ToeCars.TurnOfArm(ToeCars.Arm, ToeCars.RodAngle, TwinLength, TwinLength + TwinTurn * reachable);
        Assert.Equal(toe, refusal.ReachableToe!.Value.Radians, 1e-12);
        Assert.Null(move.After);
        Assert.Null(move.LeftOver);
        Assert.Empty(move.Joints);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e-6)]
    public void A_whole_number_of_steps_to_the_limit_is_reached_by_the_last_of_them(double further)
    {
        // 31 steps of 0.375 mm are 11.625 mm: the first 0.125 mm of them take a rod that is so much shorter to its 256 mm. A millionth of a
        // millimeter less makes each end miss its engagement by half of that, which is no miss.
        double present = TwinLength - 0.125 + further;
        ToeMove there = ToeCars.Twin.MoveBy(11.625, present);
        Assert.Equal((MoveOutcome.Holds, 3.875), (there.Outcome, there.Turns));
        ToeMove beyond = ToeCars.Twin.MoveBy(12, present);
        Assert.Equal((MoveOutcome.Refused, 4.0), (beyond.Outcome, beyond.Turns));
        Assert.Equal(3.875, beyond.Refusal!.ReachableTurns);
    }

    [Fact]
    public void Reachable_flats_are_those_of_the_reachable_turns()
    {
        RodCase rod = ToeCars.Twin with { Outside = new OutsideCase(OutsideShape.Hexagon, Dim.OfMm(24)) };
        ToeMove move = rod.MoveBy(-18);
        Assert.Equal((-6.0, 36.0), (move.Turns, move.Flats));
        Assert.Equal((-5.25, 31.5), (move.Refusal!.ReachableTurns, move.Refusal.ReachableFlats));
    }

    [Fact]
    public void Refused_moves_leave_the_plan_without_toe_after()
    {
        ToeRequest request = ToeCars.Twin.OnCar(CarSide.Left).LeftAlone(18) with { Share = ToeShare.BothRods };
        ToePlan plan = ToePlanner.Plan(request with { Right = ToeCars.Twin.OnCar(CarSide.Right) });
        Assert.Equal([MoveOutcome.Refused, MoveOutcome.Holds], plan.Moves.Select(move => move.Outcome));
        Assert.Null(plan.After);
        Assert.False(plan.Holds);
    }

    // Past the bores by 1.5 mm at each end, the rod 3 mm shorter than its shortest of 240 mm; or past the engagement, 3 mm longer than
    // its longest of 267.5 mm.
    [Theory]
    [InlineData(237, 0, Limit.ClosedBore)]
    [InlineData(237, -3, Limit.ClosedBore)]
    [InlineData(237, 2.25, Limit.ClosedBore)]
    [InlineData(237, 33, Limit.ClosedBore)]
    [InlineData(270.5, 0, Limit.Engagement)]
    [InlineData(270.5, 3, Limit.Engagement)]
    [InlineData(270.5, -2.25, Limit.Engagement)]
    [InlineData(270.5, -33, Limit.Engagement)]
    public void A_rod_past_a_limit_is_refused_where_the_move_leaves_it_past_one(double present, double longer, Limit passed)
    {
        ToeMove move = ToeCars.Twin.MoveBy(longer, present);
        Assert.Equal(MoveOutcome.Refused, move.Outcome);
        Assert.Equal((passed, RodSide.Inner, true), (move.Refusal!.Limit, move.Refusal.End, move.PastALimit));
        Assert.Equal(0, move.Refusal.ReachableTurns);
        Assert.Equal(0, move.Refusal.ReachableToe!.Value.Radians, 1e-12);
    }

    [Theory]
    [InlineData(237, 3)]
    [InlineData(237, 30)]
    [InlineData(270.5, -3)]
    [InlineData(270.5, -30)]
    public void A_rod_past_a_limit_may_be_brought_back_inside(double present, double longer)
    {
        ToeMove move = ToeCars.Twin.MoveBy(longer, present);
        Assert.Equal((MoveOutcome.Holds, longer / TwinTurn), (move.Outcome, move.Turns));
        Assert.Equal(50 - (32 - (present - TwinLength) / 2), move.Joints[0].ShowingNow.Millimeters, Mm);
    }

    [Fact]
    public void A_rod_without_plan_is_counted_but_not_checked()
    {
        ToeMove move = (ToeCars.Twin with { Longer = Dim.OfMm(40) }).MoveBy(60);
        Assert.Equal((MoveOutcome.NotChecked, 20.0, TurnDirection.Counterclockwise), (move.Outcome, move.Turns, move.Direction));
        Assert.Equal(Verdict.NotBuildable, move.Plan!.Verdict);
        Assert.Null(move.Shorter);
        Assert.Null(move.Refusal);
        Assert.Empty(move.Joints);
        Assert.Equal(move.Want!.Value.Radians, move.After!.Value.Radians, 1e-9);
    }

    [Fact]
    public void A_toe_that_no_length_gives_is_out_of_reach()
    {
        // On this arm the wheel comes to dead center, 90 degrees and the angle at A, before it has turned by 80 degrees inward.
        ToeRequest request = ToeCars.Twin.Car(default, new WheelToes(Angle.FromDegrees(-80), default), ToeShare.LeftOnly);
        ToePlan plan = ToePlanner.Plan(request);
        ToeMove move = Assert.Single(plan.Moves);
        Assert.Equal(MoveOutcome.OutOfReach, move.Outcome);
        Assert.Equal((null, null, null, null, null), (move.Wanted, move.Turns, move.ExactTurns, move.Direction, move.After));
        Assert.Null(plan.After);
        Assert.NotNull(move.ToePerStep);

        // The rod reaches from AC less arm to AC and arm.
        double across = Math.Sqrt(
            Math.Pow(ToeCars.Arm, 2) + Math.Pow(TwinLength, 2) - 2 * ToeCars.Arm * TwinLength * Math.Cos(94 * Math.PI / 180));
        Assert.Equal(across - ToeCars.Arm, move.SteeringReach.Shortest.Millimeters, 1e-9);
        Assert.Equal(across + ToeCars.Arm, move.SteeringReach.Longest.Millimeters, 1e-9);
    }

    [Fact]
    public void A_total_that_one_wheel_cannot_make_up_is_out_of_reach()
    {
        // The sines would have to add up to 1.2, and the standing wheel has none.
        Angle steep = Angle.FromRadians(Math.Asin(0.6));
        ToeMove move = ToePlanner.Plan(ToeCars.Twin.Car(default, new WheelToes(steep, steep), ToeShare.RightOnly)).Moves.Single();
        Assert.Equal(MoveOutcome.OutOfReach, move.Outcome);
        Assert.Null(move.Want);
        Assert.Null(move.LeftOver);
    }

    [Fact]
    public void A_present_length_that_the_steering_cannot_have_is_told()
    {
        ToeRod rod = ToeCars.Twin.OnCar(CarSide.Left);
        ToeRod off = rod with { Present = Length.FromMillimeters(600) };
        ToeMove move = ToePlanner.Plan(rod.LeftAlone(1) with { Left = off }).Moves.Single();
        Assert.Equal(MoveOutcome.PresentOutOfReach, move.Outcome);
        Assert.Equal(600, move.Present.Millimeters, 1e-9);
        Assert.Equal((null, null, null), (move.Wanted, move.Turns, move.After));
        Assert.Null(move.ToeAt(0));
        Assert.True(move.SteeringReach.Longest.Millimeters < 600);
    }

    [Theory]
    [InlineData(256)]
    [InlineData(250)]
    public void A_rod_in_line_with_the_steer_axis_is_told(double present)
    {
        ToeWheel wheel = ToeWheel.OfPoints(CarSide.Left, default, new(0, 0, 200), new(-150, 0, 0), new(-406, 0, 0));
        ToeRod rod = new ToeRodCase(ToeCars.Twin, false) { Present = Dim.OfMm(present) }.OnCar(wheel, 0);
        ToeMove move = ToePlanner.Plan(ToeCars.Twin.OnCar(CarSide.Left).LeftAlone(1) with { Left = rod }).Moves.Single();
        Assert.Equal(MoveOutcome.InLine, move.Outcome);
        Assert.Equal((null, null, null), (move.Wanted, move.Turns, move.After));
    }

    /// <summary>The second number where the first agrees with it.</summary>
    private static double Near(double turns, double expected) => Math.Abs(turns - expected) < Turns ? expected : turns;
}
