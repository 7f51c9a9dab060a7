using TieRodCalc.Steering;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>toe</c> of the steering.</summary>
internal static class ToeBinder
{
    private const string Example = "toe: {now: 1/8 in out, want: 1/16 in in}";

    /// <summary>What a job says of toe, or what is missing of it; neither where it could not be read.</summary>
    public static (JobToe? Toe, Problem? Missing) Bind(MapReader steering, MapReader? toe, TextSpan key, SteeringSetup setup)
    {
        ToeGauges gauges = setup.Gauges;
        if (steering.Find("toe") is not { } entry)
        {
            return (null, Missing(steering, key, $"the job gives no toe: write {Example} in 'steering'"));
        }

        if (toe is null)
        {
            return default;
        }

        if (toe.Has("now") && toe.Find("each") is { } each)
        {
            toe.Findings.Problem(each.Key.Span, "the measured toe is given either by 'now' or by 'each', not by both");
        }

        CarToe? now = TotalOrEach(toe, "now", gauges) ?? Each(toe, gauges, needed: false);
        CarToe? want = TotalOrEach(toe, "want", gauges);
        if ((toe.Has("now") || toe.Has("each") ? toe.Has("want") ? null : "wanted" : "measured") is { } missing)
        {
            return (null, Missing(steering, entry.Key.Span, $"the job gives no {missing} toe: write {Example} in 'steering'"));
        }

        if (now is null || want is null)
        {
            return default;
        }

        if (!now.Readings.Concat(want.Readings).All(gauges.Measures))
        {
            return (null, Missing(steering, entry.Key.Span, gauges.Missing));
        }

        Length? width = gauges.Gauge?.Width;
        JobToe read = new()
        {
            Now = now,
            Want = want,
            NowOfWheels = now.ToWheels(width)!.Value,
            WantOfWheels = want.ToWheels(width)!.Value,
            Gauge = gauges.Gauge,
            Plates = gauges.Plates,
            Tire = gauges.Tire,
            OneRodTurns = setup.OneRodTurns,
        };
        return (read, null);
    }

    private static Problem Missing(MapReader map, TextSpan span, string message) => map.File.Source.At(span, message);

    private static CarToe? TotalOrEach(MapReader toe, string key, ToeGauges gauges)
    {
        if (toe.Find(key)?.Value is MapNode)
        {
            return Each(toe.Map(key, Keys.Each)!, gauges, needed: true);
        }

        return gauges.Toe(toe, key, wheels: 2, needed: false) is { } total ? CarToe.OfTotal(total) : null;
    }

    private static CarToe? Each(MapReader map, ToeGauges gauges, bool needed)
    {
        if (map.Map("each", Keys.Sides, needed) is not { } sides)
        {
            return null;
        }

        ToeReading? left = gauges.Toe(sides, "left", wheels: 1, needed: true);
        ToeReading? right = gauges.Toe(sides, "right", wheels: 1, needed: true);
        return left is not null && right is not null ? CarToe.OfEach(left, right) : null;
    }
}
