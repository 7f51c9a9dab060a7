using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Threads;

/// <summary>What must hold of every pair of threads.</summary>
public class EngagementPropertyTests
{
    private const double Rounding = 1e-9;

    /// <summary>From 0.4 up to here the polynomial of C3 rises with 1/J, by a tenth of a percent, against its sense.</summary>
    private const double Peak = 0.429;

    private const double Rise = 0.0011;

    private static int Count => RandomCounts.Pairs;

    /// <summary>The strength ratio is moved from 0.05 to 20, each way, without an outside and with one of any width.</summary>
    [Fact]
    public void Required_engagement_never_falls_when_the_male_gets_stronger_or_the_female_weaker() => ForAll(random =>
    {
        ThreadedPair pair = RandomThreads.Pair(random);
        double areas = pair.FemaleShearAreaPerMillimeter.SquareMillimeters / pair.MaleShearAreaPerMillimeter.SquareMillimeters;
        double diameter = pair.External.Thread.Size.Diameter.Millimeters;
        foreach (double? width in new double?[] { null, diameter * (1 + (1.5 * random.NextDouble())) })
        {
            FemaleWall wall = new(width is { } mm ? Length.FromMillimeters(mm) : null);
            double last = 0;
            for (double ratio = 0.05; ratio < 20; ratio *= 1 + (0.03 * random.NextDouble()))
            {
                double fixedMPa = 200 + (1000 * random.NextDouble());
                Length stronger = pair.RequiredEngagement(MPa(ratio * areas * fixedMPa), MPa(fixedMPa), wall).Required;
                Length weaker = pair.RequiredEngagement(MPa(fixedMPa), MPa(fixedMPa / (ratio * areas)), wall).Required;
                Assert.Equal(stronger.Millimeters, weaker.Millimeters, Rounding * stronger.Millimeters);
                Assert.True(
                    stronger.Millimeters >= last - Millimeters.Negligible,
                    $"ratio {ratio}, width {width}: {stronger.Millimeters:R} after {last:R} mm");
                last = stronger.Millimeters;
            }
        }
    });

    /// <summary>
    /// Neither thread strips at a higher load when a class gets looser. Where an outside is known, bending turns with the ratio of the
    /// areas, so that what is held is compared within the method (0.4 &lt; 1/J &lt; 2.2), where bending gains less than the areas lose.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_looser_class_never_holds_more(bool outside)
    {
        int compared = 0;
        ForAll(random =>
        {
            ThreadSize size = RandomThreads.Size(random);
            (string[] external, string[] @internal) = RandomThreads.Chains(size.Form, random);
            FemaleWall wall = outside ? new(size.Diameter * (1.2 + random.NextDouble())) : FemaleWall.Unknown;
            string female = @internal[random.Next(@internal.Length)];
            string male = external[random.Next(external.Length)];
            IEnumerable<ThreadedPair> looserMales = external.Select(chosen => RandomThreads.Pair(size, chosen, female));
            IEnumerable<ThreadedPair> looserFemales = @internal.Select(chosen => RandomThreads.Pair(size, male, chosen));
            Pressure strength = MPa(300 + (1000 * random.NextDouble()));
            Pressure other = MPa(strength.Megapascals * (0.25 + (1.6 * random.NextDouble())));
            Length engaged = size.Diameter;
            foreach (ThreadedPair[] chain in new[] { looserMales.ToArray(), [.. looserFemales] })
            {
                for (int n = 1; n < chain.Length; n++)
                {
                    PairLoads tighter = chain[n - 1].Loads(strength, other, engaged, wall);
                    PairLoads looser = chain[n].Loads(strength, other, engaged, wall);
                    double slack = 1 / Ratio(chain[n - 1], strength, other, wall) < Peak ? Rise : Rounding;
                    if (((tighter.Caveats | looser.Caveats) & StrengthCaveats.BendingBeyondRange) == 0)
                    {
                        compared++;
                        Assert.True(looser.MaleStrip.Newtons <= tighter.MaleStrip.Newtons * (1 + Rounding), $"male of {chain[n]}");
                        Assert.True(looser.FemaleStrip.Newtons <= tighter.FemaleStrip.Newtons * (1 + slack), $"female of {chain[n]}");
                        Assert.True(looser.Tensile <= tighter.Tensile);
                    }
                }
            }
        });
        Assert.InRange(compared, Count, int.MaxValue);
    }

    [Fact]
    public void The_unit_of_a_length_or_a_strength_changes_nothing() => ForAll(random =>
    {
        ThreadSize size = RandomThreads.Size(random);
        (string[] external, string[] @internal) = RandomThreads.Chains(size.Form, random);
        ThreadSize inInches = size.Form == ThreadForm.Unified
            ? ThreadSize.Unified(Length.FromInches(size.Diameter.Inches), Length.FromInches(1) / size.Pitch)
            : ThreadSize.Metric(Length.FromInches(size.Diameter.Inches), Length.FromInches(size.Pitch.Inches));
        ThreadedPair metric = RandomThreads.Pair(size, external[0], @internal[^1]);
        ThreadedPair inch = RandomThreads.Pair(inInches, external[0], @internal[^1]);
        Pressure male = MPa(300 + (900 * random.NextDouble()));
        Pressure female = MPa(200 + (900 * random.NextDouble()));
        FemaleWall wall = new(size.Diameter * (1.2 + random.NextDouble()));
        FemaleWall inInch = new(Length.FromInches(wall.Width!.Value.Inches));
        StrengthEngagement one = metric.RequiredEngagement(male, female, wall);
        StrengthEngagement two = inch.RequiredEngagement(Ksi(male), Ksi(female), inInch);
        Assert.Equal(one.Required.Millimeters, two.Required.Millimeters, 1e-6);
        Assert.Equal(one.StrengthRatio, two.StrengthRatio, 1e-6);
        Assert.Equal(metric.StressArea.SquareMillimeters, inch.StressArea.SquareMillimeters, 1e-5);
        Assert.Equal(metric.TensileLoad(male).Newtons, inch.TensileLoad(Ksi(male)).Newtons, 1);
        Assert.Equal(metric.External.Printed.PitchLeast, inch.External.Printed.PitchLeast, 1e-7);
        Assert.Equal(one.Caveats, two.Caveats);
    });

    /// <summary>C1 alone turns with the width.</summary>
    [Fact]
    public void A_thinner_wall_never_needs_less() => ForAll(random =>
    {
        ThreadedPair pair = RandomThreads.Pair(random);
        Length diameter = pair.External.Thread.Size.Diameter;
        Pressure male = MPa(300 + (900 * random.NextDouble()));
        Pressure female = MPa(male.Megapascals * (0.3 + (2 * random.NextDouble())));
        double last = 0;
        for (double width = 2.2; width > 1.2; width -= 0.2 * random.NextDouble())
        {
            double needed = pair.RequiredEngagement(male, female, new(diameter * width)).Required.Millimeters;
            Assert.True(needed >= last * (1 - Rounding));
            last = needed;
        }
    });

    private static double Ratio(ThreadedPair pair, Pressure male, Pressure female, FemaleWall wall) =>
        pair.RequiredEngagement(male, female, wall).StrengthRatio;

    private static void ForAll(Action<Random> check)
    {
        for (int index = 0; index < Count; index++)
        {
            check(RandomCounts.For(index));
        }
    }

    private static Pressure MPa(double value) => Pressure.FromMegapascals(value);

    private static Pressure Ksi(Pressure value) => Pressure.FromKilopoundsForcePerSquareInch(value.KilopoundsForcePerSquareInch);
}
