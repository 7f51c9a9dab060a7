namespace TieRodCalc.Cli.Rendering;

/// <summary>A straight scale from values to places of a drawing.</summary>
/// <param name="From">The value at the first place.</param>
/// <param name="To">The value at the last place, above <paramref name="From"/>.</param>
/// <param name="First">The first place.</param>
/// <param name="Last">The last place.</param>
internal readonly record struct Scale(double From, double To, double First, double Last)
{
    /// <summary>Steps that count turns: eighths, quarters, halves, wholes and so on.</summary>
    public static IEnumerable<double> Eighths => [0.125, 0.25, 0.5, .. Decimals.Where(step => step >= 1)];

    /// <summary>Steps of 1, 2 and 5 times a power of ten.</summary>
    public static IEnumerable<double> Decimals =>
        from power in Enumerable.Range(-2, 8)
        from digit in (int[])[1, 2, 5]
        select digit * Math.Pow(10, power);

    /// <summary>The place of a value.</summary>
    public double At(double value) => First + ((value - From) / (To - From) * (Last - First));

    /// <summary>Multiples of the first step that gives no more than so many.</summary>
    public IEnumerable<double> Ticks(IEnumerable<double> steps, int most)
    {
        (double from, double to) = (From, To);
        double step = steps.First(each => (to - from) / each <= most);
        for (double tick = Math.Ceiling(from / step); tick * step <= to; tick++)
        {
            yield return Math.Round(tick * step, 6);
        }
    }
}
