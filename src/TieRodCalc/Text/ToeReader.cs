using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>Reads toe: a length or an angle and then its direction.</summary>
internal static class ToeReader
{
    private const string Expected = "a toe such as 1/8 in out or 0.25 deg in";
    private const string NoSign = "toe is written without a sign, with its direction behind it: 1/8 in out";

    /// <summary>A wheel that points straight across the car; nothing beyond it is toe.</summary>
    private const double MostDegrees = 90;

    public static Parsed<ToeReading> Read(TextCursor cursor)
    {
        if (SignReader.Refuse(cursor, NoSign) is { } fault)
        {
            return new(fault);
        }

        return NumberReader.Read(cursor, Expected).Then(number => WithUnit(cursor, number));
    }

    private static Parsed<ToeReading> WithUnit(TextCursor cursor, WrittenNumber number)
    {
        if (cursor.Current.Kind == TokenKind.End || cursor.Current.Is("out"))
        {
            string examples = number.IsFraction ? $"{number.Text} in out" : $"{number.Text} mm out or {number.Text} deg out";
            return new(number.FaultBehind($"the unit is missing: write {examples}"));
        }

        if (UnitScale.Angle.HasUnit(cursor.Current))
        {
            return InDegrees(cursor, number).Then(degrees => Direction(cursor, degrees == 0).Then(
                sign => new Parsed<ToeReading>(new ToeReading(null, Angle.FromDegrees((sign * degrees) + 0.0)))));
        }

        return LengthReader.InMillimeters(cursor, number, "deg, ").Then(mm => Direction(cursor, mm == 0).Then(
            sign => new Parsed<ToeReading>(new ToeReading(Length.FromMillimeters((sign * mm) + 0.0), null))));
    }

    private static Parsed<double> InDegrees(TextCursor cursor, WrittenNumber number) =>
        UnitScale.Angle.Read(cursor, number).Then(degrees => degrees <= MostDegrees
            ? new Parsed<double>(degrees)
            : new(new ParseFault(number.Offset, cursor.TakenEnd - number.Offset, "a toe of at most 90 deg is read")));

    /// <summary>Toe-in is positive. Without toe there is no direction, so none is needed.</summary>
    private static Parsed<int> Direction(TextCursor cursor, bool isZero)
    {
        Token token = cursor.Current;
        if (cursor.TakeIf("in") || (isZero && token.Kind == TokenKind.End))
        {
            return new(1);
        }

        if (cursor.TakeIf("out"))
        {
            return new(-1);
        }

        return token.Kind == TokenKind.End
            ? new(new ParseFault(cursor.End, 0, "the direction is missing: say in or out behind the unit, as in 1/8 in in or 1/8 in out"))
            : new(TextCursor.FaultAt(token, $"expected the direction of the toe, in or out, found {token.Shown}"));
    }
}
