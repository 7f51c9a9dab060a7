using TieRodCalc.Planning;
using TieRodCalc.Rods;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Planning;

/// <summary>Which moves of random rods are refused, and what is said of the joints, held against the definitions of the limits.</summary>
public class ToeLimitTests(ITestOutputHelper output)
{
    private const double Mm = 1e-6;
    private const double Radians = 1e-9;

    /// <summary>A limit that is missed by about the comparison constant may be seen either way: from and to in millimeters.</summary>
    private const double Held = -0.9e-6;
    private const double Missed = -2.1e-6;

    private const double KindShare = 0.01;

    private static readonly Lazy<IReadOnlyList<PlannedToe>> s_known = new(() => [.. PlannedToes.All.Where(planned => planned.Case.Rod.SettingKnown)]);

    [Fact]
    public void A_move_is_refused_exactly_where_a_limit_would_be_missed_after_it()
    {
        Findings findings = new();
        int edges = 0;
        foreach ((ToeCase drawn, _, ToeMove move) in s_known.Value)
        {
            double worst = drawn.Rod.Worst(move.Turns!.Value);
            bool edge = OnEdge(worst);
            edges += edge ? 1 : 0;
            MoveOutcome expected = worst < Missed ? MoveOutcome.Refused : MoveOutcome.Holds;
            findings.That(drawn, edge || move.Outcome == expected, $"worst {worst}", move.Outcome);
            findings.That(drawn, move.Outcome == MoveOutcome.Refused == move.Refusal is not null, "refusal", move.Refusal);
        }

        output.WriteLine($"{RandomCounts.Description}; {edges} at the edge");
        findings.AssertNone();
    }

    [Fact]
    public void Nothing_is_checked_where_the_setting_is_not_known()
    {
        Findings findings = new();
        foreach ((ToeCase drawn, _, ToeMove move) in PlannedToes.All.Where(planned => !planned.Case.Rod.SettingKnown))
        {
            bool bare = move is { Refusal: null, Shorter: null, Longer: null, Joints: [], After: not null };
            findings.That(drawn, bare && move.Outcome == MoveOutcome.NotChecked, "outcome", move);
        }

        findings.AssertNone();
    }

    [Fact]
    public void What_can_still_be_turned_is_the_most_steps_that_keep_every_limit()
    {
        Findings findings = new();
        int edges = 0;
        foreach ((ToeCase drawn, _, ToeMove move) in Refused(alreadyPassed: false))
        {
            MoveRefusal refusal = move.Refusal!;
            double reachable = refusal.ReachableTurns;
            double wanted = move.Turns!.Value;
            double further = reachable + Math.CopySign(move.Step, wanted);
            findings.That(
                drawn,
                Math.IEEERemainder(reachable, move.Step) == 0 && reachable * wanted >= 0 && Math.Abs(reachable) < Math.Abs(wanted),
                "reachable",
                reachable);
            findings.That(drawn, drawn.Rod.Worst(reachable) >= Missed, "a limit is missed at", reachable);
            edges += OnEdge(drawn.Rod.Worst(further)) ? 1 : 0;
            findings.That(drawn, drawn.Rod.Worst(further) < Held, "no limit is missed a step beyond", reachable);
            findings.Near(drawn, "flats", drawn.Rod.HasFlats ? Math.Abs(reachable) * 6 : null, refusal.ReachableFlats, 0);
            findings.Near(drawn, "toe", drawn.ToeAt(reachable), refusal.ReachableToe?.Radians, Radians);
        }

        output.WriteLine($"{RandomCounts.Description}; {edges} at the edge");
        findings.AssertNone();
    }

    [Fact]
    public void The_limit_named_is_the_first_that_is_met_on_the_way()
    {
        Findings findings = new();
        foreach ((ToeCase drawn, _, ToeMove move) in Refused(alreadyPassed: false))
        {
            (Slack After, double Way)[] ways =
            [
                .. drawn.Rod.Slacks(0).Zip(
                    drawn.Rod.Slacks(move.Turns!.Value), (now, after) => (after, Met(now, after, drawn, move.Turns.Value))),
            ];
            double first = ways.Min(limit => limit.Way);
            bool named = ways.Any(limit =>
                limit.After.Limit == move.Refusal!.Limit
                && limit.After.End == move.Refusal.End
                && limit.After.Left < Held
                && limit.Way <= first + Mm);
            findings.That(drawn, named, "limit", move.Refusal);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_rod_that_is_past_a_limit_says_so_and_names_it()
    {
        Findings findings = new();
        foreach ((ToeCase drawn, _, ToeMove move) in s_known.Value.Where(planned => planned.Move.Refusal is not null))
        {
            MoveRefusal refusal = move.Refusal!;
            double now = drawn.Rod.Worst(0);
            findings.That(drawn, OnEdge(now) || move.PastALimit == now < Missed, $"worst now {now}", refusal);
            if (move.PastALimit)
            {
                bool missed = drawn.Rod.Slacks(0).Any(
                    slack => slack.Limit == refusal.Limit && slack.End == refusal.End && slack.Left < Held);
                findings.That(drawn, missed, "the limit that is passed", refusal);
                findings.That(drawn, refusal.ReachableTurns == 0, "turns while a limit is passed", refusal);
                findings.Near(drawn, "toe now", drawn.Now, refusal.ReachableToe?.Radians, Radians);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void The_way_to_the_first_limit_agrees_both_ways()
    {
        Findings findings = new();
        foreach ((ToeCase drawn, _, ToeMove move) in s_known.Value)
        {
            foreach ((int sign, Travel travel) in new[] { (-1, move.Shorter!), (1, move.Longer!) })
            {
                double way = Math.Max(0, drawn.Rod.Slacks(0).Zip(drawn.Rod.Slacks(sign), (now, then) => Met(now, then, drawn, sign)).Min());
                double length = Math.Abs(drawn.Rod.LengthAt(sign * way / drawn.Rod.PerTurn) - drawn.Rod.Present.Mm);
                findings.Near(drawn, $"turns {sign}", way / drawn.Rod.PerTurn, travel.Turns, Mm / drawn.Rod.PerTurn);
                findings.Near(drawn, $"length {sign}", length, travel.Length.Millimeters, Mm);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void The_joints_after_the_move_are_as_the_definitions_say()
    {
        Findings findings = new();
        foreach ((ToeCase drawn, _, ToeMove move) in s_known.Value)
        {
            RodSide[] expected = move.Outcome == MoveOutcome.Holds ? [.. drawn.Rod.Joints] : [];
            findings.That(drawn, expected.SequenceEqual(move.Joints.Select(joint => joint.End)), "joints", move.Joints.Count);
            foreach (MovedJoint moved in move.Joints)
            {
                JointCase joint = drawn.Rod.Rod.Joint(moved.End);
                double cut = drawn.Rod.Cuts.Of(moved.End);
                double now = drawn.Rod.At(0).Of(moved.End);
                double after = drawn.Rod.At(move.Turns!.Value).Of(moved.End);
                TurnDirection? loosens = joint.Nut is null ? null
                    : joint.Thread.Sign > 0 ? TurnDirection.Counterclockwise
                    : TurnDirection.Clockwise;
                findings.Near(drawn, "showing now", joint.ThreadLength.Mm - cut - now, moved.ShowingNow.Millimeters, Mm);
                findings.Near(drawn, "showing", joint.ThreadLength.Mm - cut - after, moved.Showing.Millimeters, Mm);
                findings.Near(drawn, "engaged", LimitTable.Engaged(joint, after, cut), moved.Engaged.Millimeters, Mm);
                findings.Near(drawn, "nut room", LimitTable.Room(joint, after, cut), moved.NutRoom.Millimeters, Mm);
                findings.Near(drawn, "required", drawn.Rod.RequiredMm(moved.End), moved.Required.Millimeters, Mm);
                findings.Near(drawn, "pitch", joint.Thread.PitchMm, moved.Pitch.Millimeters, 1e-12);
                findings.That(drawn, moved.NutLoosens == loosens, "nut loosens", moved.NutLoosens);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Every_outcome_limit_and_part_is_drawn()
    {
        Dictionary<string, int> counts = PlannedToes.All
            .SelectMany(planned => (string[])
            [
                $"{planned.Move.Outcome}",
                $"{planned.Move.Outcome} {planned.Move.Part}",
                $"{planned.Move.Outcome} {(planned.Case.Rod.OneJoint ? "one joint" : "sleeve")}",
                planned.Move.Refusal is { } refusal ? $"{(planned.Move.PastALimit ? "passed" : "met")} {refusal.Limit}" : "no limit",
            ])
            .GroupBy(kind => kind)
            .ToDictionary(group => group.Key, group => group.Count());
        output.WriteLine(string.Join("\n", counts.OrderBy(kind => kind.Key, StringComparer.Ordinal)));
        string[] common =
        [
            "Holds", "Refused", "NotChecked", "Holds one joint", "Refused one joint", "NotChecked one joint",
            "met Engagement", "met NutRoom", "met ClosedBore", "passed Engagement", "passed NutRoom", "passed ClosedBore",
        ];
        string[] rare =
        [
            "Holds InnerEnd", "Refused InnerEnd", "Holds OuterEnd", "Refused OuterEnd",
            "met FarThread", "met Tips", "met Witness", "met Clamp", "passed FarThread", "passed Tips", "passed Witness", "passed Clamp",
        ];
        Assert.All(common, kind => Assert.True(counts.GetValueOrDefault(kind) >= KindShare * RandomCounts.Rods, kind));
        Assert.All(rare, kind => Assert.True(counts.GetValueOrDefault(kind) >= KindShare / 10 * RandomCounts.Rods, kind));
    }

    private static IEnumerable<PlannedToe> Refused(bool alreadyPassed) =>
        s_known.Value.Where(planned => planned.Move.Refusal is not null && planned.Move.PastALimit == alreadyPassed);

    private static bool OnEdge(double worst) => worst is >= Missed and <= Held;

    /// <summary>The axial way to where a limit is met; the limits are straight lines over the turns.</summary>
    private static double Met(Slack now, Slack then, ToeCase drawn, double turns)
    {
        double falls = (now.Left - then.Left) / Math.Abs(turns) / drawn.Rod.PerTurn;
        return falls > Mm ? now.Left / falls : double.PositiveInfinity;
    }
}
