using TieRodCalc.Text;

namespace TieRodCalc.Cli.Tests;

/// <summary>What the text says of cuts, holes, flats and starts, and when it says nothing.</summary>
public sealed class PlanWordingTests
{
    private const string Die = "A left-hand thread needs a left-hand die.";

    /// <summary>The outer end of W1 mirrored to be the one that is cut.</summary>
    private static readonly string OuterIsCut = CheckJobs.W1
        .With(", max_cut: 38.1 mm}", "}")
        .With("thread_length: 44.45 mm}", "thread_length: 70 mm, max_cut: 40 mm}")
        .With("center_to_tip: 66.675 mm", "center_to_tip: 95 mm")
        .With("length: 365.125 mm", "length: 387 mm");

    [Fact]
    public void A_left_hand_die_is_asked_for_where_a_left_hand_thread_is_cut()
    {
        Assert.Contains(Die, PlanPage.Of(CheckJobs.W1).Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Die, PlanPage.Of(CheckJobs.W1.WithHandsSwapped()).Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Die, PlanPage.Of(OuterIsCut).Text, StringComparison.Ordinal);
        Assert.Contains(Die, PlanPage.Of(OuterIsCut.WithHandsSwapped()).Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Die, PlanPage.Of(CheckJobs.W8).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_end_is_cut_or_need_not_be_or_must_not_be()
    {
        PlanPage cut = PlanPage.Of(CheckJobs.W1);
        Assert.StartsWith("CUT ", cut.Rows("inner end")[1], StringComparison.Ordinal);
        Assert.Equal("must not be cut, and need not be", cut.Rows("outer end")[1]);
        Assert.Contains("Run a nut on first. Saw on the waste side of the line;", cut.Text, StringComparison.Ordinal);

        PlanPage other = PlanPage.Of(OuterIsCut);
        Assert.Equal("must not be cut, and need not be", other.Rows("inner end")[1]);
        Assert.StartsWith("CUT ", other.Rows("outer end")[1], StringComparison.Ordinal);
        Assert.Contains("Run a nut on first.", other.Text, StringComparison.Ordinal);

        PlanPage none = PlanPage.Of(CheckJobs.W8);
        Assert.Equal("no cut", none.Rows("inner end")[1]);
        Assert.Equal("must not be cut, and need not be", none.Rows("outer end")[1]);
        Assert.DoesNotContain("CUT ", none.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Run a nut on first", none.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_straight_line_is_given_on_bent_ends_alone()
    {
        double cut = JobChanges.Solution(CheckJobs.W5()).InnerCut!.Recommended.Millimeters;
        double straight = Math.Sqrt((200 - cut) * (200 - cut) + 16 * 16);

        Assert.Equal(
            $"{LengthFormat.Both(UnitsNet.Length.FromMillimeters(straight), LengthDisplay.Inch)}, ball center to new tip across the bend",
            PlanPage.Of(CheckJobs.W5()).Row("  N the same, straight"));
        Assert.Empty(PlanPage.Of(CheckJobs.W1).Rows("  N the same, straight"));
        Assert.Single(PlanPage.Of(CheckJobs.W5()).Rows("axial length"));
        Assert.Empty(PlanPage.Of(CheckJobs.W1).Rows("axial length"));
    }

    /// <summary>Full thread covers no more than the hole is deep and than the sleeve has thread, less the countersink of 0.75 mm.</summary>
    [Theory]
    [InlineData("35 mm", "25 mm", "24.25 mm (~61/64 in)")]
    [InlineData("30 mm", "60 mm", "29.25 mm (~1 9/64 in)")]
    [InlineData("35 mm", "0.5 mm", "0.00 mm (0 in)")]
    public void A_witness_hole_proves_what_full_thread_can_cover(string depth, string witness, string proven)
    {
        string job = CheckJobs.W8.With("depth: 35 mm, bore: open", $"depth: {depth}, bore: open, witness: {witness}");

        PlanPage page = PlanPage.Of(job);
        Assert.Equal($"covered by full thread, it proves {proven} engaged", page.Row("  witness hole", "inner joint"));
        Assert.Empty(page.Rows("  witness hole", "outer joint"));
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("    outside: round 1 in\n", 0)]
    [InlineData("    outside: hex 1 in\n", 1)]
    public void Flats_are_counted_on_a_hexagon_alone(string outside, int rows)
    {
        PlanPage page = PlanPage.Of(CheckJobs.W8.With("jam_nuts:\n", outside + "jam_nuts:\n"));

        Assert.Equal(rows, page.Rows("one flat of the hexagon").Count);
        Assert.All(page.Rows("one flat of the hexagon"), flat => Assert.Equal("0.50 mm (~1/64 in)", flat));
    }

    /// <summary>Pitches of 1.5 mm and opposite hands: a start moves the insertion by 1.5 * 1.5 / 3 = 0.75 mm, by halves by half of it.</summary>
    [Theory]
    [InlineData("thread_length: 48 mm}", "thread_length: 48 mm}", "0.75 mm")]
    [InlineData("thread_length: 48 mm}", "thread_length: 48 mm, joint: tapered stud}", "0.75 mm")]
    [InlineData("thread_length: 48 mm}", "thread_length: 48 mm, joint: rod end}", "0.38 mm")]
    [InlineData("max_cut: 60 mm}", "max_cut: 60 mm, joint: rod end}", "0.38 mm")]
    [InlineData("max_cut: 60 mm}", "max_cut: 60 mm, joint: rod end, offset: 5 mm}", "0.75 mm")]
    public void Starts_lie_half_as_far_apart_where_a_straight_rod_end_turns_by_halves(string words, string others, string step)
    {
        string row = PlanPage.Of(CheckJobs.W8.With(words, others)).Row("other starts");

        Assert.StartsWith($"the next start moves the inner end {step}; ", row, StringComparison.Ordinal);
        Assert.EndsWith(" mm is free", row, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wanted_shorter_and_longer_is_not_mixed_up()
    {
        PlanPage page = PlanPage.Of(CheckJobs.W8.With("adjust: 3 mm", "adjust: {shorter: 2 mm, longer: 3.5 mm}"));

        Assert.Equal("2.00 mm shorter, 3.50 mm longer", page.Row("wanted adjustment"));
    }

    [Fact]
    public void How_far_it_adjusts_each_way_is_not_mixed_up()
    {
        Planning.RodSolution solution = JobChanges.Solution(CheckJobs.W1);
        PlanPage page = PlanPage.Of(CheckJobs.W1);

        Assert.NotEqual(solution.Shorter.EndsAt, solution.Longer.EndsAt);
        Assert.Equal(Expected(solution.Shorter), page.Row("shorter"));
        Assert.Equal(Expected(solution.Longer), page.Row("longer"));

        static string Expected(Planning.Travel travel) =>
            $"{LengthFormat.Both(travel.Length, LengthDisplay.Inch, LengthRounding.Down)}, "
            + $"{(Math.Floor(travel.Turns * 100 + 1e-4) / 100).ToString("0.00", System.Globalization.CultureInfo.InvariantCulture)} turns; "
            + PlanSentences.Of(travel);
    }

    [Fact]
    public void A_warning_of_both_ends_is_one_point_and_of_one_end_names_it()
    {
        PlanPage both = PlanPage.Of(CheckJobs.W8);
        Assert.Contains("- Whether the threads of the inner and outer end strip was not checked", both.Text, StringComparison.Ordinal);
        Assert.Contains("- The lead of the inner and outer end is not said: one pitch, 1.50 mm (~1/16 in), is taken.", both.Text, StringComparison.Ordinal);

        PlanPage one = PlanPage.Of(CheckJobs.W8.With("thread_length: 48 mm}", "thread_length: 48 mm, lead: 1.5 mm}"));
        Assert.Contains("- The lead of the inner end is not said", one.Text, StringComparison.Ordinal);

        PlanPage two = PlanPage.Of(CheckJobs.W6);
        Assert.Contains("- The lead of the inner end is not said: one pitch, 2.00 mm (5/64 in), is taken.", two.Text, StringComparison.Ordinal);
        Assert.Contains("- The lead of the outer end is not said: one pitch, 1.50 mm (~1/16 in), is taken.", two.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_deeper_cut_would_help_where_a_closed_bore_is_in_the_way_of_a_part_that_allows_too_little()
    {
        string text = PlanPage.Of(CheckJobs.W1.With("max_cut: 38.1 mm", "max_cut: 5 mm"), expectedStatus: 1).Text;

        Assert.Contains("Cutting deeper than the parts allow would change that. With these parts, do not cut.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Cutting an end does not", text, StringComparison.Ordinal);
    }

    [Fact]
    public void No_cut_helps_where_the_nuts_have_no_room()
    {
        string text = PlanPage.Of(CheckJobs.W2, expectedStatus: 1).Text;

        Assert.Contains("Cutting an end does not change that. With these parts, do not cut.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Cutting deeper", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sleeve_whose_thread_is_shorter_than_the_engagement_fits_at_no_length()
    {
        // 24 mm are required, the thread of 20 mm has 1 mm of countersink.
        string job = CheckJobs.W6.With("inner: {thread: M16x2, depth: 45 mm, bore: closed}", "inner: {thread: M16x2, depth: 20 mm, bore: open}");

        Assert.Contains(
            "- Engagement, inner end: misses by 5.00 mm (~13/64 in). The sleeve's full thread is shorter than the required engagement, at any length.",
            PlanPage.Of(job, expectedStatus: 1).Text,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Required_engagement_says_where_it_comes_from()
    {
        Assert.EndsWith("; required 24.00 mm (1.5 diameters)", PlanPage.Of(CheckJobs.W8).Row("  engaged, at least", "inner joint"), StringComparison.Ordinal);
        string job = CheckJobs.W8.With("rods:\n", "rules: {engagement: 20 mm}\nrods:\n");
        Assert.EndsWith("; required 20.00 mm (set by the job)", PlanPage.Of(job).Row("  engaged, at least", "inner joint"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rod_with_one_joint_is_not_told_of_a_sleeve()
    {
        string text = CommandProcess.Output("plan", "catalog-samples/jobs/car-27-rack.yaml", "--rod", "left");
        string plan = text[..text.IndexOf("Cautions", StringComparison.Ordinal)];

        Assert.Contains("the outer end's at", System.Text.RegularExpressions.Regex.Replace(plan, "\\s+", " "), StringComparison.Ordinal);
        Assert.Equal(1, plan.Split("sleeve").Length - 1);
        Assert.Contains("sleeve", plan[..plan.IndexOf("wanted length", StringComparison.Ordinal)], StringComparison.Ordinal);
    }
}
