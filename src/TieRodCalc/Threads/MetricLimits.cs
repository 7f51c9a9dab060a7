namespace TieRodCalc.Threads;

/// <summary>Limits of size of ISO metric threads: basic sizes of ISO 724, deviations and tolerances of ISO 965-1.</summary>
internal static class MetricLimits
{
    private const double Micrometer = 1e-3;

    /// <summary>Limits in millimeters; null where ISO 965-1 has no such grade or position for this pitch.</summary>
    /// <param name="member">The member.</param>
    /// <param name="rounded">True: as the tables print them, basic sizes to a micrometer; false: basic sizes as they are.</param>
    public static SizeLimits? Of(in ThreadMember member, bool rounded)
    {
        double D = member.DiameterMm;
        double P = member.PitchMm;
        ToleranceClass grades = member.Class;
        double pitchDiameter = Round(ThreadProfile.PitchDiameter(D, P), rounded);
        double minorDiameter = Round(ThreadProfile.MinorDiameter(D, P), rounded);
        if (MetricTolerances.Deviation(P, grades.PitchPosition) is not { } pitchDeviation
            || MetricTolerances.Deviation(P, grades.CrestPosition) is not { } crestDeviation
            || MetricTolerances.PitchDiameter(D, P, grades.PitchGrade, member.Gender) is not { } pitchTolerance
            || MetricTolerances.Crest(P, grades.CrestGrade, member.Gender) is not { } crestTolerance)
        {
            return null;
        }

        if (member.Gender == ThreadGender.Internal)
        {
            double least = pitchDiameter + pitchDeviation * Micrometer;
            double minor = minorDiameter + crestDeviation * Micrometer;
            return SizeLimits.Internal(
                D + pitchDeviation * Micrometer, least, least + pitchTolerance * Micrometer, minor, minor + crestTolerance * Micrometer);
        }

        double most = pitchDiameter - pitchDeviation * Micrometer;
        double major = D - crestDeviation * Micrometer;
        return SizeLimits.External(
            major,
            major - crestTolerance * Micrometer,
            most,
            most - pitchTolerance * Micrometer,
            minorDiameter - pitchDeviation * Micrometer);
    }

    private static double Round(double mm, bool rounded) => rounded ? Math.Round(mm, 3, MidpointRounding.AwayFromZero) : mm;
}
