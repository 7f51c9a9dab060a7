using System.Globalization;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Invented rods whose plans were computed by two independent means outside this repository: a linear programme over the
/// limits, and interval algebra. Tolerance of the figures: 0.01 mm.
/// </summary>
internal static class CheckJobs
{
    public const string W1 =
        """
        tierodcalc: 1
        units: in
        inner_ends:
          - {id: i, thread: 5/8-18 LH, center_to_tip: 215.9 mm, thread_length: 88.9 mm, max_cut: 38.1 mm}
        outer_ends:
          - {id: o, thread: 5/8-18, center_to_tip: 66.675 mm, thread_length: 44.45 mm}
        sleeves:
          - id: s
            length: 177.8 mm
            inner: {thread: 5/8-18 LH, depth: 50.8 mm, bore: closed, countersink: 0.762 mm}
            outer: {thread: 5/8-18, depth: 50.8 mm, bore: closed, countersink: 0.762 mm}
        jam_nuts:
          - {id: nl, thread: 5/8-18 LH, thickness: 9.525 mm}
          - {id: nr, thread: 5/8-18, thickness: 9.525 mm}
        rods:
          - {name: w1, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 365.125 mm, adjust: 3.175 mm}
        """;

    public const string W2 =
        """
        tierodcalc: 1
        units: mm
        inner_ends:
          - {id: i, thread: M16x1.5 LH, center_to_tip: 150 mm, thread_length: 45 mm, max_cut: 30 mm}
        outer_ends:
          - {id: o, thread: M16x1.5, center_to_tip: 70 mm, thread_length: 42 mm}
        sleeves:
          - id: s
            length: 120 mm
            inner: {thread: M16x1.5 LH, depth: 50 mm, bore: open}
            outer: {thread: M16x1.5, depth: 50 mm, bore: open}
        jam_nuts:
          - {id: nl, thread: M16x1.5 LH, thickness: 8 mm}
          - {id: nr, thread: M16x1.5, thickness: 8 mm}
        rods:
          - {name: w2, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 262 mm, adjust: 2 mm}
        """;

    public const string W6 =
        """
        tierodcalc: 1
        units: mm
        inner_ends:
          - {id: i, thread: M16x2, center_to_tip: 150 mm, thread_length: 60 mm}
        outer_ends:
          - {id: o, thread: M16x1.5, center_to_tip: 80 mm, thread_length: 48 mm}
        sleeves:
          - id: s
            length: 150 mm
            inner: {thread: M16x2, depth: 45 mm, bore: closed}
            outer: {thread: M16x1.5, depth: 45 mm, bore: closed}
        jam_nuts:
          - {id: n2, thread: M16x2, thickness: 8 mm}
          - {id: n1, thread: M16x1.5, thickness: 8 mm}
        rods:
          - {name: w6, inner: i, sleeve: s, outer: o, nuts: {inner: n2, outer: n1}, length: 310 mm, adjust: 1 mm}
        """;

    public static string W3(double target = 262) => Sleeved(
        90, "depth: 35 mm, bore: open", "depth: 32 mm, bore: open", target);

    public static string W8 => Sleeved(120, "depth: 35 mm, bore: open", "depth: 40 mm, bore: closed", 285);

    public static string W5(double target = 382, double adjust = 5) =>
        $$"""
        tierodcalc: 1
        units: in
        inner_ends:
          - {id: i, thread: M18x1.5 LH, center_to_tip: 200 mm, thread_length: 75 mm, offset: 16 mm, max_cut: 40 mm}
        outer_ends:
          - {id: o, thread: 5/8-18, center_to_tip: 66.675 mm, thread_length: 41.275 mm}
        sleeves:
          - id: s
            length: 200 mm
            inner: {thread: M18x1.5 LH, depth: 45 mm, bore: closed, countersink: 0.75 mm}
            outer: {thread: 5/8-18, depth: 45 mm, bore: closed, countersink: 0.7 mm}
        jam_nuts:
          - {id: nl, thread: M18x1.5 LH, thickness: 9 mm}
          - {id: nr, thread: 5/8-18, thickness: 9.525 mm}
        rods:
          - {name: w5, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: {{Text(target)}} mm, adjust: {{Text(adjust)}} mm}
        """;

    public static string W7(int clocking) =>
        $$"""
        tierodcalc: 1
        units: mm
        inner_ends:
          - {id: i, thread: M18x1.5 LH, center_to_tip: 200 mm, thread_length: 75 mm, offset: 16 mm}
        outer_ends:
          - {id: o, thread: M16x1.5, center_to_tip: 150 mm, thread_length: 60 mm, offset: 12 mm}
        sleeves:
          - id: s
            length: 200 mm
            inner: {thread: M18x1.5 LH, depth: 45 mm, bore: closed}
            outer: {thread: M16x1.5, depth: 45 mm, bore: closed}
        jam_nuts:
          - {id: nl, thread: M18x1.5 LH, thickness: 9 mm}
          - {id: nr, thread: M16x1.5, thickness: 8 mm}
        rods:
          - {name: w7, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 470 mm, adjust: 4 mm, clocking: {{clocking}} deg}
        """;

    /// <summary>A rod whose sleeve turned once lengthens it by 1.5 mm + 25.4/18 mm = 2.911111 mm, on a steering.</summary>
    public static string OnSteering(string length, string steering) =>
        $$"""
        tierodcalc: 1
        units: mm
        inner_ends:
          - {id: i, thread: M18x1.5 LH, center_to_tip: 200 mm, thread_length: 100 mm}
        outer_ends:
          - {id: o, thread: 5/8-18, center_to_tip: 90 mm, thread_length: 60 mm}
        sleeves:
          - id: s
            length: 200 mm
            inner: {thread: M18x1.5 LH, depth: 70 mm, bore: open}
            outer: {thread: 5/8-18, depth: 70 mm, bore: open}
        jam_nuts:
          - {id: nl, thread: M18x1.5 LH, thickness: 9 mm}
          - {id: nr, thread: 5/8-18, thickness: 9.525 mm}
        rods:
          - {name: toe, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: {{length}}, adjust: 1 mm}
        steering: {left: {{steering}}, plates: 610 mm}
        """;

    /// <summary>The same with threads of which one turn lengthens the rod by the sum of two given pitches.</summary>
    public static string CoarseOnSteering(string innerThread, string outerThread, string length, string steering) =>
        $$"""
        tierodcalc: 1
        units: mm
        rules: {engagement: 20 mm}
        inner_ends:
          - {id: i, thread: {{innerThread}} LH, center_to_tip: 200 mm, thread_length: 100 mm}
        outer_ends:
          - {id: o, thread: {{outerThread}}, center_to_tip: 90 mm, thread_length: 60 mm}
        sleeves:
          - id: s
            length: 200 mm
            inner: {thread: {{innerThread}} LH, depth: 70 mm, bore: open}
            outer: {thread: {{outerThread}}, depth: 70 mm, bore: open}
        jam_nuts:
          - {id: nl, thread: {{innerThread}} LH, thickness: 9 mm}
          - {id: nr, thread: {{outerThread}}, thickness: 9 mm}
        rods:
          - {name: toe, side: left, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: {{length}}, adjust: 1 mm}
        steering: {left: {{steering}}, plates: 610 mm}
        """;

    private static string Sleeved(double length, string inner, string outer, double target) =>
        $$"""
        tierodcalc: 1
        units: mm
        inner_ends:
          - {id: i, thread: M16x1.5 LH, center_to_tip: 190 mm, thread_length: 110 mm, max_cut: 60 mm}
        outer_ends:
          - {id: o, thread: M16x1.5, center_to_tip: 80 mm, thread_length: 48 mm}
        sleeves:
          - id: s
            length: {{Text(length)}} mm
            inner: {thread: M16x1.5 LH, {{inner}}}
            outer: {thread: M16x1.5, {{outer}}}
        jam_nuts:
          - {id: nl, thread: M16x1.5 LH, thickness: 8 mm}
          - {id: nr, thread: M16x1.5, thickness: 8 mm}
        rods:
          - {name: w, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: {{Text(target)}} mm, adjust: 3 mm}
        """;

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);
}
