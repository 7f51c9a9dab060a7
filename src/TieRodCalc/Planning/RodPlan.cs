using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>A span of lengths.</summary>
/// <param name="Shortest">The low end.</param>
/// <param name="Longest">The high end.</param>
public sealed record LengthSpan(Length Shortest, Length Longest);

/// <summary>What decides the required engagement of a joint.</summary>
public enum EngagementSource
{
    /// <summary>The rule in diameters.</summary>
    Rule,

    /// <summary>A length that the job or the rod sets.</summary>
    Job,
}

/// <summary>The engagement that a joint is required to have.</summary>
/// <param name="Required">What counts.</param>
/// <param name="RuleDiameters">The rule in diameters of the male thread that applies where the job sets no length.</param>
/// <param name="GovernedBy">What decides.</param>
public sealed record RequiredEngagement(Length Required, double RuleDiameters, EngagementSource GovernedBy);

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

    /// <summary>Thread left outside the nut.</summary>
    public required Length NutRoom { get; init; }

    /// <summary>The least thread left outside the nut over the wanted adjustment.</summary>
    public required Length NutRoomLeast { get; init; }
}

/// <summary>How far a rod adjusts one way by turning the sleeve alone.</summary>
/// <param name="Length">How far, zero or more.</param>
/// <param name="Turns">Turns of the sleeve, zero or more.</param>
/// <param name="EndsAt">The limit that ends it, or null where the sleeve cannot adjust the rod at all.</param>
/// <param name="End">The end that the limit belongs to, or null.</param>
public sealed record Travel(Length Length, double Turns, Limit? EndsAt, RodSide? End)
{
    /// <summary>The travel from a setting to the first limit that is met on the way.</summary>
    internal static Travel Of(
        in RodDimensions rod, in Turning turning, double axial, double inner, double outer, Cuts cuts, bool longer)
    {
        if (!turning.Adjusts)
        {
            return new Travel(Length.Zero, 0, null, null);
        }

        // Of limits that are met together the first one gives the name: inner end, outer end, tips.
        (double Axial, Limit Limit, RodSide? End) first = (double.PositiveInfinity, Limit.Tips, null);
        foreach (RodSide side in (ReadOnlySpan<RodSide>)[RodSide.Inner, RodSide.Outer])
        {
            double insertion = side == RodSide.Inner ? inner : outer;
            double inward = longer ? turning.Share(side) : -turning.Share(side);
            (double room, Limit limit) = inward > 0
                ? RoomInward(rod, side, insertion, cuts[side])
                : (insertion - rod[side].Least.At, rod[side].Least.Limit);
            first = Earlier(first, (room / Math.Abs(inward), limit, side));
        }

        if (!longer)
        {
            first = Earlier(first, (rod.Sleeve - rod.TipGap - inner - outer, Limit.Tips, null));
        }

        double reached = Math.Max(0, first.Axial);
        double length = Math.Abs(rod.Length(axial + (longer ? reached : -reached)) - rod.Length(axial));
        return new Travel(Length.FromMillimeters(length), reached / Math.Abs(turning.AxialPerTurn), first.Limit, first.End);
    }

    private static (double Axial, Limit Limit, RodSide? End) Earlier(
        (double Axial, Limit Limit, RodSide? End) first, (double Axial, Limit Limit, RodSide? End) other) =>
        other.Axial < first.Axial - Millimeters.Negligible ? other : first with { Axial = Math.Min(first.Axial, other.Axial) };

    private static (double Room, Limit Limit) RoomInward(in RodDimensions rod, RodSide side, double insertion, double cut)
    {
        Bound deepest = rod.Deepest(side);
        double nutRoom = rod[side].NutRoom(insertion, cut);
        double boreRoom = deepest.At - insertion;
        return (Math.Min(nutRoom, boreRoom), nutRoom <= boreRoom + Millimeters.Negligible ? Limit.NutRoom : deepest.Limit);
    }
}

/// <summary>What one turn, or a part of one, does in the direction that lengthens the rod.</summary>
/// <param name="Length">Change of length.</param>
/// <param name="Toe">
/// Change of toe, toe-in positive: of one wheel where each side has a rod, of both together where one rod joins the wheels.
/// Null where it was not computed.
/// </param>
/// <param name="ToeAtPlates">The same at the toe plates, or null.</param>
public sealed record TurnEffect(Length Length, Angle? Toe, Length? ToeAtPlates);

/// <summary>How to start the threads. Counted turns are a guide, a turn more or less; the thread showing decides.</summary>
/// <param name="First">The end that is run in by itself.</param>
/// <param name="AloneTurns">By how many turns, counted from flush with the face.</param>
/// <param name="ShowingBeforeSecond">Its thread that shows then.</param>
/// <param name="SleeveTurns">Opposite hands: turns of the sleeve after the other end is started; null with the same hand.</param>
/// <param name="EndTurns">Same hand: turns of the outer end itself, before it is fitted; null with opposite hands.</param>
public sealed record StartProcedure(RodSide First, double AloneTurns, Length ShowingBeforeSecond, double? SleeveTurns, double? EndTurns)
{
    /// <summary>
    /// With opposite hands the sleeve draws both ends in together, so the end that needs more turns goes first by the
    /// difference. With the same hand it draws one in and lets the other out: the outer end itself is turned in.
    /// </summary>
    internal static StartProcedure Of(in RodDimensions rod, in Turning turning, double inner, double outer, Cuts cuts)
    {
        double innerTurns = inner / rod.Inner.Pitch;
        double outerTurns = outer / rod.Outer.Pitch;
        if (!turning.OppositeHands)
        {
            return new StartProcedure(
                RodSide.Inner, innerTurns, Length.FromMillimeters(rod.Inner.Showing(inner, cuts.Inner)), null, outerTurns);
        }

        RodSide first = innerTurns >= outerTurns - Millimeters.Negligible ? RodSide.Inner : RodSide.Outer;
        double alone = Math.Abs(innerTurns - outerTurns);
        double showing = rod[first].Showing(alone * rod[first].Pitch, cuts[first]);
        return new StartProcedure(first, alone, Length.FromMillimeters(showing), Math.Min(innerTurns, outerTurns), null);
    }
}

/// <summary>How a rod that can be built is made and set.</summary>
public sealed record RodSolution
{
    /// <summary>Reach with the recommended cuts made.</summary>
    public required LengthSpan Reach { get; init; }

    /// <summary>What to cut off the inner end, or null where it must not be cut.</summary>
    public required CutAdvice? InnerCut { get; init; }

    /// <summary>What to cut off the outer end, or null where it must not be cut.</summary>
    public required CutAdvice? OuterCut { get; init; }

    /// <summary>The inner joint.</summary>
    public required JointPlan Inner { get; init; }

    /// <summary>The outer joint.</summary>
    public required JointPlan Outer { get; init; }

    /// <summary>Distance between the tips at the setting.</summary>
    public required Length TipGap { get; init; }

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
    public required (Length Inner, Length Outer) LeastCutSetting { get; init; }

    /// <summary>
    /// What another start moves the inner insertion by at the same length where both ends' orientations are fixed, or null
    /// where turning the sleeve does not change the length.
    /// </summary>
    public required Length? StartStep { get; init; }
}

/// <summary>What came of planning a rod.</summary>
public sealed record RodPlan
{
    /// <summary>Whether the rod can be made.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Which joints are locked.</summary>
    public required Locking Locking { get; init; }

    /// <summary>Wanted length, center to center.</summary>
    public required Length Target { get; init; }

    /// <summary>The axial length of a rod of the wanted length.</summary>
    public required Length Axial { get; init; }

    /// <summary>Reach of the uncut parts, or null where their limits leave no setting at all.</summary>
    public required LengthSpan? UncutReach { get; init; }

    /// <summary>How the rod is made and set, or null where it cannot be built.</summary>
    public required RodSolution? Solution { get; init; }

    /// <summary>The limits in the way, greatest miss first; empty where the rod can be built.</summary>
    public required IReadOnlyList<BindingLimit> Binding { get; init; }

    /// <summary>Warnings, and what was not checked.</summary>
    public required IReadOnlyList<PlanWarning> Warnings { get; init; }
}
