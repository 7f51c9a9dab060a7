using TieRodCalc.Threads;

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

    /// <summary>
    /// A round wall dilates like a hexagon of this much of its diameter (E. M. Alexander, SAE paper 770420, 1977; from memory).
    /// </summary>
    private const double RoundCountsFor = 0.95;

    /// <summary>
    /// The width that the strength of the threads inside counts with: across the flats of a hexagon, 0.95 of the diameter of a round
    /// (E. M. Alexander, SAE paper 770420, 1977; from memory).
    /// </summary>
    public UnitsNet.Length WidthInStrength =>
        UnitsNet.Length.FromMillimeters(Shape == OutsideShape.Round ? RoundCountsFor * Across.Mm : Across.Mm);

    /// <summary>What is known of the wall around a thread inside.</summary>
    /// <param name="slit">Whether it is slit there, as where a clamp closes it.</param>
    public FemaleWall Wall(bool slit = false) => new(WidthInStrength, slit);

    /// <summary>Whether it is larger than the nominal diameter of a thread inside.</summary>
    /// <exception cref="ArgumentNullException">The size is null.</exception>
    public bool Encloses(ThreadSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        return Across.Mm > size.DiameterMm + Millimeters.Negligible;
    }
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
