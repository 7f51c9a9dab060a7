namespace TieRodCalc.Planning;

/// <summary>A change of a problem by so many millimeters, from zero to the most that is possible.</summary>
internal sealed record ProblemChange(double Most, Func<RodProblem, double, RodProblem> Apply);

/// <summary>
/// Finds the least change that makes a rod buildable. The inequalities are straight in the dimensions, so that one step of a linear
/// programme in one or two unknowns is exact; lengths of bent ends are not, and are stepped again until nothing moves.
/// </summary>
internal static class LeastChange
{
    private const int MostSteps = 40;
    private const double Step = 1e-3;
    private const double Still = 1e-10;
    private const double Flat = 1e-8;

    /// <summary>The least size of one change that is enough, or null where none is.</summary>
    public static double? Of(RodProblem wanted, ProblemChange change)
    {
        double at = 0;
        for (int i = 0; i < MostSteps; i++)
        {
            (double[] slacks, double[] slopes) = Straight(change.Apply(wanted, at), by => change.Apply(wanted, at + by), at, change.Most);
            double low = 0;
            double high = change.Most;
            for (int j = 0; j < FitInequalities.Count; j++)
            {
                double met = at - slacks[j] / slopes[j];
                if (slopes[j] > Flat)
                {
                    low = Math.Max(low, met);
                }
                else if (slopes[j] < -Flat)
                {
                    high = Math.Min(high, met);
                }
                else if (slacks[j] < -Millimeters.Negligible)
                {
                    return null;
                }
            }

            if (low > high + Millimeters.Negligible)
            {
                return null;
            }

            double moved = Math.Abs(low - at);
            at = Math.Min(low, change.Most);
            if (moved < Still)
            {
                break;
            }
        }

        return at;
    }

    /// <summary>The two changes together that are enough with the least sum, or null where they are not.</summary>
    public static (double One, double Other)? Of(RodProblem wanted, ProblemChange one, ProblemChange other)
    {
        (double One, double Other) at = (0, 0);
        for (int i = 0; i < MostSteps; i++)
        {
            RodProblem Apply(double x, double y) => other.Apply(one.Apply(wanted, x), y);
            (double[] slacks, double[] slopes) = Straight(Apply(at.One, at.Other), by => Apply(at.One + by, at.Other), at.One, one.Most);
            double[] others = Straight(Apply(at.One, at.Other), by => Apply(at.One, at.Other + by), at.Other, other.Most).Slopes;
            List<(double X, double Y)> left = [(0, 0), (one.Most, 0), (one.Most, other.Most), (0, other.Most)];
            for (int j = 0; j < FitInequalities.Count && left.Count > 0; j++)
            {
                if (double.IsFinite(slacks[j]))
                {
                    left = Clipped(left, slacks[j] - slopes[j] * at.One - others[j] * at.Other, slopes[j], others[j]);
                }
            }

            if (left.Count == 0)
            {
                return null;
            }

            (double X, double Y) least = left.MinBy(corner => corner.X + corner.Y);
            double moved = Math.Abs(least.X - at.One) + Math.Abs(least.Y - at.Other);
            at = least;
            if (moved < Still)
            {
                break;
            }
        }

        return at;
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
            bool inside = here >= -Millimeters.Negligible / 10;
            if (inside)
            {
                left.Add(from);
            }

            if (inside != there >= -Millimeters.Negligible / 10)
            {
                double share = here / (here - there);
                left.Add((from.X + share * (to.X - from.X), from.Y + share * (to.Y - from.Y)));
            }
        }

        return left;
    }

    /// <summary>The inequalities at a point and their slopes; toward less where more is not possible.</summary>
    private static (double[] Slacks, double[] Slopes) Straight(RodProblem here, Func<double, RodProblem> moved, double at, double most)
    {
        double step = at + Step > most ? -Step : Step;
        double[] slacks = new double[FitInequalities.Count];
        double[] slopes = new double[FitInequalities.Count];
        FitInequalities.Slacks(here, slacks);
        FitInequalities.Slacks(moved(step), slopes);
        for (int i = 0; i < FitInequalities.Count; i++)
        {
            slopes[i] = double.IsFinite(slacks[i]) && double.IsFinite(slopes[i]) ? (slopes[i] - slacks[i]) / step : 0;
        }

        return (slacks, slopes);
    }
}
