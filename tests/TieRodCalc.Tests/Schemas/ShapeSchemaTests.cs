using System.Text.Json.Nodes;
using Json.Schema;
using TieRodCalc.Tests.Yaml;
using TieRodCalc.Yaml;
using TieRodCalc.Yaml.Binding;

namespace TieRodCalc.Tests.Schemas;

/// <summary>What the reader accepts, the schema accepts; what the reader refuses for its shape, the schema refuses.</summary>
public class ShapeSchemaTests
{
    private const string Head = "tierodcalc: 1\njob: x\n";

    /// <summary>What is put into the place of every value of the whole documents.</summary>
    private static readonly string[] Instead =
    [
        "null", "true", "212", "-1", "''", "banana", "a b", "'212'", "0 in", "-1 mm", "1/2 mm", "212 ± 1 mm", "M18x1.5-6g", "M18x1.5-6H",
        "90 deg", "1/8 in out", "any", "none", "behind axel", "'two\n\n    lines'", "[]", "[x]", "[0 in, 0 in, 0 in]", "{}",
        "{no_such_key: x}",
    ];

    /// <summary>Files that are no document of this version, or of no kind at all.</summary>
    private static readonly string[] NoDocuments =
    [
        "", "x", "[]", "{}", "1", "job: x", "tierodcalc: 2\njob: x", "tierodcalc:\njob: x", "tierodcalc: one\njob: x",
        "tierodcalc: [1]\njob: x", "tierodcalc: 1.1",
        "tierodcalc: 1\nrods: []", "tierodcalc: 1\nrods:", "tierodcalc: 1\nrods: x", "tierodcalc: 1\njob:",
    ];

    /// <summary>Every word that a key of the reader chooses from.</summary>
    private static HashSet<string> Words { get; } =
    [
        .. typeof(Choices).GetFields().Select(field => field.GetValue(null)!)
            .SelectMany(choice => (string[])choice.GetType().GetProperty(nameof(Choice<bool>.Names))!.GetValue(choice)!),
    ];

    [Fact]
    public void Another_value_in_every_place()
    {
        (int accepted, int refused) = Compare(
            from place in WholeDocuments.Places
            where place.Path.Length > 0 && IsFirst(place.Document, place.Path[0])
            from instead in Instead
            select WholeDocuments.Changed(
                place.Document, place.Path, (holder, step) => WholeDocuments.Put(holder, step, YamlAsJson.Read(instead)!.Root)));
        Assert.True(accepted > 300 && refused > 3000, $"{accepted} accepted, {refused} refused for their shape");
    }

    [Fact]
    public void Every_word_in_every_place_of_one()
    {
        string[] words = [.. Words.Concat(SchemaFiles.Written.Values.SelectMany(WordsOf)).Distinct()];
        (int accepted, int refused) = Compare(
            from place in WholeDocuments.Places
            where WholeDocuments.At(WholeDocuments.All[place.Document], place.Path) is JsonValue value
                && value.TryGetValue(out string? text) && Words.Contains(text)
            from word in words
            select WholeDocuments.Changed(place.Document, place.Path, (holder, step) => WholeDocuments.Put(holder, step, word)));
        Assert.True(accepted > words.Length && refused > 300, $"{accepted} accepted, {refused} refused for their shape");
    }

    [Fact]
    public void The_files_that_the_readers_own_tests_refuse()
    {
        (_, int refused) = Compare(
            Spoiled().Concat(NoDocuments).Select(YamlAsJson.Read).OfType<Document>().Select(document => document.Root));
        Assert.True(refused > 120, $"{refused} refused for their shape");
    }

    /// <summary>The words that a schema offers.</summary>
    private static IEnumerable<string> WordsOf(JsonNode? node) => node switch
    {
        JsonObject map => map.SelectMany(each => each.Key == "enum"
            ? each.Value!.AsArray().OfType<JsonValue>().Select(word => word.ToString())
            : WordsOf(each.Value)),
        JsonArray list => list.SelectMany(WordsOf),
        _ => [],
    };

    /// <summary>Holds the schema against the reader.</summary>
    private static (int Accepted, int Refused) Compare(IEnumerable<JsonNode?> documents)
    {
        int accepted = 0;
        int refused = 0;
        foreach (JsonNode? document in documents)
        {
            string text = SchemaFiles.AsText(document);
            IReadOnlyList<Problem> problems = Marked.Check(text).Problems;
            string[] shape = [.. problems.Select(problem => problem.Message).Where(message => !Meaning.Is(message))];
            JsonSchema schema = SchemaFiles.For(document);
            bool valid = SchemaFiles.Accepts(schema, document);
            if (problems.Count == 0)
            {
                accepted++;
                Assert.True(valid, valid ? null : $"{SchemaFiles.Faults(schema, document)}\n{text}");
            }
            else if (shape.Length > 0)
            {
                refused++;
                Assert.False(valid, $"{string.Join("\n", shape)}\n{text}");
            }
        }

        return (accepted, refused);
    }

    /// <summary>The part lists of a job are those of a part file, where they have been met already.</summary>
    private static bool IsFirst(string document, object key) =>
        document.EndsWith("parts", StringComparison.Ordinal) || Array.IndexOf(Keys.PartFile, (string)key) < 0;

    private static IEnumerable<string> Spoiled()
    {
        foreach ((Type tests, string sample) in new[] { (typeof(PartProblemTests), Samples.Parts), (typeof(RodProblemTests), Samples.Job) })
        {
            foreach (object?[] row in TestRows.Of(tests))
            {
                if (row is [string piece, string instead, ..] && sample.Contains(piece, StringComparison.Ordinal))
                {
                    yield return Marked.In(sample, piece, instead).Text;
                }
                else if (row is [string id, ..])
                {
                    yield return Marked.In(Samples.Parts, "id: jn-58r", "id: " + id).Text;
                }
            }
        }

        foreach (string entry in TestRows.Of(typeof(SteeringKeyTests)).Select(row => row[0]).OfType<string>().Where(row => row[0] == '{'))
        {
            yield return Marked.In(Samples.Job, "rods:\n", $"steering: {entry}\nrods:\n").Text;
        }

        foreach (string entry in new[] { typeof(BumpKeyTests), typeof(CornerKeyTests) }.SelectMany(TestRows.Of)
            .Where(row => row is [string, string, ..] or [string]).Select(row => (string)row[0]!))
        {
            yield return new Marked($"{Head}{entry}\n").Text;
        }

        foreach (string entry in TestRows.Of(typeof(ToeKeyTests)).Select(row => row[0]).OfType<string>())
        {
            yield return Marked.In(Samples.Job, "rods:\n", $"steering: {{{entry}}}\nrods:\n").Text;
        }
    }
}
