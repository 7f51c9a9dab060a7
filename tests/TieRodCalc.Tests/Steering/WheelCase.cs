using MathNet.Numerics.RootFinding;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>Three numbers of a test case, in millimeters or as a direction.</summary>
internal readonly record struct Triple(double X, double Y, double Z)
{
    public double Size => Math.Sqrt(X * X + Y * Y + Z * Z);

    public Triple MirroredAcross() => this with { Y = -Y };

    public Triple MirroredAlong() => this with { X = -X };

    public Triple Less(Triple other) => new(X - other.X, Y - other.Y, Z - other.Z);

    public Triple Plus(Triple other, double times = 1) => new(X + times * other.X, Y + times * other.Y, Z + times * other.Z);

    public Point ToPoint() => new(Length.FromMillimeters(X), Length.FromMillimeters(Y), Length.FromMillimeters(Z));
}

/// <summary>
/// A wheel of a test case. The reference turns its outer joint about the steer axis by a rotation matrix, measures the rod,
/// and finds the turn of a given length by a general-purpose root finder.
/// </summary>
internal sealed record WheelCase(CarSide Side, Triple Lower, Triple Upper, Triple Outer, Triple Inner)
{
    /// <summary>How far the wheel is turned each way; the drawn rods stay on one side of dead center within it.</summary>
    public const double MostTurn = 0.3;

    /// <summary>How fine the root finder looks, in radians.</summary>
    private const double Fine = 1e-14;

    private const int Steps = 500;

    public SteeringGeometry Geometry => SteeringGeometry.FromPoints(
        Side, Lower.ToPoint(), Upper.ToPoint(), Outer.ToPoint(), Inner.ToPoint());

    public double RodLength => RodLengthAt(0);

    /// <summary>The same car seen in a mirror: left is right.</summary>
    public WheelCase Mirrored() => new(
        Side == CarSide.Left ? CarSide.Right : CarSide.Left,
        Lower.MirroredAcross(),
        Upper.MirroredAcross(),
        Outer.MirroredAcross(),
        Inner.MirroredAcross());

    /// <summary>The same wheel with everything behind the axle put ahead of it.</summary>
    public WheelCase FrontToBack() => new(Side, Lower.MirroredAlong(), Upper.MirroredAlong(), Outer.MirroredAlong(), Inner.MirroredAlong());

    /// <summary>A corner that a car could have, on either side, behind or ahead of the axle. The ranges are invented.</summary>
    public static WheelCase Draw(Random random)
    {
        double Between(double low, double high) => low + (high - low) * random.NextDouble();

        while (true)
        {
            Triple lower = new(Between(-30, 30), Between(560, 680), Between(-110, -50));
            Triple upper = lower.Plus(new Triple(Between(-60, 60), Between(-70, 20), Between(180, 300)));
            double along = Between(90, 190) * (random.Next(2) == 0 ? 1 : -1);
            Triple outer = lower.Plus(new Triple(along, Between(-50, 50), Between(0, 150)));
            Triple inner = outer.Plus(new Triple(Between(-120, 120), -Between(220, 480), Between(-60, 60)));
            WheelCase wheel = new(CarSide.Left, lower, upper, outer, inner);

            // A rod that is well clear of dead center changes its length the same way over the whole turn.
            const double Ahead = MostTurn / 10;
            bool clear = Enumerable.Range(-Steps / 2, Steps)
                .Select(step => 2 * MostTurn * step / Steps)
                .Select(turn => Math.Sign(wheel.RodLengthAt(turn + Ahead) - wheel.RodLengthAt(turn - Ahead)))
                .Distinct()
                .Take(2)
                .Count() == 1;
            if (clear)
            {
                return random.Next(2) == 0 ? wheel : wheel.Mirrored();
            }
        }
    }

    /// <summary>Length of the rod after a right-handed turn about the steer axis, upward.</summary>
    public double RodLengthAt(double turn) => JointAfter(turn).Less(Inner).Size;

    /// <summary>The outer joint after a turn.</summary>
    public Triple JointAfter(double turn) => Lower.Plus(Turned(Outer.Less(Lower), turn));

    /// <summary>The spin axis, to the car's left, of a wheel with toe and camber: turned about x by camber, then about z by toe.</summary>
    public Triple SpinOf(double toe, double camber) => SpinOf(Side, toe, camber);

    /// <summary>The same on a side.</summary>
    public static Triple SpinOf(CarSide side, double toe, double camber)
    {
        double outward = side == CarSide.Left ? -1 : 1;
        (double leanSine, double leanCosine) = Math.SinCos(outward * camber);
        (double toeSine, double toeCosine) = Math.SinCos(outward * toe);
        return new Triple(-toeSine * leanCosine, toeCosine * leanCosine, leanSine);
    }

    /// <summary>Toe after a turn: the wheel's ground line is (spin axis) x z, and in is toward the car's center line.</summary>
    public double ToeAt(double turn) => ToeAt(turn, new Triple(0, 1, 0));

    /// <summary>The same with another spin axis before the turn.</summary>
    public double ToeAt(double turn, Triple start)
    {
        Triple spin = Turned(start, turn);
        Triple forward = new(spin.Y, -spin.X, 0);
        double toRight = Math.Atan2(-forward.Y, forward.X);
        return Side == CarSide.Left ? toRight : -toRight;
    }

    /// <summary>The turn that gives a toe, within the most turn.</summary>
    public double TurnForToe(double toe, Triple start) =>
        Brent.FindRoot(turn => ToeAt(turn, start) - toe, -1.05 * MostTurn, 1.05 * MostTurn, Fine, Steps);

    /// <summary>The turn that a rod of a length gives, within the most turn.</summary>
    public double TurnFor(double length) =>
        Brent.FindRoot(turn => RodLengthAt(turn) - length, -1.05 * MostTurn, 1.05 * MostTurn, Fine, Steps);

    /// <summary>
    /// Toe in radians for a millimeter of rod, at the start: a turn makes the rod longer by u.(k x arm), u along the rod from the inner
    /// joint, and moves the spin axis by k x spin.
    /// </summary>
    public double ToePerMm(Triple spin)
    {
        Triple axis = Upper.Less(Lower);
        Triple k = new(axis.X / axis.Size, axis.Y / axis.Size, axis.Z / axis.Size);
        Triple arm = Outer.Less(Lower);
        Triple moved = new(k.Y * arm.Z - k.Z * arm.Y, k.Z * arm.X - k.X * arm.Z, k.X * arm.Y - k.Y * arm.X);
        Triple rod = Outer.Less(Inner);
        double longer = (rod.X * moved.X + rod.Y * moved.Y + rod.Z * moved.Z) / rod.Size;
        Triple spun = new(k.Y * spin.Z - k.Z * spin.Y, k.Z * spin.X - k.X * spin.Z, k.X * spin.Y - k.Y * spin.X);
        double toRight = (spun.X * spin.Y - spun.Y * spin.X) / (spin.X * spin.X + spin.Y * spin.Y);
        return (Side == CarSide.Left ? toRight : -toRight) / longer;
    }

    /// <summary>The rotation matrix about the unit vector k: R = cos I + sin [k]x + (1 - cos) k k'.</summary>
    private Triple Turned(Triple v, double turn)
    {
        Triple axis = Upper.Less(Lower);
        (double x, double y, double z) = (axis.X / axis.Size, axis.Y / axis.Size, axis.Z / axis.Size);
        (double s, double c) = Math.SinCos(turn);
        double w = 1 - c;
        return new Triple(
            (c + w * x * x) * v.X + (w * x * y - s * z) * v.Y + (w * x * z + s * y) * v.Z,
            (w * x * y + s * z) * v.X + (c + w * y * y) * v.Y + (w * y * z - s * x) * v.Z,
            (w * x * z - s * y) * v.X + (w * y * z + s * x) * v.Y + (c + w * z * z) * v.Z);
    }
}
