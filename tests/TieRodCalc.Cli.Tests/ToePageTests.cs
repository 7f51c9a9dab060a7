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
            "RIGHT WHEEL, rod r: REFUSED");
        Assert.DoesNotContain("before this is settled", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_one_rod_runs_out_the_other_one_is_pointed_at()
    {
        string page = Page(Both.WithToe("{now: {each: {left: 0 in, right: 0 in}}, want: {each: {left: 60 mm in, right: 3 mm in}}}"), 1);

        Says(
            page,
            "Turn nothing before this is settled",
            "The right rod may have the room to make up the whole change: ask again with --right-only.");
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
    public void Nothing_to_do_is_said()
    {
        string page = Page(Both.WithToe("{now: 1 mm in, want: 1 mm in}"));

        Says(page, "LEFT WHEEL, rod l: LEAVE IT AS IT IS The change is less than half of 1/8 turn, the least that is counted.", ": as wanted");
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

        Says(page, "Length of the rod, both wheels: not said to be measured on the car", "Setting of the rod, both wheels:");
        Assert.DoesNotContain("Length of the rod, left wheel", page, StringComparison.Ordinal);
    }

    private static void Says(string page, params string[] words) =>
        Assert.All(words, word => Assert.Contains(word, page, StringComparison.Ordinal));
}
