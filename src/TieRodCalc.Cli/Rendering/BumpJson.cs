using System.Text.Encodings.Web;
using System.Text.Json;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What bump sheets say as another program reads it. Numbers carry their unit in the name and are rounded to 6 decimals.</summary>
internal static class BumpJson
{
    private const double DegreesPerRadian = 180 / Math.PI;

    private static readonly BumpJsonShapes Shapes =
        new(new JsonSerializerOptions(BumpJsonShapes.Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    public static string Of(BumpReport report)
    {
        BumpDocument document = new(
            1, report.Job.Name, [.. report.Sides.Select(side => Side(side, report.Job))], NoteJson.Of(report.Notes));
        return JsonSerializer.Serialize(document, Shapes.BumpDocument) + "\n";
    }

    private static BumpSideJson Side(BumpSide side, Yaml.Job job)
    {
        BumpFindings? findings = side.Findings;
        BumpSheetFindings? newest = findings?.Newest;
        BumpAdvice? both = findings?.Both;
        BumpSentences sentences = new(job.Units);
        return new BumpSideJson(
            Names.Of(side.Side),
            side.Rod?.Name,
            JsonNumber.Mm(side.Present),
            newest is null ? [] : Steps(newest, job.Plates),
            JsonNumber.Mm(newest?.Worst.PerInch.Abs()),
            newest is null ? null : Names.Of(newest.Grade),
            newest is null ? null : Limits(newest),
            InDegrees(newest?.SlopePerMm),
            InDegrees(newest?.CurvaturePerMm2),
            JsonNumber.Mm(both?.Change.OuterRaised),
            JsonNumber.Mm(both?.Change.RodLonger),
            JsonNumber.Mm(both?.WantedLength),
            Uncertainty(both?.Uncertainty),
            JsonNumber.Mm(both?.PredictedWorst),
            both is null ? null : Rounded(both, newest!),
            findings?.HeightAlone is { } height ? Advice(height, newest!) : null,
            findings?.LengthAlone is { } length ? Advice(length, newest!) : null,
            findings?.Measured is { } measured
                ? new BumpMeasuredJson(JsonNumber.Of(measured.Raising), JsonNumber.Of(measured.Length), measured.Sheets)
                : null,
            Names.Of(side.Work),
            Rod(side.ForBoth),
            Rod(side.ForLengthAlone),
            findings is null ? [] : [.. findings.Sheets.Select(Sheet)],
            side.Review is { } review ? Corner(review) : null,
            [
                .. findings?.Warnings.Where(BumpSideSentences.IsTold).Select(warning => new BumpWarningJson(Names.Of(warning.Code), sentences.Of(warning))) ?? [],
                .. BumpSideSentences.Coded(side, job.Units).Select(one => new BumpWarningJson(one.Code, one.Sentence)),
            ]);
    }

    private static List<BumpStepJson> Steps(BumpSheetFindings sheet, Length? plates) =>
    [
        .. sheet.Steps.Select(step => new BumpStepJson(
            JsonNumber.Mm(step.From),
            JsonNumber.Mm(step.To),
            JsonNumber.Of(step.ToeChange.Degrees),
            JsonNumber.Mm(step.AtGauge),
            JsonNumber.Mm(step.PerInch),
            plates is { } width
                ? JsonNumber.Mm(Toe.AtPlates(ToeAt(sheet, step.To), width) - Toe.AtPlates(ToeAt(sheet, step.From), width))
                : null)),
    ];

    private static Angle ToeAt(BumpSheetFindings sheet, Length travel) => sheet.At(travel)!.Value.Toe;

    private static BumpGradeLimitsJson Limits(BumpSheetFindings sheet) => new(
        JsonNumber.Mm(sheet.Limits.VeryGood),
        JsonNumber.Mm(sheet.Limits.Felt),
        JsonNumber.Mm(sheet.Limits.StronglyFelt),
        JsonNumber.Mm(sheet.Sheet.Spacing));

    private static double? InDegrees(double? radians) => JsonNumber.Of(radians * DegreesPerRadian);

    private static BumpUncertaintyJson? Uncertainty(BumpChange? change) =>
        change is { } known ? new(JsonNumber.Mm(known.OuterRaised), JsonNumber.Mm(known.RodLonger)) : null;

    private static BumpRoundedJson Rounded(BumpAdvice advice, BumpSheetFindings sheet) => new(
        JsonNumber.Mm(advice.Rounded.OuterRaised),
        JsonNumber.Mm(advice.Rounded.RodLonger),
        JsonNumber.Mm(advice.RoundedLength),
        JsonNumber.Mm(advice.RoundedWorst),
        Names.Of(sheet.Limits.Of(advice.RoundedWorst)));

    private static BumpAdviceJson Advice(BumpAdvice advice, BumpSheetFindings sheet) => new(
        JsonNumber.Mm(advice.Change.OuterRaised),
        JsonNumber.Mm(advice.Change.RodLonger),
        JsonNumber.Mm(advice.WantedLength),
        Uncertainty(advice.Uncertainty),
        JsonNumber.Mm(advice.PredictedWorst),
        Rounded(advice, sheet));

    private static BumpRodJson? Rod(RodRelength? rod) => rod is null ? null : new(
        JsonNumber.Mm(rod.Wanted),
        rod.AsMade is { } made ? Names.Of(made.Verdict) : null,
        Names.Of(rod.NewParts.Verdict),
        rod.CutsFromPlan,
        new BumpEndsJson(JsonNumber.Mm(rod.InnerCut), JsonNumber.Mm(rod.OuterCut)),
        rod.AsMade?.Solution is { } solution
            ? new BumpEndsJson(JsonNumber.Mm(solution.InnerCut?.Recommended), JsonNumber.Mm(solution.OuterCut?.Recommended))
            : null);

    private static BumpSheetJson Sheet(BumpSheetFindings sheet) => new(
        JsonNumber.Mm(sheet.Sheet.Spacing),
        JsonNumber.Mm(sheet.Sheet.Resolution),
        Points(sheet.Points),
        JsonNumber.Mm(sheet.Worst.PerInch.Abs()),
        Names.Of(sheet.Grade),
        InDegrees(sheet.SlopePerMm),
        InDegrees(sheet.CurvaturePerMm2),
        new BumpEndChangeJson(JsonNumber.Mm(sheet.Sheet.Then.OuterRaised), JsonNumber.Mm(sheet.Sheet.Then.RodLonger)));

    private static List<BumpPointJson> Points(IReadOnlyList<BumpPoint> points) =>
    [
        .. points.Select(point => new BumpPointJson(
            JsonNumber.Mm(point.Travel), JsonNumber.Of(point.Toe.Degrees), JsonNumber.Mm(point.AtGauge))),
    ];

    private static BumpCornerJson Corner(CornerReview review) => new(
        JsonNumber.Mm(review.Range.Bump),
        JsonNumber.Mm(review.Range.Droop),
        Curve(review.Now),
        Curve(review.WithAdvice),
        review is { Best: { } best, BestRodLonger: { } longer }
            ? new BumpBestJson(
                JsonNumber.Mm(best.OuterRaised),
                JsonNumber.Mm(best.InnerRaised),
                JsonNumber.Mm(best.RodLonger),
                JsonNumber.Mm(longer),
                Curve(review.WithBest))
            : null,
        SwingJson.Of(review.Swing));

    private static BumpCurveJson? Curve(CornerCurve? curve) =>
        curve is null ? null : new(Points(curve.Points), JsonNumber.Mm(curve.Worst));
}
