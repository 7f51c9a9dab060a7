using System.Globalization;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// A plan as a person reads it: does it work; what to cut and where to scribe; how to set it; what limits it each way; what
/// a turn does; cautions.
/// </summary>
internal sealed class PlanText
{
    private readonly Page _page = new();
    private readonly LengthDisplay _unit;
    private PlanSentences _sentences;
    private StrengthText _strength;

    private PlanText(LengthDisplay unit)
    {
        _unit = unit;
        _sentences = new PlanSentences(unit);
        _strength = new StrengthText(_page, unit, oneJoint: false);
    }

    /// <summary>The text of a job's plans.</summary>
    public static string Of(Job job, IReadOnlyList<PlannedRod> plans, IReadOnlyList<Problem> notes)
    {
        PlanText text = new(job.Units);
        if (job.Name is { } name)
        {
            text._page.Sentence(name, indent: 0);
        }

        foreach (PlannedRod planned in plans)
        {
            text.AddRod(planned);
        }

        PageEnd.Add(text._page, notes);
        return text._page.ToString();
    }

    private string Both(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Both(length, _unit, rounding));

    private string Short(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Decimal(length, _unit, rounding));

    /// <summary>What there is, never shown as more than it is.</summary>
    private string AtMost(Length length) => Both(length, LengthRounding.Down);

    /// <summary>From and to, never shown wider than they are.</summary>
    private string Span(LengthSpan span) => $"{Both(span.Shortest, LengthRounding.Up)} to {Both(span.Longest, LengthRounding.Down)}";

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private void AddRod(PlannedRod planned)
    {
        RodPlan plan = planned.Plan;
        RodParts parts = planned.Rod.Parts;
        _sentences = new PlanSentences(_unit, parts.OneJoint);
        _strength = new StrengthText(_page, _unit, parts.OneJoint);
        _page.Heading($"ROD {planned.Name}: {Names.Of(plan.Verdict).ToUpperInvariant()}"
            + $"{(planned.With is null ? string.Empty : $", WITH {planned.With}")}"
            + planned.But);
        if (planned.WithText is { } changed)
        {
            _page.Sentence($"Changed, by the least that works: {changed}");
        }

        foreach (PlanWarning headline in plan.Warnings.Where(IsHeadline))
        {
            _page.Sentence(_sentences.Of(headline));
        }

        AddWish(planned, parts);
        AddDrawing(planned);
        if (plan.Solution is { } solution)
        {
            new CutText(_page, _unit).Add(parts, solution);
            AddSetting(parts, plan, solution);
            _strength.AddRequired(plan);
            AddLimits(parts.OneJoint, solution);
            AddTurns(planned, solution);
            new FitText(_page, _unit).AddWorstCase(solution.WorstCase);
        }
        else
        {
            _strength.AddRequired(plan);
            new FitText(_page, _unit).AddObstacles(planned);
        }

        if (planned.Spare is { } spare)
        {
            new SpareText(_page, _unit).Add(spare);
        }

        AddWarnings(planned);
    }

    private void AddWish(PlannedRod planned, RodParts parts)
    {
        RodPlan plan = planned.Plan;
        RodRequest request = planned.Request;
        _page.Row("inner end", Described(parts.Inner.Info, parts.Inner.Thread));
        if (parts.Sleeve is { } sleeve)
        {
            _page.Row("sleeve", Described(sleeve.Info, null));
        }

        _page
            .Row("outer end", parts.Socket is { } socket
                ? $"{Described(socket.Info, socket.Socket.Thread)}; carries the internal thread, no sleeve"
                : Described(parts.Outer!.Info, parts.Outer.Thread))
            .Row("wanted length", $"{Both(request.Target)} center to center")
            .Row("wanted adjustment", $"{Short(request.Shorter)} shorter, {Short(request.Longer)} longer");
        if (plan.UncutReach is { } reach)
        {
            _page.Row("reach of uncut parts", Span(reach));
        }

        if (planned.Rod.Offset > Length.Zero)
        {
            _page.Row("axial length", $"{Both(plan.Axial)}, along the thread axis");
        }

        if (StartText.Clocking(parts) is { } clocking)
        {
            _page.Row("clocking", $"{clocking}; hold them so while the nuts are tightened");
        }

        if (planned.Rod.AllLocked)
        {
            _page.Row("locked", parts.OneJoint ? "the joint" : "both joints");
        }

        foreach (SwingCheck swing in planned.Swing)
        {
            _page.Row($"swing, {Names.Of(swing.End)} joint", new BumpSentences(_unit).Of(swing));
        }
    }

    private void AddDrawing(PlannedRod planned)
    {
        RodLayout layout = RodLayout.Of(planned.Rod, planned.Request, planned.Plan);
        IReadOnlyList<Measure> measures = RodMeasures.Of(planned, layout);
        _page.Heading(planned.Plan.Solution is null
            ? $"The rod{PlanSentences.At(layout.At)}, to scale along its axis{(measures.Count > 0 ? ": what is missing" : string.Empty)}"
            : "The rod as it is made, to scale along its axis");
        _page.Drawing(RodSketch.Of(planned, layout, measures));
        _page.Sentence(SketchGrid.Legend);
        _page.Sentence(string.Join("; ", measures
            .OrderBy(measure => measure.Letter, StringComparer.Ordinal)
            .Select(measure => Page.Whole($"{measure.Letter} {Listed(measure)}"))));
    }

    private string Listed(Measure measure) =>
        measure.SizeShown ? $"{measure.Words} {LengthFormat.Decimal(measure.Value, _unit, measure.Rounding)}" : measure.Words;

    private static string Described(PartInfo info, ThreadDesignation? thread) =>
        string.Join("; ", new[] { info.Id, thread is null ? null : ThreadText.Format(thread), info.Name }.OfType<string>());

    private void AddSetting(RodParts parts, RodPlan plan, RodSolution solution)
    {
        _page.Heading("How to set it");
        foreach (string step in new StartText(_unit).Steps(parts, solution))
        {
            _page.Point(step);
        }

        _page.Point(StartText.Guide);
        AddJoint("inner", parts.Inner, parts.InnerNut, solution.Inner);
        if (solution is { Outer: { } outer, TipGap: { } gap })
        {
            AddJoint("outer", parts.Outer!, parts.OuterNut, outer);
            _page.Row("between the tips", Both(gap));
        }

        _page.Row("rod, ball to ball", $"{Both(plan.Target)}");
    }

    private void AddJoint(string name, ThreadedEnd end, JamNut? nut, JointPlan joint)
    {
        _page
            .Sentence($"{name} joint, {ThreadText.Format(end.Thread)}")
            .Row("  thread showing", Both(joint.Showing))
            .Row("  inserted", Both(joint.Insertion) + Free(joint))
            .Row("  engaged", AtMost(joint.Engaged))
            .Row("  engaged, at least", $"{AtMost(joint.EngagedLeast)}; required {Short(joint.Required.Required, LengthRounding.Up)} "
                + $"({StrengthText.Governs(joint.Required)})")
            .Row(nut is null ? "  thread left outside" : "  left outside the nut", $"{AtMost(joint.NutRoom)}; at least "
                + $"{Short(joint.NutRoomLeast, LengthRounding.Down)}");
        if (joint.NutLoosens is { } loosens)
        {
            _page.Row("  nut loosens", $"{Names.Of(loosens)}, seen from the {name} ball toward the thread ({Names.Of(end.Thread.Hand)})");
        }

        if (joint.WitnessProves is { } proven)
        {
            _page.Row("  witness hole", $"covered by full thread, it proves {AtMost(proven)} engaged");
        }

        _strength.AddStrength(joint.Strength);
    }

    /// <summary>Where one joint sets the length, nothing is free.</summary>
    private string Free(JointPlan joint) => joint.InsertionSpan.Width <= Length.Zero
        ? string.Empty
        : $"; may be {Short(joint.InsertionSpan.Shortest, LengthRounding.Up)} to {Short(joint.InsertionSpan.Longest, LengthRounding.Down)}";

    private void AddLimits(bool oneJoint, RodSolution solution)
    {
        _page.Heading($"How far it adjusts from there, by {(oneJoint ? "turning the inner end" : "the sleeve alone")}");
        foreach ((string way, Travel travel) in new[] { ("shorter", solution.Shorter), ("longer", solution.Longer) })
        {
            _page.Row(way, $"{AtMost(travel.Length)}, {Turns(travel)} turns; "
                + $"{PlanSentences.Of(travel)}");
        }

        _page.Row("reach as made", $"{Span(solution.Reach)}, over all settings and starts");
        if (solution.StartStep is { } step)
        {
            string free = Short(solution.Inner.InsertionSpan.Width, LengthRounding.Down);
            _page.Row("other starts", $"the next start moves the inner end {Short(step)}; {free} is free");
        }
    }

    private void AddTurns(PlannedRod planned, RodSolution solution)
    {
        bool oneJoint = planned.Rod.Parts.OneJoint;
        _page.Heading($"What a turn of the {(oneJoint ? "inner end" : "sleeve")} does");
        if (solution is not { PerTurn: { } turn, PerHalfTurn: { } half, Lengthens: { } lengthens })
        {
            _page.Sentence("It does not change the length: same hand and same pitch at both ends.");
            return;
        }

        _page.Sentence($"Turned {Names.Of(lengthens)}, seen from the inner end outward, the {(oneJoint ? "inner end" : "sleeve")} "
            + "lengthens the rod; the other way shortens it.");
        AddTurn("one turn", turn);
        AddTurn("half a turn", half);
        if (solution.PerFlat is { } flat)
        {
            AddTurn("one flat of the hexagon", flat);
        }

        if (turn.Toe is not null)
        {
            string whose = planned.Request.ToeOfBothWheels ? "both wheels together" : "this wheel alone";
            _page.Sentence($"Toe is of {whose}, counted with nothing else moved.");
        }
    }

    private void AddTurn(string label, TurnEffect effect)
    {
        string toe = effect.Toe is { } angle
            ? $"; toe {Number(Math.Abs(angle.Degrees), "0.000")} deg {(angle.Degrees >= 0 ? "in" : "out")}"
            : string.Empty;
        string plates = effect.ToeAtPlates is { } width ? $", {Both(width.Abs())} at the plates" : string.Empty;
        _page.Row(label, $"{Both(effect.Length)}{toe}{plates}");
    }

    private void AddWarnings(PlannedRod planned)
    {
        _page.Heading("Mind, and what was assumed or not checked");
        foreach (string remark in Remarks(planned, _sentences))
        {
            _page.Point(remark);
        }
    }

    /// <summary>The warnings of a plan that are no headlines, in sentences; what holds for both ends alike is said once.</summary>
    public static IEnumerable<string> Remarks(PlannedRod planned, PlanSentences sentences) => planned.Warnings
        .Where(warning => !IsHeadline(warning)
            && !(warning.Code == WarningCode.SleeveCannotAdjust && planned.Plan.Verdict == Verdict.NotBuildable))
        .GroupBy(warning => warning with { End = null })
        .Select(same => sentences.Of(same.First(), bothEnds: same.Count() > 1));

    /// <summary>Turns of a travel, never shown as more than they are.</summary>
    public static string Turns(Travel travel) => Number(Math.Floor(travel.Turns * 100 + 1e-4) / 100, "0.00");

    public static bool IsHeadline(PlanWarning warning) => warning.Code is
        WarningCode.NotLocked or WarningCode.OneJointLocked or WarningCode.GivesWayUnderLoad or WarningCode.LoadNotChecked;
}
