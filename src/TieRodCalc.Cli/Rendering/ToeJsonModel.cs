using System.Text.Json.Serialization;

namespace TieRodCalc.Cli.Rendering;

// The shape of `toe --json`. Property names become snake case; the unit is part of the name.

internal sealed record ToeDocument(
    int Tierodcalc,
    string? Job,
    string Split,
    IReadOnlyList<ToeSideJson> Sides,
    ToeTotalJson Total,
    IReadOnlyList<ToeWarningJson> Warnings,
    IReadOnlyList<NoteJson> Notes);

internal sealed record ToeSideJson(
    string Side,
    string Rod,
    string Outcome,
    bool Refused,
    double PresentMm,
    double? WantedMm,
    double? ChangeMm,
    string Turned,
    double? Turns,
    double? ExactTurns,
    double StepTurns,
    double? Flats,
    string? Direction,
    string SeenFrom,
    double ToeNowDeg,
    double? ToeWantDeg,
    double? ToeAfterDeg,
    double? ToeAfterAtPlatesMm,
    double? ToeAfterAtTireMm,
    double? LeftOverDeg,
    double? ToePerStepDeg,
    bool? PastALimit,
    ToeAdjustJson? Adjust,
    ToeAdjustJson? AdjustAfter,
    ToeReachableJson? Reachable,
    ToeJointsJson? Joints);

internal sealed record ToeAdjustJson(double ShorterTurns, double LongerTurns, EndsAtJson? ShorterEndsAt, EndsAtJson? LongerEndsAt);

internal sealed record ToeReachableJson(string Limit, string? End, double Turns, double? Flats, double? ToeDeg);

internal sealed record ToeJointsJson(ToeJointJson? Inner, ToeJointJson? Outer);

internal sealed record ToeJointJson(
    double ShowingNowMm, double ShowingMm, double EngagedMm, double RequiredMm, double NutRoomMm, string? NutLoosens);

internal sealed record ToeTotalJson(
    double? NowMm,
    double? WantMm,
    double? AfterMm,
    double? ReachableMm,
    double NowDeg,
    double WantDeg,
    double? AfterDeg,
    string? MeasuredAt,
    double? WidthMm);

internal sealed record ToeWarningJson(string Code, string? Side, string? End, string Text);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, WriteIndented = true)]
[JsonSerializable(typeof(ToeDocument))]
internal sealed partial class ToeJsonShapes : JsonSerializerContext;
