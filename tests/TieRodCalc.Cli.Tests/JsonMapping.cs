using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Tests;

/// <summary>Which property of a plan each number and string of the JSON stands for, written out by hand.</summary>
internal sealed class JsonMapping
{
    private static readonly object EmptyList = new();

    private readonly Dictionary<string, object?> _values = new(StringComparer.Ordinal);

    private JsonMapping()
    {
    }

    /// <summary>Path and value of all leaves of one rod: a number as it is before rounding, a string, null, or an empty list.</summary>
    public static IReadOnlyDictionary<string, object?> Of(JobRod rod, LengthDisplay unit)
    {
        RodPlan plan = RodPlanner.Plan(rod.Rod!, rod.Request!);
        JsonMapping mapping = new();
        mapping.Add("name", rod.Name);
        mapping.Add("with", null);
        mapping.Add("verdict", Names.Of(plan.Verdict));
        mapping.Add("reason", plan.Solution is null ? RemedySentences.Reason(rod.Rod!, plan) : null);
        mapping.Add("length.uncut_shortest_mm", plan.UncutReach?.Shortest.Millimeters);
        mapping.Add("length.uncut_longest_mm", plan.UncutReach?.Longest.Millimeters);
        mapping.AddRemedies(RodRemedies.Of(rod.Rod!, rod.Request!), new RemedySentences(unit));
        mapping.Add("spare", null);
        mapping.Add("swing", EmptyList);
        mapping.AddBinding(plan.Binding);
        mapping.AddWarnings(plan.Warnings, new PlanSentences(unit));
        if (plan.Solution is { } solution)
        {
            mapping.AddSolution(plan, solution);
        }
        else
        {
            foreach (string path in (string[])
                ["locked", "length.target_mm", "length.axial_mm", "length.shortest_mm", "length.longest_mm", "cut", "joints", "tip_gap_mm",
                    "adjust", "lengthens", "per_turn", "per_half_turn", "per_flat", "start", "least_cut_setting", "worst_case"])
            {
                mapping.Add(path, null);
            }
        }

        return mapping._values;
    }

    private void Add(string path, object? value) => _values.Add(path, value);

    private void Add(string path, Length value) => _values.Add(path, value.Millimeters);

    private void AddBinding(IReadOnlyList<BindingLimit> binding)
    {
        for (int i = 0; i < binding.Count; i++)
        {
            Add($"binding.{i}.limit", Names.Of(binding[i].Limit));
            Add($"binding.{i}.end", Name(binding[i].End));
            Add($"binding.{i}.at", Names.Of(binding[i].At));
            Add($"binding.{i}.missed_by_mm", binding[i].MissedBy);
        }

        if (binding.Count == 0)
        {
            Add("binding", EmptyList);
        }
    }

    private void AddWarnings(IReadOnlyList<PlanWarning> warnings, PlanSentences sentences)
    {
        for (int i = 0; i < warnings.Count; i++)
        {
            Add($"warnings.{i}.code", Names.Of(warnings[i].Code));
            Add($"warnings.{i}.end", Name(warnings[i].End));
            Add($"warnings.{i}.text", sentences.Of(warnings[i]));
        }
    }

    private void AddSolution(RodPlan plan, RodSolution solution)
    {
        Add("locked", Names.Of(plan.Locking));
        Add("length.target_mm", plan.Target);
        Add("length.axial_mm", plan.Axial);
        Add("length.shortest_mm", solution.Reach.Shortest);
        Add("length.longest_mm", solution.Reach.Longest);
        AddCut("cut.inner", solution.InnerCut);
        AddCut("cut.outer", solution.OuterCut);
        AddJoint("joints.inner", solution.Inner);
        AddJoint("joints.outer", solution.Outer!);
        Add("tip_gap_mm", solution.TipGap?.Millimeters);
        Add("adjust.shorter_mm", solution.Shorter.Length);
        Add("adjust.longer_mm", solution.Longer.Length);
        Add("adjust.shorter_turns", solution.Shorter.Turns);
        Add("adjust.longer_turns", solution.Longer.Turns);
        AddEnding("adjust.shorter_ends_at", solution.Shorter);
        AddEnding("adjust.longer_ends_at", solution.Longer);
        Add("lengthens", solution.Lengthens is { } direction ? Names.Of(direction) : null);
        AddTurn("per_turn", solution.PerTurn);
        AddTurn("per_half_turn", solution.PerHalfTurn);
        AddTurn("per_flat", solution.PerFlat);
        Add("start.first", Names.Of(solution.Start.First));
        Add("start.alone_turns", solution.Start.AloneTurns);
        Add("start.showing_before_second_mm", solution.Start.ShowingBeforeSecond);
        Add("start.then_sleeve_turns", solution.Start.SleeveTurns);
        Add("start.then_end_turns", solution.Start.EndTurns);
        AddWorstCase(solution.WorstCase);
        Add("least_cut_setting.inner_insertion_mm", solution.LeastCutSetting.Inner);
        Add("least_cut_setting.outer_insertion_mm", solution.LeastCutSetting.Outer?.Millimeters);
    }

    private void AddRemedies(IReadOnlyList<Remedy> remedies, RemedySentences sentences)
    {
        for (int i = 0; i < remedies.Count; i++)
        {
            Remedy remedy = remedies[i];
            string path = $"remedies.{i}";
            Add($"{path}.id", Names.Of(remedy));
            Add($"{path}.verdict", RemedySentences.Verdict(remedy));
            Add($"{path}.locked", Names.Of(remedy.Plan.Locking));
            Add($"{path}.size_mm", remedy.Size);
            Add($"{path}.text", sentences.Of(remedy));
            BindingLimit binding = remedy.Binding!;
            Add($"{path}.binding.limit", Names.Of(binding.Limit));
            Add($"{path}.binding.end", Name(binding.End));
            Add($"{path}.binding.at", Names.Of(binding.At));
            Add($"{path}.binding.missed_by_mm", binding.MissedBy);
            for (int j = 0; j < remedy.Changes.Count; j++)
            {
                RodChange change = remedy.Changes[j];
                Add($"{path}.changes.{j}.change", Names.Of(change.Kind));
                Add($"{path}.changes.{j}.end", Name(change.End));
                Add($"{path}.changes.{j}.by_mm", change.By);
                Add($"{path}.changes.{j}.to_mm", change.To);
            }
        }

        if (remedies.Count == 0)
        {
            Add("remedies", EmptyList);
        }
    }

    private void AddWorstCase(WorstCase worst)
    {
        Add("worst_case.verdict", Names.Of(worst.Verdict));
        Add("worst_case.tolerances_stated", worst.TolerancesStated);
        Add("worst_case.least_cut_mm", worst.LeastCut?.Millimeters);
        Add("worst_case.recommended_mm", (worst.InnerCut + worst.OuterCut)?.Millimeters);
        Add("worst_case.inner_cut_mm", worst.InnerCut?.Millimeters);
        Add("worst_case.outer_cut_mm", worst.OuterCut?.Millimeters);
        Add("worst_case.plan_is_safe", worst.PlanIsSafe);
        Add("worst_case.slack_mm", worst.Slack?.Millimeters);
        for (int i = 0; i < worst.Dimensions.Count; i++)
        {
            ToleranceEffect effect = worst.Dimensions[i];
            Add($"worst_case.dimensions.{i}.dimension", Names.Of(effect.Dimension));
            Add($"worst_case.dimensions.{i}.end", Name(effect.End));
            Add($"worst_case.dimensions.{i}.plus_minus_mm", effect.PlusMinus);
            Add($"worst_case.dimensions.{i}.takes_mm", effect.Takes);
            Add($"worst_case.dimensions.{i}.needed_plus_minus_mm", effect.Needed?.Millimeters);
        }

        if (worst.Dimensions.Count == 0)
        {
            Add("worst_case.dimensions", EmptyList);
        }
    }

    private void AddCut(string path, CutAdvice? cut)
    {
        if (cut is null)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.least_mm", cut.Least);
        Add($"{path}.most_mm", cut.Most);
        Add($"{path}.recommended_mm", cut.Recommended);
        Add($"{path}.mark_from_center_mm", cut.MarkFromCenter);
        Add($"{path}.thread_left_mm", cut.ThreadLeft);
    }

    private void AddJoint(string path, JointPlan joint)
    {
        Add($"{path}.insertion_mm", joint.Insertion);
        Add($"{path}.insertion_span_mm.0", joint.InsertionSpan.Shortest);
        Add($"{path}.insertion_span_mm.1", joint.InsertionSpan.Longest);
        Add($"{path}.showing_mm", joint.Showing);
        Add($"{path}.engaged_mm", joint.Engaged);
        Add($"{path}.engaged_least_mm", joint.EngagedLeast);
        Add($"{path}.required_mm", joint.Required.Required);
        Add($"{path}.governed_by", Names.Of(joint.Required.GovernedBy));
        Add($"{path}.rule_mm", joint.Required.Rule);
        Add($"{path}.job_mm", joint.Required.Job?.Millimeters);
        Add($"{path}.strength_mm", joint.Required.Strength?.Required.Millimeters);
        AddStrength($"{path}.strength", joint);
        AddLoad($"{path}.load", joint.Strength.Load);
        Add($"{path}.nut_room_mm", joint.NutRoom);
        Add($"{path}.nut_room_least_mm", joint.NutRoomLeast);
    }

    private void AddStrength(string path, JointPlan joint)
    {
        if (joint.Required.Strength is not { } strength)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.j", strength.StrengthRatio);
        Add($"{path}.c1", strength.Dilation);
        Add($"{path}.c2", strength.MaleBending);
        Add($"{path}.c3", strength.FemaleBending);
        PairLoads loads = joint.Strength.Loads!;
        Add($"{path}.breaks_n", loads.Tensile.Newtons);
        Add($"{path}.male_strip_n", loads.MaleStrip.Newtons);
        Add($"{path}.female_strip_n", loads.FemaleStrip.Newtons);
        Add($"{path}.gives_way_first", Names.Of(loads.First));
    }

    private void AddLoad(string path, JointLoad? load)
    {
        if (load is null)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.load_n", load.Load.Newtons);
        Add($"{path}.arm_mm", load.Arm);
        Add($"{path}.axial_mpa", load.Axial.Megapascals);
        Add($"{path}.bending_mpa", load.Bending.Megapascals);
        Add($"{path}.breaking_factor", load.BreakingFactor);
        Add($"{path}.male_strip_factor", load.MaleStripFactor);
        Add($"{path}.female_strip_factor", load.FemaleStripFactor);
    }

    private void AddEnding(string path, Travel travel)
    {
        if (travel.EndsAt is not { } limit)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.limit", Names.Of(limit));
        Add($"{path}.end", Name(travel.End));
    }

    private void AddTurn(string path, TurnEffect? effect)
    {
        if (effect is null)
        {
            Add(path, null);
            return;
        }

        Add($"{path}.length_mm", effect.Length);
        Add($"{path}.toe_deg", effect.Toe?.Degrees);
        Add($"{path}.toe_at_plates_mm", effect.ToeAtPlates?.Millimeters);
    }

    private static string? Name(RodSide? side) => side is { } known ? Names.Of(known) : null;
}
