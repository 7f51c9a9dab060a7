using TieRodCalc.Steering;

namespace TieRodCalc.Yaml;

/// <summary>A bump sheet of a job.</summary>
/// <param name="Side">The wheel that was measured.</param>
/// <param name="Sheet">
/// The gauge, its readings and what was changed after them. Ride height is not among the readings, also where the file lists it.
/// </param>
public sealed record JobBumpSheet(CarSide Side, BumpSheet Sheet);
