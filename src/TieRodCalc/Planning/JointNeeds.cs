using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What one joint is made of, and the engagement that it is required to have.</summary>
internal sealed record JointNeeds(RodSide Side, JointMaterials Materials, RequiredEngagement Required)
{
    public double RequiredMm => Millimeters.Of(Required.Required);

    public static JointNeeds Of(RodParts parts, RodSide side, PlanRules rules)
    {
        JointMaterials materials = JointMaterials.Of(parts, side);
        return new(side, materials, EngagementRequirement.Of(materials, rules.EngagementAt(side)));
    }

    /// <summary>Required engagement where the sleeve's outside has another width.</summary>
    public static double RequiredAt(RodParts parts, RodSide side, PlanRules rules, Length across)
    {
        JointMaterials materials = JointMaterials.Of(parts, side);
        Outside outside = parts.Sleeve!.Outside! with { Across = new Measured(across) };
        return Millimeters.Of(
            EngagementRequirement.Of(materials with { Wall = outside.Wall(materials.Wall.Slit) }, rules.EngagementAt(side)).Required);
    }
}
