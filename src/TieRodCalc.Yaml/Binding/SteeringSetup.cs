using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>The steering arm of one wheel.</summary>
internal sealed record SteeringArm(Length Arm, JointPlace Joint, Angle RodAngle);

/// <summary>The points of one wheel.</summary>
internal sealed record SteeringPoints(Point Axis, Point SecondOnAxis, Point Outer, Point Inner);

/// <summary>One wheel, in one of the two forms.</summary>
internal sealed record SteeringWheel(SteeringArm? Arm, SteeringPoints? Points);

/// <summary>The steering of a job; null where it is silent.</summary>
internal sealed record SteeringSetup(bool OneRod, SteeringWheel? Left, SteeringWheel? Right, Length? Plates)
{
    /// <summary>Of a job that says nothing.</summary>
    public static SteeringSetup Unsaid { get; } = new(false, null, null, null);

    /// <summary>
    /// The wheel that a rod works on. One rod between the wheels is told by the left wheel, and by the right one where only
    /// that is given, whatever side the rod names.
    /// </summary>
    /// <param name="side">The rod's side, or null.</param>
    /// <param name="rod">The rod's length, above zero.</param>
    public SteeringGeometry? GeometryOf(CarSide? side, Length rod)
    {
        CarSide? wanted = OneRod ? Left is not null ? CarSide.Left : CarSide.Right : side;
        SteeringWheel? wheel = wanted == CarSide.Left ? Left : wanted == CarSide.Right ? Right : null;
        return wheel switch
        {
            { Points: { } p } => SteeringGeometry.FromPoints(wanted!.Value, p.Axis, p.SecondOnAxis, p.Outer, p.Inner),
            { Arm: { } arm } => SteeringGeometry.FromArm(wanted!.Value, arm.Arm, arm.Joint, arm.RodAngle, rod),
            _ => null,
        };
    }
}
