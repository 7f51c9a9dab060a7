using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>The limits that a plan names as in the way, held against the linear programme with only those limits in it.</summary>
public class BindingLimitsTests(PlannedRods rods) : IClassFixture<PlannedRods>
{
    /// <summary>By how much less than the miss a limit is loosened to see that the miss is not overstated.</summary>
    private const double Hair = 1e-4;

    private const double Tolerance = 1e-6;

    [Fact]
    public void Only_a_rod_that_cannot_be_built_has_limits_in_the_way_and_the_greatest_miss_comes_first()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.All)
        {
            bool byRule = planned.Rod.WantsAdjustment && !planned.Rod.SleeveAdjusts;
            double[] misses = [.. planned.Plan.Binding.Select(binding => binding.MissedBy.Millimeters)];
            findings.That(
                planned.Rod,
                "limits in the way",
                planned.Plan.Verdict == Verdict.NotBuildable ? byRule || misses.Length > 0 : misses.Length == 0);
            findings.That(planned.Rod, "every limit misses", misses.All(miss => miss > 0));
            findings.That(
                planned.Rod, "order", misses.Zip(misses.Skip(1)).All(pair => pair.Second <= pair.First + Millimeters.Negligible));
        }

        findings.AssertNone();
    }

    [Fact]
    public void The_limits_in_the_way_contradict_the_wish_without_any_other()
    {
        Findings findings = new();
        using LinearProgram program = new();
        foreach (PlannedRod planned in NotBuildable())
        {
            program.Load(planned.Rod, row => IsNamedAt(planned, row) ? 0 : double.PositiveInfinity);
            findings.That(planned.Rod, $"named alone: {Named(planned)}", program.LeastLoosening(null) > 0);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Without_the_limits_in_the_way_and_what_they_hide_the_rod_can_be_built()
    {
        Findings findings = new();
        using LinearProgram program = new();
        foreach (PlannedRod planned in NotBuildable())
        {
            program.Load(planned.Rod, row => planned.Plan.Binding.Any(binding => Hides(binding, row)) ? double.PositiveInfinity : 0);
            findings.That(planned.Rod, $"left out: {Named(planned)}", program.LeastLoosening(null) <= Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_miss_is_the_least_change_of_one_limit_that_lifts_the_contradiction()
    {
        Findings findings = new();
        int checkedRods = 0;
        using LinearProgram program = new();
        foreach (PlannedRod planned in NotBuildable())
        {
            BindingLimit[] named = [.. planned.Plan.Binding];
            if (!named.All(binding => Loosened(planned, binding, double.PositiveInfinity, program) <= Tolerance))
            {
                // Several contradictions at once: loosening one limit lifts only one of them.
                continue;
            }

            checkedRods++;
            foreach (BindingLimit binding in named)
            {
                double miss = binding.MissedBy.Millimeters;
                findings.That(planned.Rod, $"{binding} lifts it", Loosened(planned, binding, miss, program) <= Tolerance);
                findings.That(
                    planned.Rod, $"{binding} is the least", miss < Hair || Loosened(planned, binding, miss - Hair, program) > 0);
            }
        }

        findings.AssertNone();
        Assert.True(checkedRods > RandomCounts.Rods / 10, $"only {checkedRods} rods with a single contradiction");
    }

    private IEnumerable<PlannedRod> NotBuildable() => rods.All.Where(
        planned => planned.Plan.Verdict == Verdict.NotBuildable && !(planned.Rod.WantsAdjustment && !planned.Rod.SleeveAdjusts));

    /// <summary>How far the named limits alone are from holding, one of them loosened by an amount.</summary>
    private static double Loosened(PlannedRod planned, BindingLimit one, double by, LinearProgram program)
    {
        program.Load(planned.Rod, row => !IsNamed(planned, row) ? double.PositiveInfinity : Covers(one, row) ? by : 0);
        return program.LeastLoosening(null);
    }

    private static bool IsNamed(PlannedRod planned, LimitRow row) => planned.Plan.Binding.Any(binding => Covers(binding, row));

    private static bool IsNamedAt(PlannedRod planned, LimitRow row) => planned.Plan.Binding.Any(
        binding => Covers(binding, row) && (binding.At == AdjustmentPoint.Any || binding.At == row.At || row.Limit == Limit.Cut));

    /// <summary>A limit of an end is one limit at all lengths: it misses most where the plan says, and changes everywhere alike.</summary>
    private static bool Covers(BindingLimit binding, LimitRow row) => binding.Limit == row.Limit && binding.End == row.End;

    /// <summary>Of the limits that hold one end the same way, a plan names the one that misses most.</summary>
    private static bool Hides(BindingLimit binding, LimitRow row) => binding.End == row.End && Way(binding.Limit) == Way(row.Limit);

    private static string Way(Limit limit) => limit switch
    {
        Limit.Engagement or Limit.Witness or Limit.Clamp => "far enough in",
        Limit.NutRoom or Limit.ClosedBore or Limit.FarThread => "not too far in",
        _ => limit.ToString(),
    };

    private static string Named(PlannedRod planned) => string.Join("; ", planned.Plan.Binding);
}
