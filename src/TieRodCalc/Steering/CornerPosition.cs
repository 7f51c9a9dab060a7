using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>A corner somewhere in its travel.</summary>
public sealed record CornerPosition
{
    /// <summary>How far the wheel center is above where it is at ride height, in bump positive.</summary>
    public required Length Travel { get; init; }

    /// <summary>Toe, toe-in positive.</summary>
    public required Angle Toe { get; init; }

    /// <summary>Camber, positive where the wheel leans outward at the top.</summary>
    public required Angle Camber { get; init; }

    /// <summary>Ball joint of the lower arm.</summary>
    public required Point LowerBall { get; init; }

    /// <summary>Ball joint of the upper arm.</summary>
    public required Point UpperBall { get; init; }

    /// <summary>Center of the outer joint of the rod.</summary>
    public required Point Outer { get; init; }

    /// <summary>Center of the inner joint of the rod.</summary>
    public required Point Inner { get; init; }

    /// <summary>Wheel center.</summary>
    public required Point Wheel { get; init; }
}
