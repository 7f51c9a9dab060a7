using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>
/// A double-wishbone corner as it stands at ride height: two arms, the upright between their ball joints, and the rod that
/// keeps the upright from turning. For an angle of the lower arm everything follows in closed form.
/// </summary>
/// <remarks>
/// The lower ball joint goes on a circle about the lower arm's axis; the upper one is where the upper arm's circle meets the sphere of
/// the upright about the lower one; the outer joint is where three spheres meet: about the two ball joints and about the inner
/// joint. Of two answers each time the one is taken that the corner stands at. Wheel center and spin axis go with the upright.
/// Axes: x forward, y to the car's left, z up.
/// </remarks>
public sealed record CornerGeometry
{
    /// <summary>Nearer than this, points count as the same; sine of an angle below which parts count as in line. Our own choice.</summary>
    private const double Same = 1;

    private const double InLine = 1e-3;

    /// <summary>100 m, in millimeters, beyond any car; much farther away doubles no longer tell the joints apart. Our own choice.</summary>
    private const double Farthest = 100_000;

    private readonly Hinge _lower;
    private readonly Hinge _upper;
    private readonly CornerState _start;
    private readonly double _ballToBall;
    private readonly (double First, double Second, double Third) _radii;
    private readonly int _rodSide;
    private readonly int _upperSide;

    private CornerGeometry(CarSide side, Wishbone lower, Wishbone upper, Vector outer, Vector inner, Vector wheel, Vector spin)
    {
        (Side, Lower, Upper) = (side, lower, upper);
        (_lower, _upper) = (Hinge.Of(lower), Hinge.Of(upper));
        (Vector low, Vector high) = (lower.Ball.Millimeter, upper.Ball.Millimeter);
        _start = new CornerState(low, high, outer, inner, wheel, spin, Triangle.Of(low, high, outer));
        _ballToBall = (high - low).Norm;
        _radii = ((outer - low).Norm, (outer - high).Norm, (outer - inner).Norm);
        _rodSide = (high - low).Cross(inner - low).Dot(outer - low) > 0 ? 1 : -1;
        _upperSide = _upper.AnglesAt(_ballToBall, low).Middle > 0 ? -1 : 1;
    }

    /// <summary>The side of the car.</summary>
    public CarSide Side { get; }

    /// <summary>The lower arm.</summary>
    public Wishbone Lower { get; }

    /// <summary>The upper arm.</summary>
    public Wishbone Upper { get; }

    /// <summary>Center of the outer joint at ride height.</summary>
    public Point Outer => PointOf(_start.Outer);

    /// <summary>Center of the inner joint, the steering straight ahead.</summary>
    public Point Inner => PointOf(_start.Inner);

    /// <summary>Wheel center at ride height.</summary>
    public Point Wheel => PointOf(_start.Wheel);

    /// <summary>Length of the rod, ball center to ball center.</summary>
    public Length RodLength => Length.FromMillimeters(_radii.Third);

    /// <summary>The wheel at ride height: the steer axis goes through the two ball joints.</summary>
    public SteeringGeometry Steering
    {
        get
        {
            (double toe, double camber) = Alignment(_start.Spin);
            return SteeringGeometry.FromPoints(Side, Lower.Ball, Upper.Ball, Outer, Inner)
                .Aligned(Angle.FromRadians(toe), Angle.FromRadians(camber));
        }
    }

    internal CornerState Start => _start;

    private int Inward => Side == CarSide.Left ? 1 : -1;

    /// <summary>A corner given by its points at ride height, toe and camber zero there.</summary>
    /// <param name="side">Side of the car.</param>
    /// <param name="lower">Lower arm.</param>
    /// <param name="upper">Upper arm.</param>
    /// <param name="outer">Center of the outer joint of the rod.</param>
    /// <param name="inner">Center of the inner joint of the rod.</param>
    /// <param name="wheel">Wheel center.</param>
    /// <exception cref="ArgumentException">
    /// The points are none of a corner, <see cref="FaultOf"/> says why; or a coordinate is over 100 m.
    /// </exception>
    public static CornerGeometry FromPoints(CarSide side, Wishbone lower, Wishbone upper, Point outer, Point inner, Point wheel)
    {
        ArgumentNullException.ThrowIfNull(lower);
        ArgumentNullException.ThrowIfNull(upper);
        return FaultOf(side, lower, upper, outer, inner, wheel) is { } fault
            ? throw new ArgumentException($"The points are none of a corner: {fault}.", nameof(lower))
            : Made(side, lower, upper, outer, inner, wheel);
    }

    /// <summary>Why points are none of a corner, or null where they are.</summary>
    /// <param name="side">Side of the car.</param>
    /// <param name="lower">Lower arm.</param>
    /// <param name="upper">Upper arm.</param>
    /// <param name="outer">Center of the outer joint of the rod.</param>
    /// <param name="inner">Center of the inner joint of the rod.</param>
    /// <param name="wheel">Wheel center.</param>
    /// <exception cref="ArgumentException">A coordinate is over 100 m, which no car has.</exception>
    public static CornerFault? FaultOf(CarSide side, Wishbone lower, Wishbone upper, Point outer, Point inner, Point wheel)
    {
        ArgumentNullException.ThrowIfNull(lower);
        ArgumentNullException.ThrowIfNull(upper);
        Point[] points = [lower.First, lower.Second, lower.Ball, upper.First, upper.Second, upper.Ball, outer, inner, wheel];
        if (!Array.TrueForAll(points, point => IsNear(point.Millimeter)))
        {
            throw new ArgumentException("A coordinate is over 100 m.", nameof(lower));
        }

        CornerGeometry made = Made(side, lower, upper, outer, inner, wheel);
        Vector axis = made._start.Upper - made._start.Lower;
        return !Far(lower.First, lower.Second) ? CornerFault.LowerAxisIsAPoint
            : !Far(upper.First, upper.Second) ? CornerFault.UpperAxisIsAPoint
            : !(made._lower.Radius > Same) ? CornerFault.LowerBallOnAxis
            : !(made._upper.Radius > Same) ? CornerFault.UpperBallOnAxis
            : !(made._ballToBall > Same) ? CornerFault.BallsMeet
            : !(Math.Abs(Math.Sin(made._upper.AnglesAt(made._ballToBall, made._start.Lower).Middle)) > InLine)
                ? CornerFault.UprightInLine
            : !(Sine(axis, outer.Millimeter - made._start.Lower, inner.Millimeter - made._start.Lower) > InLine) ? CornerFault.RodInLine
            : !(Math.Abs(new CornerPath(made).RiseAtRideHeight) > InLine * made._lower.Radius) ? CornerFault.WheelDoesNotRise
            : null;
    }

    /// <summary>The same corner where toe and camber at ride height are known; without this both are zero there.</summary>
    /// <param name="toe">Toe, toe-in positive; between -90 and 90 degrees.</param>
    /// <param name="camber">Camber, positive where the wheel leans outward at the top; between -90 and 90 degrees.</param>
    /// <exception cref="ArgumentException">An angle is not finite or out of its range.</exception>
    public CornerGeometry Aligned(Angle toe, Angle camber)
    {
        Vector spin = SteeringGeometry.SpinOf(Side, toe, camber);
        return new CornerGeometry(Side, Lower, Upper, _start.Outer, _start.Inner, _start.Wheel, spin);
    }

    /// <summary>
    /// The same corner with the joints of the rod moved at ride height. The rod gets the length that keeps the toe there.
    /// </summary>
    /// <param name="moves">How they are moved.</param>
    /// <returns>The corner, or null where that leaves none.</returns>
    public CornerGeometry? Moved(JointMoves moves)
    {
        (double raise, double lift, double longer) = moves.InMillimeters;
        Vector along = _start.Inner - _start.Outer;
        Vector inner = _start.Inner + longer / along.Norm * along + new Vector(0, 0, lift);
        Vector outer = _start.Outer + new Vector(0, 0, raise);
        return IsNear(outer) && IsNear(inner) && FaultOf(Side, Lower, Upper, PointOf(outer), PointOf(inner), Wheel) is null
            ? new CornerGeometry(Side, Lower, Upper, outer, inner, _start.Wheel, _start.Spin)
            : null;
    }

    /// <summary>The corner at a travel of the wheel.</summary>
    /// <param name="travel">How far the wheel center is above ride height; below it negative.</param>
    /// <param name="steer">
    /// How far the steering has moved the inner joint to the car's left. The arms stand as they do at that travel straight ahead.
    /// </param>
    /// <returns>The corner there, or null where its parts do not reach.</returns>
    public CornerPosition? At(Length travel, Length steer = default) =>
        new CornerPath(this).At(Millimeters.Of(travel), Millimeters.Of(steer)) is { } state ? PositionOf(state) : null;

    /// <summary>The corner at an angle of its lower arm, in closed form.</summary>
    /// <param name="angle">The angle, counted from ride height, right-handed about the axis from its first point to its second.</param>
    /// <returns>The corner there, or null where its parts do not reach.</returns>
    public CornerPosition? AtLowerArm(Angle angle) => StateAt(angle.Radians, 0) is { Exists: true } state ? PositionOf(state) : null;

    /// <summary>The corner at an angle of its lower arm, with the inner joint moved to the left; it may not exist.</summary>
    internal CornerState StateAt(double angle, double steer)
    {
        Vector lower = _lower.At(angle);
        (double middle, double half) = _upper.AnglesAt(_ballToBall, lower);
        Vector upper = _upper.At(middle + _upperSide * half);
        Vector inner = _start.Inner + new Vector(0, steer, 0);
        Vector outer = Triangle.Meet(lower, upper, inner, _radii, _rodSide);
        Triangle upright = Triangle.Of(lower, upper, outer);
        return new CornerState(
            lower, upper, outer, inner, _start.Upright.Moved(_start.Wheel, upright), _start.Upright.Turned(_start.Spin, upright), upright);
    }

    /// <summary>Toe, in radians, at a travel, less that at ride height; not finite where the parts do not reach.</summary>
    internal double ToeChange(CornerPath path, double travel) => path.At(travel, 0) is { } state
        ? Alignment(state.Spin).Toe - Alignment(_start.Spin).Toe
        : double.NaN;

    private static CornerGeometry Made(CarSide side, Wishbone lower, Wishbone upper, Point outer, Point inner, Point wheel) =>
        new(side, lower, upper, outer.Millimeter, inner.Millimeter, wheel.Millimeter, new Vector(0, 1, 0));

    private static bool IsNear(Vector place) => Math.Max(Math.Abs(place.X), Math.Max(Math.Abs(place.Y), Math.Abs(place.Z))) <= Farthest;

    private static bool Far(Point first, Point second) => (first.Millimeter - second.Millimeter).Norm > Same;

    /// <summary>Sine of the angle at an axis between the directions to two points; 0 where one lies on the axis.</summary>
    private static double Sine(Vector axis, Vector first, Vector second)
    {
        Vector one = first.Cross(axis);
        Vector other = second.Cross(axis);
        return Math.Abs(axis.Dot(first.Cross(second))) * axis.Norm / (one.Norm * other.Norm);
    }

    private static Point PointOf(Vector vector) =>
        new(Length.FromMillimeters(vector.X), Length.FromMillimeters(vector.Y), Length.FromMillimeters(vector.Z));

    private (double Toe, double Camber) Alignment(Vector spin) =>
        (Inward * Math.Atan2(spin.X, spin.Y), -Inward * Math.Asin(Math.Clamp(spin.Z, -1, 1)));

    private CornerPosition PositionOf(CornerState state)
    {
        (double toe, double camber) = Alignment(state.Spin);
        return new CornerPosition
        {
            Travel = Length.FromMillimeters(state.Wheel.Z - _start.Wheel.Z),
            Toe = Angle.FromRadians(toe),
            Camber = Angle.FromRadians(camber),
            LowerBall = PointOf(state.Lower),
            UpperBall = PointOf(state.Upper),
            Outer = PointOf(state.Outer),
            Inner = PointOf(state.Inner),
            Wheel = PointOf(state.Wheel),
        };
    }
}
