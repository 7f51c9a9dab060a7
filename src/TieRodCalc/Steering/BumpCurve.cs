namespace TieRodCalc.Steering;

/// <summary>
/// A bump sheet as toe over travel, in millimeters and radians, from the lowest travel to the highest; ride height is left out.
/// </summary>
internal sealed class BumpCurve
{
    private readonly int[] _order;
    private readonly bool _eachStep;

    public BumpCurve(BumpSheet sheet)
    {
        Spacing = Millimeters.Of(sheet.Spacing);
        Noise = sheet.Resolution is { } resolution ? Math.Sqrt(2) * Millimeters.Of(resolution) : null;
        _eachStep = sheet.Zeroed == IndicatorZero.EachStep;
        BumpReading[] readings = [.. sheet.Readings];
        _order = [.. Enumerable.Range(0, readings.Length).OrderBy(index => Millimeters.Of(readings[index].Travel))];
        int sense = sheet.Grows == IndicatorSense.Outward ? 1 : -1;
        Travel = [.. _order.Select(index => Millimeters.Of(readings[index].Travel))];
        Opening = [.. _order.Select(index =>
            sense * (Millimeters.Of(readings[index].Rear) - Millimeters.Of(readings[index].Front)))];
        if (_eachStep)
        {
            AddUp(Opening, outward: true);
        }

        Toe = [.. Opening.Select(opening => Math.Asin(Math.Clamp(opening / Spacing, -1, 1)))];
    }

    /// <summary>Spacing of the indicators.</summary>
    public double Spacing { get; }

    /// <summary>
    /// Standard error of the difference of two readings, each off by the resolution of its indicator; null where that is unknown.
    /// </summary>
    public double? Noise { get; }

    /// <summary>The travels.</summary>
    public double[] Travel { get; }

    /// <summary>The rear reading less the front one, relative to ride height; with toe-in positive.</summary>
    public double[] Opening { get; }

    /// <summary>The toe relative to ride height, toe-in positive.</summary>
    public double[] Toe { get; }

    /// <summary>The openings in the order of the sheet.</summary>
    public double[] OpeningsAsListed
    {
        get
        {
            double[] listed = new double[Opening.Length];
            for (int place = 0; place < listed.Length; place++)
            {
                listed[_order[place]] = Opening[place];
            }

            return listed;
        }
    }

    /// <summary>Standard error of a sum of the toes with weights, given that of a difference of readings.</summary>
    public double ErrorOf(IEnumerable<double> weights, double noise)
    {
        double[] each = [.. weights];
        if (_eachStep)
        {
            // A step counts in every position beyond it.
            AddUp(each, outward: false);
        }

        return noise / Spacing * Math.Sqrt(each.Sum(weight => weight * weight));
    }

    /// <summary>Sums along each side of ride height, outward from it or inward to it.</summary>
    private void AddUp(double[] values, bool outward)
    {
        int bump = Array.FindIndex(Travel, travel => travel > 0);
        int firstBump = bump < 0 ? values.Length : bump;
        Sum(values.AsSpan(firstBump), forward: outward);
        Sum(values.AsSpan(0, firstBump), forward: !outward);
    }

    private static void Sum(Span<double> values, bool forward)
    {
        if (!forward)
        {
            values.Reverse();
        }

        for (int index = 1; index < values.Length; index++)
        {
            values[index] += values[index - 1];
        }

        if (!forward)
        {
            values.Reverse();
        }
    }
}
