using TieRodCalc.Parts;
using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>What was measured on a made-up rod, or written down while it was made; null where it was not.</summary>
public sealed record BuiltReadings
{
    /// <summary>Ball center to ball center.</summary>
    public Measured? CenterToCenter { get; init; }

    /// <summary>At the inner end.</summary>
    public EndReadings Inner { get; init; }

    /// <summary>At the outer end; of no use where there is one joint only.</summary>
    public EndReadings Outer { get; init; }

    internal EndReadings At(RodSide side) => side == RodSide.Inner ? Inner : Outer;
}

/// <summary>What was measured at one end; null where it was not.</summary>
/// <param name="Showing">Thread outside the face.</param>
/// <param name="Cut">What was cut off its tip.</param>
/// <param name="Depth">
/// How far the tip is past the face: read through a witness hole or an open bore, or before the rod was put together.
/// </param>
public readonly record struct EndReadings(Measured? Showing, Measured? Cut, Measured? Depth);
