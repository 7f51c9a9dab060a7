using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Tests.Steering;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>Worked changes of toe; figures in comments are worked out by plain trigonometry.</summary>
public class ToeMoveTests
{
    private const double Degrees = 0.00001;
    private const double Inches = 0.00001;
    private const double Turns = 0.00001;
    private const double Mm = 0.00001;

    [Fact]
    public void The_demo_turns_both_sleeves_a_quarter_counterclockwise()
    {
        // 1/8 in out to 1/16 in in: each wheel from asin(-1/16 / 24) = -0.149208 to asin(1/32 / 24) = +0.074604 degrees, 0.223812 degrees.
        // Arm 152.4, rod 393.7, 94 degrees between them: AC = 431.968 mm, and the rod for 0.223812 degrees more at A is 394.293945 mm.
        // Axial sqrt(L^2 - 14^2): 393.451001 to 394.045321, that is 0.594320 mm; a turn is 1.5 + 25.4 / 18 = 2.911111 mm: 0.204156 turns.
        // A quarter turn is 0.727778 mm axial, the rod then 394.427318 mm, each wheel at 0.124854 degrees, the total 0.104597 in.
        ToePlan plan = ToePlanner.Plan(ToeCars.Demo.Car(ToeCars.Total(-0.125), ToeCars.Total(0.0625)));
        Assert.Equal([CarSide.Left, CarSide.Right], plan.Moves.Select(move => move.Side));
        Assert.All(plan.Moves, move =>
        {
            Assert.Equal(MoveOutcome.Holds, move.Outcome);
            Assert.Equal((TurnedPart.Sleeve, 0.125), (move.Part, move.Step));
            Assert.Equal(394.293945, move.Wanted!.Value.Millimeters, Mm);
            Assert.Equal(0.204156, move.ExactTurns!.Value, Turns);
            Assert.Equal((0.25, 1.5), (move.Turns, move.Flats));
            Assert.Equal(TurnDirection.Counterclockwise, move.Direction);
            Assert.Equal(0.124854, move.After!.Value.Degrees, Degrees);
            Assert.Equal(0.074604 - 0.124854, move.LeftOver!.Value.Degrees, Degrees);
        });
        Assert.True(plan.Holds);
        Assert.Equal(0.104597, plan.After!.Value.Across(Length.FromInches(ToeCars.Plates)).Inches, Inches);
    }

    [Fact]
    public void Ahead_of_the_axle_the_sleeves_turn_the_other_way()
    {
        // The same triangle with 0.223812 degrees less at A: 393.106222 mm, 0.594154 mm axial less, 0.204099 turns.
        ToePlan plan = ToePlanner.Plan(ToeCars.Demo.Car(ToeCars.Total(-0.125), ToeCars.Total(0.0625), ahead: true));
        Assert.All(plan.Moves, move =>
        {
            Assert.Equal(393.106222, move.Wanted!.Value.Millimeters, Mm);
            Assert.Equal(-0.204099, move.ExactTurns!.Value, Turns);
            Assert.Equal((-0.25, 1.5), (move.Turns, move.Flats));
            Assert.Equal(TurnDirection.Clockwise, move.Direction);
            Assert.Equal(0.124947, move.After!.Value.Degrees, Degrees);
        });
    }

    [Fact]
    public void Right_hand_inside_and_left_hand_outside_turn_the_other_way()
    {
        RodCase swapped = ToeCars.Demo
            .WithInner(inner => inner with { Thread = inner.Thread with { Hand = Hand.Right } })
            .WithOuter(outer => outer with { Thread = outer.Thread with { Hand = Hand.Left } });
        ToePlan plan = ToePlanner.Plan(swapped.Car(ToeCars.Total(-0.125), ToeCars.Total(0.0625)));
        Assert.All(plan.Moves, move => Assert.Equal((0.25, TurnDirection.Clockwise), (move.Turns, move.Direction)));
    }

    [Fact]
    public void A_differential_adjuster_takes_many_turns()
    {
        // Right-hand at both ends, pitches 2 and 1.5 mm: a clockwise turn lengthens by 0.5 mm, the inner end coming out by 2 mm and
        // the outer one going in by 1.5 mm. The straight rod of 310 mm shall be 0.9 mm longer: 1.8 turns, to the eighth 1.75.
        RodCase rod = CheckCases.SameHand.Rod;
        ToeMove move = rod.MoveBy(0.9);
        Assert.Equal(1.8, move.ExactTurns!.Value, Turns);
        Assert.Equal((1.75, TurnDirection.Clockwise), (move.Turns, move.Direction));
        Assert.Equal(1.75 * 2, Shown(move.Joints[0]), Mm);
        Assert.Equal(1.75 * -1.5, Shown(move.Joints[1]), Mm);
    }

    [Theory]
    [InlineData(ToeShare.LeftOnly, CarSide.Left)]
    [InlineData(ToeShare.RightOnly, CarSide.Right)]
    public void One_rod_alone_makes_up_the_whole_change(ToeShare share, CarSide side)
    {
        // The other wheel stays at -1/16 in at the plates, so that this one must come to 1/16 + 1/16 = 1/8 in: asin(1/8 / 24) = 0.298417
        // degrees, 0.447625 degrees more. Rod 394.888049 mm, 1.188798 mm axial, 0.408366 turns, to the eighth 3/8, 2 1/4 flats.
        ToePlan plan = ToePlanner.Plan(ToeCars.Demo.Car(ToeCars.Total(-0.125), ToeCars.Total(0.0625), share));
        ToeMove move = Assert.Single(plan.Moves);
        Assert.Equal(side, move.Side);
        Assert.Equal(0.298417, move.Want!.Value.Degrees, Degrees);
        Assert.Equal(394.888049, move.Wanted!.Value.Millimeters, Mm);
        Assert.Equal(0.408366, move.ExactTurns!.Value, Turns);
        Assert.Equal((0.375, 2.25), (move.Turns, move.Flats));

        // 3/8 turn is 1.091667 mm axial: 394.790978 mm, 0.411060 degrees in all, the wheel at 0.261852 degrees.
        Assert.Equal(0.261852, plan.After!.Value[side].Degrees, Degrees);
        Assert.Equal(-0.149208, plan.After.Value[side == CarSide.Left ? CarSide.Right : CarSide.Left].Degrees, Degrees);
    }

    [Fact]
    public void Wheels_measured_each_turn_each_to_its_own()
    {
        // Left from 1/8 in out, right from 1/16 in in, both to 1/32 in in: 0.373021 degrees more and 0.074604 degrees less.
        ToePlan plan = ToePlanner.Plan(ToeCars.Demo.Car(ToeCars.Each(-0.125, 0.0625), ToeCars.Each(0.03125, 0.03125)));
        Assert.Equal(0.340290, plan.Moves[0].ExactTurns!.Value, Turns);
        Assert.Equal((0.375, TurnDirection.Counterclockwise), (plan.Moves[0].Turns, plan.Moves[0].Direction));
        Assert.Equal(-0.068039, plan.Moves[1].ExactTurns!.Value, Turns);
        Assert.Equal((-0.125, 0.75), (plan.Moves[1].Turns, plan.Moves[1].Flats));
        Assert.Equal(TurnDirection.Clockwise, plan.Moves[1].Direction);
    }

    [Fact]
    public void Wheels_that_differ_take_different_turns()
    {
        // An arm of 5 in on the right: the rod for 0.223812 degrees is 0.494953 mm longer, 0.495266 mm axial, 0.170130 turns.
        ToeRequest request = ToeCars.Demo.Car(ToeCars.Total(-0.125), ToeCars.Total(0.0625));
        ToePlan plan = ToePlanner.Plan(request with { Right = ToeCars.Demo.OnCar(CarSide.Right, arm: 127) });
        Assert.Equal(0.204156, plan.Moves[0].ExactTurns!.Value, Turns);
        Assert.Equal(0.170130, plan.Moves[1].ExactTurns!.Value, Turns);
        Assert.Equal([0.25, 0.125], plan.Moves.Select(move => move.Turns));
    }

    [Fact]
    public void No_change_is_no_turn()
    {
        ToePlan plan = ToePlanner.Plan(ToeCars.Demo.Car(ToeCars.Total(0.0625), ToeCars.Total(0.0625)));
        Assert.All(plan.Moves, move =>
        {
            Assert.Equal((MoveOutcome.Holds, 0.0, 0.0), (move.Outcome, move.Turns, move.Flats));
            Assert.Null(move.Direction);
            Assert.Equal(0, move.ExactTurns!.Value, 1e-9);
            Assert.Equal(0, move.LeftOver!.Value.Degrees, 1e-9);
            Assert.Equal(move.Now.Degrees, move.After!.Value.Degrees, 1e-9);
        });
        Assert.True(plan.Holds);
    }

    [Theory]
    [InlineData(0.18, 0)]
    [InlineData(0.19, 0.125)]
    [InlineData(-0.18, 0)]
    [InlineData(-0.19, -0.125)]
    public void A_change_under_a_sixteenth_of_a_turn_is_left_over(double longer, double turns)
    {
        // A turn of the twin is 3 mm: a sixteenth is 0.1875 mm.
        ToeMove move = ToeCars.Twin.MoveBy(longer);
        Assert.Equal(longer / 3, move.ExactTurns!.Value, Turns);
        Assert.Equal(turns, move.Turns);
        Assert.Equal(turns == 0, move.Direction is null);
        Assert.False(double.IsNegative(move.Turns!.Value) && turns == 0, "no turn has no sign");
        Assert.Equal((move.Want!.Value - move.ToeAt(turns)!.Value).Degrees, move.LeftOver!.Value.Degrees, 1e-9);
    }

    [Theory]
    [InlineData(CarSide.Left)]
    [InlineData(CarSide.Right)]
    public void Camber_and_an_inclined_axis_change_what_a_turn_of_the_upright_does(CarSide side)
    {
        // The axis leans inward by i = 12 degrees, the wheel outward by c = 2 degrees. The arm of 150 mm points back along the car and
        // the rod of 256 mm lies square to it and to the axis: AC^2 = 150^2 + 256^2, and half a degree more at A gives the rod. Turned
        // by w about the axis, the spin axis has cos(i+c) sin(w) along the car, sin(i+c) sin(i) + cos(i+c) cos(i) cos(w) across it.
        (double i, double c, double w) = (12 * Math.PI / 180, 2 * Math.PI / 180, 0.5 * Math.PI / 180);
        double across = Math.Sqrt(150 * 150 + 256 * 256);
        double rod = Math.Sqrt(150 * 150 + across * across - 2 * 150 * across * Math.Cos(Math.Acos(150 / across) + w));
        double along = Math.Cos(i + c) * Math.Sin(w);
        double toe = Math.Atan(along / (Math.Sin(i + c) * Math.Sin(i) + Math.Cos(i + c) * Math.Cos(i) * Math.Cos(w)));
        Assert.Equal(0.48544, toe * 180 / Math.PI, Degrees);

        Triple outer = new(-150, 0, 0);
        ToeWheel wheel = ToeWheel.OfInclination(side, 12, 0, default, outer, outer.Plus(new Triple(0, -Math.Cos(i), -Math.Sin(i)), 256));
        ToeRod turned = new ToeRodCase(ToeCars.Twin, false) { Present = Dim.OfMm(256) }.OnCar(wheel, c);
        ToeMove move = ToePlanner.Plan(new ToeRequest
        {
            Now = default,
            Want = default(WheelToes).With(side, Angle.FromRadians(toe)),
            Share = side == CarSide.Left ? ToeShare.LeftOnly : ToeShare.RightOnly,
            Left = turned,
            Right = turned,
        }).Moves.Single();
        Assert.Equal(rod, move.Wanted!.Value.Millimeters, 1e-6);
        Assert.Equal((rod - 256) / 3, move.ExactTurns!.Value, 1e-6);
    }

    [Fact]
    public void Toe_per_step_is_that_of_an_eighth_longer_from_the_present_length()
    {
        // The twin's rod of 256 mm gets 0.375 mm longer.
        ToeMove move = ToeCars.Twin.MoveBy(1);
        double toe = ToeCars.TurnOfArm(ToeCars.Arm, ToeCars.RodAngle, 256, 256.375);
        Assert.Equal(toe, move.ToePerStep!.Value.Radians, 1e-12);
        Assert.Equal(toe, move.ToeAt(0.125)!.Value.Radians, 1e-12);
    }

    /// <summary>How much more thread shows after a move.</summary>
    private static double Shown(MovedJoint joint) => (joint.Showing - joint.ShowingNow).Millimeters;
}
