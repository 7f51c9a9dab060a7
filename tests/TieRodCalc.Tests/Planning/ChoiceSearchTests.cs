using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
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
