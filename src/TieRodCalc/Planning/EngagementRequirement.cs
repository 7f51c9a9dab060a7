using TieRodCalc.Parts;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>The engagement that a joint is required to have.</summary>
internal static class EngagementRequirement
{
    /// <summary>The usual rule, in diameters of the male thread.</summary>
    /// <param name="female">The material of the internal thread, or null where it was not said.</param>
    public static double Usual(Material? female) => female?.Kind == MaterialKind.Aluminum
        ? UsualEngagement.AluminumDiameters
        : UsualEngagement.SteelDiameters;

    /// <summary>The requirement of one joint.</summary>
    /// <param name="joint">What is known of the strength of the joint.</param>
    /// <param name="rule">What the job asks for, or null.</param>
    public static RequiredEngagement Of(in JointMaterials joint, EngagementRule? rule)
    {
        double diameters = rule?.InDiameters ?? Usual(joint.Sleeve);
        return new(
            diameters,
            Length.FromMillimeters(diameters * joint.Male.Size.DiameterMm),
            rule?.AsLength,
            joint is { Pair: { } pair, MaleTensile: { } male, FemaleTensile: { } female }
                ? pair.RequiredEngagement(male, female, joint.Wall)
                : null);
    }

    /// <summary>Whether the rule for steel was taken without knowing that the sleeve is steel.</summary>
    public static bool AssumesSteel(Material? female, EngagementRule? rule) =>
        rule is null && female?.Kind is null or MaterialKind.Other;
}
