namespace TieRodCalc.Tests.Planning;

/// <summary>
/// One linear inequality: the sum of coefficients times unknowns, and a rest, is zero or more. Three unknowns belong to the rod, two to
/// what is changed about it.
/// </summary>
internal readonly record struct Row(double S, double X1, double X2, double Rest, double E1 = 0, double E2 = 0)
{
    public double this[int unknown] => unknown switch
    {
        LimitRows.Insertion => S,
        LimitRows.InnerCut => X1,
        LimitRows.OuterCut => X2,
        LimitRows.Unknowns => E1,
        _ => E2,
    };

    public static Row operator +(Row one, Row other) => new(
        one.S + other.S, one.X1 + other.X1, one.X2 + other.X2, one.Rest + other.Rest, one.E1 + other.E1, one.E2 + other.E2);

    public static Row operator +(Row row, double rest) => row with { Rest = row.Rest + rest };

    public static Row operator -(Row row) => row * -1;

    public static Row operator *(Row row, double factor) =>
        new(row.S * factor, row.X1 * factor, row.X2 * factor, row.Rest * factor, row.E1 * factor, row.E2 * factor);

    public static Row Constant(double rest) => new(0, 0, 0, rest);

    public static Row Of(int unknown) => unknown switch
    {
        LimitRows.Insertion => new(1, 0, 0, 0),
        LimitRows.InnerCut => new(0, 1, 0, 0),
        LimitRows.OuterCut => new(0, 0, 1, 0),
        LimitRows.Unknowns => new(0, 0, 0, 0, 1),
        _ => new(0, 0, 0, 0, 0, 1),
    };
}

/// <summary>
/// Takes unknowns out of linear inequalities by adding every row that bounds one from below to every row that bounds it from above
/// (Fourier and Motzkin). Nothing is searched, so a result is exact to the last bits.
/// </summary>
internal static class Elimination
{
    /// <summary>Coefficients are ones and shares of a turn; what is closer than this differs by rounding.</summary>
    private const double Same = 1e-9;

    /// <summary>
    /// What follows from the rows without the unknown, for changes up to two caps; of rows that differ in the rest or the changes alone
    /// those stay that are the narrowest somewhere up to the caps.
    /// </summary>
    public static List<Row> Without(int unknown, IEnumerable<Row> rows, double firstCap = 0, double secondCap = 0)
    {
        List<Row> kept = [];
        List<Row> low = [];
        List<Row> high = [];
        foreach (Row row in rows)
        {
            if (Math.Abs(row[unknown]) < Same)
            {
                Keep(kept, row, firstCap, secondCap);
            }
            else
            {
                (row[unknown] > 0 ? low : high).Add(row * (1 / Math.Abs(row[unknown])));
            }
        }

        foreach (Row below in low)
        {
            foreach (Row above in high)
            {
                Keep(kept, below + above, firstCap, secondCap);
            }
        }

        return kept;
    }

    /// <summary>The rows without the insertion and the cuts: what is left hangs on the changes alone.</summary>
    public static List<Row> WithoutRod(IEnumerable<Row> rows, double firstCap = 0, double secondCap = 0)
    {
        List<Row> left = Narrowest(rows, firstCap, secondCap);
        foreach (int unknown in (ReadOnlySpan<int>)[LimitRows.Insertion, LimitRows.InnerCut, LimitRows.OuterCut])
        {
            left = Without(unknown, left, firstCap, secondCap);
        }

        return left;
    }

    /// <summary>The least rest of the rows without any unknown: below zero, by how much they contradict each other.</summary>
    public static double Margin(IEnumerable<Row> rows) => rows
        .Where(row => Math.Abs(row.E1) < Same && Math.Abs(row.E2) < Same)
        .Min(row => row.Rest);

    /// <summary>Of rows that differ in the rest or the changes alone those that are the narrowest somewhere up to the caps.</summary>
    public static List<Row> Narrowest(IEnumerable<Row> rows, double firstCap = 0, double secondCap = 0)
    {
        List<Row> kept = [];
        foreach (Row row in rows)
        {
            Keep(kept, row, firstCap, secondCap);
        }

        return kept;
    }

    private static void Keep(List<Row> kept, in Row row, double firstCap, double secondCap)
    {
        for (int i = 0; i < kept.Count; i++)
        {
            if (!AlikeInRod(kept[i], row))
            {
                continue;
            }

            // Rows are straight, so what holds of two of them at the four corners of the changes holds between.
            double rest = row.Rest - kept[i].Rest;
            double first = (row.E1 - kept[i].E1) * firstCap;
            double second = (row.E2 - kept[i].E2) * secondCap;
            if (rest + Math.Min(0, first) + Math.Min(0, second) >= 0)
            {
                return;
            }

            if (rest + Math.Max(0, first) + Math.Max(0, second) <= 0)
            {
                kept[i] = row;
                return;
            }
        }

        kept.Add(row);
    }

    private static bool AlikeInRod(in Row one, in Row other) => Math.Abs(one.S - other.S) < Same
        && Math.Abs(one.X1 - other.X1) < Same
        && Math.Abs(one.X2 - other.X2) < Same;
}
