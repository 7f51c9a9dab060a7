using System.Globalization;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Tests.Text;

/// <summary>Lengths rounded to the safe side: never below what is needed, never above what is there.</summary>
public class LengthRoundingTests
{
    /// <summary>The part of the last place within which a value is taken as exact, and what doubles and decimals lose beside it.</summary>
    private const double Same = 1e-4;
    private const double Lost = 1e-9;

    /// <summary>The three spellings, and the last place of each in millimeters.</summary>
    private static readonly (Func<Length, LengthRounding, string> Show, double Place)[] s_spellings =
    [
        ((value, rounding) => LengthFormat.Decimal(value, LengthDisplay.Millimeter, rounding), 0.01),
        ((value, rounding) => LengthFormat.Decimal(value, LengthDisplay.Inch, rounding), 0.0254),
        (LengthFormat.Fraction, 25.4 / 64),
    ];

    [Fact]
    public void Up_is_never_below_and_down_never_above_the_value_and_both_stay_beside_the_nearest()
    {
        Random random = RandomCounts.For(0);
        int moved = 0;
        for (int i = 0; i < RandomCounts.Texts; i++)
        {
            double mm = (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(0, 5));
            var value = Length.FromMillimeters(mm);
            foreach ((Func<Length, LengthRounding, string> show, double place) in s_spellings)
            {
                double up = Read(show(value, LengthRounding.Up));
                double down = Read(show(value, LengthRounding.Down));
                double nearest = Read(show(value, LengthRounding.Nearest));
                string seen = string.Create(CultureInfo.InvariantCulture, $"{mm:R} mm: {down:R}, {nearest:R}, {up:R}");
                Assert.True(up >= mm - Same * place - Lost && up < mm + place + Lost, seen);
                Assert.True(down <= mm + Same * place + Lost && down > mm - place - Lost, seen);
                Assert.True(Math.Abs(nearest - mm) <= place / 2 + Lost, seen);
                Assert.True(Math.Abs(nearest - up) < Lost || Math.Abs(nearest - down) < Lost, seen);
                Assert.True(up - down < Lost || Math.Abs(up - down - place) < Lost, seen);
                moved += up - down < Lost ? 0 : 1;
            }
        }

        Assert.True(moved > RandomCounts.Texts);
    }

    [Fact]
    public void What_is_exact_stays_as_it_is()
    {
        for (int n = -2000; n <= 2000; n++)
        {
            foreach (LengthRounding rounding in Enum.GetValues<LengthRounding>())
            {
                AssertSame(LengthText.ParseSigned(Text($"{n / 64m} in")).Value, s_spellings[2].Show, rounding);
                AssertSame(Length.FromMillimeters(n * 25.4 / 64), s_spellings[2].Show, rounding);
                Assert.Equal(Text($"{n / 1000m:0.000} in"), s_spellings[1].Show(Length.FromInches(n / 1000d), rounding));
                Assert.Equal(Text($"{n / 1000m:0.000} in"), s_spellings[1].Show(Length.FromMillimeters(n * 25.4 / 1000), rounding));
                Assert.Equal(Text($"{n / 100m:0.00} mm"), s_spellings[0].Show(Length.FromMillimeters(n / 100d), rounding));
            }
        }

        static void AssertSame(Length exact, Func<Length, LengthRounding, string> show, LengthRounding rounding) =>
            Assert.Equal(exact.Millimeters, Read(show(exact, rounding)), 1e-12);
    }

    [Theory]
    [InlineData(12.3400009, "12.34 mm", "12.34 mm")]
    [InlineData(12.3400011, "12.34 mm", "12.35 mm")]
    [InlineData(12.3399991, "12.34 mm", "12.34 mm")]
    [InlineData(12.3399989, "12.33 mm", "12.34 mm")]
    [InlineData(-12.3400009, "-12.34 mm", "-12.34 mm")]
    [InlineData(-12.3400011, "-12.35 mm", "-12.34 mm")]
    [InlineData(-12.3399989, "-12.34 mm", "-12.33 mm")]
    [InlineData(-0.004, "-0.01 mm", "0.00 mm")]
    [InlineData(0.004, "0.00 mm", "0.01 mm")]
    public void What_is_within_a_ten_thousandth_of_the_last_place_is_exact(double mm, string down, string up)
    {
        Assert.Equal(down, LengthFormat.Decimal(Length.FromMillimeters(mm), LengthDisplay.Millimeter, LengthRounding.Down));
        Assert.Equal(up, LengthFormat.Decimal(Length.FromMillimeters(mm), LengthDisplay.Millimeter, LengthRounding.Up));
    }

    [Theory]
    [InlineData("8.94 in", LengthRounding.Up, "8.940 in (~8 61/64, 227.08 mm)", "227.08 mm (~8 61/64 in)")]
    [InlineData("8.94 in", LengthRounding.Down, "8.940 in (~8 15/16, 227.07 mm)", "227.07 mm (~8 15/16 in)")]
    [InlineData("-8.94 in", LengthRounding.Up, "-8.940 in (~-8 15/16, -227.07 mm)", "-227.07 mm (~-8 15/16 in)")]
    [InlineData("-8.94 in", LengthRounding.Down, "-8.940 in (~-8 61/64, -227.08 mm)", "-227.08 mm (~-8 61/64 in)")]
    [InlineData("8.9379 in", LengthRounding.Down, "8.937 in (8 15/16, 227.02 mm)", "227.02 mm (8 15/16 in)")]
    [InlineData("8 15/16 in", LengthRounding.Up, "8.938 in (8 15/16, 227.02 mm)", "227.02 mm (8 15/16 in)")]
    public void Every_spelling_of_one_length_is_rounded_the_same_way(
        string text, LengthRounding rounding, string inchJob, string millimeterJob)
    {
        Length value = LengthText.ParseSigned(text).Value;
        Assert.Equal(inchJob, LengthFormat.Both(value, LengthDisplay.Inch, rounding));
        Assert.Equal(millimeterJob, LengthFormat.Both(value, LengthDisplay.Millimeter, rounding));
    }

    private static double Read(string shown) => LengthText.ParseSigned(shown.TrimStart('~')).Value.Millimeters;

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
