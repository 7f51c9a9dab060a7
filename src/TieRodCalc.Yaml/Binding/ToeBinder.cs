using TieRodCalc.Steering;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>toe</c> of the steering.</summary>
internal static class ToeBinder
{
    private const string Example = "toe: {now: 1/8 in out, want: 1/16 in in}";

    /// <summary>What a job says of toe, or what is missing of it; neither where it could not be read.</summary>
    public static (JobToe? Toe, Problem? Missing) Bind(MapReader steering, TextSpan key, SteeringSetup setup)
    {
        ToeGauges gauges = setup.Gauges;
        if (steering.Find("toe") is not { } entry)
        {
            return (null, Missing(steering, key, $"the job gives no toe: write {Example} in 'steering'"));
        }

        if (steering.Map("toe", Keys.Toe) is not { } toe)
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

        if (now?.ToWheels(gauges.Gauge?.Width) is not { } nowOfWheels || want?.ToWheels(gauges.Gauge?.Width) is not { } wantOfWheels)
        {
            return default;
        }

        JobToe read = new()
        {
            Now = now,
            Want = want,
            NowOfWheels = nowOfWheels,
            WantOfWheels = wantOfWheels,
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
