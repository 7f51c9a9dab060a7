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
            AddRod(side);
            AddDrawing(findings, side.Advice);
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
            $"{wheel}: {Upper(_sentences.Trend(newest.Points))}: {Upper(Names.Of(newest.Grade))}");
        _page.Row(
            "worst step",
            $"{_sentences.PerInch(newest.Worst.PerInch)} of travel, from {_sentences.Travel(newest.Worst.From)} to "
                + _sentences.Travel(newest.Worst.To));
        _page.Row("grade", _sentences.Of(newest.Limits, newest.Sheet.Spacing));
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
            string zeroed = sheet.Sheet.Zeroed == IndicatorZero.Once ? "zeroed once, at ride height" : "zeroed at each step, outward "
                + "from ride height";
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
        if (findings.Both is null && findings.HeightAlone is null)
        {
            _page.Heading("HEIGHT AND LENGTH CANNOT BE TOLD: see below why");
            return;
        }

        bool far = findings.Warnings.Any(warning => warning.Code == BumpWarningCode.FarChange);
        bool could = new[] { findings.HeightAlone, findings.LengthAlone, findings.Both }.Any(findings.Betters);
        _page.Heading(side.Advice is { } work
            ? $"{(far ? "MORE THAN CAN BE TRUSTED, see below" : "TO DO")}: {_sentences.Task(work.Rounded)}"
            : findings.Newest.Grade == BumpGrade.VeryGood
                ? $"NOTHING NEEDS TO BE CHANGED{(could ? "; what would still better it:" : string.Empty)}"
            : "NO CHANGE THAT THE READINGS CAN TELL BETTERS IT");
        if (side.Advice is { } advice)
        {
            AddAdvice(advice, findings);
        }

        if (!could)
        {
            return;
        }

        AddOther("height alone", side, BumpWork.Height, findings);
        AddOther("length alone", side, BumpWork.Length, findings);
        AddOther("height and length", side, BumpWork.Both, findings);
        if (findings.Measured is { } measured)
        {
            // A change that was not made between two sheets was not measured.
            BumpChange[] made = [.. findings.Sheets.SkipLast(1).Select(sheet => sheet.Sheet.Then)];
            string[] effects =
            [
                .. made.Any(change => change.OuterRaised.Value != 0) ? [$"raising did {Percent(measured.Raising)}"] : Array.Empty<string>(),
                .. made.Any(change => change.RodLonger.Value != 0) ? [$"length did {Percent(measured.Length)}"] : Array.Empty<string>(),
            ];
            _page.Row(
                "as measured",
                $"between the sheets, {string.Join(" and ", effects)} of what is computed; the changes go by that, as far as the sheets tell it "
                    + "better");
        }

        if (side.Advice is { } followed)
        {
            AddHow(followed);
        }
    }

    private void AddAdvice(BumpAdvice advice, BumpFindings findings)
    {
        _page.Row("then, worst", $"{Promise(advice, findings.Newest)}; now {_sentences.PerInch(findings.Newest.Worst.PerInch)}");
        if (advice.Rounded.OuterRaised.Value != 0)
        {
            _page.Row("outer joint", $"exactly {_sentences.Height(advice)}");
        }

        if (advice.Rounded.RodLonger.Value != 0)
        {
            _page.Row("rod", $"exactly {_sentences.Longer(advice)}: {Length(advice.WantedLength)} center to center");
        }

        if (advice.Rounded.RodLonger.Value != 0)
        {
            bool away = advice.Rounded.RodLonger > UnitsNet.Length.Zero;
            _page.Row(
                "inner joint",
                $"moves {Length(advice.Rounded.RodLonger.Abs())} along the rod, {(away ? "away from" : "toward")} the wheel, so that "
                    + "the outer "
                    + "joint and the toe stay");
        }
    }

    private void AddHow(BumpAdvice advice)
    {
        if (advice.Rounded.OuterRaised.Value != 0)
        {
            _page.Point(BumpSentences.OrTheInner);
        }

        _page.Point(
            "Then set the toe again, read a second sheet, and write down in 'then' what was changed: the next answer goes by what the "
                + "change "
                + "did. A first correction leaves about a sixth of the toe change, on one corner in ten a third (invented corners).");
    }

    private static string Percent(double part) => string.Create(CultureInfo.InvariantCulture, $"{part * 100:0} percent");

    private string Promise(BumpAdvice advice, BumpSheetFindings newest) =>
        $"{_sentences.PerInch(advice.RoundedWorst)}, {Names.Of(newest.Limits.Of(advice.RoundedWorst))}, is predicted";

    /// <summary>What would be done otherwise, and whether the rod can be made for it.</summary>
    private void AddOther(string label, BumpSide side, BumpWork work, BumpFindings findings)
    {
        if (side.Work == work || (side.Advice is { } chosen && findings.AdviceOf(work)?.Rounded.ChangesTheSameAs(chosen.Rounded) == true))
        {
            return;
        }

        if (findings.AdviceOf(work) is not { } advice || !findings.Betters(advice))
        {
            _page.Row(label, "betters nothing that the readings can tell");
            return;
        }

        RodRelength? rod = work switch { BumpWork.Both => side.ForBoth, BumpWork.Length => side.ForLengthAlone, _ => null };
        string made = rod is null ? string.Empty
            : $"; rod of {Length(rod.Wanted)}: {(rod.AsMade is { } plan ? Names.Of(plan.Verdict) : "not known whether it can be made")}";
        _page.Row(label, $"{_sentences.Task(advice.Rounded)}: {Promise(advice, findings.Newest)}{made}");
    }

    private void AddRod(BumpSide side)
    {
        if (side.Advice is { Rounded.RodLonger.Value: not 0 } advice)
        {
            AddRelength(side, side.ForWork, advice.RoundedLength);
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
        RodParts parts = rod.Rod!.Parts;
        AddCut("cut already", parts, made.InnerCut, made.OuterCut);
        if (made.CutsFromPlan)
        {
            _page.Sentence(
                "The cuts are taken from the rod's plan, since 'built' does not record them. Measure: what is cut off cannot be put back.");
        }

        if (made.AsMade?.Solution is { } solution)
        {
            AddCut(
                "to be cut now",
                parts,
                solution.InnerCut?.Recommended ?? UnitsNet.Length.Zero,
                solution.OuterCut?.Recommended ?? UnitsNet.Length.Zero);
            _page.Row("thread showing then", solution.Outer is { } outer
                ? $"{Length(solution.Inner.Showing)} inner, {Length(outer.Showing)} outer"
                : Length(solution.Inner.Showing));
            _page.Sentence("The limits hold over the adjustment that the job asks for. Put the length into the job and plan it before "
                + "cutting.");
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
        else
        {
            _page.Sentence(
                "The cuts are not in 'built', and the plan of the rod as it is gives none: write what is cut off each end into "
                    + "'built', and ask again.");
        }
    }

    private void AddCut(string label, RodParts parts, Length? inner, Length? outer)
    {
        string[] cuts =
        [
            .. from end in parts.Joints
               where end == RodSide.Inner || parts.Outer is not null
               let cut = end == RodSide.Inner ? inner : outer
               where cut is not { Value: 0 }
               select cut is { } known ? $"{Length(known)} off the {Names.Of(end)} end" : $"NOT KNOWN of the {Names.Of(end)} end",
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
            .. side.Findings?.Warnings.Where(BumpSideSentences.IsTold).Select(_sentences.Of) ?? [],
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
