using System.Globalization;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>A dimension of a test case in the unit it is stated in.</summary>
internal readonly record struct Dim(double Value, bool InInches)
{
    /// <summary>Millimeters of one inch (yard and pound agreement of 1959).</summary>
    private const double MillimetersPerInch = 25.4;

    public double Mm => InInches ? Value * MillimetersPerInch : Value;

    public static Dim OfMm(double value) => new(value, false);

    public static Dim OfInches(double value) => new(value, true);

    public Dim InUnit(bool inches) => inches == InInches ? this : new(inches ? Value / MillimetersPerInch : Mm, inches);

    public Length ToLength() => InInches ? Length.FromInches(Value) : Length.FromMillimeters(Value);

    public override string ToString() =>
        Value.ToString("R", CultureInfo.InvariantCulture) + (InInches ? " in" : " mm");
}
