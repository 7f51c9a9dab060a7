using System.Globalization;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>A check of made-up rods as a person reads it.</summary>
internal sealed class BuiltText
{
    private readonly Page _page = new();
    private readonly LengthDisplay _unit;
    private readonly BuiltSentences _sentences;

    private BuiltText(LengthDisplay unit)
    {
        _unit = unit;
        _sentences = new(unit);
    }

    /// <summary>The text of a job's made-up rods.</summary>
    public static string Of(Job job, IReadOnlyList<(JobRod Rod, BuiltRod Built)> checks, IReadOnlyList<Problem> notes)
    {
        BuiltText text = new(job.Units);
        if (job.Name is { } name)
        {
            text._page.Sentence(name, indent: 0);
        }

        foreach ((JobRod rod, BuiltRod built) in checks)
        {
            text.Add(rod, built);
        }

        PageEnd.Add(text._page, notes);
        return text._page.ToString();
    }

    private static string Verdict(BuiltRod built) => built.Verdict switch
    {
        Planning.Verdict.Buildable => "ALL LIMITS HOLD",
        Planning.Verdict.NotBuildable when built.Binding.All(limit => limit.At != AdjustmentPoint.Present) =>
            "HOLDS AS IT STANDS, NOT OVER THE WANTED ADJUSTMENT",
        Planning.Verdict.NotBuildable => "PAST A LIMIT: DO NOT DRIVE IT",
        _ => "NOT CHECKED",
    };

    private string Both(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Both(length, _unit, rounding));

    private string Known(Length? length) => length is { } known ? Both(known) : "not known";

    private void Add(JobRod rod, BuiltRod built)
    {
        RodParts parts = rod.Rod!.Parts;
        _page.Heading($"ROD {rod.Name}, AS BUILT: {Verdict(built)}{(built.Locking == Locking.None ? ", NOTHING LOCKS IT" : string.Empty)}");
        PlanSentences limits = new(_unit, parts.OneJoint);
        foreach (PlanWarning warning in built.Warnings.Where(PlanText.IsHeadline))
        {
            _page.Sentence(limits.Of(warning));
        }

        foreach (Contradiction contradiction in built.Contradictions)
        {
            _page.Point($"The measurements contradict each other. {_sentences.Of(contradiction)}");
        }

        foreach (BindingLimit binding in built.Binding)
        {
            _page.Point(limits.Of(binding));
        }

        if (built is { Verdict: Planning.Verdict.NotBuildable, Binding.Count: 0 })
        {
            _page.Point("Turning the sleeve does not change the length: same hand and same pitch. The wanted adjustment cannot be had.");
        }

        foreach ((_, _, string missing) in BuiltSentences.Missing(built))
        {
            _page.Point(missing);
        }

        _page
            .Row("ball to ball", Known(built.Present))
            .Row("wanted", $"{Both(rod.Request!.Target)}, {Both(rod.Request.Shorter)} shorter, {Both(rod.Request.Longer)} longer");
        AddJoint("inner", parts.InnerNut, built.Inner);
        if (built.Outer is { } outer)
        {
            AddJoint("outer", parts.OuterNut, outer);
        }

        if (built is { Shorter: { } shorter, Longer: { } longer })
        {
            _page.Heading("How far it adjusts from there");
            AddTravel("shorter", shorter);
            AddTravel("longer", longer);
        }

        if (built.Spare is { } spare)
        {
            new SpareText(_page, _unit).Add(spare);
        }

        _page.Heading("Mind, and what was assumed or not checked");
        foreach (IGrouping<PlanWarning, PlanWarning> same in built.Warnings.Where(warning => !PlanText.IsHeadline(warning))
            .GroupBy(warning => warning with { End = null }))
        {
            _page.Point(limits.Of(same.First(), bothEnds: same.Count() > 1));
        }
    }

    private void AddTravel(string way, Travel travel) => _page.Row(
        way,
        $"{Both(travel.Length, LengthRounding.Down)}, "
            + $"{(Math.Floor(travel.Turns * 100 + 1e-4) / 100).ToString("0.00", CultureInfo.InvariantCulture)} turns; "
            + PlanSentences.Of(travel));

    private void AddJoint(string name, JamNut? nut, BuiltJoint joint)
    {
        _page
            .Sentence($"{name} joint")
            .Row("  thread showing", Known(joint.Showing))
            .Row("  cut off", joint.Cut is { } cut && cut <= Length.Zero ? "nothing" : Known(joint.Cut))
            .Row("  inserted", Value(joint.Insertion, joint.InsertionSpan))
            .Row("  engaged", Value(joint.Engaged, joint.EngagedSpan))
            .Row(
                "  engaged, at least",
                (joint.EngagedLeast is { } least ? Both(least, LengthRounding.Down) : "not known")
                    + " over the wanted adjustment; required " + Both(joint.Required.Required, LengthRounding.Up))
            .Row(
                nut is null ? "  thread left outside" : "  left outside the nut",
                joint is { NutRoom: { } room }
                    ? Both(room, LengthRounding.Down)
                        + (joint.NutRoomLeast is { } leastRoom ? $"; at least {Both(leastRoom, LengthRounding.Down)}" : string.Empty)
                    : "not known");
    }

    private string Value(Length? value, LengthSpan? span) => value is { } known
        ? Both(known, LengthRounding.Down) + (span is { Width: var width } && width > Length.Zero
            ? $"; within the tolerances from {Both(span.Shortest, LengthRounding.Down)} to {Both(span.Longest, LengthRounding.Up)}"
            : string.Empty)
        : span is null ? "not known"
        : $"somewhere from {Both(span.Shortest, LengthRounding.Down)} to {Both(span.Longest, LengthRounding.Up)}";
}
