using System.Text.Json.Nodes;

namespace TieRodCalc.Tests.Schemas;

/// <summary>What the schemas say at one place of a document: every schema that a value there may be held against.</summary>
internal sealed class SchemaPlace
{
    private static readonly string[] Both = ["allOf", "anyOf", "oneOf"];

    private readonly List<(string File, JsonObject Schema)> _schemas = [];

    private SchemaPlace(IEnumerable<(string File, JsonNode? Schema)> schemas)
    {
        foreach ((string file, JsonNode? schema) in schemas)
        {
            Add(file, schema);
        }
    }

    /// <summary>The maps that the schemas describe here: each that names keys and allows no other.</summary>
    public IEnumerable<JsonObject> Maps => _schemas.Select(each => each.Schema).Where(IsMap);

    /// <summary>The keys that a map may have here.</summary>
    public IEnumerable<string> Keys => Maps.SelectMany(map => map["properties"]!.AsObject()).Select(each => each.Key).Distinct();

    public static SchemaPlace Root(string file) => new([(file, SchemaFiles.Written[file])]);

    public static bool IsMap(JsonObject schema) =>
        schema["properties"] is JsonObject && schema["additionalProperties"] is JsonValue other && !other.GetValue<bool>();

    public SchemaPlace Below(string key) => new(
        from each in _schemas
        where IsMap(each.Schema)
        select (each.File, each.Schema["properties"]![key]));

    public SchemaPlace Item() => new(from each in _schemas select (each.File, each.Schema["items"]));

    private void Add(string file, JsonNode? node)
    {
        if (node is not JsonObject schema)
        {
            return;
        }

        _schemas.Add((file, schema));
        if (schema["$ref"]?.GetValue<string>() is { } reference)
        {
            string[] parts = reference.Split('#');
            string target = parts[0].Length == 0 ? file : parts[0];
            Add(target, parts[1].Split('/').Skip(1).Aggregate(SchemaFiles.Written[target], (at, step) => at[step]!));
        }

        foreach (JsonNode? branch in Both.SelectMany(word => schema[word] as JsonArray ?? []))
        {
            Add(file, branch);
        }
    }
}
