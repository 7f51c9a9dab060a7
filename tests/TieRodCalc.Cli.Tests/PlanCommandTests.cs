using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>plan</c> prints, and with which exit status.</summary>
public sealed class PlanCommandTests
{
    private static readonly string Demo = Repository.Sample("jobs", "car-27.yaml");
    private static readonly string ShortSleeve = Repository.Sample("jobs", "car-27-short-sleeve.yaml");

    [Fact]
    public void The_demo_cuts_the_left_rod_and_leaves_the_right_one_alone()
    {
        CommandLine run = CommandLine.Run("plan", Demo, "--json");

        Assert.Equal(0, run.Status);
        JsonElement rods = JsonDocument.Parse(run.Output).RootElement.GetProperty("rods");
        Assert.Equal("buildable after cutting", rods[0].GetProperty("verdict").GetString());
        Assert.Equal("buildable", rods[1].GetProperty("verdict").GetString());
        Assert.All(rods.EnumerateArray(), rod => Assert.Equal("both", rod.GetProperty("locked").GetString()));
    }

    [Fact]
    public void The_sleeve_that_is_too_short_cannot_be_built_and_says_why()
    {
        CommandLine run = CommandLine.Run("plan", ShortSleeve);

        Assert.Equal(1, run.Status);
        Assert.Contains("NOT BUILDABLE", run.Output, StringComparison.Ordinal);
        Assert.Contains("What is in the way", run.Output, StringComparison.Ordinal);
        Assert.Contains("misses by", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_text_answers_in_the_order_of_the_work()
    {
        string output = CommandLine.Run("plan", Demo, "--rod", "left").Output;

        int[] places =
        [
            .. new[]
            {
                "ROD left: BUILDABLE AFTER CUTTING", "What to cut", "How to set it", "How far it adjusts", "What a turn",
                "Mind, and what was assumed", "Cautions",
            }.Select(heading => output.IndexOf(heading, StringComparison.Ordinal)),
        ];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Text_fits_80_columns_and_has_no_control_characters()
    {
        foreach (string job in new[] { Demo, ShortSleeve })
        {
            string output = CommandLine.Run("plan", job).Output;
            Assert.All(output.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
            Assert.DoesNotContain(output, character => char.IsControl(character) && character != '\n');
        }
    }

    [Fact]
    public void Every_plan_shows_the_cautions()
    {
        string output = string.Join(' ', CommandLine.Run("plan", ShortSleeve).Output.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

        Assert.All(Text.Cautions.All, caution => Assert.Contains(caution, output, StringComparison.Ordinal));
    }

    [Fact]
    public void Only_the_rods_asked_for_are_planned()
    {
        CommandLine run = CommandLine.Run("plan", Demo, "--rod", "right", "--json");

        JsonElement rods = JsonDocument.Parse(run.Output).RootElement.GetProperty("rods");
        Assert.Equal("right", Assert.Single(rods.EnumerateArray()).GetProperty("name").GetString());
    }

    [Fact]
    public void A_rod_that_nothing_locks_is_a_headline_and_status_1()
    {
        string job = CheckJobs.W6.Replace("nuts: {inner: n2, outer: n1}", "nuts: {inner: none, outer: none}", StringComparison.Ordinal);
        CommandLine run = CommandLine.RunWith(job, "plan", "-");

        Assert.Equal(1, run.Status);
        Assert.Contains("ROD w6: BUILDABLE", run.Output, StringComparison.Ordinal);
        Assert.Contains("NOTHING LOCKS THIS ROD", run.Output.Split('\n')[2], StringComparison.Ordinal);
        Assert.Equal("none", CommandLine.FirstRod(job, expectedStatus: 1).GetProperty("locked").GetString());
    }

    [Fact]
    public void A_rod_locked_at_one_end_only_is_warned_of()
    {
        string job = CheckJobs.W6.Replace("outer: n1}", "outer: none}", StringComparison.Ordinal);
        JsonElement rod = CommandLine.FirstRod(job);

        Assert.Equal("inner", rod.GetProperty("locked").GetString());
        Assert.Contains(rod.GetProperty("warnings").EnumerateArray(), warning =>
            warning.GetProperty("code").GetString() == "one-joint-locked" && warning.GetProperty("end").GetString() == "outer");
    }

    [Fact]
    public void A_clamp_locks_a_joint_as_a_nut_does()
    {
        string job = CheckJobs.W6
            .Replace("outer: n1}", "outer: none}", StringComparison.Ordinal)
            .Replace("outer: {thread: M16x1.5, depth: 45 mm, bore: closed}", "outer: {thread: M16x1.5, depth: 45 mm, bore: closed, clamp: 20 mm}", StringComparison.Ordinal);

        Assert.Equal("both", CommandLine.FirstRod(job).GetProperty("locked").GetString());
    }

    [Fact]
    public void Same_hand_and_same_pitch_cannot_adjust()
    {
        string job = CheckJobs.W6.Replace("M16x2", "M16x1.5", StringComparison.Ordinal)
            .Replace("- {id: n2, thread: M16x1.5, thickness: 8 mm}", "- {id: n2, thread: M16x1.5, thickness: 8.5 mm}", StringComparison.Ordinal);
        CommandLine run = CommandLine.RunWith(job, "plan", "-");

        Assert.Equal(1, run.Status);
        Assert.Contains("same hand and the same pitch", run.Output, StringComparison.Ordinal);

        JsonElement still = CommandLine.FirstRod(job.Replace("adjust: 1 mm", "adjust: 0 mm", StringComparison.Ordinal));
        Assert.Equal("buildable", still.GetProperty("verdict").GetString());
        Assert.Equal(JsonValueKind.Null, still.GetProperty("per_turn").ValueKind);
        Assert.Equal(JsonValueKind.Null, still.GetProperty("lengthens").ValueKind);
    }

    [Fact]
    public void A_wrong_file_gives_its_place_on_standard_error_and_nothing_else()
    {
        string job = CheckJobs.W6.Replace("thread_length: 48 mm", "thread_length: 48", StringComparison.Ordinal);
        CommandLine run = CommandLine.RunWith(job, "plan", "-");

        Assert.Equal(2, run.Status);
        Assert.Empty(run.Output);
        Assert.Contains("-:6:69: error:", run.Error, StringComparison.Ordinal);
        Assert.Contains("^", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("plan", "no-such-file.yaml")]
    [InlineData("plan", "-", "--nonsense")]
    [InlineData("nonsense")]
    [InlineData("check")]
    [InlineData("check", "no-such-file.yaml")]
    [InlineData("plan", "@response")]
    public void A_wrong_command_line_is_status_2_with_nothing_on_standard_output(params string[] args)
    {
        CommandLine run = CommandLine.Run(args);

        Assert.Equal(2, run.Status);
        Assert.Empty(run.Output);
        Assert.NotEmpty(run.Error);
    }

    [Fact]
    public void An_unknown_rod_is_an_error_that_names_the_rods()
    {
        CommandLine run = CommandLine.Run("plan", Demo, "--rod", "lift");

        Assert.Equal(2, run.Status);
        Assert.Contains("left, right", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_goes_to_standard_output()
    {
        CommandLine help = CommandLine.Run("plan", "--help");
        Assert.Equal(0, help.Status);
        Assert.Contains("--json", help.Output, StringComparison.Ordinal);
        Assert.Empty(help.Error);
    }

    [Fact]
    public void Check_says_what_a_file_holds()
    {
        CommandLine run = CommandLine.Run("check", Repository.Sample("parts", "pinewater.yaml"), Demo, ShortSleeve);

        Assert.Equal(0, run.Status);
        Assert.Contains("sound; 2 inner ends, 3 sleeves, 2 outer ends, 2 jam nuts, 3 materials", run.Output, StringComparison.Ordinal);
        Assert.Contains("sound; a job with 2 rods", run.Output, StringComparison.Ordinal);
    }
}
