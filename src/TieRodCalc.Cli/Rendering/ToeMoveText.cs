using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The part of a plan of toe that says what to do at one rod.</summary>
internal sealed class ToeMoveText(Page page, ToeReport report)
{
    private readonly ToeSentences _sentences = new(report.Job.Units);
    private readonly PlanSentences _planSentences = new(report.Job.Units);

    /// <summary>Whether a warning stands above the move that it is about.</summary>
    public static bool IsHeadline(ToeWarning warning) => warning.Code is
        ToeWarningCode.NotLocked or ToeWarningCode.PastALimit or ToeWarningCode.StaysPastALimit or ToeWarningCode.NotBuildable
        or ToeWarningCode.CutNotKnown or ToeWarningCode.BuiltDiffers or ToeWarningCode.SteeringUnlikely;

    /// <summary>Adds one move.</summary>
    public void Add(ToeMove move, string rod)
    {
        string wheel = report.OneRod ? "BOTH WHEELS" : $"{Names.Of(move.Side).ToUpperInvariant()} WHEEL";
        page.Heading($"{wheel}, rod {rod}: {Headline(move)}");
        foreach (ToeWarning warning in report.Plan.Warnings.Where(warning => warning.Side == move.Side && IsHeadline(warning)))
        {
            page.Sentence(_sentences.Of(warning));
        }

        foreach ((_, PlanWarning warning) in report.Headlines.Where(headline => headline.Move == move))
        {
            page.Sentence(_planSentences.Of(warning));
        }

        AddWay(move);
        AddLengths(move, rod);
        AddToe(move);
        if (move.Joints.Count > 0 && move.Plan is not null)
        {
            page.Sentence(
                "Below, the rod is taken as cut and set by its plan, and since then turned as here. Hold the thread showing against a "
                    + "caliper first: where it differs, engagement and room are not this rod's.");
        }

        foreach (MovedJoint joint in move.Joints)
        {
            AddJoint(joint, move.Direction is not null);
        }

        AddRoom(move);
    }

    private static string Headline(ToeMove move) => move.Outcome switch
    {
        MoveOutcome.Holds => Order(move),
        MoveOutcome.NotChecked when move.Direction is not null => $"LIMITS NOT CHECKED; IT WOULD BE TO {Order(move)}",
        MoveOutcome.NotChecked => "LIMITS NOT CHECKED; NOTHING WOULD BE TO TURN",
        MoveOutcome.Refused when move.PastALimit => "REFUSED, THE ROD IS PAST A LIMIT AS IT IS",
        MoveOutcome.Refused => "REFUSED, THE ROD RUNS OUT ON THE WAY",
        MoveOutcome.InLine => "NO ANSWER, THE ROD IS IN LINE WITH THE STEER AXIS",
        MoveOutcome.PresentOutOfReach => "NO ANSWER, ROD AND STEERING DO NOT GO TOGETHER",
        _ => "NO ROD LENGTH GIVES THIS TOE",
    };

    private static string Order(ToeMove move)
    {
        if (move.Direction is not { } direction)
        {
            return "LEAVE IT AS IT IS";
        }

        string turned = Names.Of(move.Part);
        string pull = move.Part == TurnedPart.Sleeve ? string.Empty : $"PULL THE PIN OF THE {turned}, ";
        return $"{pull}TURN THE {turned} {ToeFormat.Turns(move.Turns!.Value)} {Names.Of(direction)}".ToUpperInvariant();
    }

    private void AddWay(ToeMove move)
    {
        switch (move)
        {
            case { PastALimit: true, Refusal: { } refusal }:
                page.Sentence(
                    $"As it is, the rod is past its limit already: {Names.Of(refusal.Limit, refusal.End)}. Do not drive it, and do not set toe with it"
                        + $"{(move.Plan is null ? string.Empty : "; plan tells what it needs")}.");
                break;
            case { Refusal: { } refusal }:
                string flats = refusal.ReachableFlats is { } count ? $" ({ToeFormat.Flats(count)})" : string.Empty;
                page.Sentence(
                    $"It would take {Page.Whole(ToeFormat.Turns(move.Turns!.Value))} {Names.Of(move.Direction!.Value)}, "
                        + $"{ToeSentences.SeenFrom(move.Part)}. {Page.Whole(ToeFormat.Turns(refusal.ReachableTurns))}{flats} can be "
                        + $"turned; then comes {Names.Of(refusal.Limit, refusal.End)}. Do not turn it further.");
                break;
            case { Direction: null, ExactTurns: not null }:
                page.Sentence($"The change is no more than half of {ToeFormat.Turns(move.Step)}, the least that is counted.");
                break;
            case { Direction: not null }:
                page.Sentence(
                    $"{Capital(ToeSentences.SeenFrom(move.Part))}; that makes the rod {(move.Turns > 0 ? "longer" : "shorter")}.");
                break;
            case { Outcome: MoveOutcome.InLine }:
                page.Sentence(
                    "Near there a change of length turns the wheel without bound, or not at all. Check the points or the rod angle.");
                break;
            case { Outcome: MoveOutcome.PresentOutOfReach }:
                page.Sentence(
                    $"The rod is {Both(move.Present)} long, and the steering as given can have rods from {Span(move.SteeringReach)}: one "
                        + "of the two was measured wrong.");
                break;
            default:
                page.Sentence($"The steering as given can have rods from {Span(move.SteeringReach)}, and none of them gives it.");
                break;
        }

        if (move.Part != TurnedPart.Sleeve)
        {
            AddEnd(move);
        }
    }

    private void AddEnd(ToeMove move)
    {
        string why = move.Plan is null
            ? "The outer end carries the thread itself: there is no sleeve to turn."
            : "Both threads have the same hand and the same pitch: turning the sleeve does not change the length.";
        string steps = move.Step < 1
            ? "A straight rod end goes back on its pin after every half turn"
            : "The end goes back on its pin after whole turns only";
        page.Sentence($"{why} {steps}{Worth(move)}.");

        // Looked at from its own ball, an end unscrews the same way whichever of the two is turned.
        if (move is { Plan: null, ExactTurns: { } exact, Shorter: { } shorter, Longer: { } longer }
            && Math.Abs(exact) <= (exact > 0 ? longer : shorter).Turns)
        {
            TurnDirection way = exact > 0 == (move.Lengthens == TurnDirection.Clockwise)
                ? TurnDirection.Clockwise
                : TurnDirection.Counterclockwise;
            page.Sentence(
                "Where the inner end turns freely in its own joint, pull no pin: loosen the nut and turn the rod itself, "
                    + $"{Page.Whole(ToeFormat.Exact(exact))} {Names.Of(way)}, looking from the inner ball toward the thread.");
        }
    }

    private string Worth(ToeMove move)
    {
        if (move.ToePerStep is not { } toe)
        {
            return string.Empty;
        }

        string atGauge = report.Toe.Gauge is { } gauge
            ? $", {Both(Toe.AtPlates(toe, gauge.Width).Abs())} at the {Names.Of(gauge.Place)}"
            : string.Empty;
        return $"; each step is {Page.Whole(ToeFormat.Degrees(toe))}{atGauge}";
    }

    private void AddLengths(ToeMove move, string rod)
    {
        if (move.Flats is { } flats && move.Refusal is null && flats > 0)
        {
            page.Row("in flats", $"{ToeFormat.Flats(flats)} of the sleeve's hexagon");
        }

        if (move.ExactTurns is { } exact)
        {
            string exactFlats = move.ExactFlats is { } count ? $", {ToeFormat.ExactFlats(count)}" : string.Empty;
            page.Row("exactly", $"{ToeFormat.Exact(exact)}{exactFlats}");
        }

        bool planned = report.Plan.Warnings.Any(
            warning => warning.Code == ToeWarningCode.PresentLengthPlanned && warning.Side == move.Side);
        if (report.OneRod && report.Job.Rods.First(each => each.Name == rod).OnCar?.Rod is { } made)
        {
            page.Row("inner end", made.Parts.Inner.Info.Id);
        }

        page.Row("rod now", $"{Both(move.Present)} center to center, {(planned ? "as planned" : "measured")}");
        if (move.Wanted is { } wanted)
        {
            Length change = wanted - move.Present;
            page.Row("change that is wanted", $"{Both(change.Abs())} {(change >= Length.Zero ? "longer" : "shorter")}");
        }
    }

    private void AddToe(ToeMove move)
    {
        if (!report.OneRod)
        {
            page.Row("toe of this wheel now", Wheel(move.Now));
            if (move.After is { } after)
            {
                page.Row("and then", $"{Wheel(after)}: {Page.Whole(ToeFormat.LeftOver(move.LeftOver!.Value))}");
            }
            else if (move is { PastALimit: false, Refusal.ReachableToe: { } reachable })
            {
                page.Row("with what can be turned", Wheel(reachable));
            }
        }
    }

    private void AddJoint(MovedJoint joint, bool turned)
    {
        string end = Names.Of(joint.End);
        if (turned && joint.NutLoosens is { } loosens)
        {
            page.Row($"{end} nut", $"loosen it {Names.Of(loosens)}, looking from the {end} ball toward the thread");
        }

        page
            .Row($"{end} thread showing", turned ? $"{Both(joint.ShowingNow)} now, {Both(joint.Showing)} then" : Both(joint.Showing))
            .Row("  engaged then", $"{Both(joint.Engaged, LengthRounding.Down)}; required "
                + Page.Whole(LengthFormat.Decimal(joint.Required, report.Job.Units, LengthRounding.Up)))
            .Row(joint.NutLoosens is null ? "  left outside" : "  left outside the nut", Both(joint.NutRoom, LengthRounding.Down));
    }

    private void AddRoom(ToeMove move)
    {
        if (move is { ShorterAfter: { } shorter, LongerAfter: { } longer })
        {
            page
                .Row("could then still turn", $"{ToeFormat.Left(shorter.Turns)} shorter, {PlanSentences.Of(shorter)};")
                .Row(string.Empty, $"{ToeFormat.Left(longer.Turns)} longer, {PlanSentences.Of(longer)}");
        }
    }

    private string Both(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Both(length, report.Job.Units, rounding));

    /// <summary>Toe of one wheel, as an angle and, where it is measured so, as a length.</summary>
    private string Wheel(Angle toe) => Page.Whole(ToeFormat.Of(toe))
        + (report.Toe.Gauge is { } gauge
            ? $"; {Page.Whole(ToeFormat.Of(Toe.AtPlates(toe, gauge.Width), report.Job.Units))}"
            : string.Empty);

    private string Span(LengthSpan span) => $"{Both(span.Shortest, LengthRounding.Up)} to {Both(span.Longest, LengthRounding.Down)}";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
