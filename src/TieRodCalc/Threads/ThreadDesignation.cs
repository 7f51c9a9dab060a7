namespace TieRodCalc.Threads;

/// <summary>A thread as a part or a drawing names it: size and hand, and series and tolerance class where they are said.</summary>
/// <param name="Size">Form, nominal diameter and pitch.</param>
/// <param name="Hand">Hand; right-hand where a designation does not say.</param>
public sealed record ThreadDesignation(ThreadSize Size, Hand Hand)
{
    /// <summary>The Unified series where it is said, null otherwise and for metric threads.</summary>
    public UnifiedSeries? Series { get; init; }

    /// <summary>The tolerance class as the standard writes it (<c>2A</c>, <c>6g</c>), null where it is not said.</summary>
    public string? ToleranceClass { get; init; }

    /// <summary>True where only the diameter was said (<c>M18</c>) and the coarse pitch of ISO 261 was taken.</summary>
    public bool CoarsePitchAssumed { get; init; }
}
