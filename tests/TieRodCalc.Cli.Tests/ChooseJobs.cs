using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Invented catalogs for <c>choose</c>. The rod is the one of <see cref="ToeJobs"/>: 285 mm, M16x1.5 left-hand inside and right-hand
/// outside. Insertions add up to 105 mm less what the parts are shorter. The outer end may be in from 27.75 mm (lead 1.5 mm, countersink
/// 0.75 mm, 1.5 diameters, and half of the 3 mm of adjustment) to 38.5 mm (bore and nut 40 mm): with 33.125 mm 5.375 mm are left.
/// </summary>
internal static class ChooseJobs
{
    public const string Parts =
        """
        tierodcalc: 1
        job: choice
        units: mm
        inner_ends:
          - {id: i, thread: M16x1.5 LH, center_to_tip: 190 mm, thread_length: 110 mm, price: 30 USD, mass: 0.5 kg}
          - {id: i-short, thread: M16x1.5 LH, center_to_tip: 186 mm, thread_length: 110 mm, price: 20.50 USD, mass: 0.45 kg}
          - {id: i-inch, thread: 5/8-18 LH, center_to_tip: 190 mm, thread_length: 110 mm, price: 1 USD, mass: 0.1 kg}
        outer_ends:
          - {id: o, thread: M16x1.5, center_to_tip: 80 mm, thread_length: 48 mm, price: 15.25 USD, mass: 0.3 kg}
        sleeves:
          - id: s
            length: 120 mm
            inner: {thread: M16x1.5 LH, depth: 35 mm, bore: open}
            outer: {thread: M16x1.5, depth: 40 mm, bore: closed}
            price: 40 USD
            mass: 0.2 kg
        jam_nuts:
          - {id: nl-12, thread: M16x1.5 LH, thickness: 12 mm, price: 3 USD, mass: 0.03 kg}
          - {id: nl, thread: M16x1.5 LH, thickness: 8 mm, price: 2 USD, mass: 0.02 kg}
          - {id: nr, thread: M16x1.5, thickness: 8 mm, price: 2.25 USD, mass: 0.02 kg}
          - {id: nr-thin-left, thread: M16x1.5 LH, thickness: 9 mm, price: 1 USD, mass: 0.01 kg}

        """;

    public const string Open = Parts +
        """
        rods:
          - {name: left, inner: any, sleeve: any, outer: any, nuts: {inner: any, outer: any}, length: 285 mm, adjust: 3 mm}

        """;

    /// <summary>The first rod of a choice printed as JSON.</summary>
    public static JsonElement Rod(string job, int expectedStatus = 0, params string[] options)
    {
        CommandLine run = CommandLine.RunWith(job, ["choose", "-", "--json", .. options]);
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return JsonDocument.Parse(run.Output).RootElement.GetProperty("rods")[0];
    }

    public static JsonElement[] Found(string job, params string[] options) =>
        [.. Rod(job, 0, options).GetProperty("found").EnumerateArray()];

    /// <summary>The inner ends of the rods found, in their order.</summary>
    public static IEnumerable<string?> Inner(string job, params string[] options) =>
        Found(job, options).Select(found => found.Word("inner"));
}
