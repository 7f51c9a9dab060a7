using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Invented jobs for <c>toe</c>. Both rods are alike and straight: 285 mm, M16x1.5 left-hand inside and right-hand outside, so
/// that a turn is 3 mm. As planned the rod gets 13.75 mm longer, up to engagement of the outer end, and 12 mm shorter, up to the tips.
/// </summary>
internal static class ToeJobs
{
    public const double Rod = 285;
    public const double Arm = 150;
    public const double Plates = 610;
    public const double PerTurn = 3;

    public const string Parts =
        """
        tierodcalc: 1
        units: mm
        inner_ends:
          - {id: i, thread: M16x1.5 LH, center_to_tip: 190 mm, thread_length: 110 mm}
        outer_ends:
          - {id: o, thread: M16x1.5, center_to_tip: 80 mm, thread_length: 48 mm}
        sleeves:
          - id: s
            length: 120 mm
            outside: hex 24 mm
            inner: {thread: M16x1.5 LH, depth: 35 mm, bore: open}
            outer: {thread: M16x1.5, depth: 40 mm, bore: closed}
        jam_nuts:
          - {id: nl, thread: M16x1.5 LH, thickness: 8 mm}
          - {id: nr, thread: M16x1.5, thickness: 8 mm}

        """;

    public const string Both = Parts +
        """
        rods:
          - {name: l, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 285 mm, adjust: 3 mm}
          - {name: r, side: right, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 285 mm, adjust: 3 mm}
        steering:
          arm: 150 mm
          joint: behind axle
          plates: 610 mm
          toe: {now: 3 mm out, want: 1.5 mm in}

        """;

    /// <summary>Same hand and pitch: the sleeve does not adjust, and the outer end is a straight rod end.</summary>
    public static string SameHand => Both
        .With("thread: M16x1.5 LH, center_to_tip: 190 mm", "thread: M16x1.5, center_to_tip: 190 mm")
        .With("{thread: M16x1.5 LH, depth: 35 mm", "{thread: M16x1.5, depth: 35 mm")
        .With("id: nl, thread: M16x1.5 LH", "id: nl, thread: M16x1.5")
        .With("thread_length: 48 mm}", "thread_length: 48 mm, joint: rod end}")
        .With("adjust: 3 mm", "adjust: 0 mm");

    /// <summary>One threaded joint: 190 + 150 - 55 = 285 mm; the inner end must not be cut.</summary>
    public static string Socket => Both
        .With("  - {id: o, ", "  - {id: k, center_to_face: 150 mm, socket: {thread: M16x1.5 LH, depth: 70 mm, bore: closed}}\n  - {id: o, ")
        .With("sleeve: s, outer: o, nuts: {inner: nl, outer: nr}", "outer: k, nuts: {inner: nl}");

    /// <summary>The demo's steering arm, from the words on: other words in place of the toe.</summary>
    public static string WithToe(this string job, string toe) => job.With("{now: 3 mm out, want: 1.5 mm in}", toe);

    /// <summary>Toe in degrees that a change of length gives from square: the law of cosines.</summary>
    public static double Toe(double change)
    {
        double far = Math.Sqrt(Arm * Arm + Rod * Rod);
        double Angle(double rod) => Math.Acos((Arm * Arm + far * far - rod * rod) / (2 * Arm * far));
        return (Angle(Rod + change) - Angle(Rod)) * 180 / Math.PI;
    }

    /// <summary>The change of length for a change of toe in degrees, the other way round.</summary>
    public static double Change(double degrees)
    {
        double far = Math.Sqrt(Arm * Arm + Rod * Rod);
        double angle = Math.Atan2(Rod, Arm) + degrees * Math.PI / 180;
        return Math.Sqrt(Arm * Arm + far * far - 2 * Arm * far * Math.Cos(angle)) - Rod;
    }

    /// <summary>Toe of one wheel in degrees that so many millimeters at the plates are.</summary>
    public static double Degrees(double atPlates) => Math.Asin(atPlates / Plates) * 180 / Math.PI;

    public static JsonElement Json(string job, int expectedStatus = 0, params string[] options)
    {
        CommandLine run = CommandLine.RunWith(job, ["toe", "-", "--json", .. options]);
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return JsonDocument.Parse(run.Output).RootElement;
    }

    /// <summary>The text, one space between words.</summary>
    public static string Page(string job, int expectedStatus = 0, params string[] options)
    {
        CommandLine run = CommandLine.RunWith(job, ["toe", "-", .. options]);
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return PlanPage.Joined(run.Output);
    }

    public static double Number(this JsonElement element, string name) => element.GetProperty(name).GetDouble();

    public static string? Word(this JsonElement element, string name) => element.GetProperty(name).GetString();
}
