using TieRodCalc.Planning;
using TieRodCalc.Tests.Planning;

namespace TieRodCalc.Tests.Yaml;

/// <summary>What a rod's open parts are chosen from, as the job file says it.</summary>
public class CandidateTests(ChoiceCatalogs catalogs) : IClassFixture<ChoiceCatalogs>
{
    [Fact]
    public void Any_lists_filters_and_names_leave_the_parts_that_they_say_in_the_order_of_the_catalog()
    {
        foreach ((_, CatalogCase catalog, ReadCatalog read, _) in catalogs.All)
        {
            RodCandidates candidates = read.Open.Candidates!;
            bool sleeves = catalog.SleeveWish is not null;

            Assert.Equal(
                catalog.Inner.Where(end => catalog.InnerWish.Takes(end.Id, end.Thread)).Select(end => end.Id),
                candidates.Inner.Select(end => end.Info.Id));
            Assert.Equal(
                catalog.Outer.Where(end => sleeves && catalog.OuterWish.Takes(end.Id, end.Thread)).Select(end => end.Id),
                candidates.Outer.Select(end => end.Info.Id));
            Assert.Equal(
                catalog.Sockets.Where(end => !sleeves && catalog.OuterWish.Takes(end.Id, end.Hole.Thread)).Select(end => end.Id),
                candidates.Sockets.Select(end => end.Info.Id));
            Assert.Equal(
                catalog.Sleeves
                    .Where(sleeve => catalog.SleeveWish is { } wish
                        && wish.Takes(sleeve.Id, sleeve.Inner.Thread)
                        && (wish.OuterThread is null || wish.OuterThread == sleeve.Outer.Thread))
                    .Select(sleeve => sleeve.Id),
                candidates.Sleeves.Select(sleeve => sleeve.Info.Id));
            Assert.Equal(
                catalog.Nuts.Where(nut => catalog.InnerNutWish.Takes(nut.Id, nut.Thread)).Select(nut => nut.Id),
                candidates.InnerNuts.Nuts.Select(nut => nut.Info.Id));
        }
    }

    [Theory]
    [InlineData("{thread: M18x1.5 LH}", new[] { "in-m18l-212" })]
    [InlineData("{thread: M18x1.5-6g LH}", new[] { "in-m18l-212" })]
    [InlineData("{thread: M18x1.5-4g6g LH}", new string[] { })]
    [InlineData("{thread: M18x1.5}", new string[] { })]
    [InlineData("[in-m18l-212, in-m18l-212]", new[] { "in-m18l-212" })]
    public void Inner_ends(string wish, string[] ids)
    {
        RodCandidates candidates =
            Marked.Check(Samples.Job.Replace("inner: in-m18l-212", $"inner: {wish}", StringComparison.Ordinal)).Job!.Rods[0].Candidates!;
        Assert.Equal(ids, candidates.Inner.Select(end => end.Info.Id));
    }
}
