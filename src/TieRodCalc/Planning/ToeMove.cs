using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What came of a move that shall change the toe of a wheel.</summary>
public enum MoveOutcome
{
    /// <summary>It can be made, and all limits hold after it.</summary>
    Holds,

    /// <summary>A limit would be passed.</summary>
    Refused,

    /// <summary>It can be counted, but the setting of the rod is not known: no limit was checked.</summary>
    NotChecked,

    /// <summary>No rod length gives the toe.</summary>
    OutOfReach,

    /// <summary>The steering cannot have the rod's present length: the one or the other was measured wrong.</summary>
    PresentOutOfReach,

    /// <summary>The rod is in line with the steer axis: no finite turn changes the toe.</summary>
    InLine,
}

/// <summary>What is turned.</summary>
public enum TurnedPart
{
    /// <summary>The sleeve, both ends held.</summary>
    Sleeve,

    /// <summary>The inner end, off its pin.</summary>
    InnerEnd,

    /// <summary>The outer end, off its pin.</summary>
    OuterEnd,
}

/// <summary>What to do at one rod.</summary>
public sealed record ToeMove
{
    /// <summary>The wheel.</summary>
    public required CarSide Side { get; init; }

    /// <summary>What came of it.</summary>
    public required MoveOutcome Outcome { get; init; }

    /// <summary>Whether it may be made: it keeps all limits, and the steering that it is counted by is not in doubt.</summary>
    public bool Holds => Outcome == MoveOutcome.Holds && !SteeringUnlikely;

    /// <summary>The plan that the rod's cuts and setting are from, or null for a rod with one threaded joint.</summary>
    public required RodPlan? Plan { get; init; }

    /// <summary>Toe of the wheel now.</summary>
    public required Angle Now { get; init; }

    /// <summary>Toe of the wheel as wanted; null where no wheel can have what the other one leaves to it.</summary>
    public required Angle? Want { get; init; }

    /// <summary>The rod's length now.</summary>
    public required Length Present { get; init; }

    /// <summary>The shortest and the longest rod that the steering can have at all.</summary>
    public required LengthSpan SteeringReach { get; init; }

    /// <summary>The length that gives the wanted toe exactly, or null where none does.</summary>
    public Length? Wanted { get; init; }

    /// <summary>What is turned: the sleeve where it adjusts the rod, otherwise an end.</summary>
    public required TurnedPart Part { get; init; }

    /// <summary>Which way the part is turned to make the rod longer, seen as <see cref="Direction"/> is.</summary>
    public required TurnDirection Lengthens { get; init; }

    /// <summary>What a counted turn is rounded to: an eighth for the sleeve, half or whole turns for an end.</summary>
    public required double Step { get; init; }

    /// <summary>What one step does to the toe from the present length, lengthening; null where there is no answer.</summary>
    public Angle? ToePerStep { get; init; }

    /// <summary>Turns that give the wanted toe exactly, above zero where they lengthen; null as <see cref="Wanted"/>.</summary>
    public double? ExactTurns { get; init; }

    /// <summary>The same to the nearest step.</summary>
    public double? Turns { get; init; }

    /// <summary>The turns counted in flats of the sleeve's hexagon, zero or more; null where it has none or is not turned.</summary>
    public double? Flats { get; init; }

    /// <summary><see cref="ExactTurns"/> counted in flats, zero or more; null as <see cref="Flats"/>.</summary>
    public double? ExactFlats { get; init; }

    /// <summary>
    /// Which way: of the sleeve seen from the inner end outward, of an end seen from its own ball toward the thread; null where
    /// nothing is to be turned.
    /// </summary>
    public TurnDirection? Direction { get; init; }

    /// <summary>Toe of the wheel after the rounded turns; null where the move cannot be made.</summary>
    public Angle? After { get; init; }

    /// <summary>Wanted toe less toe after; null as <see cref="After"/>.</summary>
    public Angle? LeftOver => Want - After;

    /// <summary>True where thread showing or cut were measured otherwise than the plan has them: its setting is not this rod's.</summary>
    public bool BuiltDiffers { get; init; }

    /// <summary>True where the steering does not look like that of a wheel; see <see cref="SteeringGeometry.IsLikely"/>.</summary>
    public bool SteeringUnlikely { get; init; }

    /// <summary>True where the rod is past a limit as it is; a move may bring it back inside.</summary>
    public bool PastALimit { get; init; }

    /// <summary>How far the rod can be made shorter from where it is, or null where its setting is not known.</summary>
    public Travel? Shorter { get; init; }

    /// <summary>How far it can be made longer.</summary>
    public Travel? Longer { get; init; }

    /// <summary>How far the rod can be made shorter after the move, or null where it is not known or the move is refused.</summary>
    public Travel? ShorterAfter { get; init; }

    /// <summary>How far it can be made longer then.</summary>
    public Travel? LongerAfter { get; init; }

    /// <summary>The threaded joints after the move, inner before outer; none where its setting is not known or it is refused.</summary>
    public IReadOnlyList<MovedJoint> Joints { get; init; } = [];

    /// <summary>What is in the way, or null where nothing is known to be.</summary>
    public MoveRefusal? Refusal { get; init; }

    internal MoveCurve? Curve { get; init; }

    /// <summary>Toe of the wheel with so many turns made.</summary>
    /// <param name="turns">Turns from the present length, above zero where they lengthen.</param>
    /// <returns>The toe, or null where there is none.</returns>
    public Angle? ToeAt(double turns) => Curve?.ToeAt(turns);
}

/// <summary>A threaded joint after a move.</summary>
/// <param name="End">Which end.</param>
/// <param name="ShowingNow">Thread outside the face before the move: what a caliper reads now.</param>
/// <param name="Showing">Thread outside the face after it.</param>
/// <param name="Engaged">Full-form thread on full-form thread.</param>
/// <param name="Required">The engagement that is required.</param>
/// <param name="NutRoom">Thread left outside the nut.</param>
/// <param name="NutLoosens">Which way the jam nut loosens, seen from the end's ball toward the thread; null where there is none.</param>
/// <param name="Pitch">Pitch of the thread.</param>
public sealed record MovedJoint(
    RodSide End,
    Length ShowingNow,
    Length Showing,
    Length Engaged,
    Length Required,
    Length NutRoom,
    TurnDirection? NutLoosens,
    Length Pitch);

/// <summary>Why a move is refused.</summary>
/// <param name="Limit">The limit that would be passed.</param>
/// <param name="End">The end that it belongs to, or null.</param>
/// <param name="ReachableTurns">The turns that can be made, to the step below, above zero where they lengthen.</param>
/// <param name="ReachableFlats">The same in flats of the sleeve's hexagon, zero or more; null as <see cref="ToeMove.Flats"/>.</param>
/// <param name="ReachableToe">Toe of the wheel with them made.</param>
public sealed record MoveRefusal(
    Limit Limit, RodSide? End, double ReachableTurns, double? ReachableFlats, Angle? ReachableToe);
