using TieRodCalc.Rods;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>Gathers what a plan has to warn of engagement and strength.</summary>
internal static class StrengthWarnings
{
    /// <summary>What each caveat is warned of by.</summary>
    private static readonly (StrengthCaveats Caveat, WarningCode Code)[] Caveats =
    [
        (StrengthCaveats.OutsideUnknown, WarningCode.OutsideUnknown),
        (StrengthCaveats.SleeveTooThin, WarningCode.SleeveTooThin),
        (StrengthCaveats.SleeveSlit, WarningCode.SleeveSlit),
        (StrengthCaveats.BendingBeyondRange, WarningCode.BendingBeyondRange),
        (StrengthCaveats.BeyondTables, WarningCode.BeyondTables),
    ];

    /// <summary>What is said of a joint whether the rod can be built or not.</summary>
    public static void Add(
        List<PlanWarning> warnings, RodSide side, in JointMaterials materials, RequiredEngagement required, bool hasLoad)
    {
        Length usual = Length.FromMillimeters(EngagementRequirement.Usual(materials.Sleeve) * materials.Male.Size.DiameterMm);
        if (Millimeters.Of(required.Asked) < Millimeters.Of(usual) - Millimeters.Negligible)
        {
            warnings.Add(new(WarningCode.EngagementBelowRule, side, required.Asked, usual));
        }

        if (required.Strength is not { } strength)
        {
            warnings.Add(new(WarningCode.StrengthNotChecked, side, Missing: materials.Missing));
            if (hasLoad)
            {
                warnings.Add(new(WarningCode.LoadNotChecked, side, Missing: materials.Missing));
            }

            return;
        }

        if (required.GovernedBy == EngagementSource.Strength)
        {
            warnings.Add(new(WarningCode.StrengthGoverns, side, strength.Required, required.Asked, strength.StrengthRatio));
        }

        foreach ((StrengthCaveats caveat, WarningCode code) in Caveats)
        {
            if (strength.Caveats.HasFlag(caveat))
            {
                warnings.Add(new(code, side));
            }
        }
    }

    /// <summary>A joint that gives way under the load.</summary>
    public static void AddLoad(List<PlanWarning> warnings, RodSide side, JointPlan? joint)
    {
        if (joint?.Strength.Load?.LeastFactor is { } factor and < 1)
        {
            warnings.Add(new(WarningCode.GivesWayUnderLoad, side, Ratio: factor));
        }
    }
}
