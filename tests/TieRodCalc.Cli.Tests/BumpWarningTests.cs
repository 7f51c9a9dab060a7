using TieRodCalc.Cli.Rendering;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;
using static TieRodCalc.Cli.Tests.BumpJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>Every warning of <c>bump</c>: brought about by a job, told as a sentence, and with its code in JSON.</summary>
public sealed class BumpWarningTests
{
    private const string Slow = "{spacing: 254 mm, zeroed: once, grows: outward, resolution: 5 mm}";

    /// <summary>Three readings, one of them with a wrong sign: a cubic goes through them, and no height and length do.</summary>
    private const string Slip =
        $"""
          - side: left
            gauge: {Gauge}
            readings:
              - {"{"}travel: 50 mm, front: 0 mm, rear: 1 mm{"}"}
              - {"{"}travel: 25 mm, front: 0 mm, rear: -2 mm{"}"}
              - {"{"}travel: -25 mm, front: 0 mm, rear: -0.4 mm{"}"}

        """;

    /// <summary>Codes, jobs that bring them about, and the status.</summary>
    public static TheoryData<string, string, int> Jobs => new()
    {
        { "too-few-readings", Unread + Bump(Sheet(1e-4, 0, travels: 40)), 1 },
        { "nothing-to-check-by", Unread + Bump(Sheet(1e-4, 0, travels: [40, -40])), 0 },
        { "one-sided", Unread + Bump(Sheet(1e-4, 0, travels: [20, 40, 60])), 0 },
        { "resolution-not-given", Height.With(", resolution: 0.02 mm", string.Empty), 0 },
        { "readings-scatter", Height.With("{travel: 40 mm, front: 0 mm", "{travel: 40 mm, front: 1.5 mm"), 1 },
        { "height-not-told", Job(0.02, 300), 0 },
        { "length-not-told", Job(3, 285.1), 0 },
        { "no-length-does", Unread + Bump(Sheet(0, -4e-3 / Arm)), 1 },
        { "far-change", Job(90, Rod), 0 },
        { "steering-not-given", Height.With("  arm: 150 mm\n  joint: behind axle\n", string.Empty), 1 },
        { "rod-not-given", Height.With("side: left, inner: i", "side: right, inner: i"), 1 },
        { "two-terms-miss", Unread + "bump:\n" + Slip, 1 },
        { "no-readings", CornerAlone, 0 },
        { "points-disagree", Corner.With("rear: -0.32 mm", "rear: 1.32 mm"), 1 },
        { "sheets-contradict", Unread + Bump(Sheet(1e-4, 0, then: "{outer_raised: 3 mm}"), Sheet(9e-4, 0)), 1 },
        { "sheets-contradict-sense", Unread + Bump(Sheet(1e-4, 0), Sheet(-1e-4, 0)), 1 },
        { "gauge-unusual", Height.With("spacing: 254 mm", "spacing: 500 mm"), 0 },
        { "present-length-planned", Height.With(", built: {center_to_center: 285 mm}", string.Empty), 0 },
        { "one-rod", Height.With("  arm: 150 mm", "  layout: one rod between wheels\n  arm: 150 mm"), 1 },
        { "points-at-other-length", Corner.With("center_to_center: 393.7 mm", "center_to_center: 390 mm"), 1 },
        {
            "corner-not-computed", Corner.With("    axis: [[5 mm, 650 mm, -75 mm], [-18 mm, 612 mm, 165 mm]]\n", "    arm: 150 mm\n")
                .With("    outer: [-152.4 mm, 640 mm, -25 mm]\n    inner: [-162.5 mm, 246.4 mm, -26 mm]\n", "    joint: behind axle\n"), 1
        },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_job_brings_it_about_and_the_page_says_what_the_json_says(string code, string job, int status)
    {
        System.Text.Json.JsonElement warning = Side(job, status).GetProperty("warnings").EnumerateArray()
            .Single(each => each.Word("code") == code);
        string page = Page(job, status);

        int minded = page.IndexOf("Mind, and what was assumed or not checked", StringComparison.Ordinal);
        Assert.True(minded > 0, page);
        Assert.Contains("- " + warning.Word("text"), page[minded..], StringComparison.Ordinal);
        Assert.DoesNotContain(code, Codes(Side(Job(6, 293))));
    }

    [Fact]
    public void Every_code_has_a_sentence_of_its_own_with_its_value_and_its_sheets()
    {
        BumpSentences sentences = new(LengthDisplay.Millimeter);
        HashSet<string> said = [];
        foreach (BumpWarningCode code in Enum.GetValues<BumpWarningCode>())
        {
            string sentence = sentences.Of(new BumpWarning(code, Length.FromMillimeters(1.23), 7));
            Assert.True(said.Add(sentence));
            Assert.EndsWith(".", sentence.TrimEnd('}', '.') + ".", StringComparison.Ordinal);
            bool measured = code is BumpWarningCode.ReadingsScatter or BumpWarningCode.HeightNotTold or BumpWarningCode.LengthNotTold
                or BumpWarningCode.GaugeUnusual or BumpWarningCode.TwoTermsMiss;
            Assert.Equal(measured, sentence.Contains("1.23 mm", StringComparison.Ordinal));
            bool pair = code is BumpWarningCode.SheetsContradict or BumpWarningCode.SheetsContradictSense;
            Assert.Equal(pair, sentence.StartsWith("Sheets 7 and 8 ", StringComparison.Ordinal));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => sentences.Of(new BumpWarning((BumpWarningCode)99)));
    }

    [Fact]
    public void All_codes_are_brought_about_above_but_one_that_is_told_in_particular_and_one_that_no_job_gives()
    {
        string[] all = [.. Enum.GetValues<BumpWarningCode>().Select(Names.Of)];
        string[] brought = [.. Jobs.Select(row => (string)row[0])];
        Assert.Equal(["wheel-not-given", "rod-in-line"], all.Except(brought));
    }

    [Fact]
    public void What_cannot_be_told_stays_at_nothing_and_is_said_once()
    {
        string job = Job(3, Rod, Slow);
        Assert.Equal(["height-not-told", "length-not-told"], Codes(Side(job)));
        Assert.Contains("NO CHANGE THAT THE READINGS CAN TELL BETTERS IT", Page(job), StringComparison.Ordinal);
    }
}
