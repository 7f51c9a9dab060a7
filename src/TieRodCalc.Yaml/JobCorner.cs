using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Yaml;

/// <summary>What a job says of the suspension of one wheel, at ride height.</summary>
public sealed record JobCorner
{
    /// <summary>The side of the car.</summary>
    public required CarSide Side { get; init; }

    /// <summary>
    /// The corner, its rod's joints as <c>steering</c> has them: toe zero, and the camber of <c>steering</c>. Null where the job does not
    /// give those joints as points.
    /// </summary>
    public CornerGeometry? Geometry { get; init; }

    /// <summary>Why <see cref="Geometry"/> is null, with the place; null where it is not.</summary>
    public Problem? Missing { get; init; }

    /// <summary>How far the wheel goes up from ride height, above zero; null where it was not said.</summary>
    public Length? BumpTravel { get; init; }

    /// <summary>How far the wheel goes down from ride height, above zero; null where it was not said.</summary>
    public Length? DroopTravel { get; init; }

    /// <summary>How far the steering moves the inner joint each way, above zero; null where it was not said.</summary>
    public Length? Steer { get; init; }

    /// <summary>How far the rod's joints may be moved; null where it was not said.</summary>
    public MoveLimits? Moves { get; init; }
}
