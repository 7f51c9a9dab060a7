using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>Rods whose length changes by turning an end: those that the sleeve cannot adjust, and those with one threaded joint.</summary>
public class ToeEndTests
{
    private const double Turns = 0.00001;
    private const double Mm = 0.00001;

    /// <summary>
    /// The pitch is 1.5 mm, so that 1.2 mm are 0.8 of a turn: by halves that is a whole turn, by whole turns as well; 0.6 mm are 0.4 of a
    /// turn, by halves half a turn, by whole turns none.
    /// </summary>
    [Theory]
    [InlineData(JointKind.TaperedStud, JointKind.RodEnd, TurnedPart.OuterEnd, 0.5, 0.5)]
    [InlineData(JointKind.RodEnd, JointKind.TaperedStud, TurnedPart.InnerEnd, 0.5, 0.5)]
    [InlineData(JointKind.RodEnd, JointKind.RodEnd, TurnedPart.OuterEnd, 0.5, 0.5)]
    [InlineData(JointKind.TaperedStud, JointKind.TaperedStud, TurnedPart.OuterEnd, 1, 0)]
    [InlineData(null, null, TurnedPart.OuterEnd, 1, 0)]
    [InlineData(null, JointKind.RodEnd, TurnedPart.OuterEnd, 0.5, 0.5)]
    [InlineData(JointKind.RodEnd, null, TurnedPart.InnerEnd, 0.5, 0.5)]
    public void With_one_hand_and_pitch_the_end_that_goes_by_halves_is_turned(
        JointKind? inner, JointKind? outer, TurnedPart part, double step, double turns)
    {
        RodCase rod = ToeCars.Rigid.WithInner(end => end with { Joint = inner }).WithOuter(end => end with { Joint = outer });
        ToeMove move = rod.MoveBy(0.6);
        Assert.Equal((MoveOutcome.Holds, part, step, turns), (move.Outcome, move.Part, move.Step, move.Turns));
        Assert.Equal(0.4, move.ExactTurns!.Value, Turns);
        Assert.Null(move.Flats);

        // Only the end that is turned comes out of the sleeve, by 1.5 mm a turn; before, each end shows 50 - 32 = 18 mm.
        double[] shown = [.. move.Joints.Select(joint => joint.Showing.Millimeters)];
        Assert.Equal(part == TurnedPart.InnerEnd ? 18 + 1.5 * turns : 18, shown[0], Mm);
        Assert.Equal(part == TurnedPart.OuterEnd ? 18 + 1.5 * turns : 18, shown[1], Mm);
        Assert.All(move.Joints, joint => Assert.Equal(18, joint.ShowingNow.Millimeters, Mm));
    }

    [Fact]
    public void A_bent_rod_end_goes_by_whole_turns()
    {
        RodCase rod = ToeCars.Rigid.WithInner(Bent).WithOuter(end => end with { Joint = JointKind.RodEnd });
        Assert.Equal((TurnedPart.OuterEnd, 0.5), PartAndStep(rod.MoveBy(0.6)));
        Assert.Equal((TurnedPart.OuterEnd, 1), PartAndStep(ToeCars.Rigid.WithOuter(Bent).MoveBy(0.6)));
        Assert.Equal((TurnedPart.InnerEnd, 0.5), PartAndStep(
            ToeCars.Rigid.WithOuter(Bent).WithInner(end => end with { Joint = JointKind.RodEnd }).MoveBy(0.6)));

        static JointCase Bent(JointCase end) => end with { Joint = JointKind.RodEnd, Offset = Dim.OfMm(10) };
    }

    [Theory]
    [InlineData(Hand.Right, 1.5, TurnDirection.Counterclockwise)]
    [InlineData(Hand.Right, -1.5, TurnDirection.Clockwise)]
    [InlineData(Hand.Left, 1.5, TurnDirection.Clockwise)]
    [InlineData(Hand.Left, -1.5, TurnDirection.Counterclockwise)]
    public void Seen_from_its_own_ball_a_right_hand_end_comes_out_counterclockwise(Hand hand, double longer, TurnDirection direction)
    {
        // Whichever end is turned: the view from its own ball is the same.
        foreach (JointKind? kind in (JointKind?[])[JointKind.RodEnd, null])
        {
            RodCase rod = ToeCars.Rigid
                .WithInner(end => end with { Joint = kind, Thread = end.Thread with { Hand = hand } })
                .WithOuter(end => end with { Joint = null, Thread = end.Thread with { Hand = hand } });
            ToeMove move = rod.MoveBy(longer);
            Assert.Equal(kind is null ? TurnedPart.OuterEnd : TurnedPart.InnerEnd, move.Part);
            Assert.Equal((longer / 1.5, direction), (move.Turns, move.Direction));
        }

        RodCase rack = ToeCars.Rack.WithInner(end => end with { Thread = end.Thread with { Hand = hand } });
        foreach (JointKind kind in (JointKind[])[JointKind.RodEnd, JointKind.TaperedStud])
        {
            ToeMove move = rack.WithInner(end => end with { Joint = kind }).MoveBy(longer, oneJoint: true);
            Assert.Equal(kind == JointKind.RodEnd ? TurnedPart.InnerEnd : TurnedPart.OuterEnd, move.Part);
            Assert.Equal((longer / 1.5, direction), (move.Turns, move.Direction));
        }
    }

    [Theory]
    [InlineData(null, JointKind.TaperedStud, TurnedPart.OuterEnd, 1)]
    [InlineData(null, JointKind.RodEnd, TurnedPart.OuterEnd, 0.5)]
    [InlineData(JointKind.RodEnd, JointKind.TaperedStud, TurnedPart.InnerEnd, 0.5)]
    [InlineData(JointKind.RodEnd, JointKind.RodEnd, TurnedPart.OuterEnd, 0.5)]
    [InlineData(JointKind.TaperedStud, null, TurnedPart.OuterEnd, 1)]
    public void With_one_threaded_joint_whichever_end_is_turned_moves_that_joint(
        JointKind? inner, JointKind? outer, TurnedPart part, double step)
    {
        // 200 + 45 - 218 = 27 mm are in. A turn longer leaves 25.5 mm: 60 - 25.5 = 34.5 mm show, 27.5 mm outside the nut, and
        // 25.5 - 1.5 - 0.75 = 23.25 mm are engaged of the 21 mm that are required.
        RodCase rod = ToeCars.Rack.WithInner(end => end with { Joint = inner }).WithOuter(end => end with { Joint = outer });
        ToeMove move = rod.MoveBy(1.5, oneJoint: true);
        Assert.Equal((MoveOutcome.Holds, 1.0), (move.Outcome, move.Turns));
        Assert.Equal((part, step), PartAndStep(move));
        Assert.Null(move.Plan);
        Assert.Null(move.Flats);
        MovedJoint joint = Assert.Single(move.Joints);
        Assert.Equal(RodSide.Inner, joint.End);
        Assert.Equal(33, joint.ShowingNow.Millimeters, Mm);
        Assert.Equal(34.5, joint.Showing.Millimeters, Mm);
        Assert.Equal(27.5, joint.NutRoom.Millimeters, Mm);
        Assert.Equal(23.25, joint.Engaged.Millimeters, Mm);
        Assert.Equal(21, joint.Required.Millimeters, Mm);
        Assert.Equal(1.5, joint.Pitch.Millimeters, Mm);
        Assert.Equal(TurnDirection.Counterclockwise, joint.NutLoosens);

        // From 27 mm to 23.25 mm and to 30 mm.
        Assert.Equal((2.5, 2.0), (Math.Round(move.Longer!.Turns, 6), Math.Round(move.Shorter!.Turns, 6)));
        Assert.Equal((Limit.Engagement, RodSide.Inner), (move.Longer.EndsAt, move.Longer.End));
        Assert.Equal((Limit.ClosedBore, RodSide.Inner), (move.Shorter.EndsAt, move.Shorter.End));
    }

    [Theory]
    [InlineData(4.4, Limit.Engagement, 2)]
    [InlineData(-4.4, Limit.ClosedBore, -2)]
    public void With_one_threaded_joint_the_limits_are_those_of_that_joint(double longer, Limit limit, double reachable)
    {
        // 4.4 mm are 2.93 turns, a whole turn each: 3, of which 2 1/2 longer and 2 shorter can be made.
        ToeMove move = ToeCars.Rack.MoveBy(longer, oneJoint: true);
        Assert.Equal((MoveOutcome.Refused, Math.Sign(longer) * 3.0), (move.Outcome, move.Turns));
        MoveRefusal refusal = move.Refusal!;
        Assert.Equal((limit, RodSide.Inner, false), (refusal.Limit, refusal.End, move.PastALimit));
        Assert.Equal(reachable, refusal.ReachableTurns);
        Assert.Null(refusal.ReachableFlats);
        double toe = ToeCars.TurnOfArm(ToeCars.Arm, ToeCars.RodAngle, 218, 218 + 1.5 * reachable);
        Assert.Equal(toe, refusal.ReachableToe!.Value.Radians, 1e-12);
    }

    [Fact]
    public void A_bent_inner_end_makes_a_rod_with_one_joint_longer_by_less_than_its_thread_moves()
    {
        // Offset 15 mm: 218 mm axial are sqrt(218^2 + 15^2) = 218.515446 mm; a turn of 1.5 mm then gives 1.496486 mm.
        RodCase rod = ToeCars.Rack.WithInner(end => end with { Offset = Dim.OfMm(15) });
        ToeMove move = rod.MoveBy(1.496486, present: 218.515446, oneJoint: true);
        Assert.Equal(1, move.ExactTurns!.Value, Turns);
        Assert.Equal(33, move.Joints[0].ShowingNow.Millimeters, Mm);
    }

    [Theory]
    [InlineData(1.5)]
    [InlineData(0)]
    [InlineData(-1.5)]
    public void A_socket_too_shallow_for_the_required_engagement_is_refused(double longer)
    {
        // 21 mm are required, and 21.5 mm deep with 0.75 mm of countersink there are 20.75 mm: nowhere enough.
        RodCase rod = ToeCars.Rack.WithInner(end => end with { Depth = Dim.OfMm(21.5), Bore = Bore.Closed });
        ToeMove move = rod.MoveBy(longer, oneJoint: true);
        Assert.Equal(MoveOutcome.Refused, move.Outcome);
        Assert.Equal((RodSide.Inner, true), (move.Refusal!.End, move.PastALimit));
        Assert.Equal(0, move.Refusal.ReachableTurns);
        Assert.Equal(MoveOutcome.Holds, ToeCars.Rack.WithInner(end => end with { Depth = Dim.OfMm(30), Bore = Bore.Closed })
            .MoveBy(longer, oneJoint: true).Outcome);
    }

    [Fact]
    public void An_end_that_may_have_been_cut_leaves_one_joint_unchecked()
    {
        ToeMove move = ToeCars.Rack.WithInner(end => end with { MaxCut = Dim.OfMm(5) }).MoveBy(150, present: 100, oneJoint: true);
        Assert.Equal((MoveOutcome.NotChecked, 100.0), (move.Outcome, move.Turns));
        Assert.Empty(move.Joints);
        Assert.Null(move.Refusal);
        Assert.Null(move.Longer);
        Assert.NotNull(move.After);
    }

    private static (TurnedPart Part, double Step) PartAndStep(ToeMove move) => (move.Part, move.Step);
}
