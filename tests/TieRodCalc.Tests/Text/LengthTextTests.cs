using TieRodCalc.Parts;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Tests.Text;

public class LengthTextTests
{
    public static TheoryData<string, double> GoodLengths => new()
    {
        { "9 in", 228.6 },
        { "9\"", 228.6 },
        { "9 \"", 228.6 },
        { "9\u2033", 228.6 },
        { "9\u201D", 228.6 },
        { "9 inch", 228.6 },
        { "9 inches", 228.6 },
        { "9 IN", 228.6 },
        { "8 15/16 in", 227.0125 },
        { "8-15/16\"", 227.0125 },
        { "8-15/16 in", 227.0125 },
        { "8  15/16in", 227.0125 },
        { "15/16 in", 23.8125 },
        { "17/16 in", 26.9875 },
        { "0 1/2 in", 12.7 },
        { "8 0/16 in", 203.2 },
        { "2.625in", 66.675 },
        { ".625 in", 15.875 },
        { "0.25 in", 6.35 },
        { "1/3 in", Millimeters.FromInches(1 / 3d) },
        { "212 mm", 212 },
        { "212mm", 212 },
        { "212.05 mm", 212.05 },
        { "21.2 cm", 212 },
        { "1.13 cm", 11.3 },
        { "0 mm", 0 },
        { "0 in", 0 },
        { "100000 mm", 100000 },
        { "  9 in  ", 228.6 },
        { "9\u00A0in", 228.6 },
        { "\u00A08\u202F15/16\u00A0in", 227.0125 },
        { "8\t15/16\tin", 227.0125 },
        { "12345.678901234567890 mm", 12345.67890123456789 },
    };

    public static TheoryData<string, double, double> GoodTolerances => new()
    {
        { "212 mm ± 0.5 mm", 212, 0.5 },
        { "212 ± 0.5 mm", 212, 0.5 },
        { "212±0.5mm", 212, 0.5 },
        { "212 +/- 0.5 mm", 212, 0.5 },
        { "9 in +/- 1/64 in", 228.6, 0.396875 },
        { "9 in+/-1/64 in", 228.6, 0.396875 },
        { "8 15/16 ± 1/64 in", 227.0125, 0.396875 },
        { "8-15/16\" ± 1/64\"", 227.0125, 0.396875 },
        { "9 in ± 0.5 mm", 228.6, 0.5 },
        { "21.2 cm ± 0.5 mm", 212, 0.5 },
        { "21.2 ± 0.05 cm", 212, 0.5 },
        { "1 mm ± 1 mm", 1, 1 },
        { "1 in ± 25.4 mm", 25.4, 25.4 },
        { "212 mm ± 0 mm", 212, 0 },
    };

    public static TheoryData<string, int, int, string> BadLengths => new()
    {
        // Units.
        { "212", 3, 0, "the unit is missing: write 212 mm or 212 in" },
        { "  212  ", 5, 0, "unit is missing" },
        { "15/16", 5, 0, "write 15/16 in" },
        { "8-15/16", 7, 0, "write 8 15/16 in" },
        { "212 mm ± 0.5", 12, 0, "write 0.5 mm or 0.5 in" },
        { "9 yards", 2, 5, "expected a unit (in, mm or cm), found 'yards'" },
        { "212 min", 4, 3, "'min'" },
        { "1'", 1, 1, "feet are not read" },
        { "1 ft", 2, 2, "feet are not read" },
        { "1 ft 2 in", 2, 2, "feet are not read" },
        { "1\u2032 2\u2033", 1, 1, "feet are not read" },
        { "0.212 m", 6, 1, "meters are not read" },
        { "9 in.", 4, 1, "nothing more was expected after the length, found '.'" },
        { "9 in out", 5, 3, "nothing more was expected" },
        { "9 in in", 5, 2, "nothing more was expected" },
        { "9 in 3 mm", 5, 1, "nothing more was expected" },

        // Missing things.
        { "", 0, 0, "expected a length such as 212 mm or 8 15/16 in, found the end" },
        { " \t ", 0, 0, "found the end" },
        { "in", 0, 2, "expected a length" },
        { "± 1 mm", 0, 1, "expected a length" },
        { "212 mm ±", 8, 0, "expected a tolerance such as 0.5 mm" },
        { "212 mm +/- mm", 11, 2, "expected a tolerance" },
        { "15/ in", 4, 2, "denominator" },
        { "15/", 3, 0, "denominator" },

        // Numbers.
        { "2,625 in", 0, 5, "the decimal sign is a point" },
        { "1,000.5 mm", 0, 7, "the decimal sign is a point" },
        { "212 ± 0,5 mm", 6, 3, "the decimal sign is a point" },
        { "2.6.25 in", 0, 6, "one decimal point" },
        { "2. in", 1, 1, "expected a unit" },
        { "1e3 mm", 1, 1, "exponents are not read" },
        { "1E-3 mm", 1, 1, "exponents are not read" },
        { "1 000 mm", 2, 3, "digits are not grouped" },
        { "1'000 mm", 1, 1, "feet are not read" },
        { "1_000 mm", 1, 1, "expected a unit" },
        { "8½ in", 1, 1, "write a fraction with a slash" },
        { "½ in", 0, 1, "write a fraction with a slash" },
        { "\u0669 mm", 0, 1, "only the digits 0 to 9" },
        { "123456789012345678901 mm", 0, 21, "at most 20 digits" },
        { "NaN mm", 0, 3, "expected a length" },
        { "Infinity in", 0, 8, "expected a length" },
        { "\u0007 mm", 0, 1, "a character that cannot be printed" },
        { "1 \U0001F527 mm", 2, 2, "expected a unit (in, mm or cm), found a character" },

        // Fractions.
        { "1/0 in", 2, 1, "cannot be zero" },
        { "8 1/0 in", 4, 1, "cannot be zero" },
        { "8 17/16 in", 2, 5, "below 1" },
        { "8 16/16 in", 2, 5, "below 1" },
        { "8-17/16\"", 2, 5, "below 1" },
        { "8.5 1/2 in", 0, 3, "whole numbers" },
        { "1.5/2 in", 0, 3, "whole numbers" },
        { "1/2.5 in", 2, 3, "whole numbers" },
        { "1/2/3 in", 3, 1, "expected a unit" },
        { "15 / 16 in", 0, 7, "without spaces" },
        { "8 - 15/16 in", 2, 1, "joined as in 8-15/16 in" },
        { "8-15 in", 1, 1, "joined as in 8-15/16 in" },
        { "1/2 mm", 0, 3, "with inches only" },
        { "8 1/2 cm", 0, 5, "with inches only" },
        { "212 1/2 ± 1 mm", 0, 7, "with inches only" },
        { "212 mm ± 1/2 mm", 9, 3, "with inches only" },

        // Signs, range and tolerance.
        { "-1 in", 0, 1, "zero or more" },
        { "+1 in", 0, 1, "without a sign" },
        { "\u22121 in", 0, 1, "zero or more" },
        { "212 mm ± -0.5 mm", 9, 1, "without a sign of its own" },
        { "212 mm + 0.5 mm", 7, 1, "nothing more was expected" },
        { "100000.1 mm", 0, 11, "at most 100 m" },
        { "3938 in", 0, 7, "at most 100 m" },
        { "99999999999999999999 in", 0, 23, "at most 100 m" },
        { "1 mm ± 1.1 mm", 7, 6, "larger than the dimension" },
        { "0 mm ± 0.1 mm", 7, 6, "larger than the dimension" },
        { "1 mm ± 1 in", 7, 4, "larger than the dimension" },
        { "212 mm ± 0.5 mm ± 1 mm", 16, 1, "nothing more was expected" },
    };

    [Theory]
    [MemberData(nameof(GoodLengths))]
    public void A_length_is_read_exactly(string text, double millimeters)
    {
        Measured measured = LengthText.Parse(text).Value;
        Assert.Equal(millimeters, measured.Mm);
        Assert.Equal(0, measured.PlusMinusMm);
        Assert.Equal(Length.FromMillimeters(millimeters), LengthText.ParseExact(text).Value);
        Assert.Equal(Length.FromMillimeters(millimeters), LengthText.ParseSigned(text).Value);
    }

    [Theory]
    [MemberData(nameof(GoodTolerances))]
    public void A_tolerance_is_read_with_its_dimension(string text, double millimeters, double plusMinus)
    {
        Measured measured = LengthText.Parse(text).Value;
        Assert.Equal(millimeters, measured.Mm);
        Assert.Equal(plusMinus, measured.PlusMinusMm);
    }

    [Theory]
    [MemberData(nameof(BadLengths))]
    public void A_bad_length_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(LengthText.Parse(text).Fault, offset, length, phrase);

    [Theory]
    [InlineData("212 mm ± 0.5 mm", 7, 8)]
    [InlineData("212 ± 0.5 mm ", 4, 8)]
    [InlineData("9 in +/- 1/64 in", 5, 11)]
    [InlineData("9 in ±", 5, 1)]
    public void A_tolerance_is_a_fault_where_none_belongs(string text, int offset, int length)
    {
        const string Phrase = "a tolerance belongs to dimensions of parts and to measurements, not here";
        Expect.Fault(LengthText.ParseExact(text).Fault, offset, length, Phrase);
        Expect.Fault(LengthText.ParseSigned(text).Fault, offset, length, Phrase);
    }

    [Theory]
    [InlineData("-1 in", -25.4)]
    [InlineData("+1 in", 25.4)]
    [InlineData("\u22121 in", -25.4)]
    [InlineData("- 1 in", -25.4)]
    [InlineData("-8 15/16 in", -227.0125)]
    [InlineData("-0.011 in", -0.2794)]
    [InlineData("-12 mm", -12)]
    [InlineData("-1.13 cm", -11.3)]
    public void A_signed_length_may_be_negative(string text, double millimeters)
    {
        Assert.Equal(Length.FromMillimeters(millimeters), LengthText.ParseSigned(text).Value);
        Expect.Fault(LengthText.ParseExact(text).Fault, 0, 1, "zero or more");
    }

    [Fact]
    public void Minus_zero_is_zero() =>
        Assert.False(double.IsNegative(LengthText.ParseSigned("-0 in").Value.Millimeters));

    [Theory]
    [InlineData("--1 in", 1, 1, "expected a length")]
    [InlineData("-", 1, 0, "expected a length")]
    [InlineData("-1", 2, 0, "unit is missing")]
    [InlineData("-100001 mm", 1, 9, "at most 100 m")]
    public void A_bad_signed_length_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(LengthText.ParseSigned(text).Fault, offset, length, phrase);

    [Fact]
    public void Hundreds_of_digits_are_a_fault_and_not_infinite()
    {
        string digits = new('9', 400);
        Expect.Fault(LengthText.Parse(digits + "/" + digits + " in").Fault, 0, 400, "at most 20 digits");
        Expect.Fault(LengthText.Parse("1/" + digits + " in").Fault, 2, 400, "at most 20 digits");
        Expect.Fault(LengthText.Parse("1 1/" + digits + " in").Fault, 4, 400, "at most 20 digits");
    }

    [Fact]
    public void A_null_is_the_callers_fault() => Assert.Throws<ArgumentNullException>(() => LengthText.Parse(null!));

    [Fact]
    public void The_value_of_a_fault_throws()
    {
        var thrown = Assert.Throws<InvalidOperationException>(() => LengthText.Parse("9").Value);
        Assert.Contains("unit is missing", thrown.Message, StringComparison.Ordinal);
    }
}
