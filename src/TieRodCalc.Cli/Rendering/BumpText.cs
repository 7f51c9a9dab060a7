using System.Globalization;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// What bump sheets say as a person reads it: what was read and its grade, what to do, what each change alone does, whether the rod can
/// be made so long, what the corner's points say; a drawing; what to mind; cautions.
/// </summary>
internal sealed class BumpText
{
    private readonly Page _page = new();
    private readonly BumpReport _report;
    private readonly LengthDisplay _unit;
    private readonly BumpSentences _sentences;

    private BumpText(BumpReport report) =>
        (_report, _unit, _sentences) = (report, report.Job.Units, new BumpSentences(report.Job.Units));

    public static string Of(BumpReport report)
    {
        BumpText text = new(report);
        if (report.Job.Name is { } name)
        {
            text._page.Sentence(name, indent: 0);
        }

        foreach (BumpSide side in report.Sides)
        {
            text.Add(side);
        }

        PageEnd.Add(text._page, report.Notes);
        return text._page.ToString();
    }

    private static string Upper(string text) => text.ToUpperInvariant();

    private string Length(Length value) => LengthFormat.Both(value, _unit);

    private void Add(BumpSide side)
    {
        string wheel = Upper(Names.Of(side.Side)) + " WHEEL";
        if (side.Findings is { } findings)
        {
            AddHeadline(wheel, side, findings);
            AddSheets(findings);
            AddTask(side, findings);
            AddRod(side, findings);
            AddDrawing(findings, side.VeryGood ? null : findings.Both);
        }
        else
        {
            _page.Heading($"{wheel}: NO READINGS, THE CORNER'S POINTS ALONE");
        }

        new BumpCornerText(_page, _unit).Add(side);
        AddWarnings(side);
    }

    private void AddHeadline(string wheel, BumpSide side, BumpFindings findings)
    {
        BumpSheetFindings newest = findings.Newest;
        _page.Heading(
            $"{wheel}: {Upper(_sentences.Trend(newest.Points))}; WORST {_sentences.PerInch(newest.Worst.PerInch)} OF TRAVEL, "
                + Upper(Names.Of(newest.Grade)));
        _page.Row("grade", _sentences.Of(newest.Limits, newest.Sheet.Spacing));
        _page.Row("worst step", $"{_sentences.Travel(newest.Worst.From)} to {_sentences.Travel(newest.Worst.To)}");
        if (side.Present is { } present)
        {
            string known = side.Rod?.Built?.CenterToCenter is not null ? "measured"
                : side.Rod?.Request is not null ? "as planned, not measured"
                : "by the points of its joints";
            _page.Row("rod now", $"{Length(present)} center to center, {known}");
        }
    }

    private void AddSheets(BumpFindings findings)
    {
        for (int index = 0; index < findings.Sheets.Count; index++)
        {
            BumpSheetFindings sheet = findings.Sheets[index];
            bool newest = index == findings.Sheets.Count - 1;
            string which = findings.Sheets.Count == 1 ? "What was read"
                : string.Create(CultureInfo.InvariantCulture, $"What was read, sheet {index + 1} of {findings.Sheets.Count}");
            _page.Heading(newest ? which : $"{which}: worst {_sentences.PerInch(sheet.Worst.PerInch)}, {Names.Of(sheet.Grade)}");
            string zeroed = sheet.Sheet.Zeroed == IndicatorZero.Once ? "zeroed once, at ride height" : "zeroed at each step, outward from ride height";
            string resolution = sheet.Sheet.Resolution is { } least
                ? $"; resolution {LengthFormat.Fine(least, _unit)}"
                : string.Empty;
            _page.Row("gauge", $"{LengthFormat.Decimal(sheet.Sheet.Spacing, _unit)} wide, {zeroed}{resolution}");
            if (newest)
            {
                _page.Drawing(BumpTable.Lines(sheet, _report.Job.Plates, _unit));
            }

            if (!sheet.Sheet.Then.IsNone)
            {
                _page.Row("changed after it", _sentences.Then(sheet.Sheet.Then));
            }
        }
    }

    private void AddTask(BumpSide side, BumpFindings findings)
    {
        if (findings.Both is not { } both)
        {
            _page.Heading("HEIGHT AND LENGTH CANNOT BE TOLD: see below why");
            return;
        }

        BumpSheetFindings newest = findings.Newest;
        bool better = Better(both, newest);
        string now = _sentences.PerInch(newest.Worst.PerInch);
        _page.Heading(side.VeryGood ? "NOTHING NEEDS TO BE CHANGED; what would still better it:"
            : !better ? "NO CHANGE THAT THE READINGS CAN TELL BETTERS IT"
            : $"TO DO: {Upper(_sentences.Task(both.Rounded))}");
        _page.Row("then, worst", $"{Promise(both, newest)}; now {now}");
        _page.Row("outer joint", $"exactly {_sentences.Height(both)}");
        _page.Row("rod", $"exactly {_sentences.Longer(both)}: {Length(both.WantedLength)} center to center");
        if (both.Rounded.RodLonger.Value != 0)
        {
            bool away = both.Rounded.RodLonger > UnitsNet.Length.Zero;
            _page.Row(
                "inner joint",
                $"moves {LengthFormat.Both(both.Rounded.RodLonger.Abs(), _unit)} along the rod, {(away ? "away from" : "toward")} the wheel, so "
                    + "that the outer joint and the toe stay");
        }

        AddAlone("height alone", findings.HeightAlone, newest);
        AddAlone("length alone", findings.LengthAlone, newest);
        if (findings.Measured is { } measured)
        {
            _page.Row(
                "as measured",
                $"between the sheets, raising did {Percent(measured.Raising)} of what is computed, length {Percent(measured.Length)}; the changes above "
                    + "go by that, as far as the sheets tell it better");
        }

        if (better && !side.VeryGood)
        {
            _page.Point(BumpSentences.OrTheInner);
            _page.Point(
                "Then set the toe again, read a second sheet, and write down in 'then' what was changed: the next answer goes by what the "
                    + "change did. A first correction leaves about a sixth of the toe change, on one corner in ten a third (invented corners).");
        }
    }

    private static string Percent(double part) => string.Create(CultureInfo.InvariantCulture, $"{part * 100:0} percent");

    private static bool Better(BumpAdvice advice, BumpSheetFindings newest) =>
        !advice.Rounded.IsNone && advice.RoundedWorst < newest.Worst.PerInch.Abs();

    private string Promise(BumpAdvice advice, BumpSheetFindings newest) =>
        $"{_sentences.PerInch(advice.RoundedWorst)}, {Names.Of(newest.Limits.Of(advice.RoundedWorst))}, is predicted";

    private void AddAlone(string label, BumpAdvice? advice, BumpSheetFindings newest)
    {
        if (advice is null)
        {
            _page.Row(label, "no change of it alone helps");
        }
        else
        {
            _page.Row(label, Better(advice, newest)
                ? $"{_sentences.Task(advice.Rounded)}: {Promise(advice, newest)}"
                : "no change of it alone helps");
        }
    }

    private void AddRod(BumpSide side, BumpFindings findings)
    {
        if (side.VeryGood)
        {
            return;
        }

        if (findings.Both is { Rounded.RodLonger.Value: not 0 } both)
        {
            AddRelength(side, side.ForBoth, both.RoundedLength);
        }

        if (findings.LengthAlone is { Rounded.RodLonger.Value: not 0 } alone
            && findings.Both?.RoundedLength.Millimeters != alone.RoundedLength.Millimeters && side.ForLengthAlone is { } other)
        {
            _page.Row(
                "for the length alone",
                $"{Length(other.Wanted)}: {(other.AsMade is { } plan ? Names.Of(plan.Verdict) : "not known")} as the rod is now");
        }
    }

    private void AddRelength(BumpSide side, RodRelength? made, Length wanted)
    {
        if (side.Rod is not { } rod)
        {
            return;
        }

        if (made is null)
        {
            string why = rod.Rod is null ? "its parts are not all named" : "its ends leave no such length";
            _page.Heading($"ROD {rod.Name} AT {LengthFormat.Both(wanted, _unit)}: NOT PLANNED, {why}");
            return;
        }

        string verdict = made.AsMade is { } plan
            ? plan.Verdict == Verdict.BuildableAfterCutting ? "CAN BE MADE BY CUTTING MORE" : Upper(Names.Of(plan.Verdict))
            : "NOT KNOWN, its cuts are not";
        _page.Heading($"ROD {rod.Name} AT {LengthFormat.Both(wanted, _unit)}: {verdict}");
        AddCut("cut already", made.InnerCut, made.OuterCut);
        if (made.CutsFromPlan)
        {
            _page.Sentence(
                "The cuts are taken from the rod's plan, since 'built' does not record them. Measure: what is cut off cannot be put back.");
        }

        if (made.AsMade?.Solution is { } solution)
        {
            AddCut("to be cut now", solution.InnerCut?.Recommended, solution.OuterCut?.Recommended);
            _page.Row("thread showing then", solution.Outer is { } outer
                ? $"{Length(solution.Inner.Showing)} inner, {Length(outer.Showing)} outer"
                : Length(solution.Inner.Showing));
            _page.Sentence("The limits hold over the adjustment that the job asks for. Put the length into the job and plan it before cutting.");
        }
        else if (made.AsMade is { } refused)
        {
            foreach (BindingLimit limit in refused.Binding)
            {
                _page.Point($"{Names.Of(limit.Limit, limit.End)}: missed by {Length(limit.MissedBy)}");
            }

            _page.Sentence(made.NewParts.Verdict == Verdict.NotBuildable
                ? "New, uncut parts of the same kind do not make it either: plan the length to see what would."
                : "New, uncut parts of the same kind make it: what is cut off cannot be put back.");
        }
    }

    private void AddCut(string label, Length? inner, Length? outer)
    {
        string[] cuts =
        [
            .. new[] { (inner, "inner end"), (outer, "outer end") }
                .Where(cut => cut.Item1 is { } known && known.Millimeters > 0)
                .Select(cut => $"{Length(cut.Item1!.Value)} off the {cut.Item2}"),
        ];
        _page.Row(label, cuts.Length == 0 ? "nothing" : string.Join(", ", cuts));
    }

    private void AddDrawing(BumpFindings findings, BumpAdvice? then)
    {
        BumpSheetFindings newest = findings.Newest;
        IReadOnlyList<BumpPoint>? predicted = then is { Rounded.IsNone: false } ? then.RoundedPredicted : null;
        _page.Heading("Toe over travel, at the gauge");
        _page.Drawing(BumpSketch.Lines(newest, predicted, _unit));
        _page.Drawing([BumpSketch.Legend(newest.Fitted.Count > 0, predicted is not null)]);
    }

    private void AddWarnings(BumpSide side)
    {
        string[] points =
        [
            .. BumpSideSentences.Of(side, _unit),
            .. side.Findings?.Warnings.Select(_sentences.Of) ?? [],
        ];
        if (points.Length > 0)
        {
            _page.Heading("Mind, and what was assumed or not checked");
            foreach (string point in points)
            {
                _page.Point(point);
            }
        }
    }
}
