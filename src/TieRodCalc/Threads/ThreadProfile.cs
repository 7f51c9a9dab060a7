namespace TieRodCalc.Threads;

/// <summary>
/// The basic profile that Unified and ISO metric threads share (ASME B1.1, ISO 68-1): 60 degrees, height of the sharp triangle
/// <c>H = sqrt(3) / 2 P</c>. Lengths in millimeters, areas in square millimeters.
/// </summary>
internal static class ThreadProfile
{
    /// <summary>H over P.</summary>
    public const double Triangle = 0.86602540378443864676;

    /// <summary>Tangent of the flank angle: a diameter larger by one gives the flanks this much more play along the axis.</summary>
    public const double FlankTangent = 0.57735026918962576451;

    /// <summary>Basic pitch diameter: <c>D2 = D - 3/4 H</c> (ISO 724, ASME B1.1).</summary>
    public static double PitchDiameter(double diameter, double pitch) => diameter - 0.75 * Triangle * pitch;

    /// <summary>Basic minor diameter: <c>D1 = D - 5/4 H</c> (ISO 724, ASME B1.1).</summary>
    public static double MinorDiameter(double diameter, double pitch) => diameter - 1.25 * Triangle * pitch;

    /// <summary>
    /// Tensile stress area. Unified: <c>At = pi/4 (D - 0.9743 / n)^2</c> (ASME B1.1). Metric: <c>At = pi/4 ((d2 + d3) / 2)^2</c> with
    /// <c>d3 = d1 - H/6</c> (ISO 898-1).
    /// </summary>
    public static double StressArea(ThreadForm form, double diameter, double pitch)
    {
        const double UnifiedPitches = 0.9743;
        double loss = form == ThreadForm.Unified ? UnifiedPitches : (0.75 + 1.25 + 1 / 6d) / 2 * Triangle;
        return CircleArea(diameter - loss * pitch);
    }

    /// <summary>
    /// Tensile stress area of a male thread above 100 ksi: <c>pi (Es_min / 2 - 0.16238 / n)^2</c>, from the least pitch diameter
    /// (ASME B1.1, FED-STD-H28/2B).
    /// </summary>
    public static double HighStrengthArea(double leastPitchDiameter, double pitch) =>
        CircleArea(leastPitchDiameter - 2 * 0.16238 * pitch);

    public static double CircleArea(double diameter) => Math.PI / 4 * diameter * diameter;
}
