using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>
/// One steered wheel: the upright turns about the steer axis and carries the outer joint; the inner joint stands still.
/// Where one rod joins both wheels, the inner joint is that of the other wheel, which the steering holds: this wheel then
/// turns against it.
/// </summary>
/// <remarks>
/// Axes: x forward, y to the car's left, z up; <c>k</c> the unit vector of the steer axis, upward. With the height
/// <c>h = k.(p - A)</c> and the radius vector <c>r</c> perpendicular to <c>k</c> of each joint, and the signed angle
/// <c>g = atan2(k.(r_in x r_out), r_in.r_out)</c>: <c>L^2 = (h_out - h_in)^2 + |r_out|^2 + |r_in|^2 - 2 |r_out| |r_in| cos g</c>.
/// </remarks>
public sealed record SteeringGeometry
{
    /// <summary>
    /// How near to line the rod may be with the steer axis: sine of the angle between the two radius vectors. Our own choice.
    /// </summary>
    private const double DeadCenter = 1e-3;

    private const double LeastArm = 30;
    private const double MostArm = 500;

    /// <summary>A wheel that points straight across the car, or lies on its side; toe and camber stay below it.</summary>
    private const double MostAngle = Math.PI / 2;

    private SteeringGeometry(CarSide side, Vector onAxis, Vector axis, Vector outer, Vector inner)
    {
        double length = axis.Norm;
        if (!double.IsFinite(length) || !(length > 0))
        {
            throw new ArgumentException("A steer axis needs two different finite points.", nameof(axis));
        }

        Axis = 1 / length * axis;
        double outerHeight = Axis.Dot(outer - onAxis);
        double innerHeight = Axis.Dot(inner - onAxis);
        Vector outerRadius = outer - onAxis - outerHeight * Axis;
        Vector innerRadius = inner - onAxis - innerHeight * Axis;
        Heights = outerHeight - innerHeight;
        OuterRadius = outerRadius.Norm;
        InnerRadius = innerRadius.Norm;
        Squares = Square(Heights) + Square(OuterRadius) + Square(InnerRadius);
        ShortestMm = Math.Sqrt(Square(Heights) + Square(OuterRadius - InnerRadius));
        LongestMm = Math.Sqrt(Square(Heights) + Square(OuterRadius + InnerRadius));
        if (!double.IsFinite(LongestMm))
        {
            throw new ArgumentException("The joints need finite coordinates.", nameof(outer));
        }

        StartAngle = Math.Atan2(Axis.Dot(innerRadius.Cross(outerRadius)), innerRadius.Dot(outerRadius));
        Spin = new Vector(0, 1, 0);
        RunsInward = (side == CarSide.Left ? 1 : -1) * (outer.Y - inner.Y) > 0;
        Side = side;
        LengthMm = (outer - inner).Norm;
    }

    /// <summary>The side of the car.</summary>
    public CarSide Side { get; }

    /// <summary>Distance between the two joints as they stand; toe is counted from there.</summary>
    public Length RodLength => Length.FromMillimeters(LengthMm);

    /// <summary>
    /// Whether it looks like the steering of a wheel: the rod runs from the outer joint toward the other side of the car, and a
    /// change of its length turns the wheel about an arm of 30 to 500 mm (our own choice). If not, a sign or a unit is wrong, or the
    /// rod is nearly in line with the steer axis.
    /// </summary>
    public bool IsLikely => RunsInward && EffectiveArm is >= LeastArm and <= MostArm;

    internal double LengthMm { get; private init; }

    /// <summary>Shortest rod that some angle of the wheel reaches.</summary>
    internal double ShortestMm { get; }

    /// <summary>Longest rod that some angle of the wheel reaches.</summary>
    internal double LongestMm { get; }

    /// <summary>Whether the rod is in line with the steer axis, so that no finite turn answers a change of length.</summary>
    internal bool InLine { get; private init; }

    /// <summary>What the rod gets longer by, millimeters, for a radian of toe-in; negative for a joint ahead of the axle.</summary>
    internal double LengthPerToe => OuterRadius * InnerRadius * Math.Sin(StartAngle) / LengthMm
        / (Inward * (Spin.Y * Aside.X - Spin.X * Aside.Y) / (Square(Spin.X) + Square(Spin.Y)));

    private bool RunsInward { get; }

    /// <summary>What the rod gets longer by for a radian of turn: <c>dL/dg = |r_out| |r_in| sin g / L</c>.</summary>
    private double EffectiveArm => OuterRadius * InnerRadius * Math.Abs(Math.Sin(StartAngle)) / LengthMm;

    private Vector Axis { get; }

    /// <summary><c>h_out - h_in</c>.</summary>
    private double Heights { get; }

    private double OuterRadius { get; }

    private double InnerRadius { get; }

    /// <summary>The angle <c>g</c> as the joints stand.</summary>
    private double StartAngle
    {
        get;
        init => (field, InLine) = (
            value, Math.Abs(Math.Sin(value)) < DeadCenter || Math.Min(OuterRadius, InnerRadius) <= Millimeters.Negligible);
    }

    /// <summary>The spin axis as the joints stand, to the car's left.</summary>
    private Vector Spin
    {
        get;
        init => (field, Aside, Along) = (value, Axis.Cross(value), Axis.Dot(value));
    }

    /// <summary>The steer axis across the spin axis: where that moves to as the wheel turns.</summary>
    private Vector Aside { get; init; }

    /// <summary>How much of the spin axis lies along the steer axis.</summary>
    private double Along { get; init; }

    private int Inward => Side == CarSide.Left ? 1 : -1;

    private double Squares { get; }

    /// <summary>A wheel given by points.</summary>
    /// <param name="side">Side of the car.</param>
    /// <param name="axis">A point of the steer axis.</param>
    /// <param name="secondOnAxis">A second point of the steer axis, in any order.</param>
    /// <param name="outer">Center of the outer joint.</param>
    /// <param name="inner">Center of the inner joint.</param>
    /// <exception cref="ArgumentException">The points of the axis are the same, or a coordinate is not finite.</exception>
    public static SteeringGeometry FromPoints(CarSide side, Point axis, Point secondOnAxis, Point outer, Point inner) =>
        new(side, axis.Millimeter, secondOnAxis.Millimeter - axis.Millimeter, outer.Millimeter, inner.Millimeter);

    /// <summary>A wheel whose steer axis is given by its two angles and a point.</summary>
    /// <param name="side">Side of the car.</param>
    /// <param name="inclination">
    /// King-pin inclination: the angle of the steer axis from the vertical seen from the front, positive where it leans
    /// inward at the top; between -90 and 90 degrees.
    /// </param>
    /// <param name="caster">
    /// Caster: the angle of the steer axis from the vertical seen from the side, positive where it leans rearward at the top;
    /// between -90 and 90 degrees.
    /// </param>
    /// <param name="onAxis">A point of the steer axis.</param>
    /// <param name="outer">Center of the outer joint.</param>
    /// <param name="inner">Center of the inner joint.</param>
    /// <remarks>Both angles are those of the axis projected on a plane of the car, as ISO 8855 has them (from memory).</remarks>
    /// <exception cref="ArgumentException">An angle is out of its range, or a coordinate is not finite.</exception>
    public static SteeringGeometry FromInclination(
        CarSide side, Angle inclination, Angle caster, Point onAxis, Point outer, Point inner)
    {
        double toward = side == CarSide.Left ? -1 : 1;
        Vector axis = new(
            -Math.Tan(Within(caster, nameof(caster))), toward * Math.Tan(Within(inclination, nameof(inclination))), 1);
        return new SteeringGeometry(side, onAxis.Millimeter, axis, outer.Millimeter, inner.Millimeter);
    }

    /// <summary>
    /// The short form, for who has only a steering-arm length: the steer axis is vertical and the rod lies level, square to
    /// the arm in plan view unless an angle is given.
    /// </summary>
    /// <param name="side">Side of the car.</param>
    /// <param name="arm">Perpendicular from the steer axis to the joint center, above zero.</param>
    /// <param name="joint">Joint behind or ahead of the axle.</param>
    /// <param name="rodAngle">Angle that the one between arm and rod has over 90 degrees; between -90 and 90 degrees.</param>
    /// <param name="rod">Length of the rod, above zero.</param>
    /// <exception cref="ArgumentException">A value is not finite or out of its range.</exception>
    public static SteeringGeometry FromArm(CarSide side, Length arm, JointPlace joint, Angle rodAngle, Length rod)
    {
        double angle = Within(rodAngle, nameof(rodAngle));
        double length = Millimeters.Positive(rod, nameof(rod));
        int ahead = joint == JointPlace.AheadOfAxle ? 1 : -1;
        int left = side == CarSide.Left ? 1 : -1;
        Vector outer = new(ahead * Millimeters.Positive(arm, nameof(arm)), 0, 0);
        Vector inner = outer + length * new Vector(ahead * Math.Sin(angle), -left * Math.Cos(angle), 0);
        return new SteeringGeometry(side, default, new Vector(0, 0, 1), outer, inner);
    }

    /// <summary>
    /// The same wheel where its toe and camber are known as the joints stand; without this both are zero there.
    /// </summary>
    /// <param name="toe">Toe, toe-in positive; between -90 and 90 degrees.</param>
    /// <param name="camber">Camber, positive where the wheel leans outward at the top; between -90 and 90 degrees.</param>
    /// <exception cref="ArgumentException">An angle is not finite or out of its range.</exception>
    public SteeringGeometry Aligned(Angle toe, Angle camber) => this with { Spin = SpinOf(Side, toe, camber) };

    /// <summary>
    /// The same wheel turned as a rod of another length turns it: its joints then stand that far apart. Toe and camber go with
    /// it; see <see cref="Aligned"/> for where they were measured there.
    /// </summary>
    /// <param name="rod">Length of the rod, ball center to ball center.</param>
    /// <returns>The wheel, or null where the rod is out of reach or in line with the steer axis.</returns>
    public SteeringGeometry? Turned(Length rod)
    {
        double length = Millimeters.Of(rod);
        if (length == LengthMm)
        {
            return this;
        }

        double turn = InLine ? double.NaN : TurnFor(length);
        return double.IsFinite(turn) ? this with { LengthMm = length, StartAngle = StartAngle + turn, Spin = SpinAfter(turn) } : null;
    }

    /// <summary>
    /// The turn of the upright about the steer axis, right-handed, that a rod of a length gives; not finite out of reach.
    /// </summary>
    internal double TurnFor(double length)
    {
        if (!(length >= ShortestMm - Millimeters.Negligible && length <= LongestMm + Millimeters.Negligible))
        {
            return double.NaN;
        }

        // At the ends of the reach what doubles lose may take the cosine beyond one.
        double cosine = Math.Clamp((Squares - Square(length)) / (2 * OuterRadius * InnerRadius), -1, 1);
        return Math.CopySign(Math.Acos(cosine), StartAngle) - StartAngle;
    }

    /// <summary>The rod length at a turn of the upright, and whether the turn stays on this side of dead center.</summary>
    internal (double Length, bool Within) LengthAt(double turn)
    {
        double angle = StartAngle + turn;
        double square = Squares - 2 * OuterRadius * InnerRadius * Math.Cos(angle);
        bool within = Math.Sign(angle) == Math.Sign(StartAngle) && Math.Abs(angle) < Math.PI;
        return (Math.Sqrt(Math.Max(0, square)), within);
    }

    /// <summary>
    /// Toe, in radians, toe-in positive, after a turn of the upright: the angle toward the car's center line of the wheel's
    /// ground line, the horizontal line in the wheel plane, <c>(spin axis) x z</c>.
    /// </summary>
    internal double ToeAfter(double turn)
    {
        Vector spin = SpinAfter(turn);
        return Inward * Math.Atan2(spin.X, spin.Y);
    }

    /// <summary>
    /// The turn of the upright that gives a toe: <c>spin(turn)</c> stands square to the wanted ground line. Not finite where
    /// none does.
    /// </summary>
    internal double TurnForToe(double toe)
    {
        Vector along = Along * Axis;
        Vector across = Spin - along;
        (double sine, double cosine) = Math.SinCos(Inward * toe);
        double Part(Vector v) => v.X * cosine - v.Y * sine;

        // Part(along) + Part(across) cos(turn) + Part(Aside) sin(turn) = 0 has two answers; the ground line of one may point
        // backward. Of those that point forward the nearer one is meant.
        double phase = Math.Atan2(Part(Aside), Part(across));
        double half = Math.Acos(-Part(along) / Math.Sqrt(Square(Part(across)) + Square(Part(Aside))));
        double nearest = double.NaN;
        foreach (double answer in (ReadOnlySpan<double>)[phase + half, phase - half])
        {
            double turn = Math.IEEERemainder(answer, 2 * Math.PI);
            Vector spin = SpinAfter(turn);
            if (spin.X * sine + spin.Y * cosine > 0 && !(Math.Abs(turn) >= Math.Abs(nearest)))
            {
                nearest = turn;
            }
        }

        return nearest;
    }

    /// <summary>The spin axis of a wheel, to the car's left, at a toe and a camber.</summary>
    internal static Vector SpinOf(CarSide side, Angle toe, Angle camber)
    {
        int inward = side == CarSide.Left ? 1 : -1;
        (double sine, double cosine) = Math.SinCos(inward * Within(toe, nameof(toe)));
        (double lean, double upright) = Math.SinCos(Within(camber, nameof(camber)));
        return new Vector(upright * sine, upright * cosine, -inward * lean);
    }

    private static double Square(double value) => value * value;

    /// <summary>Radians of an angle that must be finite and less than a right angle either way.</summary>
    private static double Within(Angle angle, string name)
    {
        double radians = angle.Radians;
        return double.IsFinite(radians) && Math.Abs(radians) < MostAngle
            ? radians
            : throw new ArgumentException("The angle must lie between -90 and 90 degrees.", name);
    }

    /// <summary>The spin axis turned about the steer axis (Rodrigues' formula).</summary>
    private Vector SpinAfter(double turn)
    {
        (double sine, double cosine) = Math.SinCos(turn);
        return cosine * Spin + sine * Aside + (Along * (1 - cosine)) * Axis;
    }
}
