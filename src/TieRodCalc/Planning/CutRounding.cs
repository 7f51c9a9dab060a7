using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>Picks the cut that is recommended from the window of cuts that work.</summary>
internal static class CutRounding
{
    /// <summary>
    /// The cuts of both ends: of the inner one with the outer one at its least, then of the outer one with the inner one as recommended.
    /// </summary>
    /// <param name="problem">The limits.</param>
    /// <param name="least">The least cuts.</param>
    /// <param name="allowance">What to cut beyond the least.</param>
    /// <param name="mark">The grid, above zero.</param>
    public static (Cuts Cuts, bool InnerOnMark, bool OuterOnMark) Recommended(
        in SettingProblem problem, Cuts least, double allowance, double mark)
    {
        (double inner, bool innerOnMark) = Recommended(problem.CutWindow(RodSide.Inner, least.Outer), allowance, mark);
        (double outer, bool outerOnMark) = Recommended(problem.CutWindow(RodSide.Outer, inner), allowance, mark);
        return (new(inner, outer), innerOnMark, outerOnMark);
    }

    /// <summary>
    /// Least plus allowance, not past the middle of the window, rounded up to the mark grid, or down where up would pass
    /// the middle and down still reaches the least. Where no mark lies in the window, its middle.
    /// </summary>
    /// <param name="window">Least and most cut; a least of zero means that nothing need be cut.</param>
    /// <param name="allowance">What to cut beyond the least.</param>
    /// <param name="mark">The grid, above zero.</param>
    /// <returns>The cut, and whether it lies on the grid.</returns>
    public static (double Cut, bool OnMark) Recommended(Interval window, double allowance, double mark)
    {
        if (window.Low <= 0)
        {
            return (0, true);
        }

        double wanted = Math.Min(window.Low + allowance, window.Middle);
        double up = Math.Ceiling((wanted - Millimeters.Negligible) / mark) * mark;
        if (up <= window.Middle + Millimeters.Negligible)
        {
            return (up, true);
        }

        double down = Math.Floor(wanted / mark) * mark;
        if (down >= window.Low - Millimeters.Negligible && down > 0)
        {
            return (down, true);
        }

        return up <= window.High + Millimeters.Negligible ? (up, true) : (window.Middle, false);
    }

    /// <summary>
    /// A wanted cut brought into a window and up to a mark, or down to one where up would leave the window; where no mark lies in it, its
    /// middle.
    /// </summary>
    public static double Marked(Interval window, double wanted, double mark)
    {
        double within = Math.Clamp(wanted, window.Low, Math.Max(window.Low, window.High));
        double up = Math.Ceiling((within - Millimeters.Negligible) / mark) * mark;
        double down = Math.Floor(within / mark) * mark;
        return up <= window.High + Millimeters.Negligible ? up
            : down >= window.Low - Millimeters.Negligible ? down
            : window.Middle;
    }

    /// <summary>Whether a cut lies on the mark grid.</summary>
    public static bool IsOnMark(double cut, double mark) => Math.Abs(cut - Math.Round(cut / mark) * mark) <= Millimeters.Negligible;
}
