using System.Text.Json.Nodes;
using TieRodCalc.Tests.Architecture;

namespace TieRodCalc.Tests.Schemas;

public class SampleSchemaTests
{
    private const string EditorLine = "# yaml-language-server: $schema=../../docs/schema/";

    public static TheoryData<string, string> Samples => new()
    {
        { "jobs", SchemaFiles.Job },
        { "parts", SchemaFiles.Parts },
    };

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_sample_names_its_schema_and_is_accepted_by_it(string folder, string schema)
    {
        string[] files = Directory.GetFiles(Path.Combine(SourceTree.Root, "catalog-samples", folder), "*.yaml");
        Assert.NotEmpty(files);
        foreach (string file in files)
        {
            string text = File.ReadAllText(file);
            Assert.StartsWith(EditorLine + schema + "\n", text, StringComparison.Ordinal);
            Assert.Equal((file, ""), (file, SchemaFiles.Faults(SchemaFiles.At(schema), YamlAsJson.Read(text)!.Root)));
        }
    }

    [Fact]
    public void Every_key_says_what_it_is_and_has_an_example_that_is_accepted()
    {
        int keys = 0;
        foreach ((string file, JsonNode schema) in SchemaFiles.Written)
        {
            foreach ((string place, JsonObject key) in KeysOf(schema, file + "#"))
            {
                keys++;
                Assert.True(key["title"]?.GetValue<string>().Length > 0 && key["description"]?.GetValue<string>().Length > 0, place);
                Assert.True(key["examples"] is JsonArray { Count: > 0 } || key["enum"] is not null, place);
                foreach (JsonNode? example in key["examples"] as JsonArray ?? [])
                {
                    Assert.Equal((place, ""), (place, SchemaFiles.Faults(SchemaFiles.At(place), example)));
                }
            }
        }

        Assert.InRange(keys, 80, 300);
    }

    /// <summary>The keys that are described, each once: one that is described elsewhere has nothing but the reference.</summary>
    private static IEnumerable<(string Place, JsonObject Key)> KeysOf(JsonNode? node, string place)
    {
        if (node is not JsonObject and not JsonArray)
        {
            return [];
        }

        IEnumerable<(string Step, JsonNode? Node)> children = node is JsonObject map
            ? map.Where(each => each.Key is not ("examples" or "enum" or "if" or "then" or "else" or "allOf"))
                .Select(each => (each.Key, each.Value))
            : node.AsArray().Select((each, index) => (FormattableString.Invariant($"{index}"), each));
        IEnumerable<(string, JsonObject)> own = place.EndsWith("/properties", StringComparison.Ordinal)
            ? children.Where(each => each.Node is JsonObject key && !(key.Count == 1 && key.ContainsKey("$ref")))
                .Select(each => ($"{place}/{each.Step}", each.Node!.AsObject()))
            : [];
        return own.Concat(children.SelectMany(each => KeysOf(each.Node, $"{place}/{each.Step}")));
    }
}
