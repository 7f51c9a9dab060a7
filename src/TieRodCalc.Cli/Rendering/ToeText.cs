using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
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

    private ToeText(ToeReport report)
    {
        _report = report;
        _unit = report.Job.Units;
        _sentences = new ToeSentences(_unit);
    }

    public static string Of(ToeReport report)
    {
        ToeText text = new(report);
        text.AddTask();
        text.AddSettleFirst();
        ToeMoveText moves = new(text._page, report);
        for (int index = 0; index < report.Plan.Moves.Count; index++)
        {
            moves.Add(report.Plan.Moves[index], report.RodNames[index]);
        }

        text.AddProcedure();
        text.AddWarnings();
        PageEnd.Add(text._page, report.Notes);
        return text._page.ToString();
    }

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

    /// <summary>What keeps everything from being turned, before any order is given.</summary>
    private void AddSettleFirst()
    {
        ToePlan plan = _report.Plan;
        foreach (ToeWarning warning in plan.Warnings.Where(warning => warning.Side == plan.Stays?.Side && ToeMoveText.IsHeadline(warning)))
        {
            _page.Sentence(_sentences.Of(warning));
        }

        if (plan.Stays is { } stays)
        {
            foreach ((_, PlanWarning warning) in _report.Headlines.Where(headline => headline.Move == stays))
            {
                _page.Sentence($"{Names.Of(stays.Side)} wheel: {new PlanSentences(_unit).Of(warning)}");
            }
        }

        if (plan.Moves.All(move => move.Holds))
        {
            return;
        }

        _page.Sentence("TURN NOTHING BEFORE THIS IS SETTLED: not everything below can be done, or not everything was checked.");
        if (plan.Moves.Any(move => move is { Outcome: MoveOutcome.Refused, PastALimit: false })
            && plan.Moves.All(move => move is { PastALimit: false, SteeringUnlikely: false })
            && plan.Moves.FirstOrDefault(move => move.Holds) is { } holds)
        {
            string side = Names.Of(holds.Side);
            _page.Sentence($"The {side} rod may have the room to make up the whole change: ask again with --{side}-only.");
        }
    }

    private void AddProcedure()
    {
        IReadOnlyList<string> steps = ToeProcedure.Of(_report.Plan);
        if (steps.Count == 0)
        {
            return;
        }

        _page.Heading("How to do it");
        foreach (string step in steps)
        {
            _page.Point(step);
        }
    }

    private void AddWarnings()
    {
        _page.Heading("Mind, and what was assumed or not checked");
        IEnumerable<ToeWarning> warnings = _report.Plan.Warnings.Where(
            warning => !ToeMoveText.IsHeadline(warning) && warning.Code != ToeWarningCode.SettingFromPlan);
        foreach (IGrouping<ToeWarning, ToeWarning> same in warnings.GroupBy(warning => warning with { Side = null }))
        {
            _page.Point(_sentences.Of(same.First(), bothWheels: same.Count() > 1));
        }

        _page.Point(
            "Toe is counted with nothing else moved: same ride height, camber and caster. The rods' own plans say what else was not "
                + "checked.");
    }
}
