using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>The names that scripts rely on in the JSON of a plan.</summary>
public sealed class JsonShapeTests
{
    private static readonly string[] RodKeys =
    [
        "name", "with", "verdict", "reason", "locked", "length", "cut", "joints", "tip_gap_mm", "adjust", "lengthens", "per_turn", "per_half_turn",
        "per_flat", "start", "least_cut_setting", "binding", "remedies", "worst_case", "spare", "swing", "warnings",
    ];

    [Fact]
    public void A_rod_that_can_be_built_has_every_key()
    {
        JsonElement root = JsonDocument.Parse(CommandLine.RunWith(CheckJobs.W1, "plan", "-", "--json").Output).RootElement;
        Assert.Equal(1, root.GetProperty("tierodcalc").GetInt32());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("job").ValueKind);
        JsonElement rod = root.GetProperty("rods")[0];

        Assert.Equal(RodKeys, Keys(rod));
        Assert.Equal(
            ["target_mm", "axial_mm", "shortest_mm", "longest_mm", "uncut_shortest_mm", "uncut_longest_mm"], Keys(rod, "length"));
        Assert.Equal(
            ["least_mm", "most_mm", "recommended_mm", "mark_from_center_mm", "thread_left_mm"], Keys(rod, "cut", "inner"));
        Assert.Equal(
            [
                "insertion_mm", "insertion_span_mm", "showing_mm", "engaged_mm", "engaged_least_mm", "required_mm", "governed_by",
                "rule_mm", "job_mm", "strength_mm", "strength", "load", "nut_room_mm", "nut_room_least_mm",
            ],
            Keys(rod, "joints", "outer"));
        Assert.Equal(
            ["shorter_mm", "longer_mm", "shorter_turns", "longer_turns", "shorter_ends_at", "longer_ends_at"], Keys(rod, "adjust"));
        Assert.Equal(["limit", "end"], Keys(rod, "adjust", "longer_ends_at"));
        Assert.Equal(["length_mm", "toe_deg", "toe_at_plates_mm"], Keys(rod, "per_turn"));
        Assert.Equal(
            ["first", "alone_turns", "showing_before_second_mm", "then_sleeve_turns", "then_end_turns"], Keys(rod, "start"));
        Assert.Equal(["inner_insertion_mm", "outer_insertion_mm"], Keys(rod, "least_cut_setting"));
        Assert.Equal(
            [
                "verdict", "tolerances_stated", "least_cut_mm", "recommended_mm", "inner_cut_mm", "outer_cut_mm", "plan_is_safe", "slack_mm",
                "dimensions",
            ],
            Keys(rod, "worst_case"));
        Assert.Equal(
            ["dimension", "end", "plus_minus_mm", "takes_mm", "needed_plus_minus_mm"],
            Keys(rod.GetProperty("worst_case").GetProperty("dimensions")[0]));
    }

    [Fact]
    public void A_rod_that_cannot_be_built_keeps_name_verdict_uncut_reach_binding_remedies_and_warnings()
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.W2, expectedStatus: 1);

        Assert.Equal(RodKeys, Keys(rod));
        string[] kept = ["name", "verdict", "reason", "length", "binding", "remedies", "swing", "warnings"];
        Assert.All(RodKeys.Except(kept), key => Assert.Equal(JsonValueKind.Null, rod.GetProperty(key).ValueKind));
        Assert.All(
            Keys(rod, "length"),
            key => Assert.Equal(
                key.StartsWith("uncut", StringComparison.Ordinal) ? JsonValueKind.Number : JsonValueKind.Null,
                rod.GetProperty("length").GetProperty(key).ValueKind));
        Assert.Equal(["limit", "end", "at", "missed_by_mm"], Keys(rod.GetProperty("binding")[0]));
        Assert.Equal(["code", "end", "text"], Keys(rod.GetProperty("warnings")[0]));
        JsonElement remedy = rod.GetProperty("remedies")[0];
        Assert.Equal(["id", "changes", "verdict", "locked", "size_mm", "binding", "text"], Keys(remedy));
        Assert.Equal(["change", "end", "by_mm", "to_mm"], Keys(remedy.GetProperty("changes")[0]));
    }

    [Fact]
    public void Null_where_an_end_must_not_be_cut_and_zeros_where_it_need_not_be()
    {
        JsonElement cut = CommandLine.FirstRod(CheckJobs.W8).GetProperty("cut");

        Assert.Equal(JsonValueKind.Null, cut.GetProperty("outer").ValueKind);
        Assert.All(cut.GetProperty("inner").EnumerateObject(), figure => Assert.Equal(0, figure.Value.GetDouble()));
    }

    private static string[] Keys(JsonElement element, params string[] path) =>
        [.. path.Aggregate(element, (current, name) => current.GetProperty(name)).EnumerateObject().Select(property => property.Name)];
}
