using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>The length that a rod shall have.</summary>
/// <param name="Target">The length; null where it could not be read or is not worked out yet.</param>
/// <param name="FromToe">True where it shall be worked out from the toe that an existing rod gives.</param>
internal readonly record struct RodLength(Length? Target, bool FromToe)
{
    /// <summary>Reads <c>length</c> of a rod: a length, two points, or an existing rod and its toe.</summary>
    public static RodLength Read(MapReader rod)
    {
        if (rod.Find("length")?.Value is not MapNode)
        {
            return new RodLength(rod.Exact("length", Least.AboveZero, needed: true), false);
        }

        MapReader map = rod.Map("length", Keys.Length)!;
        bool points = map.Has("from") || map.Has("to");
        bool toe = map.Has("rod") || map.Has("toe") || map.Has("want");
        if (points && toe)
        {
            map.Findings.Problem(
                map.Span, "'length' is given either by the points 'from' and 'to' or by 'rod', 'toe' and 'want', not by both");
        }

        if (toe)
        {
            map.Dimension("rod", Least.AboveZero, needed: !points);
            Toe(map, "toe", needed: !points);
            Toe(map, "want", needed: !points);
        }

        return points || !toe ? new RodLength(Distance(map, needed: !toe), false) : new RodLength(null, true);
    }

    /// <summary>Reads a toe as a single value.</summary>
    public static void Toe(MapReader map, string key, bool needed = false)
    {
        if (map.Text(key, needed) is { } text)
        {
            Values.TryParse(map.File, text, ValueText.ParseToe, out ToeReading _);
        }
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
