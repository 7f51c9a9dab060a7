using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>Strength and load in the output of a plan.</summary>
public sealed class PlanStrengthTests
{
    /// <summary>A heat-treated rod end in an aluminum sleeve, the rule of the job 1.5 diameters.</summary>
    private const string Soft =
        """
        tierodcalc: 1
        units: mm
        rules: {engagement: 1.5 diameters, load: 10 kN}
        materials:
          - {id: hard, kind: steel, tensile: 1100 MPa}
          - {id: aluminum, kind: aluminum, tensile: 310 MPa}
        inner_ends:
          - {id: i, thread: M18x1.5 LH, center_to_tip: 215 mm, thread_length: 90 mm, offset: 14 mm, material: hard}
        outer_ends:
          - {id: o, thread: 5/8-18, center_to_tip: 80 mm, thread_length: 62 mm, joint: rod end, material: hard}
        sleeves:
          - id: s
            length: 203.2 mm
            inner: {thread: M18x1.5 LH, depth: 60 mm, bore: closed}
            outer: {thread: 5/8-18, depth: 60 mm, bore: closed}
            outside: hex 1 in
            material: aluminum
        jam_nuts:
          - {id: nl, thread: M18x1.5 LH, thickness: 9 mm}
          - {id: nr, thread: 5/8-18, thickness: 9.525 mm}
        rods:
          - {name: soft, inner: i, sleeve: s, outer: o, nuts: {inner: nl, outer: nr}, length: 396 mm, adjust: 3 mm}
        """;

    [Fact]
    public void Strength_governs_where_a_diameter_and_a_half_is_not_enough_and_says_why()
    {
        string text = PlanPage.Of(Soft).Text;
        JsonElement outer = CommandLine.FirstRod(Soft).GetProperty("joints").GetProperty("outer");

        Assert.Equal("strength", outer.GetProperty("governed_by").GetString());
        Assert.Equal(1.5 * 15.875, outer.GetProperty("rule_mm").GetDouble(), 1e-6);
        Assert.Equal(outer.GetProperty("strength_mm").GetDouble(), outer.GetProperty("required_mm").GetDouble());
        Assert.InRange(outer.GetProperty("engaged_least_mm").GetDouble(), outer.GetProperty("required_mm").GetDouble() - 1e-5, 60);
        Assert.Contains("BY STRENGTH; the rule, 1.5 diameters, would be 23.82 mm", text, StringComparison.Ordinal);
        Assert.Contains("of engagement is not enough at the outer end: strength asks for 37.", text, StringComparison.Ordinal);
        Assert.Contains("a stripped thread gives no warning", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sleeve_that_is_too_shallow_for_the_strength_cannot_be_built_and_says_what_asks_for_so_much()
    {
        string job = Soft.With("depth: 60 mm, bore: closed}\n    outside", "depth: 30 mm, bore: closed}\n    outside");
        string text = PlanPage.Of(job, expectedStatus: 1).Text;
        JsonElement rod = CommandLine.FirstRod(job, expectedStatus: 1);

        Assert.Contains(
            rod.GetProperty("binding").EnumerateArray(),
            binding => binding.GetProperty("limit").GetString() == "engagement" && binding.GetProperty("at").GetString() == "any");
        Assert.Contains("strength-governs", Codes(rod));
        Assert.Contains("BY STRENGTH", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("engagement: 40 mm", "job", 40.0)]
    [InlineData("engagement: 20 mm", "strength", null)]
    [InlineData("engagement: 2.5 diameters", "rule", 2.5 * 15.875)]
    public void The_larger_of_what_is_asked_for_and_of_strength_counts(string rule, string governs, double? required)
    {
        JsonElement outer = CommandLine.FirstRod(Soft.With("engagement: 1.5 diameters", rule).With("length: 396 mm", "length: 390 mm"))
            .GetProperty("joints").GetProperty("outer");

        Assert.Equal(governs, outer.GetProperty("governed_by").GetString());
        Assert.Equal(required ?? outer.GetProperty("strength_mm").GetDouble(), outer.GetProperty("required_mm").GetDouble(), 1e-6);
    }

    /// <summary>10 kN on M18x1.5 with an offset of 14 mm: 46 MPa of pull, 312 MPa of bending, computed by hand.</summary>
    [Fact]
    public void The_load_pulls_and_bends()
    {
        JsonElement load = CommandLine.FirstRod(Soft).GetProperty("joints").GetProperty("inner").GetProperty("load");

        Assert.Equal(10000, load.GetProperty("load_n").GetDouble());
        Assert.Equal(14, load.GetProperty("arm_mm").GetDouble(), 1e-6);
        Assert.Equal(46.2, load.GetProperty("axial_mpa").GetDouble(), 0.1);
        Assert.Equal(312, load.GetProperty("bending_mpa").GetDouble(), 0.5);
        Assert.Equal(1100 / 358.3, load.GetProperty("breaking_factor").GetDouble(), 0.01);
        Assert.Contains("yielding, shock, fatigue", PlanPage.Of(Soft).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rod_that_gives_way_under_its_load_says_so_first_and_with_its_status()
    {
        string job = Soft.With("load: 10 kN", "load: 31 kN");
        string text = PlanPage.Of(job, expectedStatus: 1).Text;
        JsonElement rod = CommandLine.FirstRod(job, expectedStatus: 1);

        Assert.Equal("buildable", rod.GetProperty("verdict").GetString());
        Assert.Contains("gives-way-under-load", Codes(rod));
        int headline = text.IndexOf("THE INNER END GIVES WAY UNDER THE LOAD that the job gives: the least factor is 0.99", StringComparison.Ordinal);
        Assert.InRange(headline, 0, text.IndexOf("wanted length", StringComparison.Ordinal));
        Assert.DoesNotContain("gives-way-under-load", Codes(CommandLine.FirstRod(Soft.With("load: 10 kN", "load: 30 kN"))));
    }

    [Fact]
    public void A_rods_own_load_stands_in_place_of_the_jobs() => Assert.Equal(
        12000,
        CommandLine.FirstRod(Soft.With("adjust: 3 mm}", "adjust: 3 mm, rules: {load: 12 kN}}"))
            .GetProperty("joints").GetProperty("inner").GetProperty("load").GetProperty("load_n").GetDouble());

    [Theory]
    [InlineData("kind: steel, tensile: 1100 MPa", "kind: steel", "the tensile strength of the end is not given")]
    [InlineData("kind: aluminum, tensile: 310 MPa", "kind: aluminum", "the tensile strength of the sleeve is not given")]
    public void A_strength_that_is_missing_is_told_and_nothing_is_made_up(string piece, string instead, string words)
    {
        string job = Soft.With(piece, instead);
        JsonElement rod = CommandLine.FirstRod(job);

        JsonElement inner = rod.GetProperty("joints").GetProperty("inner");
        Assert.Equal(JsonValueKind.Null, inner.GetProperty("strength_mm").ValueKind);
        Assert.Equal(JsonValueKind.Null, inner.GetProperty("strength").ValueKind);
        Assert.Equal(JsonValueKind.Null, inner.GetProperty("load").GetProperty("female_strip_factor").ValueKind);
        Assert.Contains("strength-not-checked", Codes(rod));
        Assert.Contains("load-not-checked", Codes(rod));
        string text = PlanPage.Of(job).Text;
        Assert.Contains(words, text, StringComparison.Ordinal);
        int headline = text.IndexOf("THE LOAD WAS NOT CHECKED IN FULL", StringComparison.Ordinal);
        Assert.InRange(headline, 0, text.IndexOf("wanted length", StringComparison.Ordinal));
        Assert.Contains("strength asks for not checked", PlanPage.Of(job).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("outside: hex 1 in\n    ", "", "outside-unknown")]
    [InlineData("outside: hex 1 in", "outside: round 25 mm", "sleeve-too-thin")]
    [InlineData("depth: 60 mm, bore: closed}\n    outside", "depth: 60 mm, bore: closed, clamp: 20 mm}\n    outside", "sleeve-slit")]
    [InlineData("thread: M18x1.5 LH", "thread: M18x1.25 LH", "special-thread")]
    public void What_the_method_does_not_cover_is_told(string piece, string instead, string code)
    {
        Assert.DoesNotContain(code, Codes(CommandLine.FirstRod(Soft)));
        Assert.Contains(code, Codes(CommandLine.FirstRod(Soft.Replace(piece, instead, StringComparison.Ordinal))));
    }

    private static string?[] Codes(JsonElement rod) =>
        [.. rod.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetProperty("code").GetString())];
}
