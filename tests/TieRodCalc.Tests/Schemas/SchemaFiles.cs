using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using TieRodCalc.Tests.Architecture;

namespace TieRodCalc.Tests.Schemas;

/// <summary>The schemas of docs/schema.</summary>
internal static class SchemaFiles
{
    public const string Job = "job.schema.json";

    public const string Parts = "parts.schema.json";

    /// <summary>What ECMA-262 calls white space beside that of ASCII, as it stands in a JSON text.</summary>
    private const string MoreSpaces = @"\\u00a0\\u1680\\u2000-\\u200a\\u2028\\u2029\\u202f\\u205f\\u3000\\ufeff";

    private static readonly JsonSerializerOptions Shown =
        new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly BuildOptions Build = new() { SchemaRegistry = new SchemaRegistry() };

    private static readonly JsonSchema PartSchema = Load(Parts);

    private static readonly JsonSchema JobSchema = Load(Job);

    /// <summary>Both, as they are written.</summary>
    public static IReadOnlyDictionary<string, JsonNode> Written { get; } =
        new[] { Job, Parts }.ToDictionary(name => name, name => JsonNode.Parse(Text(name))!, StringComparer.Ordinal);

    /// <summary>The schema of a document's kind: that of jobs where it has 'job' or 'rods'.</summary>
    public static JsonSchema For(JsonNode? document) =>
        document is JsonObject map && (map.ContainsKey("job") || map.ContainsKey("rods")) ? JobSchema : PartSchema;

    /// <summary>Whether a schema accepts a document.</summary>
    public static bool Accepts(JsonSchema schema, JsonNode? document) => Results(schema, document, OutputFormat.Flag).IsValid;

    /// <summary>The schema at a place in one of the files: <c>parts.schema.json#/$defs/length</c>.</summary>
    public static JsonSchema At(string place)
    {
        _ = (PartSchema, JobSchema);
        return JsonSchema.FromText($$"""{"$schema": "https://json-schema.org/draft/2020-12/schema", "$ref": "{{place}}"}""", Build);
    }

    /// <summary>What a schema refuses in a document, each with its place; empty where it accepts it.</summary>
    public static string Faults(JsonSchema schema, JsonNode? document)
    {
        EvaluationResults results = Results(schema, document, OutputFormat.List);
        return results.IsValid
            ? string.Empty
            : string.Join('\n', (results.Details ?? []).Append(results).SelectMany(each => (each.Errors ?? []).Select(
                error => $"{each.InstanceLocation} {error.Key}: {error.Value}")).Prepend("refused"));
    }

    /// <summary>A document as JSON, which is YAML too.</summary>
    public static string AsText(JsonNode? document) => document?.ToJsonString(Shown) ?? "null";

    private static EvaluationResults Results(JsonSchema schema, JsonNode? document, OutputFormat format)
    {
        using JsonDocument parsed = JsonDocument.Parse(AsText(document));
        return schema.Evaluate(parsed.RootElement, new EvaluationOptions { OutputFormat = format });
    }

    /// <summary>A schema for the evaluator, whose expressions take \s for the spaces of ASCII alone, unlike those of ECMA-262.</summary>
    private static JsonSchema Load(string name) =>
        JsonSchema.FromText(Text(name).Replace(@"\\s", @"\\s" + MoreSpaces, StringComparison.Ordinal), Build);

    private static string Text(string name) => File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "schema", name));
}
