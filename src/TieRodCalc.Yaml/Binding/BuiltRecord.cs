namespace TieRodCalc.Yaml.Binding;

/// <summary>Checks <c>built</c> of a rod, which this version does not use yet.</summary>
internal static class BuiltRecord
{
    public static void Check(MapReader rod)
    {
        if (rod.Find("built") is not { } entry)
        {
            return;
        }

        rod.Findings.NotUsedYet("built", entry.Key.Span);
        if (rod.Map("built", Keys.Built) is { } built)
        {
            built.Dimension("center_to_center", Least.AboveZero);
            Ends(built, "showing");
            Ends(built, "cut");
        }
    }

    private static void Ends(MapReader built, string key)
    {
        if (built.Map(key, Keys.Ends) is { } ends)
        {
            ends.Dimension("inner", Least.Zero);
            ends.Dimension("outer", Least.Zero);
        }
    }
}
