using System.Globalization;
using System.Text;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Faults of values on the command line, each with its text and the place marked.</summary>
internal sealed class ValueFaults
{
    private readonly StringBuilder _text = new();

    /// <summary>Whether there are none.</summary>
    public bool None => _text.Length == 0;

    /// <summary>Reads a value, or notes its fault.</summary>
    /// <param name="name">The option or argument.</param>
    /// <param name="written">What was written.</param>
    /// <param name="parse">What reads it.</param>
    /// <param name="value">The value.</param>
    public bool TryRead<T>(string name, string written, Func<string, Parsed<T>> parse, out T value)
    {
        Parsed<T> parsed = parse(written);
        if (parsed.Fault is { } fault)
        {
            Add(name, written, fault);
            value = default!;
            return false;
        }

        value = parsed.Value;
        return true;
    }

    /// <summary>Notes a fault.</summary>
    public void Add(string name, string written, ParseFault fault)
    {
        _text.Append("tierodcalc: ").Append(name).Append(": ").Append(fault.Message).Append('\n');
        ProblemText.AppendMarked(_text, Printable(written), fault.Offset, Math.Max(1, fault.Length));
    }

    /// <summary>All of them.</summary>
    public override string ToString() => _text.ToString();

    /// <summary>One line, each character in its place.</summary>
    private static string Printable(string written) => string.Create(written.Length, written, static (shown, text) =>
    {
        for (int i = 0; i < text.Length; i++)
        {
            shown[i] = char.GetUnicodeCategory(text[i]) is UnicodeCategory.Control or UnicodeCategory.Format
                or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
                ? ' '
                : text[i];
        }
    });
}
