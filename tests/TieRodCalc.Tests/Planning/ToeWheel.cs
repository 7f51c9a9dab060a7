using MathNet.Numerics.RootFinding;
using TieRodCalc.Steering;
using TieRodCalc.Tests.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>How the steering of a test case is stated.</summary>
internal enum WheelForm
{
    Points,
    Inclination,
    Arm,
}

/// <summary>
/// A wheel of a test case in millimeters and radians, written from its definition: the outer joint and the spin axis turn about the
/// steer axis by a quaternion, the rod is measured between the joints, and the turn of a length is found by a root finder.
/// </summary>
internal sealed record ToeWheel(CarSide Side, Triple OnAxis, Triple Axis, Triple Outer, Triple Inner)
{
    /// <summary>How far the root finder looks each way; the drawn wheels stay clear of dead center within it.</summary>
    private const double MostTurn = 0.7;

    private const double Fine = 1e-15;
    private const int Steps = 500;

    public required SteeringGeometry Geometry { get; init; }

    public required string Text { get; init; }

    public override string ToString() => Text;

    /// <summary>A corner that a car could have, whose joints stand so far apart. The ranges are invented.</summary>
    public static ToeWheel Draw(Random random, CarSide side, double length)
    {
        double Between(double low, double high) => low + (high - low) * random.NextDouble();

        WheelForm form = (WheelForm)random.Next(3);
        double ahead = random.Next(2) == 0 ? 1 : -1;
        while (true)
        {
            if (form == WheelForm.Arm)
            {
                return OfArm(side, Between(90, 190), ahead > 0, Between(-15, 15), length);
            }

            Triple lower = new(Between(-30, 30), Between(560, 680), Between(-110, -50));
            Triple outer = lower.Plus(new Triple(ahead * Between(90, 190), Between(-50, 50), Between(0, 150)));
            Triple along = new(Between(-120, 120), -Between(220, 480), Between(-60, 60));
            Triple inner = outer.Plus(along, length / along.Size);
            ToeWheel wheel = form == WheelForm.Points
                ? OfPoints(side, lower, lower.Plus(new Triple(Between(-60, 60), Between(-70, 20), Between(180, 300))), outer, inner)
                : OfInclination(side, Between(-3, 16), Between(-5, 12), lower, outer, inner);
            double angle = wheel.AngleAtAxis();
            if (angle > MostTurn + 0.1 && angle < Math.PI - MostTurn - 0.1)
            {
                return wheel;
            }
        }
    }

    /// <summary>The short form: a vertical axis; the rod lies level, so many degrees over square to the arm.</summary>
    public static ToeWheel OfArm(CarSide side, double arm, bool ahead, double degreesOver, double length)
    {
        (double sine, double cosine) = Math.SinCos(degreesOver * Math.PI / 180);
        double along = ahead ? 1 : -1;
        double inward = side == CarSide.Left ? -1 : 1;
        Triple outer = new(along * arm, 0, 0);
        return new ToeWheel(side, default, new(0, 0, 1), outer, outer.Plus(new Triple(along * sine, inward * cosine, 0), length))
        {
            Geometry = SteeringGeometry.FromArm(
                side,
                Length.FromMillimeters(arm),
                ahead ? JointPlace.AheadOfAxle : JointPlace.BehindAxle,
                Angle.FromDegrees(degreesOver),
                Length.FromMillimeters(length)),
            Text = FormattableString.Invariant($"{side} arm {arm:R} ahead {ahead} rod angle {degreesOver:R} deg, rod {length:R}"),
        };
    }

    /// <summary>A wheel given by points of the left side of the car; the right side is its mirror image.</summary>
    public static ToeWheel OfPoints(CarSide side, Triple lower, Triple upper, Triple outer, Triple inner)
    {
        Triple On(Triple point) => side == CarSide.Left ? point : point.MirroredAcross();

        return new ToeWheel(side, On(lower), Unit(On(upper).Less(On(lower))), On(outer), On(inner))
        {
            Geometry = SteeringGeometry.FromPoints(
                side, On(upper).ToPoint(), On(lower).ToPoint(), On(outer).ToPoint(), On(inner).ToPoint()),
            Text = $"{side} axis {lower} {upper} outer {outer} inner {inner}",
        };
    }

    /// <summary>
    /// The same with the axis given by its angles in degrees: seen from the front it leans inward at the top, seen from the side
    /// rearward.
    /// </summary>
    public static ToeWheel OfInclination(CarSide side, double inclination, double caster, Triple lower, Triple outer, Triple inner)
    {
        Triple leaning = new(-Math.Tan(caster * Math.PI / 180), -Math.Tan(inclination * Math.PI / 180), 1);
        ToeWheel points = OfPoints(side, lower, lower.Plus(leaning, 200), outer, inner);
        return points with
        {
            Geometry = SteeringGeometry.FromInclination(
                side,
                Angle.FromDegrees(inclination),
                Angle.FromDegrees(caster),
                points.OnAxis.ToPoint(),
                points.Outer.ToPoint(),
                points.Inner.ToPoint()),
            Text = FormattableString.Invariant($"inclination {inclination:R} caster {caster:R} ") + points.Text,
        };
    }

    /// <summary>The wheel of the same car seen in a mirror.</summary>
    public ToeWheel Mirrored()
    {
        bool left = Side == CarSide.Left;
        Triple OfLeft(Triple point) => left ? point : point.MirroredAcross();

        return OfPoints(
            left ? CarSide.Right : CarSide.Left, OfLeft(OnAxis), OfLeft(OnAxis.Plus(Axis, 200)), OfLeft(Outer), OfLeft(Inner));
    }

    /// <summary>Length of the rod after a right-handed turn of the upright about the steer axis.</summary>
    public double LengthAt(double turn) => OnAxis.Plus(Turned(Outer.Less(OnAxis), turn)).Less(Inner).Size;

    /// <summary>Whether some turn that the root finder looks at gives a length.</summary>
    public bool Reaches(double length) => (LengthAt(MostTurn) - length) * (LengthAt(-MostTurn) - length) < 0;

    /// <summary>The turn from where the joints stand to where a rod of a length holds them.</summary>
    public double TurnFor(double length) => Brent.FindRoot(turn => LengthAt(turn) - length, -MostTurn, MostTurn, Fine, Steps);

    /// <summary>
    /// Toe in radians after a turn of a wheel whose toe and camber are known before it. The spin axis points to the car's left: of a
    /// wheel with toe-in and camber, the left one's front is turned to the right and its top to the left.
    /// </summary>
    public double ToeAfter(double now, double camber, double turn)
    {
        int side = Side == CarSide.Left ? 1 : -1;
        Triple spin = Turned(
            new Triple(Math.Sin(side * now) * Math.Cos(camber), Math.Cos(side * now) * Math.Cos(camber), -side * Math.Sin(camber)), turn);

        // The ground line is (spin axis) x z; in is toward the center line.
        return side * Math.Atan2(spin.X, spin.Y);
    }

    /// <summary>v' = v + 2 w (q x v) + 2 q x (q x v), of the quaternion w + q with w = cos(turn / 2), q = sin(turn / 2) k.</summary>
    private Triple Turned(Triple v, double turn)
    {
        (double sine, double w) = Math.SinCos(turn / 2);
        Triple q = default(Triple).Plus(Axis, sine);
        Triple once = Cross(q, v);
        return v.Plus(once, 2 * w).Plus(Cross(q, once), 2);
    }

    /// <summary>The angle between the radius vectors of the two joints, from 0 to 180 degrees; at either the rod is in line.</summary>
    private double AngleAtAxis()
    {
        Triple outer = Cross(Axis, Outer.Less(OnAxis));
        Triple inner = Cross(Axis, Inner.Less(OnAxis));
        return Math.Acos((outer.X * inner.X + outer.Y * inner.Y + outer.Z * inner.Z) / (outer.Size * inner.Size));
    }

    private static Triple Unit(Triple v) => default(Triple).Plus(v, 1 / v.Size);

    private static Triple Cross(Triple a, Triple b) => new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);
}
