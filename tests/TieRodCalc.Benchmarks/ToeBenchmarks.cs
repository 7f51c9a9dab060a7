using BenchmarkDotNet.Attributes;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Benchmarks;

/// <summary>
/// Toe from the length of a rod, and the length for a toe: the public face on a wheel given by points, beside the bare closed form
/// in doubles with the constants of that one wheel worked out before, without quantities, outcomes or reach.
/// </summary>
[MemoryDiagnoser]
public class ToeBenchmarks
{
    // The wheel of the worked figures: heights of the joints apart, radii, angle between them, steer axis; in millimeters.
    private static readonly double[] s_lower = [8, 640, -70];
    private static readonly double[] s_upper = [-16, 600, 190];
    private static readonly double[] s_outer = [-150, 628, -35];
    private static readonly double[] s_inner = [-128, 205, -22];

    private readonly SteeringGeometry _wheel = SteeringGeometry.FromPoints(
        CarSide.Left, At(s_lower), At(s_upper), At(s_outer), At(s_inner));

    private readonly Length _length = Length.FromMillimeters(426.8);
    private readonly Angle _toe = Angle.FromDegrees(1.0826);
    private readonly double _lengthMm = 426.8;
    private readonly double _toeRadians = 1.0826 * Math.PI / 180;
    private readonly double _squares;
    private readonly double _product;
    private readonly double _start;
    private readonly double _kx;
    private readonly double _ky;
    private readonly double _kz;

    public ToeBenchmarks()
    {
        double[] axis = [.. s_upper.Zip(s_lower, (upper, lower) => upper - lower)];
        double size = Math.Sqrt(axis.Sum(part => part * part));
        double[] k = [.. axis.Select(part => part / size)];
        (_kx, _ky, _kz) = (k[0], k[1], k[2]);
        (double height, double[] radius) Joint(double[] joint)
        {
            double[] from = [.. joint.Zip(s_lower, (one, other) => one - other)];
            double along = from.Zip(k, (one, other) => one * other).Sum();
            return (along, [.. from.Zip(k, (one, other) => one - along * other)]);
        }

        (double outerHeight, double[] ro) = Joint(s_outer);
        (double innerHeight, double[] ri) = Joint(s_inner);
        double outer = Math.Sqrt(ro.Sum(part => part * part));
        double inner = Math.Sqrt(ri.Sum(part => part * part));
        _squares = (outerHeight - innerHeight) * (outerHeight - innerHeight) + outer * outer + inner * inner;
        _product = 2 * outer * inner;
        double cross = _kx * (ri[1] * ro[2] - ri[2] * ro[1]) + _ky * (ri[2] * ro[0] - ri[0] * ro[2]) + _kz * (ri[0] * ro[1] - ri[1] * ro[0]);
        _start = Math.Atan2(cross, ri[0] * ro[0] + ri[1] * ro[1] + ri[2] * ro[2]);
    }

    /// <summary>The bare closed form: turn from length, and the ground line of the turned wheel.</summary>
    [Benchmark(Baseline = true)]
    public double BareToe()
    {
        double turn = Math.CopySign(Math.Acos((_squares - _lengthMm * _lengthMm) / _product), _start) - _start;
        (double sine, double cosine) = Math.SinCos(turn);
        double x = -sine * _kz + (1 - cosine) * _ky * _kx;
        double y = cosine + (1 - cosine) * _ky * _ky;
        return Math.Atan2(x, y);
    }

    /// <summary>Toe from length, by the public face.</summary>
    [Benchmark]
    public double ToeFromLength() => Toe.FromLength(_wheel, _length).Toe!.Value.Value;

    /// <summary>The bare inverse: the turn whose spin axis stands square to the ground line, nearer to zero, and the length there.</summary>
    [Benchmark]
    public double BareLength()
    {
        (double s, double c) = Math.SinCos(_toeRadians);
        double along = _ky * (_kx * c - _ky * s);
        double across = -s - along;
        double aside = -_kz * c;
        double turn = Math.IEEERemainder(
            Math.Atan2(aside, across) + Math.Acos(-along / Math.Sqrt(across * across + aside * aside)), 2 * Math.PI);
        return Math.Sqrt(_squares - _product * Math.Cos(_start + turn));
    }

    /// <summary>Length for a toe, by the public face.</summary>
    [Benchmark]
    public double LengthForToe() => Toe.LengthFor(_wheel, _toe).Length!.Value.Millimeters;

    private static Point At(double[] point) =>
        new(Length.FromMillimeters(point[0]), Length.FromMillimeters(point[1]), Length.FromMillimeters(point[2]));
}
