using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using TieRodCalc.Cli.Commands;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>A thread or a pair as another program reads it.</summary>
internal static class ThreadJson
{
    /// <summary>In the order in which they are named in words.</summary>
    private static readonly ThreadDifference[] Differences =
        [ThreadDifference.Hand, ThreadDifference.Diameter, ThreadDifference.Pitch, ThreadDifference.Form];

    // Signs such as the apostrophe are written as they are: the output is no part of a page.
    private static readonly ThreadJsonShapes Shapes =
        new(new JsonSerializerOptions(ThreadJsonShapes.Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    /// <summary>The JSON of a report.</summary>
    public static string Of(ThreadReport report)
    {
        ThreadLimits external = report.Question.External;
        ThreadLimits @internal = report.Question.Internal;
        ThreadSentences sentences = new(ThreadSentences.UnitOf(external.Thread));
        ThreadDocument document = new(
            1,
            Member(external),
            Member(@internal),
            JsonNumber.Of(external.Thread.Size.StressArea.SquareMillimeters),
            JsonNumber.Mm(external.Thread.Size.Pitch),
            [JsonNumber.Mm(@internal.Minor.Least!.Value), JsonNumber.Mm(@internal.Minor.Most!.Value)],
            [.. Drills(TapDrills.Of(@internal))],
            Engagement(report),
            Loads(report),
            report.Question.IsPair ? Pair(report) : null,
            [.. report.LookAlikes.Select(LookAlike)],
            [.. report.Warnings.Select(warning => new ThreadWarningJson(Names.Of(warning.Code), sentences.Of(warning)))]);
        return JsonSerializer.Serialize(document, Shapes.ThreadDocument) + "\n";
    }

    private static MemberJson Member(ThreadLimits limits)
    {
        ThreadDesignation thread = limits.Thread;
        return new(
            ThreadText.Format(thread with { Series = thread.SeriesInUse, ToleranceClass = limits.ToleranceClass }),
            limits.ToleranceClass,
            limits.ClassAssumed,
            Span(limits.Major),
            Span(limits.Pitch),
            Span(limits.Minor),
            Names.Of(thread.Hand),
            thread.SeriesInUse is { } series ? Names.Of(series) : null,
            thread.IsSpecial,
            limits.BeyondTables,
            new(
                JsonNumber.Mm(thread.Size.Diameter), JsonNumber.Mm(thread.Size.PitchDiameter), JsonNumber.Mm(thread.Size.MinorDiameter)));
    }

    private static double?[] Span(DiameterLimits limits) => [JsonNumber.Mm(limits.Least), JsonNumber.Mm(limits.Most)];

    private static IEnumerable<DrillJson> Drills(TapDrills drills) =>
        drills.SixtyFourths.Within.Select(drill => new DrillJson(LengthFormat.Fraction(drill), JsonNumber.Mm(drill)))
            .Concat(drills.Tenths.Within.Select(drill =>
                new DrillJson(string.Create(CultureInfo.InvariantCulture, $"{drill.Millimeters:0.0} mm"), JsonNumber.Mm(drill))));

    private static EngagementJson? Engagement(ThreadReport report) => report.Engagement is not { } engagement
        ? null
        : new(
            JsonNumber.Mm(engagement.Rule),
            JsonNumber.Mm(engagement.Strength?.Required),
            JsonNumber.Mm(engagement.Required),
            Names.Of(engagement.GovernedBy),
            JsonNumber.Of(engagement.Strength?.StrengthRatio),
            JsonNumber.Of(report.Dilation),
            JsonNumber.Of(engagement.Strength?.MaleBending),
            JsonNumber.Of(engagement.Strength?.FemaleBending));

    private static LoadsJson? Loads(ThreadReport report) => report.Tensile is not { } tensile
        ? null
        : new(
            report.Loads is null ? null : JsonNumber.Mm(report.Engagement?.Required),
            JsonNumber.Of(tensile.Newtons),
            JsonNumber.Of(report.Loads?.MaleStrip.Newtons),
            JsonNumber.Of(report.Loads?.FemaleStrip.Newtons),
            report.Loads is { } loads ? Names.Of(loads.First) : null);

    private static PairJson Pair(ThreadReport report) => new(
        report.Matches,
        [.. Differences.Where(flag => report.Difference.HasFlag(flag)).Select(Names.Of)],
        Names.Of(report.Fit.Outcome),
        Turns(report.Fit),
        Overlap(report.Fit));

    private static LookAlikeJson LookAlike(LookAlike alike) => new(
        ThreadText.Format(alike.Thread),
        Names.Of(alike.Direction),
        Names.Of(alike.Fit.Outcome),
        Turns(alike.Fit),
        Overlap(alike.Fit));

    private static double?[] Turns(ThreadFit fit) => [JsonNumber.Of(fit.LeastTurns), JsonNumber.Of(fit.MostTurns)];

    private static double[] Overlap(ThreadFit fit) => [JsonNumber.Mm(fit.LeastOverlap), JsonNumber.Mm(fit.MostOverlap)];
}
