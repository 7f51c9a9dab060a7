using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// A plan of toe as a person reads it: what to turn at each wheel, which way and how far; what the gauge says then; what to mind;
/// cautions.
/// </summary>
internal sealed class ToeText
{
    private readonly Page _page = new();
    private readonly ToeReport _report;
    private readonly LengthDisplay _unit;
    private readonly ToeSentences _sentences;
    private readonly PlanSentences _planSentences;

    private ToeText(ToeReport report)
    {
        _report = report;
        _unit = report.Job.Units;
        _sentences = new ToeSentences(_unit);
        _planSentences = new PlanSentences(_unit);
    }

    public static string Of(ToeReport report)
    {
        ToeText text = new(report);
        text.AddTask();
        for (int index = 0; index < report.Plan.Moves.Count; index++)
        {
            text.AddMove(report.Plan.Moves[index], report.RodNames[index]);
        }

        text.AddTotal();
        text.AddProcedure();
        text.AddWarnings();
        text.AddCautions();
        return text._page.ToString();
    }

    private string Both(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Both(length, _unit, rounding));

    /// <summary>Toe of one wheel, as an angle and, where it is measured so, as a length.</summary>
    private string Wheel(Angle toe) => Page.Whole(ToeFormat.Of(toe))
        + (_report.Toe.Gauge is { } gauge ? $"; {Page.Whole(ToeFormat.Of(Toe.AtPlates(toe, gauge.Width), _unit))}" : string.Empty);

    /// <summary>Toe of both wheels; what is measured comes first.</summary>
    private string Total(WheelToes toes) => _report.Across(toes) is { } length
        ? $"{Page.Whole(ToeFormat.Of(length, _unit))}; {Page.Whole(ToeFormat.Of(toes.Total))}"
        : Page.Whole(ToeFormat.Of(toes.Total));

    private void AddTask()
    {
        if (_report.Job.Name is { } name)
        {
            _page.Sentence(name, indent: 0);
        }

        _page.Heading("TOE, total of both wheels");
        if (_report.Toe.Gauge is { } gauge)
        {
            _page.Row("measured", _sentences.Of(gauge));
        }

        _page
            .Row("now", Total(_report.Plan.Now))
            .Row("wanted", Total(_report.Plan.Want));
        if (_report.Plan.After is { } after)
        {
            _page.Row("with the turns below", $"{Total(after)}: {Remaining(after)}");
        }
        else
        {
            string reachable = _report.Plan.Reachable is { } toes ? $"; as far as can be turned, {Total(toes)}" : string.Empty;
            _page.Row("with the turns below", $"NOT REACHED{reachable}");
        }
    }

    private string Remaining(WheelToes after) => Page.Whole(_report.Across(after) is { } length
        ? ToeFormat.LeftOver(_report.Across(_report.Plan.Want)!.Value - length, _unit)
        : ToeFormat.LeftOver(_report.Plan.Want.Total - after.Total));

    private void AddMove(ToeMove move, string rod)
    {
        string wheel = _report.OneRod ? "BOTH WHEELS" : $"{Names.Of(move.Side).ToUpperInvariant()} WHEEL";
        _page.Heading($"{wheel}, rod {rod}: {Headline(move)}");
        foreach (ToeWarning warning in _report.Plan.Warnings.Where(warning => warning.Side == move.Side && IsHeadline(warning)))
        {
            _page.Sentence(_sentences.Of(warning));
        }

        foreach ((_, PlanWarning warning) in _report.Headlines.Where(headline => headline.Move == move))
        {
            _page.Sentence(_planSentences.Of(warning));
        }

        AddWay(move);
        AddLengths(move);
        AddToe(move);
        foreach (MovedJoint joint in move.Joints)
        {
            AddJoint(joint, move.Direction is not null);
        }

        AddRoom(move);
    }

    private static string Headline(ToeMove move) => move.Outcome switch
    {
        MoveOutcome.Holds => Order(move),
        MoveOutcome.NotChecked => $"{Order(move)}, LIMITS NOT CHECKED",
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
                _page.Sentence(
                    $"As it is, the rod is past its limit already: {Limit(refusal)}. Do not drive it, and do not set toe with it; plan tells "
                        + "what it needs.");
                break;
            case { Refusal: { } refusal }:
                string flats = refusal.ReachableFlats is { } count ? $" ({ToeFormat.Flats(count)})" : string.Empty;
                _page.Sentence(
                    $"It would take {Page.Whole(ToeFormat.Turns(move.Turns!.Value))} {Names.Of(move.Direction!.Value)}, "
                        + $"{ToeSentences.SeenFrom(move.Part)}. {Page.Whole(ToeFormat.Turns(refusal.ReachableTurns))}{flats} can be turned; then comes "
                        + $"{Limit(refusal)}. Do not turn it further.");
                break;
            case { Direction: null, ExactTurns: not null }:
                _page.Sentence($"The change is less than half of {ToeFormat.Turns(move.Step)}, the least that is counted.");
                break;
            case { Direction: not null }:
                _page.Sentence(
                    $"{Capital(ToeSentences.SeenFrom(move.Part))}; that makes the rod {(move.Turns > 0 ? "longer" : "shorter")}.");
                break;
            case { Outcome: MoveOutcome.InLine }:
                _page.Sentence("Near there a change of length turns the wheel without bound, or not at all. Check the points or the rod angle.");
                break;
            case { Outcome: MoveOutcome.PresentOutOfReach }:
                _page.Sentence(
                    $"The rod is {Both(move.Present)} long, and the steering as given can have rods from {Span(move.SteeringReach)}: one of "
                        + "the two was measured wrong.");
                break;
            default:
                _page.Sentence($"The steering as given can have rods from {Span(move.SteeringReach)}, and none of them gives it.");
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
        string worth = move.ToePerStep is { } toe ? $"; each step is {Wheel(Angle.FromRadians(Math.Abs(toe.Radians)))}" : string.Empty;
        _page.Sentence($"{why} {steps}{WithoutDirection(worth)}.");
        if (move.Plan is null && move.ExactTurns is { } exact)
        {
            _page.Sentence(
                $"Where the inner end turns freely in its own joint, pull no pin: loosen the nut and turn the rod itself, {ToeFormat.Exact(exact)} "
                    + $"{(exact > 0 == (move.Turns > 0) && move.Direction is { } way ? Names.Of(way) + ", " : string.Empty)}looking from the "
                    + "inner ball toward the thread.");
        }
    }

    private static string WithoutDirection(string toe) => toe.Replace(Page.Whole(" toe-in"), string.Empty, StringComparison.Ordinal);

    private void AddLengths(ToeMove move)
    {
        if (move.Flats is { } flats && move.Refusal is null && flats > 0)
        {
            _page.Row("in flats", $"{ToeFormat.Flats(flats)} of the sleeve's hexagon");
        }

        if (move.ExactTurns is { } exact)
        {
            string exactFlats = move.ExactFlats is { } count ? $", {ToeFormat.ExactFlats(count)}" : string.Empty;
            _page.Row("exactly", $"{ToeFormat.Exact(exact)}{exactFlats}");
        }

        bool planned = _report.Plan.Warnings.Any(
            warning => warning.Code == ToeWarningCode.PresentLengthPlanned && warning.Side == move.Side);
        _page.Row("rod now", $"{Both(move.Present)} center to center, {(planned ? "as planned" : "measured")}");
        if (move.Wanted is { } wanted)
        {
            Length change = wanted - move.Present;
            _page.Row("change that is wanted", $"{Both(change.Abs())} {(change >= Length.Zero ? "longer" : "shorter")}");
        }
    }

    private void AddToe(ToeMove move)
    {
        if (!_report.OneRod)
        {
            _page.Row("toe of this wheel now", Wheel(move.Now));
            if (move.After is { } after)
            {
                _page.Row("and then", $"{Wheel(after)}: {Page.Whole(ToeFormat.LeftOver(move.LeftOver!.Value))}");
            }
            else if (move is { PastALimit: false, Refusal.ReachableToe: { } reachable })
            {
                _page.Row("with what can be turned", Wheel(reachable));
            }
        }
    }

    private void AddJoint(MovedJoint joint, bool turned)
    {
        string end = Names.Of(joint.End);
        if (turned && joint.NutLoosens is { } loosens)
        {
            _page.Row($"{end} nut", $"loosen it {Names.Of(loosens)}, looking from the {end} ball toward the thread");
        }

        _page
            .Row($"{end} thread showing", turned ? $"{Both(joint.ShowingNow)} now, {Both(joint.Showing)} then" : Both(joint.Showing))
            .Row("  engaged then", $"{Both(joint.Engaged, LengthRounding.Down)}; required "
                + Page.Whole(LengthFormat.Decimal(joint.Required, _unit, LengthRounding.Up)))
            .Row(joint.NutLoosens is null ? "  left outside" : "  left outside the nut", Both(joint.NutRoom, LengthRounding.Down));
    }

    private void AddRoom(ToeMove move)
    {
        if (move is { Shorter: { } shorter, Longer: { } longer, Turns: { } turns, Refusal: null })
        {
            _page
                .Row("could then still turn", $"{ToeFormat.Exact(shorter.Turns + turns)} shorter, {PlanSentences.Of(shorter)};")
                .Row(string.Empty, $"{ToeFormat.Exact(longer.Turns - turns)} longer, {PlanSentences.Of(longer)}");
        }
    }

    private void AddTotal()
    {
        if (_report.Plan.Moves.Any(move => move.Outcome == MoveOutcome.Refused) && _report.Plan.Moves.Any(move => move.Outcome == MoveOutcome.Holds))
        {
            string side = Names.Of(_report.Plan.Moves.First(move => move.Outcome == MoveOutcome.Holds).Side);
            _page.Heading("Turn nothing before this is settled");
            _page.Point($"The {side} rod may have the room to make up the whole change: ask again with --{side}-only.");
        }
    }

    private void AddProcedure()
    {
        _page.Heading("How to do it");
        foreach (string step in ToeProcedure.Steps)
        {
            _page.Point(step);
        }
    }

    private void AddWarnings()
    {
        _page.Heading("Mind, and what was assumed or not checked");
        IEnumerable<ToeWarning> warnings = _report.Plan.Warnings.Where(warning => !IsHeadline(warning));
        foreach (IGrouping<ToeWarning, ToeWarning> same in warnings.GroupBy(warning => warning with { Side = null }))
        {
            _page.Point(_sentences.Of(same.First(), bothWheels: same.Count() > 1));
        }

        _page.Point("Toe is counted with nothing else moved: same ride height, camber and caster. The rods' own plans say what else was not checked.");
    }

    private void AddCautions()
    {
        if (_report.Notes.Count > 0)
        {
            _page.Heading("Notes on the files");
            foreach (Problem note in _report.Notes)
            {
                _page.Point($"{ProblemText.Place(note)}: {note.Message}");
            }
        }

        _page.Heading("Cautions");
        foreach (string caution in Cautions.All.Append(Cautions.NotChecked))
        {
            _page.Point(caution);
        }
    }

    private static bool IsHeadline(ToeWarning warning) => warning.Code is
        ToeWarningCode.NotLocked or ToeWarningCode.PastALimit or ToeWarningCode.NotBuildable or ToeWarningCode.CutNotKnown;

    private static string Limit(MoveRefusal refusal) =>
        $"{Names.Of(refusal.Limit)}{(refusal.End is { } end ? $" of the {Names.Of(end)} end" : string.Empty)}";

    private string Span(LengthSpan span) => $"{Both(span.Shortest, LengthRounding.Up)} to {Both(span.Longest, LengthRounding.Down)}";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
