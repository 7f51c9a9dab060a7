using MathNet.Numerics.RootFinding;
using TieRodCalc.Steering;
using UnitsNet;
using static System.FormattableString;

namespace TieRodCalc.Tests.Steering;

/// <summary>One rod between the wheels, of which the steering holds one, against both wheels sharing the change.</summary>
/// <param name="Held">Change of length where the right wheel is held, in millimeters.</param>
/// <param name="Shared">Change of length where each wheel makes half of the change.</param>
/// <param name="Difference">
/// Total toe straight ahead with the rod of the first, less the wanted total, at the plates in millimeters.
/// </param>
internal readonly record struct OneRod(double Held, double Shared, double Difference);

/// <summary>The table of docs/toe.md about one rod between the wheels.</summary>
internal static class OneRodTable
{
    public const double Axes = 1200;
    public const double Arm = 6 * Inch;
    public const double Plates = 24 * Inch;

    private const double Inch = 25.4;
    private const double Degree = Math.PI / 180;
    private const double Fine = 1e-14;

    /// <summary>How far the arms lean inward, in degrees, and the total toe now and wanted, in sixteenths of an inch.</summary>
    public static IReadOnlyList<(double Lean, int Now, int Want)> Rows { get; } =
        [(0, -2, 1), (12, -2, 1), (20, -2, 1), (12, -16, 1)];

    /// <summary>The rod with the wheels turned toward toe-in, in radians, from where the lean was measured.</summary>
    public static double RodLength(double lean, double left, double right)
    {
        (double leftAcross, double leftBack) = Math.SinCos(lean * Degree - left);
        (double rightAcross, double rightBack) = Math.SinCos(lean * Degree - right);
        double along = Arm * (leftBack - rightBack);
        double across = Axes - Arm * (leftAcross + rightAcross);
        return Math.Sqrt(along * along + across * across);
    }

    /// <summary>By the library where a wheel is held; where both share, by plain trigonometry and a root finder.</summary>
    public static OneRod Of(double lean, int nowSixteenths, int wantSixteenths)
    {
        double now = nowSixteenths * Inch / 16;
        double want = wantSixteenths * Inch / 16;
        double start = RodLength(lean, 0, 0);
        double toeNow = Math.Asin(now / 2 / Plates);
        double half = Math.Asin(want / 2 / Plates) - toeNow;
        double held = Held(lean, start, Toes(now), Toes(want));
        double share = Brent.FindRoot(turn => RodLength(lean, turn, turn) - held, -0.2, 0.2, Fine);
        return new(held - start, RodLength(lean, half, half) - start, 2 * Plates * Math.Sin(toeNow + share) - want);
    }

    /// <summary>The same change of length as <see cref="OneRod.Held"/>, by trigonometry alone.</summary>
    public static double HeldReference(double lean, int nowSixteenths, int wantSixteenths)
    {
        double now = nowSixteenths * Inch / 16;
        double want = wantSixteenths * Inch / 16;
        double turn = Math.Asin((want - now / 2) / Plates) - Math.Asin(now / 2 / Plates);
        return RodLength(lean, turn, 0) - RodLength(lean, 0, 0);
    }

    public static string Text() =>
        """
        | arms lean inward, deg | total now, in | wanted, in | rod longer, one wheel held, mm | rod longer, shared, mm | total off, mm at the plates |
        |---|---|---|---|---|---|

        """.TrimEnd('\n') + "\n" + string.Concat(Rows.Select(row =>
        {
            OneRod rod = Of(row.Lean, row.Now, row.Want);
            return Invariant($"| {row.Lean} | {Sixteenths(row.Now)} | {Sixteenths(row.Want)} | {rod.Held:F4} | {rod.Shared:F4} | {rod.Difference:+0.0000;-0.0000;0.0000} |\n");
        }));

    private static double Held(double lean, double start, WheelToes now, WheelToes want)
    {
        SteeringGeometry left = SteeringGeometry
            .FromArm(CarSide.Left, Mm(Arm), JointPlace.BehindAxle, Angle.FromDegrees(lean), Mm(start))
            .Aligned(now.Left, Angle.Zero);
        return Toe.LengthFor(left, now.AloneFor(CarSide.Left, want)!.Value).Length!.Value.Millimeters;
    }

    private static string Sixteenths(int count) => (count % 16, count % 2) switch
    {
        (0, _) => Invariant($"{Math.Abs(count) / 16}"),
        (_, 0) => Invariant($"{Math.Abs(count) / 2}/8"),
        _ => Invariant($"{Math.Abs(count)}/16"),
    } + (count < 0 ? " out" : " in");

    private static WheelToes Toes(double total) => CarToe.OfTotal(new ToeReading(Mm(total), null)).ToWheels(Mm(Plates))!.Value;

    private static Length Mm(double mm) => Length.FromMillimeters(mm);
}
