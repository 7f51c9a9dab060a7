using System.Text.Json;
using System.Xml.Linq;
using static TieRodCalc.Cli.Tests.BumpJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>Swing of the joints as a limit like the others, in every command that plans a rod; and the bump sheet on the bench sheet.</summary>
public sealed class SwingTests
{
    /// <summary>The inner joint of the sample swings 10.189 degrees over travel and steering.</summary>
    private static string TooLittle => Corner.With("swing: 14 deg", "swing: 3 deg");

    private static string StudUnknown => TooLittle.With("    joint: tapered stud\n    swing: 3 deg\n    stud: vertical\n", "    joint: tapered stud\n    swing: 3 deg\n");

    [Fact]
    public void A_joint_that_runs_out_is_in_the_heading_in_the_rows_and_in_the_status()
    {
        string plan = Run(TooLittle, 1, "plan", "-");
        Assert.Contains("ROD left: BUILDABLE AFTER CUTTING, A JOINT RUNS OUT OF SWING", plan, StringComparison.Ordinal);
        Assert.Contains(
            "swing, inner joint 10.189 deg at 60.00 mm bump, inner joint steered 55.00 mm to the left; 3.000 deg allowed each way: RUNS OUT OF "
                + "SWING by 7.189 deg; a joint that does so bends its shank",
            plan,
            StringComparison.Ordinal);
        Assert.Contains("RUNS OUT OF SWING by 7.189 deg", Run(TooLittle, 1, "bump", "-"), StringComparison.Ordinal);

        string holds = Run(Corner, 0, "plan", "-");
        Assert.Contains("swing, inner joint 10.189 deg", holds, StringComparison.Ordinal);
        Assert.DoesNotContain("OUT OF SWING", holds, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(14, 0)]
    [InlineData(3, 1)]
    public void In_json_it_says_by_how_much(double allowed, int status)
    {
        string job = allowed == 3 ? TooLittle : Corner;
        JsonElement[] swing = [.. CommandLine.FirstRod(job, status).GetProperty("swing").EnumerateArray()];

        Assert.Equal(["inner", "outer"], swing.Select(each => each.Word("end")!));
        Assert.All(swing, each => Assert.Equal("swing", each.Word("limit")));
        Assert.Equal(allowed, swing[0].Number("allowed_deg"));
        Assert.Equal(Math.Max(0, swing[0].Number("most_deg") - allowed), swing[0].Number("missed_by_deg"), 1e-6);
        Assert.Equal(0, swing[1].Number("missed_by_deg"));
        Assert.Equal(
            swing.Select(each => each.GetRawText().Replace(" ", string.Empty, StringComparison.Ordinal)),
            Side(job, status).GetProperty("corner").GetProperty("swing").EnumerateArray()
                .Select(each => each.GetRawText().Replace(" ", string.Empty, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_stud_that_stands_nobody_knows_how_is_remarked_and_leaves_the_status()
    {
        const string Remark = "swing, inner joint not checked, its end does not say how the stud stands ('stud'); 3.000 deg allowed each way";
        Assert.Contains(Remark, Run(StudUnknown, 0, "plan", "-"), StringComparison.Ordinal);
        Assert.Contains(Remark, Run(StudUnknown, 0, "bump", "-"), StringComparison.Ordinal);
        JsonElement inner = CommandLine.FirstRod(StudUnknown).GetProperty("swing")[0];
        Assert.Equal((JsonValueKind.Null, JsonValueKind.Null), (inner.GetProperty("most_deg").ValueKind, inner.GetProperty("missed_by_deg").ValueKind));
        Assert.Equal(0, SheetFile.Of(StudUnknown).Run.Status);
    }

    [Fact]
    public void Without_a_corner_there_is_no_swing()
    {
        string job = Corner[..Corner.IndexOf("\ncorner:\n", StringComparison.Ordinal)] + "\n";
        Assert.DoesNotContain("swing, ", Run(job, 0, "plan", "-"), StringComparison.Ordinal);
        Assert.Equal(0, CommandLine.FirstRod(job).GetProperty("swing").GetArrayLength());
        Assert.Equal(0, CommandLine.FirstRod(CheckJobs.W1).GetProperty("swing").GetArrayLength());
    }

    [Fact]
    public void The_bench_sheet_has_it_for_a_headline()
    {
        SheetFile sheet = SheetFile.Of(TooLittle);
        Assert.Equal(1, sheet.Run.Status);
        Assert.Contains("A JOINT RUNS OUT OF SWING", SheetFile.Words(sheet.Rods[0]).ToUpperInvariant(), StringComparison.Ordinal);
        Assert.Contains(
            sheet.Rods[0].Descendants("p").Where(each => (string?)each.Attribute("class") == "headline").Select(SheetFile.Words),
            words => words.StartsWith("Swing, inner joint: 10.189 deg", StringComparison.Ordinal));
        SheetFile holds = SheetFile.Of(Corner);
        Assert.Equal(0, holds.Run.Status);
        Assert.DoesNotContain("OUT OF SWING", SheetFile.Words(holds.Page).ToUpperInvariant(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_bench_sheet_carries_the_picture_of_the_readings_of_its_wheel_alone()
    {
        SheetFile both = SheetFile.Of(Both);
        Assert.Equal(["Bump sheet, left wheel", "Bump sheet, right wheel"], both.Rods.Select(rod => Assert.Single(Bumps(rod)).Element("h3")!.Value));
        Assert.StartsWith(
            "Dots: measured, worst 0.0230 in per inch of travel, felt by the driver; squares: predicted, raise the outer joint 5/32 in, worst 0.0062 in per inch.",
            SheetFile.Words(Bumps(both.Rods[0])[0].Element("p")!),
            StringComparison.Ordinal);

        string right = Both[..Both.IndexOf("  - side: left\n    gauge", StringComparison.Ordinal)] + Both[Both.IndexOf("  - side: right\n    gauge", StringComparison.Ordinal)..];
        Assert.Equal([0, 1], SheetFile.Of(right).Rods.Select(rod => Bumps(rod).Length));
        Assert.Equal([0], SheetFile.Of(CornerAlone).Rods.Select(rod => Bumps(rod).Length));
        Assert.All(SheetFile.OfSample("car-27.yaml").Rods, rod => Assert.Empty(Bumps(rod)));
    }

    [Fact]
    public void Its_small_picture_stays_inside_and_its_words_apart()
    {
        foreach (string job in (string[])[Both, Both.With("units: in", "units: mm"), Corner, Height, Job(6, 293), Unread + Bump(Sheet(1e-4, 0, travels: 40))])
        {
            foreach (XElement picture in SheetFile.Of(job).Rods.SelectMany(Bumps).Select(block => block.Element(DrawnPicture.Svg + "svg")!))
            {
                double[] frame = DrawnPicture.Numbers((string)picture.Attribute("viewBox")!);
                DrawnBox[] boxes = [.. picture.Descendants(DrawnPicture.Svg + "text").Select(BumpPictureTests.Box)];
                Assert.All(boxes, box => Assert.True(box.Left >= 0 && box.Top >= 0 && box.Right <= frame[2] && box.Bottom <= frame[3], $"outside: {box}"));
                for (int one = 0; one < boxes.Length; one++)
                {
                    Assert.All(boxes[(one + 1)..], other => Assert.False(boxes[one].Meets(other), $"'{boxes[one].What}' and '{other.What}' overlap"));
                }
            }
        }
    }

    /// <summary>Neither readings nor a joint that runs out touch what these say; a note on the file alone says that swing is not checked.</summary>
    [Theory]
    [InlineData("toe", "--left-only")]
    [InlineData("choose")]
    public void Toe_and_choose_do_not_mind_bump_sheets_and_corners(string command, params string[] options)
    {
        string job = Corner.With("  plates: 610 mm\n", "  plates: 610 mm\n  toe: {now: 2 mm out, want: 1 mm in}\n");
        CommandLine plain = CommandLine.RunWith(job[..job.IndexOf("bump:\n", StringComparison.Ordinal)], [command, "-", .. options]);
        CommandLine told = CommandLine.RunWith(job, [command, "-", .. options]);

        Assert.Contains(command == "toe" ? "TURN THE SLEEVE" : "ONE FOUND", told.Output, StringComparison.Ordinal);
        Assert.Equal(plain with { Output = WithoutNotes(plain.Output) }, told);
        Assert.Equal(told, CommandLine.RunWith(job.With("swing: 14 deg", "swing: 3 deg"), [command, "-", .. options]));
    }

    private static string WithoutNotes(string output)
    {
        int from = output.IndexOf("Notes on the files\n", StringComparison.Ordinal);
        return output.Remove(from, output.IndexOf("\n\n", from, StringComparison.Ordinal) + 2 - from);
    }

    private static XElement[] Bumps(XElement rod) =>
        [.. rod.Descendants("div").Where(block => block.Element("h3")?.Value.StartsWith("Bump sheet", StringComparison.Ordinal) == true)];

    private static string Run(string job, int status, params string[] args)
    {
        CommandLine run = CommandLine.RunWith(job, args);
        Assert.True(run.Status == status, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return PlanPage.Joined(run.Output);
    }
}
