using TieRodCalc.Planning;

namespace TieRodCalc.Tests.Planning;

/// <summary>Cuts on marks of half a millimeter, by hand; a hair is less than the comparison constant, a little is more.</summary>
public class CutRoundingTests
{
    private const double Mark = 0.5;
    private const double Hair = 5e-7;
    private const double Little = 2e-6;

    /// <summary>Least and most cut, what is cut beyond the least, and what comes of it.</summary>
    [Theory]
    [InlineData(0.0, 5.0, 1.5, 0.0, true)]
    [InlineData(-1.0, 5.0, 1.5, 0.0, true)]
    [InlineData(3.2, 8.0, 1.5, 5.0, true)]
    [InlineData(3.0, 8.0, 1.5, 4.5, true)]
    [InlineData(3.2, 5.0, 1.5, 4.0, true)]
    [InlineData(3.2, 3.9, 1.5, 3.5, true)]
    [InlineData(3.2, 3.52, 1.5, 3.5, true)]
    [InlineData(3.2, 3.4, 1.5, 3.3, false)]
    [InlineData(0.1, 0.3, 1.5, 0.2, false)]
    [InlineData(4e-7, 0.3, 1.5, 0.1500002, false)]
    [InlineData(3 + Hair, 6.0, 1.0, 4.0, true)]
    [InlineData(3 + Little, 6.0, 1.0, 4.5, true)]
    [InlineData(3.5, 4.5 - 2 * Hair, 0.5, 4.0, true)]
    [InlineData(3.5, 4.5 - 2 * Little, 0.5, 3.5, true)]
    [InlineData(3.5 + Hair, 4.2, 0.5, 3.5, true)]
    [InlineData(3.5 + Little, 4.2, 0.5, 4.0, true)]
    [InlineData(3.2, 3.5 - Hair, 1.5, 3.5, true)]
    [InlineData(3.2, 3.5 - Little, 1.5, 3.349999, false)]
    public void The_recommended_cut(double least, double most, double allowance, double expected, bool onMark)
    {
        (double cut, bool marked) = CutRounding.Recommended(new Interval(least, most), allowance, Mark);
        Assert.Equal(expected, cut, 1e-9);
        Assert.Equal(onMark, marked);
    }

    /// <summary>Least and most cut, the wanted one, and what comes of it.</summary>
    [Theory]
    [InlineData(3.2, 4.6, 3.6, 4.0)]
    [InlineData(3.2, 4.6, 4.4, 4.5)]
    [InlineData(3.2, 4.6, 4.55, 4.5)]
    [InlineData(3.2, 4.6, 1.0, 3.5)]
    [InlineData(3.2, 4.6, 9.0, 4.5)]
    [InlineData(3.2, 4.6, 4 + Hair, 4.0)]
    [InlineData(3.2, 4.6, 4 + Little, 4.5)]
    [InlineData(3.2, 3.4, 3.3, 3.3)]
    [InlineData(3.2, 3.1, 3.3, 3.15)]
    [InlineData(3.2, 4.5 - Hair, 9.0, 4.5)]
    [InlineData(3.2, 4.5 - Little, 9.0, 4.0)]
    [InlineData(4 + Hair, 4.4, 4.2, 4.0)]
    [InlineData(4 + Little, 4.4, 4.2, 4.200001)]
    public void A_wanted_cut_on_a_mark(double least, double most, double wanted, double expected) =>
        Assert.Equal(expected, CutRounding.Marked(new Interval(least, most), wanted, Mark), 1e-9);

    [Theory]
    [InlineData(4.0, true)]
    [InlineData(7.5, true)]
    [InlineData(4.2, false)]
    [InlineData(4.25, false)]
    [InlineData(4 + Hair, true)]
    [InlineData(4 - Hair, true)]
    [InlineData(4 + Little, false)]
    [InlineData(4 - Little, false)]
    public void What_lies_on_a_mark(double cut, bool expected) => Assert.Equal(expected, CutRounding.IsOnMark(cut, Mark));
}
