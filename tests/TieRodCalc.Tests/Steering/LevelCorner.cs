using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// A left corner to be worked out by hand, invented: both arms level, across the car and 400 mm long, so that the upright goes up
/// and down without turning; the outer joint 150 mm behind the steer axis, which stands upright.
/// </summary>
internal static class LevelCorner
{
    public const double Arm = 400;

    public const double Behind = 150;

    /// <summary>The corner with its inner joint so far inward of the outer one and so much higher, and so much farther back.</summary>
    public static CornerGeometry With(double inward, double higher, double back = 0) => CornerGeometry.FromPoints(
        CarSide.Left,
        ArmAt(0),
        ArmAt(250),
        new Triple(-Behind, 650, 100).ToPoint(),
        new Triple(-Behind - back, 650 - inward, 100 + higher).ToPoint(),
        new Triple(0, 700, 120).ToPoint());

    private static Wishbone ArmAt(double height) => new(
        new Triple(100, 650 - Arm, height).ToPoint(),
        new Triple(-100, 650 - Arm, height).ToPoint(),
        new Triple(0, 650, height).ToPoint());
}
