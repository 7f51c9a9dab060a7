namespace TieRodCalc.Tests.Planning;

/// <summary>The stated order of what a catalog makes, one comparison after the other.</summary>
internal static class ChoiceRanking
{
    /// <summary>
    /// No cut before cut; both joints locked before one; without a cut the greater margin first, with one the smaller least total cut;
    /// the order of the catalog: sleeve, inner end, outer end.
    /// </summary>
    public static int Usual(ReferenceChoice one, ReferenceChoice other) => First(
        one.IsCut.CompareTo(other.IsCut),
        one.LooseJoints.CompareTo(other.LooseJoints),
        one.IsCut ? Near(one.Least.Total, other.Least.Total) : Near(other.Margin, one.Margin),
        one.Place.CompareTo(other.Place));

    /// <summary>The greater worst margin first, cut or not.</summary>
    public static int Margin(ReferenceChoice one, ReferenceChoice other) => First(Near(other.Margin, one.Margin), Usual(one, other));

    /// <summary>The smaller least total cut first.</summary>
    public static int Cut(ReferenceChoice one, ReferenceChoice other) => First(Near(one.Least.Total, other.Least.Total), Usual(one, other));

    /// <summary>The lighter first, those of unknown mass last.</summary>
    public static int Mass(ReferenceChoice one, ReferenceChoice other) => First(
        (one.Kilograms is null).CompareTo(other.Kilograms is null), Nullable.Compare(one.Kilograms, other.Kilograms), Usual(one, other));

    /// <summary>The cheaper first, one currency after the other by its letters; those without one price last.</summary>
    public static int Price(ReferenceChoice one, ReferenceChoice other) => First(
        (one.Price is null).CompareTo(other.Price is null),
        string.CompareOrdinal(one.Price?.Currency, other.Price?.Currency),
        Nullable.Compare(one.Price?.Amount, other.Price?.Amount),
        Usual(one, other));

    /// <summary>Two lengths, equal where they differ by no more than the comparison constant.</summary>
    public static int Near(double one, double other) =>
        Math.Abs(one - other) <= Millimeters.Negligible ? 0 : one.CompareTo(other);

    public static int First(params ReadOnlySpan<int> comparisons)
    {
        foreach (int comparison in comparisons)
        {
            if (comparison != 0)
            {
                return comparison;
            }
        }

        return 0;
    }

    public static List<ReferenceChoice> Sorted(IEnumerable<ReferenceChoice> choices, Comparison<ReferenceChoice> order) =>
        [.. choices.Order(Comparer<ReferenceChoice>.Create(order))];

    /// <summary>Whether two figures differ by so little that it hangs on the comparison constant, and by more than sums lose.</summary>
    public static bool IsDoubtful(IReadOnlyList<ReferenceChoice> choices)
    {
        const double SumsLose = 1e-10;
        double[][] columns = [[.. choices.Select(choice => choice.Margin)], [.. choices.Select(choice => choice.Least.Total)]];
        return columns.Any(column => column.Any(one => column.Any(
            other => Math.Abs(one - other) is > SumsLose and < 2 * Millimeters.Negligible)));
    }
}
