using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Benchmarks;

/// <summary>Generated catalogs: as many inner ends, sleeves and outer ends as asked for, of 18 threads, invented.</summary>
internal static class ChoiceCatalog
{
    private static readonly (double Diameter, double Pitch)[] s_sizes =
        [(10, 1.25), (12, 1.25), (14, 1.5), (16, 1.5), (18, 1.5), (20, 1.5), (22, 1.5), (24, 1.5), (27, 2)];

    /// <summary>A catalog.</summary>
    /// <param name="count">How many of each kind.</param>
    /// <param name="seed">What it is drawn from.</param>
    public static RodCandidates Of(int count, int seed)
    {
        Random random = new(seed);
        return new RodCandidates
        {
            Inner = [.. Enumerable.Range(0, count).Select(i => End(random, $"in-{i}", 120, 320))],
            Sleeves = [.. Enumerable.Range(0, count).Select(i => Sleeve(random, $"sl-{i}"))],
            Outer = [.. Enumerable.Range(0, count).Select(i => End(random, $"out-{i}", 50, 110))],
            InnerNuts = new(Nuts(), Must: false),
            OuterNuts = new(Nuts(), Must: false),
            Clocking = Angle.FromDegrees(90),
        };
    }

    private static Measured Mm(double value) => new(Length.FromMillimeters(value));

    /// <summary>What is larger costs and weighs more, and one part in three a quarter more than that.</summary>
    private static PartInfo Info(string id, double size)
    {
        double cost = id.Length % 3 == 0 ? 1.25 * size : size;
        return new(id) { Price = new(Math.Round((decimal)cost / 8, 2), "USD"), Mass = Mass.FromKilograms(Math.Round(cost / 400, 3)) };
    }

    private static double Half(Random random, double low, double high) => Math.Round((low + random.NextDouble() * (high - low)) * 2) / 2;

    private static ThreadDesignation Thread(int size, Hand hand) =>
        new(ThreadSize.Metric(Length.FromMillimeters(s_sizes[size].Diameter), Length.FromMillimeters(s_sizes[size].Pitch)), hand);

    private static ThreadedEnd End(Random random, string id, double shortest, double longest)
    {
        int size = random.Next(s_sizes.Length);
        double center = Half(random, shortest, longest);
        double thread = Math.Min(center - 20, Half(random, 30, 100));
        return new ThreadedEnd
        {
            Info = Info(id, center),
            Thread = Thread(size, random.Next(2) == 0 ? Hand.Left : Hand.Right),
            CenterToTip = Mm(center),
            ThreadLength = Mm(thread),
            Lead = random.Next(2) == 0 ? Mm(2) : null,
            Offset = random.Next(12) == 0 ? Mm(10 + 5 * random.Next(2)) : default,
            MaxCut = random.Next(2) == 0 ? Mm(Half(random, 5, thread / 2)) : default,
        };
    }

    private static Sleeve Sleeve(Random random, string id)
    {
        double inner = Half(random, 25, 65);
        double outer = Half(random, 25, 65);
        Hand hand = random.Next(2) == 0 ? Hand.Left : Hand.Right;
        Hand other = random.Next(10) == 0 ? hand : hand == Hand.Left ? Hand.Right : Hand.Left;
        return new Sleeve
        {
            Info = Info(id, inner + outer),
            Length = Mm(inner + outer + Half(random, 0, 120)),
            Inner = Hole(random, Thread(random.Next(s_sizes.Length), hand), inner),
            Outer = Hole(random, Thread(random.Next(s_sizes.Length), other), outer),
        };
    }

    private static TappedHole Hole(Random random, ThreadDesignation thread, double depth) =>
        new() { Thread = thread, Depth = Mm(depth), Bore = random.Next(3) == 0 ? Bore.Open : Bore.Closed };

    private static JamNut[] Nuts() =>
    [
        .. Enumerable.Range(0, s_sizes.Length - 1).SelectMany(size => new[] { Hand.Left, Hand.Right }.Select(hand => new JamNut
        {
            Info = Info($"jn-{size}-{hand}", 10),
            Thread = Thread(size, hand),
            Thickness = Mm(s_sizes[size].Diameter / 2),
        })),
    ];
}
