using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>A JSON value taken apart: each number, string and null with the path to it.</summary>
internal static class JsonLeaves
{
    /// <summary>The leaves; of an empty list the list itself.</summary>
    public static Dictionary<string, JsonElement> Of(JsonElement element)
    {
        Dictionary<string, JsonElement> leaves = new(StringComparer.Ordinal);
        Add(leaves, string.Empty, element);
        return leaves;
    }

    /// <summary>Exactly these leaves, numbers rounded to 6 decimals.</summary>
    public static void Equal(IReadOnlyDictionary<string, object?> expected, IReadOnlyDictionary<string, JsonElement> actual)
    {
        Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), actual.Keys.Order(StringComparer.Ordinal));
        foreach ((string path, object? value) in expected)
        {
            Assert.True(Same(value, actual[path]), $"{path}: expected {value ?? "null"}, found {actual[path].GetRawText()}");
        }
    }

    /// <summary>Paths of numbers that are equal, joined by an equals sign: a swap of them would not be seen.</summary>
    public static string[] EqualNumbers(IReadOnlyDictionary<string, JsonElement> leaves) =>
    [
        .. leaves.Where(leaf => leaf.Value.ValueKind == JsonValueKind.Number && leaf.Value.GetDouble() != 0)
            .GroupBy(leaf => leaf.Value.GetDouble(), leaf => leaf.Key)
            .Where(same => same.Count() > 1)
            .Select(same => string.Join(" = ", same))
            .Order(StringComparer.Ordinal),
    ];

    private static bool Same(object? expected, JsonElement actual) => expected switch
    {
        null => actual.ValueKind == JsonValueKind.Null,
        string text => actual.ValueKind == JsonValueKind.String && actual.GetString() == text,
        bool yes => actual.ValueKind == (yes ? JsonValueKind.True : JsonValueKind.False),
        int count => actual.ValueKind == JsonValueKind.Number && actual.GetRawText() == count.ToString(provider: null),
        double number => actual.ValueKind == JsonValueKind.Number
            && Math.Abs(actual.GetDouble() - number) <= 0.500001e-6
            && Decimals(actual.GetRawText()) <= 6,
        _ => actual.ValueKind == JsonValueKind.Array && actual.GetArrayLength() == 0,
    };

    private static int Decimals(string number) => number.Contains('.', StringComparison.Ordinal) ? number.Length - number.IndexOf('.') - 1 : 0;

    private static void Add(Dictionary<string, JsonElement> leaves, string path, JsonElement element)
    {
        string start = path.Length == 0 ? string.Empty : path + ".";
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty property in element.EnumerateObject())
                {
                    Add(leaves, start + property.Name, property.Value);
                }

                break;
            case JsonValueKind.Array when element.GetArrayLength() > 0:
                for (int i = 0; i < element.GetArrayLength(); i++)
                {
                    Add(leaves, $"{start}{i}", element[i]);
                }

                break;
            default:
                leaves.Add(path, element);
                break;
        }
    }
}
