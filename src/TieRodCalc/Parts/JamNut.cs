using TieRodCalc.Threads;

namespace TieRodCalc.Parts;

/// <summary>A jam nut.</summary>
public sealed record JamNut
{
    /// <summary>Id, name, material, price and mass.</summary>
    public required PartInfo Info { get; init; }

    /// <summary>The internal thread.</summary>
    public required ThreadDesignation Thread { get; init; }

    /// <summary>Thickness, washers and tab locks counted in.</summary>
    public required Measured Thickness { get; init; }
}
