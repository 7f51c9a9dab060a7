namespace TieRodCalc.Threads;

/// <summary>
/// Deviations and tolerances of ISO 965-1 in micrometers: its tables, from memory; for a diameter or pitch that they do not have,
/// its formulas, rounded to preferred numbers as the tables are.
/// </summary>
internal static class MetricTolerances
{
    private const int LeastGrade = 3;

    /// <summary>Whether the tables have this pitch.</summary>
    public static bool HasPitch(double pitch) => RowOf(pitch) is not null;

    /// <summary>Whether the tables have a tolerance of the pitch diameter for this size.</summary>
    public static bool HasSize(double diameter, double pitch) => HasPitch(pitch) && Tabulated(diameter, pitch) is not null;

    /// <summary>
    /// How far a thread lies off the basic profile, always toward more clearance: <c>EI</c> of G and H, <c>-es</c> of e, f, g and h.
    /// Null where there is no such position.
    /// </summary>
    public static double? Deviation(double pitch, char position)
    {
        MetricPitch? row = RowOf(pitch);
        return position switch
        {
            'H' or 'h' => 0,
            'G' or 'g' => row?.G ?? Math.Round(15 + 11 * pitch),
            'f' when pitch >= 0.35 => row?.F ?? Math.Round(30 + 11 * pitch),
            'e' when pitch >= 0.5 => row?.E ?? Math.Round(50 + 11 * pitch),
            _ => null,
        };
    }

    /// <summary>Tolerance of the pitch diameter, <c>Td2</c> or <c>TD2</c>; null where there is no such grade for the pitch.</summary>
    public static double? PitchDiameter(double diameter, double pitch, int grade, ThreadGender gender)
    {
        bool external = gender == ThreadGender.External;
        bool exists = external
            ? grade switch { >= LeastGrade and <= 6 => true, 7 => pitch >= 0.35, 8 or 9 => pitch >= 0.8, _ => false }
            : grade switch { 4 => true, 5 => pitch >= 0.25, 6 => pitch >= 0.3, 7 => pitch >= 0.5, 8 => pitch >= 0.8, _ => false };
        return exists ? PreferredNumbers.Step(OfGrade6(diameter, pitch), external ? 4 * (grade - 6) : 5 + 4 * (grade - 6)) : null;
    }

    /// <summary>Tolerance of the crest: <c>Td</c> of the major diameter outside, <c>TD1</c> of the minor diameter inside.</summary>
    public static double? Crest(double pitch, int grade, ThreadGender gender)
    {
        if (RowOf(pitch) is { } row)
        {
            double tabulated = gender == ThreadGender.External
                ? grade switch { 4 => row.Major4, 6 => row.Major6, 8 => row.Major8, _ => 0 }
                : grade switch { 4 => row.Minor4, 5 => row.Minor5, 6 => row.Minor6, 7 => row.Minor7, 8 => row.Minor8, _ => 0 };
            return tabulated > 0 ? tabulated : null;
        }

        if (gender == ThreadGender.External)
        {
            return grade is 4 or 6 || (grade == 8 && pitch >= 0.8)
                ? PreferredNumbers.Step(180 * Math.Cbrt(pitch * pitch) - 3.15 / Math.Sqrt(pitch), 4 * (grade - 6))
                : null;
        }

        bool exists = grade is 4 or 5 or 6 || (grade == 7 && pitch >= 0.5) || (grade == 8 && pitch >= 0.8);
        double six = pitch < 1 ? 433 * pitch - 190 * Math.Pow(pitch, 1.22) : 230 * Math.Pow(pitch, 0.7);
        return exists ? PreferredNumbers.Step(six, 4 * (grade - 6)) : null;
    }

    /// <summary>
    /// <c>Td2</c> of grade 6. The other grades are preferred numbers a whole number of steps of R40 away: 0.5, 0.63, 0.8, 1.25, 1.6
    /// and 2 times it outside; 0.85, 1.06, 1.32, 1.7 and 2.12 times it inside.
    /// </summary>
    private static double OfGrade6(double diameter, double pitch)
    {
        if (Tabulated(diameter, pitch) is { } tabulated)
        {
            return tabulated;
        }

        MetricRange range = RangeOf(diameter);
        return 90 * Math.Pow(pitch, 0.4) * Math.Pow(range.Over * range.To, 0.05);
    }

    private static double? Tabulated(double diameter, double pitch)
    {
        foreach (MetricSize size in RangeOf(diameter).Sizes)
        {
            if (Same(size.Pitch, pitch))
            {
                return size.Td2;
            }
        }

        return null;
    }

    private static MetricRange RangeOf(double diameter)
    {
        foreach (MetricRange range in MetricTables.Ranges)
        {
            if (diameter <= range.To + Millimeters.Negligible)
            {
                return range;
            }
        }

        return MetricTables.Ranges[^1];
    }

    private static MetricPitch? RowOf(double pitch)
    {
        foreach (MetricPitch row in MetricTables.Pitches)
        {
            if (Same(row.Pitch, pitch))
            {
                return row;
            }
        }

        return null;
    }

    private static bool Same(double mm, double otherMm) => Math.Abs(mm - otherMm) <= Millimeters.Negligible;
}
