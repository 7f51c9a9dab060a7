using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>The search for the moves that leave the least sum of squares of the toe changes.</summary>
internal sealed class MoveSearch(CornerGeometry corner, double[] travels, (double Least, double Most)[] ranges)
{
    private const int MostSteps = 200;

    /// <summary>Millimeters to either side for a derivative.</summary>
    private const double Small = 1e-3;

    /// <summary>A relative gain below which the search ends.</summary>
    private const double LeastGain = 1e-12;

    private const double FirstDamping = 1e-6;
    private const double MostDamping = 1e12;

    /// <summary>The best moves found from none, or null where the corner does not reach the travels as it stands.</summary>
    public JointMoves? Best()
    {
        double[] moves = [.. ranges.Select(range => Math.Clamp(0, range.Least, range.Most))];
        double[] toes = Toes(moves);
        double sum = Squares(toes);
        if (!double.IsFinite(sum))
        {
            return null;
        }

        double damping = FirstDamping;
        for (int step = 0; step < MostSteps && sum > 0 && damping < MostDamping; step++)
        {
            double[] next = Step(moves, toes, damping);
            double[] after = Toes(next);
            double left = Squares(after);
            if (!(left < sum))
            {
                damping *= 10;
                continue;
            }

            bool done = sum - left <= LeastGain * sum;
            (moves, toes, sum) = (next, after, left);
            damping = Math.Max(damping / 10, 1e-15);
            if (done)
            {
                break;
            }
        }

        return MovesOf(moves);
    }

    private static JointMoves MovesOf(double[] moves) =>
        new(Length.FromMillimeters(moves[0]), Length.FromMillimeters(moves[1]), Length.FromMillimeters(moves[2]));

    private static double Squares(double[] toes) => toes.Sum(toe => toe * toe);

    /// <summary>The toe changes with some moves; not finite where the parts do not reach.</summary>
    private double[] Toes(double[] moves)
    {
        if (!Array.TrueForAll(moves, double.IsFinite) || corner.Moved(MovesOf(moves)) is not { } moved)
        {
            return [double.NaN];
        }

        CornerPath path = new(moved);
        return [.. travels.Select(travel => moved.ToeChange(path, travel))];
    }

    /// <summary>
    /// One damped step of Gauss and Newton; what is at a limit and pushes against it stays there, and so does what cannot move.
    /// </summary>
    private double[] Step(double[] moves, double[] toes, double damping)
    {
        double[][] slopes = [.. Enumerable.Range(0, moves.Length).Select(index => Slope(moves, toes, index))];
        double[] pull = [.. slopes.Select(slope => -ToeTerms.Dot(slope, toes))];
        List<int> free = [.. Enumerable.Range(0, moves.Length).Where(index =>
            ranges[index].Most > ranges[index].Least
            && !(moves[index] <= ranges[index].Least && pull[index] < 0)
            && !(moves[index] >= ranges[index].Most && pull[index] > 0))];
        double[] next = [.. moves];
        while (free.Count > 0)
        {
            double[] change = Solved(free, slopes, pull, damping);
            int outside = free.FindIndex(index =>
                moves[index] + change[free.IndexOf(index)] < ranges[index].Least
                || moves[index] + change[free.IndexOf(index)] > ranges[index].Most);
            if (outside < 0)
            {
                foreach ((int index, double by) in free.Zip(change))
                {
                    next[index] = moves[index] + by;
                }

                break;
            }

            // It goes to its limit; the others are solved once more with it there.
            int held = free[outside];
            next[held] = Math.Clamp(moves[held] + change[outside], ranges[held].Least, ranges[held].Most);
            double moved = next[held] - moves[held];
            toes = [.. toes.Zip(slopes[held], (toe, slope) => toe + moved * slope)];
            pull = [.. slopes.Select(slope => -ToeTerms.Dot(slope, toes))];
            free.RemoveAt(outside);
        }

        return next;
    }

    private double[] Slope(double[] moves, double[] toes, int index)
    {
        if (!(ranges[index].Most > ranges[index].Least))
        {
            return new double[toes.Length];
        }

        double[] up = [.. moves];
        double[] down = [.. moves];
        up[index] += Small;
        down[index] -= Small;
        return [.. Toes(up).Zip(Toes(down), (more, less) => (more - less) / (2 * Small))];
    }

    /// <summary>Normal equations of the free moves, damped in proportion to their diagonal, by elimination.</summary>
    private static double[] Solved(List<int> free, double[][] slopes, double[] pull, double damping)
    {
        int count = free.Count;
        double[][] rows = [.. free.Select(row => (double[])
            [.. free.Select(column => ToeTerms.Dot(slopes[row], slopes[column]) * (row == column ? 1 + damping : 1)), pull[row]])];
        for (int pivot = 0; pivot < count; pivot++)
        {
            for (int row = 0; row < count; row++)
            {
                double factor = row == pivot ? 0 : rows[row][pivot] / rows[pivot][pivot];
                for (int column = pivot; column <= count && factor != 0; column++)
                {
                    rows[row][column] -= factor * rows[pivot][column];
                }
            }
        }

        return [.. rows.Select((row, index) => row[count] / row[index])];
    }
}
