using System.Globalization;
using System.Text;

namespace TieRodCalc.Cli.Dialog;

/// <summary>Reads answers, one a line, from a person or from a file.</summary>
internal sealed class AnswerReader(Stream input) : IDisposable
{
    /// <summary>Longer lines are no answers, and are not kept.</summary>
    private const int Longest = 1000;

    /// <summary>The byte order mark, which YAML takes for no character.</summary>
    private const char BeginOfUtf16 = '\uFEFF';

    private readonly StreamReader _reader = new(input, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));

    /// <summary>The next line, without its end and the spaces around it; null where there is none.</summary>
    public string? Read()
    {
        try
        {
            return _reader.ReadLine()?.Trim();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>What keeps a line from being an answer whatever is asked, or null.</summary>
    public static string? FaultOf(string line) =>
        line.Length > Longest ? $"an answer has at most {Longest} characters"
        : line.Contains(Rune.ReplacementChar.ToString(), StringComparison.Ordinal) ? "this is not UTF-8 text"
        : line.Any(IsNotPrintable) ? "there is a character in it that cannot be printed"
        : null;

    public void Dispose() => _reader.Dispose();

    private static bool IsNotPrintable(char character) => char.GetUnicodeCategory(character)
            is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
            or UnicodeCategory.OtherNotAssigned
        || character == BeginOfUtf16;
}
