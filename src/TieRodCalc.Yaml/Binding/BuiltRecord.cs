using TieRodCalc.Parts;
using TieRodCalc.Planning;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>built</c> of a rod.</summary>
internal static class BuiltRecord
{
    /// <summary>What was measured on it; null where nothing is said.</summary>
    public static BuiltReadings? Read(MapReader rod)
    {
        if (rod.Map("built", Keys.Built) is not { } built)
        {
            return null;
        }

        MapReader? showing = built.Map("showing", Keys.Ends);
        MapReader? cut = built.Map("cut", Keys.Ends);
        MapReader? depth = built.Map("depth", Keys.Ends);
        EndReadings End(string end) => new(
            showing?.Dimension(end, Least.Zero), cut?.Dimension(end, Least.Zero), depth?.Dimension(end, Least.Zero));
        return new BuiltReadings
        {
            CenterToCenter = built.Dimension("center_to_center", Least.AboveZero),
            Inner = End("inner"),
            Outer = End("outer"),
        };
    }
}
