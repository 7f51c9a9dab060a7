namespace TieRodCalc.Tests.Planning;

/// <summary>
/// By how much a rod has to be changed for some insertion and some cuts to meet all limits over the whole wanted adjustment. The rows
/// of the changed rod are linear in most changes, so the first answer is exact; where bent ends make them curved the rows are laid
/// anew at each answer until it stands still.
/// </summary>
internal static class LeastSize
{
    private const int MostRounds = 12;
    private const double StandsStill = 1e-11;
    private const double LastBits = 1e-10;

    /// <summary>How far on the slope of a row is looked for: short against what bends it, long against the last bits.</summary>
    private const double Step = 1e-3;

    /// <summary>Below this a coefficient is none.</summary>
    private const double NoSlope = 1e-9;

    /// <summary>Below zero where nothing that the parts allow meets all limits: by how much they contradict each other.</summary>
    public static double Margin(RodNumbers rod) => Elimination.Margin(Elimination.WithoutRod(LimitRows.Of(rod)));

    /// <summary>The least size from zero to a cap that works, or null where none does.</summary>
    public static double? Of(Func<double, RodNumbers> change, double cap)
    {
        double at = 0;
        for (int round = 0; round < MostRounds; round++)
        {
            if (Least(Elimination.WithoutRod(Rows(change, at), cap), cap) is not { } least)
            {
                return null;
            }

            if (Math.Abs(least - at) < StandsStill)
            {
                return least;
            }

            at = least;
        }

        return at;
    }

    /// <summary>
    /// The least size of a change that never does harm, so that it works from some size on; found by halving, whatever the rows look
    /// like.
    /// </summary>
    /// <param name="change">The change.</param>
    /// <param name="cap">The most that may be changed.</param>
    /// <param name="allowed">By how much limits may contradict each other.</param>
    public static double? ByHalving(Func<double, RodNumbers> change, double cap, double allowed = 0)
    {
        if (Margin(change(cap)) < -allowed - LastBits)
        {
            return null;
        }

        (double fails, double works) = (0, cap);
        while (works - fails > 1e-10)
        {
            double middle = (fails + works) / 2;
            (fails, works) = Margin(change(middle)) < -allowed ? (middle, works) : (fails, middle);
        }

        return works;
    }

    /// <summary>The least sum of two changes, or null where no two sizes up to the caps work.</summary>
    public static (double First, double Second)? OfTwo(Func<double, double, RodNumbers> change, double firstCap, double secondCap)
    {
        (double First, double Second) at = (0, 0);
        for (int round = 0; round < MostRounds; round++)
        {
            List<Row> rows = Elimination.WithoutRod(Rows(change, at.First, at.Second), firstCap, secondCap);
            if (LeastSum(rows, firstCap, secondCap) is not { } least)
            {
                return null;
            }

            bool still = Math.Abs(least.First + least.Second - at.First - at.Second) < StandsStill;
            at = least;
            if (still)
            {
                break;
            }
        }

        return at;
    }

    /// <summary>The rows as they run through a size, in the size as unknown.</summary>
    private static List<Row> Rows(Func<double, RodNumbers> change, double at)
    {
        List<Row> here = LimitRows.Of(change(at));
        List<Row> further = LimitRows.Of(change(at + Step));
        return [.. here.Zip(further, (row, next) =>
        {
            double slope = (next.Rest - row.Rest) / Step;
            return row with { Rest = row.Rest - slope * at, E1 = slope };
        })];
    }

    private static List<Row> Rows(Func<double, double, RodNumbers> change, double first, double second)
    {
        List<Row> rows = LimitRows.Of(change(first, second));
        List<Row> one = LimitRows.Of(change(first + Step, second));
        List<Row> other = LimitRows.Of(change(first, second + Step));
        for (int i = 0; i < rows.Count; i++)
        {
            (double slope, double otherSlope) = ((one[i].Rest - rows[i].Rest) / Step, (other[i].Rest - rows[i].Rest) / Step);
            rows[i] = rows[i] with { Rest = rows[i].Rest - slope * first - otherSlope * second, E1 = slope, E2 = otherSlope };
        }

        return rows;
    }

    private static double? Least(List<Row> rows, double cap)
    {
        double low = 0;
        double high = cap;
        foreach (Row row in rows)
        {
            if (row.E1 > NoSlope)
            {
                low = Math.Max(low, -row.Rest / row.E1);
            }
            else if (row.E1 < -NoSlope)
            {
                high = Math.Min(high, row.Rest / -row.E1);
            }
            else if (row.Rest < -LastBits)
            {
                return null;
            }
        }

        return low <= high + LastBits ? low : null;
    }

    /// <summary>The corner with the least sum of what the rows leave of all sizes up to the caps.</summary>
    public static (double First, double Second)? LeastSum(List<Row> rows, double firstCap, double secondCap)
    {
        List<(double First, double Second)> left = [(0, 0), (firstCap, 0), (firstCap, secondCap), (0, secondCap)];
        foreach (Row row in rows)
        {
            if (left.Count == 0)
            {
                return null;
            }

            left = CutOff(left, row);
        }

        return left.Count > 0 ? left.MinBy(corner => corner.First + corner.Second) : null;
    }

    /// <summary>The part of a polygon on the side of a row where it is zero or more.</summary>
    private static List<(double First, double Second)> CutOff(List<(double First, double Second)> polygon, Row row)
    {
        double[] heights = [.. polygon.Select(corner => row.E1 * corner.First + row.E2 * corner.Second + row.Rest)];
        if (heights.All(height => height >= -LastBits))
        {
            return polygon;
        }

        List<(double First, double Second)> left = [];
        for (int i = 0; i < polygon.Count; i++)
        {
            int next = (i + 1) % polygon.Count;
            if (heights[i] >= -LastBits)
            {
                left.Add(polygon[i]);
            }

            if (heights[i] >= -LastBits != heights[next] >= -LastBits)
            {
                double share = Math.Clamp(heights[i] / (heights[i] - heights[next]), 0, 1);
                left.Add((
                    polygon[i].First + share * (polygon[next].First - polygon[i].First),
                    polygon[i].Second + share * (polygon[next].Second - polygon[i].Second)));
            }
        }

        return left;
    }
}
