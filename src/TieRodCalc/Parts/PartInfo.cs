using UnitsNet;

namespace TieRodCalc.Parts;

/// <summary>What any part carries beside its dimensions.</summary>
/// <param name="Id">Its id, unique among parts of its kind.</param>
public sealed record PartInfo(string Id)
{
    /// <summary>Name for people, or null.</summary>
    public string? Name { get; init; }

    /// <summary>Material, or null where it was not said.</summary>
    public Material? Material { get; init; }

    /// <summary>Price, or null.</summary>
    public Price? Price { get; init; }

    /// <summary>Mass, or null.</summary>
    public Mass? Mass { get; init; }
}
