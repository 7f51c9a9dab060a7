using TieRodCalc.Threads;
using UnitsNet;
using static TieRodCalc.Tests.Threads.Pairs;

namespace TieRodCalc.Tests.Threads;

/// <summary>
/// The factors C1, C2 and C3 at the ends of their ranges and beyond. E. M. Alexander, SAE paper 770420, and ISO/TR 16224; from memory,
/// unconfirmed.
/// </summary>
public class StripFactorsTests
{
    private const double Thick = 2;

    /// <summary>
    /// C2 by hand: at 1.2, 5.594 - 16.4184 + 20.3141 - 10.4665 + 1.9394 = 0.9626; at 1.5, 1.1043; at 1.95 less than 0.001 more than the
    /// least of what follows; at 2.1, 1.1696. C3: at 0.4, 1.0552; at 0.45, 1.0557; at 0.7, 0.9918; at 0.9, 0.9191.
    /// </summary>
    [Theory]
    [InlineData(0.999999, 0.897, 0.897)]
    [InlineData(1, 0.897, 0.897)]
    [InlineData(1.000001, 0.8973, 0.897)]
    [InlineData(1.2, 0.9626, 0.897)]
    [InlineData(1.5, 1.1043, 0.897)]
    [InlineData(2.1, 1.1696, 0.897)]
    [InlineData(2.199999, 1.1865, 0.897)]
    [InlineData(0.9, 0.897, 0.9191)]
    [InlineData(0.7, 0.897, 0.9918)]
    [InlineData(0.45, 0.897, 1.0557)]
    [InlineData(0.400001, 0.897, 1.0552)]
    public void Bending_within_the_range_is_the_polynomial(double Rs, double male, double female)
    {
        StripFactors factors = StripFactors.Of(Thick, false, 1 / Rs);
        Assert.Equal(male, factors.MaleBending, 0.0001);
        Assert.Equal(female, factors.FemaleBending, 0.0001);
        Assert.Equal(StrengthCaveats.None, factors.Caveats);
    }

    /// <summary>From 1.80 to 2.02 the polynomial lies within 0.001 of its least there, and that least is taken.</summary>
    [Theory]
    [InlineData(1.82, 1.168)]
    [InlineData(1.95, 1.1676)]
    [InlineData(2, 1.1668)]
    public void Where_the_polynomial_dips_no_more_is_counted(double Rs, double polynomial)
    {
        double counted = StripFactors.Of(Thick, false, 1 / Rs).MaleBending;
        Assert.InRange(counted, polynomial - 0.0015, polynomial);
        Assert.Equal(1.16673, counted, 0.00001);
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(0.399999)]
    [InlineData(0.05)]
    public void A_female_far_weaker_is_beyond_the_range(double Rs)
    {
        StripFactors factors = StripFactors.Of(Thick, false, 1 / Rs);
        Assert.Equal(new StripFactors(1, 0.897, 1, StrengthCaveats.BendingBeyondRange), factors);
    }

    [Theory]
    [InlineData(2.2)]
    [InlineData(3)]
    [InlineData(20)]
    public void A_female_far_stronger_is_beyond_the_range_and_keeps_the_last_value(double Rs)
    {
        StripFactors factors = StripFactors.Of(Thick, false, 1 / Rs);
        Assert.Equal(1.1865, factors.MaleBending, 0.0001);
        Assert.Equal(0.897, factors.FemaleBending);
        Assert.Equal(StrengthCaveats.BendingBeyondRange, factors.Caveats);
    }

    /// <summary>By hand: at 1.4, -1.96 + 5.32 - 2.61 = 0.75; at 1.6, -2.56 + 6.08 - 2.61 = 0.91; at 1.9, 1.</summary>
    [Theory]
    [InlineData(1, 0.75, StrengthCaveats.SleeveTooThin)]
    [InlineData(1.3999, 0.75, StrengthCaveats.SleeveTooThin)]
    [InlineData(1.4, 0.75, StrengthCaveats.None)]
    [InlineData(1.6, 0.91, StrengthCaveats.None)]
    [InlineData(1.9, 1, StrengthCaveats.None)]
    [InlineData(1.899999, 1, StrengthCaveats.None)]
    [InlineData(2.5, 1, StrengthCaveats.None)]
    [InlineData(10, 1, StrengthCaveats.None)]
    public void Dilation_is_that_of_the_wall(double width, double dilation, StrengthCaveats caveats)
    {
        StripFactors factors = StripFactors.Of(width, false, 1);
        Assert.Equal(dilation, factors.Dilation, 0.000001);
        Assert.Equal(caveats, factors.Caveats);
        Assert.Equal(caveats | StrengthCaveats.SleeveSlit, StripFactors.Of(width, true, 1).Caveats);
    }

    /// <summary>Sixteenths and the doubles they make: 1.4 diameters are 1.4 diameters.</summary>
    [Fact]
    public void A_wall_of_just_1_4_diameters_is_not_too_thin() =>
        Assert.Equal(StrengthCaveats.None, StripFactors.Of(1.4 - 5e-7, false, 1).Caveats);

    [Theory]
    [InlineData(false, StrengthCaveats.OutsideUnknown)]
    [InlineData(true, StrengthCaveats.OutsideUnknown | StrengthCaveats.SleeveSlit)]
    public void Nothing_is_counted_of_an_outside_that_is_not_known(bool slit, StrengthCaveats caveats) =>
        Assert.Equal(new StripFactors(1, 1, 1, caveats), StripFactors.Of(null, slit, 20));

    [Fact]
    public void A_pair_says_which_factors_were_computed()
    {
        ThreadedPair pair = Pair("M18x1.5-6g", "M18x1.5-6H");
        FemaleWall wall = new(Length.FromMillimeters(40));
        StrengthEngagement even = Engagement(pair, 1000, 900, wall);
        Assert.InRange(even.StrengthRatio, 0.5, 1);
        Assert.NotNull(even.MaleBending);
        Assert.NotNull(even.FemaleBending);
        StrengthEngagement weaker = Engagement(pair, 1000, 500, wall);
        Assert.InRange(weaker.StrengthRatio, 1, 2.4);
        Assert.NotNull(weaker.MaleBending);
        Assert.NotNull(weaker.FemaleBending);
        StrengthEngagement strong = Engagement(pair, 100, 2000, wall);
        Assert.Null(strong.MaleBending);
        Assert.Equal(0.897, strong.FemaleBending);
        Assert.Equal(StrengthCaveats.BendingBeyondRange, strong.Caveats);
        StrengthEngagement weak = Engagement(pair, 2000, 100, wall);
        Assert.Equal(0.897, weak.MaleBending);
        Assert.Null(weak.FemaleBending);
        Assert.Equal(StrengthCaveats.BendingBeyondRange, weak.Caveats);
    }

    [Theory]
    [InlineData(null, false, null)]
    [InlineData(25d, false, null)]
    [InlineData(30d, true, null)]
    [InlineData(40d, false, 1d)]
    public void A_dilation_outside_the_method_is_not_told(double? width, bool slit, double? dilation)
    {
        ThreadedPair pair = Pair("M18x1.5-6g", "M18x1.5-6H");
        FemaleWall wall = new(width is { } mm ? Length.FromMillimeters(mm) : null, slit);
        Assert.Equal(dilation, pair.DilationOf(wall));
        Assert.Equal(dilation, Engagement(pair, 800, 800, wall).Dilation);
    }

    [Fact]
    public void A_thread_beyond_the_tables_is_told()
    {
        StrengthEngagement engagement = Engagement(Pair("M16x1.1-6g", "M16x1.1-6H"), 800, 800, FemaleWall.Unknown);
        Assert.Equal(StrengthCaveats.OutsideUnknown | StrengthCaveats.BeyondTables, engagement.Caveats);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_strength_or_a_width_that_cannot_be_is_refused(double value)
    {
        ThreadedPair pair = Pair("M18x1.5-6g", "M18x1.5-6H");
        Pressure good = Pressure.FromMegapascals(800);
        Assert.ThrowsAny<ArgumentException>(() => pair.RequiredEngagement(Pressure.FromMegapascals(value), good, FemaleWall.Unknown));
        Assert.ThrowsAny<ArgumentException>(() => pair.RequiredEngagement(good, Pressure.FromMegapascals(value), FemaleWall.Unknown));
        Assert.ThrowsAny<ArgumentException>(() => pair.RequiredEngagement(good, good, new(Length.FromMillimeters(value))));
        Assert.ThrowsAny<ArgumentException>(() => pair.TensileLoad(Pressure.FromMegapascals(value)));
    }

    private static StrengthEngagement Engagement(ThreadedPair pair, double maleMPa, double femaleMPa, FemaleWall wall) =>
        pair.RequiredEngagement(Pressure.FromMegapascals(maleMPa), Pressure.FromMegapascals(femaleMPa), wall);
}
