using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Binding;
using UnitsNet;

namespace TieRodCalc.Yaml;

/// <summary>A job file, its parts resolved.</summary>
public sealed record Job
{
    /// <summary>What the job is called, or null.</summary>
    public string? Name { get; init; }

    /// <summary>Unit of the results.</summary>
    public LengthDisplay Units { get; init; }

    /// <summary>The parts of all its part files and its own.</summary>
    public required PartCatalog Catalog { get; init; }

    /// <summary>What it says of toe, or null where it does not say enough.</summary>
    public JobToe? Toe { get; init; }

    /// <summary>What is missing of toe, with the place; null where nothing is.</summary>
    public Problem? NoToe { get; init; }

    /// <summary>The rods, in the order of the file.</summary>
    public required IReadOnlyList<JobRod> Rods { get; init; }

    /// <summary>Its bump sheets, in the order of the file, which is oldest first; empty where it has none.</summary>
    public IReadOnlyList<JobBumpSheet> Bump { get; init; } = [];

    /// <summary>Where the grades of bump steer begin.</summary>
    public BumpLimits BumpLimits { get; init; } = BumpLimits.Usual;

    /// <summary>The corners whose points it gives, the left one first.</summary>
    public IReadOnlyList<JobCorner> Corners { get; init; } = [];

    /// <summary>Whether one rod joins both wheels; false where each wheel has a rod, which is so where nothing is said.</summary>
    public bool OneRod => Steering.OneRodTurns is not null;

    /// <summary>Width of the toe plates, or null.</summary>
    public Length? Plates => Steering.Gauges.Plates;

    internal SteeringSetup Steering { get; init; } = SteeringSetup.Unsaid;

    /// <summary>The wheel of a side: toe zero, and the camber that the job gives.</summary>
    /// <param name="side">The side of the car.</param>
    /// <param name="rod">
    /// Length of its rod, above zero. Where the job gives the steering by points, the wheel stands as they were measured, whatever the rod.
    /// </param>
    /// <returns>The wheel, or null where the job does not give the steering of that side.</returns>
    /// <exception cref="ArgumentException">The length is not above zero.</exception>
    public SteeringGeometry? WheelOf(CarSide side, Length rod)
    {
        if (!(rod.Millimeters > 0))
        {
            throw new ArgumentException("The length must be above zero.", nameof(rod));
        }

        return Steering.Of(side) is { } wheel ? wheel.With(side, rod).Aligned(Angle.Zero, wheel.Camber) : null;
    }
}

/// <summary>One rod of a job.</summary>
public sealed record JobRod
{
    /// <summary>Its name, unique in the job.</summary>
    public required string Name { get; init; }

    /// <summary>The side of the car, or null.</summary>
    public CarSide? Side { get; init; }

    /// <summary>The rod, or null where a part of it is left open.</summary>
    public Rod? Rod { get; init; }

    /// <summary>What is wanted of it.</summary>
    public RodRequest? Request { get; init; }

    /// <summary>What its parts are chosen from; the named part alone where it names one.</summary>
    public RodCandidates? Candidates { get; init; }

    /// <summary>The part that is left open, with the place; null where all are named.</summary>
    public Problem? NotPlanned { get; init; }

    /// <summary>What was measured on the made-up rod, or null.</summary>
    public BuiltReadings? Built { get; init; }

    /// <summary>
    /// The rod on the car with the wheel that it turns; null where the job does not give that wheel's steering.
    /// </summary>
    public ToeRod? OnCar { get; init; }

    /// <summary>Why <see cref="OnCar"/> is null, with the place; null where it is not.</summary>
    public Problem? NotOnCar { get; init; }
}
