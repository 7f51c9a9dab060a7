using MathNet.Numerics.LinearAlgebra;
using TieRodCalc.Steering;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// A corner as fifteen unknown coordinates (two ball joints, outer joint, wheel center, a second point of the spin axis) and fifteen
/// equations: fourteen distances that stay as they were, and the height of the wheel center. Solved by Newton's method, followed from
/// ride height in small steps; it knows nothing of circles, spheres or angles.
/// </summary>
internal sealed class CornerReference
{
    private const int Lower = 0, Upper = 1, Outer = 2, Wheel = 3, OnSpin = 4, Moving = 5;
    private const int LowerFirst = 5, LowerSecond = 6, UpperFirst = 7, UpperSecond = 8, Inner = 9;

    /// <summary>Millimeters from the wheel center to the second point of the spin axis.</summary>
    private const double Stub = 100;

    /// <summary>A step of Newton's method below it is the last: the next would be of its square.</summary>
    private const double LastStep = 1e-7;

    private const int MostSteps = 30;

    private static readonly (int One, int Other)[] s_links =
    [
        (Lower, LowerFirst), (Lower, LowerSecond), (Upper, UpperFirst), (Upper, UpperSecond), (Outer, Inner),
        (Lower, Upper), (Lower, Outer), (Upper, Outer),
        (Wheel, Lower), (Wheel, Upper), (Wheel, Outer), (OnSpin, Lower), (OnSpin, Upper), (OnSpin, Outer),
    ];

    private readonly CarSide _side;
    private readonly Triple[] _start;
    private readonly double[] _squares;
    private Triple[] _points;

    /// <summary>The corner at ride height.</summary>
    /// <param name="corner">Its points.</param>
    /// <param name="spin">Unit vector of the spin axis, to the car's left.</param>
    public CornerReference(RandomCorner corner, Triple spin)
    {
        Triple wheel = Of(corner.Wheel);
        _side = corner.Side;
        _start =
        [
            Of(corner.Lower.Ball), Of(corner.Upper.Ball), Of(corner.Outer), wheel, wheel.Plus(spin, Stub),
            Of(corner.Lower.First), Of(corner.Lower.Second), Of(corner.Upper.First), Of(corner.Upper.Second), Of(corner.Inner),
        ];
        _points = _start;
        _squares = [.. s_links.Select(link => Square(_start[link.One].Less(_start[link.Other])))];
    }

    public Triple LowerBall => _points[Lower];

    public Triple UpperBall => _points[Upper];

    public Triple OuterJoint => _points[Outer];

    public Triple WheelCenter => _points[Wheel];

    /// <summary>Toe in radians: the wheel's ground line is (spin axis) x z, and in is toward the car's center line.</summary>
    public double Toe
    {
        get
        {
            Triple spin = _points[OnSpin].Less(_points[Wheel]);
            double toRight = Math.Atan2(spin.X, spin.Y);
            return _side == CarSide.Left ? toRight : -toRight;
        }
    }

    /// <summary>Camber in radians: how far the end of the spin axis that is outward points down.</summary>
    public double Camber
    {
        get
        {
            Triple spin = _points[OnSpin].Less(_points[Wheel]);
            double down = Math.Atan2(-spin.Z, Math.Sqrt(spin.X * spin.X + spin.Y * spin.Y));
            return _side == CarSide.Left ? down : -down;
        }
    }

    /// <summary>
    /// What the equations do not ask for: the fifteenth distance of the upright, its handedness, and the side of the steer axis that
    /// the rod is on.
    /// </summary>
    public bool IsWhole =>
        Math.Abs(_points[OnSpin].Less(_points[Wheel]).Size - Stub) < 1e-9
        && new[] { Wheel, OnSpin, Inner }.All(each => Math.Sign(Volume(_points, each)) == Math.Sign(Volume(_start, each)));

    /// <summary>Goes on from where it is to a travel in steps not longer than the given one; false where there is no answer.</summary>
    public bool Follow(double travel, double step)
    {
        double here = _points[Wheel].Z - _start[Wheel].Z;
        int steps = Math.Max(1, (int)Math.Ceiling(Math.Abs(travel - here) / step));
        return Enumerable.Range(1, steps).All(each => Solve(_start[Wheel].Z + here + (travel - here) * each / steps));
    }

    private static Triple Of(Point point) => new(point.X.Millimeters, point.Y.Millimeters, point.Z.Millimeters);

    private static double Square(Triple v) => v.X * v.X + v.Y * v.Y + v.Z * v.Z;

    /// <summary>Six times the volume between the joints of the upright and another point, with its sign.</summary>
    private static double Volume(Triple[] points, int other)
    {
        Triple a = points[Upper].Less(points[Lower]);
        Triple b = points[Outer].Less(points[Lower]);
        Triple c = points[other].Less(points[Lower]);
        return Matrix<double>.Build.DenseOfArray(new[,] { { a.X, a.Y, a.Z }, { b.X, b.Y, b.Z }, { c.X, c.Y, c.Z } }).Determinant();
    }

    private bool Solve(double height)
    {
        Triple[] points = [.. _points];
        for (int tries = 0; tries < MostSteps; tries++)
        {
            Vector<double> step = Equations(points, height, out Vector<double> missed).Solve(missed);
            for (int each = 0; each < Moving; each++)
            {
                points[each] = points[each].Less(new Triple(step[3 * each], step[3 * each + 1], step[3 * each + 2]));
            }

            if (step.InfinityNorm() < LastStep)
            {
                _points = points;
                return true;
            }
        }

        return false;
    }

    /// <summary>By how much each equation is missed, and the derivatives of that.</summary>
    private Matrix<double> Equations(Triple[] points, double height, out Vector<double> missed)
    {
        Matrix<double> slopes = Matrix<double>.Build.Dense(3 * Moving, 3 * Moving);
        missed = Vector<double>.Build.Dense(3 * Moving);
        for (int row = 0; row < s_links.Length; row++)
        {
            (int one, int other) = s_links[row];
            Triple apart = points[one].Less(points[other]);
            missed[row] = Square(apart) - _squares[row];
            Add(slopes, row, one, apart, 2);
            Add(slopes, row, other, apart, -2);
        }

        slopes[s_links.Length, 3 * Wheel + 2] = 1;
        missed[s_links.Length] = points[Wheel].Z - height;
        return slopes;
    }

    private static void Add(Matrix<double> slopes, int row, int point, Triple apart, double factor)
    {
        if (point < Moving)
        {
            slopes[row, 3 * point] = factor * apart.X;
            slopes[row, 3 * point + 1] = factor * apart.Y;
            slopes[row, 3 * point + 2] = factor * apart.Z;
        }
    }
}
