using System.Text;
using System.Text.Json;

namespace TieRodCalc.Fuzz;

/// <summary>The words that files and values are made of, from the schemas: keys, choices, spellings of values.</summary>
internal static class Vocabulary
{
    /// <summary>The fuzzer takes longer words as well, and makes less of them.</summary>
    private const int Longest = 40;

    /// <summary>Signs and words of YAML and of values that no schema has as an example.</summary>
    private static readonly string[] s_others =
    [
        "- ", ": ", "{", "}", "[", "]", ", ", "\n", "\n  ", "\n    ", "#", "'", "\"", "&a ", "*a", "!t ", "<<: ", "---\n",
        "...\n", "%YAML 1.2\n", "|\n", ">\n", "? ", "~", "\uFEFF", "\t", "\r\n", "\0", "\u2028", "in", "mm", "cm", "inch", "\"",
        " LH", " RH", "-LH", "UNC", "UNF", "UNEF", "UN", "UNS", "UNJF", "M", "x", "\u00D7", "-2A", "-2B", "-3A", "-6g", "-6H",
        "-5g6g", "\u00B1", "+/-", "/", "1/64", " 15/16", "deg", "\u00B0", "ksi", "MPa", "psi", "GPa", "kN", "N", "lbf", "kg",
        "g", "lb", "USD", "hex ", "round ", "diameters", " out", " in", "-", "+", ".", "0", "9999999999999999999999",
        "0.0000001", "1e9",
    ];

    /// <summary>Keys, choices and spellings of the schemas.</summary>
    public static IReadOnlyList<string> OfSchemas()
    {
        HashSet<string> words = [];
        foreach (string path in Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs", "schema"), "*.json").Order(StringComparer.Ordinal))
        {
            using JsonDocument schema = JsonDocument.Parse(File.ReadAllText(path));
            Gather(schema.RootElement, words);
        }

        return [.. words];
    }

    /// <summary>The dictionary of the fuzzer: a word a line.</summary>
    public static string Dictionary() =>
        string.Concat(OfSchemas().Concat(s_others).Where(word => word.Length is > 0 and <= Longest).Distinct().Select(Line));

    /// <summary>The names of properties, and the texts under "enum", "const" and "examples".</summary>
    private static void Gather(JsonElement element, HashSet<string> words)
    {
        foreach (JsonProperty property in element.ValueKind == JsonValueKind.Object ? element.EnumerateObject() : default)
        {
            switch (property.Name)
            {
                case "properties":
                    words.UnionWith(property.Value.EnumerateObject().Select(key => key.Name));
                    break;
                case "enum" or "const" or "examples":
                    words.UnionWith(Texts(property.Value));
                    break;
            }

            Gather(property.Value, words);
        }

        foreach (JsonElement one in element.ValueKind == JsonValueKind.Array ? element.EnumerateArray() : default)
        {
            Gather(one, words);
        }
    }

    private static IEnumerable<string> Texts(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.String => [element.GetString()!],
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Texts),
        JsonValueKind.Object => element.EnumerateObject().SelectMany(property => Texts(property.Value)),
        _ => [],
    };

    private static string Line(string word) => $"\"{string.Concat(Encoding.UTF8.GetBytes(word).Select(Written))}\"\n";

    private static string Written(byte value) => char.IsAsciiLetterOrDigit((char)value) ? $"{(char)value}" : $"\\x{value:x2}";
}
