using TieRodCalc.Parts;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>A rod that was on the car, the toe that it gave, and the toe that the new one shall give.</summary>
/// <param name="Rod">Its length.</param>
/// <param name="Toe">The toe that it gave.</param>
/// <param name="Want">The toe that is wanted.</param>
internal sealed record ExistingRod(Length Rod, CarToe Toe, CarToe Want)
{
    /// <summary>Reads <c>{rod:, toe:, want:}</c>; null where a part is missing or could not be read, which has its problem then.</summary>
    public static ExistingRod? Read(MapReader map, ToeGauges gauges)
    {
        Measured? rod = map.Dimension("rod", Least.AboveZero, needed: true);
        CarToe? toe = ReadToe(map, "toe", gauges);
        CarToe? want = ReadToe(map, "want", gauges);
        return rod is { } existing && toe is not null && want is not null ? new ExistingRod(existing.Nominal, toe, want) : null;
    }

    /// <summary>The length of the new rod; null where there is none, which is reported then.</summary>
    /// <param name="map">The rod's map.</param>
    /// <param name="side">The rod's side, or null.</param>
    /// <param name="steering">The job's steering.</param>
    public Length? Target(MapReader map, CarSide? side, SteeringSetup steering)
    {
        if (!steering.Sound)
        {
            return null;
        }

        if (steering.WheelOf(side) is not { } wheel)
        {
            string missing = side is null && steering.OneRodTurns is null
                ? $"say the 'side' of {map.Title}"
                : $"the steering of the {Names.Of(steering.OneRodTurns ?? side!.Value)} wheel is not given";
            map.Findings.Problem(map.SpanOf("length"), $"a length that follows from toe needs the steering of the rod's wheel: {missing}");
            return null;
        }

        if (!Toe.Readings.Concat(Want.Readings).All(steering.Gauges.Measures))
        {
            map.Findings.Problem(map.SpanOf("length"), steering.Gauges.Missing);
            return null;
        }

        Length? width = steering.Gauges.Gauge?.Width;
        WheelToes now = Toe.ToWheels(width)!.Value;
        WheelToes wantOfWheels = Want.ToWheels(width)!.Value;
        Angle? want = steering.OneRodTurns is null ? wantOfWheels[wheel.Side] : now.AloneFor(wheel.Side, wantOfWheels);
        SteeringGeometry geometry = wheel.Wheel.With(wheel.Side, Rod);
        RodLengthAnswer answer = want is { } toe && geometry.Turned(Rod)?.Aligned(now[wheel.Side], wheel.Wheel.Camber) is { } stands
            ? Steering.Toe.LengthFor(stands, toe)
            : new(default, null, default, default);
        if (answer.Length is { } target)
        {
            map.Findings.Note(map.SpanOf("length"), Said(target, steering));
            return target;
        }

        ToeAnswer reach = Steering.Toe.FromLength(geometry, Rod);
        map.Findings.Problem(
            map.SpanOf("length"),
            reach.Outcome == ToeOutcome.InLine
                ? "the rod is in line with the steer axis: no length follows from a toe there"
                : $"no length of the rod gives the wanted toe; the steering as given can have rods from {Wording.Mm(reach.Shortest)} to "
                    + Wording.Mm(reach.Longest));
        return null;
    }

    private string Said(Length target, SteeringSetup steering)
    {
        string half = steering.OneRodTurns is null && Toe.Total is not null && Want.Total is not null
            ? "; the toes are totals, and this rod makes up half of the change, the rod of the other wheel the other half"
            : string.Empty;
        return $"the length follows from the existing rod's toe: {LengthFormat.Both(target, LengthDisplay.Inch)}{half}; the 'toe' of "
            + "'steering' is then that measured with the new rod";
    }

    /// <summary>The total of both wheels, or that of each of them: <c>{each: 1/16 in out}</c>.</summary>
    private static CarToe? ReadToe(MapReader map, string key, ToeGauges gauges)
    {
        if (map.Need(key) is { Value: MapNode })
        {
            return gauges.Toe(map.Map(key, Keys.Each)!, "each", wheels: 1, needed: true) is { } each ? CarToe.OfEach(each, each) : null;
        }

        return gauges.Toe(map, key, wheels: 2, needed: false) is { } total ? CarToe.OfTotal(total) : null;
    }
}
