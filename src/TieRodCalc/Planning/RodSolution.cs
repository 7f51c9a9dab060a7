using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>How far the two tips are past the sleeve's faces.</summary>
/// <param name="Inner">Of the inner end.</param>
/// <param name="Outer">Of the outer end, or null where there is one joint only.</param>
public sealed record Insertions(Length Inner, Length? Outer);

/// <summary>How a rod that can be built is made and set.</summary>
public sealed record RodSolution
{
    /// <summary>Reach with the recommended cuts made.</summary>
    public required LengthSpan Reach { get; init; }

    /// <summary>What to cut off the inner end, or null where it must not be cut.</summary>
    public required CutAdvice? InnerCut { get; init; }

    /// <summary>What to cut off the outer end, or null where it must not be cut.</summary>
    public required CutAdvice? OuterCut { get; init; }

    /// <summary>
    /// The smallest slack of any limit over the whole wanted adjustment at the setting; how much may be cut is not counted.
    /// </summary>
    public required Length WorstMargin { get; init; }

    /// <summary>What is left of the plan where every dimension may be off by its tolerance.</summary>
    public required WorstCase WorstCase { get; init; }

    /// <summary>The inner joint.</summary>
    public required JointPlan Inner { get; init; }

    /// <summary>The outer joint, or null where there is one joint only.</summary>
    public required JointPlan? Outer { get; init; }

    /// <summary>Distance between the tips at the setting, or null where there is one joint only.</summary>
    public required Length? TipGap { get; init; }

    /// <summary>Adjustment toward shorter from the setting.</summary>
    public required Travel Shorter { get; init; }

    /// <summary>Adjustment toward longer from the setting.</summary>
    public required Travel Longer { get; init; }

    /// <summary>The turn that lengthens, or null where turning the sleeve does not change the length.</summary>
    public required TurnDirection? Lengthens { get; init; }

    /// <summary>What one turn does, or null where turning the sleeve does not change the length.</summary>
    public required TurnEffect? PerTurn { get; init; }

    /// <summary>What half a turn does, or null as <see cref="PerTurn"/>.</summary>
    public required TurnEffect? PerHalfTurn { get; init; }

    /// <summary>What one flat of a hexagon sleeve does, or null as <see cref="PerTurn"/> and where the sleeve is no hexagon.</summary>
    public required TurnEffect? PerFlat { get; init; }

    /// <summary>How to start the threads.</summary>
    public required StartProcedure Start { get; init; }

    /// <summary>Insertion of the inner and outer end in the middle of what the least cut allows.</summary>
    public required Insertions LeastCutSetting { get; init; }

    /// <summary>
    /// What another start moves the inner insertion by at the same length where both ends' orientations are fixed, or null
    /// where turning the sleeve does not change the length or there is no sleeve.
    /// </summary>
    public required Length? StartStep { get; init; }
}
