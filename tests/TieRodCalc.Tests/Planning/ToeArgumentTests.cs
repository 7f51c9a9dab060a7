using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>What is refused before any toe is planned.</summary>
public class ToeArgumentTests
{
    [Fact]
    public void A_missing_rod_is_an_argument_fault()
    {
        ToeRequest request = ToeCars.Twin.Car(default, default);
        Assert.Throws<ArgumentException>(() => ToePlanner.Plan(request with { Left = null }));
        Assert.Throws<ArgumentException>(() => ToePlanner.Plan(request with { Right = null }));
        Assert.Throws<ArgumentException>(() => ToePlanner.Plan(request with { Left = null, Share = ToeShare.LeftOnly }));
        Assert.Throws<ArgumentException>(() => ToePlanner.Plan(request with { Right = null, Share = ToeShare.RightOnly }));
        Assert.Single(ToePlanner.Plan(request with { Right = null, Share = ToeShare.LeftOnly }).Moves);
        Assert.Single(ToePlanner.Plan(request with { Left = null, Share = ToeShare.RightOnly }).Moves);
        Assert.Throws<ArgumentNullException>(() => ToePlanner.Plan(null!));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-256)]
    [InlineData(14)]
    public void A_present_length_that_cannot_be_had_is_an_argument_fault(double present)
    {
        // The demo's inner end stands 14 mm off.
        Fault(ToeCars.Demo.OnCar(CarSide.Left) with { Present = Length.FromMillimeters(present) });
        RodCase rack = ToeCars.Rack.WithInner(inner => inner with { Offset = Dim.OfMm(14) });
        Fault(rack.OnCar(CarSide.Left, oneJoint: true) with { Present = Length.FromMillimeters(present) });
    }

    [Theory]
    [InlineData(90)]
    [InlineData(-90)]
    [InlineData(120)]
    public void An_angle_that_is_not_below_a_right_angle_is_an_argument_fault(double degrees)
    {
        Angle angle = Angle.FromDegrees(degrees);
        ToeRod rod = ToeCars.Twin.OnCar(CarSide.Left);
        Fault(rod with { Camber = angle });
        foreach (WheelToes toes in (WheelToes[])[new(angle, default), new(default, angle)])
        {
            // Whether the wheel is turned or not: the total is made of both.
            Assert.Throws<ArgumentException>(() => ToePlanner.Plan(rod.LeftAlone(0) with { Now = toes }));
            Assert.Throws<ArgumentException>(() => ToePlanner.Plan(rod.LeftAlone(0) with { Want = toes }));
        }
    }

    [Fact]
    public void A_request_that_cannot_be_planned_is_an_argument_fault()
    {
        ToeRod rod = ToeCars.Twin.OnCar(CarSide.Left);
        Fault(rod with { Request = rod.Request with { Target = Length.Zero } });
        Fault(rod with { Request = rod.Request with { Shorter = Length.FromMillimeters(-1) } });
    }

    private static void Fault(ToeRod rod) =>
        Assert.Throws<ArgumentException>(() => ToePlanner.Plan(ToeCars.Twin.Car(default, default) with { Left = rod }));
}
