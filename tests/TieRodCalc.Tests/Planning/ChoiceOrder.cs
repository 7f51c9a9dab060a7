namespace TieRodCalc.Tests.Planning;

/// <summary>The stated order of what a catalog makes, one comparison after the other.</summary>
internal static class ChoiceOrder
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

    /// <summary>Whether any two figures lie so near the comparison constant that the last bits decide whether they are equal.</summary>
    public static bool IsDoubtful(IReadOnlyList<ReferenceChoice> choices)
    {
        double[][] columns = [[.. choices.Select(choice => choice.Margin)], [.. choices.Select(choice => choice.Least.Total)]];
        return columns.Any(column => column.Any(one => column.Any(
            other => Math.Abs(one - other) is > 0.8 * Millimeters.Negligible and < 1.2 * Millimeters.Negligible)));
    }
}
