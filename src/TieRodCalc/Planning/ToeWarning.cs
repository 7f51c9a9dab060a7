using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What a plan of toe warns of, or what it took for granted.</summary>
public enum ToeWarningCode
{
    /// <summary>The rod's length was not measured: the planned one was taken.</summary>
    PresentLengthPlanned,

    /// <summary>The setting was taken from the plan of the rod, moved to the present length by the sleeve.</summary>
    SettingFromPlan,

    /// <summary>The plan of the rod has no setting: the limits were not checked.</summary>
    NotBuildable,

    /// <summary>The end may have been cut, and by how much is not known: the limits were not checked.</summary>
    CutNotKnown,

    /// <summary>The rod is past a limit as it is; the move brings it back inside.</summary>
    PastALimit,

    /// <summary>The rod that is not turned is past a limit as it is.</summary>
    StaysPastALimit,

    /// <summary>Thread showing or cut were measured otherwise than the plan has them: the limits were not checked.</summary>
    BuiltDiffers,

    /// <summary>
    /// The steering does not look like that of a wheel: a sign or unit may be wrong, or the rod is nearly in line with the axis.
    /// </summary>
    SteeringUnlikely,

    /// <summary>The joints as given stand further apart than the rod is long, or nearer. Value: by how much.</summary>
    PointsAtOtherLength,

    /// <summary>No joint of the rod is locked.</summary>
    NotLocked,

    /// <summary>The nut at the end keeps less than one pitch to be backed off by after the move. Value: how much.</summary>
    LittleRoomForTheNut,

    /// <summary>Only the total was measured: each wheel is taken to stand at half of it.</summary>
    HalvesAssumed,

    /// <summary>One rod makes up the whole change: the steering wheel leaves its center.</summary>
    SteeringWheelLeavesCenter,

    /// <summary>One rod joins both wheels: the side named is taken to be held by the steering.</summary>
    WheelHeld,
}

/// <summary>A warning of a plan of toe.</summary>
/// <param name="Code">What it is about.</param>
/// <param name="Side">The wheel that it is about, or null.</param>
/// <param name="End">The end of that wheel's rod, or null.</param>
/// <param name="Value">A length, or null; its meaning is said at the code.</param>
public sealed record ToeWarning(ToeWarningCode Code, CarSide? Side = null, RodSide? End = null, Length? Value = null);
