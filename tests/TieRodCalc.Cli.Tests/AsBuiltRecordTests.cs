using System.Text.Json;
using static TieRodCalc.Cli.Tests.AsBuiltJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>The build record: a job that is read back to the same answer, and from which the same rod is made of new parts.</summary>
public sealed class AsBuiltRecordTests : IDisposable
{
    /// <summary>Readings are written with six decimals, and some figures are sums of several.</summary>
    private const double Near = 1e-5;

    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-asbuilt").FullName;

    public static TheoryData<string> Jobs => ["cut", "nut", "bent", "both bent", "one hand", "socket", "told in full"];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_readings_of_a_planned_rod_give_back_its_plan(string name)
    {
        JsonElement plan = CommandLine.FirstRod(Job(name));
        JsonElement built = Rod(Built(Job(name)));

        Assert.Equal("buildable", built.Word("verdict"));
        Assert.Equal(plan.Word("locked"), built.Word("locked"));
        Assert.Equal(plan.GetProperty("length").Number("target_mm"), built.GetProperty("length").Number("present_mm"), Near);
        Assert.Empty(built.GetProperty("contradictions").EnumerateArray());
        Assert.Empty(built.GetProperty("binding").EnumerateArray());
        foreach (string end in Ends(plan))
        {
            JsonElement planned = plan.GetProperty("joints").GetProperty(end);
            JsonElement joint = built.GetProperty("joints").GetProperty(end);
            foreach (string figure in (string[])
                ["insertion_mm", "showing_mm", "engaged_mm", "engaged_least_mm", "required_mm", "nut_room_mm", "nut_room_least_mm"])
            {
                Assert.Equal(planned.Number(figure), joint.Number(figure), Near);
            }

            Assert.Equal(planned.Word("governed_by"), joint.Word("governed_by"));
            Assert.All(joint.GetProperty("insertion_span_mm").EnumerateArray(), at =>
                Assert.Equal(planned.Number("insertion_mm"), at.GetDouble(), Near));
        }

        foreach (string figure in (string[])["shorter_mm", "longer_mm", "shorter_turns", "longer_turns"])
        {
            Assert.Equal(plan.GetProperty("adjust").Number(figure), built.GetProperty("adjust").Number(figure), Near);
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_record_is_a_sound_job_that_gives_the_same_answer_again(string name)
    {
        string file = Path.Combine(_folder, "record.yaml");
        JsonElement first = Rod(Built(Job(name)), 0, "--record", file);
        CommandLine check = CommandLine.Run("check", file);
        Assert.Equal((0, string.Empty), (check.Status, check.Error));
        Assert.StartsWith($"{file}: sound; a job with 1 rod\n", check.Output, StringComparison.Ordinal);

        CommandLine again = CommandLine.Run("asbuilt", file, "--json", "--record", Path.Combine(_folder, "again.yaml"));
        Assert.Equal((0, string.Empty), (again.Status, again.Error));
        using JsonDocument document = JsonDocument.Parse(again.Output);
        AssertSame(first, document.RootElement.GetProperty("rods")[0], string.Empty);
        Assert.Equal(File.ReadAllText(file), File.ReadAllText(Path.Combine(_folder, "again.yaml")));
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_plan_from_the_record_says_how_the_same_rod_is_made_of_new_parts(string name)
    {
        string file = Path.Combine(_folder, "record.yaml");
        Rod(Built(Job(name)), 0, "--record", file);
        JsonElement plan = CommandLine.FirstRod(Job(name));
        CommandLine run = CommandLine.Run("plan", file, "--json");
        Assert.Equal((0, string.Empty), (run.Status, run.Error));
        using JsonDocument document = JsonDocument.Parse(run.Output);
        JsonElement recorded = document.RootElement.GetProperty("rods")[0];

        foreach (string part in (string[])["name", "verdict", "locked", "length", "cut", "joints", "tip_gap_mm", "adjust", "start"])
        {
            AssertSame(plan.GetProperty(part), recorded.GetProperty(part), part);
        }

        JsonElement spare = recorded.GetProperty("spare");
        Assert.Equal(plan.GetProperty("length").Number("target_mm"), spare.Number("length_mm"), Near);
        AssertSame(plan.GetProperty("start"), spare.GetProperty("start"), "start");
        foreach (string end in Ends(plan))
        {
            JsonElement made = spare.GetProperty(end);
            JsonElement cut = plan.GetProperty("cut").GetProperty(end);
            bool isCut = cut.ValueKind == JsonValueKind.Object && cut.Number("recommended_mm") > 0;
            Assert.Equal(isCut ? cut.Number("recommended_mm") : 0, made.Number("cut_mm"), Near);
            Assert.Equal(plan.GetProperty("joints").GetProperty(end).Number("insertion_mm"), made.Number("insertion_mm"), Near);
            Assert.Equal(plan.GetProperty("joints").GetProperty(end).Number("showing_mm"), made.Number("showing_mm"), Near);
            if (isCut)
            {
                Assert.Equal(cut.Number("mark_from_center_mm"), made.Number("mark_from_center_mm"), Near);
                Assert.Equal(cut.Number("thread_left_mm"), made.Number("thread_left_mm"), Near);
            }
        }
    }

    [Fact]
    public void Without_a_record_of_the_rod_a_plan_has_no_spare()
    {
        Assert.Equal(JsonValueKind.Null, CommandLine.FirstRod(CheckJobs.W1).GetProperty("spare").ValueKind);
        JsonElement plan = CommandLine.FirstRod(CheckJobs.W1);
        string notEnough = WithBuilt(CheckJobs.W1, $"{{center_to_center: 365.125 mm, {Showing(plan)}}}");
        Assert.Equal(JsonValueKind.Null, CommandLine.FirstRod(notEnough).GetProperty("spare").ValueKind);
    }

    [Fact]
    public void What_is_not_known_of_a_rod_stays_unknown_in_its_record()
    {
        JsonElement plan = CommandLine.FirstRod(CheckJobs.W1);
        string file = Path.Combine(_folder, "unknown.yaml");
        JsonElement first = Rod(WithBuilt(CheckJobs.W1, $"{{{Showing(plan)}}}"), 1, "--record", file);
        Assert.Equal("not checked", first.Word("verdict"));
        CommandLine again = CommandLine.Run("asbuilt", file, "--json");
        Assert.Equal((1, string.Empty), (again.Status, again.Error));
        using JsonDocument document = JsonDocument.Parse(again.Output);
        AssertSame(first, document.RootElement.GetProperty("rods")[0], string.Empty);
    }

    private static string[] Ends(JsonElement plan) =>
        plan.GetProperty("joints").GetProperty("outer").ValueKind == JsonValueKind.Object ? ["inner", "outer"] : ["inner"];

    private static void AssertSame(JsonElement expected, JsonElement actual, string path)
    {
        Assert.True(expected.ValueKind == actual.ValueKind, $"{path}: {expected} and {actual}");
        switch (expected.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty property in expected.EnumerateObject())
                {
                    AssertSame(property.Value, actual.GetProperty(property.Name), $"{path}/{property.Name}");
                }

                break;
            case JsonValueKind.Array:
                Assert.True(expected.GetArrayLength() == actual.GetArrayLength(), $"{path}: {expected} and {actual}");
                foreach ((JsonElement one, JsonElement other) in expected.EnumerateArray().Zip(actual.EnumerateArray()))
                {
                    AssertSame(one, other, path);
                }

                break;
            case JsonValueKind.Number:
                Assert.True(Math.Abs(expected.GetDouble() - actual.GetDouble()) <= Near, $"{path}: {expected} and {actual}");
                break;
            default:
                Assert.True(expected.ToString() == actual.ToString(), $"{path}: {expected} and {actual}");
                break;
        }
    }
}
