using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>One run of <c>thread</c>.</summary>
internal static class ThreadRun
{
    /// <summary>What it prints, read without minding where its lines are broken.</summary>
    public static string Text(int expectedStatus, params string[] words) => PlanPage.Joined(Output(expectedStatus, words));

    /// <summary>What it prints.</summary>
    public static string Output(int expectedStatus, params string[] words)
    {
        CommandLine run = CommandLine.Run(["thread", .. words]);
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return run.Output;
    }

    /// <summary>What it prints as JSON.</summary>
    public static JsonElement Json(int expectedStatus, params string[] words) =>
        JsonDocument.Parse(Output(expectedStatus, [.. words, "--json"])).RootElement;

    /// <summary>The codes of the warnings.</summary>
    public static string[] Codes(JsonElement root) =>
        [.. root.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetProperty("code").GetString()!)];

    /// <summary>A number by its path.</summary>
    public static double Number(JsonElement root, params string[] path) =>
        path.Aggregate(root, (element, key) => element.GetProperty(key)).GetDouble();

    /// <summary>A list of numbers or nulls by its path.</summary>
    public static double?[] Numbers(JsonElement root, params string[] path) =>
        [.. path.Aggregate(root, (element, key) => element.GetProperty(key)).EnumerateArray().Select(
            number => number.ValueKind == JsonValueKind.Null ? null : (double?)number.GetDouble())];
}
