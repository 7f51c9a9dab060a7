using MathNet.Numerics.RootFinding;
using TieRodCalc.Steering;
using UnitsNet;
using static System.FormattableString;

namespace TieRodCalc.Tests.Steering;

/// <summary>A corner of the table, all angles in degrees.</summary>
internal readonly record struct Corner(double Inclination, double Caster, double RodAngle, double Slope);

/// <summary>How far the short form is off at a corner.</summary>
/// <param name="Change">Change of length that turns the wheel by a degree of toe, in millimeters.</param>
/// <param name="ArmAlone">Toe by the short form from the arm alone, in degrees.</param>
/// <param name="WithAngle">The same from arm and rod angle.</param>
internal readonly record struct ShortFormError(double Change, double ArmAlone, double WithAngle);

/// <summary>The table of docs/toe.md that holds the short form against a steer axis that leans.</summary>
internal static class ShortFormTable
{
    public const double Arm = 152.4;
    public const double Rod = 393.7;
    public const double Wanted = 1;

    private const double Plates = 610;
    private const double Degree = Math.PI / 180;
    private const double Fine = 1e-14;

    /// <summary>Every combination.</summary>
    public static IReadOnlyList<Corner> All { get; } =
    [
        .. from slope in (double[])[0, 5, -5]
           from inclination in (double[])[0, 8, 14]
           from caster in (double[])[0, 5, 10]
           from angle in (double[])[-10, 0, 10]
           select new Corner(inclination, caster, angle, slope),
    ];

    /// <summary>Those shown: the rod square and level at every axis, the others at three axes, and the worst.</summary>
    public static IReadOnlyList<Corner> Shown { get; } =
    [
        .. All.Where(corner => corner is { Slope: 0, RodAngle: 0 }
            or { Slope: 0, Inclination: 0, Caster: 0 }
            or { Slope: 0, Inclination: 8, Caster: 5 }
            or { Slope: 0, Inclination: 14, Caster: 10 }
            or { RodAngle: 0, Inclination: 8 or 14, Caster: 0 or 5 }
            or { RodAngle: 0, Inclination: 0, Caster: 0 }
            or { Slope: 5, Inclination: 14, Caster: 0, RodAngle: -10 }
            or { Slope: -5, Inclination: 14, Caster: 10 }),
    ];

    /// <summary>The joints: the arm lies square to the steer axis, straight back in plan view.</summary>
    public static (Triple Outer, Triple Inner) Joints(Corner corner)
    {
        (double down, double back) = Math.SinCos(corner.Caster * Degree);
        Triple outer = new(-Arm * back, 0, -Arm * down);
        Triple along = new(-Math.Tan(corner.RodAngle * Degree), -1, Math.Tan(corner.Slope * Degree));
        return (outer, outer.Plus(along, Rod / along.Size));
    }

    /// <summary>By the library.</summary>
    public static ShortFormError Of(Corner corner)
    {
        (Triple outer, Triple inner) = Joints(corner);
        SteeringGeometry full = SteeringGeometry.FromInclination(
            CarSide.Left, Deg(corner.Inclination), Deg(corner.Caster), default, outer.ToPoint(), inner.ToPoint());
        Length length = Toe.LengthFor(full, Deg(Wanted)).Length!.Value;
        return new(length.Millimeters - Rod, Short(Arm, 0, length), Short(Arm, corner.RodAngle, length));
    }

    /// <summary>By a rotation matrix and a root finder.</summary>
    public static ShortFormError Reference(Corner corner)
    {
        (Triple outer, Triple inner) = Joints(corner);
        Triple top = new(-Math.Tan(corner.Caster * Degree), -Math.Tan(corner.Inclination * Degree), 1);
        WheelCase full = new(CarSide.Left, default, top, outer, inner);
        double turn = Brent.FindRoot(one => full.ToeAt(one) - Wanted * Degree, -0.1, 0.1, Fine);
        double length = full.RodLengthAt(turn);
        return new(length - Rod, Level(0), Level(corner.RodAngle));

        double Level(double angle)
        {
            Triple joint = new(-Arm, 0, 0);
            (double sine, double cosine) = Math.SinCos(angle * Degree);
            WheelCase wheel = new(CarSide.Left, default, new(0, 0, 1), joint, joint.Plus(new(-sine, -cosine, 0), Rod));
            return wheel.ToeAt(Brent.FindRoot(one => wheel.RodLengthAt(one) - length, -0.1, 0.1, Fine)) / Degree;
        }
    }

    /// <summary>What the page gives as a rule: toe by arm and rod angle over the true toe, in percent off.</summary>
    public static double Rule(Corner corner) => 100 * (
        Math.Cos((corner.Inclination + corner.Slope) * Degree) / Math.Cos(corner.Inclination * Degree) / Math.Cos(corner.Caster * Degree)
        - 1);

    public static string Text()
    {
        string rows = string.Concat(Shown.Select(corner =>
        {
            ShortFormError error = Of(corner);
            return Invariant($"| {corner.Inclination} | {corner.Caster} | {corner.RodAngle} | {corner.Slope} | {error.Change:F3} |")
                + $" {Percent(error.ArmAlone)} | {AtPlates(error.ArmAlone)} | {Percent(error.WithAngle)} | {AtPlates(error.WithAngle)} |\n";
        }));
        ShortFormError[] all = [.. All.Select(Of)];
        return """
            | inclination | caster | rod angle | rod slope | rod longer, mm | by the arm, % | mm | by arm and rod angle, % | mm |
            |---|---|---|---|---|---|---|---|---|

            """.TrimEnd('\n') + "\n" + rows + "\n"
            + Invariant($"Over all {All.Count} combinations of these angles: {Range(all.Select(one => one.ArmAlone))} percent by the arm,\n")
            + $"{Range(all.Select(one => one.WithAngle))} percent by arm and rod angle. With the rod level:\n"
            + $"{Range(Level().Select(one => one.ArmAlone))} and {Range(Level().Select(one => one.WithAngle))} percent.\n"
            + "Arm measured level in plan view instead of square to the steer axis, 10 degrees of caster, rod level and\n"
            + $"square: {Percent(PlanArm())} percent in place of {Percent(Of(new(0, 10, 0, 0)).ArmAlone)}.\n";
    }

    private static IEnumerable<ShortFormError> Level() => All.Where(corner => corner.Slope == 0).Select(Of);

    /// <summary>Toe by the short form where the arm is measured level at the most caster: it comes out too short.</summary>
    private static double PlanArm()
    {
        Corner corner = new(0, 10, 0, 0);
        return Short(-Joints(corner).Outer.X, 0, Length.FromMillimeters(Rod + Of(corner).Change));
    }

    private static double Short(double arm, double angle, Length length) => Toe.FromLength(
        SteeringGeometry.FromArm(CarSide.Left, Length.FromMillimeters(arm), JointPlace.BehindAxle, Deg(angle), Length.FromMillimeters(Rod)),
        length).Toe!.Value.Degrees;

    private static string Range(IEnumerable<double> toes)
    {
        double[] sorted = [.. toes.Order()];
        return $"{Percent(sorted[0])} to {Percent(sorted[^1])}";
    }

    private static string Percent(double toe) => Signed(100 * (toe / Wanted - 1));

    private static string AtPlates(double toe) => Signed(Plates * (Math.Sin(toe * Degree) - Math.Sin(Wanted * Degree)));

    /// <summary>Two decimals with a sign; what rounds to zero has none.</summary>
    private static string Signed(double value) => Invariant($"{value:+0.00;-0.00;0.00}");

    private static Angle Deg(double degrees) => Angle.FromDegrees(degrees);
}
