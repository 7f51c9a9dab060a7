using TieRodCalc.Parts;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>Reads lengths out of a text in which more may follow.</summary>
internal static class LengthReader
{
    private const string Expected = "a length such as 212 mm or 8 15/16 in";
    private const string NoSign = "a length here is zero or more, written without a sign";

    /// <summary>100 m: far beyond any car, so that a slip of the keyboard is found and no result overflows.</summary>
    private const double MostMm = 1e5;

    private enum Unit
    {
        Inch,
        Millimeter,
        Centimeter,
    }

    /// <summary>A dimension, zero or more, with its tolerance where one is written.</summary>
    public static Parsed<Measured> Measured(TextCursor cursor) =>
        ReadTerm(cursor, NoSign, Expected, toleranceMayBringUnit: true).Then(nominal => TextCursor.IsPlusMinus(cursor.Current)
            ? Toleranced(cursor, nominal)
            : ToMillimeters(nominal).Then(mm => new Parsed<Measured>(new Measured(Length.FromMillimeters(mm)))));

    /// <summary>A length, zero or more, without a tolerance.</summary>
    public static Parsed<Length> Exact(TextCursor cursor) => SignReader.Refuse(cursor, NoSign) is { } fault
        ? new(fault)
        : Signed(cursor);

    /// <summary>A length that may be negative, without a tolerance.</summary>
    public static Parsed<Length> Signed(TextCursor cursor)
    {
        int sign = SignReader.Take(cursor);

        // The zero that is added turns a minus zero into zero.
        return NumberReader.Read(cursor, Expected).Then(number => InMillimeters(cursor, number, string.Empty)).Then(
            mm => new Parsed<Length>(Length.FromMillimeters((sign * mm) + 0.0)));
    }

    /// <summary>The millimeters, without a tolerance, that begin with a number read before.</summary>
    /// <param name="cursor">Where to read.</param>
    /// <param name="number">The number.</param>
    /// <param name="otherUnits">What else the caller would have taken for a unit, as a list with a comma behind each; or empty.</param>
    public static Parsed<double> InMillimeters(TextCursor cursor, WrittenNumber number, string otherUnits)
    {
        if (RefuseTolerance(cursor) is { } early)
        {
            return new(early);
        }

        Parsed<double> length = ReadUnit(cursor, number, otherUnits).Then(ToMillimeters);
        return (length.Fault ?? RefuseTolerance(cursor)) is { } fault ? new(fault) : length;
    }

    private static ParseFault? RefuseTolerance(TextCursor cursor) => TextCursor.IsPlusMinus(cursor.Current)
        ? cursor.FaultToEnd("a tolerance belongs to dimensions of parts and to measurements, not here")
        : null;

    /// <summary>The unit of the tolerance counts for both where the nominal value has none.</summary>
    private static Parsed<Measured> Toleranced(TextCursor cursor, Term nominal)
    {
        cursor.Take();
        return ReadTerm(cursor, "a tolerance is written without a sign of its own", "a tolerance such as 0.5 mm", false)
            .Then(tolerance => Combine(nominal with { Unit = nominal.Unit ?? tolerance.Unit }, tolerance));
    }

    private static Parsed<Measured> Combine(Term nominal, Term tolerance)
    {
        Parsed<double> mm = ToMillimeters(nominal);
        Parsed<double> plusMinus = ToMillimeters(tolerance);
        if ((mm.Fault ?? plusMinus.Fault) is { } fault)
        {
            return new(fault);
        }

        return plusMinus.Value > mm.Value + Millimeters.Negligible
            ? new(tolerance.Fault("the tolerance is larger than the dimension itself"))
            : new(new Measured(Length.FromMillimeters(mm.Value), Length.FromMillimeters(plusMinus.Value)));
    }

    private static Parsed<Term> ReadTerm(TextCursor cursor, string noSign, string expected, bool toleranceMayBringUnit)
    {
        if (SignReader.Refuse(cursor, noSign) is { } fault)
        {
            return new(fault);
        }

        return NumberReader.Read(cursor, expected).Then(number => toleranceMayBringUnit && TextCursor.IsPlusMinus(cursor.Current)
            ? new Parsed<Term>(new Term(number, null, number.End))
            : ReadUnit(cursor, number, string.Empty));
    }

    private static Parsed<Term> ReadUnit(TextCursor cursor, WrittenNumber number, string otherUnits)
    {
        Token token = cursor.Current;
        if (token.Kind == TokenKind.End || TextCursor.IsPlusMinus(token))
        {
            string examples = number.IsFraction ? $"{number.Text} in" : $"{number.Text} mm or {number.Text} in";
            return new(number.FaultBehind($"the unit is missing: write {examples}"));
        }

        if (UnitOf(token) is not { } unit)
        {
            return new(TextCursor.FaultAt(token, Unknown(token, otherUnits)));
        }

        cursor.Take();
        return new(new Term(number, unit, token.End));
    }

    private static Unit? UnitOf(Token token)
    {
        if (token.Is("in") || token.Is("inch") || token.Is("inches") || token.Is("\"") || token.Is("\u2033") || token.Is("\u201D"))
        {
            return Unit.Inch;
        }

        return token.Is("mm") ? Unit.Millimeter : token.Is("cm") ? Unit.Centimeter : null;
    }

    private static string Unknown(Token token, string otherUnits) => token.Text.ToLowerInvariant() switch
    {
        "'" or "\u2032" or "\u2019" or "ft" or "foot" or "feet" => "feet are not read: write the length in inches, 14 in for 1 ft 2 in",
        "m" or "meter" or "meters" => "meters are not read: write the length in mm or cm",
        "-" => "a whole number and a fraction are joined as in 8-15/16 in; a unit was expected here: in, mm or cm",
        _ => $"expected a unit ({otherUnits}in, mm or cm), found {token.Shown}{token.Hint}",
    };

    private static Parsed<double> ToMillimeters(Term term)
    {
        if (term.Number.IsFraction && term.Unit != Unit.Inch)
        {
            return new(term.Number.Fault("fractions are read with inches only: write millimeters and centimeters as a decimal"));
        }

        double mm = term.Unit switch
        {
            Unit.Inch => Millimeters.FromInches(term.Number.Value),

            // In decimal, because 1.13 * 10 is not 11.3 in doubles.
            Unit.Centimeter => (double)(term.Number.Exact * 10),
            _ => term.Number.Value,
        };
        return mm <= MostMm ? new(mm) : new(term.Fault("the length is out of range: at most 100 m (100000 mm) is read"));
    }

    /// <summary>A number with its unit, null where the tolerance behind it brings the unit.</summary>
    private readonly record struct Term(WrittenNumber Number, Unit? Unit, int End)
    {
        public ParseFault Fault(string message) => new(Number.Offset, End - Number.Offset, message);
    }
}
