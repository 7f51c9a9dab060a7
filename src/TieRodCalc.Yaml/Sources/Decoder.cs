using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Unicode;

namespace TieRodCalc.Yaml.Sources;

/// <summary>Turns the bytes of a file into its text.</summary>
internal static class Decoder
{
    private const int ShownForControl = 0xFFFD;

    /// <summary>
    /// What YAML calls not printable (YAML 1.2.2, production 1): the controls of C0 and C1 but for tab, line feed, carriage
    /// return and next line, the delete character, and the two noncharacters.
    /// </summary>
    private static readonly SearchValues<char> NotPrintable = SearchValues.Create(AllNotPrintable());

    /// <summary>Whether a text holds a character that no file may hold.</summary>
    public static bool HoldsControl(string text) => text.AsSpan().ContainsAny(NotPrintable);

    /// <summary>The text of a file; where it is none, one problem is found.</summary>
    /// <param name="name">The file as it was named.</param>
    /// <param name="bytes">Its content.</param>
    /// <param name="findings">Where the problem goes.</param>
    public static SourceText Decode(string name, ReadOnlySpan<byte> bytes, Findings findings)
    {
        if (IsUtf16(bytes))
        {
            findings.Problem(TextSpan.WholeFile, "the file is UTF-16 text; save it as UTF-8");
            return new SourceText(name, string.Empty);
        }

        ReadOnlySpan<byte> content = bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[Encoding.UTF8.Preamble.Length..] : bytes;
        string text = Encoding.UTF8.GetString(content);
        if (!Utf8.IsValid(content))
        {
            (int at, byte wrong) = FirstInvalid(content);
            findings.Problem(
                new TextSpan(at, at + 1),
                string.Create(CultureInfo.InvariantCulture, $"the byte 0x{wrong:X2} here is not UTF-8; save the file as UTF-8"));
            return new SourceText(name, WithoutControls(text));
        }

        int control = text.AsSpan().IndexOfAny(NotPrintable);
        if (control >= 0)
        {
            findings.Problem(
                new TextSpan(control, control + 1),
                string.Create(CultureInfo.InvariantCulture, $"a control character (U+{(int)text[control]:X4}) cannot stand in a file"));
            return new SourceText(name, WithoutControls(text));
        }

        return new SourceText(name, text);
    }

    private static string AllNotPrintable()
    {
        StringBuilder all = new("\uFFFE\uFFFF\u007F");
        for (char c = '\0'; c < ' '; c++)
        {
            all.Append(c is '\t' or '\n' or '\r' ? string.Empty : c.ToString());
        }

        for (char c = '\u0080'; c < '\u00A0'; c++)
        {
            all.Append(c == '\u0085' ? string.Empty : c.ToString());
        }

        return all.ToString();
    }

    /// <summary>With its mark, or by the zero byte that every ASCII character has there.</summary>
    private static bool IsUtf16(ReadOnlySpan<byte> bytes) =>
        bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] or [0, not 0, 0, not 0, ..] or [not 0, 0, not 0, 0, ..];

    private static (int Offset, byte Wrong) FirstInvalid(ReadOnlySpan<byte> content)
    {
        char[] room = new char[content.Length];
        Utf8.ToUtf16(content, room, out int read, out int written, replaceInvalidSequences: false);
        return (written, content[read]);
    }

    /// <summary>The text with its control characters replaced, so that a line can be shown on any screen.</summary>
    private static string WithoutControls(string text) => string.Create(text.Length, text, (shown, original) =>
    {
        original.CopyTo(shown);
        while (shown.IndexOfAny(NotPrintable) is var at and >= 0)
        {
            shown[at] = (char)ShownForControl;
            shown = shown[(at + 1)..];
        }
    });
}
