using TieRodCalc.Steering;
using TieRodCalc.Tests.Planning;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// Wheels with toe and camber of their own, on the rod that they have now, some with an axis given by its angles: held against
/// points and a spin axis that are turned by a rotation matrix, and a root finder.
/// </summary>
public class AlignedWheelTests
{
    private const double Radians = 1e-9;
    private const double Mm = 1e-7;

    private static readonly Case[] s_cases = [.. Enumerable.Range(0, RandomCounts.Geometries).Select(Draw)];

    [Fact]
    public void There_are_twenty_thousand_and_of_every_kind()
    {
        Assert.True(s_cases.Length == RandomCounts.Rods);
        foreach (CarSide side in Enum.GetValues<CarSide>())
        {
            Assert.Contains(s_cases, each => each.Wheel.Side == side && each.Wheel.Outer.X < -80);
            Assert.Contains(s_cases, each => each.Wheel.Side == side && each.Wheel.Outer.X > 80);
        }
    }

    [Fact]
    public void Toe_from_length_agrees_with_a_root_finder() => Assert.All(s_cases, each =>
    {
        double length = each.There.RodLengthAt(each.Turn);
        double turn = each.There.TurnFor(length);
        ToeAnswer answer = Toe.FromLength(each.Geometry, Length.FromMillimeters(length));
        Assert.Equal(ToeOutcome.Reached, answer.Outcome);
        Assert.Equal(each.There.ToeAt(turn, each.Spin), answer.Toe!.Value.Radians, Radians);
    });

    [Fact]
    public void Length_for_a_toe_agrees_with_a_root_finder() => Assert.All(s_cases, each =>
    {
        double toe = each.There.ToeAt(each.Turn, each.Spin);
        double turn = each.There.TurnForToe(toe, each.Spin);
        Assert.Equal(each.Turn, turn, 1e-8);
        RodLengthAnswer answer = Toe.LengthFor(each.Geometry, Angle.FromRadians(toe));
        Assert.Equal(ToeOutcome.Reached, answer.Outcome);
        Assert.Equal(each.There.RodLengthAt(turn), answer.Length!.Value.Millimeters, 1e-6);
    });

    [Fact]
    public void There_and_back_returns() => Assert.All(s_cases, each =>
    {
        double length = each.There.RodLengthAt(each.Turn);
        Angle toe = Toe.FromLength(each.Geometry, Length.FromMillimeters(length)).Toe!.Value;
        Assert.Equal(length, Toe.LengthFor(each.Geometry, toe).Length!.Value.Millimeters, Mm);
        SteeringGeometry away = each.Geometry.Turned(Length.FromMillimeters(length))!;
        SteeringGeometry back = away.Turned(each.Geometry.RodLength)!;
        Assert.Equal(each.Toe, Toe.FromLength(away, each.Geometry.RodLength).Toe!.Value.Radians, Radians);
        Assert.Equal(toe.Radians, Toe.FromLength(back, Length.FromMillimeters(length)).Toe!.Value.Radians, Radians);
    });

    [Fact]
    public void At_its_own_length_it_has_the_toe_that_was_given() => Assert.All(s_cases, each =>
    {
        Assert.Equal(each.Toe, Toe.FromLength(each.Geometry, each.Geometry.RodLength).Toe!.Value.Radians, Radians);
        Assert.Equal(
            each.Geometry.RodLength.Millimeters, Toe.LengthFor(each.Geometry, Angle.FromRadians(each.Toe)).Length!.Value.Millimeters, Mm);
    });

    [Fact]
    public void The_other_side_of_the_car_has_the_same_toe() => Assert.All(s_cases, each =>
    {
        Length length = Length.FromMillimeters(each.There.RodLengthAt(each.Turn));
        SteeringGeometry mirrored = Aligned(each.Wheel.Mirrored(), each.Present, each.Toe, each.Camber);
        Assert.Equal(Toe.FromLength(each.Geometry, length).Toe!.Value.Radians, Toe.FromLength(mirrored, length).Toe!.Value.Radians, Radians);
    });

    /// <summary>
    /// The first order is the virtual work of the rod: dL = u.(k x (out - A)) dturn, with u along the rod, and the ground line turns by
    /// the part of the turn that is upright less what camber tilts. What that neglects is of second order: half the step leaves a
    /// quarter of it.
    /// </summary>
    [Fact]
    public void A_small_change_is_the_change_over_the_arm_within_the_second_order() => Assert.All(s_cases, each =>
    {
        double slope = each.There.ToePerMm(each.Spin);
        double far = Missed(0.5);
        double near = Missed(0.25);
        Assert.True(Math.Abs(far) < 4e-4, $"{far}");
        Assert.InRange(Math.Abs(near - far / 4), 0, 1e-6 + 0.02 * Math.Abs(far));

        double Missed(double change)
        {
            double toe = Toe.FromLength(each.Geometry, each.Geometry.RodLength + Length.FromMillimeters(change)).Toe!.Value.Radians;
            return toe - each.Toe - slope * change;
        }
    });

    /// <summary>The axis is where two planes meet: upright seen from the side and tilted seen from the front, and the other way round.</summary>
    [Fact]
    public void Inclination_and_caster_are_the_axis_seen_from_the_front_and_from_the_side() => Assert.All(s_cases, each =>
    {
        WheelCase wheel = each.Wheel;
        Random random = RandomCounts.For(each.Index + 1);
        double inclination = (random.NextDouble() * 24 - 4) * Math.PI / 180;
        double caster = (random.NextDouble() * 24 - 8) * Math.PI / 180;
        double inward = wheel.Side == CarSide.Left ? -1 : 1;
        Triple seenFromTheFront = Cross(new(1, 0, 0), new(0, inward * Math.Sin(inclination), Math.Cos(inclination)));
        Triple seenFromTheSide = Cross(new(0, 1, 0), new(-Math.Sin(caster), 0, Math.Cos(caster)));
        WheelCase tilted = wheel with { Upper = wheel.Lower.Plus(Cross(seenFromTheFront, seenFromTheSide), 100) };
        SteeringGeometry byAngles = SteeringGeometry.FromInclination(
            wheel.Side,
            Angle.FromRadians(inclination),
            Angle.FromRadians(caster),
            wheel.Lower.Plus(tilted.Upper.Less(tilted.Lower), 0.3).ToPoint(),
            wheel.Outer.ToPoint(),
            wheel.Inner.ToPoint());
        Length length = Length.FromMillimeters(tilted.RodLengthAt(0.05));
        ToeAnswer answer = Toe.FromLength(byAngles, length);
        if (answer.Toe is { } toe && Math.Abs(toe.Radians) < 0.2)
        {
            Assert.Equal(tilted.ToeAt(0.05), toe.Radians, 1e-8);
        }
    });

    [Fact]
    public void With_an_upright_axis_camber_and_toe_do_nothing_to_the_change() => Assert.All(s_cases.Take(2_000), each =>
    {
        WheelCase upright = each.Wheel with { Upper = each.Wheel.Lower.Plus(new(0, 0, 200)) };
        Length longer = Length.FromMillimeters(upright.RodLength + 1);
        ToeAnswer plain = Toe.FromLength(upright.Geometry, longer);
        ToeAnswer aligned = Toe.FromLength(upright.Geometry.Aligned(Angle.FromRadians(each.Toe), Angle.FromRadians(each.Camber)), longer);
        Assert.Equal(plain.Outcome, aligned.Outcome);
        Assert.Equal((plain.Toe?.Radians ?? 0) + (plain.Toe is null ? 0 : each.Toe), aligned.Toe?.Radians ?? 0, Radians);
    });

    private static Case Draw(int index)
    {
        Random random = RandomCounts.For(index);
        double Between(double low, double high) => low + (high - low) * random.NextDouble();

        WheelCase wheel = WheelCase.Draw(random);

        // Where it stands now, and from there: both within the turn that the drawn wheel stays clear of dead center over.
        double stands = Between(-0.4, 0.4) * WheelCase.MostTurn;
        double turn = Between(-0.55, 0.55) * WheelCase.MostTurn;
        double toe = Between(-0.03, 0.03);
        double camber = Between(-0.1, 0.1);
        WheelCase there = wheel with { Outer = wheel.JointAfter(stands) };
        double present = there.RodLength;
        return new Case(index, wheel, there, present, turn, toe, camber, Aligned(wheel, present, toe, camber), there.SpinOf(toe, camber));
    }

    private static SteeringGeometry Aligned(WheelCase wheel, double present, double toe, double camber) => wheel.Geometry
        .Turned(Length.FromMillimeters(present))!
        .Aligned(Angle.FromRadians(toe), Angle.FromRadians(camber));

    private static Triple Cross(Triple a, Triple b) => new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);

    /// <param name="Index">Its number.</param>
    /// <param name="Wheel">The wheel as its points were measured.</param>
    /// <param name="There">The same where the present rod stands.</param>
    /// <param name="Present">The present length.</param>
    /// <param name="Turn">A turn from there.</param>
    /// <param name="Toe">Toe there.</param>
    /// <param name="Camber">Camber there.</param>
    /// <param name="Geometry">What is tested.</param>
    /// <param name="Spin">The spin axis there.</param>
    private sealed record Case(
        int Index, WheelCase Wheel, WheelCase There, double Present, double Turn, double Toe, double Camber, SteeringGeometry Geometry, Triple Spin);
}
