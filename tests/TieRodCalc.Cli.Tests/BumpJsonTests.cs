using System.Text.Json;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;
using static TieRodCalc.Cli.Tests.BumpJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>bump --json</c> gives: the names of the contract, the values of the library.</summary>
public sealed class BumpJsonTests
{
    public static TheoryData<string, int> Jobs => new()
    {
        { Both, 1 },
        { Corner, 0 },
        { CornerAlone, 0 },
        { CornerAlone.With("travel: {bump: 60 mm, droop: 60 mm}", "travel: {bump: 400 mm, droop: 60 mm}"), 1 },
        { TooShort, 0 },
        { Height.With("  plates: 610 mm\n", string.Empty), 0 },
        { Unread + Bump(Sheet(1e-4, 0, travels: 40)), 1 },
        { Unread + Bump(Sheet(0, -4e-3 / Arm)), 1 },
        { Height.With("  arm: 150 mm\n  joint: behind axle\n", string.Empty).With(", resolution: 0.02 mm", string.Empty), 1 },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Names_and_values_are_those_of_the_library(string job, int status)
    {
        JsonElement[] sides = [.. Json(job, status).GetProperty("sides").EnumerateArray()];
        Job read = JobChanges.Read(job).Value!;
        BumpSide[] expected = [.. ((CarSide[])[CarSide.Left, CarSide.Right])
            .Select(side => BumpReport.OfSide(read, side, read.Rods.SingleOrDefault(rod => rod.Side == side))).OfType<BumpSide>()];
        Assert.Equal(expected.Length, sides.Length);
        foreach ((BumpSide side, JsonElement json) in expected.Zip(sides))
        {
            JsonLeaves.Equal(BumpMapping.Of(side, read), JsonLeaves.Of(json));
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Steps_ascend_and_make_up_the_curve(string job, int status)
    {
        foreach (JsonElement side in Json(job, status).GetProperty("sides").EnumerateArray())
        {
            JsonElement[] steps = [.. side.GetProperty("steps").EnumerateArray()];
            Assert.All(steps, step => Assert.True(step.Number("from_mm") < step.Number("to_mm")));
            Assert.All(steps.Zip(steps.Skip(1)), pair => Assert.Equal(pair.First.Number("to_mm"), pair.Second.Number("from_mm")));
            Assert.All(steps, step => Assert.Equal(
                step.Number("at_gauge_mm") / (step.Number("to_mm") - step.Number("from_mm")) * 25.4, step.Number("per_inch_at_gauge_mm"), 2e-5));
            if (steps.Length > 0)
            {
                Assert.Equal(steps.Max(step => Math.Abs(step.Number("per_inch_at_gauge_mm"))), side.Number("worst_per_inch_at_gauge_mm"), 1e-6);
            }
        }
    }

    /// <summary>Written by hand from the formulas: slope 3 / (285 * 150) rad a millimeter, of which 3 mm of height are all.</summary>
    [Fact]
    public void A_wrong_height_has_the_numbers_of_its_formulas()
    {
        JsonElement side = Side(Height);
        const double Slope = 3 / (Rod * Arm);

        Assert.Equal(Slope * 180 / Math.PI, side.Number("slope_deg_per_mm"), 1e-6);
        Assert.Equal(0, side.Number("curvature_deg_per_mm2"), 1e-6);
        Assert.Equal(3, side.Number("outer_raise_mm"), 1e-3);
        Assert.Equal(0, side.Number("rod_longer_mm"), 0.01);
        Assert.Equal(Rod, side.Number("wanted_length_mm"), 0.01);
        Assert.Equal(("height", "fair"), (side.Word("work"), side.Word("grade")));
        Assert.Equal(Spacing * 25.4 * Slope, side.Number("worst_per_inch_at_gauge_mm"), 1e-4);
        Assert.Equal(3, side.GetProperty("height_alone").GetProperty("rounded").Number("outer_raise_mm"));
        Assert.Equal(JsonValueKind.Null, side.GetProperty("measured_effect").ValueKind);
        Assert.Equal(JsonValueKind.Null, side.GetProperty("corner").ValueKind);
    }

    [Fact]
    public void One_side_is_asked_for()
    {
        Assert.Equal(["left", "right"], Sides(Json(Both, 1)));
        Assert.Equal(["left"], Sides(Json(Both, 0, "--side", "left")));
        Assert.Equal(["right"], Sides(Json(Both, 1, "--side", "right")));

        static string[] Sides(JsonElement root) => [.. root.GetProperty("sides").EnumerateArray().Select(side => side.Word("side")!)];
    }

    [Fact]
    public void The_top_says_version_job_and_notes()
    {
        JsonElement root = Json(Both, 1);
        Assert.Equal(["tierodcalc", "job", "sides", "notes"], root.EnumerateObject().Select(property => property.Name));
        Assert.Equal(1, root.GetProperty("tierodcalc").GetInt32());
        Assert.Equal(JsonValueKind.Null, Json(Height).GetProperty("job").ValueKind);
        Assert.Equal(JobChanges.Read(Height).Notes.Count, Json(Height).GetProperty("notes").GetArrayLength());
    }
}
