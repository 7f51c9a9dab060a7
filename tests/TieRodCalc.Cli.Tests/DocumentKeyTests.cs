using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>The page on files names every key that the schemas know; tests hold those against the reader.</summary>
public sealed class DocumentKeyTests
{
    [Theory]
    [InlineData("job.schema.json")]
    [InlineData("parts.schema.json")]
    public void Every_key_is_explained(string schema)
    {
        using JsonDocument json = JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Root, "docs", "schema", schema)));
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "files.md"));
        string[] keys = [.. Keys(json.RootElement).Distinct()];
        string[] missing = [.. keys.Where(key => !page.Contains($"`{key}`", StringComparison.Ordinal))];
        Assert.NotEmpty(keys);
        Assert.Empty(missing);
    }

    private static IEnumerable<string> Keys(JsonElement schema) => schema.ValueKind switch
    {
        JsonValueKind.Object => schema.EnumerateObject().SelectMany(member =>
            (member.NameEquals("properties") ? member.Value.EnumerateObject().Select(key => key.Name) : [])
                .Concat(Keys(member.Value))),
        JsonValueKind.Array => schema.EnumerateArray().SelectMany(Keys),
        _ => [],
    };
}
