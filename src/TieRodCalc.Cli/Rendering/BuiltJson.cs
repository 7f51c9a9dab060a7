using System.Text.Json;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Rendering;

/// <summary>A check of made-up rods as another program reads it.</summary>
internal static class BuiltJson
{
    /// <summary>The JSON of a job's made-up rods.</summary>
    public static string Of(Job job, IReadOnlyList<(JobRod Rod, BuiltRod Built)> checks, IReadOnlyList<Problem> notes)
    {
        BuiltSentences sentences = new(job.Units);
        BuiltDocument document = new(
            1,
            job.Name,
            [
                .. checks.Select(check => Rod(
                    check.Rod, check.Built, sentences, new PlanSentences(job.Units, check.Rod.Rod!.Parts.OneJoint))),
            ],
            NoteJson.Of(notes));
        return JsonSerializer.Serialize(document, PlanJson.Shapes.BuiltDocument) + "\n";
    }

    private static BuiltRodJson Rod(JobRod rod, BuiltRod built, BuiltSentences sentences, PlanSentences warnings) => new(
        rod.Name,
        Names.Of(built.Verdict),
        Names.Of(built.Locking),
        new BuiltLengthJson(JsonNumber.Mm(built.Present), JsonNumber.Mm(rod.Request!.Target)),
        new BuiltJointsJson(Joint(built.Inner), built.Outer is { } outer ? Joint(outer) : null),
        built is { Shorter: { } shorter, Longer: { } longer }
            ? new AdjustJson(
                JsonNumber.Mm(shorter.Length),
                JsonNumber.Mm(longer.Length),
                JsonNumber.Of(shorter.Turns),
                JsonNumber.Of(longer.Turns),
                EndsAtJson.Of(shorter),
                EndsAtJson.Of(longer))
            : null,
        [
            .. built.Contradictions.Select(one => new ContradictionJson(
                one.End is { } end ? Names.Of(end) : null, sentences.Of(one), JsonNumber.Mm(one.MissedBy))),
        ],
        [.. built.Binding.Select(BindingJson.Of)],
        SpareJson.Of(built.Spare),
        [
            .. built.Warnings.Select(warning => PlanJson.Warning(warning, warnings)),
            .. BuiltSentences.Missing(built).Select(missing => new WarningJson(
                missing.Code, missing.End is { } end ? Names.Of(end) : null, missing.Text)),
        ]);

    private static BuiltJointJson Joint(BuiltJoint joint) => new(
        JsonNumber.Mm(joint.Insertion),
        Span(joint.InsertionSpan),
        JsonNumber.Mm(joint.Showing),
        JsonNumber.Mm(joint.Cut),
        JsonNumber.Mm(joint.Engaged),
        Span(joint.EngagedSpan),
        JsonNumber.Mm(joint.EngagedLeast),
        JsonNumber.Mm(joint.Required.Required),
        Names.Of(joint.Required.GovernedBy),
        JsonNumber.Mm(joint.NutRoom),
        JsonNumber.Mm(joint.NutRoomLeast));

    private static double[]? Span(LengthSpan? span) =>
        span is null ? null : [JsonNumber.Mm(span.Shortest), JsonNumber.Mm(span.Longest)];
}

internal sealed record BuiltDocument(
    int Tierodcalc, string? Job, IReadOnlyList<BuiltRodJson> Rods, IReadOnlyList<NoteJson> Notes);

internal sealed record BuiltRodJson(
    string Name,
    string Verdict,
    string Locked,
    BuiltLengthJson Length,
    BuiltJointsJson Joints,
    AdjustJson? Adjust,
    IReadOnlyList<ContradictionJson> Contradictions,
    IReadOnlyList<BindingJson> Binding,
    SpareJson? Spare,
    IReadOnlyList<WarningJson> Warnings);

internal sealed record BuiltLengthJson(double? PresentMm, double TargetMm);

internal sealed record BuiltJointsJson(BuiltJointJson Inner, BuiltJointJson? Outer);

internal sealed record BuiltJointJson(
    double? InsertionMm,
    double[]? InsertionSpanMm,
    double? ShowingMm,
    double? CutMm,
    double? EngagedMm,
    double[]? EngagedSpanMm,
    double? EngagedLeastMm,
    double RequiredMm,
    string GovernedBy,
    double? NutRoomMm,
    double? NutRoomLeastMm);

internal sealed record ContradictionJson(string? End, string Text, double MissedByMm);
