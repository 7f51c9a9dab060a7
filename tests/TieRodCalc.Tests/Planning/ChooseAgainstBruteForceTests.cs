using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>The choice from random catalogs is what trying every combination gives, the order included.</summary>
public class ChooseAgainstBruteForceTests(ChoiceCatalogs catalogs) : IClassFixture<ChoiceCatalogs>
{
    private const double Tolerance = 1e-6;
    private const int Everything = 100_000;

    [Fact]
    public void The_usual_order() => Compare(ChoiceOrder.Best, ChoiceRanking.Usual);

    [Fact]
    public void By_margin() => Compare(ChoiceOrder.Margin, ChoiceRanking.Margin);

    [Fact]
    public void By_price() => Compare(ChoiceOrder.Price, ChoiceRanking.Price);

    [Fact]
    public void By_mass() => Compare(ChoiceOrder.Mass, ChoiceRanking.Mass);

    [Fact]
    public void By_cut() => Compare(ChoiceOrder.Cut, ChoiceRanking.Cut);

    [Fact]
    public void Combinations_are_counted_by_threads_alone()
    {
        foreach ((_, CatalogCase catalog, ReadCatalog read, _) in catalogs.All)
        {
            RodChoices choices = Choose(read, ChoiceOrder.Best, 1);
            Assert.True(ChoiceReference.Combinations(catalog) == choices.Combinations, $"{choices.Combinations} combinations of {catalog}");
            Assert.True(
                ChoiceReference.WithoutClocking(catalog) == choices.WithoutClocking,
                $"{choices.WithoutClocking} without clocking of {catalog}");
        }
    }

    private void Compare(ChoiceOrder order, Comparison<ReferenceChoice> ranking)
    {
        List<string> found = [];
        ChoiceCatalog[] clear = [.. catalogs.All.Where(catalog => !ChoiceRanking.IsDoubtful(catalog.All))];
        foreach (ChoiceCatalog catalog in clear)
        {
            List<ReferenceChoice> expected = ChoiceRanking.Sorted(catalog.All, ranking);
            foreach (int top in (int[])[1, 2, 3, 7, 20, Everything])
            {
                if (Difference([.. expected.Take(top)], Choose(catalog.Read, order, top).Found) is { } difference)
                {
                    found.Add($"{catalog.Name}, {order}, top {top}: {difference}\n{catalog.Catalog}");
                    break;
                }
            }
        }

        Assert.True(
            found.Count == 0,
            $"{found.Count} of {clear.Length} catalogs over {RandomCounts.Description}; the shortest:\n{found.MinBy(text => text.Length)}");
        Assert.True(clear.Length > catalogs.All.Count * 9 / 10, $"only {clear.Length} catalogs");
    }

    private static string? Difference(ReferenceChoice[] expected, IReadOnlyList<RodChoice> chosen)
    {
        string[] names = [.. expected.Select(Name)];
        string[] chosenNames = [.. chosen.Select(choice => Name(choice.Rod.Parts))];
        if (!names.SequenceEqual(chosenNames))
        {
            int at = names.Zip(chosenNames).TakeWhile(pair => pair.First == pair.Second).Count();
            return $"at {at} of {names.Length}: expected {Figures(expected.ElementAtOrDefault(at))}, "
                + $"was {chosenNames.ElementAtOrDefault(at)} {chosen.ElementAtOrDefault(at)?.WorstMargin}";
        }

        return expected.Zip(chosen)
            .Select(pair => Difference(pair.First, pair.Second))
            .FirstOrDefault(difference => difference is not null);
    }

    private static string? Difference(ReferenceChoice expected, RodChoice chosen)
    {
        string was = $"{chosen.WorstMargin} {chosen.LeastCut} {chosen.Price} {chosen.Mass} {chosen.Plan.Verdict}";
        bool cut = chosen.Plan.Verdict == Verdict.BuildableAfterCutting;
        bool same = cut == expected.IsCut
            && Math.Abs(chosen.WorstMargin.Millimeters - expected.Margin) <= Tolerance
            && Math.Abs(chosen.LeastCut.Millimeters - expected.Least.Total) <= Tolerance
            && chosen.Price?.Amount == expected.Price?.Amount
            && chosen.Price?.Currency == expected.Price?.Currency
            && (chosen.Mass is null) == (expected.Kilograms is null)
            && Math.Abs((chosen.Mass?.Kilograms ?? 0) - (double)(expected.Kilograms ?? 0)) < 1e-9;
        return same ? null : $"expected {Figures(expected)}, was {was}";
    }

    private static string Name(ReferenceChoice choice) =>
        $"{choice.Sleeve} {choice.Inner} {choice.Outer} {choice.InnerNut?.Id ?? "none"} {choice.OuterNut?.Id ?? "none"}";

    private static string Name(RodParts parts) =>
        $"{parts.Sleeve?.Info.Id} {parts.Inner.Info.Id} {(parts.Outer?.Info ?? parts.Socket!.Info).Id} "
            + $"{parts.InnerNut?.Info.Id ?? "none"} {parts.OuterNut?.Info.Id ?? "none"}";

    private static string Figures(ReferenceChoice? choice) => choice is null
        ? "nothing"
        : $"{Name(choice)}, margin {choice.Margin}, cut {choice.Least}, {choice.Price}, {choice.Kilograms} kg, {choice.LooseJoints} loose";

    private static RodChoices Choose(ReadCatalog read, ChoiceOrder order, int top) =>
        RodChooser.Choose(read.Open.Candidates!, read.Open.Request!, order, top);
}
