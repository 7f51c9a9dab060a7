using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Tests;

/// <summary>Which finding each number and string of one side in JSON stands for, written out by hand.</summary>
internal sealed class BumpMapping
{
    private static readonly object EmptyList = new();

    private readonly Dictionary<string, object?> _values = new(StringComparer.Ordinal);

    private BumpMapping()
    {
    }

    public static IReadOnlyDictionary<string, object?> Of(BumpSide side, Job job)
    {
        BumpMapping mapping = new();
        BumpFindings? findings = side.Findings;
        mapping.Add("side", Names.Of(side.Side));
        mapping.Add("rod", side.Rod?.Name);
        mapping.Add("present_mm", side.Present?.Millimeters);
        mapping.AddNewest(findings?.Newest, job.Plates);
        mapping.AddBoth(findings);
        mapping.AddAdvice("height_alone", findings?.HeightAlone, findings);
        mapping.AddAdvice("length_alone", findings?.LengthAlone, findings);
        mapping.AddMeasured(findings?.Measured);
        mapping.Add("work", Names.Of(findings?.Work ?? BumpWork.Nothing));
        mapping.AddRod("rod_at_wanted_length", Relength(side, findings?.Both));
        mapping.AddRod("rod_at_length_alone", Relength(side, findings?.LengthAlone));
        mapping.AddSheets(findings);
        mapping.AddCorner(side.Review);
        BumpSentences sentences = new(job.Units);
        mapping.AddWarnings(
        [
            .. findings?.Warnings.Where(warning => warning.Code != BumpWarningCode.WheelNotGiven).Select(warning => (Names.Of(warning.Code), sentences.Of(warning))) ?? [],
            .. BumpSideSentences.Coded(side, job.Units),
        ]);
        return mapping._values;
    }

    /// <summary>The rod is planned anew, not taken from what was planned for the page.</summary>
    private static RodRelength? Relength(BumpSide side, BumpAdvice? advice) =>
        advice is null || advice.Rounded.RodLonger.Value == 0 || side.Rod is not { Rod: { } rod, Request: { } request } ? null
            : RodRelength.Of(rod, request, side.Rod.Built, advice.RoundedLength);

    private void Add(string path, object? value) => _values.Add(path, value);

    private void AddNewest(BumpSheetFindings? newest, Length? plates)
    {
        Add("worst_per_inch_at_gauge_mm", newest is null ? null : Math.Abs(newest.Worst.PerInch.Millimeters));
        Add("grade", newest is null ? null : Names.Of(newest.Grade));
        Add("slope_deg_per_mm", newest?.SlopePerMm * 180 / Math.PI);
        Add("curvature_deg_per_mm2", newest?.CurvaturePerMm2 * 180 / Math.PI);
        if (newest is null)
        {
            Add("steps", EmptyList);
            Add("grade_limits", null);
            return;
        }

        Add("grade_limits.very_good_mm", newest.Limits.VeryGood.Millimeters);
        Add("grade_limits.felt_mm", newest.Limits.Felt.Millimeters);
        Add("grade_limits.strongly_felt_mm", newest.Limits.StronglyFelt.Millimeters);
        Add("grade_limits.spacing_mm", newest.Sheet.Spacing.Millimeters);
        for (int i = 0; i < newest.Steps.Count; i++)
        {
            BumpStep step = newest.Steps[i];
            Add($"steps.{i}.from_mm", step.From.Millimeters);
            Add($"steps.{i}.to_mm", step.To.Millimeters);
            Add($"steps.{i}.toe_change_deg", step.ToeChange.Degrees);
            Add($"steps.{i}.at_gauge_mm", step.AtGauge.Millimeters);
            Add($"steps.{i}.per_inch_at_gauge_mm", step.PerInch.Millimeters);
            Add($"steps.{i}.at_plates_mm", plates is not { } width ? null
                : width.Millimeters * (Math.Sin(newest.Points[i + 1].Toe.Radians) - Math.Sin(newest.Points[i].Toe.Radians)));
        }
    }

    private void AddBoth(BumpFindings? findings)
    {
        BumpAdvice? both = findings?.Both;
        Add("outer_raise_mm", both?.Change.OuterRaised.Millimeters);
        Add("rod_longer_mm", both?.Change.RodLonger.Millimeters);
        Add("wanted_length_mm", both?.WantedLength.Millimeters);
        Add("predicted_worst_per_inch_at_gauge_mm", both?.PredictedWorst.Millimeters);
        AddUncertainty("uncertainty", both);
        AddRounded("rounded", both, findings);
    }

    private void AddAdvice(string path, BumpAdvice? advice, BumpFindings? findings)
    {
        if (advice is null)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.outer_raise_mm", advice.Change.OuterRaised.Millimeters);
        Add($"{path}.rod_longer_mm", advice.Change.RodLonger.Millimeters);
        Add($"{path}.wanted_length_mm", advice.WantedLength.Millimeters);
        Add($"{path}.predicted_worst_per_inch_at_gauge_mm", advice.PredictedWorst.Millimeters);
        AddUncertainty($"{path}.uncertainty", advice);
        AddRounded($"{path}.rounded", advice, findings);
    }

    private void AddUncertainty(string path, BumpAdvice? advice)
    {
        if (advice?.Uncertainty is not { } uncertainty)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.outer_raise_mm", uncertainty.OuterRaised.Millimeters);
        Add($"{path}.rod_longer_mm", uncertainty.RodLonger.Millimeters);
    }

    private void AddRounded(string path, BumpAdvice? advice, BumpFindings? findings)
    {
        if (advice is null)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.outer_raise_mm", advice.Rounded.OuterRaised.Millimeters);
        Add($"{path}.rod_longer_mm", advice.Rounded.RodLonger.Millimeters);
        Add($"{path}.wanted_length_mm", advice.RoundedLength.Millimeters);
        Add($"{path}.predicted_worst_per_inch_at_gauge_mm", advice.RoundedWorst.Millimeters);
        Add($"{path}.grade", Names.Of(findings!.Newest.Limits.Of(advice.RoundedWorst)));
    }

    private void AddMeasured(MeasuredEffect? measured)
    {
        if (measured is null)
        {
            Add("measured_effect", null);
            return;
        }

        Add("measured_effect.raising", measured.Raising);
        Add("measured_effect.length", measured.Length);
        Add("measured_effect.sheets", measured.Sheets);
    }

    private void AddRod(string path, RodRelength? rod)
    {
        if (rod is null)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.length_mm", rod.Wanted.Millimeters);
        Add($"{path}.verdict", rod.AsMade is { } made ? Names.Of(made.Verdict) : null);
        Add($"{path}.new_parts_verdict", Names.Of(rod.NewParts.Verdict));
        Add($"{path}.cuts_from_plan", rod.CutsFromPlan);
        Add($"{path}.cut_already.inner_mm", rod.InnerCut?.Millimeters);
        Add($"{path}.cut_already.outer_mm", rod.OuterCut?.Millimeters);
        if (rod.AsMade?.Solution is not { } solution)
        {
            Add($"{path}.cut_now", null);
            return;
        }

        Add($"{path}.cut_now.inner_mm", solution.InnerCut?.Recommended.Millimeters);
        Add($"{path}.cut_now.outer_mm", solution.OuterCut?.Recommended.Millimeters);
    }

    private void AddSheets(BumpFindings? findings)
    {
        if (findings is null)
        {
            Add("sheets", EmptyList);
            return;
        }

        for (int i = 0; i < findings.Sheets.Count; i++)
        {
            BumpSheetFindings sheet = findings.Sheets[i];
            Add($"sheets.{i}.spacing_mm", sheet.Sheet.Spacing.Millimeters);
            Add($"sheets.{i}.resolution_mm", sheet.Sheet.Resolution?.Millimeters);
            Add($"sheets.{i}.worst_per_inch_at_gauge_mm", Math.Abs(sheet.Worst.PerInch.Millimeters));
            Add($"sheets.{i}.grade", Names.Of(sheet.Grade));
            Add($"sheets.{i}.slope_deg_per_mm", sheet.SlopePerMm * 180 / Math.PI);
            Add($"sheets.{i}.curvature_deg_per_mm2", sheet.CurvaturePerMm2 * 180 / Math.PI);
            Add($"sheets.{i}.then.outer_raise_mm", sheet.Sheet.Then.OuterRaised.Millimeters);
            Add($"sheets.{i}.then.rod_longer_mm", sheet.Sheet.Then.RodLonger.Millimeters);
            AddPoints($"sheets.{i}.points", sheet.Points);
        }
    }

    private void AddPoints(string path, IReadOnlyList<BumpPoint> points)
    {
        for (int i = 0; i < points.Count; i++)
        {
            Add($"{path}.{i}.travel_mm", points[i].Travel.Millimeters);
            Add($"{path}.{i}.toe_deg", points[i].Toe.Degrees);
            Add($"{path}.{i}.at_gauge_mm", points[i].AtGauge.Millimeters);
        }
    }

    private void AddCurve(string path, CornerCurve? curve)
    {
        if (curve is null)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.worst_per_inch_at_gauge_mm", curve.Worst.Millimeters);
        AddPoints($"{path}.points", curve.Points);
    }

    private void AddCorner(CornerReview? review)
    {
        if (review is null)
        {
            Add("corner", null);
            return;
        }

        Add("corner.bump_mm", review.Range.Bump.Millimeters);
        Add("corner.droop_mm", review.Range.Droop.Millimeters);
        AddCurve("corner.now", review.Now);
        AddCurve("corner.with_advice", review.WithAdvice);
        if (review.Best is { } best)
        {
            Add("corner.best.outer_raise_mm", best.OuterRaised.Millimeters);
            Add("corner.best.inner_raise_mm", best.InnerRaised.Millimeters);
            Add("corner.best.inner_along_rod_mm", best.RodLonger.Millimeters);
            Add("corner.best.rod_longer_mm", review.BestRodLonger?.Millimeters);
            AddCurve("corner.best.curve", review.WithBest);
        }
        else
        {
            Add("corner.best", null);
        }

        for (int i = 0; i < review.Swing.Count; i++)
        {
            SwingCheck swing = review.Swing[i];
            Add($"corner.swing.{i}.limit", "swing");
            Add($"corner.swing.{i}.end", Names.Of(swing.End));
            Add($"corner.swing.{i}.allowed_deg", swing.Allowed.Degrees);
            Add($"corner.swing.{i}.most_deg", swing.Most?.Most.Degrees);
            Add($"corner.swing.{i}.at_travel_mm", swing.Most?.Travel.Millimeters);
            Add($"corner.swing.{i}.at_steer_mm", swing.Most?.Steer.Millimeters);
            Add($"corner.swing.{i}.missed_by_deg", swing.MissedBy?.Degrees);
        }

        if (review.Swing.Count == 0)
        {
            Add("corner.swing", EmptyList);
        }
    }

    private void AddWarnings((string Code, string Text)[] warnings)
    {
        for (int i = 0; i < warnings.Length; i++)
        {
            Add($"warnings.{i}.code", warnings[i].Code);
            Add($"warnings.{i}.text", warnings[i].Text);
        }

        if (warnings.Length == 0)
        {
            Add("warnings", EmptyList);
        }
    }
}
