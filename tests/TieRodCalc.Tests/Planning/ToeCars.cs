using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// Cars of the worked examples: 6 in arms with the rods 4 degrees over square, toe plates 24 in wide. All parts are invented.
/// </summary>
internal static class ToeCars
{
    public const double Arm = 6 * 25.4;
    public const double RodAngle = 4;
    public const double Plates = 24;

    /// <summary>
    /// The rod of the demo: 15 1/2 in, a bent M18x1.5 left-hand inner end, a 5/8-18 right-hand rod end, a hexagon sleeve.
    /// </summary>
    public static RodCase Demo { get; } = new()
    {
        Inner = new JointCase
        {
            Thread = new ThreadCase(false, 18, 1.5, Hand.Left),
            CenterToTip = Dim.OfMm(212),
            ThreadLength = Dim.OfMm(80),
            Offset = Dim.OfMm(14),
            MaxCut = Dim.OfMm(40),
            Nut = Dim.OfMm(9),
            Depth = Dim.OfInches(2),
            Bore = Bore.Closed,
            Witness = Dim.OfInches(1.5),
            Joint = JointKind.TaperedStud,
        },
        Outer = new JointCase
        {
            Thread = new ThreadCase(true, 0.625, 18, Hand.Right),
            CenterToTip = Dim.OfInches(2.625),
            ThreadLength = Dim.OfInches(1.75),
            Lead = Dim.OfInches(0.0625),
            Nut = Dim.OfInches(0.375),
            Depth = Dim.OfInches(2),
            Bore = Bore.Closed,
            Countersink = Dim.OfInches(0.03),
            Joint = JointKind.RodEnd,
        },
        SleeveLength = Dim.OfInches(8),
        SleeveKind = MaterialKind.Steel,
        Outside = new OutsideCase(OutsideShape.Hexagon, Dim.OfInches(1)),
        Target = Dim.OfInches(15.5),
        Shorter = Dim.OfInches(0.1875),
        Longer = Dim.OfInches(0.1875),
        TipGap = Dim.OfInches(0.125),
    };

    /// <summary>
    /// A straight rod of 256 mm whose ends are alike but for their hands: M16x1.5, each 32 mm in; the limits leave them from 26.25 mm
    /// (engagement) to 40 mm (closed bore), the nuts 42 mm.
    /// </summary>
    public static RodCase Twin => CaseVariants.Twin;

    /// <summary>The same with right-hand thread at both ends, so that the sleeve does not adjust it.</summary>
    public static RodCase Rigid { get; } = Twin.WithInner(inner => inner with { Thread = Twin.Outer.Thread }) with
    {
        Shorter = default,
        Longer = default,
    };

    /// <summary>
    /// A rod with one threaded joint: an inner end of 200 mm with 60 mm of M14x1.5, a nut of 7 mm, a socket 45 mm from its ball with
    /// 30 mm of thread. With 1.5 mm of lead, 0.75 mm of countersink and 21 mm to be engaged, 23.25 to 30 mm are in.
    /// </summary>
    public static RodCase Rack { get; } = new()
    {
        Inner = new JointCase
        {
            Thread = new ThreadCase(false, 14, 1.5, Hand.Right),
            CenterToTip = Dim.OfMm(200),
            ThreadLength = Dim.OfMm(60),
            Nut = Dim.OfMm(7),
            Depth = Dim.OfMm(30),
            Bore = Bore.Closed,
        },
        Outer = Twin.Outer with { Depth = Dim.OfMm(4), Joint = JointKind.TaperedStud },
        SleeveLength = Dim.OfMm(45),
        SleeveKind = MaterialKind.Steel,
        Target = Dim.OfMm(218),
        Shorter = default,
        Longer = default,
    };

    /// <summary>A total at the plates in inches, half of it each wheel's.</summary>
    public static WheelToes Total(double inches) => Each(inches / 2, inches / 2);

    /// <summary>Of each wheel at the plates in inches: asin(l / W).</summary>
    public static WheelToes Each(double left, double right) =>
        new(Angle.FromRadians(Math.Asin(left / Plates)), Angle.FromRadians(Math.Asin(right / Plates)));

    /// <summary>A rod at its target, or at another length, on one of the arms above.</summary>
    public static ToeRod OnCar(
        this RodCase rod, CarSide side, double? present = null, bool oneJoint = false, bool ahead = false, double arm = Arm)
    {
        ToeRodCase one = new(rod, oneJoint) { Present = present is { } mm ? Dim.OfMm(mm) : rod.Target };
        return one.OnCar(ToeWheel.OfArm(side, arm, ahead, RodAngle, one.Present.Mm), 0);
    }

    /// <summary>A car with the same rod on both sides.</summary>
    public static ToeRequest Car(
        this RodCase rod, WheelToes now, WheelToes want, ToeShare share = ToeShare.BothRods, bool ahead = false) => new()
        {
            Now = now,
            Want = want,
            Share = share,
            Left = rod.OnCar(CarSide.Left, ahead: ahead),
            Right = rod.OnCar(CarSide.Right, ahead: ahead),
        };

    /// <summary>
    /// The move of one rod on the left wheel, straight ahead now, to the toe that a rod so many millimeters longer gives.
    /// </summary>
    public static ToeMove MoveBy(this RodCase rod, double longer, double? present = null, bool oneJoint = false) =>
        rod.OnCar(CarSide.Left, present, oneJoint).MoveBy(longer);

    public static ToeMove MoveBy(this ToeRod rod, double longer) => ToePlanner.Plan(rod.LeftAlone(longer)).Moves.Single();

    /// <summary>What asks for a left rod so many millimeters longer.</summary>
    public static ToeRequest LeftAlone(this ToeRod rod, double longer)
    {
        double length = rod.Present.Millimeters;
        return new()
        {
            Now = default,
            Want = new(Angle.FromRadians(TurnOfArm(Arm, RodAngle, length, length + longer)), default),
            Share = ToeShare.LeftOnly,
            Left = rod,
        };
    }

    /// <summary>
    /// The turn of a wheel with a vertical steer axis and a level rod, in radians, the joint behind the axle and toe-in positive. Seen
    /// from above, axis A, outer joint B and inner joint C make a triangle: AB is the arm, BC the rod, and the angle at B is 90
    /// degrees and the rod angle. By the law of cosines AC follows, and with it, before and after, the angle at A.
    /// </summary>
    public static double TurnOfArm(double arm, double rodAngle, double rod, double changed)
    {
        double square = arm * arm + rod * rod - 2 * arm * rod * Math.Cos((90 + rodAngle) * Math.PI / 180);
        double AtAxis(double length) => Math.Acos((arm * arm + square - length * length) / (2 * arm * Math.Sqrt(square)));
        return AtAxis(changed) - AtAxis(rod);
    }
}
