using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What is wanted of a rod.</summary>
public sealed record RodRequest
{
    /// <summary>Wanted length, ball center to ball center.</summary>
    public required Length Target { get; init; }

    /// <summary>How much shorter the rod must adjust, zero or more.</summary>
    public required Length Shorter { get; init; }

    /// <summary>How much longer the rod must adjust, zero or more.</summary>
    public required Length Longer { get; init; }

    /// <summary>The rules to keep to.</summary>
    public required PlanRules Rules { get; init; }

    /// <summary>The steering that the rod works on, or null: then toe is not computed.</summary>
    public SteeringGeometry? Steering { get; init; }

    /// <summary>True where one rod joins both wheels, so that toe is that of both together; false where each side has a rod.</summary>
    public bool ToeOfBothWheels { get; init; }

    /// <summary>Width of the toe plates, or null: then toe at the plates is not computed.</summary>
    public Length? Plates { get; init; }
}
