namespace TieRodCalc.Cli.Tests;

/// <summary>Which way to turn, in the words of the text. Wrong ones take a rod apart.</summary>
public sealed class PlanDirectionTests
{
    private static readonly string LeftInner = CheckJobs.W8;
    private static readonly string RightInner = CheckJobs.W8.WithHandsSwapped();

    /// <summary>A right-hand nut is tightened clockwise seen from behind it, and so loosens the other way; a left-hand nut as its mirror.</summary>
    [Fact]
    public void A_nut_loosens_against_its_hand_whichever_end_it_is_at()
    {
        const string Left = "clockwise, seen from the {0} ball toward the thread (left-hand)";
        const string Right = "counterclockwise, seen from the {0} ball toward the thread (right-hand)";

        AssertLoosens(LeftInner, Left, Right);
        AssertLoosens(RightInner, Right, Left);
        AssertLoosens(CheckJobs.W6, Right, Right);
        AssertLoosens(CheckJobs.W6.WithHandsSwapped(), Left, Left);
    }

    [Fact]
    public void Without_a_nut_nothing_is_said_of_loosening()
    {
        PlanPage page = PlanPage.Of(LeftInner.With("inner: nl", "inner: none"));

        Assert.Empty(page.Rows("  nut loosens", "inner joint"));
        Assert.Single(page.Rows("  nut loosens", "outer joint"));
        Assert.Single(page.Rows("  thread left outside", "inner joint"));
        Assert.Empty(page.Rows("  left outside the nut", "inner joint"));
        Assert.Single(page.Rows("  left outside the nut", "outer joint"));
    }

    /// <summary>Running both ends in shortens the rod: it is the opposite of the turn that lengthens.</summary>
    [Fact]
    public void The_sleeve_runs_in_by_the_turn_that_shortens()
    {
        AssertTurns(LeftInner, "clockwise", "counterclockwise");
        AssertTurns(RightInner, "counterclockwise", "clockwise");
    }

    /// <summary>Same hand: the inner end's 2 mm against the outer end's 1.5 mm, so the inner end's hand decides.</summary>
    [Fact]
    public void A_differential_lengthens_by_the_coarser_thread()
    {
        AssertLengthens(PlanPage.Of(CheckJobs.W6), "clockwise");
        AssertLengthens(PlanPage.Of(CheckJobs.W6.WithHandsSwapped()), "counterclockwise");
    }

    [Theory]
    [InlineData("behind axle", "in")]
    [InlineData("ahead of axle", "out")]
    public void A_longer_rod_toes_in_from_behind_the_axle_and_out_from_ahead(string joint, string direction)
    {
        PlanPage page = PlanPage.Of(CheckJobs.OnSteering("400 mm", $"{{arm: 152.4 mm, joint: {joint}}}"));

        Assert.Equal($"2.91 mm (~7/64 in); toe 1.095 deg {direction}, 11.65 mm (~29/64 in) at the plates", page.Row("one turn"));
        Assert.Contains($"; toe 0.547 deg {direction}, ", page.Row("half a turn"), StringComparison.Ordinal);
    }

    [Fact]
    public void Toe_is_of_one_wheel_where_each_side_has_a_rod_and_of_both_where_one_rod_joins_them()
    {
        string each = CheckJobs.OnSteering("400 mm", "{arm: 152.4 mm, joint: behind axle}");
        string common = each.With("steering: {", "steering: {layout: one rod between wheels, ");

        Assert.Contains("Toe is of this wheel alone, counted with nothing else moved.", PlanPage.Of(each).Text, StringComparison.Ordinal);
        Assert.Contains("Toe is of both wheels together, counted with nothing else moved.", PlanPage.Of(common).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_steering_nothing_is_said_of_toe()
    {
        PlanPage page = PlanPage.Of(LeftInner);

        Assert.Equal("3.00 mm (~1/8 in)", page.Row("one turn"));
        Assert.DoesNotContain("Toe is of", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Opposite_hands_run_in_together_the_end_with_more_turns_first()
    {
        // 71.875 mm and 33.125 mm of pitch 1.5 mm: 47.9 and 22.1 turns. Thread 110 mm less 25.833 turns alone leaves 71.25 mm.
        Assert.Contains(
            "- Run the inner end in by itself: 25.8 turns from flush with the face, until 71.25 mm (~2 13/16 in) of its thread shows. "
            + "- Start the outer end. "
            + "- Turn the sleeve 22.1 turns clockwise, seen from the inner end outward; both ends run in.",
            PlanPage.Of(LeftInner).Text,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_outer_end_goes_first_where_it_needs_more_turns()
    {
        string job = CheckJobs.OnSteering("400 mm", "{arm: 152.4 mm, joint: behind axle}")
            .With("thread_length: 100 mm}", "thread_length: 60 mm}")
            .With("depth: 70 mm, bore: open}\n    outer", "depth: 45 mm, bore: closed}\n    outer");

        string text = PlanPage.Of(job).Text;
        Assert.Contains("- Run the outer end in by itself: ", text, StringComparison.Ordinal);
        Assert.Contains("- Start the inner end. ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void With_the_same_hand_the_outer_end_itself_is_turned_in()
    {
        // 36.875 mm of pitch 2 mm, 33.125 mm of pitch 1.5 mm; thread 60 mm.
        string words = PlanPage.Of(CheckJobs.W6).Between("How to set it", "Counted turns");

        Assert.Equal(
            "How to set it - Run the jam nuts onto both ends first, back to where their threads begin. "
            + "- Turn the sleeve onto the inner end: 18.4 turns from flush with the face, until 23.13 mm (~29/32 in) of its "
            + "thread shows. - Turn the outer end itself in: 22.1 turns, before it is fitted. - ",
            words);
    }

    [Fact]
    public void Where_the_sleeve_cannot_adjust_the_joints_have_to_line_up()
    {
        string job = CheckJobs.W6.With("M16x2", "M16x1.5").With("adjust: 1 mm", "adjust: 0 mm");

        string text = PlanPage.Of(job).Text;
        Assert.Contains("turns, before it is fitted; take the nearest at which the joints line up. ", text, StringComparison.Ordinal);
        Assert.Contains("It does not change the length: same hand and same pitch at both ends.", text, StringComparison.Ordinal);
        Assert.Equal(2, text.Split("0.00 turns; turning the sleeve does not change the length").Length - 1);
    }

    private static void AssertLoosens(string job, string inner, string outer)
    {
        PlanPage page = PlanPage.Of(job);
        Assert.Equal(inner.Replace("{0}", "inner", StringComparison.Ordinal), page.Row("  nut loosens", "inner joint"));
        Assert.Equal(outer.Replace("{0}", "outer", StringComparison.Ordinal), page.Row("  nut loosens", "outer joint"));
    }

    private static void AssertTurns(string job, string runsIn, string lengthens)
    {
        PlanPage page = PlanPage.Of(job);
        Assert.Contains($" turns {runsIn}, seen from the inner end outward; both ends run in.", page.Text, StringComparison.Ordinal);
        AssertLengthens(page, lengthens);
    }

    private static void AssertLengthens(PlanPage page, string direction) => Assert.Contains(
        $" Turned {direction}, seen from the inner end outward, the sleeve lengthens the rod; the other way shortens it.",
        page.Text,
        StringComparison.Ordinal);
}
