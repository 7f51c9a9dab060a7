using UnitsNet;

namespace TieRodCalc.Parts;

/// <summary>The kinds of material that the rule in diameters tells apart.</summary>
public enum MaterialKind
{
    /// <summary>Steel.</summary>
    Steel,

    /// <summary>Aluminum and its alloys.</summary>
    Aluminum,

    /// <summary>Any other; the rule for steel is applied and a warning says so.</summary>
    Other,
}

/// <summary>What a part is made of.</summary>
/// <param name="Id">Its id in the catalog.</param>
public sealed record Material(string Id)
{
    /// <summary>Name for people, or null.</summary>
    public string? Name { get; init; }

    /// <summary>Kind, or null where it was not said.</summary>
    public MaterialKind? Kind { get; init; }

    /// <summary>Tensile strength, or null where it is not known.</summary>
    public Pressure? TensileStrength { get; init; }

    /// <summary>Where the strength comes from, or null.</summary>
    public string? Source { get; init; }
}
