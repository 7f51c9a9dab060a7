using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// What a choice looks at and what it passes over, on catalogs that are always the same ones. That what it finds is right is held by
/// <see cref="ChooseAgainstBruteForceTests"/>.
/// </summary>
public class ChoiceSearchTests(ITestOutputHelper output)
{
    private const int Catalogs = 60;

    private static readonly (CatalogCase Case, RodCandidates Candidates, RodRequest Request)[] s_catalogs =
    [
        .. Enumerable.Range(0, Catalogs).Select(RandomCatalogs.Draw).Concat(Enumerable.Range(0, 2).Select(RandomCatalogs.DrawLarge))
            .Select(drawn => (drawn, ReadCatalog.Of(drawn).Open))
            .Select(read => (read.drawn, read.Open.Candidates!, read.Open.Request!)),
    ];

    /// <summary>
    /// Counted, not derived: a bound that gets looser finds the same and looks at more. Where a bound gets better, the counts become less.
    /// </summary>
    [Theory]
    [InlineData(ChoiceOrder.Best, 1, 265)]
    [InlineData(ChoiceOrder.Best, 10, 1101)]
    [InlineData(ChoiceOrder.Cut, 1, 265)]
    [InlineData(ChoiceOrder.Cut, 10, 1119)]
    [InlineData(ChoiceOrder.Margin, 1, 802)]
    [InlineData(ChoiceOrder.Margin, 10, 1338)]
    [InlineData(ChoiceOrder.Price, 1, 480)]
    [InlineData(ChoiceOrder.Price, 10, 1123)]
    [InlineData(ChoiceOrder.Mass, 1, 470)]
    [InlineData(ChoiceOrder.Mass, 10, 1196)]
    public void No_more_is_looked_at_than_the_bounds_leave(ChoiceOrder order, int top, long expected)
    {
        long lookedAt = 0;
        long pairs = 0;
        foreach ((_, RodCandidates candidates, RodRequest request) in s_catalogs)
        {
            ChoiceBlocks blocks = new(candidates, request);
            ChoiceSearch search = new(blocks, order, top);
            Assert.InRange(search.Find().Count(), 0, top);
            lookedAt += search.LookedAt;
            pairs += blocks.Combinations;
        }

        output.WriteLine($"{lookedAt} looked at for {pairs} pairs");
        Assert.Equal(expected, lookedAt);
    }

    /// <summary>Each pair of each block, whether the bounds would have passed over it or not.</summary>
    [Fact]
    public void No_bound_is_below_what_a_pair_reaches()
    {
        int fitting = 0;
        foreach ((CatalogCase drawn, RodCandidates candidates, RodRequest request) in s_catalogs)
        {
            foreach (ChoiceBlock block in new ChoiceBlocks(candidates, request, every: true).All)
            {
                foreach (EndLengths inner in block.Inner.Ends)
                {
                    foreach (EndLengths outer in block.Outer.Ends)
                    {
                        if (block.Fits(inner, outer, out double cut, out double margin))
                        {
                            fitting++;
                            AssertBounded(block, inner, outer, cut, margin, $"{drawn}");
                        }
                    }
                }
            }
        }

        Assert.True(fitting > 500, $"only {fitting} fit");
    }

    /// <summary>A pair fits where its plan does, with the cut and the worst margin of the plan.</summary>
    [Fact]
    public void A_pair_fits_where_its_plan_does()
    {
        int cuts = 0;
        foreach ((CatalogCase drawn, RodCandidates candidates, RodRequest request) in s_catalogs.Take(Catalogs / 2))
        {
            ChoiceBlocks blocks = new(candidates, request, every: true);
            foreach (ChoiceBlock block in blocks.All)
            {
                foreach (EndLengths inner in block.Inner.Ends)
                {
                    foreach (EndLengths outer in block.Outer.Ends)
                    {
                        bool fits = block.Fits(inner, outer, out double cut, out double margin);
                        RodPlan plan = RodPlanner.Plan(RodJob.Made(blocks.Parts(block, inner.Place, outer.Place)), request);
                        if (fits != (plan.Solution is not null) || (fits && cut > 0 != (plan.Verdict == Verdict.BuildableAfterCutting)))
                        {
                            Assert.Fail($"{fits}, cut {cut}: {plan.Verdict} of {inner.Place}, {outer.Place} of\n{drawn}");
                        }

                        if (fits && cut > 0)
                        {
                            cuts++;
                            Assert.True(margin > plan.Solution!.WorstMargin.Millimeters - 1e-5, $"{margin} is at most");
                        }
                        else if (fits)
                        {
                            Assert.Equal(plan.Solution!.WorstMargin.Millimeters, margin, 1e-5);
                        }
                    }
                }
            }
        }

        Assert.True(cuts > 20, $"only {cuts} are cut");
    }

    [Fact]
    public void At_least_one_is_asked_for() => Assert.Throws<ArgumentOutOfRangeException>(
        "top", () => RodChooser.Choose(s_catalogs[0].Candidates, s_catalogs[0].Request, ChoiceOrder.Best, 0));

    [Fact]
    public void What_is_faulty_joins_nothing()
    {
        Measured tooShort = new(UnitsNet.Length.FromMillimeters(1));
        int joined = 0;
        foreach ((_, RodCandidates candidates, RodRequest request) in s_catalogs)
        {
            joined += new ChoiceBlocks(candidates, request).Combinations > 0 ? 1 : 0;
            ChoiceBlocks blocks = new(
                candidates with
                {
                    Sleeves = [.. candidates.Sleeves.Select(sleeve => sleeve with { Length = tooShort })],
                    Sockets = [.. candidates.Sockets.Select(socket => socket with { CenterToFace = tooShort })],
                },
                request,
                every: true);
            Assert.Equal(0, blocks.Combinations);
            Assert.Empty(blocks.All);
        }

        Assert.True(joined > Catalogs / 2, $"only {joined} join at all");
        Assert.Contains(s_catalogs, catalog => catalog.Candidates.Sockets.Count > 0);
        Assert.Contains(s_catalogs, catalog => catalog.Candidates.Sleeves.Count > 0);
    }

    [Fact]
    public void Combinations_that_no_named_nut_fits_are_counted()
    {
        int some = 0;
        foreach ((_, RodCandidates candidates, RodRequest request) in s_catalogs)
        {
            // A thread that no end of the catalogs has.
            ThreadDesignation other = new(
                ThreadSize.Metric(UnitsNet.Length.FromMillimeters(99), UnitsNet.Length.FromMillimeters(3)), Hand.Right);
            JamNut[] none = [.. candidates.InnerNuts.Nuts.Take(1).Select(nut => nut with { Thread = other })];
            if (none.Length == 0)
            {
                continue;
            }

            RodCandidates clocked = candidates with { Clocking = UnitsNet.Angle.Zero, InnerNuts = new(none, Must: true) };
            ChoiceBlocks blocks = new(clocked, request);
            Assert.Equal(blocks.Combinations, blocks.WithoutNut);
            Assert.Empty(blocks.All);
            some += blocks.Combinations > 0 ? 1 : 0;
        }

        Assert.True(some > 10, $"only {some} join at all");
    }

    [Fact]
    public void A_length_that_bent_ends_do_not_leave_finds_nothing()
    {
        foreach ((_, RodCandidates candidates, RodRequest request) in s_catalogs)
        {
            RodRequest tiny = request with { Target = UnitsNet.Length.FromMillimeters(1e-3), Shorter = UnitsNet.Length.Zero };
            RodCandidates clocked = candidates with { Clocking = UnitsNet.Angle.FromDegrees(180) };
            Assert.Empty(RodChooser.Choose(clocked, tiny, ChoiceOrder.Best, 1).Found);
        }
    }

    /// <summary>By price the currencies come in the order of their codes, whatever the amounts; what has two comes last.</summary>
    [Fact]
    public void Currencies_come_in_the_order_of_their_codes()
    {
        (_, RodCandidates candidates, RodRequest request) = s_catalogs.First(catalog =>
            RodChooser.Choose(catalog.Candidates with { Sleeves = [] }, catalog.Request, ChoiceOrder.Best, 1).Found.Count > 0);
        RodParts found = RodChooser.Choose(candidates with { Sleeves = [] }, request, ChoiceOrder.Best, 1).Found[0].Rod.Parts;
        string[] codes = ["USD", "AUD", "BBA", "ABZ", "BAA", "ABA"];
        PartInfo Priced(PartInfo info, string code, int amount) => info with { Price = new Price(amount, code) };
        RodCandidates priced = candidates with
        {
            Sleeves = [],
            Inner = [.. codes.Select((code, index) => found.Inner with { Info = Priced(found.Inner.Info, code, 10 - index) })],
            Sockets = [.. codes.Select((code, index) => found.Socket! with { Info = Priced(found.Socket!.Info, code, 20 + index) })],
            InnerNuts = NutCandidates.None,
        };
        RodChoice[] all = [.. RodChooser.Choose(priced, request, ChoiceOrder.Price, 100).Found];
        Assert.Equal(codes.Length * codes.Length, all.Length);
        Assert.Equal(
            codes.Order(StringComparer.Ordinal),
            all.Take(codes.Length).Select(choice => choice.Rod.Parts.Inner.Info.Price!.Currency));
        Assert.All(all.Skip(codes.Length), choice => Assert.NotEqual(
            choice.Rod.Parts.Inner.Info.Price!.Currency, choice.Rod.Parts.Socket!.Info.Price!.Currency));
    }

    private static void AssertBounded(ChoiceBlock block, EndLengths inner, EndLengths outer, double cut, double margin, string what)
    {
        Assert.True(block.MayReach, what);
        Assert.True(margin <= block.MostMarginCut + 1e-6, what);
        if (cut == 0)
        {
            Assert.True(margin <= block.MostMargin + 1e-6, what);
            Assert.True(margin <= block.MostMarginOf(inner) + 1e-6, what);
        }

        ReadOnlySpan<EndLengths> window = block.Window(inner, cut > 0 ? 0 : margin, cut);
        bool inside = false;
        foreach (ref readonly EndLengths each in window)
        {
            inside |= each.Place == outer.Place;
        }

        Assert.True(inside, what);
    }
}
