namespace TieRodCalc.Text;

/// <summary>Splits a text into numbers, words and marks and walks along them.</summary>
internal sealed class TextCursor
{
    /// <summary>The plus-minus for keyboards that have none.</summary>
    private const string PlusMinusInAscii = "+/-";

    private readonly List<Token> _tokens;
    private int _next;

    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public TextCursor(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        _tokens = Split(text);
    }

    /// <summary>The token that comes next.</summary>
    public Token Current => _tokens[_next];

    /// <summary>Where the text ends, spaces behind it not counted.</summary>
    public int End => _tokens[^1].Offset;

    /// <summary>Where the token that was taken last ends.</summary>
    public int TakenEnd => _next == 0 ? 0 : _tokens[_next - 1].End;

    public static bool IsPlusMinus(Token token) => token.Is("±") || token.Is(PlusMinusInAscii);

    /// <summary>A token further on; the end where there are not so many.</summary>
    public Token Ahead(int count) => _tokens[Math.Min(_next + count, _tokens.Count - 1)];

    /// <summary>Takes the next token; the end is never passed.</summary>
    public Token Take()
    {
        Token taken = Current;
        if (taken.Kind != TokenKind.End)
        {
            _next++;
        }

        return taken;
    }

    /// <summary>Takes the next token where it is the given word or mark.</summary>
    public bool TakeIf(string text)
    {
        if (!Current.Is(text))
        {
            return false;
        }

        _next++;
        return true;
    }

    /// <summary>The fault at a token.</summary>
    public static ParseFault FaultAt(Token token, string message) => new(token.Offset, token.Text.Length, message);

    /// <summary>The fault at all that is left.</summary>
    public ParseFault FaultToEnd(string message) => new(Current.Offset, End - Current.Offset, message);

    /// <summary>The value where the text ends here, a fault at what is left otherwise.</summary>
    /// <param name="value">What was read.</param>
    /// <param name="what">What it is called in the message: <c>the length</c>.</param>
    public Parsed<T> AtEnd<T>(T value, string what) => Current.Kind == TokenKind.End
        ? new(value)
        : new(FaultAt(Current, $"nothing more was expected after {what}, found {Current.Shown}"));

    private static List<Token> Split(string text)
    {
        var tokens = new List<Token>();
        int at = 0;
        int end = 0;
        while (at < text.Length)
        {
            if (char.IsWhiteSpace(text[at]))
            {
                at++;
                continue;
            }

            (TokenKind kind, int length) = Measure(text, at);
            tokens.Add(new(kind, text.Substring(at, length), at, at > end));
            at += length;
            end = at;
        }

        tokens.Add(new(TokenKind.End, string.Empty, end, text.Length > end));
        return tokens;
    }

    private static (TokenKind Kind, int Length) Measure(string text, int at)
    {
        int length = 0;
        while (at + length < text.Length && BelongsToNumber(text, at + length))
        {
            length++;
        }

        if (length > 0)
        {
            return (TokenKind.Number, length);
        }

        while (at + length < text.Length && char.IsLetter(text[at + length]))
        {
            length++;
        }

        if (length > 0)
        {
            return (TokenKind.Word, length);
        }

        bool plusMinus = string.CompareOrdinal(text, at, PlusMinusInAscii, 0, PlusMinusInAscii.Length) == 0;
        return (TokenKind.Mark, plusMinus ? PlusMinusInAscii.Length : char.IsSurrogatePair(text, at) ? 2 : 1);
    }

    /// <summary>Points and commas count where a digit follows; a comma is kept so that the fault can mark the whole number.</summary>
    private static bool BelongsToNumber(string text, int at) =>
        char.IsAsciiDigit(text[at])
        || (text[at] is '.' or ',' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]));
}
