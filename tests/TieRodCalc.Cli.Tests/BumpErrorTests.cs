using static TieRodCalc.Cli.Tests.BumpJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>The exit status of <c>bump</c>, and what it refuses: status 2, nothing on standard output, and the reason.</summary>
public sealed class BumpErrorTests
{
    public static TheoryData<string, int> Statuses => new()
    {
        { Height, 0 },
        { TooShort, 0 },
        { Job(1, Rod), 0 },
        { Corner, 0 },
        { CornerAlone, 0 },
        { Unread + Bump(Sheet(1e-4, 0, travels: 40)), 1 },
        { Unread + Bump(Sheet(1e-4, 0), Sheet(-1e-4, 0)), 1 },
        { Job(0, 350), 1 },
        { Corner.With("swing: 14 deg", "swing: 3 deg"), 1 },
        { CornerAlone.With("swing: 14 deg", "swing: 3 deg"), 1 },
        { Corner.With("    stud: vertical\n", string.Empty).With("swing: 14 deg", "swing: 3 deg"), 0 },
        { CornerAlone.With("travel: {bump: 60 mm, droop: 60 mm}", "travel: {bump: 400 mm, droop: 60 mm}"), 1 },
    };

    /// <summary>Text and JSON have the same status, and say nothing on standard error.</summary>
    [Theory]
    [MemberData(nameof(Statuses))]
    public void The_status_is_that_of_the_answer(string job, int status)
    {
        Assert.NotEmpty(Printed(job, status));
        Json(job, status);
    }

    [Fact]
    public void The_status_is_of_the_side_that_was_asked_for()
    {
        Json(Both, 1);
        Json(Both, 0, "--side", "left");
        Json(Both, 1, "--side", "right");
    }

    [Fact]
    public void A_job_without_readings_or_points() => Refused(
        Unread,
        "tierodcalc: the job gives no readings and no points of a corner. Write them under 'bump:', a sheet a line:\n  - {side: left, gauge: ");

    [Fact]
    public void The_line_that_it_shows_then_is_read()
    {
        string error = CommandLine.RunWith(Unread, "bump", "-").Error;
        string line = error[error.IndexOf("  - {", StringComparison.Ordinal)..];
        Assert.Equal(["too-few-readings"], Codes(Side(Unread + "bump:\n" + line, 1)).Except(["nothing-to-check-by"]));
    }

    [Fact]
    public void A_side_that_was_not_read() => Refused(
        Height, "tierodcalc: the job gives no readings of the right wheel and no points of its corner.", "--side", "right");

    [Fact]
    public void A_side_that_a_car_does_not_have()
    {
        Refused(Height, "--side is left or right, not 'leftt'.", "--side", "leftt");
        Refused(Height, "--side", "--side");
    }

    [Fact]
    public void Two_rods_on_a_side_and_one_of_them_chosen()
    {
        string two = Height.With("rods:\n", "rods:\n  - {name: spare, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 285 mm, adjust: 3 mm}\n");

        Refused(two, "tierodcalc: 2 rods are on the left: spare, l. Choose one with --rod.");
        Assert.Equal("l", Assert.Single(Json(two, 0, "--rod", "l").GetProperty("sides").EnumerateArray().ToArray()).Word("rod"));
    }

    [Fact]
    public void An_unknown_rod() => Refused(Height, "no rod is called 'x'", "--rod", "x");

    [Fact]
    public void A_file_with_a_fault_names_its_place() => Refused(
        Height.With("zeroed: once", "zeroed: sometimes"), "-:24:38: error: 'zeroed' must be once or ");

    [Fact]
    public void A_file_that_is_not_there()
    {
        CommandLine run = CommandLine.Run("bump", "/none/job.yaml");
        Assert.Equal((ExitStatus.WrongInput, string.Empty), (run.Status, run.Output));
        Assert.Contains("/none/job.yaml", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_says_the_same_as_standard_input() => Assert.Equal(
        CommandLine.RunWith(Corner, "bump", "-"), CommandLine.Run("bump", Repository.Sample("jobs", "car-27-corner.yaml")));

    /// <summary>The code is that of Unix; also where the answer would have been status 1.</summary>
    [Fact]
    public void A_reader_that_has_gone_ends_it_quietly()
    {
        foreach (string[] options in (string[][])[[], ["--json"]])
        {
            using MemoryStream input = new(System.Text.Encoding.UTF8.GetBytes(Job(0, 350)));
            using MemoryStream error = new();
            using ThrowingStream output = new(new IOException("broken pipe", 32));
            Assert.Equal(0, Application.Run(["bump", "-", .. options], new Terminal(() => input, output, error)));
            Assert.Equal(0, error.Length);
        }
    }

    private static void Refused(string job, string words, params string[] options)
    {
        CommandLine run = CommandLine.RunWith(job, ["bump", "-", .. options]);

        Assert.Equal(ExitStatus.WrongInput, run.Status);
        Assert.Empty(run.Output);
        Assert.Contains(words, run.Error, StringComparison.Ordinal);
    }
}
