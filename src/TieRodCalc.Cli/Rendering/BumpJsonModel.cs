using System.Text.Json.Serialization;

namespace TieRodCalc.Cli.Rendering;

// The shape of `bump --json`. Property names become snake case; the unit is part of the name.

internal sealed record BumpDocument(int Tierodcalc, string? Job, IReadOnlyList<BumpSideJson> Sides, IReadOnlyList<NoteJson> Notes);

/// <summary>One side. What stands at its top is of the newest sheet and of both changes together.</summary>
internal sealed record BumpSideJson(
    string Side,
    string? Rod,
    double? PresentMm,
    IReadOnlyList<BumpStepJson> Steps,
    double? WorstPerInchAtGaugeMm,
    string? Grade,
    BumpGradeLimitsJson? GradeLimits,
    double? SlopeDegPerMm,
    double? CurvatureDegPerMm2,
    double? OuterRaiseMm,
    double? RodLongerMm,
    double? WantedLengthMm,
    BumpUncertaintyJson? Uncertainty,
    double? PredictedWorstPerInchAtGaugeMm,
    BumpRoundedJson? Rounded,
    BumpAdviceJson? HeightAlone,
    BumpAdviceJson? LengthAlone,
    BumpMeasuredJson? MeasuredEffect,
    string Work,
    BumpRodJson? RodAtWantedLength,
    BumpRodJson? RodAtLengthAlone,
    IReadOnlyList<BumpSheetJson> Sheets,
    BumpCornerJson? Corner,
    IReadOnlyList<BumpWarningJson> Warnings);

internal sealed record BumpStepJson(
    double FromMm, double ToMm, double ToeChangeDeg, double AtGaugeMm, double PerInchAtGaugeMm, double? AtPlatesMm);

internal sealed record BumpGradeLimitsJson(double VeryGoodMm, double FeltMm, double StronglyFeltMm, double SpacingMm);

internal sealed record BumpUncertaintyJson(double OuterRaiseMm, double RodLongerMm);

internal sealed record BumpRoundedJson(
    double OuterRaiseMm, double RodLongerMm, double WantedLengthMm, double PredictedWorstPerInchAtGaugeMm, string Grade);

internal sealed record BumpAdviceJson(
    double OuterRaiseMm,
    double RodLongerMm,
    double WantedLengthMm,
    BumpUncertaintyJson? Uncertainty,
    double PredictedWorstPerInchAtGaugeMm,
    BumpRoundedJson Rounded);

internal sealed record BumpMeasuredJson(double Raising, double Length, int Sheets);

internal sealed record BumpRodJson(
    double LengthMm, string? Verdict, string NewPartsVerdict, bool CutsFromPlan, BumpEndsJson CutAlready, BumpEndsJson? CutNow);

internal sealed record BumpEndsJson(double? InnerMm, double? OuterMm);

internal sealed record BumpSheetJson(
    double SpacingMm,
    double? ResolutionMm,
    IReadOnlyList<BumpPointJson> Points,
    double WorstPerInchAtGaugeMm,
    string Grade,
    double? SlopeDegPerMm,
    double? CurvatureDegPerMm2,
    BumpEndChangeJson Then);

internal sealed record BumpEndChangeJson(double OuterRaiseMm, double RodLongerMm);

internal sealed record BumpPointJson(double TravelMm, double ToeDeg, double AtGaugeMm);

internal sealed record BumpCornerJson(
    double BumpMm,
    double DroopMm,
    BumpCurveJson? Now,
    BumpCurveJson? WithAdvice,
    BumpBestJson? Best,
    IReadOnlyList<SwingJson> Swing);

internal sealed record BumpCurveJson(IReadOnlyList<BumpPointJson> Points, double WorstPerInchAtGaugeMm);

internal sealed record BumpBestJson(
    double OuterRaiseMm, double InnerRaiseMm, double InnerAlongRodMm, double RodLongerMm, BumpCurveJson? Curve);

internal sealed record BumpWarningJson(string Code, string Text);

[JsonSourceGenerationOptions(WriteIndented = true, PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(BumpDocument))]
internal sealed partial class BumpJsonShapes : JsonSerializerContext;
