namespace TieRodCalc.Planning;

/// <summary>A change of a problem by so many millimeters, from zero to the most that is possible.</summary>
internal sealed record ProblemChange(double Most, Func<RodProblem, double, RodProblem> Apply)
{
    /// <summary>No change.</summary>
    public static ProblemChange None { get; } = new(0, (wanted, _) => wanted);
}

/// <summary>
/// Finds the least change, or the two with the least sum, that make a rod buildable. The inequalities are straight in the dimensions:
/// there one step, a linear programme in two unknowns, is exact. In the lengths of bent ends they are slightly curved; steps are
/// repeated from where the last one ended, shorter where one did not better things, until nothing moves.
/// </summary>
internal static class LeastChange
{
    private const int MostSteps = 200;
    private const double Difference = 1e-3;
    private const double Still = 1e-10;

    /// <summary>What a millimeter by which a limit is missed weighs against one of change: far more than any change gains.</summary>
    private const double Weight = 1e7;

    private const double Exact = Millimeters.Negligible / 10;

    /// <summary>The least size of one change that is enough, or null where none is.</summary>
    public static double? Of(RodProblem wanted, ProblemChange change) => Of(wanted, change, ProblemChange.None)?.One;

    /// <summary>The two changes together that are enough with the least sum, or null where they are not.</summary>
    public static (double One, double Other)? Of(RodProblem wanted, ProblemChange one, ProblemChange other)
    {
        RodProblem Apply(double x, double y) => other.Apply(one.Apply(wanted, x), y);
        double[] slacks = new double[FitInequalities.Count];
        double[] onward = new double[FitInequalities.Count];
        double[] upward = new double[FitInequalities.Count];
        double Missed(double x, double y)
        {
            FitInequalities.Slacks(Apply(x, y), slacks);
            return Math.Max(0, -slacks.Min() - 2 * Exact);
        }

        (double X, double Y) at = (0, 0);
        double worth = Weight * Missed(0, 0);
        double reach = Math.Max(one.Most, other.Most);
        for (int i = 0; i < MostSteps && reach > Still; i++)
        {
            FitInequalities.Slacks(Apply(at.X, at.Y), slacks);
            Slopes(slacks, onward, at.X, one.Most, by => Apply(at.X + by, at.Y));
            Slopes(slacks, upward, at.Y, other.Most, by => Apply(at.X, at.Y + by));
            (double X, double Y) next = LeastCorner(slacks, onward, upward, at, (one.Most, other.Most), reach);
            double moved = Math.Max(Math.Abs(next.X - at.X), Math.Abs(next.Y - at.Y));
            if (moved <= Still)
            {
                break;
            }

            double nextWorth = next.X + next.Y + Weight * Missed(next.X, next.Y);
            if (nextWorth < worth)
            {
                (at, worth) = (next, nextWorth);
                reach = Math.Max(reach, 2 * moved);
            }
            else
            {
                reach = moved / 2;
            }
        }

        return Missed(at.X, at.Y) <= Millimeters.Negligible / 2 ? at : null;
    }

    /// <summary>How the inequalities change with one unknown; toward less where more is not possible.</summary>
    private static void Slopes(double[] slacks, double[] slopes, double at, double most, Func<double, RodProblem> moved)
    {
        double step = at + Difference > most ? -Difference : Difference;
        FitInequalities.Slacks(moved(step), slopes);
        for (int i = 0; i < FitInequalities.Count; i++)
        {
            slopes[i] = double.IsFinite(slacks[i]) && double.IsFinite(slopes[i]) ? (slopes[i] - slacks[i]) / step : 0;
        }
    }

    /// <summary>
    /// The corner with the least sum of what the straight inequalities leave within reach; where they leave nothing, of what is left
    /// when all are missed by a little more and more.
    /// </summary>
    private static (double X, double Y) LeastCorner(
        double[] slacks, double[] onward, double[] upward, (double X, double Y) at, (double X, double Y) most, double reach)
    {
        for (double missed = Exact; ; missed = missed * 4 + Exact)
        {
            double left = Math.Max(0, at.X - reach);
            double right = Math.Min(most.X, at.X + reach);
            double low = Math.Max(0, at.Y - reach);
            double high = Math.Min(most.Y, at.Y + reach);
            List<(double X, double Y)> corners = [(left, low), (right, low), (right, high), (left, high)];
            for (int i = 0; i < FitInequalities.Count && corners.Count > 0; i++)
            {
                if (double.IsFinite(slacks[i]))
                {
                    corners = Clipped(corners, slacks[i] - onward[i] * at.X - upward[i] * at.Y + missed, onward[i], upward[i]);
                }
            }

            if (corners.Count > 0)
            {
                return corners.MinBy(corner => corner.X + corner.Y);
            }
        }
    }

    /// <summary>What is left of a polygon where <c>slack + a x + b y</c> is zero or more.</summary>
    private static List<(double X, double Y)> Clipped(List<(double X, double Y)> polygon, double slack, double a, double b)
    {
        List<(double X, double Y)> left = [];
        for (int i = 0; i < polygon.Count; i++)
        {
            (double X, double Y) from = polygon[i];
            (double X, double Y) to = polygon[(i + 1) % polygon.Count];
            double here = slack + a * from.X + b * from.Y;
            double there = slack + a * to.X + b * to.Y;
            if (here >= 0)
            {
                left.Add(from);
            }

            if (here >= 0 != there >= 0)
            {
                double share = here / (here - there);
                left.Add((from.X + share * (to.X - from.X), from.Y + share * (to.Y - from.Y)));
            }
        }

        return left;
    }
}
