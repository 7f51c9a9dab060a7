using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>A random rod with its plan and with where everything of it lies.</summary>
internal sealed record LaidOutRod(RodJob Job, RodPlan Plan, RodLayout Layout)
{
    public RodNumbers Numbers { get; } = Job.Numbers;

    public IEnumerable<JointLayout> Joints => new[] { Layout.Inner, Layout.Outer }.OfType<JointLayout>();

    public static LaidOutRod Of(RodJob job)
    {
        Rod rod = RodJob.Made(job.Parts());
        RodRequest request = job.Rod.ToRequest();
        RodPlan plan = RodPlanner.Plan(rod, request);
        return new LaidOutRod(job, plan, RodLayout.Of(rod, request, plan));
    }

    /// <summary>How far from the ball center of its own end a place is.</summary>
    public double FromBall(JointLayout joint, UnitsNet.Length place) =>
        joint.Side == RodSide.Inner ? place.Millimeters : Layout.Axial.Millimeters - place.Millimeters;

    public override string ToString() => $"{Job}\n  {Job.Rod}";
}

/// <summary>Random rods and spoilt jobs, with and without a sleeve, laid out once for all test classes.</summary>
public sealed class LaidOutRods
{
    private static readonly Lazy<IReadOnlyList<LaidOutRod>> s_all = new(DrawAll);

    internal IReadOnlyList<LaidOutRod> All => s_all.Value;

    internal IEnumerable<LaidOutRod> Made => All.Where(laid => laid.Plan.Solution is not null);

    internal IEnumerable<LaidOutRod> NotMade => All.Where(laid => laid.Plan.Solution is null);

    private static LaidOutRod[] DrawAll() =>
    [
        .. Enumerable.Range(0, Math.Max(200, RandomCounts.Rods / 4))
            .AsParallel()
            .AsOrdered()
            .SelectMany(index => (RodJob[])[new RodJob(RandomRods.Draw(index), default, default, false), RandomJobs.Draw(index)])
            .Select(LaidOutRod.Of),
    ];
}
