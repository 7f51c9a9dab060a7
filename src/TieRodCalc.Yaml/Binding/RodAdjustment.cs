using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>How far a rod shall adjust; null where it could not be read.</summary>
internal readonly record struct RodAdjustment(Length? Shorter, Length? Longer)
{
    /// <summary>Reads <c>adjust</c> of a rod: one length each way, or one for each.</summary>
    public static RodAdjustment Read(MapReader rod)
    {
        if (rod.Find("adjust")?.Value is not Tree.MapNode)
        {
            Length? each = rod.Exact("adjust", Least.Zero, needed: true);
            return new RodAdjustment(each, each);
        }

        MapReader map = rod.Map("adjust", Keys.Adjust)!;
        return new RodAdjustment(
            map.Exact("shorter", Least.Zero, needed: true), map.Exact("longer", Least.Zero, needed: true));
    }
}
