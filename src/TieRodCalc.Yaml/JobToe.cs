using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Yaml;

/// <summary>What a job says of the toe of its car.</summary>
public sealed record JobToe
{
    /// <summary>Toe as it was measured, with the rods as they are.</summary>
    public required CarToe Now { get; init; }

    /// <summary>Toe as it is wanted.</summary>
    public required CarToe Want { get; init; }

    /// <summary>The same, of each wheel; of a total each takes half.</summary>
    public required WheelToes NowOfWheels { get; init; }

    /// <summary>The same as wanted.</summary>
    public required WheelToes WantOfWheels { get; init; }

    /// <summary>What toe as a length is measured across, or null where the job gives neither plates nor tire.</summary>
    public ToeGauge? Gauge { get; init; }

    /// <summary>Width of the toe plates, or null.</summary>
    public Length? Plates { get; init; }

    /// <summary>Diameter of the tire, or null.</summary>
    public Length? Tire { get; init; }

    /// <summary>
    /// Where one rod joins both wheels, the wheel that it turns while the steering holds the other; null where each wheel has a rod.
    /// </summary>
    public CarSide? OneRodTurns { get; init; }
}
