namespace TieRodCalc.Yaml.Binding;

/// <summary>Checks <c>toe</c> of the steering, which this version does not use yet.</summary>
internal static class ToeReadings
{
    public static void Check(MapReader steering)
    {
        if (steering.Find("toe") is not { } entry)
        {
            return;
        }

        steering.Findings.NotUsedYet("toe", entry.Key.Span);
        if (steering.Map("toe", Keys.Toe) is not { } toe)
        {
            return;
        }

        if (toe.Has("now") && toe.Find("each") is { } each)
        {
            toe.Findings.Problem(each.Key.Span, "the measured toe is given either by 'now' or by 'each', not by both");
        }

        TotalOrEach(toe, "now");
        TotalOrEach(toe, "want");
        Each(toe);
    }

    private static void TotalOrEach(MapReader toe, string key)
    {
        if (toe.Find(key)?.Value is Tree.MapNode)
        {
            Each(toe.Map(key, Keys.Each)!, needed: true);
        }
        else
        {
            RodLength.Toe(toe, key);
        }
    }

    private static void Each(MapReader map, bool needed = false)
    {
        if (map.Map("each", Keys.Sides, needed) is { } sides)
        {
            RodLength.Toe(sides, "left");
            RodLength.Toe(sides, "right");
        }
    }
}
