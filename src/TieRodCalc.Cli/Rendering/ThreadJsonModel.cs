using System.Text.Json.Serialization;

namespace TieRodCalc.Cli.Rendering;

// The shape of `thread --json`. Property names become snake case; the unit is part of the name.

internal sealed record ThreadDocument(
    int Tierodcalc,
    MemberJson External,
    MemberJson Internal,
    double StressAreaMm2,
    double PitchMm,
    double[] TapDrillMm,
    IReadOnlyList<DrillJson> TapDrills,
    EngagementJson? Required,
    LoadsJson? Loads,
    PairJson? Pair,
    IReadOnlyList<LookAlikeJson> LookAlikes,
    IReadOnlyList<ThreadWarningJson> Warnings);

internal sealed record MemberJson(
    string Designation,
    string Class,
    bool ClassAssumed,
    double?[] MajorMm,
    double?[] PitchMm,
    double?[] MinorMm,
    string Hand,
    string? Series,
    bool Special,
    bool BeyondTables,
    BasicJson Basic);

internal sealed record BasicJson(double MajorMm, double PitchMm, double MinorMm);

internal sealed record DrillJson(string Drill, double DiameterMm);

internal sealed record EngagementJson(
    double RuleMm, double? StrengthMm, double RequiredMm, string GovernedBy, double? J, double? C1, double? C2, double? C3);

internal sealed record LoadsJson(double? EngagedMm, double TensileN, double? MaleStripN, double? FemaleStripN, string? First);

internal sealed record PairJson(bool Matches, IReadOnlyList<string> Differs, string Outcome, double?[] Turns, double[] OverlapMm);

internal sealed record LookAlikeJson(string Designation, string Direction, string Outcome, double?[] Turns, double[] OverlapMm);

internal sealed record ThreadWarningJson(string Code, string Text);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, WriteIndented = true)]
[JsonSerializable(typeof(ThreadDocument))]
internal sealed partial class ThreadJsonShapes : JsonSerializerContext;
