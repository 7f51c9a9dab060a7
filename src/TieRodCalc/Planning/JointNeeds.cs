using TieRodCalc.Rods;

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
}
