using static TieRodCalc.Cli.Tests.BumpJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>bump</c> says to a person.</summary>
public sealed class BumpPageTests
{
    [Fact]
    public void A_wrong_height_is_told_from_the_readings_to_the_shim()
    {
        // 3 mm of height are 3 / (285 * 150) rad a millimeter: 0.4527 mm per inch at 254 mm; exactly 3 mm take all of it away.
        Says(
            Page(Height),
            "LEFT WHEEL: TOE-IN IN BUMP, TOE-OUT IN DROOP: FAIR",
            "worst step 0.453 mm per inch of travel, from",
            "grade under 0.25 very good, then fair, from 0.51 felt by the driver, above 0.76 strongly felt; mm per inch of travel at a gauge 254.00 mm wide",
            "rod now 285.00 mm (~11 7/32 in) center to center, measured",
            "gauge 254.00 mm wide, zeroed once, at ride height; resolution 0.020 mm",
            "TO DO: raise the outer joint 3.00 mm",
            "then, worst 0.000 mm per inch, very good, is predicted; now 0.453 mm per inch",
            "outer joint exactly 3.00 mm",
            " up, ± ",
            "Lowering the inner joint does what raising the outer one does",
            "Then set the toe again, read a second sheet",
            "Toe over travel, at the gauge",
            "o measured + two terms x with the change",
            "Steering that fails can kill.");
        Assert.DoesNotContain("ROD l AT", Page(Height), StringComparison.Ordinal);
    }

    [Fact]
    public void The_other_way_round_it_is_lowered_and_toe_changes_the_other_way() => Says(
        Page(Job(-3, Rod)), "LEFT WHEEL: TOE-OUT IN BUMP, TOE-IN IN DROOP: FAIR", "TO DO: lower the outer joint 3.00 mm", "outer joint exactly 3.00 mm", " down, ± ");

    [Fact]
    public void A_rod_too_short_is_planned_longer_and_its_inner_joint_goes_away_from_the_wheel() => Says(
        Page(TooShort),
        "LEFT WHEEL: TOE-OUT IN BUMP, TOE-OUT IN DROOP: FAIR",
        "TO DO: make the rod 8.00 mm longer",
        "rod exactly 8.00 mm (~5/16 in) longer, ± ",
        "293.00 mm (~11 17/32 in) center to center",
        "inner joint moves 8.00 mm (~5/16 in) along the rod, away from the wheel, so that the outer joint and the toe stay",
        "height alone betters nothing that the readings can tell",
        "ROD l AT 293.00 mm (~11 17/32 in): BUILDABLE",
        "cut already nothing",
        "to be cut now nothing",
        "thread showing then ",
        "Put the length into the job and plan it before cutting.");

    [Fact]
    public void A_rod_too_long_moves_it_toward_the_wheel() => Says(
        Page(Job(0, 277)), "TOE-IN IN BUMP, TOE-IN IN DROOP", "TO DO: make the rod 8.00 mm shorter", "along the rod, toward the wheel", "ROD l AT 277.00 mm");

    [Fact]
    public void Both_are_told_where_neither_does_alone()
    {
        string page = Page(Job(6, 293));

        Says(page, "TO DO: raise the outer joint 6.00 mm and make the rod 8.00 mm longer", "height alone raise the outer joint", "ROD l AT 293.00 mm");
        Assert.DoesNotContain("height and length raise", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_very_good_sheet_asks_for_nothing_and_says_what_would_still_better_it()
    {
        string page = Page(Job(1, Rod));

        Says(page, ": VERY GOOD", "NOTHING NEEDS TO BE CHANGED; what would still better it:", "height alone raise the outer joint 1.00 mm: 0.000 mm per inch");
        Assert.DoesNotContain("Then set the toe again", page, StringComparison.Ordinal);
        Assert.DoesNotContain("x with the change", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rod_that_no_parts_of_its_kind_make_says_so()
    {
        string page = Page(Job(0, 350), 1);

        Says(
            page,
            "ROD l AT 350.00 mm (~13 25/32 in): NOT BUILDABLE",
            " of the outer end: missed by ",
            "New, uncut parts of the same kind do not make it either: plan the length to see what would.");
    }

    [Fact]
    public void A_rod_that_is_cut_too_short_already_says_so() => Says(
        Page(Both, 1, "--side", "right"),
        "ROD right AT 16.125 in (16 1/8, 409.58 mm): NOT BUILDABLE",
        "cut already 0.531 in (17/32, 13.49 mm) off the inner end",
        "New, uncut parts of the same kind make it: what is cut off cannot be put back.");

    [Fact]
    public void Cuts_that_were_not_recorded_are_taken_from_the_plan_and_that_is_said()
    {
        const string Sentence = "The cuts are taken from the rod's plan, since 'built' does not record them.";
        string unrecorded = Both.With("built: {center_to_center: 15 3/8 in, cut: {inner: 17/32 in, outer: 0 in}}", "built: {center_to_center: 15 3/8 in}");

        Assert.Contains(Sentence, Page(unrecorded, 1, "--side", "right"), StringComparison.Ordinal);
        Assert.DoesNotContain(Sentence, Page(Both, 1, "--side", "right"), StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_left_open_are_not_planned()
    {
        string open = TooShort.With("inner: i, sleeve: s,", "inner: any, sleeve: any,");
        Says(Page(open), "TO DO: make the rod 8.00 mm longer", "ROD l AT 293.00 mm (~11 17/32 in): NOT PLANNED, its parts are not all named");
    }

    [Fact]
    public void Without_a_rod_the_points_of_its_joints_will_do()
    {
        string text = Corner;
        string rodless = text[..text.IndexOf("rods:\n", StringComparison.Ordinal)] + text[text.IndexOf("steering:\n", StringComparison.Ordinal)..];
        string page = Page(rodless);

        Says(page, "rod now 393.73 mm", "by the points of its joints", "TO DO: raise the outer joint 4.00 mm");
        Assert.DoesNotContain("ROD left", page, StringComparison.Ordinal);
        Assert.DoesNotContain("swing, ", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheets_are_told_oldest_first_with_what_was_changed_between()
    {
        string page = Page(Both, 1, "--side", "right");

        Says(
            page,
            "What was read, sheet 1 of 2: worst 0.0320 in per inch, strongly felt",
            "changed after it outer joint lowered 0.188 in (3/16, 4.76 mm)",
            "What was read, sheet 2 of 2 gauge",
            "as measured between the sheets, raising did 101 percent of what is computed; the changes");
        Assert.DoesNotContain("LEFT WHEEL", page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_changed_after_the_newest_sheet_is_taken_off_what_is_to_do()
    {
        string sheet = Sheet(3 / (Rod * Arm), 0, then: "{outer_raised: 1 mm}");
        Says(Page(Unread + Bump(sheet)), "changed after it outer joint raised 1.00 mm", "TO DO: raise the outer joint 2.00 mm", "outer joint exactly 2.00 mm");
    }

    [Fact]
    public void Points_without_readings_are_told_alone()
    {
        string page = Page(CornerAlone);

        Says(
            page,
            "LEFT WHEEL: NO READINGS, THE CORNER'S POINTS ALONE",
            "By the points of the corner, 60.00 mm bump to 60.00 mm droop",
            "computed, worst ",
            "least toe change outer joint ",
            "swing, inner joint 10.189 deg at 60.00 mm bump, inner joint steered 55.00 mm to the left; 14.000 deg allowed each way");
        Assert.DoesNotContain("TO DO", page, StringComparison.Ordinal);
        Assert.DoesNotContain("What was read", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_corner_that_comes_apart_says_so() => Says(
        Page(Corner.With("travel: 50 mm, front: -1.64 mm", "travel: 500 mm, front: -1.64 mm"), 1),
        "THE CORNER DOES NOT REACH THAT TRAVEL: its parts come apart");

    [Fact]
    public void A_terminal_of_ascii_alone_gets_nothing_else_in_its_drawing()
    {
        using MemoryStream input = new(System.Text.Encoding.UTF8.GetBytes(Both));
        using MemoryStream output = new();
        Assert.Equal(1, Application.Run(["bump", "-"], new Terminal(() => input, output, Stream.Null) { AsciiAlone = true }));
        string text = System.Text.Encoding.UTF8.GetString(output.ToArray());

        Assert.Contains(" ride height", text.Replace('\n', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain('│', text);
        Assert.Contains('│', Printed(Both, 1));
    }

    public static TheoryData<string, int> Wide => new()
    {
        { Both, 1 }, { Corner, 0 }, { CornerAlone, 0 }, { Height, 0 }, { TooShort, 0 }, { Job(6, 293), 0 }, { Job(0, 350), 1 },
        { Both.With("units: in", "units: mm"), 1 }, { Corner.With("units: mm", "units: in"), 0 },
        { Job(-100, 285), 0 }, { Unread + Bump(Sheet(2e-3, 0, travels: [200, 100, -100, -200])), 0 },
        { Unread.With("name: l,", "name: the-left-one-of-the-coupe-behind-the-barn,") + Bump(Sheet(0, (1 / 293d - 1 / Rod) / Arm)), 0 },
        { Unread.With("name: l,", "name: " + new string('w', 39) + " " + new string('w', 39) + ",") + Bump(Sheet(0, (1 / 293d - 1 / Rod) / Arm)), 0 },
    };

    [Theory]
    [MemberData(nameof(Wide))]
    public void No_line_is_wider_than_the_terminal(string job, int status) =>
        Assert.All(Printed(job, status).Split('\n'), line => Assert.True(line.Length < 80, line));

    private static void Says(string page, params string[] words)
    {
        int from = 0;
        foreach (string each in words)
        {
            int at = page.IndexOf(each, from, StringComparison.Ordinal);
            Assert.True(at >= 0, $"'{each}' is not in, or not behind what comes before it: {page}");
            from = at + each.Length;
        }
    }
}
