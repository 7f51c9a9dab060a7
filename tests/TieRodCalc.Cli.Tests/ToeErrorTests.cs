using static TieRodCalc.Cli.Tests.ToeJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>toe</c> refuses: status 2, nothing on standard output, and the reason.</summary>
public sealed class ToeErrorTests
{
    [Fact]
    public void A_job_without_toe() =>
        Refused(Both.With("  toe: {now: 3 mm out, want: 1.5 mm in}\n", string.Empty), "-:19:1: error: the job gives no");

    [Fact]
    public void A_job_without_a_wanted_toe() => Refused(Both.WithToe("{now: 3 mm out}"), "-:23:3: error: the job gives no");

    [Fact]
    public void A_side_without_a_rod() => Refused(
        Both.With("side: right", "side: left"), "tierodcalc: 2 rods are on the left: l, r. Choose one with --rod.");

    [Fact]
    public void A_rod_without_a_side() => Refused(Both.With("side: right, ", string.Empty), "-:18:12: error: rod r does not say which wheel it turns");

    [Fact]
    public void One_rod_alone_asked_for() => Refused(
        Both,
        "there is no rod of the right wheel among those asked for. With --left-only the left rod alone makes up the whole change.",
        "--rod",
        "l");

    [Fact]
    public void Left_and_right_alone() =>
        Refused(Both, "tierodcalc: --left-only and --right-only exclude each other.\nHelp: tierodcalc toe --help\n", "--left-only", "--right-only");

    [Fact]
    public void One_rod_between_the_wheels_turned_alone() => Refused(
        Both.With("  arm: 150 mm", "  layout: one rod between wheels\n  arm: 150 mm"),
        "tierodcalc: one rod joins both wheels: there is no left or right rod to turn alone.",
        "--left-only");

    [Fact]
    public void Two_rods_between_the_wheels() => Refused(
        Both.With("  arm: 150 mm", "  layout: one rod between wheels\n  arm: 150 mm"), "and there are 2: l, r. Choose one with --rod.");

    [Fact]
    public void An_unknown_rod() => Refused(Both, "no rod is called 'x'", "--rod", "x");

    [Fact]
    public void A_toe_without_a_direction() => Refused(Both.WithToe("{now: 3 mm, want: 1.5 mm in}"), "the direction is missing");

    private static void Refused(string job, string words, params string[] options)
    {
        CommandLine run = CommandLine.RunWith(job, ["toe", "-", .. options]);

        Assert.Equal(ExitStatus.WrongInput, run.Status);
        Assert.Empty(run.Output);
        Assert.Contains(words, run.Error, StringComparison.Ordinal);
    }
}
