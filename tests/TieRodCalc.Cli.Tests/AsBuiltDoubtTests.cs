using System.Text.Json;
using static TieRodCalc.Cli.Tests.AsBuiltJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>asbuilt</c> says of what it assumed, what it does not know for sure, and what cannot be.</summary>
public sealed class AsBuiltDoubtTests
{
    /// <summary>The setting of W1 at its least cut: 49.2125 and 33.3375 mm inserted.</summary>
    private const string Readings = "showing: {inner: 26.9875 mm, outer: 11.1125 mm}, cut: {inner: 12.7 mm}";

    [Fact]
    public void What_was_assumed_is_said_beside_a_rod_that_holds()
    {
        JsonElement rod = Rod(WithBuilt(CheckJobs.W1, $"{{{Readings}}}"), 0);
        Assert.Equal("buildable", rod.Word("verdict"));
        Assert.Superset(new HashSet<string> { "strength-not-checked", "steel-assumed", "nominal-trusted" }, Codes(rod));
        string text = CommandLine.RunWith(WithBuilt(CheckJobs.W1, $"{{{Readings}}}"), "asbuilt", "-").Output;
        Assert.Contains("Mind, and what was assumed", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Tolerances_of_readings_reach_the_insertion_and_are_warned_of()
    {
        // The closed bore is 1.5875 mm away at the setting and met at the shortest wanted length.
        string built = "{showing: {inner: 26.9875 mm ± 2 mm, outer: 11.1125 mm}, cut: {inner: 12.7 mm ± 0.5 mm}}";
        JsonElement rod = Rod(WithBuilt(CheckJobs.W1, built), 0);
        JsonElement joint = rod.GetProperty("joints").GetProperty("inner");
        double[] span = [.. joint.GetProperty("insertion_span_mm").EnumerateArray().Select(end => end.GetDouble())];
        Assert.Equal([49.2125 - 2.5, 49.2125 + 2.5], span);
        Assert.Contains("holds-only-at-nominal", Codes(rod));
        Assert.DoesNotContain("nominal-trusted", Codes(rod));
    }

    [Fact]
    public void A_tip_past_the_end_of_a_closed_bore_contradicts_and_gives_no_spare()
    {
        // Uncut, 88.9 - 26.9875 = 61.9125 mm would be in a bore of 50.8 mm.
        JsonElement rod = Rod(WithBuilt(CheckJobs.W1, $"{{{Readings.With("12.7 mm", "0 mm")}}}"), 1);
        Assert.Equal("not buildable", rod.Word("verdict"));
        Assert.Equal(61.9125 - 50.8, Assert.Single(rod.GetProperty("contradictions").EnumerateArray()).Number("missed_by_mm"), 1e-6);
        Assert.Equal(JsonValueKind.Null, rod.GetProperty("spare").ValueKind);
    }

    [Fact]
    public void A_plan_gives_no_spare_of_a_rod_that_is_past_a_limit()
    {
        JsonElement held = CommandLine.FirstRod(WithBuilt(CheckJobs.W1, $"{{{Readings}}}"));
        Assert.Equal(12.7, held.GetProperty("spare").GetProperty("inner").Number("cut_mm"), 1e-6);
        JsonElement past = CommandLine.FirstRod(WithBuilt(CheckJobs.W1, $"{{{Readings.With("12.7 mm", "38.2 mm")}}}"));
        Assert.Equal(JsonValueKind.Null, past.GetProperty("spare").ValueKind);
    }

    [Fact]
    public void A_length_that_the_parts_cannot_have_contradicts()
    {
        JsonElement rod = Rod(WithBuilt(CheckJobs.W1, "{center_to_center: 9000 mm}"), 1);
        double longest = 215.9 + 177.8 + 66.675;
        Assert.Equal(9000 - longest, Assert.Single(rod.GetProperty("contradictions").EnumerateArray()).Number("missed_by_mm"), 1e-6);
    }

    private static HashSet<string> Codes(JsonElement rod) =>
        [.. rod.GetProperty("warnings").EnumerateArray().Select(warning => warning.Word("code")!)];
}
