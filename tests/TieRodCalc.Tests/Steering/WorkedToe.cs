using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Yaml;
using UnitsNet;
using static System.FormattableString;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// The worked example of docs/toe.md: the left rod of the sample job, toe from 1/8 in out to 1/16 in in. By the library, and
/// again step by step by plain trigonometry.
/// </summary>
internal sealed record WorkedToe
{
    public const double Inch = 25.4;
    public const double Arm = 6 * Inch;
    public const double Rod = 15.5 * Inch;
    public const double Plates = 24 * Inch;
    public const double Now = -Inch / 8;
    public const double Want = Inch / 16;
    public const double RodAngle = 4 * Math.PI / 180;
    public const double Offset = 14;
    public const double PerTurn = 1.5 + Inch / 18;

    private const int Flats = 6;
    private const double Degree = Math.PI / 180;

    /// <summary>Toe of each wheel now and wanted, by the library.</summary>
    public static WheelToes ToesNow => Total(Now);

    /// <inheritdoc cref="ToesNow"/>
    public static WheelToes ToesWanted => Total(Want);

    /// <summary>The wheel of the example as it stands, by the library.</summary>
    public static SteeringGeometry Wheel => SteeringGeometry.FromArm(
        CarSide.Left, Mm(Arm), JointPlace.BehindAxle, Angle.FromRadians(RodAngle), Mm(Rod)).Aligned(ToesNow.Left, Angle.Zero);

    /// <summary>Toe of a wheel that has half of a total.</summary>
    public static double OfWheel(double total) => Math.Asin(total / 2 / Plates);

    /// <summary>Toe of the left wheel where it makes up the whole change.</summary>
    public static double LeftAlone => Math.Asin((Want - Now / 2) / Plates);

    /// <summary>Inner joint from the steer axis along the car.</summary>
    public static double Along => Arm + Rod * Math.Sin(RodAngle);

    /// <summary>Inner joint from the steer axis across the car.</summary>
    public static double Across => Rod * Math.Cos(RodAngle);

    /// <summary>Radius of the inner joint about the steer axis.</summary>
    public static double Radius => Math.Sqrt(Along * Along + Across * Across);

    /// <summary>Cosine of the angle between the two radii as the rod is.</summary>
    public static double Cosine => (Arm * Arm + Radius * Radius - Rod * Rod) / (2 * Arm * Radius);

    /// <summary>The rod after a turn of the wheel toward toe-in: two sides and the angle between them.</summary>
    public static double LengthAfter(double turn) =>
        Math.Sqrt(Arm * Arm + Radius * Radius - 2 * Arm * Radius * Math.Cos(Math.Acos(Cosine) + turn));

    /// <summary>The same measured between the two joints, the outer one turned about the steer axis.</summary>
    public static double Measured(double turn)
    {
        // From above, left wheel: toe-in turns clockwise. The outer joint starts straight behind the axis.
        (double x, double y) = (-Arm * Math.Cos(turn), Arm * Math.Sin(turn));
        return Math.Sqrt((x + Along) * (x + Along) + (y + Across) * (y + Across));
    }

    public static double Axial(double length) => Math.Sqrt(length * length - Offset * Offset);

    public static double TurnsTo(double length) => (Axial(length) - Axial(Rod)) / PerTurn;

    /// <summary>The length for a toe of the left wheel, by the library.</summary>
    public static double LengthFor(Angle toe) => Toe.LengthFor(Wheel, toe).Length!.Value.Millimeters;

    /// <summary>The left rod of the sample job: the thing that is turned.</summary>
    public static JobRod Sample(string root) =>
        JobReader.Read(Path.Combine(root, "catalog-samples", "jobs", "car-27.yaml")).Value!.Rods.Single(rod => rod.Name == "left");

    /// <summary>Turns of the sleeve of the sample rod, by the library; clockwise counts below zero where it shortens.</summary>
    public static double SampleTurnsTo(Rod rod, double length)
    {
        RodDimensions dimensions = RodDimensions.Nominal(rod.Parts, 0, 0, 0);
        Turning turning = new(dimensions);
        Assert.Equal(TurnDirection.Counterclockwise, turning.Lengthens);
        return (dimensions.Axial(length) - dimensions.Axial(Rod)) / Math.Abs(turning.AxialPerTurn);
    }

    public static string Text()
    {
        double now = OfWheel(Now);
        double want = OfWheel(Want);
        double length = LengthAfter(want - now);
        double alone = LengthAfter(LeftAlone - now);
        double angle = Math.Acos(Cosine) / Degree;
        double turn = (want - now) / Degree;
        double slope = Arm / Inch * Math.Cos(RodAngle);
        double each = (Want - Now) / 2;
        return Invariant($"""
            ```
            Arm r = 6 in, joint behind the axle; rod angle a = 4 deg; rod L = 15 1/2 in; plates W = 24 in.
            Toe now 1/8 in out, wanted 1/16 in in, both of the two wheels together. No camber.

            1. Toe of each wheel: half of the total, over the width
                 now               asin({Now / 2 / Inch:F5} / 24)  = {now / Degree:F4} deg
                 wanted            asin( {Want / 2 / Inch:F5} / 24)  =  {want / Degree:F4} deg
                 the wheel turns   {want / Degree:F4} - ({now / Degree:F4})    =  {turn:F4} deg, toward toe-in

            2. Where the inner joint is, from the steer axis in plan view
                 along the car     r + L sin a = 6 + 15.5 x {Math.Sin(RodAngle):F6}  = {Along / Inch:F5} in
                 across the car        L cos a =     15.5 x {Math.Cos(RodAngle):F6}  = {Across / Inch:F5} in
                 radius            q = sqrt({Along / Inch:F5}^2 + {Across / Inch:F5}^2) = {Radius / Inch:F5} in

            3. The angle between the two radii, as the rod is
                 cos g = (r^2 + q^2 - L^2) / (2 r q)
                       = (36 + {Radius * Radius / Inch / Inch:F4} - 240.25) / (2 x 6 x {Radius / Inch:F5})  = {Cosine:F6},  g = {angle:F4} deg

            4. The new length
                 g' = {angle:F4} + {turn:F4} = {angle + turn:F4} deg
                 L' = sqrt(36 + {Radius * Radius / Inch / Inch:F4} - 2 x 6 x {Radius / Inch:F5} x cos g')  = {length / Inch:F4} in
                 the rod grows by {(length - Rod) / Inch:F4} in ({length - Rod:F3} mm)

            5. Turns of the sleeve: M18x1.5 left-hand inside, 5/8-18 right-hand outside, the inner end bent by 14 mm
                 axial now         sqrt({Rod:F3}^2 - 14^2)  = {Axial(Rod):F3} mm
                 axial then        sqrt({length:F3}^2 - 14^2)  = {Axial(length):F3} mm
                 one turn          1.5 + 25.4 / 18         =   {PerTurn:F4} mm
                 turns             ({Axial(length):F3} - {Axial(Rod):F3}) / {PerTurn:F4} = {TurnsTo(length):F3}
                 Turn each sleeve {TurnsTo(length):F2} turns, {TurnsTo(length) * Flats:F1} flats of a hexagon, so that its rod grows:
                 counterclockwise, looking from the inner end outward.

            By rule of thumb, r cos a / W for one wheel:
                 {slope:F3} / 24 x {each / Inch:F5} in = {slope / 24 * each / Inch:F4} in longer

            The left rod alone, the right wheel staying at {now / Degree:F4} deg
                 left wheel        asin(({Want / Inch:F5} + {-Now / 2 / Inch:F5}) / 24)  = {LeftAlone / Degree:F4} deg
                 left rod          {alone / Inch:F4} in, {(alone - Rod) / Inch:F4} in longer, {TurnsTo(alone):F2} turns
                 then both wheels point to the right by ({LeftAlone / Degree:F4} - ({now / Degree:F4})) / 2 = {(LeftAlone - now) / 2 / Degree:F4} deg with the steering
                 wheel at center. To drive straight it is turned to the left by that times the steering's ratio.
            ```

            """);
    }

    private static WheelToes Total(double mm) => CarToe.OfTotal(new ToeReading(Mm(mm), null)).ToWheels(Mm(Plates))!.Value;

    private static Length Mm(double mm) => Length.FromMillimeters(mm);
}
