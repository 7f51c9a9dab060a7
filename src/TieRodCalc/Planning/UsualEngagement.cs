namespace TieRodCalc.Planning;

/// <summary>The engagement that is usual in steering links, in nominal diameters of the male thread (common practice, no source).</summary>
public static class UsualEngagement
{
    /// <summary>Internal thread in steel.</summary>
    public const double SteelDiameters = 1.5;

    /// <summary>Internal thread in aluminum.</summary>
    public const double AluminumDiameters = 2;
}
