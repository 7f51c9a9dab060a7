using TieRodCalc.Planning;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>The sentences that a plan is told in.</summary>
/// <param name="unit">The unit that lengths are told in first.</param>
/// <param name="oneJoint">Whether they are of a rod with one threaded joint, whose outer end is what a sleeve is elsewhere.</param>
public sealed class PlanSentences(LengthDisplay unit, bool oneJoint = false)
{
    /// <summary>A warning in words.</summary>
    /// <param name="warning">The warning.</param>
    /// <param name="bothEnds">True where the same holds of the other end too, and one sentence says it of both.</param>
    public string Of(PlanWarning warning, bool bothEnds = false)
    {
        ArgumentNullException.ThrowIfNull(warning);
        return Female(Sentence(warning, bothEnds));
    }

    private string Female(string text) => oneJoint ? text.Replace("sleeve", "outer end", StringComparison.Ordinal) : text;

    private string Sentence(PlanWarning warning, bool bothEnds)
    {
        string end = bothEnds ? "inner and outer end" : warning.End is { } side ? $"{Names.Of(side)} end" : "rod";
        LengthRounding rounding = warning.Code is WarningCode.StrengthGoverns or WarningCode.HoldsOnlyAtNominal
            ? LengthRounding.Up
            : LengthRounding.Nearest;
        string value = Length(warning.Value, rounding);
        string other = Length(warning.Other, rounding);
        return warning.Code switch
        {
            WarningCode.NotLocked =>
                "NOTHING LOCKS THIS ROD: no joint has a jam nut or a clamp. It will turn itself out of adjustment and apart. Do not "
                    + "drive it.",
            WarningCode.OneJointLocked =>
                $"Only one joint is locked. The {end} has no nut and no clamp: its thread stays free to work, and the sleeve is held "
                    + "by the other end alone.",
            WarningCode.SleeveCannotAdjust =>
                "Both threads have the same hand and the same pitch: turning the sleeve does not change the length at all. The "
                    + $"length is set by turning an end before it is fitted, so only lengths {value} apart exist; the nearest may be "
                    + "half of that off the target.",
            WarningCode.SetByTheEnd =>
                "There is one threaded joint: the length is set by turning the inner end in the outer end's thread, before "
                    + $"the joints are fitted. Only where a joint lets its end turn freely about the rod can any length be had; else only "
                    + $"lengths {value} apart exist, and the nearest may be half of that off the target.",
            WarningCode.SocketTakenAsClosed =>
                "The outer end's bore is said to be open, but where its ball's housing begins is not known: the tip is kept within the "
                    + "full thread, as in a closed bore.",
            WarningCode.StartMayNotMatch =>
                $"The setting is free over {value} only, and the next start of a thread moves it by {other}: a start that fits "
                    + "may not exist with both ends' positions fixed. More cut or less adjustment gives more freedom.",
            WarningCode.LittleCutToSpare =>
                $"Only {value} may be taken off the {end} by mistake before the rod no longer works. Cut exactly, or cut less and try.",
            WarningCode.CutOffTheMarks =>
                $"No mark of the grid lies between the least and the most cut of the {end}: the middle, {value}, is given in decimals.",
            WarningCode.LittleRoomForTheNut =>
                $"The {end}'s nut keeps only {value} of thread to be backed off by within the wanted adjustment, less than one pitch.",
            WarningCode.EngagementBelowRule =>
                $"The job asks for {value} of engagement at the {end}, less than the usual rule for the sleeve's material, {other}.",
            WarningCode.SteelAssumed =>
                "The sleeve is not said to be steel or aluminum: 1.5 diameters of engagement, the rule for steel, was taken. A "
                    + "softer material needs more.",
            WarningCode.StrengthNotChecked or WarningCode.StrengthGoverns or WarningCode.OutsideUnknown
                or WarningCode.SleeveTooThin or WarningCode.SleeveSlit or WarningCode.BendingBeyondRange
                or WarningCode.SpecialThread or WarningCode.BeyondTables or WarningCode.GivesWayUnderLoad
                or WarningCode.LoadNotChecked or WarningCode.LoadLeavesOut =>
                StrengthSentences.Of(warning, end, value, other),
            WarningCode.NominalTrusted =>
                "Nominal dimensions were trusted: no dimension of the parts carries a tolerance.",
            WarningCode.HoldsOnlyAtNominal =>
                $"The plan holds only at nominal dimensions: within the tolerances it may miss by {value}.",
            WarningCode.NoRemedy =>
                "Neither a single change nor two together that are looked for make this rod buildable.",
            WarningCode.NoUncutReach =>
                "The parts as they are keep all limits at no setting at all: there is no uncut reach to give.",
            WarningCode.ClassAssumed =>
                $"A tolerance class is not said at the {end}: 2A/2B or 6g/6H is assumed.",
            WarningCode.CoarsePitchAssumed =>
                $"Only the diameter is said at the {end}: the coarse pitch, {value}, is assumed.",
            WarningCode.LeadAssumed =>
                $"The lead of the {end} is not said: one pitch, {value}, is taken.",
            WarningCode.CountersinkAssumed =>
                $"The countersink at the {end} is not said: half a pitch, {value}, is taken.",
            WarningCode.ToeNotComputed =>
                "Toe is not computed: the job gives no steering arm for this rod.",
            WarningCode.ToeOutOfReach =>
                "Toe is not computed: the rod stands in line with the steer axis, or its length is out of the joint's reach.",
            WarningCode.PlatesNotGiven =>
                "Toe at the plates is not computed: the job gives no width of the plates.",
            _ => throw new ArgumentOutOfRangeException(nameof(warning)),
        };
    }

    /// <summary>A limit in the way: which, where, by how much, and what it means.</summary>
    public string Of(BindingLimit binding)
    {
        ArgumentNullException.ThrowIfNull(binding);
        string end = binding.End is { } side ? $", {Names.Of(side)} end" : string.Empty;
        return $"{Capital(Names.Of(binding.Limit))}{end}{At(binding.At)}: misses by {Length(binding.MissedBy)}. {Female(Meaning(binding))}";
    }

    /// <summary>Where in the wanted adjustment something is, as a part of a sentence: <c>, at the shortest wanted length</c>.</summary>
    public static string At(AdjustmentPoint point) => point switch
    {
        AdjustmentPoint.Shortest => ", at the shortest wanted length",
        AdjustmentPoint.Longest => ", at the longest wanted length",
        AdjustmentPoint.Present => ", as the rod stands",
        _ => string.Empty,
    };

    /// <summary>That a rod which cannot be built must not be cut.</summary>
    public static string DoNotCut { get; } = "With these parts, do not cut.";

    /// <summary>The limit that ends an adjustment, in words.</summary>
    public static string Of(Travel travel)
    {
        ArgumentNullException.ThrowIfNull(travel);
        return travel.EndsAt is not { } limit
            ? "turning the sleeve does not change the length"
            : $"then {Names.Of(limit, travel.End)}";
    }

    private static string Meaning(BindingLimit binding) => binding.Limit switch
    {
        Limit.Engagement when binding.At == AdjustmentPoint.Any =>
            "The sleeve's full thread is shorter than the required engagement, at any length.",
        Limit.Engagement => "Less thread would hold than is required.",
        Limit.NutRoom =>
            "The nut, or without one the end of the thread, meets the sleeve; the distance from ball to nut is fixed by the part, "
                + "and cutting does not change it.",
        Limit.ClosedBore => "The tip meets the end of the sleeve's thread.",
        Limit.FarThread => "The tip meets the thread of the other end.",
        Limit.Tips => "The two tips come too near to each other inside the sleeve.",
        Limit.Witness => "Full thread does not cover the witness hole.",
        Limit.Clamp => "Full thread does not reach under the clamp.",
        Limit.Cut when binding.At == AdjustmentPoint.Present => "More was cut off than the part allows.",
        Limit.Cut => "More would have to be cut than the part allows.",
        _ => throw new ArgumentOutOfRangeException(nameof(binding)),
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private string Length(Length? length, LengthRounding rounding = LengthRounding.Nearest) =>
        length is { } value ? LengthFormat.Both(value, unit, rounding) : string.Empty;
}
