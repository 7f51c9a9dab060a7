using TieRodCalc.Threads;

namespace TieRodCalc.Text;

/// <summary>Reads tolerance classes: <c>2A</c> (ASME B1.1), <c>6g</c> and <c>5g6g</c> (ISO 965-1).</summary>
internal static class ThreadClassReader
{
    /// <summary>The class, or null where none is written.</summary>
    public static Parsed<string?> Read(TextCursor cursor, ThreadForm form, ThreadGender? gender)
    {
        Token first = ThreadTailReader.Part(cursor);
        if (first.Kind != TokenKind.Number)
        {
            return new((string?)null);
        }

        ThreadTailReader.TakeHyphen(cursor);
        string text = TakeAll(cursor);
        var place = new Token(TokenKind.Word, text, first.Offset, first.Spaced);
        string? written = form == ThreadForm.Unified ? Unified(text) : Metric(text);
        if (written is null)
        {
            string examples = form == ThreadForm.Unified
                ? "1A, 2A, 3A (external) or 1B, 2B, 3B (internal)"
                : "6g (external) or 6H (internal)";
            string pitch = form == ThreadForm.Metric ? "; a pitch stands behind an x" : string.Empty;
            return new(TextCursor.FaultAt(place, $"expected a tolerance class such as {examples}, found {place.Shown}{pitch}"));
        }

        return gender is { } wanted && GenderOf(written) != wanted
            ? new(TextCursor.FaultAt(place, WrongGender(written, form, wanted)))
            : new(written);
    }

    /// <summary>A class is what stands together without a space: digits and letters in turn.</summary>
    private static string TakeAll(TextCursor cursor)
    {
        string text = cursor.Take().Text;
        while (cursor.Current is { Spaced: false, Kind: TokenKind.Number or TokenKind.Word })
        {
            text += cursor.Take().Text;
        }

        return text;
    }

    private static string? Unified(string text)
    {
        bool known = text.Length == 2 && text[0] is >= '1' and <= '3' && text[1] is 'A' or 'B' or 'a' or 'b';
        return known ? text.ToUpperInvariant() : null;
    }

    /// <summary>One grade and position for pitch and crest diameter, or one for each, of the same gender.</summary>
    private static string? Metric(string text)
    {
        bool known = text.Length is 2 or 4 && IsGradeAndPosition(text, 0)
            && (text.Length == 2 || (IsGradeAndPosition(text, 2) && char.IsUpper(text[1]) == char.IsUpper(text[3])));
        return known ? text : null;
    }

    /// <summary>ISO 965-1: grades 3 to 9, positions e f g h outside and G H inside.</summary>
    private static bool IsGradeAndPosition(string text, int at) =>
        text[at] is >= '3' and <= '9' && text[at + 1] is (>= 'e' and <= 'h') or 'G' or 'H';

    private static ThreadGender GenderOf(string written) =>
        written[1] is 'B' or 'G' or 'H' ? ThreadGender.Internal : ThreadGender.External;

    private static string WrongGender(string written, ThreadForm form, ThreadGender wanted)
    {
        string instead = (form, wanted) switch
        {
            (ThreadForm.Unified, ThreadGender.External) => $"{written[0]}A",
            (ThreadForm.Unified, _) => $"{written[0]}B",
            (_, ThreadGender.External) => "6g",
            _ => "6H",
        };
        return wanted == ThreadGender.External
            ? $"{written} is a class of internal threads; this one is external: {instead}"
            : $"{written} is a class of external threads; this one is internal: {instead}";
    }
}
