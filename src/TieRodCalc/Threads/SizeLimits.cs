namespace TieRodCalc.Threads;

/// <summary>
/// Limits of size of one member in millimeters. What the standard leaves open bounds nothing: the major diameter of an internal
/// thread has no most, the minor diameter of an external one no least.
/// </summary>
internal readonly record struct SizeLimits(
    double MajorLeast, double MajorMost, double PitchLeast, double PitchMost, double MinorLeast, double MinorMost)
{
    public static SizeLimits External(double majorMost, double majorLeast, double pitchMost, double pitchLeast, double minorMost) =>
        new(majorLeast, majorMost, pitchLeast, pitchMost, double.NegativeInfinity, minorMost);

    public static SizeLimits Internal(double majorLeast, double pitchLeast, double pitchMost, double minorLeast, double minorMost) =>
        new(majorLeast, double.PositiveInfinity, pitchLeast, pitchMost, minorLeast, minorMost);
}
