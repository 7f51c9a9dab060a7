using System.Text.Json.Nodes;
using static TieRodCalc.Cli.Tests.NewRun;

namespace TieRodCalc.Cli.Tests;

/// <summary>What was answered gives the plan that the same job gives as files written by hand.</summary>
public sealed class NewPlanTests : IDisposable
{
    private static readonly string[] Jam = ["new", "", "9 mm", "jn-m18l", "jam nut M18 left-hand"];

    private readonly NewRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void The_demo_rod_gives_the_plan_of_the_demo_job()
    {
        CommandLine demo = CommandLine.Run("plan", Repository.Sample("jobs", "car-27.yaml"), "--rod", "left");
        CommandLine asked = _run.Answer(Left);

        Assert.Equal((ExitStatus.Holds, demo.Output), (asked.Status, asked.Output));
        Assert.Equal(["no-27-coupe-parts.yaml", "no-27-coupe.yaml"], _run.Files);
        Assert.Contains(
            $"Written: {_run.PartFile} and {_run.JobFile}.\nThe plan again: tierodcalc plan {_run.JobFile}\n",
            asked.Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_rod_gives_the_same_JSON_and_its_files_give_it_again()
    {
        string demo = CommandLine.Run("plan", Repository.Sample("jobs", "car-27.yaml"), "--rod", "left", "--json").Output;

        Assert.Equal(demo, _run.Answer(Left, "--json").Output);
        Assert.Equal(demo, CommandLine.Run("plan", _run.JobFile, "--json").Output);
    }

    /// <summary>The right rod has an inner end of its own and takes the other parts of the left one.</summary>
    [Fact]
    public void Both_demo_rods_give_the_whole_plan_of_the_demo_job()
    {
        int another = Array.IndexOf(Left, "no");
        string[] right =
        [
            "right", "", "new", "M18x1.5-6g LH", "198 mm ± 0.5 mm", "70 mm", "1.5 mm", "14 mm", "25 mm", "", "tapered", "in-m18l-198",
            "bent inner end, M18 left-hand, short shank", "st-850", "", "", "", "", "15 1/2 in", "3/16 in", "", "",
        ];
        CommandLine demo = CommandLine.Run("plan", Repository.Sample("jobs", "car-27.yaml"));
        CommandLine asked = _run.Answer([.. Left[..another], "yes", .. right, .. Left[(another + 1)..]]);

        Assert.Equal((ExitStatus.Holds, demo.Output), (asked.Status, asked.Output));
        Assert.Equal(
            CommandLine.Run("toe", Repository.Sample("jobs", "car-27.yaml"), "--json").Output,
            CommandLine.Run("toe", _run.JobFile, "--json").Output);
    }

    [Fact]
    public void A_socket_takes_the_inner_end_without_a_sleeve()
    {
        string[] answers =
        [
            "No. 27 ice-race coupe, rear steering rack (invented demo data)", "", "", "",
            "M14x1.5-6g", "300 mm ± 0.5 mm", "70 mm", "1.5 mm", "", "20 mm", "", "", "in-m14r-rack-300", "rack rod M14 right-hand 300 mm",
            "st-900", "steel", "900 MPa",
            "none",
            "62 mm", "M14x1.5-6H", "38 mm", "", "0.75 mm", "", "", "tapered stud", "rk-m14r-62",
            "socket end M14 right-hand for rack rods 62 mm", "st-900",
            "new", "M14x1.5-6H", "7 mm", "jn-m14r-thin", "thin jam nut M14 right-hand",
            "12 3/4 in", "1/8 in", "", "",
            "", "", "1/32 in", "1/16 in", "",
            "", "", "4 1/2 in", "ahead of axle", "3 deg", "24 in", "1/2 in out", "1/8 in in", "", "",
        ];
        CommandLine demo = CommandLine.Run("plan", Repository.Sample("jobs", "car-27-rack.yaml"), "--rod", "left", "--json");
        CommandLine asked = _run.Answer(answers, "--json");

        Assert.True(asked.Status == demo.Status, asked.Error);
        Assert.Equal(WithoutCatalog(demo.Output), WithoutCatalog(asked.Output));
    }

    [Fact]
    public void A_rod_that_cannot_be_built_is_written_and_planned_with_status_1()
    {
        const string Demo = "No. 27 ice-race coupe, a sleeve too short (invented demo data)";
        string[] answers = With(
            Left, (0, Demo), (At("8 in"), "5 in"), (At("sl-8-m18l-58r"), "sl-5-m18l-58r"), (At("8 in sleeve"), "5 in sleeve"),
            (At("1.5 in"), ""), (At("1/32 in"), ""), (At("1/32 in") + 1, ""));
        CommandLine demo = CommandLine.Run("plan", Repository.Sample("jobs", "car-27-short-sleeve.yaml"));
        CommandLine asked = _run.Answer(answers);

        Assert.Equal((ExitStatus.DoesNotHold, demo.Output), (asked.Status, asked.Output));
        Assert.Equal(2, _run.Files.Length);
    }

    [Fact]
    public void Clocking_is_asked_where_both_ends_are_bent()
    {
        int offset = At("1 3/4 in") + 2;
        int longer = Array.IndexOf(Left, "no");
        string[] bent = With(Left, (offset, "10 mm"));
        CommandLine asked = _run.Answer([.. bent[..longer], "90 degrees", "90 deg", .. bent[longer..]], "--json");
        JsonNode rod = JsonNode.Parse(asked.Output)!["rods"]![0]!;

        Assert.Contains("Clocking", asked.Error, StringComparison.Ordinal);
        Assert.Contains("clocking: 90 deg\n", File.ReadAllText(_run.JobFile), StringComparison.Ordinal);

        // 14 mm and 10 mm at a right angle leave the root of their squares beside the axis.
        double axial = Math.Sqrt((393.7 * 393.7) - (14 * 14) - (10 * 10));
        Assert.Equal(axial, rod["length"]!["axial_mm"]!.GetValue<double>(), 1e-5);
    }

    [Fact]
    public void A_clamp_makes_no_nut_the_usual_answer()
    {
        int clamp = At("1.5 in") + 1;
        int nut = At("new") + 1 + Array.IndexOf(Left[(At("new") + 1)..], "new");
        string[] answers = With(Left, (clamp, "0.5 in"));
        CommandLine asked = _run.Answer([.. answers[..nut], "", .. answers[(nut + Jam.Length)..]]);

        Assert.Contains("(new, none) [none] > \n", asked.Error, StringComparison.Ordinal);
        Assert.Contains("      inner: none\n", File.ReadAllText(_run.JobFile), StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Holds, asked.Status);
    }

    /// <summary>The notes on the big sample's files are about parts that the dialog has not.</summary>
    private static string WithoutCatalog(string json)
    {
        JsonNode plan = JsonNode.Parse(json)!;
        plan.AsObject().Remove("notes");
        return plan.ToJsonString();
    }
}
