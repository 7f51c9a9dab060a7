using System.Collections.Immutable;

namespace TieRodCalc.Text;

/// <summary>A spelling of a unit and what one of it is in the unit that is kept.</summary>
internal readonly record struct UnitSpelling(string Text, decimal Factor);

/// <summary>Reads a decimal and a unit of one quantity.</summary>
/// <param name="Quantity">What it is called: <c>a force</c>.</param>
/// <param name="Example">How it is written: <c>10 kN</c>.</param>
/// <param name="Most">The largest value that makes sense, in the unit that is kept.</param>
/// <param name="MostShown">The same as a message says it.</param>
/// <param name="Units">The spellings; the case of the letters counts, since it means something in SI.</param>
internal sealed record UnitScale(string Quantity, string Example, double Most, string MostShown, ImmutableArray<UnitSpelling> Units)
{
    /// <summary>1 lbf = 0.45359237 kg * 9.80665 m/s2, exact by definition.</summary>
    private const decimal NewtonsPerPoundForce = 4.4482216152605m;

    /// <summary>1 psi = 1 lbf per square inch.</summary>
    private const decimal MegapascalsPerPsi = NewtonsPerPoundForce / (25.4m * 25.4m);

    /// <summary>Stress in megapascals. 10 GPa is above any material, 0.01 MPa below any; so engagement
    /// by strength stays a length that can be shown.</summary>
    public static readonly UnitScale Stress = new(
        "a stress",
        "120 ksi or 830 MPa",
        1e4,
        "10 GPa",
        [new("ksi", 1000 * MegapascalsPerPsi), new("psi", MegapascalsPerPsi), new("MPa", 1), new("GPa", 1000)])
    {
        Least = 0.01,
        LeastShown = "0.01 MPa",
    };

    /// <summary>Force in newtons. 10 MN is above anything a steering link sees.</summary>
    public static readonly UnitScale Force = new(
        "a force", "10 kN or 2000 lbf", 1e7, "10000 kN", [new("kN", 1000), new("N", 1), new("lbf", NewtonsPerPoundForce)]);

    /// <summary>The least value that makes sense, in the unit that is kept; 0 where any above zero does.</summary>
    public double Least { get; init; }

    /// <summary>The same as a message says it.</summary>
    public string LeastShown { get; init; } = string.Empty;

    /// <summary>Angle in degrees.</summary>
    public static readonly UnitScale Angle = new("an angle", "90 deg", 360, "360 deg", [new("deg", 1), new("°", 1)]);

    /// <summary>Mass in kilograms; the pound is exact by the agreement of 1959.</summary>
    public static readonly UnitScale Mass = new(
        "a mass", "0.4 kg or 0.9 lb", 1000, "1000 kg", [new("kg", 1), new("g", 0.001m), new("lb", 0.45359237m)]);

    /// <summary>Reads a value above zero, written without a sign.</summary>
    public Parsed<double> ReadPositive(TextCursor cursor)
    {
        if (SignReader.Refuse(cursor, $"{Quantity} here is above zero, written without a sign") is { } sign)
        {
            return new(sign);
        }

        int offset = cursor.Current.Offset;
        return Read(cursor).Then(value => value > 0 && value >= Least
            ? new Parsed<double>(value)
            : new(new ParseFault(
                offset,
                cursor.TakenEnd - offset,
                value > 0 ? $"{Quantity} of at least {LeastShown} is read" : $"{Quantity} here must be above zero")));
    }

    /// <summary>Reads a value that may be negative.</summary>
    public Parsed<double> ReadSigned(TextCursor cursor)
    {
        int sign = SignReader.Take(cursor);

        // The zero that is added turns a minus zero into zero.
        return Read(cursor).Then(value => new Parsed<double>((sign * value) + 0.0));
    }

    /// <summary>Whether the next token is a unit of this quantity.</summary>
    public bool HasUnit(Token token) => Units.Any(unit => unit.Text == token.Text);

    /// <summary>The value that begins with a number read before.</summary>
    public Parsed<double> Read(TextCursor cursor, WrittenNumber number)
    {
        Token token = cursor.Current;
        if (token.Kind == TokenKind.End)
        {
            return new(number.FaultBehind($"the unit is missing: write {Quantity} such as {Example}"));
        }

        if (!HasUnit(token))
        {
            return new(TextCursor.FaultAt(token, Unknown(token)));
        }

        cursor.Take();
        if (number.IsFraction)
        {
            return new(number.Fault("fractions are read with inches only: write a decimal"));
        }

        double value = (double)(number.Exact * Units.First(unit => unit.Text == token.Text).Factor);
        return value <= Most
            ? new(value)
            : new(new ParseFault(number.Offset, token.End - number.Offset, $"{Quantity} of at most {MostShown} is read"));
    }

    private Parsed<double> Read(TextCursor cursor) =>
        NumberReader.Read(cursor, $"{Quantity} such as {Example}").Then(number => Read(cursor, number));

    private string Unknown(Token token)
    {
        foreach (UnitSpelling unit in Units)
        {
            if (token.Is(unit.Text))
            {
                return $"capital and small letters count in units: write {unit.Text}, not {token.Text}";
            }
        }

        return $"expected the unit of {Quantity} ({string.Join(", ", Units.Select(unit => unit.Text))}), found {token.Shown}{token.Hint}";
    }
}
