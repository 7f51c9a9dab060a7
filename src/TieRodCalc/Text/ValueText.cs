using TieRodCalc.Parts;
using TieRodCalc.Planning;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>Stresses, forces, angles, masses, prices and the other values of part and job files as people write them.</summary>
public static class ValueText
{
    /// <summary>A stress above zero: <c>120 ksi</c>, <c>830 MPa</c>.</summary>
    public static Parsed<Pressure> ParseStress(string text) => throw new NotImplementedException();

    /// <summary>A force above zero: <c>10 kN</c>, <c>800 N</c>, <c>2000 lbf</c>.</summary>
    public static Parsed<Force> ParseForce(string text) => throw new NotImplementedException();

    /// <summary>An angle, which may be negative: <c>90 deg</c>, <c>90°</c>.</summary>
    public static Parsed<Angle> ParseAngle(string text) => throw new NotImplementedException();

    /// <summary>A mass above zero: <c>0.4 kg</c>, <c>400 g</c>, <c>0.9 lb</c>.</summary>
    public static Parsed<Mass> ParseMass(string text) => throw new NotImplementedException();

    /// <summary>A price: <c>12.50 USD</c>.</summary>
    public static Parsed<Price> ParsePrice(string text) => throw new NotImplementedException();

    /// <summary>The outside of a sleeve: <c>hex 1 in</c>, <c>round 25 mm ± 0.1 mm</c>.</summary>
    public static Parsed<Outside> ParseOutside(string text) => throw new NotImplementedException();

    /// <summary>An engagement: <c>1.5 diameters</c> or a length.</summary>
    public static Parsed<EngagementRule> ParseEngagement(string text) => throw new NotImplementedException();

    /// <summary>A toe: a length or an angle and then its direction, <c>1/8 in out</c>, <c>0.25 deg in</c>; zero needs no direction.</summary>
    public static Parsed<ToeReading> ParseToe(string text) => throw new NotImplementedException();
}
