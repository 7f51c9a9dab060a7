using TieRodCalc.Steering;
using TieRodCalc.Tests.Planning;
using UnitsNet;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Steering;

/// <summary>Toe of random wheels held against a root finder, and what must hold of every wheel.</summary>
public class ToeTests(ITestOutputHelper output)
{
    private const double Radians = 1e-9;
    private const double Mm = 1e-7;

    private static readonly (WheelCase Wheel, double Turn)[] s_turned = [.. Enumerable.Range(0, RandomCounts.Geometries).Select(Turned)];

    [Fact]
    public void Toe_agrees_with_a_root_finder()
    {
        output.WriteLine(RandomCounts.Description);
        Assert.All(s_turned, drawn =>
        {
            double length = drawn.Wheel.RodLengthAt(drawn.Turn);
            double found = drawn.Wheel.TurnFor(length);
            Assert.Equal(drawn.Turn, found, Radians);
            Assert.Equal(drawn.Wheel.ToeAt(found), ToeOf(drawn.Wheel, length), Radians);
        });
    }

    [Fact]
    public void Length_for_a_toe_is_the_length_of_the_turned_wheel()
    {
        Assert.All(s_turned, drawn =>
        {
            RodLengthAnswer answer = Toe.LengthFor(drawn.Wheel.Geometry, Angle.FromRadians(drawn.Wheel.ToeAt(drawn.Turn)));
            Assert.Equal(ToeOutcome.Reached, answer.Outcome);
            Assert.Equal(drawn.Wheel.RodLengthAt(drawn.Turn), answer.Length!.Value.Millimeters, Mm);
        });
    }

    [Fact]
    public void From_length_to_toe_and_back_returns()
    {
        Assert.All(s_turned, drawn =>
        {
            double length = drawn.Wheel.RodLengthAt(drawn.Turn);
            Angle toe = Angle.FromRadians(ToeOf(drawn.Wheel, length));
            Assert.Equal(length, Toe.LengthFor(drawn.Wheel.Geometry, toe).Length!.Value.Millimeters, Mm);
        });
    }

    [Fact]
    public void The_other_side_of_the_car_has_the_same_toe()
    {
        Assert.All(s_turned, drawn =>
        {
            double length = drawn.Wheel.RodLengthAt(drawn.Turn);
            Assert.Equal(ToeOf(drawn.Wheel, length), ToeOf(drawn.Wheel.Mirrored(), length), Radians);
        });
    }

    [Fact]
    public void Front_to_back_turns_toe_in_to_toe_out()
    {
        Assert.All(s_turned, drawn =>
        {
            double length = drawn.Wheel.RodLengthAt(drawn.Turn);
            Assert.Equal(-ToeOf(drawn.Wheel, length), ToeOf(drawn.Wheel.FrontToBack(), length), Radians);
        });
    }

    [Fact]
    public void The_points_of_the_axis_may_come_in_any_order_and_height()
    {
        Assert.All(s_turned, drawn =>
        {
            WheelCase wheel = drawn.Wheel;
            double length = wheel.RodLengthAt(drawn.Turn);
            Triple along = wheel.Upper.Less(wheel.Lower);
            WheelCase other = wheel with { Lower = wheel.Upper.Plus(along, 0.7), Upper = wheel.Lower.Plus(along, -1.3) };
            Assert.Equal(ToeOf(wheel, length), ToeOf(other, length), Radians);
        });
    }

    [Fact]
    public void A_longer_rod_turns_toe_in_where_the_outer_joint_is_behind_the_axle()
    {
        Assert.All(s_turned, drawn =>
        {
            // Behind or ahead is where the arm points: the perpendicular from the steer axis to the joint.
            int wanted = drawn.Wheel.Outer.X < Math.Min(drawn.Wheel.Lower.X, drawn.Wheel.Upper.X) - 20 ? 1
                : drawn.Wheel.Outer.X > Math.Max(drawn.Wheel.Lower.X, drawn.Wheel.Upper.X) + 20 ? -1
                : 0;
            double toe = ToeOf(drawn.Wheel, drawn.Wheel.RodLength + 0.5);
            Assert.True(wanted == 0 || Math.Sign(toe) == wanted);
        });
    }

    private static (WheelCase Wheel, double Turn) Turned(int index)
    {
        Random random = RandomCounts.For(index);
        WheelCase wheel = WheelCase.Draw(random);
        return (wheel, (2 * random.NextDouble() - 1) * WheelCase.MostTurn);
    }

    private static double ToeOf(WheelCase wheel, double length)
    {
        ToeAnswer answer = Toe.FromLength(wheel.Geometry, Length.FromMillimeters(length));
        Assert.Equal(ToeOutcome.Reached, answer.Outcome);
        return answer.Toe!.Value.Radians;
    }
}
