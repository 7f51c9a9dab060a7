using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Tests.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>What a turn does to length and toe, as differences of the exact figures before and after it.</summary>
public class TurnEffectTests
{
    private const double Plates = 600;

    /// <summary>What a shortcut must be off by for these cases to tell it from the definition, in millimeters or degrees.</summary>
    private const double Told = 1e-4;

    /// <summary>A wheel, its steer axis leaning, that was measured with a rod 15 mm shorter than the target; toe starts off zero.</summary>
    private static readonly WheelCase s_wheel =
        new(CarSide.Left, new(10, 600, -80), new(-30, 560, 150), new(-150, 590, 0), new(-170, 590 - 350, 12));

    /// <summary>Turns of each figure that a plan gives.</summary>
    private static readonly (double Turns, Func<RodSolution, TurnEffect?> Of)[] s_effects =
    [
        (1, solution => solution.PerTurn), (0.5, solution => solution.PerHalfTurn), (1.0 / 6, solution => solution.PerFlat),
    ];

    private static RodCase Straight => CheckCases.Inch.Rod with { Outside = new(OutsideShape.Hexagon, Dim.OfMm(25.4)) };

    /// <summary>Two bends to opposite sides of a short rod: the change of length is far from that of the axial length.</summary>
    private static RodCase Bent => CheckCases.BothBentOpposite.Rod with
    {
        Inner = CheckCases.BothBentOpposite.Rod.Inner with { Offset = Dim.OfMm(90) },
        Outer = CheckCases.BothBentOpposite.Rod.Outer with { Offset = Dim.OfMm(80) },
        Target = Dim.OfMm(Math.Sqrt(469.165 * 469.165 + 170 * 170)),
        Shorter = Dim.OfMm(1),
        Longer = Dim.OfMm(1),
        Outside = new(OutsideShape.Hexagon, Dim.OfMm(25.4)),
    };

    [Fact]
    public void Length_changes_by_the_exact_difference_on_a_bent_rod()
    {
        RodCase rod = Bent;
        RodSolution solution = rod.Plan().Solution!;
        foreach ((double turns, Func<RodSolution, TurnEffect?> of) in s_effects)
        {
            Assert.Equal(ChangeBy(rod, turns), of(solution)!.Length.Millimeters, 1e-9);
        }

        // Neither in proportion to the turn nor to the slope at the target.
        double turn = solution.PerTurn!.Length.Millimeters;
        double slope = rod.AxialOf(rod.Target.Mm) / rod.Target.Mm * Math.Abs(rod.AxialPerTurn);
        Assert.True(Math.Abs(turn - slope) > Told);
        Assert.True(Math.Abs(turn / 2 - solution.PerHalfTurn!.Length.Millimeters) > Told / 2);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Toe_changes_by_the_exact_difference_and_at_the_plates_by_that_of_the_sines(bool bent)
    {
        RodCase rod = bent ? Bent : Straight;
        WheelCase wheel = bent ? Scaled(s_wheel, rod.Target.Mm - 15) : s_wheel;
        RodSolution solution = Planned(rod, wheel, Length.FromMillimeters(Plates)).Solution!;
        double before = Toe(wheel, rod.Target.Mm);
        Assert.True(Math.Abs(before) > 0.05);
        foreach ((double turns, Func<RodSolution, TurnEffect?> of) in s_effects)
        {
            TurnEffect effect = of(solution)!;
            double after = Toe(wheel, rod.Target.Mm + ChangeBy(rod, turns));
            Assert.Equal(after - before, effect.Toe!.Value.Radians, 1e-9);
            Assert.Equal(Plates * (Math.Sin(after) - Math.Sin(before)), effect.ToeAtPlates!.Value.Millimeters, 1e-6);
            Assert.True(Math.Abs(Plates * Math.Sin(after - before) - effect.ToeAtPlates.Value.Millimeters) > Told);
        }

        // Half a turn is not half of the turn.
        Assert.True(Math.Abs(solution.PerTurn!.Toe!.Value.Degrees / 2 - solution.PerHalfTurn!.Toe!.Value.Degrees) > Told);
    }

    [Fact]
    public void Without_plates_or_steering_there_is_no_toe_to_give()
    {
        TurnEffect bare = Planned(Straight, null, Length.FromMillimeters(Plates)).Solution!.PerTurn!;
        Assert.Equal((null, null), (bare.Toe, bare.ToeAtPlates));
        TurnEffect unmeasured = Planned(Straight, s_wheel, null).Solution!.PerTurn!;
        Assert.NotNull(unmeasured.Toe);
        Assert.Null(unmeasured.ToeAtPlates);
    }

    private static RodPlan Planned(RodCase rod, WheelCase? wheel, Length? plates) =>
        RodPlanner.Plan(rod.ToRod(), rod.ToRequest() with { Steering = wheel?.Geometry, Plates = plates });

    /// <summary>The same wheel with its inner joint moved along the rod, which then has another length.</summary>
    private static WheelCase Scaled(WheelCase wheel, double length) =>
        wheel with { Inner = wheel.Outer.Plus(wheel.Inner.Less(wheel.Outer), length / wheel.RodLength) };

    private static double Toe(WheelCase wheel, double length) => wheel.ToeAt(wheel.TurnFor(length));

    private static double ChangeBy(RodCase rod, double turns) =>
        rod.LengthOf(rod.AxialOf(rod.Target.Mm) + turns * Math.Abs(rod.AxialPerTurn)) - rod.Target.Mm;
}
