using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What a plan warns of, or says it did not check.</summary>
public enum WarningCode
{
    /// <summary>No joint is locked.</summary>
    NotLocked,

    /// <summary>Only one joint is locked; the end named is free to work.</summary>
    OneJointLocked,

    /// <summary>Same hand and same pitch: the sleeve cannot adjust the length. Value: the step between the lengths that exist.</summary>
    SleeveCannotAdjust,

    /// <summary>
    /// One threaded joint: the length is set by turning an end. Value: the step between the lengths that exist where no end may turn
    /// freely about the rod.
    /// </summary>
    SetByTheEnd,

    /// <summary>
    /// The bore of a socket is said to be open; where the ball's housing begins is not known, so the tip is kept in the thread.
    /// </summary>
    SocketTakenAsClosed,

    /// <summary>The free interval of the setting is narrower than the step of the starts: value the interval, other the step.</summary>
    StartMayNotMatch,

    /// <summary>Less than 1/16 in may be taken off by mistake. Value: how much.</summary>
    LittleCutToSpare,

    /// <summary>No mark of the grid lies in the window of the cut. Value: the recommended cut.</summary>
    CutOffTheMarks,

    /// <summary>The jam nut keeps less than one pitch to be backed off by. Value: how much.</summary>
    LittleRoomForTheNut,

    /// <summary>
    /// The job asks for less engagement than the usual rule: 1.5 diameters, 2 where the sleeve is aluminum. Value: what it asks
    /// for, other: the usual rule.
    /// </summary>
    EngagementBelowRule,

    /// <summary>The sleeve is not said to be steel or aluminum; the rule for steel was taken.</summary>
    SteelAssumed,

    /// <summary>Whether the threads strip was not checked; what is missing is said.</summary>
    StrengthNotChecked,

    /// <summary>
    /// Strength asks for more engagement than the rule or the job. Value: what strength asks for, other: the rule or the job's own;
    /// ratio: <c>J</c>, above 1 where the sleeve's thread is the weaker one.
    /// </summary>
    StrengthGoverns,

    /// <summary>The sleeve's outside is not known: its dilation was not counted.</summary>
    OutsideUnknown,

    /// <summary>The sleeve's wall is thinner than the method of dilation covers; strength asks for more than is shown.</summary>
    SleeveTooThin,

    /// <summary>A clamp closes the sleeve: it is slit, which the method of dilation does not cover.</summary>
    SleeveSlit,

    /// <summary>One thread is so much stronger than the other that the bending of the threads is outside the method.</summary>
    BendingBeyondRange,

    /// <summary>The thread is in no standard series.</summary>
    SpecialThread,

    /// <summary>The standard's tables of limits do not reach to the thread; its formulas were used.</summary>
    BeyondTables,

    /// <summary>A joint gives way under the load that the job gives. Ratio: the least factor.</summary>
    GivesWayUnderLoad,

    /// <summary>A factor against the load was not computed, since a strength is missing.</summary>
    LoadNotChecked,

    /// <summary>What the factors against the load leave out.</summary>
    LoadLeavesOut,

    /// <summary>No dimension of the parts carries a tolerance; nominal dimensions were trusted.</summary>
    NominalTrusted,

    /// <summary>With every dimension off by its tolerance the plan does not hold. Value: by how much it misses.</summary>
    HoldsOnlyAtNominal,

    /// <summary>Nothing that is looked for makes the rod buildable.</summary>
    NoRemedy,

    /// <summary>No setting of the uncut parts keeps all limits, so that there is no reach to give.</summary>
    NoUncutReach,

    /// <summary>The tolerance class of a joint's thread, or of its nut, was not said; 2A/2B or 6g/6H was taken.</summary>
    ClassAssumed,

    /// <summary>The pitch of a thread was not said; the coarse pitch was taken. Value: the pitch.</summary>
    CoarsePitchAssumed,

    /// <summary>The lead of an end was not said; one pitch was taken. Value: the lead.</summary>
    LeadAssumed,

    /// <summary>The countersink of a sleeve's mouth was not said; half a pitch was taken. Value: the countersink.</summary>
    CountersinkAssumed,

    /// <summary>Toe was not computed: no steering arm was given for the rod.</summary>
    ToeNotComputed,

    /// <summary>Toe was not computed: the rod is in line with the steer axis, or a length lies out of its reach.</summary>
    ToeOutOfReach,

    /// <summary>Toe at the plates was not computed: no width was given.</summary>
    PlatesNotGiven,
}

/// <summary>A warning, with the values that its sentence needs.</summary>
/// <param name="Code">What it is about.</param>
/// <param name="End">The end that it is about, or null.</param>
/// <param name="Value">A length, or null; its meaning is said at the code.</param>
/// <param name="Other">A second length, or null.</param>
/// <param name="Ratio">A ratio, or null.</param>
/// <param name="Missing">What is missing for a strength.</param>
public sealed record PlanWarning(
    WarningCode Code,
    RodSide? End = null,
    Length? Value = null,
    Length? Other = null,
    double? Ratio = null,
    MissingStrength Missing = MissingStrength.None);

/// <summary>What is missing for the strength of a joint.</summary>
[Flags]
public enum MissingStrength
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The tensile strength of the end.</summary>
    End = 1,

    /// <summary>The tensile strength of the sleeve.</summary>
    Sleeve = 2,

    /// <summary>Limits of size: the standard has no such tolerance class for the pitch.</summary>
    Limits = 4,
}
