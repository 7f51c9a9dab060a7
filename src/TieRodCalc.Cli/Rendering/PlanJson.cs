using System.Text.Encodings.Web;
using System.Text.Json;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>A plan as another program reads it. Numbers carry their unit in the name and are rounded to 6 decimals.</summary>
internal static class PlanJson
{
    // Signs such as the apostrophe and letters of other languages are written as they are: the output is no part of a page.
    public static JsonShapes Shapes { get; } =
        new(new JsonSerializerOptions(JsonShapes.Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    /// <summary>The JSON of a job's plans.</summary>
    public static string Of(Job job, IReadOnlyList<PlannedRod> plans, IReadOnlyList<Problem> notes)
    {
        PlanDocument document = new(
            1,
            job.Name,
            [.. plans.Select(planned => Rod(planned, job.Units))],
            NoteJson.Of(notes));
        return JsonSerializer.Serialize(document, Shapes.PlanDocument) + "\n";
    }

    private static RodJson Rod(PlannedRod planned, LengthDisplay units)
    {
        PlanSentences sentences = new(units, planned.Rod.Parts.OneJoint);
        RodPlan plan = planned.Plan;
        RodSolution? solution = plan.Solution;
        return new RodJson(
            planned.Name,
            planned.With,
            Names.Of(plan.Verdict),
            solution is null ? RemedySentences.Reason(planned.Rod, plan) : null,
            solution is null ? null : Names.Of(plan.Locking),
            new LengthJson(
                solution is null ? null : JsonNumber.Mm(plan.Target),
                solution is null ? null : JsonNumber.Mm(plan.Axial),
                JsonNumber.Mm(solution?.Reach.Shortest),
                JsonNumber.Mm(solution?.Reach.Longest),
                JsonNumber.Mm(plan.UncutReach?.Shortest),
                JsonNumber.Mm(plan.UncutReach?.Longest)),
            solution is null ? null : new CutsJson(Cut(solution.InnerCut), Cut(solution.OuterCut)),
            solution is null ? null : new JointsJson(Joint(solution.Inner), solution.Outer is { } outer ? Joint(outer) : null),
            JsonNumber.Mm(solution?.TipGap),
            Adjust(solution),
            solution?.Lengthens is { } lengthens ? Names.Of(lengthens) : null,
            Turn(solution?.PerTurn),
            Turn(solution?.PerHalfTurn),
            Turn(solution?.PerFlat),
            solution is null ? null : StartJson.Of(solution.Start),
            solution is null
                ? null
                : new LeastCutSettingJson(JsonNumber.Mm(solution.LeastCutSetting.Inner), JsonNumber.Mm(solution.LeastCutSetting.Outer)),
            [.. plan.Binding.Select(BindingJson.Of)],
            [.. planned.Remedies.Select(remedy => Remedy(remedy, new RemedySentences(units)))],
            solution is null ? null : WorstCase(solution.WorstCase),
            SpareJson.Of(planned.Spare),
            SwingJson.Of(planned.Swing),
            [.. planned.Warnings.Select(warning => Warning(warning, sentences))]);
    }

    private static string? Side(RodSide? side) => side is { } known ? Names.Of(known) : null;

    private static CutJson? Cut(CutAdvice? cut) => cut is null
        ? null
        : new(
            JsonNumber.Mm(cut.Least),
            JsonNumber.Mm(cut.Most),
            JsonNumber.Mm(cut.Recommended),
            JsonNumber.Mm(cut.MarkFromCenter),
            JsonNumber.Mm(cut.ThreadLeft));

    private static JointJson Joint(JointPlan joint) => new(
        JsonNumber.Mm(joint.Insertion),
        [JsonNumber.Mm(joint.InsertionSpan.Shortest), JsonNumber.Mm(joint.InsertionSpan.Longest)],
        JsonNumber.Mm(joint.Showing),
        JsonNumber.Mm(joint.Engaged),
        JsonNumber.Mm(joint.EngagedLeast),
        JsonNumber.Mm(joint.Required.Required),
        Names.Of(joint.Required.GovernedBy),
        JsonNumber.Mm(joint.Required.Rule),
        JsonNumber.Mm(joint.Required.Job),
        JsonNumber.Mm(joint.Required.Strength?.Required),
        Strength(joint),
        Load(joint.Strength.Load),
        JsonNumber.Mm(joint.NutRoom),
        JsonNumber.Mm(joint.NutRoomLeast));

    private static StrengthJson? Strength(JointPlan joint) =>
        joint is { Required.Strength: { } required, Strength.Loads: { } loads }
            ? new(
                JsonNumber.Of(required.StrengthRatio),
                JsonNumber.Of(required.Dilation),
                JsonNumber.Of(required.MaleBending),
                JsonNumber.Of(required.FemaleBending),
                JsonNumber.Of(loads.Tensile.Newtons),
                JsonNumber.Of(loads.MaleStrip.Newtons),
                JsonNumber.Of(loads.FemaleStrip.Newtons),
                Names.Of(loads.First))
            : null;

    private static JointLoadJson? Load(JointLoad? load) => load is null
        ? null
        : new(
            JsonNumber.Of(load.Load.Newtons),
            JsonNumber.Mm(load.Arm),
            JsonNumber.Of(load.Axial.Megapascals),
            JsonNumber.Of(load.Bending.Megapascals),
            JsonNumber.Of(load.BreakingFactor),
            JsonNumber.Of(load.MaleStripFactor),
            JsonNumber.Of(load.FemaleStripFactor));

    private static AdjustJson? Adjust(RodSolution? solution) => solution is null
        ? null
        : new(
            JsonNumber.Mm(solution.Shorter.Length),
            JsonNumber.Mm(solution.Longer.Length),
            JsonNumber.Of(solution.Shorter.Turns),
            JsonNumber.Of(solution.Longer.Turns),
            EndsAtJson.Of(solution.Shorter),
            EndsAtJson.Of(solution.Longer));

    private static PerTurnJson? Turn(TurnEffect? effect) => effect is null
        ? null
        : new(JsonNumber.Mm(effect.Length), JsonNumber.Of(effect.Toe?.Degrees), JsonNumber.Mm(effect.ToeAtPlates));

    private static RemedyJson Remedy(Remedy remedy, RemedySentences sentences) => new(
        Names.Of(remedy),
        [.. remedy.Changes.Select(change =>
            new ChangeJson(Names.Of(change.Kind), Side(change.End), JsonNumber.Mm(change.By), JsonNumber.Mm(change.To)))],
        RemedySentences.Verdict(remedy),
        Names.Of(remedy.Plan.Locking),
        JsonNumber.Mm(remedy.Size),
        remedy.Binding is { } binding ? BindingJson.Of(binding) : null,
        sentences.Of(remedy));

    private static WorstCaseJson WorstCase(WorstCase worst) => new(
        Names.Of(worst.Verdict),
        worst.TolerancesStated,
        JsonNumber.Mm(worst.LeastCut),
        JsonNumber.Mm(worst.InnerCut + worst.OuterCut),
        JsonNumber.Mm(worst.InnerCut),
        JsonNumber.Mm(worst.OuterCut),
        worst.PlanIsSafe,
        JsonNumber.Mm(worst.Slack),
        [.. worst.Dimensions.Select(effect => new ToleranceJson(
            Names.Of(effect.Dimension),
            Side(effect.End),
            JsonNumber.Mm(effect.PlusMinus),
            JsonNumber.Mm(effect.Takes),
            JsonNumber.Mm(effect.Needed)))]);

    public static WarningJson Warning(PlanWarning warning, PlanSentences sentences) =>
        new(Names.Of(warning.Code), Side(warning.End), sentences.Of(warning));
}
