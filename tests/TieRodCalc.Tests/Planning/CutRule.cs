namespace TieRodCalc.Tests.Planning;

/// <summary>The rule by which a cut is recommended, written down for the tests on its own.</summary>
internal static class CutRule
{
    private const double Tolerance = 1e-6;

    /// <summary>
    /// Least plus allowance but not past the middle, up to the marks; down where up would pass the middle and down reaches the
    /// least; the middle where no mark lies in the window. Zero where nothing needs to be cut.
    /// </summary>
    public static double Recommended(RodCase rod, double least, Span window)
    {
        if (least <= Millimeters.Negligible)
        {
            return 0;
        }

        double middle = (least + window.High) / 2;
        double wanted = Math.Min(least + rod.Allowance.Mm, middle);
        double[] marks =
        [
            .. Enumerable.Range(1, (int)(window.High / rod.Mark.Mm) + 1)
                .Select(number => number * rod.Mark.Mm)
                .Where(mark => mark >= least - Tolerance && mark <= window.High + Tolerance),
        ];
        double[] above = [.. marks.Where(mark => mark >= wanted - Tolerance)];
        double[] below = [.. marks.Where(mark => mark <= wanted + Tolerance)];
        return above.Length > 0 && above[0] <= middle + Tolerance ? above[0]
            : below.Length > 0 ? below[^1]
            : above.Length > 0 ? above[0]
            : middle;
    }
}
