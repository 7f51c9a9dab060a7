using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace TieRodCalc.Tests.Schemas;

/// <summary>A YAML document as an editor hands it to a schema: plain scalars by the core schema of YAML 1.2, the others as texts.</summary>
internal static partial class YamlAsJson
{
    /// <summary>The document; null where it is no single document of plain keys, or says a key twice: no schema is asked then.</summary>
    public static Document? Read(string yaml)
    {
        try
        {
            Parser parser = new(new StringReader(yaml));
            parser.Consume<StreamStart>();
            JsonNode? root = null;
            if (parser.TryConsume<DocumentStart>(out _))
            {
                root = Node(parser);
                parser.Consume<DocumentEnd>();
            }

            parser.Consume<StreamEnd>();
            return new Document(root);
        }
        catch (Exception refused) when (refused is YamlException or ArgumentException)
        {
            return null;
        }
    }

    private static JsonNode? Node(Parser parser)
    {
        if (parser.TryConsume<SequenceStart>(out _))
        {
            JsonArray list = [];
            while (!parser.TryConsume<SequenceEnd>(out _))
            {
                list.Add(Node(parser));
            }

            return list;
        }

        if (parser.TryConsume<MappingStart>(out _))
        {
            JsonObject map = [];
            while (!parser.TryConsume<MappingEnd>(out _))
            {
                map.Add(parser.Consume<Scalar>().Value, Node(parser));
            }

            return map;
        }

        Scalar scalar = parser.Consume<Scalar>();
        return scalar.Style == ScalarStyle.Plain ? Plain(scalar.Value) : JsonValue.Create(scalar.Value);
    }

    private static JsonValue? Plain(string text) => text switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => JsonValue.Create(true),
        "false" or "False" or "FALSE" => JsonValue.Create(false),
        _ when Number().IsMatch(text) && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
            && double.IsFinite(number) => JsonValue.Create(number),
        _ => JsonValue.Create(text),
    };

    [GeneratedRegex(@"\A[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?\z")]
    private static partial Regex Number();
}

/// <summary>A document, which may be empty.</summary>
internal sealed record Document(JsonNode? Root);
