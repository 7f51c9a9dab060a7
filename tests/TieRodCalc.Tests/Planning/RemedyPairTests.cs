using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Pairs of changes that make random failing jobs buildable where no single change does.</summary>
public class RemedyPairTests(FailingJobs jobs) : IClassFixture<FailingJobs>
{
    private const double Tolerance = 1e-5;
    private const double Hair = 1e-4;

    [Fact]
    public void Pairs_are_offered_only_where_no_single_change_is_enough()
    {
        Findings findings = new();
        foreach (FailingJob failing in jobs.All)
        {
            bool paired = failing.Remedies.Any(remedy => remedy.Changes.Count == 2);
            findings.That(
                failing.Job.Rod,
                $"{failing}: pairs beside {string.Join(", ", failing.Singles)}",
                !paired || (failing.Singles.Count == 0 && failing.Remedies.All(remedy => remedy.Changes.Count == 2)));
        }

        findings.AssertNone();
    }

    [Fact]
    public void Neither_change_of_a_pair_can_be_a_hair_smaller_with_the_other_kept()
    {
        Findings findings = new();
        foreach ((FailingJob failing, Remedy remedy) in jobs.Pairs)
        {
            foreach ((int first, int second) in (ReadOnlySpan<(int, int)>)[(1, 0), (0, 1)])
            {
                RodChange less = remedy.Changes[first == 1 ? 0 : 1];
                if (less.Kind == ChangeKind.NoNut)
                {
                    continue;
                }

                double hair = Math.Min(Hair, less.By.Millimeters / 2);
                double margin = LeastSize.Margin(failing.Changed(remedy, first * hair, second * hair));
                findings.That(
                    failing.Job.Rod,
                    $"{failing}: {string.Join(", ", remedy.Changes)}, {less.Kind} a hair less leaves {margin}",
                    margin < 0);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void No_pair_is_missed_and_each_has_the_least_sum()
    {
        Findings[] found = [.. jobs.All
            .Where(failing => failing is { Fault: null, Singles.Count: 0 })
            .Where(failing => failing.Remedies.All(remedy => remedy.Changes.Count == 2))
            .AsParallel()
            .Select(Compare)];
        Findings findings = new();
        foreach (Findings of in found)
        {
            findings.AddAll(of);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Smaller_ones_come_first_and_nuts_left_out_come_last()
    {
        Findings findings = new();
        foreach (FailingJob failing in jobs.All)
        {
            for (int i = 1; i < failing.Remedies.Count; i++)
            {
                (Remedy before, Remedy after) = (failing.Remedies[i - 1], failing.Remedies[i]);
                findings.That(failing.Job.Rod, $"{failing}: a nut left out before another", !before.LeavesOutNut || after.LeavesOutNut);
                findings.That(
                    failing.Job.Rod,
                    $"{failing}: {before.Size} before {after.Size}",
                    after.Changes.Count == 1 || before.LeavesOutNut != after.LeavesOutNut
                        || before.Size.Millimeters <= after.Size.Millimeters + Tolerance);
            }
        }

        findings.AssertNone();
    }

    private static Findings Compare(FailingJob failing)
    {
        Findings findings = new();
        Dictionary<((ChangeKind, RodSide?), (ChangeKind, RodSide?)), Remedy> offered = failing.Remedies.ToDictionary(
            remedy => ((remedy.Changes[0].Kind, remedy.Changes[0].End), (remedy.Changes[1].Kind, remedy.Changes[1].End)));
        ReferenceChange[] all = [.. failing.Changes.Values];
        for (int i = 0; i < all.Length; i++)
        {
            foreach (ReferenceChange other in all[(i + 1)..])
            {
                ReferenceChange one = all[i];
                if (!one.GoesWith(other) || one.Least(failing.Numbers, other) is not { } least)
                {
                    continue;
                }

                string what = $"{failing}: {one.Kind} {one.End} by {least.One} and {other.Kind} {other.End} by {least.Other}";
                Remedy? found = offered.GetValueOrDefault(((one.Kind, one.End), (other.Kind, other.End)))
                    ?? offered.GetValueOrDefault(((other.Kind, other.End), (one.Kind, one.End)));
                if (found is { } remedy)
                {
                    findings.Near(failing.Job.Rod, what, least.One + least.Other, remedy.Size, Tolerance);
                }
                else
                {
                    findings.Add(failing.Job.Rod, $"{what} are not offered");
                }
            }
        }

        return findings;
    }
}
