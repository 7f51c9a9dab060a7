using MathNet.Numerics.LinearAlgebra;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// The swing of a rod's joints, against corners by hand and against studs that are carried along by the three public points of the
/// upright: as combinations of its edges, which a linear solver finds.
/// </summary>
public class SwingTests
{
    private const int Intervals = 24;
    private const double Radians = 1e-7;
    private const double Degrees = 1e-6;

    private static readonly StudAxis[] s_studs = Enum.GetValues<StudAxis>();

    private static readonly (CornerGeometry Corner, CornerGeometry Mirrored, SwingRange Range)[] s_cases =
    [
        .. Enumerable.Range(0, RandomCounts.SwungCorners)
            .Select(index => (RandomCorners.Draw(index), RandomCounts.For(-1 - index)))
            .Select(drawn => (drawn.Item1.Geometry, drawn.Item1.Mirrored().Geometry, Range(
                10 + 40 * drawn.Item2.NextDouble(), 10 + 40 * drawn.Item2.NextDouble(), 40 * drawn.Item2.NextDouble())))
            .Where(each => Swings.OfInner(each.Item1, StudAxis.Vertical, each.Item3) is not null),
    ];

    [Fact]
    public void The_greatest_swing_agrees_with_studs_carried_by_three_points() => Assert.All(s_cases, each =>
    {
        foreach (StudAxis stud in s_studs)
        {
            AssertGreatest(Swings.OfOuter(each.Corner, stud, each.Range)!, each.Range, at => OuterSwing(each.Corner, stud, at));
            AssertGreatest(Swings.OfInner(each.Corner, stud, each.Range)!, each.Range, at => InnerSwing(stud, at));
        }

        void AssertGreatest(JointSwing swing, SwingRange range, Func<CornerPosition, double> of)
        {
            double most = Travels(range)
                .SelectMany(_ => Steers(range), (travel, steer) => of(each.Corner.At(Mm(travel), Mm(steer))!))
                .Max();
            Assert.Equal(most, swing.Most.Radians, Radians);
            Assert.Equal(swing.Most.Radians, of(each.Corner.At(swing.Travel, swing.Steer)!), Radians);
        }
    });

    [Fact]
    public void Most_random_corners_reach_their_range() =>
        Assert.InRange(s_cases.Length, RandomCounts.SwungCorners / 2, RandomCounts.SwungCorners);

    [Fact]
    public void A_mirrored_car_swings_as_far() => Assert.All(s_cases, each =>
    {
        foreach (StudAxis stud in s_studs)
        {
            Assert.Equal(
                Swings.OfOuter(each.Corner, stud, each.Range)!.Most.Radians,
                Swings.OfOuter(each.Mirrored, stud, each.Range)!.Most.Radians,
                Radians);
            Assert.Equal(
                Swings.OfInner(each.Corner, stud, each.Range)!.Most.Radians,
                Swings.OfInner(each.Mirrored, stud, each.Range)!.Most.Radians,
                Radians);
        }
    });

    [Fact]
    public void Units_do_not_matter()
    {
        CornerGeometry corner = LevelCorner.With(380, -10);
        SwingRange range = new(Length.FromInches(1), Length.FromInches(2), Length.FromInches(1));
        JointSwing inches = Swings.OfOuter(corner, StudAxis.AlongCar, range)!;
        JointSwing metric = Swings.OfOuter(corner, StudAxis.AlongCar, Range(25.4, 50.8, 25.4))!;
        Assert.Equal(metric.Most.Degrees, inches.Most.Degrees, Degrees);
        Assert.Equal(metric.Travel.Millimeters, inches.Travel.Millimeters, 1e-9);
        Assert.Equal(metric.Steer.Millimeters, inches.Steer.Millimeters, 1e-9);
    }

    [Theory]
    [InlineData(StudAxis.Vertical, 0)]
    [InlineData(StudAxis.AlongCar, 0)]
    [InlineData(StudAxis.AlongAxle, 90)]
    public void A_level_rod_across_the_car_at_ride_height(StudAxis stud, double degrees) =>
        AssertBoth(LevelCorner.With(400, 0), stud, Range(0, 0, 0), degrees);

    [Theory]
    [InlineData(StudAxis.Vertical, 30)]
    [InlineData(StudAxis.AlongAxle, 60)]
    [InlineData(StudAxis.AlongCar, 0)]
    public void A_rod_that_falls_inward_by_thirty_degrees(StudAxis stud, double degrees) =>
        AssertBoth(LevelCorner.With(400 * Math.Cos(Math.PI / 6), -200), stud, Range(0, 0, 0), degrees);

    [Theory]
    [InlineData(StudAxis.Vertical, 0)]
    [InlineData(StudAxis.AlongAxle, 70)]
    [InlineData(StudAxis.AlongCar, 20)]
    public void A_rod_that_sweeps_back_by_twenty_degrees(StudAxis stud, double degrees) =>
        AssertBoth(LevelCorner.With(400 * Math.Cos(Math.PI / 9), 0, 400 * Math.Sin(Math.PI / 9)), stud, Range(0, 0, 0), degrees);

    /// <summary>Over the travel the rod leans as the arms do, by the angle whose sine is the travel over their length.</summary>
    [Theory]
    [InlineData(40, 50, 50)]
    [InlineData(60, 50, -60)]
    public void A_rod_beside_level_arms_leans_as_they_do(double droop, double bump, double at)
    {
        CornerGeometry corner = LevelCorner.With(LevelCorner.Arm, 0);
        double degrees = Math.Asin(Math.Abs(at) / LevelCorner.Arm) * 180 / Math.PI;
        AssertBoth(corner, StudAxis.Vertical, Range(droop, bump, 0), degrees);
        Assert.Equal(at, Swings.OfOuter(corner, StudAxis.Vertical, Range(droop, bump, 0))!.Travel.Millimeters, 1e-9);
        Assert.Equal(at, Swings.OfInner(corner, StudAxis.Vertical, Range(droop, bump, 0))!.Travel.Millimeters, 1e-9);

        // Along the axle it is farthest from square where it is level, which is at ride height although no even step may be there.
        AssertBoth(corner, StudAxis.AlongAxle, Range(droop, bump, 0), 90);
        Assert.Equal(0, Swings.OfInner(corner, StudAxis.AlongAxle, Range(droop, bump, 0))!.Travel.Millimeters, 1e-9);
    }

    /// <summary>
    /// Steered at ride height, the outer joint goes on a circle about the upright steer axis: in the plane, a triangle of the axis,
    /// the inner and the outer joint. The upright turns with the outer joint, and its stud with it.
    /// </summary>
    [Fact]
    public void Steering_swings_a_stud_along_the_car_as_a_plane_triangle_says()
    {
        CornerGeometry corner = LevelCorner.With(LevelCorner.Arm, 0);
        (double Inner, double Outer)[] ends = [SteeredBy(40), SteeredBy(-40)];
        SwingRange range = Range(0, 0, 40);
        Assert.Equal(ends.Max(end => end.Inner), Swings.OfInner(corner, StudAxis.AlongCar, range)!.Most.Radians, Radians);
        Assert.Equal(ends.Max(end => end.Outer), Swings.OfOuter(corner, StudAxis.AlongCar, range)!.Most.Radians, Radians);
        AssertBoth(corner, StudAxis.Vertical, range, 0);

        static (double Inner, double Outer) SteeredBy(double left)
        {
            // Seen from above with the steer axis at the origin: back and inward.
            (double back, double inward) = (LevelCorner.Behind, LevelCorner.Arm - left);
            double distance = Math.Sqrt(back * back + inward * inward);
            double between = Math.Acos((LevelCorner.Behind * LevelCorner.Behind + distance * distance - LevelCorner.Arm * LevelCorner.Arm)
                / (2 * LevelCorner.Behind * distance));
            double turned = Math.Atan2(inward, back) - between;
            double rodBack = back - LevelCorner.Behind * Math.Cos(turned);
            double rodInward = inward - LevelCorner.Behind * Math.Sin(turned);
            double lean = Math.Atan2(rodBack, rodInward);
            return (Math.Abs(lean), Math.Abs(lean + turned));
        }
    }

    [Theory]
    [InlineData(401, 0, 0)]
    [InlineData(0, 401, 0)]
    [InlineData(0, 0, 900)]
    public void A_range_out_of_reach_has_no_answer(double droop, double bump, double steer)
    {
        CornerGeometry corner = LevelCorner.With(380, -10);
        Assert.Null(Swings.OfOuter(corner, StudAxis.Vertical, Range(droop, bump, steer)));
        Assert.Null(Swings.OfInner(corner, StudAxis.Vertical, Range(droop, bump, steer)));
    }

    [Theory]
    [InlineData(-1, 0, 0)]
    [InlineData(0, -1, 0)]
    [InlineData(0, 0, -1)]
    public void A_negative_range_is_refused(double droop, double bump, double steer)
    {
        CornerGeometry corner = LevelCorner.With(380, -10);
        Assert.Throws<ArgumentException>(() => Swings.OfOuter(corner, StudAxis.Vertical, Range(droop, bump, steer)));
        Assert.Throws<ArgumentException>(() => Swings.OfInner(corner, StudAxis.Vertical, Range(droop, bump, steer)));
    }

    private static void AssertBoth(CornerGeometry corner, StudAxis stud, SwingRange range, double degrees)
    {
        Assert.Equal(degrees, Swings.OfOuter(corner, stud, range)!.Most.Degrees, Degrees);
        Assert.Equal(degrees, Swings.OfInner(corner, stud, range)!.Most.Degrees, Degrees);
    }

    private static double OuterSwing(CornerGeometry corner, StudAxis stud, CornerPosition at)
    {
        Vector<double> parts = Edges(corner.At(Length.Zero)!).Solve(Direction(stud));
        return Swing(Edges(at) * parts, at);
    }

    private static double InnerSwing(StudAxis stud, CornerPosition at) => Swing(Direction(stud), at);

    private static double Swing(Vector<double> stud, CornerPosition at)
    {
        Vector<double> rod = Of(at.Inner) - Of(at.Outer);
        double along = Math.Abs(stud.DotProduct(rod)) / (rod.L2Norm() * stud.L2Norm());
        return Math.PI / 2 - Math.Acos(Math.Min(1, along));
    }

    /// <summary>Two edges of the upright and what is square to them.</summary>
    private static Matrix<double> Edges(CornerPosition at)
    {
        Vector<double> up = Of(at.UpperBall) - Of(at.LowerBall);
        Vector<double> outer = Of(at.Outer) - Of(at.LowerBall);
        Vector<double> square = Vector<double>.Build.DenseOfArray(
        [
            up[1] * outer[2] - up[2] * outer[1], up[2] * outer[0] - up[0] * outer[2], up[0] * outer[1] - up[1] * outer[0],
        ]);
        return Matrix<double>.Build.DenseOfColumnVectors(up, outer, square);
    }

    private static Vector<double> Direction(StudAxis stud) => Vector<double>.Build.DenseOfArray(
    [
        stud == StudAxis.AlongCar ? 1 : 0, stud == StudAxis.AlongAxle ? 1 : 0, stud == StudAxis.Vertical ? 1 : 0,
    ]);

    private static Vector<double> Of(Point point) =>
        Vector<double>.Build.DenseOfArray([point.X.Millimeters, point.Y.Millimeters, point.Z.Millimeters]);

    private static IEnumerable<double> Travels(SwingRange range) => Grid(range.Droop.Millimeters, range.Bump.Millimeters).Append(0);

    private static IEnumerable<double> Steers(SwingRange range) => Grid(range.Steer.Millimeters, range.Steer.Millimeters);

    private static IEnumerable<double> Grid(double less, double more) =>
        Enumerable.Range(0, Intervals + 1).Select(step => -less + (less + more) * step / Intervals);

    private static SwingRange Range(double droop, double bump, double steer) => new(Mm(droop), Mm(bump), Mm(steer));

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
