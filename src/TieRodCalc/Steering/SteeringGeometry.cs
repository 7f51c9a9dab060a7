using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>
/// One steered wheel: the upright turns about the steer axis and carries the outer joint; the inner joint stands still.
/// Where one rod joins both wheels, the inner joint is that of the other wheel, held still: the toe is then that of both
/// wheels together.
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

    private readonly Vector _axis;
    private readonly double _heights;
    private readonly double _outerRadius;
    private readonly double _innerRadius;
    private readonly double _startAngle;
    private readonly int _inward;

    private SteeringGeometry(CarSide side, Vector onAxis, Vector axis, Vector outer, Vector inner)
    {
        double length = axis.Norm;
        if (!double.IsFinite(length) || !(length > 0))
        {
            throw new ArgumentException("A steer axis needs two different finite points.", nameof(axis));
        }

        _axis = (axis.Z < 0 ? -1 : 1) / length * axis;
        double outerHeight = _axis.Dot(outer - onAxis);
        double innerHeight = _axis.Dot(inner - onAxis);
        Vector outerRadius = outer - onAxis - outerHeight * _axis;
        Vector innerRadius = inner - onAxis - innerHeight * _axis;
        _heights = outerHeight - innerHeight;
        _outerRadius = outerRadius.Norm;
        _innerRadius = innerRadius.Norm;
        if (!double.IsFinite(_outerRadius) || !double.IsFinite(_innerRadius) || !double.IsFinite(_heights))
        {
            throw new ArgumentException("The joints need finite coordinates.", nameof(outer));
        }

        _startAngle = Math.Atan2(_axis.Dot(innerRadius.Cross(outerRadius)), innerRadius.Dot(outerRadius));
        _inward = side == CarSide.Left ? 1 : -1;
        Side = side;
        LengthMm = (outer - inner).Norm;
    }

    /// <summary>The side of the car.</summary>
    public CarSide Side { get; }

    /// <summary>Distance between the two joints as given; toe is counted from there.</summary>
    public Length RodLength => Length.FromMillimeters(LengthMm);

    internal double LengthMm { get; }

    /// <summary>Shortest rod that some angle of the wheel reaches.</summary>
    internal double ShortestMm => Math.Sqrt(Square(_heights) + Square(_outerRadius - _innerRadius));

    /// <summary>Longest rod that some angle of the wheel reaches.</summary>
    internal double LongestMm => Math.Sqrt(Square(_heights) + Square(_outerRadius + _innerRadius));

    /// <summary>Whether the rod is in line with the steer axis, so that no finite turn answers a change of length.</summary>
    internal bool InLine =>
        Math.Abs(Math.Sin(_startAngle)) < DeadCenter
        || _outerRadius <= Millimeters.Negligible
        || _innerRadius <= Millimeters.Negligible;

    private double Squares => Square(_heights) + Square(_outerRadius) + Square(_innerRadius);

    /// <summary>A wheel given by points.</summary>
    /// <param name="side">Side of the car.</param>
    /// <param name="axis">A point of the steer axis.</param>
    /// <param name="secondOnAxis">A second point of the steer axis, in any order.</param>
    /// <param name="outer">Center of the outer joint.</param>
    /// <param name="inner">Center of the inner joint.</param>
    /// <exception cref="ArgumentException">The points of the axis are the same, or a coordinate is not finite.</exception>
    public static SteeringGeometry FromPoints(CarSide side, Point axis, Point secondOnAxis, Point outer, Point inner) =>
        new(side, axis.Millimeter, secondOnAxis.Millimeter - axis.Millimeter, outer.Millimeter, inner.Millimeter);

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
        double angle = rodAngle.Radians;
        if (!double.IsFinite(angle) || Math.Abs(angle) >= Math.PI / 2)
        {
            throw new ArgumentException("The rod angle must lie between -90 and 90 degrees.", nameof(rodAngle));
        }

        double length = Millimeters.Positive(rod, nameof(rod));
        int ahead = joint == JointPlace.AheadOfAxle ? 1 : -1;
        int left = side == CarSide.Left ? 1 : -1;
        Vector outer = new(ahead * Millimeters.Positive(arm, nameof(arm)), 0, 0);
        Vector inner = outer + length * new Vector(ahead * Math.Sin(angle), -left * Math.Cos(angle), 0);
        return new SteeringGeometry(side, default, new Vector(0, 0, 1), outer, inner);
    }

    /// <summary>
    /// The turn of the upright about the steer axis, right-handed, that a rod of a length gives; not finite out of reach.
    /// </summary>
    internal double TurnFor(double length)
    {
        double cosine = (Squares - Square(length)) / (2 * _outerRadius * _innerRadius);
        return Math.CopySign(Math.Acos(cosine), _startAngle) - _startAngle;
    }

    /// <summary>The rod length at a turn of the upright, and whether the turn stays on this side of dead center.</summary>
    internal (double Length, bool Within) LengthAt(double turn)
    {
        double angle = _startAngle + turn;
        double square = Squares - 2 * _outerRadius * _innerRadius * Math.Cos(angle);
        bool within = Math.Sign(angle) == Math.Sign(_startAngle) && Math.Abs(angle) < Math.PI;
        return (Math.Sqrt(Math.Max(0, square)), within);
    }

    /// <summary>
    /// Toe, in radians, toe-in positive, after a turn of the upright: the turn toward the car's center line of the wheel's
    /// ground line, the horizontal line in the wheel plane, <c>(spin axis) x z</c>, with camber and toe zero at the start.
    /// </summary>
    internal double ToeAfter(double turn)
    {
        Vector spin = Turned(turn);
        return _inward * Math.Atan2(spin.X, spin.Y);
    }

    /// <summary>
    /// The turn of the upright that gives a toe: <c>spin(turn)</c> stands square to the wanted ground line. Not finite where
    /// none does.
    /// </summary>
    internal double TurnForToe(double toe)
    {
        Vector spin = new(0, 1, 0);
        Vector along = _axis.Y * _axis;
        Vector across = spin - along;
        Vector aside = _axis.Cross(spin);
        double sine = Math.Sin(_inward * toe);
        double cosine = Math.Cos(_inward * toe);
        double Part(Vector v) => v.X * cosine - v.Y * sine;

        // Part(along) + Part(across) cos(turn) + Part(aside) sin(turn) = 0 has two answers; the ground line of one may point
        // backward. Of those that point forward the nearer one is meant.
        double phase = Math.Atan2(Part(aside), Part(across));
        double half = Math.Acos(-Part(along) / Math.Sqrt(Square(Part(across)) + Square(Part(aside))));
        double nearest = double.NaN;
        foreach (double answer in (ReadOnlySpan<double>)[phase + half, phase - half])
        {
            double turn = Math.IEEERemainder(answer, 2 * Math.PI);
            if (Math.Cos(ToeAfter(turn) - toe) > 0 && !(Math.Abs(turn) >= Math.Abs(nearest)))
            {
                nearest = turn;
            }
        }

        return nearest;
    }

    private static double Square(double value) => value * value;

    /// <summary>The spin axis, at first along y, turned about the steer axis (Rodrigues' formula).</summary>
    private Vector Turned(double turn)
    {
        Vector spin = new(0, 1, 0);
        double cosine = Math.Cos(turn);
        return cosine * spin + Math.Sin(turn) * _axis.Cross(spin) + (_axis.Y * (1 - cosine)) * _axis;
    }
}
