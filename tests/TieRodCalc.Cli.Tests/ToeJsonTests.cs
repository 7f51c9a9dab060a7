using System.Text.Json;
using static TieRodCalc.Cli.Tests.ToeJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>The figures of <c>toe --json</c>, each held against the law of cosines.</summary>
public sealed class ToeJsonTests
{
    private const double Near = 1e-6;

    [Fact]
    public void A_total_is_split_between_the_rods_and_each_is_turned_to_the_nearest_eighth()
    {
        JsonElement root = Json(Both);
        double now = Degrees(-1.5);
        double want = Degrees(0.75);
        double change = Change(want - now);
        double exact = change / PerTurn;
        double turns = Math.Round(exact * 8) / 8;
        double after = now + ToeJobs.Toe(turns * PerTurn);
        Assert.Equal(0.125, turns);

        foreach (JsonElement side in root.GetProperty("sides").EnumerateArray())
        {
            Assert.Equal(Rod, side.Number("present_mm"), Near);
            Assert.Equal(change, side.Number("change_mm"), Near);
            Assert.Equal(Rod + change, side.Number("wanted_mm"), Near);
            Assert.Equal(exact, side.Number("exact_turns"), Near);
            Assert.Equal(turns, side.Number("turns"));
            Assert.Equal(6 * turns, side.Number("flats"));
            Assert.Equal("counterclockwise", side.Word("direction"));
            Assert.Equal("looking from the inner end outward", side.Word("seen_from"));
            Assert.Equal(now, side.Number("toe_now_deg"), Near);
            Assert.Equal(want, side.Number("toe_want_deg"), Near);
            Assert.Equal(after, side.Number("toe_after_deg"), Near);
            Assert.Equal(Plates * Math.Sin(after * Math.PI / 180), side.Number("toe_after_at_plates_mm"), Near);
            Assert.Equal(want - after, side.Number("left_over_deg"), Near);
            Assert.False(side.GetProperty("refused").GetBoolean());
            Assert.Equal("holds", side.Word("outcome"));
        }

        Assert.Equal(["left", "right"], root.GetProperty("sides").EnumerateArray().Select(side => side.Word("side")));
        Assert.Equal(["l", "r"], root.GetProperty("sides").EnumerateArray().Select(side => side.Word("rod")));
        JsonElement total = root.GetProperty("total");
        Assert.Equal(-3, total.Number("now_mm"), Near);
        Assert.Equal(1.5, total.Number("want_mm"), Near);
        Assert.Equal(2 * Plates * Math.Sin(after * Math.PI / 180), total.Number("after_mm"), Near);
        Assert.Equal(2 * after, total.Number("after_deg"), Near);
        Assert.Equal("plates", total.Word("measured_at"));
        Assert.Equal(Plates, total.Number("width_mm"), Near);
    }

    [Fact]
    public void The_joints_are_those_after_the_move()
    {
        // An eighth of a turn: 0.1875 mm out of each face. The setting of the plan is 71.875 and 33.125 mm in; the lead is 1.5 mm and the
        // countersink 0.75 mm; 1.5 diameters are 24 mm.
        JsonElement side = Json(Both).GetProperty("sides")[0];
        Assert.Equal((13.75 / 3) - 0.125, side.GetProperty("adjust_after").Number("longer_turns"), Near);
        Assert.Equal((12.0 / 3) + 0.125, side.GetProperty("adjust_after").Number("shorter_turns"), Near);
        JsonElement joints = side.GetProperty("joints");

        JsonElement inner = joints.GetProperty("inner");
        Assert.Equal(110 - 71.875, inner.Number("showing_now_mm"), Near);
        Assert.Equal(110 - 71.6875, inner.Number("showing_mm"), Near);
        Assert.Equal(35 - 0.75, inner.Number("engaged_mm"), Near);
        Assert.Equal(24, inner.Number("required_mm"), Near);
        Assert.Equal(110 - 71.6875 - 8, inner.Number("nut_room_mm"), Near);
        Assert.Equal("clockwise", inner.Word("nut_loosens"));
        JsonElement outer = joints.GetProperty("outer");
        Assert.Equal(48 - 33.125, outer.Number("showing_now_mm"), Near);
        Assert.Equal(48 - 32.9375, outer.Number("showing_mm"), Near);
        Assert.Equal(32.9375 - 1.5 - 0.75, outer.Number("engaged_mm"), Near);
        Assert.Equal(48 - 32.9375 - 8, outer.Number("nut_room_mm"), Near);
        Assert.Equal("counterclockwise", outer.Word("nut_loosens"));
    }

    [Theory]
    [InlineData("behind axle", "3 mm out", "1.5 mm in", "counterclockwise")]
    [InlineData("behind axle", "3 mm in", "1.5 mm out", "clockwise")]
    [InlineData("ahead of axle", "3 mm out", "1.5 mm in", "clockwise")]
    [InlineData("ahead of axle", "3 mm in", "1.5 mm out", "counterclockwise")]
    public void The_direction_turns_over_with_the_toe_and_with_the_place_of_the_joint(string joint, string now, string want, string way)
    {
        string job = Both.With("behind axle", joint).WithToe($"{{now: {now}, want: {want}}}");

        Assert.All(Json(job).GetProperty("sides").EnumerateArray(), side => Assert.Equal(way, side.Word("direction")));
        string swapped = way == "clockwise" ? "counterclockwise" : "clockwise";
        Assert.All(
            Json(job.WithHandsSwapped()).GetProperty("sides").EnumerateArray(), side => Assert.Equal(swapped, side.Word("direction")));
    }

    [Theory]
    [InlineData("--left-only", "left", "l")]
    [InlineData("--right-only", "right", "r")]
    public void One_rod_alone_makes_up_the_whole_change(string option, string side, string rod)
    {
        JsonElement root = Json(Both, options: option);
        JsonElement only = Assert.Single(root.GetProperty("sides").EnumerateArray());
        double want = Degrees(1.5 + 1.5);

        Assert.Equal((side, rod), (only.Word("side"), only.Word("rod")));
        Assert.Equal(want, only.Number("toe_want_deg"), Near);
        Assert.Equal(Change(want - Degrees(-1.5)), only.Number("change_mm"), Near);
        double after = only.Number("toe_after_deg") * Math.PI / 180;
        Assert.Equal(-1.5 + Plates * Math.Sin(after), root.GetProperty("total").Number("after_mm"), Near);
        Assert.Contains(
            root.GetProperty("warnings").EnumerateArray(), warning => warning.Word("code") == "steering-wheel-leaves-center");
    }

    [Fact]
    public void Where_each_wheel_was_measured_each_goes_to_its_half_and_the_steering_wheel_comes_back_to_center()
    {
        JsonElement root = Json(Both.WithToe("{now: {each: {left: 6 mm in, right: 8 mm out}}, want: 2 mm in}"));
        JsonElement[] sides = [.. root.GetProperty("sides").EnumerateArray()];

        Assert.Equal(Degrees(6), sides[0].Number("toe_now_deg"), Near);
        Assert.Equal(Degrees(-8), sides[1].Number("toe_now_deg"), Near);
        Assert.All(sides, side => Assert.Equal(Degrees(1), side.Number("toe_want_deg"), Near));
        Assert.Equal(("clockwise", "counterclockwise"), (sides[0].Word("direction"), sides[1].Word("direction")));
        Assert.Equal(-2, root.GetProperty("total").Number("now_mm"), Near);
        Assert.DoesNotContain(root.GetProperty("warnings").EnumerateArray(), warning => warning.Word("code") == "halves-assumed");
        Assert.Contains(Json(Both).GetProperty("warnings").EnumerateArray(), warning => warning.Word("code") == "halves-assumed");
    }

    [Fact]
    public void Toe_may_be_an_angle_or_a_length_at_the_tire()
    {
        JsonElement angle = Json(Both.WithToe("{now: 0.5 deg out, want: 0.2 deg in}").With("  plates: 610 mm\n", string.Empty));
        JsonElement side = angle.GetProperty("sides")[0];
        Assert.Equal(-0.25, side.Number("toe_now_deg"), Near);
        Assert.Equal(Change(0.35), side.Number("change_mm"), Near);
        Assert.Equal(JsonValueKind.Null, side.GetProperty("toe_after_at_plates_mm").ValueKind);
        Assert.Equal(JsonValueKind.Null, angle.GetProperty("total").GetProperty("now_mm").ValueKind);
        Assert.Equal(-0.5, angle.GetProperty("total").Number("now_deg"), Near);
        Assert.Contains(angle.GetProperty("warnings").EnumerateArray(), warning => warning.Word("code") == "plates-not-given");

        JsonElement tire = Json(Both.With("plates: 610 mm", "tire: 650 mm"));
        Assert.Equal(Math.Asin(-1.5 / 650) * 180 / Math.PI, tire.GetProperty("sides")[0].Number("toe_now_deg"), Near);
        Assert.Equal("tire", tire.GetProperty("total").Word("measured_at"));
        Assert.Equal(-3, tire.GetProperty("total").Number("now_mm"), Near);
        Assert.Equal(
            650 * Math.Sin(tire.GetProperty("sides")[0].Number("toe_after_deg") * Math.PI / 180),
            tire.GetProperty("sides")[0].Number("toe_after_at_tire_mm"),
            1e-5);
    }

    [Theory]
    [InlineData("120 mm in", "engagement", "outer", 4.5, 1)]
    [InlineData("120 mm out", "tips", null, 4, -1)]
    public void A_move_past_a_limit_is_refused_with_what_can_be_turned(string want, string limit, string? end, double reachable, int longer)
    {
        JsonElement root = Json(Both.WithToe($"{{now: 0 in, want: {want}}}"), expectedStatus: 1);

        Assert.All(root.GetProperty("sides").EnumerateArray(), side =>
        {
            Assert.True(side.GetProperty("refused").GetBoolean());
            Assert.Equal("refused", side.Word("outcome"));
            Assert.Equal(JsonValueKind.Null, side.GetProperty("toe_after_deg").ValueKind);
            JsonElement part = side.GetProperty("reachable");
            Assert.Equal((limit, end), (part.Word("limit"), part.Word("end")));
            Assert.Equal(reachable, part.Number("turns"));
            Assert.Equal(6 * reachable, part.Number("flats"));
            Assert.Equal(ToeJobs.Toe(longer * reachable * PerTurn), part.Number("toe_deg"), Near);
            Assert.Equal(13.75 / 3, side.GetProperty("adjust").Number("longer_turns"), Near);
        });
        Assert.Equal(JsonValueKind.Null, root.GetProperty("total").GetProperty("after_mm").ValueKind);
    }

    [Fact]
    public void Every_key_is_there_whatever_came_of_it()
    {
        string[] sideKeys =
        [
            "side", "rod", "outcome", "refused", "present_mm", "wanted_mm", "change_mm", "turned", "turns", "exact_turns", "step_turns",
            "flats", "direction", "seen_from", "toe_now_deg", "toe_want_deg", "toe_after_deg", "toe_after_at_plates_mm",
            "toe_after_at_tire_mm", "left_over_deg", "toe_per_step_deg", "past_a_limit", "adjust", "adjust_after", "reachable", "joints",
        ];
        foreach (JsonElement root in (JsonElement[])[Json(Both), Json(Both.WithToe("{now: 0 in, want: 120 mm in}"), 1)])
        {
            Assert.Equal(["tierodcalc", "job", "split", "sides", "total", "warnings", "notes"], Keys(root));
            Assert.Equal(
                ["now_mm", "want_mm", "after_mm", "reachable_mm", "now_deg", "want_deg", "after_deg", "measured_at", "width_mm"],
                Keys(root.GetProperty("total")));
            Assert.All(root.GetProperty("sides").EnumerateArray(), side => Assert.Equal(sideKeys, Keys(side)));
            Assert.Equal(["code", "side", "end", "text"], Keys(root.GetProperty("warnings")[0]));
        }
    }

    private static string[] Keys(JsonElement element) => [.. element.EnumerateObject().Select(property => property.Name)];
}
