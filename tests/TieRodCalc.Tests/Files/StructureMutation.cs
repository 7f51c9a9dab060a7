using System.Text.RegularExpressions;

namespace TieRodCalc.Tests.Files;

/// <summary>Changes of how a file is put together: its lines, blocks, brackets and keys, and what else YAML knows.</summary>
/// <param name="keys">The keys of all files.</param>
internal sealed partial class StructureMutation(IReadOnlyCollection<string> keys)
{
    private static readonly string[] s_properties =
    [
        "&a ", "*a ", "&a &b ", "!t ", "!!str ", "!!float ", "!<tag:x,2000:y> ", "? ", "| ", "> ", "|2- ", "@", "`", "%",
    ];

    private static readonly string[] s_values =
    [
        "{}", "[]", "{a: b}", "[a, b]", "[[0 mm, 0 mm, 0 mm], [0 mm, 0 mm, 0 mm]]",
        "{from: [0 in, 0 in, 0 in], to: [9 in, 0 in, 0 in]}", "{thread: M18x1.5-6g LH}",
        "[1 mm, 2 mm, 3 mm]", "", "*a", "[*a, *a]", "|\n      text", ">-\n      text", "{shorter: 1/8 in, longer: 1/4 in}",
        "{rod: 16 in, toe: 1/8 in out, want: 0 in}",
        "{<<: *a}", "[", "{", "'", "\"",
    ];

    private static readonly string[] s_lines =
    [
        "---", "...", "%YAML 1.1", "%YAML 1.2", "%TAG ! tag:x,2000:", "<<: *a", "<<: {id: a}", "tierodcalc: 1", "tierodcalc: 2",
        "rods: []", "parts: []", "job: other", "- a",
        "# a comment", "\t", "units: mm", "units: in", "? [a, b]", ": c", "steering: {}", "bump: []", "corner: {}", "a: &a [*a]",
    ];

    private readonly string[] _keys = [.. keys];

    /// <summary>The text with one or two changes.</summary>
    public string Of(string text, Random random)
    {
        for (int changes = random.Next(1, random.Next(2, 4)); changes > 0 && text.Length > 0; changes--)
        {
            text = Changed(text, random);
        }

        return random.Next(20) switch
        {
            0 => text.Replace("\n", "\r\n", StringComparison.Ordinal),
            1 => text.Replace("\n", "\r", StringComparison.Ordinal),
            2 => "\uFEFF" + text,
            _ => text,
        };
    }

    private string Changed(string text, Random random)
    {
        List<string> lines = [.. text.Split('\n')];
        int at = random.Next(lines.Count);
        int end = EndOfBlock(lines, at);
        int to = random.Next(lines.Count);
        switch (random.Next(13))
        {
            case 0: return Moved(lines, at, at + 1, to);
            case 1: return Moved(lines, at, end, to);
            case 2: return Join([.. lines[..end], .. lines[at..end], .. lines[end..]]);
            case 3: return Join([.. lines[..at], .. lines[end..]]);
            case 4:
                int by = random.Next(-4, 5);
                return Join([.. lines[..at], .. lines[at..end].Select(line => Indented(line, by, random)), .. lines[end..]]);
            case 5: return Join([.. lines[..at], Indented(lines[at], random.Next(-4, 5), random), .. lines[(at + 1)..]]);
            case 6: return Join([.. lines[..at], s_lines[random.Next(s_lines.Length)], .. lines[at..]]);
            case 7: return Join([.. lines[..at], Unfolded(lines[at]), .. lines[(at + 1)..]]);
            case 8: return Join([.. lines[..at], Folded(lines[at..end]), .. lines[end..]]);
            case 9: return AtKey(text, random, key => _keys[random.Next(_keys.Length)] + ":");
            case 10: return SwappedKeys(text, random);
            case 11: return AtKey(text, random, key => $"{key} {s_properties[random.Next(s_properties.Length)]}");
            default: return AtValue(text, random, value => s_values[random.Next(s_values.Length)]);
        }
    }

    private static string Join(IEnumerable<string> lines) => string.Join('\n', lines);

    private static string Moved(List<string> lines, int at, int end, int to)
    {
        List<string> moved = lines[at..end];
        List<string> rest = [.. lines[..at], .. lines[end..]];
        rest.InsertRange(Math.Min(to, rest.Count), moved);
        return Join(rest);
    }

    /// <summary>The line behind a line and those that are indented deeper.</summary>
    private static int EndOfBlock(List<string> lines, int at)
    {
        int end = at + 1;
        while (end < lines.Count && Indentation(lines[end]) > Indentation(lines[at]))
        {
            end++;
        }

        return end;
    }

    private static int Indentation(string line) => line.Length - line.TrimStart(' ').Length;

    private static string Indented(string line, int by, Random random) =>
        by == 0 ? "\t" + line : by > 0 ? new string(random.Next(8) == 0 ? '\t' : ' ', by) + line : line[Math.Min(-by, Indentation(line))..];

    /// <summary>A map in brackets as lines, split at its commas, right or wrong.</summary>
    private static string Unfolded(string line)
    {
        int open = line.IndexOf('{', StringComparison.Ordinal);
        int close = line.LastIndexOf('}');
        string indent = "\n" + new string(' ', Indentation(line) + 4);
        return open < 0 || close < open
            ? line
            : line[..open].TrimEnd() + string.Concat(line[(open + 1)..close].Split(", ").Select(entry => indent + entry));
    }

    /// <summary>A block as a map in brackets on one line.</summary>
    private static string Folded(List<string> block) => block.Count == 1
        ? $"{block[0]} {{}}"
        : $"{block[0]} {{{string.Join(", ", block.Skip(1).Select(line => line.Trim().Replace("- ", "", StringComparison.Ordinal)))}}}";

    private static string AtKey(string text, Random random, Func<string, string> change)
    {
        Match found = Key().Match(text, random.Next(text.Length));
        return found.Success ? Replaced(text, found, change) : text;
    }

    private static string AtValue(string text, Random random, Func<string, string> change)
    {
        Match found = ValueOfLine().Match(text, random.Next(text.Length));
        return found.Success ? Replaced(text, found, change) : text;
    }

    private static string SwappedKeys(string text, Random random)
    {
        Match one = Key().Match(text, random.Next(text.Length));
        Match other = one;
        for (int further = random.Next(1, 5); further > 0 && other.Success; further--)
        {
            other = other.NextMatch();
        }

        return !other.Success
            ? text
            : text[..one.Index] + other.Value
                + text[(one.Index + one.Length)..other.Index] + one.Value + text[(other.Index + other.Length)..];
    }

    private static string Replaced(string text, Match match, Func<string, string> change) =>
        text[..match.Index] + change(match.Value) + text[(match.Index + match.Length)..];

    [GeneratedRegex(@"[a-z_]+:(?=[ \n])")]
    private static partial Regex Key();

    [GeneratedRegex(@"(?<=: )(?:\{[^{}\n]*\}|\[[^\[\]\n]*\]|[^\s,{}\[\]#][^,{}\[\]#\n]*)")]
    private static partial Regex ValueOfLine();
}
