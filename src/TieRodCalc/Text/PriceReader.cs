using TieRodCalc.Parts;

namespace TieRodCalc.Text;

/// <summary>Reads prices.</summary>
internal static class PriceReader
{
    private const string Example = "12.50 USD";

    /// <summary>Four decimals: the most that a currency of ISO 4217 has.</summary>
    private const int MostDecimals = 4;

    private const int CurrencyLetters = 3;
    private const decimal MostAmount = 1_000_000_000;

    public static Parsed<Price> Read(TextCursor cursor)
    {
        if (SignReader.Refuse(cursor, "a price is zero or more, written without a sign") is { } sign)
        {
            return new(sign);
        }

        return NumberReader.Read(cursor, $"a price such as {Example}").Then(number => WithCurrency(cursor, number));
    }

    private static Parsed<Price> WithCurrency(TextCursor cursor, WrittenNumber number)
    {
        Token currency = cursor.Take();
        if (CheckAmount(number) is { } fault)
        {
            return new(fault);
        }

        if (currency.Kind == TokenKind.End)
        {
            return new(number.FaultBehind($"the currency is missing: write {number.Text} USD"));
        }

        return currency is { Kind: TokenKind.Word, Text.Length: CurrencyLetters } && currency.Text.All(char.IsAsciiLetterUpper)
            ? new(new Price(number.Exact, currency.Text))
            : new(TextCursor.FaultAt(currency, $"expected a currency as three capital letters, such as USD, found {currency.Shown}"));
    }

    private static ParseFault? CheckAmount(WrittenNumber number)
    {
        if (number.IsFraction)
        {
            return number.Fault("fractions are read with inches only: write a decimal");
        }

        if (number.Exact.Scale > MostDecimals)
        {
            return number.Fault($"a price has at most {MostDecimals} decimals");
        }

        return number.Exact > MostAmount ? number.Fault("a price of at most 1000000000 is read") : null;
    }
}
