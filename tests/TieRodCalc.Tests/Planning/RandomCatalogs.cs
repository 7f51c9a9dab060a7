using TieRodCalc.Parts;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// Draws small catalogs in which much goes together, much does not, and much comes to the same: parts that differ in id, price or mass
/// alone, or in the unit that they are stated in. The ranges are invented.
/// </summary>
internal static class RandomCatalogs
{
    private static readonly (bool Unified, double Diameter, double Pitch)[] s_threads =
        [(true, 0.625, 18), (true, 0.75, 16), (false, 16, 1.5), (false, 16, 2), (false, 18, 1.5)];

    /// <summary>A few parts of each kind.</summary>
    public static CatalogCase Draw(int index) => new Drawing(RandomCounts.For(500_000 + index), 2, 5).Catalog();

    /// <summary>So many parts of each kind that what cannot be among the first can be passed over.</summary>
    public static CatalogCase DrawLarge(int index) => new Drawing(RandomCounts.For(900_000 + index), 12, 22).Catalog();

    private sealed class Drawing(Random random, int fewest, int most)
    {
        private readonly bool _onGrid = random.Next(2) == 0;
        private readonly bool _inches = random.Next(2) == 0;
        private readonly bool _oneCurrency = random.Next(3) > 0;
        private readonly bool _allPriced = random.Next(2) == 0;
        private readonly bool _allWeighed = random.Next(2) == 0;
        private readonly StockCase[] _stocks =
        [
            new("steel", MaterialKind.Steel, 850), new("alloy", MaterialKind.Aluminum, 310), new("soft", MaterialKind.Steel, null),
        ];

        public CatalogCase Catalog()
        {
            ThreadCase[] innerThreads = [Thread(), Thread()];
            ThreadCase[] outerThreads = [Opposite(innerThreads[0]), Thread(), Chance(0.3) ? innerThreads[0] : Thread()];
            EndCase[] inner = Doubled('i', id => End(id, Mostly(innerThreads), 130, 210), Twin);
            EndCase[] outer = Doubled('o', id => End(id, Mostly(outerThreads), 60, 110), Twin);
            SleeveCase[] sleeves = Doubled(
                's', id => Sleeve(id, Mostly(innerThreads), Mostly(outerThreads)), (sleeve, id) => sleeve with { Id = id, Cost = Cost() });
            List<NutCase> nuts = [];
            foreach (ThreadCase thread in innerThreads.Concat(outerThreads).Distinct().Where(_ => Chance(0.85)))
            {
                nuts.AddRange(
                    Enumerable.Range(0, random.Next(1, 4)).Select(_ => new NutCase(string.Empty, Cost(), thread, Few(6, 8, 8, 11))));
            }

            CatalogCase catalog = new()
            {
                Stocks = _stocks,
                Inner = inner,
                Sleeves = sleeves,
                Outer = outer,
                Nuts = [.. nuts.OrderBy(_ => random.Next()).Select((nut, i) => nut with { Id = $"n{i}" })],
                Target = default,
                Shorter = default,
                Longer = default,
                ClockingDegrees = Chance(0.6) ? Math.Round(Between(0, 180)) : null,
                TipGap = Chance(0.7) ? Dim.OfMm(3) : On(Between(0, 10)),
                Engagement = random.Next(4) switch
                {
                    0 => new EngagementCase(Math.Round(Between(0.8, 1.8), 1), null),
                    1 => new EngagementCase(null, On(Between(14, 28))),
                    _ => null,
                },
            };
            return RandomWishes.In(WithSockets(Aimed(catalog), innerThreads), random);
        }

        /// <summary>A target near what one combination gives, the adjustment of some turns.</summary>
        private CatalogCase Aimed(CatalogCase catalog)
        {
            SleeveCase sleeve = Pick([.. catalog.Sleeves]);
            EndCase inner = PickFor(catalog.Inner, sleeve.Inner.Thread);
            EndCase outer = PickFor(catalog.Outer, sleeve.Outer.Thread);
            double axial = inner.CenterToTip.Mm + outer.CenterToTip.Mm + sleeve.Length.Mm
                - Between(0.75, 1.15) * (sleeve.Inner.Depth.Mm + sleeve.Outer.Depth.Mm) - (Chance(0.4) ? Between(0, 25) : 0);
            double adjust = Few(0, 1.5, 3, 4).Mm;
            return catalog with
            {
                Target = On(axial + Between(0, 2)),
                Shorter = On(Chance(0.2) ? adjust * Between(0, 1.5) : adjust),
                Longer = On(Chance(0.2) ? adjust * Between(0, 1.5) : adjust),
            };
        }

        /// <summary>Some outer ends with a socket, as long as the rod needs them; now and then the rod is to have one of them.</summary>
        private CatalogCase WithSockets(CatalogCase catalog, ThreadCase[] threads)
        {
            if (Chance(0.5))
            {
                return catalog;
            }

            bool oneJoint = Chance(0.4);
            return catalog with
            {
                SleeveWish = oneJoint ? null : catalog.SleeveWish,
                OuterNutWish = oneJoint && Chance(0.5) ? null : catalog.OuterNutWish,
                Sockets = [.. Enumerable.Range(0, Count()).Select(i => Socket($"k{i}", catalog, Hole(Mostly(threads))))],
            };
        }

        private SocketCase Socket(string id, CatalogCase catalog, HoleCase hole)
        {
            double center = catalog.Target.Mm - Pick([.. catalog.Inner]).CenterToTip.Mm + Between(0.6, 1.2) * hole.Depth.Mm;
            return new SocketCase(id, Cost(), Chance(0.5) ? Pick(_stocks) : null, On(Math.Max(hole.Depth.Mm + 1, center)), hole);
        }

        private EndCase End(string id, ThreadCase thread, double shortest, double longest)
        {
            Dim center = On(Between(shortest, longest));
            return new EndCase
            {
                Id = id,
                Cost = Cost(),
                Stock = Chance(0.2) ? _stocks[0] : null,
                Thread = thread,
                CenterToTip = center,
                ThreadLength = On(Math.Min(Between(50, 95), center.Mm - 4)),
                Lead = Chance(0.5) ? null : On(Between(1, 3)),
                Offset = Chance(0.25) ? On(Between(6, 20)) : default,
                MaxCut = Chance(0.6) ? On(Between(2, 35)) : default,
            };
        }

        private SleeveCase Sleeve(string id, ThreadCase inner, ThreadCase outer)
        {
            HoleCase innerHole = Hole(inner);
            HoleCase outerHole = Hole(outer);
            double depths = innerHole.Depth.Mm + outerHole.Depth.Mm;
            StockCase? stock = random.Next(3) switch { 0 => null, 1 => _stocks[1], _ => Pick(_stocks) };
            OutsideCase? outside = Chance(0.3) ? new OutsideCase(OutsideShape.Hexagon, Dim.OfMm(30)) : null;
            return new SleeveCase(id, Cost(), stock, On(depths + 1 + Between(0, 50)), innerHole, outerHole, outside);
        }

        private HoleCase Hole(ThreadCase thread)
        {
            Dim depth = On(Between(30, 50));
            return new HoleCase
            {
                Thread = thread,
                Depth = depth,
                Bore = Chance(0.5) ? Bore.Closed : Bore.Open,
                Countersink = Chance(0.5) ? null : On(Between(0.5, 2)),
                Witness = Chance(0.15) ? On(Between(0.4, 0.8) * depth.Mm) : null,
                Clamp = Chance(0.15) ? On(Between(0.3, 0.8) * depth.Mm) : null,
            };
        }

        /// <summary>Parts of which some come a second time by another id.</summary>
        private T[] Doubled<T>(char letter, Func<string, T> draw, Func<T, string, T> twin)
        {
            List<T> parts = [];
            int count = Count();
            for (int i = 0; i < count; i++)
            {
                T part = draw($"{letter}{i}");
                parts.Add(part);
                if (Chance(0.3))
                {
                    parts.Insert(random.Next(parts.Count + 1), twin(part, $"{letter}twin{i}"));
                }
            }

            return [.. parts];
        }

        /// <summary>The same end, its lengths now and then stated in another unit: they are equal but for the last bits.</summary>
        private EndCase Twin(EndCase end, string id)
        {
            bool otherUnit = Chance(0.5);
            Dim Stated(Dim dimension) =>
                otherUnit && dimension.InInches ? Dim.OfMm((double)((decimal)dimension.Value * 25.4m)) : dimension;
            return end with
            {
                Id = id,
                Cost = Cost(),
                CenterToTip = Stated(end.CenterToTip),
                ThreadLength = Stated(end.ThreadLength),
            };
        }

        private CostCase Cost() => new(
            _allPriced || Chance(0.8) ? random.Next(8, 20) * 1m + random.Next(0, 4) * 0.01m : null,
            _oneCurrency || Chance(0.7) ? "USD" : "EUR",
            _allWeighed || Chance(0.8) ? random.Next(2, 12) * 0.05m : null);

        private EndCase PickFor(IReadOnlyList<EndCase> ends, ThreadCase thread) =>
            Pick([.. ends.Where(end => end.Thread == thread).DefaultIfEmpty(ends[0])]);

        private ThreadCase Thread()
        {
            (bool unified, double diameter, double pitch) = Pick(s_threads);
            return new ThreadCase(unified, diameter, pitch, Chance(0.5) ? Hand.Left : Hand.Right);
        }

        private static ThreadCase Opposite(ThreadCase thread) => thread with { Hand = thread.Hand == Hand.Left ? Hand.Right : Hand.Left };

        private ThreadCase Mostly(ThreadCase[] threads) => Chance(0.6) ? threads[0] : Pick(threads);

        private T Pick<T>(T[] from) => from[random.Next(from.Length)];

        private Dim Few(params double[] mm) => Dim.OfMm(Pick(mm));

        private int Count() => random.Next(fewest, most + 1);

        private bool Chance(double of) => random.NextDouble() < of;

        private double Between(double low, double high) => low + (high - low) * random.NextDouble();

        private Dim On(double mm) => (_onGrid, _inches) switch
        {
            (true, true) => Dim.OfInches(Math.Round(mm / 25.4 * 64) / 64),
            (true, false) => Dim.OfMm(Math.Round(mm * 2) / 2),
            (_, true) => Dim.OfInches(Math.Round(mm / 25.4, 5)),
            _ => Dim.OfMm(Math.Round(mm, 4)),
        };
    }
}
