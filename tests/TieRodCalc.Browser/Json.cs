using System.Text.Json;

namespace TieRodCalc.Browser;

/// <summary>How the output of <c>plan --json</c> is read.</summary>
internal static class Json
{
    /// <summary>The keys of the two sides of a rod.</summary>
    public static IReadOnlyList<string> Sides { get; } = ["inner", "outer"];

    public static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    public static double Number(JsonElement element, string name) => element.GetProperty(name).GetDouble();

    /// <summary>Whether a key is there and not null.</summary>
    public static bool Has(JsonElement element, string name, out JsonElement value) =>
        element.TryGetProperty(name, out value) && value.ValueKind != JsonValueKind.Null;
}
