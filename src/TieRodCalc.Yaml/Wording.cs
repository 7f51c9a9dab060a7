using System.Globalization;
using System.Text;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Yaml;

/// <summary>Small things that the sentences of problems share.</summary>
internal static class Wording
{
    private const int LongestQuote = 60;

    /// <summary>Numbers of problems are written the same everywhere.</summary>
    public static IFormatProvider Invariant => CultureInfo.InvariantCulture;

    /// <summary>A text from a file in quotes, on one line and cut to a readable length.</summary>
    public static string Quote(string text) => $"'{Shown(text)}'";

    /// <summary>A text from a file on one line, cut to a readable length.</summary>
    public static string Shown(string text)
    {
        string cut = text.Length > LongestQuote ? string.Concat(text.AsSpan(0, LongestQuote - 1), "…") : text;
        StringBuilder? clean = null;
        for (int i = 0; i < cut.Length; i++)
        {
            if (char.IsControl(cut[i]) || cut[i] is '\u2028' or '\u2029')
            {
                clean ??= new StringBuilder(cut);
                clean[i] = ' ';
            }
        }

        return clean?.ToString().Trim() ?? cut;
    }

    /// <summary>A length that no text of the file says, in millimeters.</summary>
    public static string Mm(Length length) => LengthFormat.Decimal(length, LengthDisplay.Millimeter);

    /// <summary>Words in a row: <c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    public static string Row(List<string> words, string last)
    {
        StringBuilder row = new();
        for (int i = 0; i < words.Count; i++)
        {
            row.Append(i == 0 ? string.Empty : i == words.Count - 1 ? $" {last} " : ", ").Append(words[i]);
        }

        return row.ToString();
    }
}
