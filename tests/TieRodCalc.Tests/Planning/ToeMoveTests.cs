using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Tests.Steering;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Planning;

/// <summary>Moves of random rods on random wheels, held against the definitions.</summary>
public class ToeMoveTests(ITestOutputHelper output)
{
    private const double Radians = 1e-9;
    private const double Mm = 1e-6;
    private const double Turns = 1e-6;

    /// <summary>A limit that is met by less than this may count either way.</summary>
    private const double Edge = 5e-6;

    private static readonly Lazy<(ToeCase Case, ToeMove Move)[]> s_moves = new(() =>
    {
        (ToeCase, ToeMove)[] moves = new (ToeCase, ToeMove)[RandomCounts.Rods];
        Parallel.For(0, moves.Length, index =>
        {
            ToeCase drawn = ToeCase.Draw(index);
            moves[index] = (drawn, drawn.Move());
        });
        return moves;
    });

    private static IEnumerable<(ToeCase Case, ToeMove Move)> Known => s_moves.Value.Where(each => each.Case.Plan.Solution is not null);

    [Fact]
    public void Every_kind_of_outcome_and_every_limit_is_among_them()
    {
        output.WriteLine(RandomCounts.Description);
        int Count(Func<ToeMove, bool> which) => s_moves.Value.Count(each => which(each.Move));
        int least = RandomCounts.Rods / 500;
        foreach (MoveOutcome outcome in (MoveOutcome[])[MoveOutcome.Holds, MoveOutcome.Refused, MoveOutcome.NotChecked])
        {
            Assert.True(Count(move => move.Outcome == outcome) > least, $"{outcome}");
        }

        foreach (TurnedPart part in Enum.GetValues<TurnedPart>())
        {
            Assert.True(Count(move => move.Part == part && move.Outcome != MoveOutcome.NotChecked) > least / 8, $"{part}");
        }

        Assert.True(Count(move => move is { PastALimit: true, Refusal: not null }) > least / 2);
        foreach (Limit limit in Enum.GetValues<Limit>().Except([Limit.Cut]))
        {
            Assert.True(Count(move => move.Refusal?.Limit == limit) > 0, $"{limit}");
        }
    }

    [Fact]
    public void Length_turns_and_toe_agree_with_a_root_finder() => Assert.All(s_moves.Value, each =>
    {
        (ToeCase drawn, ToeMove move) = each;
        double wanted = drawn.WantedLength();
        double exact = drawn.TurnsTo(wanted);
        double turns = Math.Round(exact / drawn.Step) * drawn.Step;
        Assert.Equal(wanted, move.Wanted!.Value.Millimeters, Mm);
        Assert.Equal(exact, move.ExactTurns!.Value, Turns);
        if (Math.Abs(Math.Abs(exact / drawn.Step % 1) - 0.5) < 1e-5)
        {
            return;
        }

        Assert.Equal(turns, move.Turns!.Value);
        Assert.Equal(turns == 0 ? null : drawn.DirectionOf(turns), move.Direction);
        Assert.Equal(drawn.DirectionOf(1), move.Lengthens);
        Assert.Equal(drawn.Step, move.Step);
        Assert.Equal(drawn.BySleeve, move.Part == TurnedPart.Sleeve);
        if (move.After is { } after)
        {
            Assert.Equal(drawn.ToeAfter(turns), after.Radians, Radians);
            Assert.Equal(drawn.Want - after.Radians, move.LeftOver!.Value.Radians, Radians);
        }

        Assert.Equal(drawn.ToeAfter(0.7), move.ToeAt(0.7)!.Value.Radians, Radians);
        Assert.Equal(drawn.Now, move.ToeAt(0)!.Value.Radians, Radians);
        Assert.Equal(drawn.ToeAfter(drawn.Step) - drawn.Now, move.ToePerStep!.Value.Radians, Radians);
    });

    [Fact]
    public void It_is_refused_exactly_where_a_limit_is_missed_after_it() => Assert.All(Known, each =>
    {
        (ToeCase drawn, ToeMove move) = each;
        double least = drawn.Slacks(move.Turns!.Value).Min(slack => slack.Left);
        if (Math.Abs(least) > Edge)
        {
            Assert.Equal(least < 0 ? MoveOutcome.Refused : MoveOutcome.Holds, move.Outcome);
        }

        double now = drawn.Slacks(0).Min(slack => slack.Left);
        if (Math.Abs(now) > Edge)
        {
            Assert.Equal(now < 0, move.PastALimit);
        }

        Assert.Equal(move.Outcome == MoveOutcome.Refused, move.Refusal is not null);
        Assert.Equal(move.Outcome == MoveOutcome.Refused, move.After is null);
    });

    [Fact]
    public void What_is_reachable_is_the_last_step_that_keeps_every_limit_and_the_next_one_misses_the_one_that_is_named() =>
        Assert.All(Known.Where(each => each.Move.Refusal is not null), each =>
        {
            (ToeCase drawn, ToeMove move) = each;
            MoveRefusal refusal = move.Refusal!;
            double beyond = move.PastALimit ? 0 : refusal.ReachableTurns + Math.Sign(move.Turns!.Value) * drawn.Step;
            Assert.True(Missed(beyond), $"{refusal.Limit} {refusal.End} holds beyond");
            Assert.True(move.PastALimit || drawn.Slacks(refusal.ReachableTurns).Min(slack => slack.Left) > -Edge);
            Assert.Equal(drawn.ToeAfter(refusal.ReachableTurns), refusal.ReachableToe!.Value.Radians, Radians);
            Assert.Equal(0, refusal.ReachableTurns / drawn.Step % 1);

            bool Missed(double turns) => drawn.Slacks(turns).Any(
                slack => slack.Limit == refusal.Limit && slack.End == refusal.End && slack.Left < Edge);
        });

    [Fact]
    public void The_joints_are_those_of_the_definitions() => Assert.All(
        Known.Where(each => each.Move.Outcome == MoveOutcome.Holds), each =>
        {
            (ToeCase drawn, ToeMove move) = each;
            Setting now = drawn.SettingAfter(0);
            Setting then = drawn.SettingAfter(move.Turns!.Value);
            Assert.Equal([RodSide.Inner, RodSide.Outer], move.Joints.Select(joint => joint.End));
            foreach (MovedJoint moved in move.Joints)
            {
                JointCase joint = drawn.Rod.Joint(moved.End);
                double cut = drawn.Cuts.Of(moved.End);
                double thread = joint.ThreadLength.Mm - cut;
                Assert.Equal(thread - now.Of(moved.End), moved.ShowingNow.Millimeters, Mm);
                Assert.Equal(thread - then.Of(moved.End), moved.Showing.Millimeters, Mm);
                Assert.Equal(LimitTable.Engaged(joint, then.Of(moved.End), cut), moved.Engaged.Millimeters, Mm);
                Assert.Equal(LimitTable.Room(joint, then.Of(moved.End), cut), moved.NutRoom.Millimeters, Mm);
                Assert.Equal(drawn.Rod.RequiredMm(joint), moved.Required.Millimeters, 1e-5);
                Assert.Equal(joint.Nut is null, moved.NutLoosens is null);
            }

            foreach ((Travel travel, int way) in new[] { (move.ShorterAfter!, -1), (move.LongerAfter!, 1) })
            {
                Assert.True(drawn.Slacks(move.Turns.Value + way * travel.Turns).Min(slack => slack.Left) > -Edge);
                Assert.True(drawn.Slacks(move.Turns.Value + way * (travel.Turns + 0.01)).Min(slack => slack.Left) < 0);
            }
        });

    [Fact]
    public void How_far_it_goes_either_way_is_where_the_first_limit_is_met() => Assert.All(
        Known.Where(each => !each.Move.PastALimit), each =>
        {
            (ToeCase drawn, ToeMove move) = each;
            foreach ((Travel travel, int way) in new[] { (move.Shorter!, -1), (move.Longer!, 1) })
            {
                Assert.True(drawn.Slacks(way * travel.Turns).Min(slack => slack.Left) > -Edge);
                Assert.True(drawn.Slacks(way * (travel.Turns + 0.01)).Min(slack => slack.Left) < 0);
            }
        });

    [Fact]
    public void Without_a_planned_setting_nothing_is_said_of_limits() => Assert.All(
        s_moves.Value.Where(each => each.Case.Plan.Solution is null), each =>
        {
            Assert.Equal(MoveOutcome.NotChecked, each.Move.Outcome);
            Assert.Empty(each.Move.Joints);
            Assert.Null(each.Move.Refusal);
            Assert.Null(each.Move.Shorter);
            Assert.NotNull(each.Move.After);
        });

    [Fact]
    public void Asked_again_after_the_move_there_is_nothing_left_to_turn() => Assert.All(
        Known.Where(each => each.Move.Outcome == MoveOutcome.Holds).Take(RandomCounts.Rods / 10), each =>
        {
            (ToeCase drawn, ToeMove move) = each;
            double length = drawn.Rod.LengthOf(drawn.Rod.AxialOf(drawn.Present) + move.Turns!.Value * drawn.PerTurn);
            Triple turned = drawn.Wheel.JointAfter(drawn.Wheel.TurnFor(length));
            ToeCase again = drawn with { Present = length, Wheel = drawn.Wheel with { Outer = turned }, Now = move.After!.Value.Radians };
            ToeMove none = again.Move();
            Assert.Equal(0, none.Turns);
            Assert.Null(none.Direction);
            Assert.Equal(MoveOutcome.Holds, none.Outcome);
        });
}
