using TieRodCalc.Threads;

namespace TieRodCalc.Parts;

/// <summary>What lies beyond the thread of a hole.</summary>
public enum Bore
{
    /// <summary>Nothing: the tip may not pass the full thread.</summary>
    Closed,

    /// <summary>A bore clear of the male's major diameter; it ends where the other end's thread begins.</summary>
    Open,
}

/// <summary>One threaded hole: an end of a sleeve, or the socket of an outer end. Depths are measured from the face.</summary>
public sealed record TappedHole
{
    /// <summary>The internal thread.</summary>
    public required ThreadDesignation Thread { get; init; }

    /// <summary>Depth of full thread from the face.</summary>
    public required Measured Depth { get; init; }

    /// <summary>What lies beyond the thread.</summary>
    public required Bore Bore { get; init; }

    /// <summary>Countersink of the mouth; null: half a pitch.</summary>
    public Measured? Countersink { get; init; }

    /// <summary>Far edge of the witness hole, or null where there is none.</summary>
    public Measured? Witness { get; init; }

    /// <summary>Inner edge of the clamp, or null where no clamp locks the thread.</summary>
    public Measured? Clamp { get; init; }

    /// <summary>Half a pitch where nothing was said (common practice, no source).</summary>
    internal double CountersinkMm => Countersink?.Mm ?? Thread.Size.PitchMm / 2;
}
