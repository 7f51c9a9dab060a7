using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>One joint at the setting, with the recommended cuts made.</summary>
public sealed record JointPlan
{
    /// <summary>How far the tip is past the sleeve's face.</summary>
    public required Length Insertion { get; init; }

    /// <summary>The insertions that are allowed at the target, the wanted adjustment kept.</summary>
    public required LengthSpan InsertionSpan { get; init; }

    /// <summary>Thread outside the sleeve's face, what a caliper reads.</summary>
    public required Length Showing { get; init; }

    /// <summary>Full-form thread on full-form thread.</summary>
    public required Length Engaged { get; init; }

    /// <summary>The least engagement over the wanted adjustment.</summary>
    public required Length EngagedLeast { get; init; }

    /// <summary>The engagement that is required.</summary>
    public required RequiredEngagement Required { get; init; }

    /// <summary>What the joint carries.</summary>
    public required JointStrength Strength { get; init; }

    /// <summary>Thread left outside the nut.</summary>
    public required Length NutRoom { get; init; }

    /// <summary>The least thread left outside the nut over the wanted adjustment.</summary>
    public required Length NutRoomLeast { get; init; }

    /// <summary>Which way the jam nut loosens, seen from the end's ball toward the sleeve; null where there is no nut.</summary>
    public required TurnDirection? NutLoosens { get; init; }

    /// <summary>
    /// The engagement that is proved where full thread is seen to cover the witness hole: from the countersink to its far edge,
    /// but not beyond the sleeve's thread. Null where there is no witness hole.
    /// </summary>
    public required Length? WitnessProves { get; init; }
}
