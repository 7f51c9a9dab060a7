namespace TieRodCalc.Threads;

/// <summary>
/// What lets threads strip sooner than their shear areas say: the wall of the female part dilates (C1), the threads of the male
/// (C2) and of the female (C3) bend. E. M. Alexander, SAE paper 770420, 1977; also in ISO/TR 16224. From memory.
/// </summary>
internal readonly record struct StripFactors(double Dilation, double MaleBending, double FemaleBending, StrengthCaveats Caveats)
{
    private const double ThickWall = 1.9;
    private const double ThinWall = 1.4;
    private const double Even = 1;
    public const double StrongFemale = 2.2;
    public const double WeakFemale = 0.4;
    private const double LeastBending = 0.897;

    /// <summary>The factors of a pair.</summary>
    /// <param name="widthToDiameter">
    /// Width of the female part over the nominal diameter, <c>s/D</c>; null where it is not known: then no factor is counted.
    /// </param>
    /// <param name="slit">Whether the female part is slit: outside the method.</param>
    /// <param name="ratio"><c>J</c>; the strength ratio of the method is <c>Rs = 1 / J</c>.</param>
    public static StripFactors Of(double? widthToDiameter, bool slit, double ratio)
    {
        StrengthCaveats caveats = slit ? StrengthCaveats.SleeveSlit : StrengthCaveats.None;
        if (widthToDiameter is not { } width)
        {
            return new(1, 1, 1, caveats | StrengthCaveats.OutsideUnknown);
        }

        caveats |= width < ThinWall - Millimeters.Negligible ? StrengthCaveats.SleeveTooThin : StrengthCaveats.None;
        double Rs = 1 / ratio;
        caveats |= Rs is >= StrongFemale or <= WeakFemale ? StrengthCaveats.BendingBeyondRange : StrengthCaveats.None;
        return new(DilationOf(width), MaleBendingOf(Rs), FemaleBendingOf(Rs), caveats);
    }

    /// <summary>
    /// <c>C1 = -(s/D)^2 + 3.8 s/D - 2.61</c> from 1.4 to 1.9, 1 above. A thinner wall is outside the method; it is no better than the
    /// thinnest within, whose value bounds it.
    /// </summary>
    private static double DilationOf(double width)
    {
        double within = Math.Max(width, ThinWall);
        return within >= ThickWall ? 1 : -within * within + 3.8 * within - 2.61;
    }

    /// <summary>
    /// <c>C2 = 5.594 - 13.682 Rs + 14.107 Rs^2 - 6.057 Rs^3 + 0.9353 Rs^4</c> for 1 &lt; Rs &lt; 2.2, 0.897 up to 1. A female stronger than
    /// that does not weaken the male thread: the value at 2.2 bounds it.
    /// </summary>
    private static double MaleBendingOf(double Rs)
    {
        // The polynomial dips by 0.2 percent at 2.017; a female that gets stronger must not count against the male.
        const double Dip = 2.016879471;
        double within = Math.Min(Rs, StrongFemale);
        return within <= Even ? LeastBending : within < Dip ? Math.Min(Polynomial(within), Polynomial(Dip)) : Polynomial(within);

        static double Polynomial(double Rs) => 5.594 + Rs * (-13.682 + Rs * (14.107 + Rs * (-6.057 + Rs * 0.9353)));
    }

    /// <summary>
    /// <c>C3 = 0.728 + 1.769 Rs - 2.896 Rs^2 + 1.296 Rs^3</c> for 0.4 &lt; Rs &lt; 1, 0.897 from 1 up. For a weaker female nothing is
    /// computed: what bending adds within (1.055 at 0.4) is not counted there.
    /// </summary>
    private static double FemaleBendingOf(double Rs) => Rs switch
    {
        >= Even => LeastBending,
        > WeakFemale => 0.728 + Rs * (1.769 + Rs * (-2.896 + Rs * 1.296)),
        _ => 1,
    };
}
