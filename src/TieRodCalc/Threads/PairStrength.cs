namespace TieRodCalc.Threads;

/// <summary>
/// The areas of a pair of threads that its strength follows from, square millimeters, shear areas per millimeter of engagement
/// (ASME B1.1 appendix B, FED-STD-H28/2B):
/// <c>As = pi n Kn_max (1/(2n) + 0.57735 (Es_min - Kn_max))</c>, <c>An = pi n Ds_min (1/(2n) + 0.57735 (Ds_min - En_max))</c>.
/// </summary>
internal readonly record struct PairStrength(double StressArea, double HighStrengthArea, double MaleShear, double FemaleShear)
{
    /// <summary>The areas at the loosest limits.</summary>
    public static PairStrength Of(in ThreadMember male, in SizeLimits external, in SizeLimits @internal)
    {
        double P = male.PitchMm;
        double Kn_max = @internal.MinorMost;
        double Es_min = external.PitchLeast;
        double Ds_min = external.MajorLeast;
        double En_max = @internal.PitchMost;
        return new(
            ThreadProfile.StressArea(male.Form, male.DiameterMm, P),
            ThreadProfile.HighStrengthArea(Es_min, P),
            Math.PI / P * Kn_max * (P / 2 + ThreadProfile.FlankTangent * (Es_min - Kn_max)),
            Math.PI / P * Ds_min * (P / 2 + ThreadProfile.FlankTangent * (Ds_min - En_max)));
    }

    /// <summary>False where the threads do not even meet at their loosest limits.</summary>
    public bool Holds => MaleShear > 0 && FemaleShear > 0;

    /// <summary>The tensile stress area that counts: above 100 ksi the smaller of the two.</summary>
    public double TensileArea(double maleMPa)
    {
        const double HighStrength = 689.4757293168361; // 100 ksi
        return maleMPa > HighStrength + Millimeters.Negligible ? Math.Min(StressArea, HighStrengthArea) : StressArea;
    }

    /// <summary><c>J = As Rm_male / (An Rm_female)</c>: above 1 the female thread is the weaker one.</summary>
    public double Ratio(double maleMPa, double femaleMPa) => MaleShear * maleMPa / (FemaleShear * femaleMPa);

    /// <summary>
    /// The engagement at which the male breaks before either thread strips: <c>Le = 2 At / As</c>, times <c>max(1, J)</c>; with what is
    /// known of the female's outside <c>Le max(1 / (C1 C2), J / (C1 C3))</c>.
    /// </summary>
    public double RequiredEngagement(double ratio, in StripFactors factors) =>
        2 * StressArea / MaleShear
            * Math.Max(1 / (factors.Dilation * factors.MaleBending), ratio / (factors.Dilation * factors.FemaleBending));

    /// <summary>
    /// The load in newtons that strips the male thread; the shear strength is half the tensile strength, as in <c>Le</c>.
    /// </summary>
    public double MaleStrip(double maleMPa, double engaged, in StripFactors factors) =>
        factors.Dilation * factors.MaleBending * MaleShear * engaged * maleMPa / 2;

    /// <summary>The load in newtons that strips the female thread.</summary>
    public double FemaleStrip(double femaleMPa, double engaged, in StripFactors factors) =>
        factors.Dilation * factors.FemaleBending * FemaleShear * engaged * femaleMPa / 2;
}
