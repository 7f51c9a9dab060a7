using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>What is said of a steering arm, at one place, and whether each thing is said at all.</summary>
internal sealed record ArmParts(Length? Arm, JointPlace? Joint, Angle? RodAngle, bool SaysArm, bool SaysJoint, bool SaysAngle)
{
    /// <summary>Nothing.</summary>
    public static ArmParts None { get; } = new(null, null, null, false, false, false);

    /// <summary>Whether anything is said.</summary>
    public bool Any => SaysArm || SaysJoint || SaysAngle;

    public static ArmParts Read(MapReader map) => new(
        map.Exact("arm", Least.AboveZero),
        map.Choose("joint", Choices.Place),
        map.Angle("rod_angle", degrees => degrees > -90 && degrees < 90, "above -90 and below 90 deg"),
        map.Has("arm"),
        map.Has("joint"),
        map.Has("rod_angle"));

    /// <summary>These where they say something, those for both sides where not.</summary>
    public ArmParts Over(ArmParts common) => new(
        SaysArm ? Arm : common.Arm,
        SaysJoint ? Joint : common.Joint,
        SaysAngle ? RodAngle : common.RodAngle,
        SaysArm || common.SaysArm,
        SaysJoint || common.SaysJoint,
        SaysAngle || common.SaysAngle);

    /// <summary>Reports what an arm needs and neither place says.</summary>
    public void ReportMissing(MapReader map, MapReader steering, ArmParts common)
    {
        if (!SaysArm && !common.SaysArm && !steering.Has("arm"))
        {
            map.Need("arm");
        }

        if (!SaysJoint && !common.SaysJoint && !steering.Has("joint"))
        {
            map.Need("joint");
        }
    }
}
