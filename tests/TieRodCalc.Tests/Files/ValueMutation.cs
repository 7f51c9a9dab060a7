using System.Globalization;
using System.Text.RegularExpressions;

namespace TieRodCalc.Tests.Files;

/// <summary>Changes of the values of a file: other numbers, units and words, and those of other keys.</summary>
internal sealed partial class ValueMutation
{
    private static readonly string[] s_words =
    [
        "", "''", "\"\"", "~", "null", "NaN", ".nan", ".inf", "-.inf", "Infinity", "inf", "-0", "0", "1", "-1", "0 in", "0 mm",
        "0 deg", "-1 in",
        "-3 mm", "1/0 in", "0/0 in", "1e308 mm", "1e-308 mm", "0.000000001 mm", "0.0000000000000000001 in", "4 m", "4000 mm",
        "100000 mm",
        "999999999999999999999999999 mm", "1/999999999 in", "180 deg", "90 deg", "89.999 deg", "-90 deg", "359 deg", "0.0001 deg",
        "1 in ± 2 in",
        "9 in ± 0 in", "212 mm ± 211 mm", "9 in +/- 1/64 in", "1/8 in in", "1/8 in out", "0 in", "3 ft in", "45 deg out", "true",
        "any", "none",
        "M1x0.2", "M300x8", "M18x1.5-6g LH", "1/4-80 UNEF-3A", "4-4 UN-2B", "0.0600-80 UNF-2A", "open", "closed", "hex 1 in",
        "round 4 in",
        "rod end", "tapered stud", "vertical", "along axle", "left", "right", "once", "each step", "outward", "inward",
        "one rod between wheels",
        "rod per side", "ahead of axle", "behind axle", "mm", "in", "1 USD", "99999999999999999999999999999 USD", "0 kg",
        "0.0000001 lb",
        "0.001 MPa", "100000000 MPa", "0.5 diameters", "1000000 N", "0.000001 N",
    ];

    private static readonly string[] s_units =
    [
        "mm", "cm", "m", "in", "\"", "deg", "°", "MPa", "ksi", "kN", "lbf", "N", "kg", "lb", "USD", "EUR", "diameters",
    ];

    private readonly Dictionary<string, string[]> _valuesOf;
    private readonly string[] _all;

    /// <param name="sources">Sound files, whose values are put in the places of others.</param>
    public ValueMutation(IEnumerable<string> sources)
    {
        _valuesOf = sources
            .SelectMany(text => KeyAndValue().Matches(text))
            .GroupBy(match => match.Groups["key"].Value, match => match.Groups["value"].Value)
            .ToDictionary(group => group.Key, group => group.Distinct(StringComparer.Ordinal).ToArray(), StringComparer.Ordinal);
        _all = [.. _valuesOf.Values.SelectMany(values => values).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>The keys of all files.</summary>
    public IReadOnlyCollection<string> Keys => _valuesOf.Keys;

    /// <summary>The text with one to three values changed, or fewer near its end.</summary>
    public string Of(string text, Random random)
    {
        for (int changes = random.Next(1, random.Next(2, 5)); changes > 0; changes--)
        {
            Match value = Value().Match(text, random.Next(text.Length));
            text = value.Success
                ? string.Concat(text.AsSpan(0, value.Index), Instead(text, value, random), text.AsSpan(value.Index + value.Length))
                : text;
        }

        return text;
    }

    private string Instead(string text, Match value, Random random) => random.Next(8) switch
    {
        0 => s_words[random.Next(s_words.Length)],
        1 => _all[random.Next(_all.Length)],
        2 => Number().Replace(value.Value, Digits(random), 1),
        3 => Unit().Replace(value.Value, s_units[random.Next(s_units.Length)], 1),
        4 or 5 => OfItsKey(text, value, random),
        6 => random.Next(3) == 0 ? "-" + value.Value : Number().Replace(value.Value, number => Scaled(number.Value, random), 1),
        _ => Number().Replace(value.Value, number => Scaled(number.Value, random)),
    };

    /// <summary>What stands behind the same key elsewhere.</summary>
    private string OfItsKey(string text, Match value, Random random)
    {
        int start = Math.Max(0, value.Index - 40);
        Match key = KeyBefore().Match(text[start..value.Index]);
        return key.Success && _valuesOf.TryGetValue(key.Groups[1].Value, out string[]? others)
            ? others[random.Next(others.Length)]
            : value.Value;
    }

    private static string Digits(Random random) => random.Next(6) switch
    {
        0 => new string('9', random.Next(1, 400)),
        1 => "0." + new string('0', random.Next(0, 330)) + "1",
        2 => "0",
        3 => random.Next(1, 100_000).ToString(CultureInfo.InvariantCulture),
        4 => "1/" + random.Next(0, 200).ToString(CultureInfo.InvariantCulture),
        _ => (random.NextDouble() * 100).ToString("0.###", CultureInfo.InvariantCulture),
    };

    /// <summary>A number near another one, or ten times or a tenth of it.</summary>
    private static string Scaled(string number, Random random)
    {
        if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
        {
            return number;
        }

        double factor = random.Next(5) switch
        {
            0 => 10,
            1 => 0.1,
            2 => 1 + ((random.NextDouble() - 0.5) / 1000),
            _ => 0.5 + random.NextDouble(),
        };
        return number.Contains('.', StringComparison.Ordinal) || factor < 1
            ? (value * factor).ToString("0.####", CultureInfo.InvariantCulture)
            : Math.Round(value * factor).ToString(CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"(?<key>[a-z_]+): (?<value>[^\s,{}\[\]#][^,{}\[\]#\n]*?)(?=\s*(?:[,}\]#\n]|$))")]
    private static partial Regex KeyAndValue();

    [GeneratedRegex(@"(?<=[:,\[-] |\[)(?:[^\s,{}\[\]#-]|-[0-9])[^,{}\[\]#\n]*?(?=\s*(?:[,}\]#\n]|$))")]
    private static partial Regex Value();

    [GeneratedRegex(@"[0-9]+(?:\.[0-9]+)?")]
    private static partial Regex Number();

    [GeneratedRegex(@"(?<=[0-9] ?)(?:[A-Za-z°""]+)")]
    private static partial Regex Unit();

    [GeneratedRegex(@"([a-z_]+): $")]
    private static partial Regex KeyBefore();
}
