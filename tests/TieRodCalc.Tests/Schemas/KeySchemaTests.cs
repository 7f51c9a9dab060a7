using System.Reflection;
using System.Text.Json.Nodes;
using TieRodCalc.Tests.Yaml;
using TieRodCalc.Yaml;
using TieRodCalc.Yaml.Binding;

namespace TieRodCalc.Tests.Schemas;

/// <summary>Reader and schema know the same keys, and need the same ones.</summary>
public class KeySchemaTests
{
    private const string MadeUp = "no_such_key";

    /// <summary>Every key of the reader, wherever it stands, and one that is none.</summary>
    private static readonly string[] Universe =
    [
        .. typeof(Keys).GetFields(BindingFlags.Static | BindingFlags.Public)
            .Where(field => field.FieldType == typeof(string[]))
            .SelectMany(field => (string[])field.GetValue(null)!)
            .Append(MadeUp)
            .Distinct(),
    ];

    [Fact]
    public void The_documents_are_sound()
    {
        foreach ((string name, JsonNode document) in WholeDocuments.All)
        {
            Assert.Equal((name, ""), (name, string.Join("\n", Problems(document).Select(problem => problem.Message))));
            Assert.Equal((name, ""), (name, SchemaFiles.Faults(SchemaFiles.For(document), document)));
        }
    }

    [Fact]
    public void Every_map_allows_the_keys_that_the_reader_knows_there()
    {
        HashSet<JsonObject> seen = [];
        foreach ((string name, object[] path) in WholeDocuments.Places)
        {
            JsonNode root = WholeDocuments.All[name].DeepClone();
            if (WholeDocuments.At(root, path) is not JsonObject map)
            {
                continue;
            }

            SchemaPlace place = PlaceOf(root, path);
            seen.UnionWith(place.Maps);

            // 'job' and 'rods' would make a job of a part file.
            bool partFile = path.Length == 0 && place.Maps.Any(SchemaFiles.Written[SchemaFiles.Parts].Equals);
            foreach (string key in Universe.Where(key => !map.ContainsKey(key) && !(partFile && key is "job" or "rods")))
            {
                map.Add(key, "x");
            }

            string[] unknown = [.. Problems(root).Select(UnknownKey).OfType<string>()];
            string[] known = [.. map.Select(each => each.Key).Except(unknown)];
            Assert.Contains(MadeUp, unknown);
            Assert.Equal((name, string.Join('/', path), Sorted(known)), (name, string.Join('/', path), Sorted(place.Keys)));
        }

        // Every map of the schemas was held against the reader.
        Assert.Equal([], SchemaFiles.Written.Values.SelectMany(MapsOf).Except(seen).Select(map => map.ToJsonString()));
    }

    [Fact]
    public void A_part_file_with_the_key_of_a_job_is_refused()
    {
        JsonNode parts = YamlAsJson.Read(Samples.Parts)!.Root!;
        foreach (string key in new[] { "job", "rods", "units" })
        {
            JsonNode spoiled = parts.DeepClone();
            spoiled[key] = "x";
            Assert.False(SchemaFiles.Accepts(SchemaFiles.At(SchemaFiles.Parts), spoiled));
        }
    }

    [Fact]
    public void A_key_is_needed_where_the_reader_needs_it()
    {
        int needed = 0;
        int optional = 0;
        foreach ((string name, object[] path) in WholeDocuments.Places.Where(place => place.Path is [.., string]))
        {
            JsonNode without = WholeDocuments.Changed(name, path, (map, key) => map.AsObject().Remove((string)key));
            bool refused = Problems(without).Any(problem => !Meaning.Is(problem.Message));
            needed += refused ? 1 : 0;
            optional += refused ? 0 : 1;
            Assert.Equal(
                (name, string.Join('/', path), refused),
                (name, string.Join('/', path), !SchemaFiles.Accepts(SchemaFiles.For(without), without)));
        }

        Assert.True(needed > 100 && optional > 100, $"{needed} needed, {optional} optional");
    }

    private static IReadOnlyList<Problem> Problems(JsonNode document) => Marked.Check(SchemaFiles.AsText(document)).Problems;

    private static string? UnknownKey(Problem problem)
    {
        string[] words = problem.Message.Split('\'');
        return problem.Message.Contains(" has no key '", StringComparison.Ordinal) ? words[^2]
            : problem.Message.Contains("belongs in a job", StringComparison.Ordinal) ? words[1]
            : null;
    }

    private static SchemaPlace PlaceOf(JsonNode root, object[] path)
    {
        bool job = root.AsObject().ContainsKey("job") || root.AsObject().ContainsKey("rods");
        return path.Aggregate(
            SchemaPlace.Root(job ? SchemaFiles.Job : SchemaFiles.Parts), (at, step) => step is string key ? at.Below(key) : at.Item());
    }

    private static string Sorted(IEnumerable<string> keys) => string.Join(' ', keys.Order(StringComparer.Ordinal));

    private static IEnumerable<JsonObject> MapsOf(JsonNode? node) => node switch
    {
        JsonObject map => map.Where(each => each.Key != "examples").SelectMany(each => MapsOf(each.Value))
            .Concat(SchemaPlace.IsMap(map) ? [map] : []),
        JsonArray list => list.SelectMany(MapsOf),
        _ => [],
    };
}
