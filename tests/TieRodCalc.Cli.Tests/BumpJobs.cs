using System.Globalization;
using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Invented jobs for <c>bump</c>: the rod of <see cref="ToeJobs"/>, 285 mm on an arm of 150 mm, and readings of a wheel that steers
/// itself exactly by two terms. The rod's ends must not be cut; it can be made 273 to 298.75 mm long.
/// </summary>
internal static class BumpJobs
{
    public const double Rod = 285;
    public const double Arm = 150;
    public const double Spacing = 254;

    public const string Gauge = "{spacing: 254 mm, zeroed: once, grows: outward, resolution: 0.02 mm}";

    private static readonly double[] s_travels = [120, 80, 40, -40, -80, -120];

    /// <summary>A rod of the left wheel, without readings.</summary>
    public const string Unread = ToeJobs.Parts +
        """
        rods:
          - {name: l, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 285 mm, adjust: 3 mm, built: {center_to_center: 285 mm}}
        steering:
          arm: 150 mm
          joint: behind axle
          plates: 610 mm

        """;

    /// <summary>The outer joint stands 3 mm too low, and the rod is as long as it should be.</summary>
    public static string Height => Job(3, Rod);

    /// <summary>The rod is 8 mm too short.</summary>
    public static string TooShort => Job(0, 293);

    /// <summary>The sample of both wheels.</summary>
    public static string Both => Sample("car-27-bump.yaml");

    /// <summary>The sample with the corner's points.</summary>
    public static string Corner => Sample("car-27-corner.yaml");

    /// <summary>The corner's points alone, nothing read.</summary>
    public static string CornerAlone => Corner[..Corner.IndexOf("bump:\n", StringComparison.Ordinal)] + Corner[Corner.IndexOf("\ncorner:\n", StringComparison.Ordinal)..];

    /// <summary>A job whose readings ask for the outer joint raised by so much and a rod of a length, by the formulas of two terms.</summary>
    public static string Job(double raise, double wanted, string gauge = Gauge) =>
        Unread + Bump(Sheet(raise / (Rod * Arm), (1 / wanted - 1 / Rod) / Arm, gauge));

    public static string Bump(params string[] sheets) => "bump:\n" + string.Concat(sheets);

    /// <summary>A sheet of the left wheel whose toe is <c>slope z + curvature z^2 / 2</c>, the front indicator standing still.</summary>
    public static string Sheet(double slope, double curvature, string gauge = Gauge, string then = "", params double[] travels) =>
        $"  - side: left\n    gauge: {gauge}\n    readings:\n"
        + string.Concat((travels.Length == 0 ? s_travels : travels).Select(z => string.Create(
            CultureInfo.InvariantCulture,
            $"      - {{travel: {z} mm, front: 0 mm, rear: {Spacing * Math.Sin((slope * z) + (curvature * z * z / 2)):F6} mm}}\n")))
        + (then.Length == 0 ? string.Empty : $"    then: {then}\n");

    public static JsonElement Json(string job, int expectedStatus = 0, params string[] options)
    {
        CommandLine run = CommandLine.RunWith(job, ["bump", "-", "--json", .. options]);
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return JsonDocument.Parse(run.Output).RootElement;
    }

    /// <summary>The only side of a job.</summary>
    public static JsonElement Side(string job, int expectedStatus = 0) =>
        Assert.Single(Json(job, expectedStatus).GetProperty("sides").EnumerateArray().ToArray());

    public static string Printed(string job, int expectedStatus = 0, params string[] options)
    {
        CommandLine run = CommandLine.RunWith(job, ["bump", "-", .. options]);
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return run.Output;
    }

    /// <summary>The text, one space between words.</summary>
    public static string Page(string job, int expectedStatus = 0, params string[] options) =>
        PlanPage.Joined(Printed(job, expectedStatus, options));

    public static string[] Codes(JsonElement side) =>
        [.. side.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetProperty("code").GetString()!)];

    private static string Sample(string name) => File.ReadAllText(Repository.Sample("jobs", name))
        .With("../parts/pinewater.yaml", Repository.Sample("parts", "pinewater.yaml"));
}
