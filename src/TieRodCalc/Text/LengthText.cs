using TieRodCalc.Parts;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>Lengths as people write them.</summary>
public static class LengthText
{
    /// <summary>A dimension, zero or more, with its tolerance where one is written.</summary>
    public static Parsed<Measured> Parse(string text) => throw new NotImplementedException();

    /// <summary>A length, zero or more, without a tolerance: a target, an adjustment, a rule.</summary>
    public static Parsed<Length> ParseExact(string text) => throw new NotImplementedException();

    /// <summary>A length that may be negative, without a tolerance: a coordinate, a travel, a reading.</summary>
    public static Parsed<Length> ParseSigned(string text) => throw new NotImplementedException();
}
