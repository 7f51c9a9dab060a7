namespace TieRodCalc.Tests.Planning;

/// <summary>Draws which parts of a catalog a rod leaves open: mostly any, now and then a list, a filter or one alone.</summary>
internal static class RandomWishes
{
    /// <summary>The catalog with wishes for its rod.</summary>
    public static CatalogCase In(CatalogCase catalog, Random random) => new Drawing(random).In(catalog);

    private sealed class Drawing(Random random)
    {
        public CatalogCase In(CatalogCase catalog) => catalog with
        {
            InnerWish = Wish([.. catalog.Inner.Select(end => (end.Id, end.Thread))]),
            OuterWish = OuterWish(catalog),
            InnerNutWish = NutWish(catalog),
            OuterNutWish = catalog.OuterNutWish is null ? null : NutWish(catalog),
            SleeveWish = catalog.SleeveWish is null ? null : SleeveWish(catalog),
        };

        /// <summary>Lists may hold outer ends of the other sort; one that is named must be of the sort that the rod has.</summary>
        private Wish OuterWish(CatalogCase catalog)
        {
            (string Id, ThreadCase Thread)[] threaded = [.. catalog.Outer.Select(end => (end.Id, end.Thread))];
            (string Id, ThreadCase Thread)[] sockets = [.. catalog.Sockets.Select(socket => (socket.Id, socket.Hole.Thread))];
            Wish wish = Wish([.. threaded, .. sockets]);
            return wish.Id is null ? wish : wish with { Id = Pick(catalog.SleeveWish is null ? sockets : threaded).Id };
        }

        private Wish SleeveWish(CatalogCase catalog)
        {
            Wish wish = Wish([.. catalog.Sleeves.Select(sleeve => (sleeve.Id, sleeve.Inner.Thread))]);
            return wish.Thread is not null && Chance(0.5) ? wish with { OuterThread = Pick([.. catalog.Sleeves]).Outer.Thread } : wish;
        }

        /// <summary>Seldom none, or one by its id; a filter here names a thread that other joints need not have.</summary>
        private Wish NutWish(CatalogCase catalog) => random.Next(12) switch
        {
            0 => new Wish { None = true },
            1 when catalog.Nuts.Count > 0 => new Wish { Id = Pick([.. catalog.Nuts]).Id },
            2 when catalog.Nuts.Count > 0 => Wish([.. catalog.Nuts.Select(nut => (nut.Id, nut.Thread))]),
            _ => Planning.Wish.Any,
        };

        private Wish Wish((string Id, ThreadCase Thread)[] parts) => random.Next(9) switch
        {
            0 => new Wish { Ids = [.. Shuffled([.. parts.Where(_ => Chance(0.7)).Select(part => part.Id).DefaultIfEmpty(parts[0].Id)])] },
            1 => new Wish { Thread = Pick(parts).Thread },
            2 when Chance(0.3) => new Wish { Id = Pick(parts).Id },
            _ => Planning.Wish.Any,
        };

        private T[] Shuffled<T>(T[] parts)
        {
            random.Shuffle(parts);
            return parts;
        }

        private T Pick<T>(T[] from) => from[random.Next(from.Length)];

        private bool Chance(double of) => random.NextDouble() < of;
    }
}
