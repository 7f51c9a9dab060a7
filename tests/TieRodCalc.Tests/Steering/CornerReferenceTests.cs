using TieRodCalc.Steering;
using UnitsNet;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// Random corners with toe and camber of their own, held against a numerical solution that shares nothing with the solver.
/// </summary>
public class CornerReferenceTests(ITestOutputHelper output)
{
    /// <summary>Millimeters and radians.</summary>
    private const double Agrees = 1e-9;

    /// <summary>Steps, in millimeters of travel, in which the reference is followed.</summary>
    private const double Step = 8;

    private const double MostTravel = 60;

    [Fact]
    public void There_are_as_many_of_each_side_and_place_of_the_joint()
    {
        int[] counts = [.. RandomCorners.All.CountBy(corner => (corner.Side, corner.Place)).Select(count => count.Value)];
        Assert.Equal(RandomCounts.Corners, counts.Sum());
        Assert.True(RandomCounts.Corners < 4 || counts.Length == 4 && counts.Max() - counts.Min() <= 1);
    }

    [Fact]
    public void Joints_wheel_center_toe_and_camber_agree_over_the_travel()
    {
        // One source for all: those of two numbers give values that go with one another.
        Random random = RandomCounts.For(RandomCounts.Corners);
        double worst = 0;
        for (int index = 0; index < RandomCorners.All.Count; index++)
        {
            RandomCorner corner = RandomCorners.All[index];
            double toe = Between(random, -0.03, 0.03);
            double camber = Between(random, -0.1, 0.1);
            CornerGeometry geometry = corner.Geometry.Aligned(Angle.FromRadians(toe), Angle.FromRadians(camber));
            foreach (int sense in (ReadOnlySpan<int>)[-1, 1])
            {
                CornerReference reference = new(corner, WheelCase.SpinOf(corner.Side, toe, camber));
                foreach (double travel in (ReadOnlySpan<double>)[Between(random, 0, 20), Between(random, 20, 40), MostTravel])
                {
                    Assert.True(reference.Follow(sense * travel, Step) && reference.IsWhole, $"corner {index} at {sense * travel} mm");
                    double missed = Missed(geometry.At(Length.FromMillimeters(sense * travel)), reference);
                    Assert.True(missed <= Agrees, $"corner {index} at {sense * travel} mm misses by {missed}");
                    worst = Math.Max(worst, missed);
                }
            }
        }

        output.WriteLine($"{RandomCounts.Description}; the worst misses by {worst}");
    }

    private static double Missed(CornerPosition? found, CornerReference reference)
    {
        Assert.NotNull(found);
        double[] apart =
        [
            found.Toe.Radians - reference.Toe,
            found.Camber.Radians - reference.Camber,
            Apart(found.LowerBall, reference.LowerBall),
            Apart(found.UpperBall, reference.UpperBall),
            Apart(found.Outer, reference.OuterJoint),
            Apart(found.Wheel, reference.WheelCenter),
        ];

        // Enumerable.Max would pass over what is not a number.
        return apart.Aggregate(0.0, (most, each) => Math.Max(most, Math.Abs(each)));
    }

    private static double Apart(Point found, Triple wanted) =>
        new Triple(found.X.Millimeters, found.Y.Millimeters, found.Z.Millimeters).Less(wanted).Size;

    private static double Between(Random random, double low, double high) => low + (high - low) * random.NextDouble();
}
