using UnitsNet;

namespace TieRodCalc.Parts;

/// <summary>The outside of a sleeve.</summary>
public enum OutsideShape
{
    /// <summary>Round.</summary>
    Round,

    /// <summary>Hexagon; turns can be counted by its flats.</summary>
    Hexagon,
}

/// <summary>The outside of a sleeve.</summary>
/// <param name="Shape">Round or hexagon.</param>
/// <param name="Across">Diameter, or width across flats.</param>
public sealed record Outside(OutsideShape Shape, Measured Across)
{
    /// <summary>A hexagon has six flats: one flat is a sixth of a turn.</summary>
    internal const int FlatsOfHexagon = 6;

    /// <summary>A round counts as a hexagon of 0.95 of its diameter where the wall dilates (SAE paper 770420; from memory).</summary>
    private const double RoundAsHexagon = 0.95;

    /// <summary>The width that counts where a thread dilates its wall: across the flats, or 0.95 of the diameter of a round.</summary>
    public Length WallWidth => Shape == OutsideShape.Round ? Length.FromMillimeters(RoundAsHexagon * Across.Mm) : Across.Nominal;
}

/// <summary>An adjuster sleeve: an internal thread at each end.</summary>
public sealed record Sleeve
{
    /// <summary>Id, name, material, price and mass.</summary>
    public required PartInfo Info { get; init; }

    /// <summary>Length from face to face.</summary>
    public required Measured Length { get; init; }

    /// <summary>The end that takes the inner end.</summary>
    public required TappedHole Inner { get; init; }

    /// <summary>The end that takes the outer end.</summary>
    public required TappedHole Outer { get; init; }

    /// <summary>The outside, or null where it was not said.</summary>
    public Outside? Outside { get; init; }
}
