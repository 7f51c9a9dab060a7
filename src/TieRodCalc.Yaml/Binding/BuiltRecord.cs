using TieRodCalc.Parts;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>built</c> of a rod; thread showing and cut are checked, and not used yet.</summary>
internal static class BuiltRecord
{
    /// <summary>Center to center as it was measured, or null.</summary>
    public static Measured? Read(MapReader rod)
    {
        if (rod.Map("built", Keys.Built) is not { } built)
        {
            return null;
        }

        Ends(built, "showing");
        Ends(built, "cut");
        return built.Dimension("center_to_center", Least.AboveZero);
    }

    private static void Ends(MapReader built, string key)
    {
        if (built.Map(key, Keys.Ends) is { } ends)
        {
            ends.Findings.NotUsedYet(key, built.Find(key)!.Value.Key.Span);
            ends.Dimension("inner", Least.Zero);
            ends.Dimension("outer", Least.Zero);
        }
    }
}
