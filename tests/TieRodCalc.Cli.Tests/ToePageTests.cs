using static TieRodCalc.Cli.Tests.ToeJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>toe</c> says to a person.</summary>
public sealed class ToePageTests
{
    [Fact]
    public void The_demo_is_told_what_to_turn_which_way_and_what_the_plates_say_then()
    {
        CommandLine run = CommandLine.Run("toe", Repository.Sample("jobs", "car-27.yaml"));
        string page = PlanPage.Joined(run.Output);

        Assert.Equal((ExitStatus.Holds, string.Empty), (run.Status, run.Error));
        Says(
            page,
            "TOE, total of both wheels",
            "measured at plates 24.000 in wide",
            "now 0.125 in (1/8, 3.18 mm) toe-out; 0.298 deg toe-out",
            "wanted 0.063 in (1/16, 1.59 mm) toe-in; 0.149 deg toe-in",
            "with the turns below 0.105 in (~7/64, 2.66 mm) toe-in; 0.250 deg toe-in: 0.042 in (~3/64, 1.07 mm) more toe-in than wanted",
            "LEFT WHEEL, rod left: TURN THE SLEEVE 1/4 TURN COUNTERCLOCKWISE Looking from the inner end outward; that makes the rod longer.",
            "in flats 1 1/2 flats of the sleeve's hexagon",
            "exactly 0.20 turns, 1.2 flats",
            "inner nut loosen it clockwise, looking from the inner ball toward the thread",
            "outer nut loosen it counterclockwise, looking from the outer ball toward the thread",
            "change that is wanted 0.023 in (~1/64, 0.59 mm) longer",
            "RIGHT WHEEL, rod right: TURN THE SLEEVE 1/4 TURN COUNTERCLOCKWISE",
            "Ride height, camber and caster first",
            "Steering that fails can kill.");
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length < 80, line));
    }

    [Fact]
    public void A_refusal_says_how_far_it_goes_and_what_comes_then()
    {
        string page = Page(Both.WithToe("{now: 0 in, want: 120 mm in}"), 1);

        Says(
            page,
            "with the turns below NOT REACHED; as far as can be turned, ",
            "LEFT WHEEL, rod l: REFUSED, THE ROD RUNS OUT ON THE WAY It would take 4 7/8 turns counterclockwise, looking from the inner end "
                + "outward. 4 1/2 turns (27 flats) can be turned; then comes engagement of the outer end. Do not turn it further.",
            "RIGHT WHEEL, rod r: REFUSED",
            "TURN NOTHING BEFORE THIS IS SETTLED");
        Assert.DoesNotContain("may have the room", page, StringComparison.Ordinal);
        Assert.DoesNotContain("How to do it", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_one_rod_runs_out_the_other_one_is_pointed_at()
    {
        string page = Page(Both.WithToe("{now: {each: {left: 0 in, right: 0 in}}, want: {each: {left: 60 mm in, right: 3 mm in}}}"), 1);

        Says(
            page,
            "TURN NOTHING BEFORE THIS IS SETTLED: not everything below can be done, or not everything was checked. The right rod may have",
            "The right rod may have the room to make up the whole change: ask again with --right-only.");
        Assert.DoesNotContain("How to do it", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rod_past_its_limit_is_said_to_be()
    {
        // 14 mm longer than planned, where 13.75 mm are left; a quarter turn is asked for.
        string job = Both.With("adjust: 3 mm}", "adjust: 3 mm, built: {center_to_center: 299 mm}}");

        Assert.Contains(
            "REFUSED, THE ROD IS PAST A LIMIT AS IT IS As it is, the rod is past its limit already: engagement of the outer end. Do not drive it",
            Page(job, 1),
            StringComparison.Ordinal);

        // What brings it back is no matter of setting toe, but it is allowed.
        string back = job.WithToe("{now: 3 mm in, want: 3 mm out}");
        Says(Page(back), "TURN THE SLEEVE 1/4 TURN CLOCKWISE THE ROD IS PAST A LIMIT AS IT IS, left wheel: do not drive it before the turns below are made");
    }

    [Fact]
    public void A_rod_that_stays_is_held_against_its_limits_too()
    {
        string job = Both.With("name: l, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 285 mm, adjust: 3 mm}", "name: l, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 285 mm, adjust: 3 mm, built: {center_to_center: 305 mm}}");

        Says(Page(job, 1, "--right-only"), "THE ROD THAT STAYS IS PAST A LIMIT AS IT IS, left wheel: do not drive it");
        string both = Page(job, 1);
        Assert.DoesNotContain("may have the room", both, StringComparison.Ordinal);
        string unlocked = Both.With("{name: l, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}", "{name: l, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: none, outer: none}");
        Says(Page(unlocked, 1, "--right-only"), "NOTHING LOCKS THE ROD, left wheel");
        string oneNut = Both.With("{name: l, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}", "{name: l, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: none}");
        Says(Page(oneNut, 0, "--right-only"), "left wheel: Only one joint is locked.");
    }

    [Theory]
    [InlineData("  arm: 150 mm", "  arm: 25 mm")]
    [InlineData("  arm: 150 mm", "  arm: 600 mm")]
    [InlineData("  arm: 150 mm", "  rod_angle: 85 deg\n  arm: 150 mm")]
    [InlineData("  arm: 150 mm\n  joint: behind axle\n", "  left: {axis: [[0 mm, -400 mm, 0 mm], [0 mm, -400 mm, 9 mm]], outer: [-150 mm, -400 mm, 0 mm], inner: [-150 mm, -115 mm, 0 mm]}\n  right: {arm: 150 mm, joint: behind axle}\n")]
    public void Steering_that_is_not_like_that_of_a_wheel_is_said_at_the_top_and_is_status_1(string words, string others) => Says(
        Page(Both.With(words, others), 1),
        "TURN NOTHING BEFORE THIS IS SETTLED",
        "THE STEERING DOES NOT LOOK LIKE THAT OF A WHEEL, left wheel");

    [Fact]
    public void Turns_counted_by_steering_in_doubt_are_refused_and_no_procedure_is_given()
    {
        string job = Both.With("  arm: 150 mm", "  arm: 25 mm");

        Assert.All(Json(job, 1).GetProperty("sides").EnumerateArray(), side => Assert.True(side.GetProperty("refused").GetBoolean()));
        Assert.DoesNotContain("How to do it", Page(job, 1), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("showing: {inner: 38.1 mm, outer: 14.9 mm}", 0)]
    [InlineData("showing: {inner: 38.1 mm}, cut: {inner: 0 mm, outer: 0 mm}", 0)]
    [InlineData("showing: {inner: 36 mm}", 1)]
    [InlineData("showing: {inner: 36 mm ± 2 mm}", 0)]
    [InlineData("showing: {outer: 13 mm}", 1)]
    [InlineData("cut: {inner: 2 mm}", 1)]
    [InlineData("cut: {outer: 2 mm}", 1)]
    public void What_was_measured_otherwise_than_planned_leaves_the_limits_unchecked(string built, int status)
    {
        string page = Page(Both.With("adjust: 3 mm}", $"adjust: 3 mm, built: {{{built}}}}}"), status);

        Assert.Equal(status == 1, page.Contains("LIMITS NOT CHECKED; IT WOULD BE TO TURN THE SLEEVE 1/8 TURN", StringComparison.Ordinal));
        Assert.Equal(status == 1, page.Contains("thread showing or cut as measured are not those of its plan", StringComparison.Ordinal));
    }

    [Fact]
    public void Points_that_stand_at_another_length_are_said()
    {
        string job = Both.With(
            "  arm: 150 mm\n  joint: behind axle\n",
            "  left: {axis: [[0 mm, 400 mm, 0 mm], [0 mm, 400 mm, 9 mm]], outer: [-150 mm, 400 mm, 0 mm], inner: [-150 mm, 105 mm, 0 mm]}\n  right: {arm: 150 mm, joint: behind axle}\n");

        Says(Page(job), "Points of the steering, left wheel: the joints as given stand 10.00 mm");
    }

    [Fact]
    public void The_procedure_is_for_what_is_turned()
    {
        string sleeve = Page(Both);
        Says(sleeve, "Hold both ends while a sleeve turns");
        Assert.DoesNotContain("off its pin", sleeve, StringComparison.Ordinal);
        string end = Page(SameHand);
        Says(end, "Take an end off its pin");
        Assert.DoesNotContain("while a sleeve turns", end, StringComparison.Ordinal);
        Assert.DoesNotContain("How to do it", Page(Both.WithToe("{now: 1 mm in, want: 1 mm in}")), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_to_do_is_said()
    {
        string page = Page(Both.WithToe("{now: 1 mm in, want: 1 mm in}"));

        Says(page, "LEFT WHEEL, rod l: LEAVE IT AS IT IS The change is no more than half of 1/8 turn, the least that is counted.", ": as wanted");
        Assert.DoesNotContain("loosen it", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_toe_that_no_rod_gives_is_said_with_the_rods_that_the_steering_can_have()
    {
        string page = Page(Both.WithToe("{now: {each: {left: 0 deg, right: 0 deg}}, want: {each: {left: 85 deg out, right: 0 deg}}}"), 1);

        Says(page, "LEFT WHEEL, rod l: NO ROD LENGTH GIVES THIS TOE The steering as given can have rods from", "and none of them gives it.");
    }

    [Fact]
    public void Steering_that_cannot_have_the_rod_is_said()
    {
        string points = Both.With(
            "  arm: 150 mm\n  joint: behind axle\n",
            """
              left: {axis: [[0 mm, 400 mm, 0 mm], [0 mm, 400 mm, 100 mm]], outer: [-150 mm, 400 mm, 0 mm], inner: [-150 mm, 0 mm, 0 mm]}
              right: {axis: [[0 mm, -400 mm, 0 mm], [0 mm, -400 mm, 100 mm]], outer: [-150 mm, -400 mm, 0 mm], inner: [-150 mm, 0 mm, 0 mm]}

            """);

        Says(Page(points, 0), "TURN THE SLEEVE");
        Says(
            Page(points.With("length: 285 mm, adjust: 3 mm}", "length: 285 mm, adjust: 3 mm, built: {center_to_center: 270 mm}}"), 1),
            "NO ANSWER, ROD AND STEERING DO NOT GO TOGETHER The rod is 270.00 mm (~10 5/8 in) long, and the steering as given can have rods from",
            "one of the two was measured wrong.");
    }

    [Fact]
    public void The_same_of_both_wheels_is_said_once()
    {
        string page = Page(Both);

        Says(page, "Length of the rod, both wheels: not said to be measured on the car");
        Assert.DoesNotContain("Length of the rod, left wheel", page, StringComparison.Ordinal);
    }

    private static void Says(string page, params string[] words) =>
        Assert.All(words, word => Assert.Contains(word, page, StringComparison.Ordinal));
}
