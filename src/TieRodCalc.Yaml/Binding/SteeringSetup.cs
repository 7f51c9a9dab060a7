using TieRodCalc.Steering;
using TieRodCalc.Yaml.Sources;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>The steering arm of one wheel.</summary>
internal sealed record SteeringArm(Length Arm, JointPlace Joint, Angle RodAngle);

/// <summary>A steer axis: by a second point, or by its inclination and caster where there is none.</summary>
internal sealed record SteerAxis(Point Through, Point? Second, Angle Inclination, Angle Caster)
{
    /// <summary>How far a point lies from the axis, that of the wheel of a side.</summary>
    public Length DistanceTo(Point point, CarSide side)
    {
        (double X, double Y, double Z) along = Second is { } second
            ? From(second)
            : (-Math.Tan(Caster.Radians), (side == CarSide.Left ? -1 : 1) * Math.Tan(Inclination.Radians), 1);
        (double X, double Y, double Z) to = From(point);
        double x = along.Y * to.Z - along.Z * to.Y;
        double y = along.Z * to.X - along.X * to.Z;
        double z = along.X * to.Y - along.Y * to.X;
        return Length.FromMillimeters(Norm(x, y, z) / Norm(along.X, along.Y, along.Z));
    }

    private static double Norm(double x, double y, double z) => Math.Sqrt(x * x + y * y + z * z);

    private (double X, double Y, double Z) From(Point to) =>
        ((to.X - Through.X).Millimeters, (to.Y - Through.Y).Millimeters, (to.Z - Through.Z).Millimeters);
}

/// <summary>The points of one wheel, and where the inner one stands in the file.</summary>
internal sealed record SteeringPoints(SteerAxis Axis, Point Outer, Point Inner, TextSpan InnerAt);

/// <summary>One wheel, in one of the two forms.</summary>
internal sealed record SteeringWheel(SteeringArm? Arm, SteeringPoints? Points, Angle Camber)
{
    /// <summary>The wheel with a rod of a length, above zero; by points it stands as they were measured, whatever the rod.</summary>
    public SteeringGeometry With(CarSide side, Length rod) => this switch
    {
        { Arm: { } arm } => SteeringGeometry.FromArm(side, arm.Arm, arm.Joint, arm.RodAngle, rod),
        { Points: { Axis: { Second: { } second } axis } p } => SteeringGeometry.FromPoints(side, axis.Through, second, p.Outer, p.Inner),
        { Points: { Axis: { } axis } p } =>
            SteeringGeometry.FromInclination(side, axis.Inclination, axis.Caster, axis.Through, p.Outer, p.Inner),
        _ => throw new InvalidOperationException("A wheel is given by its arm or by points."),
    };
}

/// <summary>The steering of a job; null where it is silent.</summary>
/// <param name="OneRodTurns">
/// Where one rod joins both wheels, the wheel that it turns while the steering holds the other; null where each wheel has a rod.
/// </param>
/// <param name="Left">The left wheel.</param>
/// <param name="Right">The right wheel.</param>
/// <param name="Gauges">What toe is measured across.</param>
/// <param name="Sound">False where something of it could not be read; then what is missing is not asked for again.</param>
internal sealed record SteeringSetup(CarSide? OneRodTurns, SteeringWheel? Left, SteeringWheel? Right, ToeGauges Gauges, bool Sound)
{
    /// <summary>Of a job that says nothing.</summary>
    public static SteeringSetup Unsaid { get; } = new(null, null, null, ToeGauges.None, true);

    /// <summary>The wheel that a rod works on, and its side; null where the steering of that wheel is not given.</summary>
    /// <param name="side">The rod's side, or null.</param>
    public (CarSide Side, SteeringWheel Wheel)? WheelOf(CarSide? side)
    {
        return (OneRodTurns ?? side) is { } turns && Of(turns) is { } wheel ? (turns, wheel) : null;
    }

    /// <summary>The wheel of a side, or null.</summary>
    public SteeringWheel? Of(CarSide side) => side == CarSide.Left ? Left : Right;
}
