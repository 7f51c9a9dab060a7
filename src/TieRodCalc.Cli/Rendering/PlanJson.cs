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
    private const int Decimals = 6;

    // Signs such as the apostrophe and letters of other languages are written as they are: the output is no part of a page.
    private static readonly JsonShapes Shapes =
        new(new JsonSerializerOptions(JsonShapes.Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    /// <summary>The JSON of a job's plans.</summary>
    public static string Of(Job job, IReadOnlyList<(JobRod Rod, RodPlan Plan)> plans, IReadOnlyList<Problem> notes)
    {
        PlanSentences sentences = new(job.Units);
        PlanDocument document = new(
            1,
            job.Name,
            [.. plans.Select(planned => Rod(planned.Rod.Name, planned.Plan, sentences))],
            [.. notes.Select(note => new NoteJson(note.File, note.Line, note.Column, note.Message))]);
        return JsonSerializer.Serialize(document, Shapes.PlanDocument) + "\n";
    }

    private static RodJson Rod(string name, RodPlan plan, PlanSentences sentences)
    {
        RodSolution? solution = plan.Solution;
        return new RodJson(
            name,
            Names.Of(plan.Verdict),
            solution is null ? null : Names.Of(plan.Locking),
            new LengthJson(
                solution is null ? null : Mm(plan.Target),
                solution is null ? null : Mm(plan.Axial),
                Mm(solution?.Reach.Shortest),
                Mm(solution?.Reach.Longest),
                Mm(plan.UncutReach?.Shortest),
                Mm(plan.UncutReach?.Longest)),
            solution is null ? null : new CutsJson(Cut(solution.InnerCut), Cut(solution.OuterCut)),
            solution is null ? null : new JointsJson(Joint(solution.Inner), Joint(solution.Outer)),
            Mm(solution?.TipGap),
            Adjust(solution),
            solution?.Lengthens is { } lengthens ? Names.Of(lengthens) : null,
            Turn(solution?.PerTurn),
            Turn(solution?.PerHalfTurn),
            Turn(solution?.PerFlat),
            Start(solution?.Start),
            solution is null
                ? null
                : new LeastCutSettingJson(Mm(solution.LeastCutSetting.Inner), Mm(solution.LeastCutSetting.Outer)),
            [.. plan.Binding.Select(Binding)],
            [],
            null,
            [.. plan.Warnings.Select(warning => Warning(warning, sentences))]);
    }

    private static double Rounded(double value) => Math.Round(value, Decimals, MidpointRounding.AwayFromZero) + 0.0;

    private static double? Rounded(double? value) => value is { } known ? Rounded(known) : null;

    private static double Mm(Length length) => Rounded(length.Millimeters);

    private static double? Mm(Length? length) => length is { } known ? Mm(known) : null;

    private static string? Side(RodSide? side) => side is { } known ? Names.Of(known) : null;

    private static CutJson? Cut(CutAdvice? cut) => cut is null
        ? null
        : new(Mm(cut.Least), Mm(cut.Most), Mm(cut.Recommended), Mm(cut.MarkFromCenter), Mm(cut.ThreadLeft));

    private static JointJson Joint(JointPlan joint) => new(
        Mm(joint.Insertion),
        [Mm(joint.InsertionSpan.Shortest), Mm(joint.InsertionSpan.Longest)],
        Mm(joint.Showing),
        Mm(joint.Engaged),
        Mm(joint.EngagedLeast),
        Mm(joint.Required.Required),
        Names.Of(joint.Required.GovernedBy),
        Mm(joint.Required.Rule),
        Mm(joint.Required.Job),
        Mm(joint.Required.Strength?.Required),
        Strength(joint),
        Load(joint.Strength.Load),
        Mm(joint.NutRoom),
        Mm(joint.NutRoomLeast));

    private static StrengthJson? Strength(JointPlan joint) =>
        joint is { Required.Strength: { } required, Strength.Loads: { } loads }
            ? new(
                Rounded(required.StrengthRatio),
                Rounded(required.Dilation),
                Rounded(required.MaleBending),
                Rounded(required.FemaleBending),
                Rounded(loads.Tensile.Newtons),
                Rounded(loads.MaleStrip.Newtons),
                Rounded(loads.FemaleStrip.Newtons),
                Names.Of(loads.First))
            : null;

    private static JointLoadJson? Load(JointLoad? load) => load is null
        ? null
        : new(
            Rounded(load.Load.Newtons),
            Mm(load.Arm),
            Rounded(load.Axial.Megapascals),
            Rounded(load.Bending.Megapascals),
            Rounded(load.BreakingFactor),
            Rounded(load.MaleStripFactor),
            Rounded(load.FemaleStripFactor));

    private static AdjustJson? Adjust(RodSolution? solution) => solution is null
        ? null
        : new(
            Mm(solution.Shorter.Length),
            Mm(solution.Longer.Length),
            Rounded(solution.Shorter.Turns),
            Rounded(solution.Longer.Turns),
            EndsAt(solution.Shorter),
            EndsAt(solution.Longer));

    private static EndsAtJson? EndsAt(Travel travel) =>
        travel.EndsAt is { } limit ? new EndsAtJson(Names.Of(limit), Side(travel.End)) : null;

    private static PerTurnJson? Turn(TurnEffect? effect) => effect is null
        ? null
        : new(Mm(effect.Length), Rounded(effect.Toe?.Degrees), Mm(effect.ToeAtPlates));

    private static StartJson? Start(StartProcedure? start) => start is null
        ? null
        : new(
            Names.Of(start.First),
            Rounded(start.AloneTurns),
            Mm(start.ShowingBeforeSecond),
            Rounded(start.SleeveTurns),
            Rounded(start.EndTurns));

    private static BindingJson Binding(BindingLimit binding) =>
        new(Names.Of(binding.Limit), Side(binding.End), Names.Of(binding.At), Mm(binding.MissedBy));

    private static WarningJson Warning(PlanWarning warning, PlanSentences sentences) =>
        new(Names.Of(warning.Code), Side(warning.End), sentences.Of(warning));
}
