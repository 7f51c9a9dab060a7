using System.Text.Json.Serialization;
using TieRodCalc.Planning;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Rendering;

// The shape of `plan --json`. Property names become snake case; the unit is part of the name.

internal sealed record PlanDocument(
    int Tierodcalc, string? Job, IReadOnlyList<RodJson> Rods, IReadOnlyList<NoteJson> Notes);

internal sealed record NoteJson(string File, int Line, int Column, string Text)
{
    public static NoteJson[] Of(IReadOnlyList<Problem> notes) =>
        [.. notes.Select(note => new NoteJson(note.File, note.Line, note.Column, note.Message))];
}

internal sealed record RodJson(
    string Name,
    string? With,
    string Verdict,
    string? Reason,
    string? Locked,
    LengthJson Length,
    CutsJson? Cut,
    JointsJson? Joints,
    double? TipGapMm,
    AdjustJson? Adjust,
    string? Lengthens,
    PerTurnJson? PerTurn,
    PerTurnJson? PerHalfTurn,
    PerTurnJson? PerFlat,
    StartJson? Start,
    LeastCutSettingJson? LeastCutSetting,
    IReadOnlyList<BindingJson> Binding,
    IReadOnlyList<RemedyJson> Remedies,
    WorstCaseJson? WorstCase,
    SpareJson? Spare,
    IReadOnlyList<SwingJson> Swing,
    IReadOnlyList<WarningJson> Warnings);

internal sealed record LengthJson(
    double? TargetMm, double? AxialMm, double? ShortestMm, double? LongestMm, double? UncutShortestMm, double? UncutLongestMm);

internal sealed record CutsJson(CutJson? Inner, CutJson? Outer);

internal sealed record CutJson(double LeastMm, double MostMm, double RecommendedMm, double MarkFromCenterMm, double ThreadLeftMm);

internal sealed record JointsJson(JointJson? Inner, JointJson? Outer);

internal sealed record JointJson(
    double InsertionMm,
    double[] InsertionSpanMm,
    double ShowingMm,
    double EngagedMm,
    double EngagedLeastMm,
    double RequiredMm,
    string GovernedBy,
    double RuleMm,
    double? JobMm,
    double? StrengthMm,
    StrengthJson? Strength,
    JointLoadJson? Load,
    double NutRoomMm,
    double NutRoomLeastMm);

/// <summary>Strength ratio and factors, and the loads at which the joint gives way at its least engagement.</summary>
internal sealed record StrengthJson(
    double J, double? C1, double? C2, double? C3, double BreaksN, double MaleStripN, double FemaleStripN, string GivesWayFirst);

internal sealed record JointLoadJson(
    double LoadN,
    double ArmMm,
    double AxialMpa,
    double BendingMpa,
    double? BreakingFactor,
    double? MaleStripFactor,
    double? FemaleStripFactor);

internal sealed record AdjustJson(
    double ShorterMm, double LongerMm, double ShorterTurns, double LongerTurns, EndsAtJson? ShorterEndsAt, EndsAtJson? LongerEndsAt);

internal sealed record EndsAtJson(string Limit, string? End)
{
    public static EndsAtJson? Of(Travel travel) => travel.EndsAt is { } limit
        ? new EndsAtJson(Names.Of(limit), travel.End is { } end ? Names.Of(end) : null)
        : null;
}

internal sealed record PerTurnJson(double LengthMm, double? ToeDeg, double? ToeAtPlatesMm);

internal sealed record StartJson(
    string First, double AloneTurns, double ShowingBeforeSecondMm, double? ThenSleeveTurns, double? ThenEndTurns)
{
    public static StartJson Of(StartProcedure start) => new(
        Names.Of(start.First),
        JsonNumber.Of(start.AloneTurns),
        JsonNumber.Mm(start.ShowingBeforeSecond),
        JsonNumber.Of(start.SleeveTurns),
        JsonNumber.Of(start.EndTurns));
}

internal sealed record LeastCutSettingJson(double InnerInsertionMm, double? OuterInsertionMm);

internal sealed record BindingJson(string Limit, string? End, string At, double MissedByMm)
{
    public static BindingJson Of(BindingLimit binding) => new(
        Names.Of(binding.Limit),
        binding.End is { } end ? Names.Of(end) : null,
        Names.Of(binding.At),
        JsonNumber.Mm(binding.MissedBy));
}

internal sealed record RemedyJson(
    string Id,
    IReadOnlyList<ChangeJson> Changes,
    string Verdict,
    string Locked,
    double SizeMm,
    BindingJson? Binding,
    string Text);

internal sealed record ChangeJson(string Change, string? End, double ByMm, double ToMm);

internal sealed record WorstCaseJson(
    string Verdict,
    bool TolerancesStated,
    double? LeastCutMm,
    double? RecommendedMm,
    double? InnerCutMm,
    double? OuterCutMm,
    bool PlanIsSafe,
    double? SlackMm,
    IReadOnlyList<ToleranceJson> Dimensions);

internal sealed record ToleranceJson(string Dimension, string? End, double PlusMinusMm, double TakesMm, double? NeededPlusMinusMm);

internal sealed record WarningJson(string Code, string? End, string Text);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, WriteIndented = true)]
[JsonSerializable(typeof(PlanDocument))]
[JsonSerializable(typeof(ChoiceDocument))]
[JsonSerializable(typeof(BuiltDocument))]
internal sealed partial class JsonShapes : JsonSerializerContext;
