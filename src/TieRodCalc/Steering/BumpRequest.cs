using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>The bump sheets of one wheel, and what is known of its rod.</summary>
public sealed record BumpRequest
{
    /// <summary>The sheets, oldest first; at least one.</summary>
    public required IReadOnlyList<BumpSheet> Sheets { get; init; }

    /// <summary>The limits of the grades.</summary>
    public BumpLimits Limits { get; init; } = BumpLimits.Usual;

    /// <summary>
    /// The wheel with its rod as it is now, after what was changed since the last sheet; null where it is not known. Without it there are
    /// steps and a grade, and no advice.
    /// </summary>
    public SteeringGeometry? Wheel { get; init; }

    /// <summary>What changes are rounded to, above zero: shims by 1/32 in or 0.5 mm.</summary>
    public required Length Shim { get; init; }
}
