using TieRodCalc.Parts;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>The engagement that a joint is required to have.</summary>
internal static class EngagementRequirement
{
    /// <summary>Steering links, steel: 1.5 diameters (common practice, no source).</summary>
    private const double SteelDiameters = 1.5;

    /// <summary>Internal thread in aluminum: 2 diameters (common practice, no source).</summary>
    private const double AluminumDiameters = 2;

    /// <summary>The usual rule, in diameters of the male thread.</summary>
    /// <param name="female">The material of the internal thread, or null where it was not said.</param>
    public static double Usual(Material? female) => female?.Kind == MaterialKind.Aluminum ? AluminumDiameters : SteelDiameters;

    /// <summary>The requirement of one joint.</summary>
    /// <param name="male">The end.</param>
    /// <param name="female">The material of the internal thread, or null where it was not said.</param>
    /// <param name="rule">What the job asks for, or null.</param>
    public static RequiredEngagement Of(ThreadedEnd male, Material? female, EngagementRule? rule)
    {
        double diameters = rule?.InDiameters ?? Usual(female);
        return rule?.AsLength is { } length
            ? new(length, diameters, EngagementSource.Job)
            : new(Length.FromMillimeters(diameters * male.Thread.Size.DiameterMm), diameters, EngagementSource.Rule);
    }

    /// <summary>Whether the rule for steel was taken without knowing that the sleeve is steel.</summary>
    public static bool AssumesSteel(Material? female, EngagementRule? rule) =>
        rule is null && female?.Kind is null or MaterialKind.Other;
}
