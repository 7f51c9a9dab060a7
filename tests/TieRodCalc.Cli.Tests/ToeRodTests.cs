using System.Text.Json;
using static TieRodCalc.Cli.Tests.ToeJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>Rods that the sleeve cannot adjust, one rod between the wheels, and rods whose setting is not known.</summary>
public sealed class ToeRodTests
{
    private const double Near = 1e-6;

    /// <summary>Half a turn of the outer end, right-hand, is 0.75 mm.</summary>
    [Theory]
    [InlineData("1.5 mm in", "counterclockwise")]
    [InlineData("7.5 mm out", "clockwise")]
    public void With_the_same_hand_and_pitch_a_rod_end_is_taken_off_its_pin_and_turned_by_halves(string want, string way)
    {
        JsonElement side = Json(SameHand.WithToe($"{{now: 3 mm out, want: {want}}}")).GetProperty("sides")[0];

        Assert.Equal("outer end", side.Word("turned"));
        Assert.Equal(0.5, side.Number("step_turns"));
        Assert.Equal(0.5, side.Number("turns"));
        Assert.Equal(JsonValueKind.Null, side.GetProperty("flats").ValueKind);
        Assert.Equal(way, side.Word("direction"));
        Assert.Equal("looking from the outer ball toward the thread", side.Word("seen_from"));
        Assert.Equal(Math.Abs(side.Number("change_mm")) / 1.5, side.Number("exact_turns"), Near);
        Assert.Equal(ToeJobs.Toe(0.75), side.Number("toe_per_step_deg"), Near);
        double moved = way == "counterclockwise" ? 0.75 : -0.75;
        Assert.Equal(Degrees(-1.5) + ToeJobs.Toe(moved), side.Number("toe_after_deg"), Near);
        JsonElement joints = side.GetProperty("joints");
        JsonElement outer = joints.GetProperty("outer");
        Assert.Equal(outer.Number("showing_now_mm") + moved, outer.Number("showing_mm"), Near);
        Assert.Equal(joints.GetProperty("inner").Number("showing_now_mm"), joints.GetProperty("inner").Number("showing_mm"), Near);
    }

    [Fact]
    public void A_tapered_stud_goes_by_whole_turns_and_the_text_says_which_pin_to_pull()
    {
        string job = SameHand.With("joint: rod end", "joint: tapered stud").WithToe("{now: 3 mm out, want: 4 mm in}");
        string page = Page(job);

        Assert.Contains("PULL THE PIN OF THE OUTER END, TURN THE OUTER END 1 TURN COUNTERCLOCKWISE", page, StringComparison.Ordinal);
        Assert.Contains("Looking from the outer ball toward the thread; that makes the rod longer.", page, StringComparison.Ordinal);
        Assert.Contains("The end goes back on its pin after whole turns only; each step is 0.57", page, StringComparison.Ordinal);
        Assert.Contains("same hand and the same pitch", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_inner_end_is_turned_where_only_it_goes_by_halves()
    {
        string job = SameHand.With(", joint: rod end}", "}").With("thread_length: 110 mm}", "thread_length: 110 mm, joint: rod end}");

        Assert.Equal("inner end", Json(job).GetProperty("sides")[0].Word("turned"));
    }

    /// <summary>A left-hand inner end in a socket: unscrewed, the rod gets longer; from the outer ball that is clockwise.</summary>
    [Fact]
    public void With_one_threaded_joint_the_outer_end_is_turned_and_its_one_joint_is_checked()
    {
        JsonElement side = Json(Socket.WithToe("{now: 3 mm out, want: 5 mm in}")).GetProperty("sides")[0];

        Assert.Equal(("outer end", "clockwise"), (side.Word("turned"), side.Word("direction")));
        Assert.Equal(1, side.Number("turns"));
        JsonElement joints = side.GetProperty("joints");
        Assert.Equal(JsonValueKind.Null, joints.GetProperty("outer").ValueKind);

        // 190 + 150 - 285 = 55 mm in, one turn out of it; 1.5 mm of lead, 0.75 mm of countersink.
        JsonElement inner = joints.GetProperty("inner");
        Assert.Equal(110 - 55, inner.Number("showing_now_mm"), Near);
        Assert.Equal(110 - 53.5, inner.Number("showing_mm"), Near);
        Assert.Equal(53.5 - 1.5 - 0.75, inner.Number("engaged_mm"), Near);
        Assert.Equal("clockwise", inner.Word("nut_loosens"));
    }

    /// <summary>Left-hand: unscrewed clockwise from its own ball. Half a turn or less of the outer end is not counted, the rod's own is.</summary>
    [Theory]
    [InlineData("3 mm out", "1.5 mm in", "0.37 turns clockwise")]
    [InlineData("3 mm in", "1.5 mm out", "0.37 turns counterclockwise")]
    [InlineData("3 mm out", "5 mm in", "0.66 turns clockwise")]
    public void A_rod_that_turns_freely_needs_no_pin_pulled(string now, string want, string turns) => Assert.Contains(
        "Where the inner end turns freely in its own joint, pull no pin: loosen the nut and turn the rod itself, "
            + $"{turns}, looking from the inner ball toward the thread.",
        Page(Socket.WithToe($"{{now: {now}, want: {want}}}")),
        StringComparison.Ordinal);

    [Fact]
    public void What_runs_out_is_not_offered_to_be_turned_freely() => Assert.DoesNotContain(
        "turns freely", Page(Socket.WithToe("{now: 0 in, want: 130 mm out}"), 1), StringComparison.Ordinal);

    [Fact]
    public void A_rod_that_gives_way_under_the_load_of_the_job_is_status_1()
    {
        string job = Both
            .With("units: mm\n", "units: mm\nrules: {load: 400 kN}\nmaterials:\n  - {id: m, kind: steel, tensile: 400 MPa}\n")
            .With("thread_length: 110 mm}", "thread_length: 110 mm, material: m}");

        Assert.Contains(
            Json(job, 1).GetProperty("warnings").EnumerateArray(), warning => warning.Word("code") == "gives-way-under-load");
    }

    [Fact]
    public void A_socket_rod_runs_out_by_its_own_limits()
    {
        // At most 55 - 26.25 = 28.75 mm longer; 15 mm shorter until the tip is at the bottom.
        JsonElement part = Json(Socket.WithToe("{now: 0 in, want: 130 mm out}"), 1).GetProperty("sides")[0].GetProperty("reachable");

        Assert.Equal(("closed bore", "inner"), (part.Word("limit"), part.Word("end")));
        Assert.Equal(10, part.Number("turns"));
    }

    [Fact]
    public void An_end_that_may_have_been_cut_is_not_taken_for_uncut()
    {
        JsonElement root = Json(Socket.With("thread_length: 110 mm}", "thread_length: 110 mm, max_cut: 20 mm}"), 1);

        Assert.All(root.GetProperty("sides").EnumerateArray(), side =>
        {
            Assert.Equal("not checked", side.Word("outcome"));
            Assert.Equal(JsonValueKind.Null, side.GetProperty("joints").ValueKind);
        });
        Assert.Contains(root.GetProperty("warnings").EnumerateArray(), warning => warning.Word("code") == "cut-not-known");
    }

    [Fact]
    public void A_rod_that_cannot_be_built_is_not_checked()
    {
        string job = Both.With("length: 285 mm, adjust: 3 mm", "length: 340 mm, adjust: 3 mm");
        JsonElement root = Json(job, 1);

        Assert.All(root.GetProperty("sides").EnumerateArray(), side => Assert.Equal("not checked", side.Word("outcome")));
        Assert.Contains("LIMITS NOT CHECKED", Page(job, 1), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rod_that_nothing_locks_is_status_1()
    {
        string job = Both.With("nuts: {inner: nl, outer: nr}", "nuts: {inner: none, outer: none}");

        Assert.Contains("NOTHING LOCKS THE ROD, left wheel", Page(job, 1), StringComparison.Ordinal);
        Assert.Contains(Json(job, 1).GetProperty("warnings").EnumerateArray(), warning => warning.Word("code") == "not-locked");
    }

    [Fact]
    public void The_present_length_is_the_measured_one_where_it_is_given()
    {
        string job = Both.With("adjust: 3 mm}", "adjust: 3 mm, built: {center_to_center: 288 mm}}");
        JsonElement side = Json(job).GetProperty("sides")[0];

        Assert.Equal(288, side.Number("present_mm"), Near);

        // One turn from the plan's setting: 1.5 mm out at each end.
        Assert.Equal(110 - 71.875 + 1.5, side.GetProperty("joints").GetProperty("inner").Number("showing_now_mm"), Near);
        Assert.DoesNotContain(
            Json(job).GetProperty("warnings").EnumerateArray(), warning => warning.Word("code") == "present-length-planned");
    }

    [Fact]
    public void One_rod_between_the_wheels_makes_up_the_whole_change_and_has_no_split()
    {
        string job = Both
            .With("  arm: 150 mm", "  layout: one rod between wheels\n  arm: 150 mm")
            .With("  - {name: r, side: right,", "  - {name: r,");
        JsonElement root = Json(job, options: ["--rod", "l"]);
        JsonElement only = Assert.Single(root.GetProperty("sides").EnumerateArray());

        Assert.Equal("both", only.Word("side"));
        JsonElement total = root.GetProperty("total");
        Assert.Equal(total.Number("now_deg"), only.Number("toe_now_deg"));
        Assert.Equal(total.Number("want_deg"), only.Number("toe_want_deg"));
        Assert.Equal(total.Number("after_deg"), only.Number("toe_after_deg"));
        Assert.Equal(total.Number("after_mm"), only.Number("toe_after_at_plates_mm"));
        Assert.Equal(total.Number("want_deg") - total.Number("after_deg"), only.Number("left_over_deg"), 1e-5);
        JsonElement far = Json(job.WithToe("{now: 0 in, want: 120 mm in}"), 1, "--rod", "l");
        JsonElement part = far.GetProperty("sides")[0].GetProperty("reachable");
        Assert.Equal(ToeJobs.Toe(part.Number("turns") * PerTurn), part.Number("toe_deg"), Near);
        Assert.Equal(610 * Math.Sin(part.Number("toe_deg") * Math.PI / 180), far.GetProperty("total").Number("reachable_mm"), 1e-4);
        Assert.Equal(Change(Degrees(3) - Degrees(-1.5)), only.Number("change_mm"), Near);
        Assert.Contains("BOTH WHEELS, rod l: TURN THE SLEEVE", Page(job, options: ["--rod", "l"]), StringComparison.Ordinal);
        Assert.Contains(root.GetProperty("warnings").EnumerateArray(), warning => warning.Word("code") == "wheel-held");
    }
}
