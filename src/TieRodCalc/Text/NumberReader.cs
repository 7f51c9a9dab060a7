using System.Globalization;

namespace TieRodCalc.Text;

/// <summary>Reads numbers. Only the digits 0 to 9 and the point count, whatever the culture.</summary>
internal static class NumberReader
{
    /// <summary>Most digits of a number: more than a double of 17 digits needs, and few enough for a decimal.</summary>
    private const int MostDigits = 20;

    /// <summary>Reads a number of any spelling.</summary>
    /// <param name="cursor">Where to read.</param>
    /// <param name="expected">What is expected, with an example: <c>a length such as 212 mm</c>.</param>
    public static Parsed<WrittenNumber> Read(TextCursor cursor, string expected)
    {
        Token first = cursor.Take();
        if (CheckPlain(first, cursor, expected) is { } fault)
        {
            return new(fault);
        }

        if (cursor.Current.Is("/"))
        {
            return Fraction(cursor, null, first);
        }

        if (cursor.Current is { Spaced: false } && cursor.Current.Is("-") && cursor.Ahead(1).IsTightNumber && cursor.Ahead(2).Is("/"))
        {
            cursor.Take();
        }

        if (cursor.Current.Kind != TokenKind.Number)
        {
            return new(Plain(first));
        }

        return cursor.Ahead(1).Is("/")
            ? Fraction(cursor, first, cursor.Take())
            : new(TextCursor.FaultAt(cursor.Current, "one number was expected; digits are not grouped, and a fraction is written 15/16"));
    }

    /// <summary>Reads a number without a fraction and leaves what follows alone.</summary>
    /// <param name="cursor">Where to read.</param>
    /// <param name="expected">What is expected, with an example.</param>
    public static Parsed<WrittenNumber> ReadDecimal(TextCursor cursor, string expected)
    {
        Token first = cursor.Take();
        return CheckPlain(first, cursor, expected) is { } fault ? new(fault) : new(Plain(first));
    }

    private static WrittenNumber Plain(Token token) => new(ToDouble(token), ToDecimal(token), false, token.Text, token.Offset, token.End);

    private static Parsed<WrittenNumber> Fraction(TextCursor cursor, Token? whole, Token numerator)
    {
        Token slash = cursor.Take();
        Token denominator = cursor.Take();
        Token first = whole ?? numerator;
        ParseFault? fault = CheckPlain(numerator, cursor, "the numerator of a fraction")
            ?? CheckPlain(denominator, cursor, "the denominator of a fraction such as 15/16")
            ?? CheckWhole(first)
            ?? CheckWhole(numerator)
            ?? CheckWhole(denominator)
            ?? CheckParts(whole is not null, numerator, slash, denominator);
        if (fault is not null)
        {
            return new(fault);
        }

        double bottom = ToDouble(denominator);
        double value = ((whole is { } token ? ToDouble(token) : 0) * bottom + ToDouble(numerator)) / bottom;
        string text = (whole is null ? string.Empty : whole.Value.Text + " ") + numerator.Text + "/" + denominator.Text;
        return new(new WrittenNumber(value, 0, true, text, first.Offset, denominator.End));
    }

    private static ParseFault? CheckParts(bool mixed, Token numerator, Token slash, Token denominator)
    {
        ParseFault Fault(string message) => new(numerator.Offset, denominator.End - numerator.Offset, message);
        if (slash.Spaced || denominator.Spaced)
        {
            return Fault("a fraction is written without spaces around the slash: 15/16");
        }

        if (ToDouble(denominator) == 0)
        {
            return TextCursor.FaultAt(denominator, "the denominator of a fraction cannot be zero");
        }

        return mixed && ToDouble(numerator) >= ToDouble(denominator)
            ? Fault("the fraction behind a whole number must be below 1")
            : null;
    }

    private static ParseFault? CheckWhole(Token part) => part.Text.Contains('.')
        ? TextCursor.FaultAt(part, "a fraction is made of whole numbers: write 8 15/16, or a decimal alone")
        : null;

    private static ParseFault? CheckPlain(Token token, TextCursor cursor, string expected)
    {
        if (token.Kind != TokenKind.Number)
        {
            return TextCursor.FaultAt(token, $"expected {expected}, found {token.Shown}{token.Hint}");
        }

        if (token.Text.Contains(','))
        {
            return TextCursor.FaultAt(token, "the decimal sign is a point, and digits are not grouped: write 2.5, not 2,5");
        }

        if (token.Text.Count(c => c == '.') > 1)
        {
            return TextCursor.FaultAt(token, "a number has one decimal point at most");
        }

        if (token.Text.Count(char.IsAsciiDigit) > MostDigits)
        {
            return TextCursor.FaultAt(token, $"a number has at most {MostDigits} digits");
        }

        return IsExponent(token, cursor) ? TextCursor.FaultAt(cursor.Current, "exponents are not read: write the number out") : null;
    }

    private static bool IsExponent(Token number, TextCursor cursor)
    {
        Token letter = cursor.Current;
        Token power = cursor.Ahead(1);
        return letter.Offset == number.End && letter.Is("e") && (power.IsTightNumber || power.Is("-") || power.Is("+"));
    }

    private static double ToDouble(Token token) =>
        double.Parse(token.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static decimal ToDecimal(Token token) =>
        decimal.Parse(token.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
