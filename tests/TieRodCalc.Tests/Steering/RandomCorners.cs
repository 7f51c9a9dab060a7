using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>The points of a double-wishbone corner at ride height, toe and camber zero there.</summary>
internal sealed record RandomCorner(CarSide Side, Wishbone Lower, Wishbone Upper, Point Outer, Point Inner, Point Wheel)
{
    public CornerGeometry Geometry => CornerGeometry.FromPoints(Side, Lower, Upper, Outer, Inner, Wheel);

    /// <summary>Where the outer joint stands.</summary>
    public JointPlace Place => Outer.X > Wheel.X ? JointPlace.AheadOfAxle : JointPlace.BehindAxle;

    /// <summary>The same car seen in a mirror: left is right.</summary>
    public RandomCorner Mirrored() => EachPoint(point => point with { Y = -point.Y }) with
    {
        Side = Side == CarSide.Left ? CarSide.Right : CarSide.Left,
    };

    /// <summary>The same corner with every point replaced.</summary>
    public RandomCorner EachPoint(Func<Point, Point> replace)
    {
        Wishbone Arm(Wishbone arm) => new(replace(arm.First), replace(arm.Second), replace(arm.Ball));
        return new RandomCorner(Side, Arm(Lower), Arm(Upper), replace(Outer), replace(Inner), replace(Wheel));
    }
}

/// <summary>
/// Draws double-wishbone corners that a car could have, evenly of both sides, with the outer joint behind and ahead of the axle. The
/// ranges, in millimeters, are invented; the inner joint is up to 25 mm away from level with the outer one and straight across.
/// </summary>
internal static class RandomCorners
{
    public static IReadOnlyList<RandomCorner> All { get; } = [.. Enumerable.Range(0, RandomCounts.Corners).Select(Draw)];

    /// <summary>The corner of a number: of four in a row, one of each side and place of the joint.</summary>
    public static RandomCorner Draw(int index)
    {
        RandomCorner left = Left(RandomCounts.For(index), index / 2 % 2 == 0 ? -1 : 1);
        return index % 2 == 0 ? left : left.Mirrored();
    }

    private static RandomCorner Left(Random random, int ahead)
    {
        double Between(double low, double high) => low + (high - low) * random.NextDouble();

        Triple low = new(Between(-10, 10), Between(600, 700), Between(-90, -40));
        Triple high = low.Plus(new Triple(-Between(5, 35), -Between(15, 60), Between(200, 280)));
        double lower = Between(300, 420);
        double upper = lower * Between(0.65, 0.95);
        Wishbone lowerArm = Arm(low, lower, 100, 160, Between(-20, 25));
        Wishbone upperArm = Arm(high, upper, 80, 140, Between(-50, 10));
        Triple outer = new(ahead * Between(110, 160), low.Y + Between(-30, 20), low.Z + Between(20, 110));
        Triple wheel = new(0, low.Y + Between(60, 110), low.Z + Between(60, 110));
        Triple inner = outer.Plus(new Triple(Between(-25, 25), -Between(280, 420), Between(-25, 25)));
        return new RandomCorner(CarSide.Left, lowerArm, upperArm, outer.ToPoint(), inner.ToPoint(), wheel.ToPoint());

        // The front point straight inward of the ball joint, the rear one up to 20 mm nearer or farther and 15 mm higher or lower.
        Wishbone Arm(Triple ball, double length, double least, double most, double rise)
        {
            Triple front = new(Between(least, most), ball.Y - length, ball.Z + rise);
            Triple rear = new(-Between(least, most), front.Y + Between(-20, 20), front.Z + Between(-15, 15));
            return new Wishbone(front.ToPoint(), rear.ToPoint(), ball.ToPoint());
        }
    }
}
