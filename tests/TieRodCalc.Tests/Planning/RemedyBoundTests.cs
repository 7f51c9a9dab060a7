using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>What remedies of random failing jobs never do.</summary>
public class RemedyBoundTests(FailingJobs jobs) : IClassFixture<FailingJobs>
{
    private const double Last = 1e-6;

    private static readonly RodSide[] s_sides = [RodSide.Inner, RodSide.Outer];

    [Fact]
    public void Only_changes_that_may_be_made_are_offered()
    {
        Findings findings = new();
        foreach (FailingJob failing in jobs.All)
        {
            foreach (RodChange change in failing.Forbidden)
            {
                findings.Add(failing.Job.Rod, $"{failing}: {change}");
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_sleeve_is_never_shorter_than_its_threads_its_witness_holes_and_its_clamps()
    {
        Findings findings = new();
        foreach ((FailingJob failing, RodChange change) in Of(ChangeKind.ShorterSleeve))
        {
            RodCase rod = failing.Job.Rod;
            double least = s_sides.Select(rod.Joint).Max(joint => Math.Max(joint.Witness?.Mm ?? 0, joint.Clamp?.Mm ?? 0));
            least = Math.Max(least, rod.Inner.Depth.Mm + rod.Outer.Depth.Mm);
            findings.That(rod, $"{failing}: {change} below {least}", change.To.Millimeters >= least - Last);
        }

        findings.AssertNone();
    }

    [Fact]
    public void An_outer_end_is_never_shorter_than_its_thread_its_witness_hole_and_its_clamp()
    {
        Findings findings = new();
        foreach ((FailingJob failing, RodChange change) in Of(ChangeKind.ShorterOuterEnd))
        {
            JointCase joint = failing.Job.Rod.Inner;
            double least = Math.Max(joint.Depth.Mm, Math.Max(joint.Witness?.Mm ?? 0, joint.Clamp?.Mm ?? 0));
            findings.That(failing.Job.Rod, $"{failing}: {change} below {least}", change.To.Millimeters >= least - Last);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_thread_is_never_chased_further_than_the_shank_allows()
    {
        Findings findings = new();
        foreach ((FailingJob failing, RodChange change) in Of(ChangeKind.Chase))
        {
            double most = (change.End == RodSide.Inner ? failing.Job.InnerRethread : failing.Job.OuterRethread).Mm;
            findings.That(failing.Job.Rod, $"{failing}: {change} of {most}", change.By.Millimeters <= most + Last);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Engagement_is_never_below_its_floor_and_never_lowered_where_a_strength_is_not_known()
    {
        Findings findings = new();
        foreach ((FailingJob failing, RodChange change) in Of(ChangeKind.LessEngagement))
        {
            RodCase rod = failing.Job.Rod;
            JointCase joint = rod.Joint(change.End!.Value);
            double? floor = ReferenceChange.EngagementFloor(rod, joint);
            findings.That(
                rod,
                $"{failing}: {change}, strengths {joint.TensileMpa} and {rod.SleeveTensileMpa}",
                joint.TensileMpa is not null && rod.SleeveTensileMpa is not null);
            findings.That(rod, $"{failing}: {change} below {floor}", change.To.Millimeters >= floor - Last);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_nut_stays_at_a_bent_end_and_where_the_other_joint_is_not_locked_and_its_end_could_turn()
    {
        Findings findings = new();
        foreach ((FailingJob failing, RodChange change) in Of(ChangeKind.NoNut))
        {
            RodJob job = failing.Job;
            RodSide side = change.End!.Value;
            JointCase joint = job.Rod.Joint(side);
            JointCase other = job.Rod.Joint(side == RodSide.Inner ? RodSide.Outer : RodSide.Inner);
            findings.That(job.Rod, $"{failing}: {change} at a bent end", joint.Offset.Mm == 0);
            bool locked = joint.Clamp is not null || (!job.OneJoint && (other.Nut is not null || other.Clamp is not null));
            findings.That(job.Rod, $"{failing}: {change} leaves no lock", locked);
            findings.Near(job.Rod, $"{failing}: {change}", joint.NutMm, change.By, Last);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_plan_without_a_nut_says_that_its_joint_is_not_locked()
    {
        Findings findings = new();
        foreach ((FailingJob failing, Remedy remedy) in jobs.Singles.Concat(jobs.Pairs).Where(one => one.Remedy.LeavesOutNut))
        {
            RodSide side = remedy.Changes.Single(change => change.Kind == ChangeKind.NoNut).End!.Value;
            Locking expected = failing.Job.OneJoint ? Locking.Inner
                : failing.Job.Rod.Joint(side).Clamp is not null ? Locking.Both
                : side == RodSide.Inner ? Locking.Outer
                : Locking.Inner;
            findings.That(failing.Job.Rod, $"{failing}: locked {remedy.Plan.Locking}", expected == remedy.Plan.Locking);
        }

        findings.AssertNone();
    }

    private IEnumerable<(FailingJob Failing, RodChange Change)> Of(ChangeKind kind) =>
        from one in jobs.Singles.Concat(jobs.Pairs)
        from change in one.Remedy.Changes
        where change.Kind == kind
        select (one.Failing, change);
}
