using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>The JSON of <c>thread</c>: its names, and its numbers against those of other sources.</summary>
public sealed class ThreadJsonTests
{
    private const double Inch = 25.4;

    private static readonly string[] Keys =
    [
        "tierodcalc", "external", "internal", "stress_area_mm2", "pitch_mm", "tap_drill_mm", "tap_drills", "required", "loads", "pair",
        "look_alikes", "warnings",
    ];

    [Fact]
    public void A_single_thread_has_every_key_and_no_pair()
    {
        JsonElement root = ThreadRun.Json(0, "5/8-18");
        Assert.Equal(Keys, Names(root));
        string[] member =
        [
            "designation", "class", "class_assumed", "major_mm", "pitch_mm", "minor_mm", "hand", "series", "special", "beyond_tables",
            "basic",
        ];
        Assert.Equal(member, Names(root.GetProperty("external")));
        Assert.Equal(member, Names(root.GetProperty("internal")));
        Assert.Equal(["major_mm", "pitch_mm", "minor_mm"], Names(root.GetProperty("external").GetProperty("basic")));
        Assert.Equal(
            ["rule_mm", "strength_mm", "required_mm", "governed_by", "j", "c1", "c2", "c3"], Names(root.GetProperty("required")));
        Assert.Equal(
            ["designation", "direction", "outcome", "turns", "overlap_mm"], Names(root.GetProperty("look_alikes")[0]));
        Assert.Equal(["drill", "diameter_mm"], Names(root.GetProperty("tap_drills")[0]));
        Assert.Equal(["code", "text"], Names(root.GetProperty("warnings")[0]));
        Assert.Equal(1, root.GetProperty("tierodcalc").GetInt32());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("pair").ValueKind);
        Assert.Equal(JsonValueKind.Null, root.GetProperty("loads").ValueKind);
    }

    [Fact]
    public void Limits_are_those_of_the_printed_tables()
    {
        // 5/8-18 UNF, classes 2A and 2B of ASME B1.1; from memory.
        JsonElement root = ThreadRun.Json(0, "5/8-18", "UNF-2A", "LH");
        Inches([0.6149, 0.6236], root, "external", "major_mm");
        Inches([0.5828, 0.5875], root, "external", "pitch_mm");
        Assert.Null(ThreadRun.Numbers(root, "external", "minor_mm")[0]);
        Inches([0.5889, 0.5949], root, "internal", "pitch_mm");
        Inches([0.565, 0.578], root, "internal", "minor_mm");
        Inches([0.565, 0.578], root, "tap_drill_mm");
        Assert.Equal([15.875, null], ThreadRun.Numbers(root, "internal", "major_mm"));
        JsonElement external = root.GetProperty("external");
        Assert.Equal("5/8-18 UNF-2A LH", external.GetProperty("designation").GetString());
        Assert.False(external.GetProperty("class_assumed").GetBoolean());
        Assert.Equal("5/8-18 UNF-2B LH", root.GetProperty("internal").GetProperty("designation").GetString());
        Assert.True(root.GetProperty("internal").GetProperty("class_assumed").GetBoolean());
        Assert.Equal("left-hand", external.GetProperty("hand").GetString());

        // M18x1.5, 6g and 6H of ISO 965-2; from memory.
        JsonElement metric = ThreadRun.Json(0, "M18x1.5-6H");
        Assert.Equal([17.732, 17.968], ThreadRun.Numbers(metric, "external", "major_mm"));
        Assert.Equal([16.854, 16.994], ThreadRun.Numbers(metric, "external", "pitch_mm"));
        Assert.Equal([16.376, 16.676], ThreadRun.Numbers(metric, "internal", "minor_mm"));
        Assert.Equal("M18x1.5-6g", metric.GetProperty("external").GetProperty("designation").GetString());
        Assert.True(metric.GetProperty("external").GetProperty("class_assumed").GetBoolean());
        Assert.False(metric.GetProperty("internal").GetProperty("class_assumed").GetBoolean());
    }

    [Fact]
    public void Basic_sizes_and_stress_areas_are_those_of_the_standards()
    {
        JsonElement unified = ThreadRun.Json(0, "5/8-18");
        Assert.Equal(0.2560, ThreadRun.Number(unified, "stress_area_mm2") / (Inch * Inch), 4);
        Assert.Equal(0.5889, ThreadRun.Number(unified, "external", "basic", "pitch_mm") / Inch, 4);
        Assert.Equal(Inch / 18, ThreadRun.Number(unified, "pitch_mm"), 6);

        JsonElement metric = ThreadRun.Json(0, "M18x1.5");
        Assert.Equal(216.2, ThreadRun.Number(metric, "stress_area_mm2"), 1);
        Assert.Equal(18, ThreadRun.Number(metric, "internal", "basic", "major_mm"));
        Assert.Equal(17.026, ThreadRun.Number(metric, "internal", "basic", "pitch_mm"), 3); // ISO 724
        Assert.Equal(16.376, ThreadRun.Number(metric, "internal", "basic", "minor_mm"), 3);
    }

    [Theory]
    [InlineData("5/8-18 UNF-2A", 0.508 * Inch, 0.0005 * Inch)]
    [InlineData("11/16-18 UNS", 0.563 * Inch, 0.0005 * Inch)]
    [InlineData("M18x1.5-6g", 14.6, 0.1)] // The other source took the tolerances before they are rounded to preferred numbers.
    public void Threads_of_equal_strength_need_what_their_areas_say(string thread, double expectedMm, double tolerance)
    {
        JsonElement root = ThreadRun.Json(0, thread, "--male-tensile", "90 ksi", "--female-tensile", "90 ksi");
        Assert.Equal(expectedMm, ThreadRun.Number(root, "required", "strength_mm"), tolerance);
        Assert.True(ThreadRun.Number(root, "required", "j") < 1);
        Assert.Equal("rule", root.GetProperty("required").GetProperty("governed_by").GetString());
        Assert.Equal(ThreadRun.Number(root, "required", "rule_mm"), ThreadRun.Number(root, "required", "required_mm"));
    }

    [Fact]
    public void A_strong_male_in_a_weak_female_needs_more_than_the_rule()
    {
        string[] words = ["5/8-18", "--male-tensile", "120", "ksi", "--female-tensile", "45", "ksi"];
        JsonElement root = ThreadRun.Json(0, words);
        Assert.Equal(1.969, ThreadRun.Number(root, "required", "j"), 3);
        Assert.Equal(1.000, ThreadRun.Number(root, "required", "strength_mm") / Inch, 3);
        Assert.Equal(1.000, ThreadRun.Number(root, "required", "required_mm") / Inch, 3);
        Assert.Equal("strength", root.GetProperty("required").GetProperty("governed_by").GetString());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("required").GetProperty("c1").ValueKind);
        Assert.Equal(["class-assumed", "class-assumed", "steel-assumed", "outside-unknown"], ThreadRun.Codes(root));

        JsonElement loads = root.GetProperty("loads");
        Assert.Equal(["engaged_mm", "tensile_n", "male_strip_n", "female_strip_n", "first"], Names(loads));
        Assert.Equal(ThreadRun.Number(root, "required", "required_mm"), ThreadRun.Number(loads, "engaged_mm"));
        Assert.Equal("male breaks", loads.GetProperty("first").GetString());

        // Half the tensile strength shears: 120 ksi / 2 over 1.0081 in2 an inch strips the male.
        const double PoundForce = 4.4482216152605;
        Assert.Equal(60 * 1.0081, ThreadRun.Number(loads, "male_strip_n") / PoundForce / 1000, 0.05);
        Assert.Equal(22.5 * 1.3654, ThreadRun.Number(loads, "female_strip_n") / PoundForce / 1000, 0.05);
    }

    [Fact]
    public void Loads_need_strengths()
    {
        JsonElement male = ThreadRun.Json(0, "M18x1.5", "--male-tensile", "500 MPa").GetProperty("loads");
        Assert.Equal(500 * 216.2, ThreadRun.Number(male, "tensile_n"), 30.0);
        Assert.All(
            (string[])["engaged_mm", "male_strip_n", "female_strip_n", "first"],
            key => Assert.Equal(JsonValueKind.Null, male.GetProperty(key).ValueKind));
        Assert.Equal(JsonValueKind.Null, ThreadRun.Json(0, "M18x1.5", "--female-tensile", "500 MPa").GetProperty("loads").ValueKind);
    }

    [Fact]
    public void Where_strength_governs_the_male_breaks_first_whatever_arithmetic_leaves()
    {
        for (int female = 80; female < 200; female += 7)
        {
            JsonElement root = ThreadRun.Json(0, "5/8-18", "--male-tensile", "600 MPa", "--female-tensile", $"{female} MPa");
            Assert.Equal("strength", root.GetProperty("required").GetProperty("governed_by").GetString());
            Assert.Equal("male breaks", root.GetProperty("loads").GetProperty("first").GetString());
        }
    }

    [Fact]
    public void Drills_lie_in_the_range_of_the_minor_diameter()
    {
        JsonElement root = ThreadRun.Json(0, "M18x1.5");
        double?[] range = ThreadRun.Numbers(root, "tap_drill_mm");
        Assert.Equal(
            ["21/32 in", "16.4 mm", "16.5 mm", "16.6 mm"],
            root.GetProperty("tap_drills").EnumerateArray().Select(drill => drill.GetProperty("drill").GetString()));
        Assert.All(
            root.GetProperty("tap_drills").EnumerateArray(),
            drill => Assert.InRange(ThreadRun.Number(drill, "diameter_mm"), range[0]!.Value, range[1]!.Value));
    }

    [Fact]
    public void The_width_of_the_wall_counts_as_its_shape_says()
    {
        Assert.Equal(0.761, ThreadRun.Number(ThreadRun.Json(0, "M18x1.5", "--outside", "hex 1 in"), "required", "c1"), 3);
        string round = ThreadRun.Output(0, "M18x1.5", "--outside", "round", "30", "mm", "--json");
        Assert.Equal(ThreadRun.Output(0, "M18x1.5", "--outside", "hex 28.5 mm", "--json"), round);
        Assert.NotEqual(ThreadRun.Output(0, "M18x1.5", "--outside", "hex 30 mm", "--json"), round);
    }

    [Fact]
    public void Only_a_diameter_is_its_coarse_pitch()
    {
        JsonElement said = ThreadRun.Json(0, "M18x2.5");
        JsonElement assumed = ThreadRun.Json(0, "M18");
        Assert.Equal(
            ["class-assumed", "class-assumed", "coarse-pitch-assumed", "steel-assumed", "strength-not-checked"], ThreadRun.Codes(assumed));
        Assert.All(
            Keys.Except(["warnings"]),
            key => Assert.Equal(said.GetProperty(key).GetRawText(), assumed.GetProperty(key).GetRawText()));
    }

    [Fact]
    public void A_pair_that_does_not_match_has_no_engagement_and_tells_what_happens()
    {
        JsonElement root = ThreadRun.Json(1, "M16x1.5-6g", "--into", "5/8-18", "UNF-2B", "--male-tensile", "100 ksi");
        Assert.Equal(Keys, Names(root));
        Assert.Equal("M16x1.5-6g", root.GetProperty("external").GetProperty("designation").GetString());
        Assert.Equal("5/8-18 UNF-2B", root.GetProperty("internal").GetProperty("designation").GetString());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("required").ValueKind);
        Assert.Equal(JsonValueKind.Null, root.GetProperty("loads").ValueKind);
        Assert.Equal(0, root.GetProperty("look_alikes").GetArrayLength());
        Assert.Equal(["threads-do-not-match"], ThreadRun.Codes(root));
        JsonElement pair = root.GetProperty("pair");
        Assert.Equal(["matches", "differs", "outcome", "turns", "overlap_mm"], Names(pair));
        Assert.False(pair.GetProperty("matches").GetBoolean());
        Assert.Equal(["diameter", "pitch", "form"], pair.GetProperty("differs").EnumerateArray().Select(word => word.GetString()));
        Assert.Equal("starts and binds", pair.GetProperty("outcome").GetString());
        Assert.Equal([0, 1.165757], ThreadRun.Numbers(pair, "turns"));

        JsonElement hand = ThreadRun.Json(1, "5/8-18 LH", "--into", "5/8-18").GetProperty("pair");
        Assert.Equal(["hand"], hand.GetProperty("differs").EnumerateArray().Select(word => word.GetString()));
        Assert.Equal("does not start", hand.GetProperty("outcome").GetString());
        Assert.Equal([0, 0], ThreadRun.Numbers(hand, "turns"));
    }

    [Fact]
    public void A_pair_that_matches_is_computed_as_the_single_thread_is()
    {
        JsonElement pair = ThreadRun.Json(0, "5/8-18 UNF-3A", "--into", "5/8-18 UNF-1B");
        Assert.True(pair.GetProperty("pair").GetProperty("matches").GetBoolean());
        Assert.Equal("goes together", pair.GetProperty("pair").GetProperty("outcome").GetString());
        Assert.Empty(pair.GetProperty("pair").GetProperty("differs").EnumerateArray());
        Assert.Equal([null, null], ThreadRun.Numbers(pair, "pair", "turns"));
        Assert.Empty(pair.GetProperty("look_alikes").EnumerateArray());
        Assert.Equal("5/8-18 UNF-3A", pair.GetProperty("external").GetProperty("designation").GetString());
        Assert.Equal("5/8-18 UNF-1B", pair.GetProperty("internal").GetProperty("designation").GetString());
        JsonElement single = ThreadRun.Json(0, "5/8-18");
        Assert.Equal(single.GetProperty("required").GetRawText(), pair.GetProperty("required").GetRawText());
    }

    [Fact]
    public void Look_alikes_tell_both_directions_and_what_never_binds()
    {
        JsonElement[] alikes = [.. ThreadRun.Json(0, "M18x1.5").GetProperty("look_alikes").EnumerateArray()];
        JsonElement loose = alikes.Single(alike => Is(alike, "M17x1.5", "look-alike into"));
        Assert.Equal("goes in loose", loose.GetProperty("outcome").GetString());
        Assert.Equal([null, null], ThreadRun.Numbers(loose, "turns"));
        Assert.Equal([0.028, 0.296], ThreadRun.Numbers(loose, "overlap_mm"));
        Assert.Equal("does not start", alikes.Single(alike => Is(alike, "M17x1.5", "into look-alike")).GetProperty("outcome").GetString());

        static bool Is(JsonElement alike, string thread, string direction) =>
            alike.GetProperty("designation").GetString() == thread && alike.GetProperty("direction").GetString() == direction;
    }

    [Fact]
    public void Numbers_have_six_decimals_at_most() => Assert.All(
        JsonLeaves.Of(ThreadRun.Json(0, "11/16-18", "--male-tensile", "120 ksi", "--female-tensile", "45 ksi", "--outside", "hex 1 in"))
            .Where(leaf => leaf.Value.ValueKind == JsonValueKind.Number),
        leaf => Assert.Matches(@"^-?\d+(\.\d{1,6})?$", leaf.Value.GetRawText()));

    private static void Inches(double[] expected, JsonElement root, params string[] path) => Assert.Equal(
        expected.Select(inches => Math.Round(inches * Inch, 5)), ThreadRun.Numbers(root, path).OfType<double>());

    private static string[] Names(JsonElement element) => [.. element.EnumerateObject().Select(property => property.Name)];
}
