using TieRodCalc.Parts;
using TieRodCalc.Planning;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>built</c> of a rod.</summary>
internal static class BuiltRecord
{
    /// <summary>Center to center as it was measured, and thread showing and cut; null where they are not said.</summary>
    public static (Measured? Length, BuiltReadings? Readings) Read(MapReader rod)
    {
        if (rod.Map("built", Keys.Built) is not { } built)
        {
            return (null, null);
        }

        (Measured? innerShowing, Measured? outerShowing) = Ends(built, "showing");
        (Measured? innerCut, Measured? outerCut) = Ends(built, "cut");
        return (
            built.Dimension("center_to_center", Least.AboveZero), new BuiltReadings(innerShowing, outerShowing, innerCut, outerCut));
    }

    private static (Measured? Inner, Measured? Outer) Ends(MapReader built, string key) => built.Map(key, Keys.Ends) is { } ends
        ? (ends.Dimension("inner", Least.Zero), ends.Dimension("outer", Least.Zero))
        : (null, null);
}
