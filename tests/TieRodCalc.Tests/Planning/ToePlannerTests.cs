using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>How a change of toe is split, rods with one threaded joint, warnings, and what no job can ask for.</summary>
public class ToePlannerTests
{
    private const double Arm = 150;

    private static readonly RodCase s_rod = CheckCases.OpenInnerBore.Rod;

    [Fact]
    public void A_total_is_split_equally_between_rods_that_are_alike()
    {
        ToePlan plan = Plan(ToeShare.BothRods, -0.25, -0.25, 0.15, 0.15);
        Assert.Equal([CarSide.Left, CarSide.Right], plan.Moves.Select(move => move.Side));
        Assert.Equal(plan.Moves[0].ExactTurns!.Value, plan.Moves[1].ExactTurns!.Value, 1e-12);
        Assert.Equal(plan.Moves[0].After!.Value.Radians + plan.Moves[1].After!.Value.Radians, plan.After!.Value.Total.Radians, 1e-12);
        Assert.Null(plan.Reachable);
        Assert.True(plan.Holds);
    }

    [Fact]
    public void The_car_in_a_mirror_is_turned_the_same()
    {
        ToePlan plan = Plan(ToeShare.BothRods, -0.4, 0.7, 0.1, -0.2);
        ToePlan mirrored = Plan(ToeShare.BothRods, 0.7, -0.4, -0.2, 0.1);
        Assert.Equal(plan.Moves[0].ExactTurns!.Value, mirrored.Moves[1].ExactTurns!.Value, 1e-9);
        Assert.Equal(plan.Moves[1].ExactTurns!.Value, mirrored.Moves[0].ExactTurns!.Value, 1e-9);
        Assert.Equal(plan.Moves[0].Direction, mirrored.Moves[1].Direction);
    }

    [Theory]
    [InlineData(ToeShare.LeftOnly)]
    [InlineData(ToeShare.RightOnly)]
    public void One_rod_alone_gives_the_same_total(ToeShare share)
    {
        Length width = Length.FromMillimeters(610);
        ToePlan alone = Plan(share, -0.4, 0.1, 0.3, 0.2);
        ToeMove move = Assert.Single(alone.Moves);
        WheelToes exact = alone.Now.With(move.Side, move.ToeAt(move.ExactTurns!.Value)!.Value);
        Assert.Equal(alone.Want.Across(width).Millimeters, exact.Across(width).Millimeters, 1e-9);
        Assert.Equal(alone.After!.Value[Other(move.Side)], alone.Now[Other(move.Side)]);
    }

    [Fact]
    public void What_can_be_turned_is_added_up_where_one_rod_runs_out()
    {
        ToePlan plan = Plan(ToeShare.BothRods, 0, 0, 8, 0.5);
        Assert.Equal((MoveOutcome.Refused, MoveOutcome.Holds), (plan.Moves[0].Outcome, plan.Moves[1].Outcome));
        Assert.Null(plan.After);
        Assert.Equal(
            plan.Moves[0].Refusal!.ReachableToe!.Value.Radians + plan.Moves[1].After!.Value.Radians, plan.Reachable!.Value.Total.Radians, 1e-12);
        Assert.False(plan.Holds);
    }

    [Fact]
    public void Toe_that_no_wheel_can_take_over_alone_is_out_of_reach()
    {
        ToePlan plan = Plan(ToeShare.LeftOnly, 0, -80, 60, 60);
        Assert.Equal(MoveOutcome.OutOfReach, plan.Moves[0].Outcome);
        Assert.Null(plan.Moves[0].Want);
        Assert.Null(plan.After);
        Assert.Null(plan.Reachable);
    }

    [Fact]
    public void Rod_and_steering_that_do_not_go_together_and_a_rod_in_line_are_told_apart()
    {
        SteeringGeometry far = SteeringGeometry.FromArm(
            CarSide.Left, Mm(100), JointPlace.BehindAxle, Angle.Zero, Mm(900));
        Assert.Equal(MoveOutcome.PresentOutOfReach, Single(s_rod, far).Outcome);
        SteeringGeometry line = SteeringGeometry.FromPoints(
            CarSide.Left, At(0, 600, 0), At(0, 600, 100), At(-150, 600, 0), At(s_rod.Target.Mm - 150, 600, 0));
        Assert.Equal(MoveOutcome.InLine, Single(s_rod, line).Outcome);
    }

    /// <summary>One joint: insertion follows from the length, and every limit from its definition.</summary>
    [Fact]
    public void Rods_with_one_threaded_joint_keep_their_own_limits()
    {
        int refused = 0;
        for (int index = 0; index < RandomCounts.Rods / 10; index++)
        {
            Random random = RandomCounts.For(index + 900_000);
            double Between(double low, double high) => low + (high - low) * random.NextDouble();

            double face = Between(50, 160);
            double tip = Between(120, 260);
            double thread = Between(50, 100);
            double depth = Between(26, Math.Min(60, face));
            double insertion = Between(24, depth);
            bool left = random.Next(2) == 0;
            bool halves = random.Next(2) == 0;
            SocketRod rod = Socket(left ? Hand.Left : Hand.Right, tip, thread, face, depth, halves ? JointKind.RodEnd : null, maxCut: 0);
            double length = tip + face - insertion;
            double change = Between(-14, 14);
            SteeringGeometry wheel = Square(length);
            ToeMove move = Move(rod, length, wheel, Toe.FromLength(wheel, Mm(length + change)).Toe!.Value);

            double step = halves ? 0.5 : 1;
            double turns = Math.Round(change / 1.5 / step) * step;
            double after = insertion - turns * 1.5;
            double slack = Math.Min(Math.Min(after - 1.5 - 0.75 - 24, depth - 0.75 - 24), Math.Min(depth - after, thread - after - 8));
            if (Math.Abs(slack) < 1e-5 || Math.Abs(Math.Abs(change / 1.5 / step % 1) - 0.5) < 1e-6)
            {
                continue;
            }

            Assert.Equal(TurnedPart.OuterEnd, move.Part);
            Assert.Equal(turns, move.Turns);
            Assert.Equal(slack < 0 ? MoveOutcome.Refused : MoveOutcome.Holds, move.Outcome);
            Assert.Equal(turns == 0 ? null : left == turns > 0 ? TurnDirection.Clockwise : TurnDirection.Counterclockwise, move.Direction);
            if (slack > 0)
            {
                MovedJoint joint = Assert.Single(move.Joints);
                Assert.Equal(thread - after, joint.Showing.Millimeters, 1e-6);
                Assert.Equal(Math.Min(depth, after - 1.5) - Math.Max(0.75, after - thread), joint.Engaged.Millimeters, 1e-6);
                Assert.Equal(thread - after - 8, joint.NutRoom.Millimeters, 1e-6);
            }
            else
            {
                refused++;
            }
        }

        Assert.InRange(refused, RandomCounts.Rods / 100, RandomCounts.Rods / 10);
    }

    [Fact]
    public void A_socket_that_is_too_shallow_engages_too_little_wherever_it_is_turned()
    {
        SocketRod rod = Socket(Hand.Right, 200, 80, 100, depth: 20, null, maxCut: 0);
        ToeMove move = Move(rod, 280, Square(280), Angle.FromDegrees(0.6));
        Assert.True(move.PastALimit);
        Assert.Equal((Limit.Engagement, RodSide.Inner), (move.Refusal!.Limit, move.Refusal.End!.Value));
    }

    [Fact]
    public void Each_warning_is_there_exactly_where_it_should()
    {
        ToeWarningCode[] Codes(ToePlan plan) => [.. plan.Warnings.Select(warning => warning.Code)];

        ToePlan both = Plan(ToeShare.BothRods, 0, 0, 0.1, 0.1, total: true);
        Assert.Equal(
            [
                ToeWarningCode.PresentLengthPlanned, ToeWarningCode.SettingFromPlan, ToeWarningCode.PresentLengthPlanned,
                ToeWarningCode.SettingFromPlan, ToeWarningCode.HalvesAssumed,
            ],
            Codes(both));
        Assert.Equal([CarSide.Left, CarSide.Left, CarSide.Right, CarSide.Right, null], both.Warnings.Select(warning => warning.Side));
        Assert.Contains(ToeWarningCode.SteeringWheelLeavesCenter, Codes(Plan(ToeShare.LeftOnly, 0, 0, 0.1, 0.1)));
        ToePlan one = Plan(ToeShare.LeftOnly, 0, 0, 0.1, 0.1, oneRod: true);
        Assert.Equal(CarSide.Right, Assert.Single(one.Warnings, warning => warning.Code == ToeWarningCode.WheelHeld).Side);
        Assert.DoesNotContain(ToeWarningCode.SteeringWheelLeavesCenter, Codes(one));
        Assert.DoesNotContain(
            ToeWarningCode.PresentLengthPlanned, Codes(Plan(ToeShare.LeftOnly, 0, 0, 0.1, 0.1, measured: true)));

        ToePlan unlocked = Plan(ToeShare.LeftOnly, 0, 0, 0.1, 0.1, rod: s_rod with { Inner = s_rod.Inner with { Nut = null }, Outer = s_rod.Outer with { Nut = null } });
        Assert.Contains(ToeWarningCode.NotLocked, Codes(unlocked));
        ToePlan notBuildable = Plan(ToeShare.LeftOnly, 0, 0, 0.1, 0.1, rod: s_rod with { Target = Dim.OfMm(340) });
        Assert.Contains(ToeWarningCode.NotBuildable, Codes(notBuildable));
        Assert.DoesNotContain(ToeWarningCode.SettingFromPlan, Codes(notBuildable));

        // Toward shorter the outer nut runs out of thread at 6.875 mm more insertion: 4 turns leave 0.875 mm of the pitch of 1.5.
        ToePlan near = Plan(ToeShare.LeftOnly, 0, 0, -4.6, 0, rod: s_rod with { TipGap = Dim.OfMm(0) });
        ToeWarning room = Assert.Single(near.Warnings, warning => warning.Code == ToeWarningCode.LittleRoomForTheNut);
        Assert.Equal((RodSide.Outer, 0.875), (room.End!.Value, Math.Round(room.Value!.Value.Millimeters, 6)));
    }

    [Fact]
    public void What_no_job_can_ask_for_throws()
    {
        SteeringGeometry wheel = Square(s_rod.Target.Mm);
        ToeRod rod = On(s_rod, wheel);
        WheelToes zero = default;
        void Throws(ToeRequest request) => Assert.Throws<ArgumentException>(() => ToePlanner.Plan(request));
        ToeRequest good = new() { Now = zero, Want = zero, Share = ToeShare.LeftOnly, Left = rod };
        Assert.True(ToePlanner.Plan(good).Holds);
        Throws(good with { Share = ToeShare.BothRods });
        Throws(good with { Share = ToeShare.RightOnly });
        Throws(good with { Left = rod with { Rod = null } });
        Throws(good with { Left = rod with { SocketRod = Socket(Hand.Right, 200, 80, 100, 40, null, 0) } });
        Throws(good with { Left = rod with { Present = Length.Zero } });
        Throws(good with { Left = rod with { Camber = Angle.FromDegrees(90) } });
        Throws(good with { Now = new WheelToes(Angle.FromDegrees(90), Angle.Zero) });
        Assert.Throws<ArgumentNullException>(() => ToePlanner.Plan(null!));
    }

    private static CarSide Other(CarSide side) => side == CarSide.Left ? CarSide.Right : CarSide.Left;

    private static ToePlan Plan(
        ToeShare share, double left, double right, double wantLeft, double wantRight, bool total = false, bool oneRod = false, bool measured = false, RodCase? rod = null)
    {
        RodCase made = rod ?? s_rod;
        ToeRod OnSide(CarSide side) => On(made, Square(made.Target.Mm, side)) with { PresentMeasured = measured };
        return ToePlanner.Plan(new ToeRequest
        {
            Now = new WheelToes(Angle.FromDegrees(left), Angle.FromDegrees(right)),
            Want = new WheelToes(Angle.FromDegrees(wantLeft), Angle.FromDegrees(wantRight)),
            Share = share,
            OnlyTotalMeasured = total,
            OneRod = oneRod,
            Left = OnSide(CarSide.Left),
            Right = OnSide(CarSide.Right),
        });
    }

    private static ToeRod On(RodCase rod, SteeringGeometry wheel) => new()
    {
        Rod = rod.ToRod(),
        Request = rod.ToRequest(),
        Present = rod.Target.ToLength(),
        Steering = wheel,
    };

    private static ToeMove Single(RodCase rod, SteeringGeometry wheel) => ToePlanner.Plan(new ToeRequest
    {
        Now = default,
        Want = new WheelToes(Angle.FromDegrees(0.2), Angle.Zero),
        Share = ToeShare.LeftOnly,
        Left = On(rod, wheel),
    }).Moves[0];

    private static ToeMove Move(SocketRod rod, double length, SteeringGeometry wheel, Angle want) => ToePlanner.Plan(new ToeRequest
    {
        Now = default,
        Want = new WheelToes(want, Angle.Zero),
        Share = ToeShare.LeftOnly,
        Left = new ToeRod { SocketRod = rod, Request = s_rod.ToRequest(), Present = Mm(length), Steering = wheel },
    }).Moves[0];

    private static SteeringGeometry Square(double rod, CarSide side = CarSide.Left) =>
        SteeringGeometry.FromArm(side, Mm(Arm), JointPlace.BehindAxle, Angle.Zero, Mm(rod));

    private static SocketRod Socket(Hand hand, double tip, double thread, double face, double depth, JointKind? outer, double maxCut)
    {
        ThreadDesignation designation = new(ThreadSize.Metric(Mm(16), Mm(1.5)), hand);
        return new SocketRod(
            new ThreadedEnd
            {
                Info = new PartInfo("inner"),
                Thread = designation,
                CenterToTip = new Measured(Mm(tip)),
                ThreadLength = new Measured(Mm(thread)),
                MaxCut = new Measured(Mm(maxCut)),
            },
            new SocketEnd
            {
                Info = new PartInfo("outer"),
                CenterToFace = new Measured(Mm(face)),
                Socket = new TappedHole { Thread = designation, Depth = new Measured(Mm(depth)), Bore = Bore.Closed },
                Joint = outer,
            },
            new JamNut { Info = new PartInfo("nut"), Thread = designation, Thickness = new Measured(Mm(8)) });
    }

    private static Length Mm(double mm) => Length.FromMillimeters(mm);

    private static Point At(double x, double y, double z) => new(Mm(x), Mm(y), Mm(z));
}
