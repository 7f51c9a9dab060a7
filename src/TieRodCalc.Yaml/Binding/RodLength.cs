using TieRodCalc.Parts;
using TieRodCalc.Steering;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>The length that a rod shall have.</summary>
/// <param name="Target">The length; null where it could not be read or follows from an existing rod.</param>
/// <param name="FromToe">The existing rod that it follows from, or null.</param>
internal readonly record struct RodLength(Length? Target, ExistingRod? FromToe)
{
    /// <summary>Reads <c>length</c> of a rod: a length, two points, or an existing rod and its toe.</summary>
    public static RodLength Read(MapReader rod, ToeGauges gauges)
    {
        if (rod.Find("length")?.Value is not MapNode)
        {
            return new RodLength(rod.Exact("length", Least.AboveZero, needed: true), null);
        }

        MapReader map = rod.Map("length", Keys.Length)!;
        bool points = map.Has("from") || map.Has("to");
        bool toe = map.Has("rod") || map.Has("toe") || map.Has("want");
        if (points && toe)
        {
            map.Findings.Problem(
                map.Span, "'length' is given either by the points 'from' and 'to' or by 'rod', 'toe' and 'want', not by both");
        }

        return toe && !points
            ? new RodLength(null, ExistingRod.Read(map, gauges))
            : new RodLength(Distance(map, needed: !toe), null);
    }

    private static Length? Distance(MapReader map, bool needed)
    {
        Point? from = map.Point("from", needed);
        Point? to = map.Point("to", needed);
        if (from is not { } start || to is not { } end)
        {
            return null;
        }

        Length distance = start.DistanceTo(end);
        if (distance.Millimeters > 0)
        {
            return distance;
        }

        map.Findings.Problem(map.SpanOf("to"), "the points 'from' and 'to' are the same");
        return null;
    }
}
