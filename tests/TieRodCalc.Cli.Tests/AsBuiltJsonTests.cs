using System.Text.Json;
using static TieRodCalc.Cli.Tests.AsBuiltJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>The figures of <c>asbuilt --json</c>, counted by hand, and the statuses.</summary>
public sealed class AsBuiltJsonTests
{
    private const double Near = 1e-6;

    /// <summary>As <see cref="CheckJobs.W1"/> is made: 100 mm in and out are not its plan's, they only add up.</summary>
    private const string Showing = "showing: {inner: 35 mm, outer: 18 mm}";

    [Fact]
    public void Insertion_is_thread_less_cut_and_showing()
    {
        // Thread 88.9 and 44.45 mm, leads 25.4/18 mm, countersinks 0.762 mm, nuts 9.525 mm. From ball to ball
        // (215.9 - 88.9 + 35) + 177.8 + (66.675 - 44.45 + 18) = 380.025 mm.
        JsonElement rod = Rod(WithBuilt(CheckJobs.W1, $"{{{Showing}, cut: {{inner: 10 mm}}}}"), 1);
        JsonElement inner = rod.GetProperty("joints").GetProperty("inner");
        JsonElement outer = rod.GetProperty("joints").GetProperty("outer");
        Assert.Equal(380.025, rod.GetProperty("length").Number("present_mm"), Near);
        Assert.Equal(43.9, inner.Number("insertion_mm"), Near);
        Assert.Equal(26.45, outer.Number("insertion_mm"), Near);
        Assert.Equal(43.9 - (25.4 / 18) - 0.762, inner.Number("engaged_mm"), Near);
        Assert.Equal(26.45 - (25.4 / 18) - 0.762, outer.Number("engaged_mm"), Near);
        Assert.Equal(35 - 9.525, inner.Number("nut_room_mm"), Near);
        Assert.Equal(18 - 9.525, outer.Number("nut_room_mm"), Near);
    }

    [Fact]
    public void A_cut_that_is_not_said_leaves_a_span_and_status_one()
    {
        JsonElement rod = Rod(WithBuilt(CheckJobs.W1, $"{{{Showing}}}"), 1);
        Assert.Equal("not checked", rod.Word("verdict"));
        JsonElement inner = rod.GetProperty("joints").GetProperty("inner");
        Assert.Equal(JsonValueKind.Null, inner.GetProperty("insertion_mm").ValueKind);
        Assert.Equal(JsonValueKind.Null, inner.GetProperty("engaged_mm").ValueKind);
        Assert.Equal([88.9 - 35 - 38.1, 88.9 - 35], Span(inner, "insertion_span_mm"), (one, other) => Math.Abs(one - other) < Near);
        double lost = (25.4 / 18) + 0.762;
        Assert.Equal(
            [88.9 - 35 - 38.1 - lost, Math.Min(50.8 - 0.762, 88.9 - 35 - lost)],
            Span(inner, "engaged_span_mm"),
            (one, other) => Math.Abs(one - other) < Near);
        Assert.Equal(35 - 9.525, inner.Number("nut_room_mm"), Near);
        Assert.Equal(JsonValueKind.Null, rod.GetProperty("spare").ValueKind);
        Assert.Equal(JsonValueKind.Null, rod.GetProperty("adjust").ValueKind);
        Assert.Contains(rod.GetProperty("warnings").EnumerateArray(), warning => warning.Word("end") == "inner");
    }

    [Fact]
    public void A_depth_reading_resolves_it()
    {
        JsonElement rod = Rod(WithBuilt(CheckJobs.W1, $"{{{Showing}, depth: {{inner: 43.9 mm}}}}"), 1);
        JsonElement inner = rod.GetProperty("joints").GetProperty("inner");
        Assert.Equal(10, inner.Number("cut_mm"), Near);
        Assert.Equal(43.9, inner.Number("insertion_mm"), Near);
        Assert.NotEqual("not checked", rod.Word("verdict"));
    }

    [Fact]
    public void Readings_that_contradict_each_other_say_by_how_much()
    {
        JsonElement rod = Rod(WithBuilt(CheckJobs.W1, $"{{center_to_center: 383 mm ± 0.5 mm, {Showing}, cut: {{inner: 10 mm}}}}"), 1);
        Assert.Equal("not checked", rod.Word("verdict"));
        JsonElement length = Assert.Single(rod.GetProperty("contradictions").EnumerateArray());
        Assert.Equal(383 - 380.025 - 0.5, length.Number("missed_by_mm"), Near);
        Assert.NotEmpty(length.Word("text")!);

        rod = Rod(WithBuilt(CheckJobs.W1, $"{{{Showing}, cut: {{inner: 10 mm}}, depth: {{inner: 40 mm}}}}"), 1);
        JsonElement end = Assert.Single(rod.GetProperty("contradictions").EnumerateArray());
        Assert.Equal(("inner", 3.9), (end.Word("end"), end.Number("missed_by_mm")));

        rod = Rod(WithBuilt(CheckJobs.W1, "{showing: {inner: 82 mm, outer: 18 mm}, cut: {inner: 10 mm}}"), 1);
        end = Assert.Single(rod.GetProperty("contradictions").EnumerateArray());
        Assert.Equal("inner", end.Word("end"));
        Assert.Equal(82 + 10 - 88.9, end.Number("missed_by_mm"), Near);
    }

    [Fact]
    public void Without_any_reading_nothing_is_checked()
    {
        foreach (string job in (string[])[CheckJobs.W1, WithBuilt(CheckJobs.W1, "{}")])
        {
            JsonElement rod = Rod(job, 1);
            Assert.Equal("not checked", rod.Word("verdict"));
            Assert.NotEmpty(rod.GetProperty("warnings").EnumerateArray());
        }
    }

    [Fact]
    public void A_rod_that_is_not_locked_is_status_one()
    {
        string loose = CheckJobs.W6.With("nuts: {inner: n2, outer: n1}", "nuts: {inner: none, outer: none}");
        string built = WithBuilt(loose, $"{{{AsBuiltJobs.Showing(CommandLine.FirstRod(loose, 1))}}}");
        JsonElement rod = Rod(built, 1);
        Assert.Equal(("buildable", "none"), (rod.Word("verdict"), rod.Word("locked")));
    }

    [Fact]
    public void Every_key_is_there_whatever_came_of_it()
    {
        string[] jointKeys =
        [
            "insertion_mm", "insertion_span_mm", "showing_mm", "cut_mm", "engaged_mm", "engaged_span_mm", "engaged_least_mm", "required_mm",
            "governed_by", "nut_room_mm", "nut_room_least_mm",
        ];
        foreach ((string job, int status) in new[] { (Built(CheckJobs.W1), 0), (CheckJobs.W1, 1), (Built(Socket), 0) })
        {
            JsonElement rod = Rod(job, status);
            Assert.Equal(
                [
                    "name", "verdict", "locked", "length", "joints", "adjust", "contradictions", "binding", "spare", "warnings",
                ],
                Keys(rod));
            Assert.Equal(jointKeys, Keys(rod.GetProperty("joints").GetProperty("inner")));
            Assert.Equal(JsonValueKind.Array, rod.GetProperty("contradictions").ValueKind);
        }

        Assert.Equal(JsonValueKind.Null, Rod(Built(Socket)).GetProperty("joints").GetProperty("outer").ValueKind);
    }

    private static double[] Span(JsonElement joint, string name) =>
        [.. joint.GetProperty(name).EnumerateArray().Select(at => at.GetDouble())];

    private static string[] Keys(JsonElement element) => [.. element.EnumerateObject().Select(property => property.Name)];
}
