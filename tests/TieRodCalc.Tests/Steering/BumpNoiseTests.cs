using TieRodCalc.Steering;
using UnitsNet;
using Xunit.Abstractions;
using static System.FormattableString;

namespace TieRodCalc.Tests.Steering;

/// <summary>How the readings of an indicator are off by its resolution.</summary>
public enum ReadingNoise
{
    /// <summary>A normal error, the resolution its standard deviation.</summary>
    Normal,

    /// <summary>Rounded to the resolution.</summary>
    Rounded,

    /// <summary>Anything within the resolution, evenly.</summary>
    Uniform,
}

/// <summary>
/// What indicators are off by stays inside the uncertainty that is told: random corners are read exactly and with noise, and the
/// changes compared.
/// </summary>
public class BumpNoiseTests(ITestOutputHelper output)
{
    /// <summary>Of cases that have to lie inside; two standard errors hold 95 in a hundred.</summary>
    private const double Inside = 0.9;

    private const int Fewest = 4;

    private const double FinestInches = 0.0005;
    private const double CoarsestInches = 0.002;

    [Theory]
    [InlineData(ReadingNoise.Normal, IndicatorZero.Once)]
    [InlineData(ReadingNoise.Normal, IndicatorZero.EachStep)]
    [InlineData(ReadingNoise.Rounded, IndicatorZero.Once)]
    [InlineData(ReadingNoise.Rounded, IndicatorZero.EachStep)]
    [InlineData(ReadingNoise.Uniform, IndicatorZero.Once)]
    [InlineData(ReadingNoise.Uniform, IndicatorZero.EachStep)]
    public void Noise_of_the_resolution_stays_inside_the_uncertainty(ReadingNoise noise, IndicatorZero zeroed)
    {
        Dictionary<string, (int Inside, int All)> counts = [];
        void Count(string name, BumpAdvice? exact, BumpAdvice? noisy, Func<BumpChange, Length> of)
        {
            // Where no finite length does, in one of the two, nothing is told that could be held against anything.
            if (exact is not null && noisy is not null)
            {
                double off = (of(noisy.Change) - of(exact.Change)).Millimeters;
                (int inside, int all) = counts.GetValueOrDefault(name);
                counts[name] = (inside + (Math.Abs(off) <= of(noisy.Uncertainty!.Value).Millimeters ? 1 : 0), all + 1);
            }
        }

        for (int index = 0; index < RandomCounts.BumpCorners; index++)
        {
            CornerGeometry corner = RandomCorners.Draw(index).Geometry;
            Random random = RandomCounts.For(3_000_000 + index);
            double resolution = Millimeters.Inch * (FinestInches + (CoarsestInches - FinestInches) * random.NextDouble());
            if (BumpSheets.Of(corner, resolution) is not { } once)
            {
                continue;
            }

            // Uneven travels, more of them on one side: over even ones a change alone is that of both together.
            once = once with { Readings = [.. once.Readings.OrderBy(_ => random.Next()).Take(random.Next(Fewest, once.Readings.Count))] };
            BumpSheet sheet = zeroed == IndicatorZero.Once ? once : BumpSheets.ZeroedEachStep(once);
            BumpFindings exact = BumpSheets.Read(corner.Steering, sheet);
            BumpFindings noisy = BumpSheets.Read(corner.Steering, Noisy(sheet, noise, resolution, random));
            Count("height", exact.Both, noisy.Both, change => change.OuterRaised);
            Count("length", exact.Both, noisy.Both, change => change.RodLonger);
            Count("height alone", exact.HeightAlone, noisy.HeightAlone, change => change.OuterRaised);
            Count("length alone", exact.LengthAlone, noisy.LengthAlone, change => change.RodLonger);
            Assert.Equal(0, noisy.HeightAlone!.Uncertainty!.Value.RodLonger.Millimeters);
            Assert.Equal(0, noisy.LengthAlone?.Uncertainty!.Value.OuterRaised.Millimeters ?? 0);
        }

        output.WriteLine(Invariant($"{noise}, zeroed {zeroed}: ")
            + string.Join(", ", counts.Select(count => Invariant(
                $"{count.Key} {(double)count.Value.Inside / count.Value.All:P1} of {count.Value.All}"))));
        Assert.Equal(4, counts.Count);
        Assert.All(counts.Values, count => Assert.InRange(count.All, RandomCounts.BumpCorners * 9 / 10, RandomCounts.BumpCorners));
        Assert.All(counts.Values, count => Assert.InRange((double)count.Inside / count.All, Inside, 1));
    }

    /// <summary>It is not simply large: normal noise of twice the uncertainty's own leaves it more often than one time in ten.</summary>
    [Fact]
    public void Twice_the_noise_does_not_stay_inside()
    {
        int inside = 0;
        int all = 0;
        for (int index = 0; index < RandomCounts.BumpCorners; index++)
        {
            CornerGeometry corner = RandomCorners.Draw(index).Geometry;
            if (BumpSheets.Of(corner) is not { } sheet)
            {
                continue;
            }

            BumpSheet doubled = Noisy(sheet, ReadingNoise.Normal, 2 * BumpSheets.Resolution, RandomCounts.For(3_500_000 + index));
            if (BumpSheets.Read(corner.Steering, sheet).Both is { } exact && BumpSheets.Read(corner.Steering, doubled).Both is { } noisy)
            {
                // The uncertainty of the exact sheet: the other one may have grown with what its readings show.
                all++;
                double off = (noisy.Change.OuterRaised - exact.Change.OuterRaised).Millimeters;
                inside += Math.Abs(off) <= exact.Uncertainty!.Value.OuterRaised.Millimeters ? 1 : 0;
            }
        }

        output.WriteLine(Invariant($"{(double)inside / all:P1} inside"));
        Assert.InRange((double)inside / all, 0.5, Inside);
    }

    private static BumpSheet Noisy(BumpSheet sheet, ReadingNoise noise, double resolution, Random random) => sheet with
    {
        Readings =
        [
            .. sheet.Readings.Select(reading => reading with
            {
                Front = Off(reading.Front, noise, resolution, random),
                Rear = Off(reading.Rear, noise, resolution, random),
            }),
        ],
    };

    private static Length Off(Length reading, ReadingNoise noise, double resolution, Random random) => BumpSheets.Mm(noise switch
    {
        ReadingNoise.Rounded => Math.Round(reading.Millimeters / resolution) * resolution,
        ReadingNoise.Uniform => reading.Millimeters + resolution * (2 * random.NextDouble() - 1),
        _ => reading.Millimeters + resolution * Normal(random),
    });

    /// <summary>A number of the standard normal distribution (Box and Muller).</summary>
    internal static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
