using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Tests.Text;

public class LengthFormatTests
{
    [Theory]
    [InlineData("8 15/16 in", "8.938 in", "227.01 mm")]
    [InlineData("1/16 in", "0.063 in", "1.59 mm")]
    [InlineData("3/16 in", "0.188 in", "4.76 mm")]
    [InlineData("-1/16 in", "-0.063 in", "-1.59 mm")]
    [InlineData("227.005 mm", "8.937 in", "227.01 mm")]
    [InlineData("-227.005 mm", "-8.937 in", "-227.01 mm")]
    [InlineData("1.005 mm", "0.040 in", "1.01 mm")]
    [InlineData("0 mm", "0.000 in", "0.00 mm")]
    [InlineData("-0.001 mm", "0.000 in", "0.00 mm")]
    [InlineData("100000 mm", "3937.008 in", "100000.00 mm")]
    public void Decimals_are_rounded_half_away_from_zero(string text, string inches, string millimeters)
    {
        Length value = LengthText.ParseSigned(text).Value;
        Assert.Equal(inches, LengthFormat.Decimal(value, LengthDisplay.Inch));
        Assert.Equal(millimeters, LengthFormat.Decimal(value, LengthDisplay.Millimeter));
    }

    [Theory]
    [InlineData("8.9375 in", "8 15/16 in")]
    [InlineData("8.9385 in", "8 15/16 in")]
    [InlineData("8.9386 in", "~8 15/16 in")]
    [InlineData("8.9364 in", "~8 15/16 in")]
    [InlineData("8.93 in", "~8 15/16 in")]
    [InlineData("0 in", "0 in")]
    [InlineData("0.0005 in", "0 in")]
    [InlineData("0.005 in", "~0 in")]
    [InlineData("-0.005 in", "~0 in")]
    [InlineData("0.0078125 in", "~1/64 in")]
    [InlineData("1/64 in", "1/64 in")]
    [InlineData("32/64 in", "1/2 in")]
    [InlineData("9 in", "9 in")]
    [InlineData("8.999 in", "9 in")]
    [InlineData("-8 15/16 in", "-8 15/16 in")]
    [InlineData("-1/4 in", "-1/4 in")]
    [InlineData("-8.93 in", "~-8 15/16 in")]
    public void The_nearest_sixty_fourth_says_when_it_is_off(string text, string expected) =>
        Assert.Equal(expected, LengthFormat.Fraction(LengthText.ParseSigned(text).Value));

    [Theory]
    [InlineData("8 15/16 in", "8.938 in (8 15/16, 227.01 mm)", "227.01 mm (8 15/16 in)")]
    [InlineData("8.941 in", "8.941 in (~8 15/16, 227.10 mm)", "227.10 mm (~8 15/16 in)")]
    [InlineData("0 in", "0.000 in (0, 0.00 mm)", "0.00 mm (0 in)")]
    public void The_unit_of_the_job_comes_first(string text, string inchJob, string millimeterJob)
    {
        Length value = LengthText.ParseSigned(text).Value;
        Assert.Equal(inchJob, LengthFormat.Both(value, LengthDisplay.Inch));
        Assert.Equal(millimeterJob, LengthFormat.Both(value, LengthDisplay.Millimeter));
    }

    [Fact]
    public void A_length_that_no_rod_has_is_the_callers_fault()
    {
        var value = Length.FromMillimeters(1e300);
        Assert.Throws<ArgumentException>(() => LengthFormat.Decimal(value, LengthDisplay.Inch));
        Assert.Throws<ArgumentException>(() => LengthFormat.Fraction(value));
    }
}
