using System.Text.Json;
using TieRodCalc.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>Each number and string of the JSON is the one of the plan that its name says.</summary>
public sealed class JsonValueTests
{
    /// <summary>Both ends cut, bent, turned by flats, on a steering: all numbers of its plan differ but two, of which others tell the difference.</summary>
    private const string Everything =
        """
        tierodcalc: 1
        job: everything at once
        units: mm
        rules: {mark: 0.8 mm, load: 9 kN}
        materials:
          - {id: hard, kind: steel, tensile: 1000 MPa}
          - {id: soft, kind: steel, tensile: 600 MPa}
        inner_ends:
          - {id: i, thread: M18x1.5 LH, center_to_tip: 200 mm, thread_length: 75 mm, offset: 16 mm, max_cut: 40 mm, material: hard}
        outer_ends:
          - {id: o, thread: 5/8-18, center_to_tip: 80 mm, thread_length: 54 mm, max_cut: 15 mm, swing: 14 deg, material: hard}
        sleeves:
          - id: s
            length: 90 mm
            inner: {thread: M18x1.5 LH, depth: 52 mm, bore: open}
            outer: {thread: 5/8-18, depth: 32 mm, bore: closed}
            outside: hex 1 in
            material: soft
        jam_nuts:
          - {id: nl, thread: M18x1.5 LH, thickness: 9 mm}
          - {id: nr, thread: 5/8-18, thickness: 9.525 mm}
        rods:
          - name: all
            side: left
            inner: i
            sleeve: s
            outer: o
            nuts: {inner: nl, outer: nr}
            length: 265.5 mm
            adjust: {shorter: 0.7 mm, longer: 1.1 mm}
        steering: {left: {arm: 152.4 mm, joint: behind axle, rod_angle: 4 deg}, plates: 610 mm}
        """;

    private const string Between = "; ";

    private const string UncutAtTheMiddle =
        "joints.inner.insertion_mm = least_cut_setting.inner_insertion_mm; "
        + "joints.outer.insertion_mm = least_cut_setting.outer_insertion_mm; "
        + "length.longest_mm = length.uncut_longest_mm; length.shortest_mm = length.uncut_shortest_mm; "
        + "length.target_mm = length.axial_mm";

    private const string OuterAtItsMost = "joints.outer.insertion_span_mm.1 = least_cut_setting.outer_insertion_mm";

    private const string OwnRules =
        "; joints.inner.required_mm = joints.inner.rule_mm; joints.outer.required_mm = joints.outer.rule_mm";

    private const string SameLoad =
        "; joints.inner.load.load_n = joints.outer.load.load_n; joints.inner.strength.c2 = joints.outer.strength.c2";

    private const string SameRule =
        "joints.inner.required_mm = joints.inner.rule_mm = joints.outer.required_mm = joints.outer.rule_mm; ";

    /// <summary>Jobs, each with the numbers that are equal by nature; all others differ, so that a swap of two would be seen.</summary>
    public static TheoryData<string, string> Jobs => new()
    {
        { Everything, OuterAtItsMost + OwnRules + SameLoad },
        { Everything.With("behind axle", "ahead of axle"), OuterAtItsMost + OwnRules + SameLoad },
        {
            CheckJobs.W1,
            "joints.inner.insertion_span_mm.1 = least_cut_setting.inner_insertion_mm; "
            + SameRule
            + OuterAtItsMost
            + "; length.target_mm = length.axial_mm"
        },
        { CheckJobs.W2, "binding.0.missed_by_mm = binding.1.missed_by_mm" },
        { CheckJobs.W5(), OuterAtItsMost + OwnRules },
        { CheckJobs.W6, Uncut(SameRule + "joints.inner.showing_mm = start.showing_before_second_mm; ") },
        { CheckJobs.W8, Uncut("joints.inner.engaged_mm = joints.inner.engaged_least_mm; " + SameRule) },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Every_value_is_that_of_the_plan(string job, string equal)
    {
        Reading<Job> reading = JobChanges.Read(job);
        JobRod rod = reading.Value!.Rods[0];
        RodPlan plan = JobChanges.Plan(job);
        Dictionary<string, JsonElement> leaves =
            JsonLeaves.Of(CommandLine.FirstRod(job, plan.Verdict == Verdict.NotBuildable ? 1 : 0));

        JsonLeaves.Equal(JsonMapping.Of(rod, reading.Value.Units), leaves);

        // What tolerances leave and what would help repeats figures of the plan by its nature.
        Dictionary<string, JsonElement> own = leaves
            .Where(leaf => !leaf.Key.StartsWith("worst_case", StringComparison.Ordinal) && !leaf.Key.StartsWith("remedies", StringComparison.Ordinal))
            .ToDictionary();
        Assert.Equal(Sorted(equal), Sorted(string.Join(Between, JsonLeaves.EqualNumbers(own))));
    }

    [Theory]
    [InlineData("behind axle", 1)]
    [InlineData("ahead of axle", -1)]
    public void What_a_turn_does_keeps_its_sign_and_its_order(string joint, int sign)
    {
        JsonElement rod = CommandLine.FirstRod(Everything.With("behind axle", joint));

        foreach (string figure in (string[])["length_mm", "toe_deg", "toe_at_plates_mm"])
        {
            double[] values =
            [
                .. new[] { "per_flat", "per_half_turn", "per_turn" }
                    .Select(turn => rod.GetProperty(turn).GetProperty(figure).GetDouble() * (figure == "length_mm" ? 1 : sign)),
            ];
            Assert.InRange(values[0], 0.01, double.MaxValue);
            Assert.InRange(values[1] / values[0], 2.9, 3.1);
            Assert.InRange(values[2] / values[1], 1.9, 2.1);
        }
    }

    [Fact]
    public void Numbers_have_six_decimals_where_the_plan_has_as_many()
    {
        string[] numbers =
        [
            .. JsonLeaves.Of(CommandLine.FirstRod(Everything)).Values
                .Where(value => value.ValueKind == JsonValueKind.Number)
                .Select(value => value.GetRawText()),
        ];

        Assert.Contains(numbers, number => number.Length - number.IndexOf('.', StringComparison.Ordinal) - 1 == 6);
        Assert.All(numbers, number => Assert.DoesNotContain("E", number, StringComparison.OrdinalIgnoreCase));
        RodPlan plan = JobChanges.Plan(Everything);
        double shown = CommandLine.FirstRod(Everything).GetProperty("length").GetProperty("axial_mm").GetDouble();
        Assert.Equal(Math.Round(plan.Axial.Millimeters, 6), shown);
        Assert.NotEqual(Math.Round(plan.Axial.Millimeters, 5), shown);
    }

    [Fact]
    public void Version_name_and_notes_of_the_job_stand_at_the_top()
    {
        Reading<Job> reading = JobChanges.Read(Everything);
        Problem note = Assert.Single(reading.Notes);
        JsonElement root = JsonDocument.Parse(CommandLine.RunWith(Everything, "plan", "-", "--json").Output).RootElement;

        Assert.Equal(["tierodcalc", "job", "rods", "notes"], root.EnumerateObject().Select(property => property.Name));
        JsonLeaves.Equal(
            new Dictionary<string, object?>
            {
                ["file"] = "-",
                ["line"] = note.Line,
                ["column"] = note.Column,
                ["text"] = note.Message,
            },
            JsonLeaves.Of(Assert.Single(root.GetProperty("notes").EnumerateArray())));
        Assert.NotEqual(note.Line, note.Column);
        Assert.Equal(1, root.GetProperty("tierodcalc").GetInt32());
        Assert.Equal("everything at once", root.GetProperty("job").GetString());
    }

    private static string Uncut(string more) => more + UncutAtTheMiddle;

    private static string[] Sorted(string equal) => [.. equal.Split(Between).Order(StringComparer.Ordinal)];
}
