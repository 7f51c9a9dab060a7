using TieRodCalc.Parts;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>Lengths as people write them.</summary>
/// <remarks>
/// <para>Inches (<c>in</c>, <c>inch</c>, <c>inches</c>, <c>"</c>) as decimals or fractions, millimeters (<c>mm</c>) and centimeters
/// (<c>cm</c>) as decimals: <c>9 in</c>, <c>8 15/16 in</c>, <c>8-15/16"</c>, <c>2.625in</c>, <c>212 mm</c>, <c>21.2 cm</c>.
/// The decimal sign is a point whatever the culture; feet, exponents and grouped digits are not read, and a unit is always needed.
/// At most 100 m.</para>
/// <para>An inch value <c>v</c> becomes <c>v * 254 / 10</c> millimeters, a fraction being
/// <c>(whole * denominator + numerator) / denominator</c> inches; that is exact for every sixty-fourth up to 30 in.</para>
/// </remarks>
public static class LengthText
{
    /// <summary>A dimension, zero or more, with its tolerance where one is written.</summary>
    /// <remarks>The tolerance follows <c>±</c> or <c>+/-</c>: <c>212 mm ± 0.5 mm</c>, <c>9 in +/- 1/64 in</c>. Its unit counts for both
    /// where the dimension has none: <c>212 ± 0.5 mm</c>. It is not larger than the dimension.</remarks>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<Measured> Parse(string text) => Whole(text, LengthReader.Measured);

    /// <summary>A length, zero or more, without a tolerance: a target, an adjustment, a rule.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<Length> ParseExact(string text) => Whole(text, LengthReader.Exact);

    /// <summary>A length that may be negative, without a tolerance: a coordinate, a travel, a reading.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<Length> ParseSigned(string text) => Whole(text, LengthReader.Signed);

    private static Parsed<T> Whole<T>(string text, Func<TextCursor, Parsed<T>> read)
    {
        var cursor = new TextCursor(text);
        return read(cursor).Then(value => cursor.AtEnd(value, "the length"));
    }
}
