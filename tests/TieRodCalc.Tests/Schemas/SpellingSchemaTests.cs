using System.Text;
using System.Text.Json.Nodes;
using Json.Schema;
using TieRodCalc.Tests.Text;
using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Schemas;

/// <summary>
/// The patterns of the schemas against the readers of values: every spelling that is read is accepted, and what is accepted and yet
/// not read is refused for its meaning alone.
/// </summary>
public class SpellingSchemaTests
{
    private static readonly Dictionary<string, Func<string, ParseFault?>> Readers = new()
    {
        ["dimension"] = text => LengthText.Parse(text).Fault,
        ["length"] = text => LengthText.ParseExact(text).Fault,
        ["signed_length"] = text => LengthText.ParseSigned(text).Fault,
        ["external_thread"] = text => ThreadText.Parse(text, ThreadGender.External).Fault,
        ["internal_thread"] = text => ThreadText.Parse(text, ThreadGender.Internal).Fault,
        ["stress"] = text => ValueText.ParseStress(text).Fault,
        ["force"] = text => ValueText.ParseForce(text).Fault,
        ["angle"] = text => ValueText.ParseAngle(text).Fault,
        ["mass"] = text => ValueText.ParseMass(text).Fault,
        ["price"] = text => ValueText.ParsePrice(text).Fault,
        ["outside"] = text => ValueText.ParseOutside(text).Fault,
        ["engagement"] = text => ValueText.ParseEngagement(text).Fault,
        ["toe"] = text => ValueText.ParseToe(text).Fault,
    };

    /// <summary>How values are put together; each letter stands for the pieces below, everything else for itself.</summary>
    private static readonly string[] Forms =
    [
        "N U", "N U", "S N U", "N U P N U", "N P N U", "N A", "S N A", "N Q", "N Q", "N Q", "N Q",
        "N U D", "N U D", "N A D", "O N U", "O N U P N U", "N E",
        "M N", "M N X N H C", "M N H C H L", "M N X N H L", "N H T", "N H T G H C", "N H T G H C H L", "N H T H C", "N H T G H L", "N",
    ];

    private static readonly Dictionary<char, string[]> Pieces = new()
    {
        ['N'] =
        [
            "9", "18", "212", "2.5", "1.5", "0.625", ".5", "0", "0.0", "5/8", "15/16", "8 15/16", "1-1/8", "8-15/16", "0/8", "0 0/8",
            "12.50", "007", "00", "1/2.5", "2.", "1 2", "1,5", "8 -1/2", "1 / 2", "3/0", "1.23456", "100000", "12345678901234567890",
        ],
        ['U'] = ["in", "in", "inch", "Inches", "\"", "\u2033", "\u201D", "mm", "MM", "cm", "", "ft", "m", "'"],
        ['A'] = ["deg", "°", "Deg", "degrees"],
        ['Q'] = ["ksi", "psi", "MPa", "GPa", "mpa", "kN", "N", "lbf", "KN", "kg", "g", "lb", "lbs", "USD", "EUR", "usd", "US"],
        ['P'] = ["±", "+/-", "+", "+ /-"],
        ['S'] = ["-", "+", "\u2212", "--"],
        ['D'] = ["in", "out", "In", "OUT", "up"],
        ['O'] = ["hex", "round", "HEX", "square"],
        ['E'] = ["diameters", "diameter", "D", "d", "Diameters", "turns"],
        ['M'] = ["M", "M", "m", "MJ"],
        ['X'] = ["x", "X", "×", "*"],
        ['H'] = ["-", "-", " ", "", "--"],
        ['T'] = ["18", "12", "4.5", "20.0", "11.50", "18.3", "16"],
        ['G'] = ["UNF", "UNC", "UN", "UNS", "UNEF", "unf", "UNR"],
        ['C'] = ["2A", "2B", "3a", "1b", "6g", "6H", "5g6g", "4H5H", "6e", "9h", "2g", "6k", "5g6H", "4A", "6G7H"],
        ['L'] = ["LH", "RH", "lh", "Left"],
    };

    private static readonly string[] Spaces = ["", "", "", " ", " ", " ", "  ", "\u00A0", "\t", "\u2009"];

    /// <summary>Every text of the tests of values, and a bare number, a number with an unknown unit, and nothing.</summary>
    private static IEnumerable<string> Tested =>
        new[] { typeof(LengthTextTests), typeof(ValueTextTests), typeof(ThreadTextTests) }
            .SelectMany(TestRows.Of).Select(row => row[0]).OfType<string>().Concat(["", " ", "212", "-1.5", "9 yd", "in", "mm"]);

    [Fact]
    public void Patterns_accept_what_is_read_and_refuse_what_is_not_spelled_so()
    {
        string[] texts = [.. Tested, .. Enumerable.Range(0, 5 * RandomCounts.Texts).Select(Random)];
        foreach ((string name, Func<string, ParseFault?> read) in Readers)
        {
            JsonSchema schema = SchemaFiles.At($"{SchemaFiles.Parts}#/$defs/{name}");
            int good = 0;
            foreach (string text in texts)
            {
                ParseFault? fault = read(text);
                bool accepted = SchemaFiles.Accepts(schema, JsonValue.Create(text));
                good += fault is null ? 1 : 0;
                Assert.True(
                    fault is null ? accepted : !accepted || Meaning.Is(fault.Message),
                    $"{name} '{text}': {fault?.Message ?? "is read"}");
            }

            Assert.True(good > 30 && good < texts.Length / 2, $"{name}: {good} of {texts.Length} are read");
        }
    }

    [Fact]
    public void A_bare_number_is_no_value()
    {
        foreach (string name in Readers.Keys)
        {
            JsonSchema schema = SchemaFiles.At($"{SchemaFiles.Parts}#/$defs/{name}");
            Assert.False(SchemaFiles.Accepts(schema, JsonValue.Create(212)));
            Assert.False(SchemaFiles.Accepts(schema, JsonValue.Create(0)));
            Assert.False(SchemaFiles.Accepts(schema, null));
        }
    }

    /// <summary>A random spelling, every fourth one with a slip of the keyboard in it.</summary>
    private static string Random(int index)
    {
        Random random = RandomCounts.For(index);
        T Any<T>(T[] from) => from[random.Next(from.Length)];
        StringBuilder text = new();
        foreach (char part in Any(Forms))
        {
            text.Append(part == ' ' ? Any(Spaces) : Any(Pieces[part]));
        }

        if (text.Length > 0 && random.Next(4) == 0)
        {
            int at = random.Next(text.Length);
            _ = random.Next(3) switch
            {
                0 => text.Remove(at, 1),
                1 => text.Insert(at, text[at]),
                _ => text.Insert(at, Any(Spaces)),
            };
        }

        return text.ToString();
    }
}
