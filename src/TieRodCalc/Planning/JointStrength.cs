using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>
/// What a joint carries: pulled once and steadily. Not in it: yielding, shock, fatigue, buckling, the ball joint, the sleeve's own
/// section.
/// </summary>
public sealed record JointStrength
{
    /// <summary>
    /// The load that breaks the end in its thread, its bending counted where the line of the ball centers passes beside the thread's
    /// axis; null where its strength is not known.
    /// </summary>
    public required Force? Breaks { get; init; }

    /// <summary>
    /// The loads at which the joint gives way, at its least engagement over the wanted adjustment, with <see cref="Breaks"/> for the
    /// tensile one; null where a strength is not known.
    /// </summary>
    public required PairLoads? Loads { get; init; }

    /// <summary>The joint under the load that the job gives, or null where it gives none.</summary>
    public required JointLoad? Load { get; init; }
}

/// <summary>A joint under a steering load.</summary>
/// <param name="Load">The load, along the line of the ball centers.</param>
/// <param name="Arm">How far that line passes from the thread's axis.</param>
/// <param name="Axial">Stress of the pull: <c>F / At</c>.</param>
/// <param name="Bending">Stress of the bending: <c>32 F o / (pi ds^3)</c>, <c>ds = sqrt(4 At / pi)</c>.</param>
/// <param name="BreakingFactor">Load that breaks the end over the load; null where the end's strength is not known.</param>
/// <param name="MaleStripFactor">Load that strips the end's thread over the load; null where a strength is not known.</param>
/// <param name="FemaleStripFactor">Load that strips the sleeve's thread over the load; null where a strength is not known.</param>
public sealed record JointLoad(
    Force Load, Length Arm, Pressure Axial, Pressure Bending, double? BreakingFactor, double? MaleStripFactor, double? FemaleStripFactor)
{
    /// <summary>The least factor that is known, or null.</summary>
    public double? LeastFactor => ((double?[])[BreakingFactor, MaleStripFactor, FemaleStripFactor]).Min();
}
