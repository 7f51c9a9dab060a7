using System.Collections.Immutable;

namespace TieRodCalc.Threads;

/// <summary>
/// The preferred numbers of series R40 (ISO 3) in whole numbers, halves to even below 50, as ISO 965-1 has them.
/// </summary>
internal static class PreferredNumbers
{
    private const int Decade = 40;

    private static readonly ImmutableArray<double> From100 =
    [
        100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300,
        315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
    ];

    /// <summary>The preferred number that lies so many steps above the one nearest to a value, or below it.</summary>
    public static double Step(double value, int steps) => At(Nearest(value) + steps);

    private static int Nearest(double value)
    {
        int index = (int)Math.Floor(Decade * Math.Log10(value / 100));
        int nearest = index;
        for (int candidate = index - 1; candidate <= index + 2; candidate++)
        {
            if (Math.Abs(At(candidate) - value) < Math.Abs(At(nearest) - value))
            {
                nearest = candidate;
            }
        }

        return nearest;
    }

    private static double At(int index)
    {
        int decade = (int)Math.Floor(index / (double)Decade);
        return Math.Round(From100[index - decade * Decade] * Math.Pow(10, decade), MidpointRounding.ToEven);
    }
}
