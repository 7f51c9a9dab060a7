using System.Globalization;
using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>Jobs whose rods are made up as their plans say, with what can be measured on them.</summary>
internal static class AsBuiltJobs
{
    private const string Rules = "rules: {engagement: 1.25 diameters, load: 2 kN, mark: 1/64 in}";
    private const string Material =
        "materials:\n  - {id: m, name: 'it''s \"st\"', kind: steel, tensile: 850 MPa, source: invented}\n";
    private const string Cost = "material: m, price: 12.50 USD, mass: 0.4 kg";

    /// <summary>One threaded joint: of 12 mm that may be cut some must be. 190 + 140 - 285 is 45 mm, the bore 40 mm deep.</summary>
    public static string Socket =>
        """
        tierodcalc: 1
        units: mm
        inner_ends:
          - {id: i, thread: M16x1.5 LH, center_to_tip: 190 mm, thread_length: 110 mm, max_cut: 12 mm}
        outer_ends:
          - {id: k, center_to_face: 140 mm, socket: {thread: M16x1.5 LH, depth: 40 mm, bore: closed}}
        jam_nuts:
          - {id: nl, thread: M16x1.5 LH, thickness: 8 mm}
        rods:
          - {name: k, inner: i, outer: k, nuts: {inner: nl}, length: 285 mm, adjust: 3 mm}
        """;

    /// <summary>Jobs by name: cut, against the nut, bent at one end and at both, one hand, one joint, with every key.</summary>
    public static string Job(string name) => name switch
    {
        "cut" => CheckJobs.W1,
        "nut" => CheckJobs.W3(),
        "bent" => CheckJobs.W5(),
        "both bent" => CheckJobs.W7(90),
        "one hand" => CheckJobs.W6,
        "socket" => Socket,
        "told in full" => CheckJobs.W1
            .With("units: in", "job: \"No. 27 \\\"coupe\\\": left # \\\\ axle\"\nunits: in\n" + Rules)
            .With("inner_ends:", Material + "inner_ends:")
            .With("center_to_tip: 215.9 mm", "name: a\\b, center_to_tip: 215.9 ± 0.5 mm, joint: rod end, " + Cost)
            .With("length: 177.8 mm\n", "length: 177.8 mm\n    material: m\n    outside: hex 1 in\n")
            .With("name: w1", "name: 'left: \"1\"', side: left"),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    /// <summary>The job with the readings of its only rod as planned: length, thread showing and cut.</summary>
    public static string Built(string job)
    {
        JsonElement plan = CommandLine.FirstRod(job);
        return WithBuilt(job, $"{{center_to_center: {Mm(plan.GetProperty("length"), "target_mm")}, {Showing(plan)}, {Cut(plan)}}}");
    }

    /// <summary>The job with some other readings of its only rod.</summary>
    public static string WithBuilt(string job, string built)
    {
        int end = job.TrimEnd().LastIndexOf('}');
        return $"{job[..end]}, built: {built}}}\n";
    }

    public static string Showing(JsonElement plan) => Ends("showing", plan, (joints, end) => Mm(joints.GetProperty(end), "showing_mm"));

    public static string Cut(JsonElement plan)
    {
        JsonElement cut = plan.GetProperty("cut");
        return Ends("cut", plan, (_, end) =>
            cut.GetProperty(end) is { ValueKind: JsonValueKind.Object } advice ? Mm(advice, "recommended_mm") : "0 mm");
    }

    public static string Depth(JsonElement plan) => Ends("depth", plan, (joints, end) => Mm(joints.GetProperty(end), "insertion_mm"));

    public static JsonElement Rod(string job, int expectedStatus = 0, params string[] options)
    {
        CommandLine run = CommandLine.RunWith(job, ["asbuilt", "-", "--json", .. options]);
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return JsonDocument.Parse(run.Output).RootElement.GetProperty("rods")[0];
    }

    private static string Ends(string key, JsonElement plan, Func<JsonElement, string, string> of)
    {
        JsonElement joints = plan.GetProperty("joints");
        string inner = $"inner: {of(joints, "inner")}";
        return joints.GetProperty("outer").ValueKind == JsonValueKind.Object
            ? $"{key}: {{{inner}, outer: {of(joints, "outer")}}}"
            : $"{key}: {{{inner}}}";
    }

    private static string Mm(JsonElement element, string name) =>
        element.GetProperty(name).GetDecimal().ToString(CultureInfo.InvariantCulture) + " mm";
}
