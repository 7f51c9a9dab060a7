using System.Globalization;
using System.Text;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>The worked example of docs/bump.md: the sums written out, and held against what the library finds.</summary>
internal static class BumpExample
{
    private const double Length = 15.5;
    private const double Arm = 6;
    private const double Spacing = 10;

    private static readonly (double Travel, double Front, double Rear)[] s_readings =
        [(-2, -0.089, -0.115), (-1, -0.022, -0.037), (1, -0.031, -0.013), (2, -0.096, -0.055)];

    /// <summary>The example in words and numbers, computed here by itself.</summary>
    public static string Text()
    {
        double[] z = [.. s_readings.Select(reading => reading.Travel)];
        double[] toe = [.. s_readings.Select(reading => Math.Asin((reading.Rear - reading.Front) / Spacing))];
        double squares = z.Sum(each => each * each);
        double fourths = z.Sum(each => Math.Pow(each, 4));
        double slope = z.Zip(toe, (each, angle) => each * angle).Sum() / squares;
        double curvature = 2 * z.Zip(toe, (each, angle) => each * each * angle).Sum() / fourths;
        double raise = Length * Arm * slope;
        double wanted = 1 / (1 / Length + Arm * curvature);
        double noise = Math.Sqrt(2) * 0.001 / Spacing;
        StringBuilder text = new();
        Line(text, $"L = {Length} in, arm r = {Arm} in, behind the axle; gauge W = {Spacing} in, resolution 0.001 in.");
        Line(text, $"");
        Line(text, $"travel z   rear - front        b     toe = asin(b / W)");
        foreach (((double travel, double front, double rear), double angle) in s_readings.Zip(toe))
        {
            Line(text, $"{travel,5} in   {rear:F3} - ({front:F3})   {rear - front,7:F4}   {angle * 180 / Math.PI,7:F4} deg = {1000 * angle,7:F4} / 1000");
        }

        Line(text, $"");
        Line(text, $"As many readings in droop as in bump: slope and curvature part, and");
        Line(text, $"  s = sum(z toe) / sum(z^2)        = {1000 * slope:F4} / 1000 an inch");
        Line(text, $"  k = 2 sum(z^2 toe) / sum(z^4)    = {1000 * curvature:F4} / 1000 a square inch");
        Line(text, $"  e1 = r s = {Arm * slope:F5}            e2 = r k = {Arm * curvature:F6} an inch");
        Line(text, $"");
        Line(text, $"  raise the outer joint by L e1    = {Length} x {Arm * slope:F5} = {raise:F3} in");
        Line(text, $"  1 / L_wanted = 1 / L + e2        = {1 / Length:F6} + {Arm * curvature:F6} = {1 / wanted:F6},  L_wanted = {wanted:F3} in");
        Line(text, $"");
        Line(text, $"Two standard errors; that of a toe is sqrt(2) 0.001 / W = {1000 * noise:F4} / 1000:");
        Line(text, $"  height   2 L r {1000 * noise:F4} / 1000 / sqrt(sum(z^2))            = {2 * Length * Arm * noise / Math.Sqrt(squares):F4} in");
        Line(text, $"  length   2 L_wanted^2 r 2 x {1000 * noise:F4} / 1000 / sqrt(sum(z^4)) = {4 * wanted * wanted * Arm * noise / Math.Sqrt(fourths):F3} in");
        return "```\n" + text + "```\n";
    }

    /// <summary>What the library finds for the same readings.</summary>
    public static BumpAdvice Found() => BumpSteer.Read(new BumpRequest
    {
        Sheets =
        [
            new BumpSheet
            {
                Spacing = UnitsNet.Length.FromInches(Spacing),
                Zeroed = IndicatorZero.Once,
                Grows = IndicatorSense.Outward,
                Resolution = UnitsNet.Length.FromInches(0.001),
                Readings =
                [
                    .. s_readings.Select(reading => new BumpReading(
                        UnitsNet.Length.FromInches(reading.Travel),
                        UnitsNet.Length.FromInches(reading.Front),
                        UnitsNet.Length.FromInches(reading.Rear))),
                ],
            },
        ],
        Wheel = SteeringGeometry.FromArm(
            CarSide.Left, UnitsNet.Length.FromInches(Arm), JointPlace.BehindAxle, Angle.Zero, UnitsNet.Length.FromInches(Length)),
        Shim = UnitsNet.Length.FromInches(1.0 / 32),
    }).Both!;

    private static void Line(StringBuilder text, FormattableString line) =>
        text.Append(line.ToString(CultureInfo.InvariantCulture).TrimEnd()).Append('\n');
}
