using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>A job that cannot be built, and what the library offers to make it so; null where it failed to say.</summary>
internal sealed record FailingJob(RodJob Job, RodPlan Plan)
{
    public RodNumbers Numbers { get; } = Job.Numbers;

    /// <summary>Every change that may be made, by kind and end.</summary>
    public IReadOnlyDictionary<(ChangeKind Kind, RodSide? End), ReferenceChange> Changes { get; } =
        ReferenceChange.All(Job).ToDictionary(change => (change.Kind, change.End));

    /// <summary>What is offered, but for changes that may not be made.</summary>
    public IReadOnlyList<Remedy> Remedies { get; init; } = [];

    /// <summary>What is offered and may not be made.</summary>
    public IReadOnlyList<RodChange> Forbidden { get; init; } = [];

    /// <summary>Why there are no remedies, where the library broke off.</summary>
    public string? Fault { get; init; }

    /// <summary>Every change that alone makes the job buildable, with its least size.</summary>
    public IReadOnlyDictionary<(ChangeKind Kind, RodSide? End), double> Singles { get; init; } =
        new Dictionary<(ChangeKind, RodSide?), double>();

    /// <summary>The changes of the job made, as the library sizes them.</summary>
    public RodNumbers Changed(Remedy remedy, params ReadOnlySpan<double> less)
    {
        RodNumbers rod = Numbers;
        for (int i = 0; i < remedy.Changes.Count; i++)
        {
            RodChange change = remedy.Changes[i];
            rod = Changes[(change.Kind, change.End)].Apply(rod, change.By.Millimeters - (i < less.Length ? less[i] : 0));
        }

        return rod;
    }

    /// <summary>Whether a change is among those that may be made at all.</summary>
    public bool MayBeMade(RodChange change) => Changes.ContainsKey((change.Kind, change.End));

    public override string ToString() => $"{Job}";
}

/// <summary>Random jobs that cannot be built, with their remedies, made once for all test classes.</summary>
public sealed class FailingJobs
{
    private static readonly Lazy<IReadOnlyList<FailingJob>> s_all = new(MakeAll);

    internal IReadOnlyList<FailingJob> All => s_all.Value;

    internal IEnumerable<(FailingJob Failing, Remedy Remedy)> Singles =>
        from failing in All
        from remedy in failing.Remedies
        where remedy.Changes.Count == 1
        select (failing, remedy);

    internal IEnumerable<(FailingJob Failing, Remedy Remedy)> Pairs =>
        from failing in All
        from remedy in failing.Remedies
        where remedy.Changes.Count == 2
        select (failing, remedy);

    /// <summary>Draws on until as many were found as are asked for.</summary>
    private static FailingJob[] MakeAll() =>
    [
        .. Enumerable.Range(0, int.MaxValue)
            .Chunk(Math.Min(1024, 8 * RandomCounts.FailingJobs))
            .SelectMany(indices => indices.AsParallel().AsOrdered().Select(index => Make(RandomJobs.Draw(index))).ToArray())
            .OfType<FailingJob>()
            .Take(RandomCounts.FailingJobs),
    ];

    private static FailingJob? Make(RodJob job)
    {
        Rod rod = RodJob.Made(job.Parts());
        RodRequest request = job.Rod.ToRequest();
        RodPlan plan = RodPlanner.Plan(rod, request);
        if (plan.Verdict != Verdict.NotBuildable)
        {
            return null;
        }

        FailingJob failing = new(job, plan);
        failing = failing with
        {
            Singles = failing.Changes.Values
                .Select(change => (change, Size: change.Least(failing.Numbers)))
                .Where(found => found.Size is not null)
                .ToDictionary(found => (found.change.Kind, found.change.End), found => found.Size!.Value),
        };
        try
        {
            IReadOnlyList<Remedy> offered = RodRemedies.Of(rod, request);
            return failing with
            {
                Remedies = [.. offered.Where(remedy => remedy.Changes.All(failing.MayBeMade))],
                Forbidden = [.. offered.SelectMany(remedy => remedy.Changes).Where(change => !failing.MayBeMade(change))],
            };
        }
        catch (InvalidOperationException fault)
        {
            return failing with { Fault = fault.Message };
        }
    }
}
