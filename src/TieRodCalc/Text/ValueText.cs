using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>Stresses, forces, angles, masses, prices and the other values of part and job files as people write them.</summary>
/// <remarks>Numbers are decimals with a point whatever the culture, without exponents or grouped digits; a unit is always needed, and
/// its capital and small letters count. Fractions and tolerances are read with lengths only.</remarks>
public static class ValueText
{
    /// <summary>More diameters of engagement than any thread has.</summary>
    private const int MostDiameters = 20;

    /// <summary>A stress from 0.01 MPa to 10 GPa: <c>120 ksi</c>, <c>830 MPa</c>; also <c>psi</c> and <c>GPa</c>.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<Pressure> ParseStress(string text) =>
        Whole(text, "the stress", UnitScale.Stress.ReadPositive, mpa => Pressure.FromMegapascals(mpa));

    /// <summary>A force above zero, at most 10000 kN: <c>10 kN</c>, <c>800 N</c>, <c>2000 lbf</c>.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<Force> ParseForce(string text) =>
        Whole(text, "the force", UnitScale.Force.ReadPositive, newtons => Force.FromNewtons(newtons));

    /// <summary>An angle, which may be negative, up to 360 deg either way: <c>90 deg</c>, <c>90°</c>.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<Angle> ParseAngle(string text) =>
        Whole(text, "the angle", UnitScale.Angle.ReadSigned, degrees => Angle.FromDegrees(degrees));

    /// <summary>A mass above zero, at most 1000 kg: <c>0.4 kg</c>, <c>400 g</c>, <c>0.9 lb</c>.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<Mass> ParseMass(string text) =>
        Whole(text, "the mass", UnitScale.Mass.ReadPositive, kilograms => Mass.FromKilograms(kilograms));

    /// <summary>A price, zero or more, with at most four decimals, and its currency as three capital letters: <c>12.50 USD</c>.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<Price> ParsePrice(string text) => Whole(text, "the price", PriceReader.Read, price => price);

    /// <summary>The outside of a sleeve: <c>hex 1 in</c>, <c>round 25 mm ± 0.1 mm</c>; above zero.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<Outside> ParseOutside(string text) => Whole(text, "the outside", ReadOutside, outside => outside);

    /// <summary>An engagement above zero: <c>1.5 diameters</c> (also <c>1.5 D</c>), at most 20, or a length.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<EngagementRule> ParseEngagement(string text) => Whole(text, "the engagement", ReadEngagement, rule => rule);

    /// <summary>A toe: a length or an angle of at most 90 deg and then its direction, <c>1/8 in out</c>, <c>0.25 deg in</c>; zero
    /// needs no direction.</summary>
    /// <remarks>A last <c>in</c> or <c>out</c> is a direction only after a complete value: <c>1/8 in</c> is a length that lacks one,
    /// <c>1/8 in in</c> is toe-in.</remarks>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<ToeReading> ParseToe(string text) => Whole(text, "the toe", ToeReader.Read, toe => toe);

    private static Parsed<TValue> Whole<TRead, TValue>(
        string text, string what, Func<TextCursor, Parsed<TRead>> read, Func<TRead, TValue> make)
    {
        var cursor = new TextCursor(text);
        return read(cursor).Then(value => cursor.AtEnd(make(value), what));
    }

    private static Parsed<Outside> ReadOutside(TextCursor cursor)
    {
        Token word = cursor.Take();
        OutsideShape? shape = word.Is("hex") ? OutsideShape.Hexagon : word.Is("round") ? OutsideShape.Round : null;
        if (shape is not { } known)
        {
            return new(TextCursor.FaultAt(word, $"expected hex or round and then the size, as in hex 1 in, found {word.Shown}"));
        }

        int offset = cursor.Current.Offset;
        return LengthReader.Measured(cursor).Then(across => across.Mm > 0
            ? new Parsed<Outside>(new Outside(known, across))
            : new(new ParseFault(offset, cursor.TakenEnd - offset, "the outside of a sleeve must be above zero")));
    }

    private static Parsed<EngagementRule> ReadEngagement(TextCursor cursor)
    {
        if (SignReader.Refuse(cursor, "an engagement is above zero, written without a sign") is { } sign)
        {
            return new(sign);
        }

        return NumberReader.Read(cursor, "an engagement such as 1.5 diameters or 28 mm").Then(number => Engagement(cursor, number));
    }

    private static Parsed<EngagementRule> Engagement(TextCursor cursor, WrittenNumber number)
    {
        ParseFault Fault(string message) => new(number.Offset, cursor.TakenEnd - number.Offset, message);
        if (cursor.Current.Kind == TokenKind.End)
        {
            return new(number.FaultBehind($"the unit is missing: write {number.Text} diameters, or a length in mm or in"));
        }

        if (!cursor.TakeIf("diameters") && !cursor.TakeIf("diameter") && !cursor.TakeIf("D"))
        {
            return LengthReader.InMillimeters(cursor, number, "diameters, ").Then(mm => mm > 0
                ? new Parsed<EngagementRule>(EngagementRule.FromLength(Length.FromMillimeters(mm)))
                : new(Fault("an engagement must be above zero")));
        }

        if (number.IsFraction)
        {
            return new(number.Fault("fractions are read with inches only: write diameters as a decimal, 1.5 diameters"));
        }

        return number.Value is > 0 and <= MostDiameters
            ? new(EngagementRule.Diameters(number.Value))
            : new(Fault($"an engagement is above zero and at most {MostDiameters} diameters"));
    }
}
