using TieRodCalc.Planning;
using TieRodCalc.Rods;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// Single changes that make random failing jobs buildable, held against a reference that is written from the definitions of the limits.
/// </summary>
public class RemedyTests(FailingJobs jobs, ITestOutputHelper output) : IClassFixture<FailingJobs>
{
    /// <summary>To how much two sizes must agree; the comparison constant may count at several limits.</summary>
    private const double Tolerance = 1e-5;

    /// <summary>A limit may be missed by this, once for each that a contradiction comes from.</summary>
    private const double Missed = 5e-6;

    /// <summary>A hair less does not do.</summary>
    private const double Hair = 1e-4;

    [Fact]
    public void Remedies_are_found_without_a_fault()
    {
        Findings findings = new();
        foreach (FailingJob failing in jobs.All)
        {
            findings.That(failing.Job.Rod, $"{failing}: {failing.Fault}", failing.Fault is null);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Every_remedy_makes_the_job_buildable()
    {
        Findings findings = new();
        foreach ((FailingJob failing, Remedy remedy) in jobs.Singles.Concat(jobs.Pairs))
        {
            string what = $"{failing}: {string.Join(", ", remedy.Changes)}";
            RodPlan plan = ChangedJob.Plan(failing.Job, remedy.Changes);
            findings.That(failing.Job.Rod, $"{what} {plan.Verdict}", plan.Verdict != Verdict.NotBuildable);
            findings.That(failing.Job.Rod, $"{what} is {plan.Verdict}, not {remedy.Plan.Verdict}", plan.Verdict == remedy.Plan.Verdict);
            RodPlan again = RodPlanner.Plan(remedy.Rod, remedy.Request);
            findings.That(failing.Job.Rod, $"{what} is {again.Verdict} of its own parts", again.Verdict == plan.Verdict);
            double margin = LeastSize.Margin(failing.Changed(remedy));
            findings.That(failing.Job.Rod, $"{what} leaves {margin}", margin >= -Missed);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_hair_less_does_not_make_it_buildable()
    {
        Findings findings = new();
        foreach ((FailingJob failing, Remedy remedy) in jobs.Singles.Where(one => !one.Remedy.LeavesOutNut))
        {
            RodChange change = remedy.Changes[0];
            if (change.By.Millimeters > Hair)
            {
                double margin = LeastSize.Margin(failing.Changed(remedy, Hair));
                findings.That(failing.Job.Rod, $"{failing}: {change}, a hair less leaves {margin}", margin < 0);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Nothing_that_alone_makes_it_buildable_is_missed_and_sizes_agree()
    {
        Findings findings = new();
        foreach (FailingJob failing in jobs.All.Where(failing => failing.Fault is null))
        {
            Dictionary<(ChangeKind, RodSide?), RodChange> offered = failing.Remedies
                .Where(remedy => remedy.Changes.Count == 1)
                .Select(remedy => remedy.Changes[0])
                .ToDictionary(change => (change.Kind, change.End));
            foreach (((ChangeKind Kind, RodSide? End) change, double size) in failing.Singles)
            {
                if (offered.TryGetValue(change, out RodChange? found))
                {
                    findings.Near(failing.Job.Rod, $"{failing}: {change}", size, found.By, Tolerance);
                }
                else
                {
                    findings.Add(failing.Job.Rod, $"{failing}: {change} by {size} is not offered");
                }
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Each_change_of_size_says_what_its_dimension_becomes()
    {
        Findings findings = new();
        foreach ((FailingJob failing, Remedy remedy) in jobs.Singles.Concat(jobs.Pairs))
        {
            foreach (RodChange change in remedy.Changes)
            {
                double becomes = ChangedJob.Becomes(failing, change);
                findings.Near(failing.Job.Rod, $"{failing}: {change}", becomes, change.To, Tolerance);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void The_limit_that_binds_is_what_keeps_a_smaller_change_from_being_enough()
    {
        // Where several limits bind together, taking one of them away does not help, so not all can be held to this.
        const double Share = 0.9;
        (int alone, int all) = (0, 0);
        Findings findings = new();
        foreach ((FailingJob failing, Remedy remedy) in jobs.Singles.Where(one => !one.Remedy.LeavesOutNut))
        {
            if (remedy.Binding is not { } binding)
            {
                findings.That(failing.Job.Rod, $"{failing}: nothing binds {remedy.Changes[0]}", !failing.Numbers.Adjusts);
                continue;
            }

            RodNumbers less = failing.Changed(remedy, Math.Min(Hair, remedy.Changes[0].By.Millimeters / 2));
            List<Row> rows = LimitRows.Of(less, (limit, end) => limit == binding.Limit && end == binding.End);
            all++;
            alone += Elimination.Margin(Elimination.WithoutRod(rows)) >= -Missed ? 1 : 0;
        }

        output.WriteLine($"{alone} of {all} limits that bind do so alone");
        findings.AssertNone();
        Assert.True(alone >= Share * all);
    }

    [Fact]
    public void Every_kind_of_change_is_represented()
    {
        Dictionary<ChangeKind, int> singles = Count(jobs.Singles);
        Dictionary<ChangeKind, int> pairs = Count(jobs.Pairs);
        output.WriteLine($"{RandomCounts.Description}\nalone: {string.Join(", ", singles)}\nin pairs: {string.Join(", ", pairs)}");
        int none = jobs.All.Count(failing => failing.Remedies.Count == 0);
        output.WriteLine($"one joint: {jobs.All.Count(failing => failing.Job.OneJoint)}; no remedy at all: {none}");
        Assert.All(Enum.GetValues<ChangeKind>(), kind => Assert.True(singles.ContainsKey(kind) && pairs.ContainsKey(kind), $"{kind}"));

        static Dictionary<ChangeKind, int> Count(IEnumerable<(FailingJob Failing, Remedy Remedy)> found) => found
            .SelectMany(one => one.Remedy.Changes)
            .GroupBy(change => change.Kind)
            .ToDictionary(group => group.Key, group => group.Count());
    }
}
