using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// The check cases through the command line and its JSON. Source of the figures: two independent computations outside this
/// repository (a linear programme over the limits, interval algebra; for toe a numerical root search), good to 0.01 mm and
/// 0.0005 degrees.
/// </summary>
public sealed class CheckCaseTests
{
    private const double Mm = 0.01;
    private const double Degrees = 0.0005;

    private const string LeftPoints =
        "{axis: [[8 mm, 640 mm, -70 mm], [-16 mm, 600 mm, 190 mm]], outer: [-150 mm, 628 mm, -35 mm], inner: [-128 mm, 205 mm, -22 mm]}";

    private const string BetweenTheJoints = "{from: [-150 mm, 628 mm, -35 mm], to: [-128 mm, 205 mm, -22 mm]}";

    [Fact]
    public void W1_a_closed_bore_asks_for_a_cut()
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.W1);

        Verdict(rod, "buildable after cutting");
        Near(374.650, rod, "length", "uncut_shortest_mm");
        Near(408.404, rod, "length", "uncut_longest_mm");
        Near(12.700, rod, "cut", "inner", "least_mm");
        Near(38.100, rod, "cut", "inner", "most_mm");
        Assert.Equal(JsonValueKind.Null, At(rod, "cut", "outer").ValueKind);
        Near(49.212, rod, "least_cut_setting", "inner_insertion_mm");
        Near(33.338, rod, "least_cut_setting", "outer_insertion_mm");
        Near(2.8222, rod, "per_turn", "length_mm");
    }

    [Fact]
    public void W2_no_cut_makes_room_for_the_nuts()
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.W2, expectedStatus: 1);

        Verdict(rod, "not buildable");
        Near(269.000, rod, "length", "uncut_shortest_mm");
        Near(287.500, rod, "length", "uncut_longest_mm");
        Assert.Equal(["nut room inner shortest", "nut room outer shortest"], Binding(rod));
        Near(9.000, At(rod, "binding")[0], "missed_by_mm");
    }

    [Fact]
    public void W3_the_tips_ask_for_a_cut()
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.W3());

        Verdict(rod, "buildable after cutting");
        Near(273.000, rod, "length", "uncut_shortest_mm");
        Near(307.500, rod, "length", "uncut_longest_mm");
        Near(14.000, rod, "cut", "inner", "least_mm");
        Near(42.500, rod, "cut", "inner", "most_mm");
        Near(50.875, rod, "least_cut_setting", "inner_insertion_mm");
        Near(33.125, rod, "least_cut_setting", "outer_insertion_mm");
    }

    [Fact]
    public void W4_too_long_for_the_engagement()
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.W3(target: 330), expectedStatus: 1);

        Verdict(rod, "not buildable");
        Near(273.000, rod, "length", "uncut_shortest_mm");
        Near(307.500, rod, "length", "uncut_longest_mm");
        Assert.Equal(["engagement inner longest", "engagement outer longest"], Binding(rod));
        Near(25.5, At(rod, "binding")[0], "missed_by_mm");
    }

    [Fact]
    public void W5_a_bent_end()
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.W5());

        Verdict(rod, "buildable after cutting");
        Near(390.253, rod, "length", "uncut_shortest_mm");
        Near(411.812, rod, "length", "uncut_longest_mm");
        Near(381.665, rod, "length", "axial_mm");
        Near(13.265, rod, "cut", "inner", "least_mm");
        Near(24.832, rod, "cut", "inner", "most_mm");
        Near(42.421, rod, "least_cut_setting", "inner_insertion_mm");
        Near(29.324, rod, "least_cut_setting", "outer_insertion_mm");
    }

    [Fact]
    public void W6_same_hand_is_a_differential_adjuster()
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.W6);

        Verdict(rod, "buildable");
        Near(295.000, rod, "length", "uncut_shortest_mm");
        Near(326.750, rod, "length", "uncut_longest_mm");
        Near(0.500, rod, "per_turn", "length_mm");
        Near(36.875, rod, "joints", "inner", "insertion_mm");
        Near(33.125, rod, "joints", "outer", "insertion_mm");
        Near(33.000, At(rod, "joints", "inner", "insertion_span_mm")[0]);
        Near(40.750, At(rod, "joints", "inner", "insertion_span_mm")[1]);
        Near(22.083, rod, "start", "then_end_turns");
        Assert.Equal("clockwise", At(rod, "lengthens").GetString());
    }

    [Theory]
    [InlineData(0, 460.017, 494.516, 469.983, 40.009)]
    [InlineData(90, 460.435, 494.904, 469.574, 40.213)]
    [InlineData(180, 460.851, 495.292, 469.165, 40.417)]
    public void W7_two_bent_ends_and_their_clocking(int clocking, double shortest, double longest, double axial, double inner)
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.W7(clocking));

        Verdict(rod, "buildable");
        Near(shortest, rod, "length", "uncut_shortest_mm");
        Near(longest, rod, "length", "uncut_longest_mm");
        Near(axial, rod, "length", "axial_mm");
        Near(inner, rod, "joints", "inner", "insertion_mm");
    }

    [Fact]
    public void W8_the_thread_of_the_other_end_is_in_the_way()
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.W8);

        Verdict(rod, "buildable");
        Near(273.000, rod, "length", "uncut_shortest_mm");
        Near(337.500, rod, "length", "uncut_longest_mm");
        Near(0, rod, "cut", "inner", "recommended_mm");
        Near(71.875, rod, "joints", "inner", "insertion_mm");
        Near(33.125, rod, "joints", "outer", "insertion_mm");
        Near(66.500, At(rod, "joints", "inner", "insertion_span_mm")[0]);
        Near(77.250, At(rod, "joints", "inner", "insertion_span_mm")[1]);
    }

    [Theory]
    [InlineData("behind axle", 1.09452, 11.652)]
    [InlineData("ahead of axle", -1.09452, -11.652)]
    public void Toe_of_a_turn_by_the_steering_arm(string joint, double toe, double atPlates)
    {
        JsonElement rod = CommandLine.FirstRod(CheckJobs.OnSteering("400 mm", $"{{arm: 152.4 mm, joint: {joint}}}"));

        Near(2.911111, rod, "per_turn", "length_mm");
        Assert.Equal(toe, At(rod, "per_turn", "toe_deg").GetDouble(), Degrees);
        Near(atPlates, rod, "per_turn", "toe_at_plates_mm");
    }

    [Fact]
    public void Toe_of_ten_millimeters_by_the_steering_arm()
    {
        JsonElement rod = CommandLine.FirstRod(
            CheckJobs.CoarseOnSteering("M30x6", "M30x4", "400 mm", "{arm: 152.4 mm, joint: behind axle}"));

        Near(10, rod, "per_turn", "length_mm");
        Assert.Equal(3.76222, At(rod, "per_turn", "toe_deg").GetDouble(), Degrees);
    }

    [Fact]
    public void Toe_of_a_turn_by_the_points_of_the_wheel()
    {
        JsonElement longer = CommandLine.FirstRod(CheckJobs.OnSteering(BetweenTheJoints, LeftPoints));
        Assert.Equal(1.08261, At(longer, "per_turn", "toe_deg").GetDouble(), Degrees);

        JsonElement five = CommandLine.FirstRod(CheckJobs.CoarseOnSteering("M30x3", "M30x2", BetweenTheJoints, LeftPoints));
        Near(5, five, "per_turn", "length_mm");
        Assert.Equal(1.86003, At(five, "per_turn", "toe_deg").GetDouble(), Degrees);
    }

    /// <summary>The turn that lengthens a rod back to where the points stand gives back the toe that shortening had cost.</summary>
    [Fact]
    public void Toe_of_a_shorter_rod_by_the_points_of_the_wheel()
    {
        double distance = Math.Sqrt(22 * 22 + 423 * 423 + 13 * 13);
        FormattableString shorter = $"{distance - 1.5 - 25.4 / 18:F9} mm";
        JsonElement turn = CommandLine.FirstRod(CheckJobs.OnSteering(FormattableString.Invariant(shorter), LeftPoints));
        Assert.Equal(1.08200, At(turn, "per_turn", "toe_deg").GetDouble(), Degrees);

        FormattableString fiveShorter = $"{distance - 5:F9} mm";
        JsonElement five = CommandLine.FirstRod(
            CheckJobs.CoarseOnSteering("M30x3", "M30x2", FormattableString.Invariant(fiveShorter), LeftPoints));
        Assert.Equal(1.85825, At(five, "per_turn", "toe_deg").GetDouble(), Degrees);
    }

    private static void Verdict(JsonElement rod, string expected) => Assert.Equal(expected, At(rod, "verdict").GetString());

    private static string[] Binding(JsonElement rod) =>
    [
        .. At(rod, "binding").EnumerateArray().Select(binding =>
            $"{At(binding, "limit").GetString()} {At(binding, "end").GetString()} {At(binding, "at").GetString()}"),
    ];

    private static void Near(double expected, JsonElement element, params string[] path) =>
        Assert.Equal(expected, At(element, path).GetDouble(), Mm);

    private static JsonElement At(JsonElement element, params string[] path) =>
        path.Aggregate(element, (current, name) => current.GetProperty(name));
}
