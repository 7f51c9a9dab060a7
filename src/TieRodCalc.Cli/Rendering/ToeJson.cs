using System.Text.Encodings.Web;
using System.Text.Json;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>A plan of toe as another program reads it. Numbers carry their unit in the name and are rounded to 6 decimals.</summary>
internal static class ToeJson
{
    private static readonly ToeJsonShapes Shapes =
        new(new JsonSerializerOptions(ToeJsonShapes.Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    public static string Of(ToeReport report)
    {
        ToePlan plan = report.Plan;
        ToeDocument document = new(
            1,
            report.Job.Name,
            report.Share switch { ToeShare.LeftOnly => "left only", ToeShare.RightOnly => "right only", _ => "both" },
            [.. plan.Moves.Select((move, index) => Side(report, move, report.RodNames[index]))],
            new ToeTotalJson(
                JsonNumber.Mm(report.Across(plan.Now)),
                JsonNumber.Mm(report.Across(plan.Want)),
                JsonNumber.Mm(report.Across(plan.After)),
                JsonNumber.Mm(report.Across(plan.Reachable)),
                JsonNumber.Of(plan.Now.Total.Degrees),
                JsonNumber.Of(plan.Want.Total.Degrees),
                JsonNumber.Of(plan.After?.Total.Degrees),
                report.Toe.Gauge is { } gauge ? Names.Of(gauge.Place) : null,
                JsonNumber.Mm(report.Toe.Gauge?.Width)),
            Warnings(report),
            NoteJson.Of(report.Notes));
        return JsonSerializer.Serialize(document, Shapes.ToeDocument) + "\n";
    }

    private static ToeSideJson Side(ToeReport report, ToeMove move, string rod) => new(
        report.Wheel(move),
        rod,
        Names.Of(move.Outcome),
        !move.Holds,
        JsonNumber.Mm(move.Present),
        JsonNumber.Mm(move.Wanted),
        JsonNumber.Mm(move.Wanted - move.Present),
        Names.Of(move.Part),
        Count(move.Turns),
        Count(move.ExactTurns),
        JsonNumber.Of(move.Step),
        JsonNumber.Of(move.Flats),
        move.Direction is { } direction ? Names.Of(direction) : null,
        ToeSentences.SeenFrom(move.Part),
        JsonNumber.Of(report.ToeNow(move).Degrees),
        JsonNumber.Of(report.ToeWanted(move)?.Degrees),
        JsonNumber.Of(report.ToeAfter(move)?.Degrees),
        JsonNumber.Mm(report.ToeAfter(move, report.Toe.Plates)),
        JsonNumber.Mm(report.ToeAfter(move, report.Toe.Tire)),
        JsonNumber.Of((report.ToeWanted(move) - report.ToeAfter(move))?.Degrees),
        JsonNumber.Of(move.ToePerStep?.Degrees),
        move.Shorter is null ? null : move.PastALimit,
        move is { Shorter: { } shorter, Longer: { } longer }
            ? Adjust(shorter, longer)
            : null,
        move is { ShorterAfter: { } shorterAfter, LongerAfter: { } longerAfter } ? Adjust(shorterAfter, longerAfter) : null,
        move.Refusal is { } refusal
            ? new ToeReachableJson(
                Names.Of(refusal.Limit),
                End(refusal.End),
                JsonNumber.Of(Math.Abs(refusal.ReachableTurns)),
                JsonNumber.Of(refusal.ReachableFlats),
                JsonNumber.Of((report.OneRod ? report.Plan.Reachable?.Total : refusal.ReachableToe)?.Degrees))
            : null,
        move.Joints.Count == 0 ? null : new ToeJointsJson(Joint(move, RodSide.Inner), Joint(move, RodSide.Outer)));

    private static double? Count(double? turns) => turns is { } known ? JsonNumber.Of(Math.Abs(known)) : null;

    private static ToeAdjustJson Adjust(Travel shorter, Travel longer) =>
        new(JsonNumber.Of(shorter.Turns), JsonNumber.Of(longer.Turns), EndsAtJson.Of(shorter), EndsAtJson.Of(longer));

    private static string? End(RodSide? end) => end is { } known ? Names.Of(known) : null;

    private static ToeJointJson? Joint(ToeMove move, RodSide side) => move.Joints.FirstOrDefault(joint => joint.End == side) is { } joint
        ? new(
            JsonNumber.Mm(joint.ShowingNow),
            JsonNumber.Mm(joint.Showing),
            JsonNumber.Mm(joint.Engaged),
            JsonNumber.Mm(joint.Required),
            JsonNumber.Mm(joint.NutRoom),
            joint.NutLoosens is { } loosens ? Names.Of(loosens) : null)
        : null;

    private static List<ToeWarningJson> Warnings(ToeReport report)
    {
        ToeSentences sentences = new(report.Job.Units);
        PlanSentences planSentences = new(report.Job.Units);
        List<ToeWarningJson> warnings =
        [
            .. report.Plan.Warnings.Select(warning => new ToeWarningJson(
                Names.Of(warning.Code),
                warning.Side is { } side ? Names.Of(side) : null,
                End(warning.End),
                sentences.Of(warning))),
            .. report.Headlines.Select(headline => new ToeWarningJson(
                Names.Of(headline.Warning.Code),
                report.Wheel(headline.Move),
                End(headline.Warning.End),
                planSentences.Of(headline.Warning))),
        ];
        if (report.Toe.Plates is null)
        {
            PlanWarning missing = new(WarningCode.PlatesNotGiven);
            warnings.Add(new ToeWarningJson(Names.Of(missing.Code), null, null, planSentences.Of(missing)));
        }

        return warnings;
    }
}
