using System.Collections.Immutable;

namespace TieRodCalc.Threads;

/// <summary>Diameters and pitches of ISO 261, first to third choice, up to 150 mm; from memory.</summary>
internal static class MetricSeries
{
    private static readonly ImmutableArray<MetricDiameter> Diameters =
    [
        new(1, 0.25, [0.2]), new(1.1, 0.25, [0.2]), new(1.2, 0.25, [0.2]), new(1.4, 0.3, [0.2]), new(1.6, 0.35, [0.2]),
        new(1.8, 0.35, [0.2]), new(2, 0.4, [0.25]), new(2.2, 0.45, [0.25]), new(2.5, 0.45, [0.35]), new(3, 0.5, [0.35]),
        new(3.5, 0.6, [0.35]), new(4, 0.7, [0.5]), new(4.5, 0.75, [0.5]), new(5, 0.8, [0.5]), new(5.5, 0, [0.5]),
        new(6, 1, [0.75]), new(7, 1, [0.75]), new(8, 1.25, [1, 0.75]), new(9, 1.25, [1, 0.75]), new(10, 1.5, [1.25, 1, 0.75]),
        new(11, 1.5, [1, 0.75]), new(12, 1.75, [1.5, 1.25, 1]), new(14, 2, [1.5, 1.25, 1]), new(15, 0, [1.5, 1]),
        new(16, 2, [1.5, 1]), new(17, 0, [1.5, 1]), new(18, 2.5, [2, 1.5, 1]), new(20, 2.5, [2, 1.5, 1]),
        new(22, 2.5, [2, 1.5, 1]), new(24, 3, [2, 1.5, 1]), new(25, 0, [2, 1.5, 1]), new(26, 0, [1.5]),
        new(27, 3, [2, 1.5, 1]), new(28, 0, [2, 1.5, 1]), new(30, 3.5, [3, 2, 1.5, 1]), new(32, 0, [2, 1.5]),
        new(33, 3.5, [3, 2, 1.5]), new(35, 0, [1.5]), new(36, 4, [3, 2, 1.5]), new(38, 0, [1.5]), new(39, 4, [3, 2, 1.5]),
        new(40, 0, [3, 2, 1.5]), new(42, 4.5, [4, 3, 2, 1.5]), new(45, 4.5, [4, 3, 2, 1.5]), new(48, 5, [4, 3, 2, 1.5]),
        new(50, 0, [3, 2, 1.5]), new(52, 5, [4, 3, 2, 1.5]), new(55, 0, [4, 3, 2, 1.5]), new(56, 5.5, [4, 3, 2, 1.5]),
        new(58, 0, [4, 3, 2, 1.5]), new(60, 5.5, [4, 3, 2, 1.5]), new(62, 0, [4, 3, 2, 1.5]), new(64, 6, [4, 3, 2, 1.5]),
        new(65, 0, [4, 3, 2, 1.5]), new(68, 6, [4, 3, 2, 1.5]), new(70, 0, [6, 4, 3, 2, 1.5]), new(72, 0, [6, 4, 3, 2, 1.5]),
        new(75, 0, [4, 3, 2, 1.5]), new(76, 0, [6, 4, 3, 2, 1.5]), new(78, 0, [2]), new(80, 0, [6, 4, 3, 2, 1.5]),
        new(82, 0, [2]), new(85, 0, [6, 4, 3, 2]), new(90, 0, [6, 4, 3, 2]), new(95, 0, [6, 4, 3, 2]), new(100, 0, [6, 4, 3, 2]),
        new(105, 0, [6, 4, 3, 2]), new(110, 0, [6, 4, 3, 2]), new(115, 0, [6, 4, 3, 2]), new(120, 0, [6, 4, 3, 2]),
        new(125, 0, [8, 6, 4, 3, 2]), new(130, 0, [8, 6, 4, 3, 2]), new(135, 0, [6, 4, 3, 2]), new(140, 0, [8, 6, 4, 3, 2]),
        new(145, 0, [6, 4, 3, 2]), new(150, 0, [8, 6, 4, 3, 2]),
    ];

    /// <summary>Every size.</summary>
    public static IEnumerable<(double DiameterMm, double PitchMm)> All => Diameters.SelectMany(listed => listed.Pitches.Select(
        pitch => (listed.Diameter, pitch)));

    /// <summary>The coarse pitch in millimeters, null for a diameter without one.</summary>
    public static double? CoarsePitch(double diameterMm) =>
        Find(diameterMm) is { Coarse: > 0 } found ? found.Coarse : null;

    /// <summary>Whether the diameter has this pitch, coarse or fine.</summary>
    public static bool Has(double diameterMm, double pitchMm)
    {
        if (Find(diameterMm) is not { } found)
        {
            return false;
        }

        foreach (double fine in found.Fine)
        {
            if (Same(fine, pitchMm))
            {
                return true;
            }
        }

        return Same(found.Coarse, pitchMm);
    }

    private static MetricDiameter? Find(double diameterMm)
    {
        foreach (MetricDiameter listed in Diameters)
        {
            if (Same(listed.Diameter, diameterMm))
            {
                return listed;
            }
        }

        return null;
    }

    private static bool Same(double mm, double otherMm) => Math.Abs(mm - otherMm) <= Millimeters.Negligible;

    /// <summary>A diameter with its coarse pitch, 0 where it has none, and its fine ones.</summary>
    private readonly record struct MetricDiameter(double Diameter, double Coarse, ImmutableArray<double> Fine)
    {
        public IEnumerable<double> Pitches => Coarse > 0 ? Fine.Prepend(Coarse) : Fine;
    }
}
