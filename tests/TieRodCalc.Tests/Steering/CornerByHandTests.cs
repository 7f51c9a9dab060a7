using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// Corners that can be followed by hand: level arms of 320 mm, parallel and of one length, an upright that stands straight up. The
/// upright then goes up by the travel z and inward by 320 - sqrt(320^2 - z^2), turns about the vertical alone, and keeps its camber.
/// </summary>
public class CornerByHandTests
{
    private const double Fine = 1e-9;
    private const double Arm = 320;

    private static readonly Triple s_lower = new(5, 640, -70);
    private static readonly Triple s_upper = new(5, 640, 170);

    public static TheoryData<double> Travels => [-200, -75, -25.4, -1, 0, 1, 25.4, 75, 200];

    [Theory]
    [MemberData(nameof(Travels))]
    public void A_rod_parallel_to_the_arms_and_as_long_gives_no_toe_at_all(double travel)
    {
        Triple outer = new(-130, 632, 20);
        foreach (CarSide side in Enum.GetValues<CarSide>())
        {
            CornerGeometry corner = Corner(side, outer, outer.Plus(new(0, -Arm, 0)));
            CornerPosition there = corner.Aligned(Angle.FromRadians(0.01), Angle.FromRadians(-0.03)).At(Length.FromMillimeters(travel))!;
            Assert.Equal(0.01, there.Toe.Radians, Fine);
            Assert.Equal(-0.03, there.Camber.Radians, Fine);
            Triple moved = new(0, -Inward(travel), travel);
            Assert.Equal(0, Apart(side, s_lower.Plus(moved), there.LowerBall), Fine);
            Assert.Equal(0, Apart(side, s_upper.Plus(moved), there.UpperBall), Fine);
            Assert.Equal(0, Apart(side, outer.Plus(moved), there.Outer), Fine);
            Assert.Equal(0, Apart(side, new Triple(0, 725, 15).Plus(moved), there.Wheel), Fine);
        }
    }

    /// <summary>
    /// Seen from above, steer axis, outer and inner joint are a triangle: the steering arm a, the distance b of the inner joint from the
    /// axis, and the rod foreshortened by how much it now rises. The angle at the axis, and where the inner joint now lies from there, tell
    /// how far the wheel has turned.
    /// </summary>
    [Theory]
    [InlineData(-130, 632, 20, 18, -340, 12)]
    [InlineData(-118, 655, 45, -20, -300, -21)]
    [InlineData(125, 611, 31, -9, -390, 8)]
    [InlineData(142, 650, 2, 24, -330, -15)]
    public void Toe_follows_from_a_plane_triangle(double x, double y, double z, double forward, double left, double up)
    {
        Triple outer = new(x, y, z);
        Triple inner = outer.Plus(new(forward, left, up));
        foreach (double travel in (ReadOnlySpan<double>)[-75, -25.4, 0, 25.4, 75])
        {
            double wanted = BearingOfArm(0) - BearingOfArm(travel);
            foreach (CarSide side in Enum.GetValues<CarSide>())
            {
                CornerPosition there = Corner(side, outer, inner).At(Length.FromMillimeters(travel))!;
                Assert.Equal(wanted, there.Toe.Radians, Fine);
                Assert.Equal(0, there.Camber.Radians, Fine);
            }
        }

        // Counted from forward to the left; the arm lies to the right of the inner joint where it points rearward. Toe-in of a left
        // wheel turns it to the right.
        double BearingOfArm(double travel)
        {
            double forwardFromAxis = inner.X - s_lower.X;
            double leftFromAxis = inner.Y - (s_lower.Y - Inward(travel));
            double a = Math.Sqrt(Square(x - s_lower.X) + Square(y - s_lower.Y));
            double b = Math.Sqrt(Square(forwardFromAxis) + Square(leftFromAxis));
            double squareSeen = Square(forward) + Square(left) + Square(up) - Square(travel - up);
            double atAxis = Math.Acos((a * a + b * b - squareSeen) / (2 * a * b));
            return Math.Atan2(leftFromAxis, forwardFromAxis) + (x < 0 ? -1 : 1) * atAxis;
        }
    }

    /// <summary>The short way to see the sign: a joint behind the axle that is pulled inward turns the wheel out.</summary>
    [Theory]
    [InlineData(-130, 240, -1)]
    [InlineData(-130, 400, 1)]
    [InlineData(130, 240, 1)]
    [InlineData(130, 400, -1)]
    public void A_short_rod_behind_the_axle_toes_out_and_a_long_one_in_both_ways_and_ahead_the_other_way_round(
        double x, double rod, int wanted)
    {
        Triple outer = new(x, 632, 20);
        CornerGeometry corner = Corner(CarSide.Left, outer, outer.Plus(new(0, -rod, 0)));
        Assert.Equal(wanted, Math.Sign(corner.At(Length.FromMillimeters(50))!.Toe.Radians));
        Assert.Equal(wanted, Math.Sign(corner.At(Length.FromMillimeters(-50))!.Toe.Radians));
    }

    /// <summary>Level arms of 320 mm go no further up than 320 mm, and are followed to an angle of 1.2 radians.</summary>
    [Fact]
    public void Beyond_what_the_arms_reach_there_is_no_position()
    {
        Triple outer = new(-130, 632, 20);
        CornerGeometry corner = Corner(CarSide.Left, outer, outer.Plus(new(0, -Arm, 0)));
        Assert.NotNull(corner.At(Length.FromMillimeters(295)));
        Assert.NotNull(corner.At(Length.FromMillimeters(-295)));
        Assert.Null(corner.At(Length.FromMillimeters(321)));
        Assert.Null(corner.At(Length.FromMillimeters(-321)));
    }

    private static CornerGeometry Corner(CarSide side, Triple outer, Triple inner)
    {
        Wishbone ArmOf(Triple ball) =>
            new(On(side, ball.Plus(new(120, -Arm, 0))), On(side, ball.Plus(new(-140, -Arm, 0))), On(side, ball));
        return CornerGeometry.FromPoints(
            side, ArmOf(s_lower), ArmOf(s_upper), On(side, outer), On(side, inner), On(side, new Triple(0, 725, 15)));
    }

    private static double Inward(double travel) => Arm - Math.Sqrt(Square(Arm) - Square(travel));

    private static double Square(double value) => value * value;

    private static Point On(CarSide side, Triple left) => (side == CarSide.Left ? left : left.MirroredAcross()).ToPoint();

    private static double Apart(CarSide side, Triple wanted, Point found) => On(side, wanted).DistanceTo(found).Millimeters;
}
