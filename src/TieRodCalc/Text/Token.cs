using System.Globalization;

namespace TieRodCalc.Text;

/// <summary>What a token is.</summary>
internal enum TokenKind
{
    /// <summary>Digits 0 to 9, with the points and commas between them.</summary>
    Number,

    /// <summary>Letters.</summary>
    Word,

    /// <summary>One other character, or the plus-minus written <c>+/-</c>.</summary>
    Mark,

    /// <summary>The end of the text.</summary>
    End,
}

/// <summary>A piece of a text with its place.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">The characters as they were written.</param>
/// <param name="Offset">Where it begins; the end of the text lies behind the last character that is no space.</param>
/// <param name="Spaced">Whether a space stands before it.</param>
internal readonly record struct Token(TokenKind Kind, string Text, int Offset, bool Spaced)
{
    /// <summary>Characters of a token that a message repeats; longer ones are cut.</summary>
    private const int MostShown = 24;

    /// <summary>Where the next character stands.</summary>
    public int End => Offset + Text.Length;

    /// <summary>The token as a message shows it.</summary>
    public string Shown => Kind switch
    {
        TokenKind.End => "the end",
        _ when !Text.All(IsPrintable) => "a character that cannot be printed",
        _ when Text.Length > MostShown => $"'{Text[..MostShown]}…'",
        _ => $"'{Text}'",
    };

    /// <summary>What to write instead of characters that look like digits and are not read; empty for others.</summary>
    public string Hint => Kind != TokenKind.Mark ? string.Empty : CharUnicodeInfo.GetUnicodeCategory(Text, 0) switch
    {
        UnicodeCategory.OtherNumber => "; write a fraction with a slash: 1/2",
        UnicodeCategory.DecimalDigitNumber => "; only the digits 0 to 9 are read",
        _ => string.Empty,
    };

    /// <summary>Whether this is the given word, upper or lower case, or the given mark.</summary>
    public bool Is(string text) => Kind is TokenKind.Word or TokenKind.Mark && Text.Equals(text, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether this is a number that directly follows what stands before it.</summary>
    public bool IsTightNumber => Kind == TokenKind.Number && !Spaced;

    private static bool IsPrintable(char character) =>
        char.GetUnicodeCategory(character) is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate
            or UnicodeCategory.OtherNotAssigned or UnicodeCategory.PrivateUse
            or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark);
}
