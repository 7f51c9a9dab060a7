using TieRodCalc.Parts;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// The engagement that strength asks for and the loads of a joint, written once more from the formulas of FED-STD-H28/2B, ASME B1.1,
/// ISO 965-1 and SAE paper 770420 (from memory) for the threads of the random rods in classes 2A/2B and 6g/6H, in inches throughout.
/// </summary>
internal sealed class StrengthReference
{
    private const double Inch = 25.4;
    private readonly double _le;
    private readonly double _as;
    private readonly double _an;
    private readonly double _c1;
    private readonly double _c2;
    private readonly double _c3;

    private StrengthReference(RodCase rod, JointCase joint, double male, double female)
    {
        double D = joint.Thread.DiameterMm / Inch;
        double n = Inch / joint.Thread.PitchMm;
        (double Ds_min, double Es_min, double En_max, double Kn_max) = Limits(joint.Thread, D, n);
        StressArea = Math.PI / 4 * Math.Pow(D - (joint.Thread.Unified ? 0.9743 : 0.9381941874) / n, 2);
        TensileArea = male > 100 * 6.894757293 ? Math.Min(StressArea, Math.PI * Math.Pow(Es_min / 2 - 0.16238 / n, 2)) : StressArea;
        _as = Math.PI * n * Kn_max * (1 / (2 * n) + 0.5773502692 * (Es_min - Kn_max));
        _an = Math.PI * n * Ds_min * (1 / (2 * n) + 0.5773502692 * (Ds_min - En_max));
        _le = 2 * StressArea / _as;
        J = _as * male / (_an * female);
        (_c1, _c2, _c3) = rod.Outside is { } outside
            ? Factors((outside.Shape == OutsideShape.Round ? 0.95 : 1) * outside.Across.Mm / Inch / D, 1 / J)
            : (1, 1, 1);
    }

    public double J { get; }

    /// <summary>Square inches.</summary>
    public double StressArea { get; }

    /// <summary>Square inches.</summary>
    public double TensileArea { get; }

    public double RequiredMm => Inch * _le * Math.Max(1 / (_c1 * _c2), J / (_c1 * _c3));

    public static StrengthReference? Of(RodCase rod, JointCase joint) => joint.TensileMpa is { } male && rod.SleeveTensileMpa is { } female
        ? new(rod, joint, male, female)
        : null;

    /// <summary>Newtons that strip the male thread; the shear strength is half the tensile strength.</summary>
    public double MaleStrip(double engagedMm, double male) => _c1 * _c2 * _as * engagedMm / Inch * Inch * Inch * male / 2;

    /// <summary>Newtons that strip the female thread.</summary>
    public double FemaleStrip(double engagedMm, double female) => _c1 * _c3 * _an * engagedMm / Inch * Inch * Inch * female / 2;

    private static (double Ds_min, double Es_min, double En_max, double Kn_max) Limits(ThreadCase thread, double D, double n)
    {
        double P = 1 / n;
        double pitchDiameter = D - 0.6495190528 * P;
        double minorDiameter = D - 1.0825317547 * P;
        if (!thread.Unified)
        {
            // ISO 965-1 for 14 to 20 mm, micrometers: g, Td, Td2 of 6g, TD2 and TD1 of 6H.
            (double g, double Td, double Td2, double TD2, double TD1) = thread.PitchMm == 2 ? (38, 280, 160, 212, 375) : (32, 236, 140, 190, 300);
            const double Micrometer = 0.001 / Inch;
            return (
                D - (g + Td) * Micrometer,
                pitchDiameter - (g + Td2) * Micrometer,
                pitchDiameter + TD2 * Micrometer,
                minorDiameter + TD1 * Micrometer);
        }

        // 11/16-18 is UNS, nine pitches; the others are UNF, the diameter.
        double engaged = D == 0.6875 ? 9 * P : D;
        double tolerance = 0.0015 * Math.Pow(D, 1 / 3d) + 0.0015 * Math.Pow(engaged, 0.5) + 0.015 * Math.Pow(P, 2 / 3d);
        return (
            D - 0.3 * tolerance - 0.06 * Math.Pow(P, 2 / 3d),
            pitchDiameter - 1.3 * tolerance,
            pitchDiameter + 1.3 * tolerance,
            minorDiameter + 0.25 * P - 0.4 * P * P);
    }

    private static (double C1, double C2, double C3) Factors(double width, double Rs)
    {
        double w = Math.Clamp(width, 1.4, 1.9);
        double C2(double r) => 5.594 - 13.682 * r + 14.107 * r * r - 6.057 * r * r * r + 0.9353 * r * r * r * r;
        double c2 = Rs <= 1 ? 0.897 : Rs >= 2.2 ? C2(2.2) : Rs < 2.017 ? Math.Min(C2(Rs), C2(2.017)) : C2(Rs);
        double c3 = Rs >= 1 ? 0.897 : Rs <= 0.4 ? 1 : 0.728 + 1.769 * Rs - 2.896 * Rs * Rs + 1.296 * Rs * Rs * Rs;
        return (-w * w + 3.8 * w - 2.61, c2, c3);
    }
}
