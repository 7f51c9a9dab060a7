namespace TieRodCalc.Threads;

/// <summary>Limits of size of Unified threads from the formulas of ASME B1.1; inside in inches, as they are written there.</summary>
internal static class UnifiedLimits
{
    private const int Classes = 3;

    /// <summary>From this diameter up the minor diameter of classes 1B and 2B is rounded to three decimals.</summary>
    private const double CoarselyRounded = 0.138;

    /// <summary>Whether the tables of the standard reach: 0.060 in to 6 in, 4 to 80 threads per inch.</summary>
    public static bool InTables(double diameterMm, double pitchMm)
    {
        const double Least = 0.060;
        const double Most = 6;
        const double Finest = 80;
        const double Coarsest = 4;
        double threads = Millimeters.Inch / pitchMm;
        return diameterMm >= Millimeters.FromInches(Least) - Millimeters.Negligible
            && diameterMm <= Millimeters.FromInches(Most) + Millimeters.Negligible
            && threads >= Coarsest - Millimeters.Negligible && threads <= Finest + Millimeters.Negligible;
    }

    /// <summary>Limits in millimeters; null where there is no such class.</summary>
    /// <param name="member">The member.</param>
    /// <param name="rounded">True: as the tables print them; false: as the formulas give them.</param>
    public static SizeLimits? Of(in ThreadMember member, bool rounded)
    {
        int grade = member.Class.PitchGrade;
        if (grade is < 1 or > Classes)
        {
            return null;
        }

        double D = member.DiameterMm / Millimeters.Inch;
        double P = member.PitchMm / Millimeters.Inch;
        double tolerance = Round(PitchTolerance(D, P, EngagementOf(member, D, P)), rounded ? 6 : null);
        SizeLimits inches = member.Gender == ThreadGender.External
            ? External(D, P, grade, tolerance, rounded ? 4 : null)
            : Internal(D, P, grade, tolerance, rounded ? 4 : null);
        return new(
            Mm(inches.MajorLeast),
            Mm(inches.MajorMost),
            Mm(inches.PitchLeast),
            Mm(inches.PitchMost),
            Mm(inches.MinorLeast),
            Mm(inches.MinorMost));
    }

    /// <summary>
    /// Tolerance of the pitch diameter of class 2A: <c>Td2 = 0.0015 D^(1/3) + 0.0015 LE^(1/2) + 0.015 P^(2/3)</c>; the other classes
    /// are multiples of it.
    /// </summary>
    private static double PitchTolerance(double D, double P, double LE) =>
        0.0015 * Math.Cbrt(D) + 0.0015 * Math.Sqrt(LE) + 0.015 * TwoThirds(P);

    /// <summary>
    /// The length of engagement that the tolerance is made for: the diameter in UNC, UNF and the constant pitches of 4, 6 and 8
    /// threads per inch, nine pitches in every other series and in special threads.
    /// </summary>
    private static double EngagementOf(in ThreadMember member, double D, double P) =>
        member.Series is UnifiedSeries.Unc or UnifiedSeries.Unf
            || (member.Series == UnifiedSeries.Un && Math.Round(1 / P, 6) is 4 or 6 or 8)
            ? D
            : 9 * P;

    private static SizeLimits External(double D, double P, int grade, double Td2, int? decimals)
    {
        double allowance = grade == 3 ? 0 : Round(0.300 * Td2, decimals);
        double pitchTolerance = Round(grade switch { 1 => 1.5, 2 => 1, _ => 0.75 } * Td2, decimals);
        double majorTolerance = Round((grade == 1 ? 0.090 : 0.060) * TwoThirds(P), decimals);
        double major = Round(D, decimals) - allowance;
        double pitch = Round(ThreadProfile.PitchDiameter(D, P), decimals) - allowance;
        double minor = Round(ThreadProfile.MinorDiameter(D, P), decimals) - allowance;
        return SizeLimits.External(major, major - majorTolerance, pitch, pitch - pitchTolerance, minor);
    }

    private static SizeLimits Internal(double D, double P, int grade, double Td2, int? decimals)
    {
        double pitchTolerance = Round(grade switch { 1 => 1.95, 2 => 1.3, _ => 0.975 } * Td2, decimals);
        double pitch = Round(ThreadProfile.PitchDiameter(D, P), decimals);
        double minor = ThreadProfile.MinorDiameter(D, P);
        bool coarsely = decimals is not null && D >= CoarselyRounded;
        double most = Round(minor, decimals) + Round(grade == 3 ? MinorTolerance3B(D, P) : MinorTolerance(D, P), decimals);
        return SizeLimits.Internal(
            Round(D, decimals),
            pitch,
            pitch + pitchTolerance,
            Round(Round(minor, decimals), coarsely ? 3 : decimals),
            Round(most, coarsely && grade != 3 ? 3 : decimals));
    }

    /// <summary>Tolerance of the minor diameter, classes 1B and 2B.</summary>
    private static double MinorTolerance(double D, double P)
    {
        const double Quarter = 0.25;
        double usual = P > Quarter ? 0.15 * P : 0.25 * P - 0.4 * P * P;
        return D >= Quarter ? usual : Math.Clamp(Fine(D, P), usual, 0.394 * P);
    }

    /// <summary>Tolerance of the minor diameter, class 3B.</summary>
    private static double MinorTolerance3B(double D, double P)
    {
        const double Thirteen = 1 / 13d;
        double least = P <= Thirteen + 1e-9 ? 0.23 * P - 1.5 * P * P : 0.120 * P;
        return Math.Clamp(Fine(D, P), least, 0.394 * P);
    }

    private static double Fine(double D, double P) => 0.05 * TwoThirds(P) + 0.03 * P / D - 0.002;

    private static double TwoThirds(double value)
    {
        double root = Math.Cbrt(value);
        return root * root;
    }

    /// <summary>Rounds a half to the even digit; a decimal forgets what a double adds to an exact half (0.00165).</summary>
    private static double Round(double value, int? decimals) => decimals is { } places
        ? (double)Math.Round((decimal)value, places, MidpointRounding.ToEven)
        : value;

    private static double Mm(double inches) => Millimeters.FromInches(inches);
}
