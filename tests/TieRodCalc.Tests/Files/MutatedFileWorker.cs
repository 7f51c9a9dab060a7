using System.Diagnostics;
using System.Globalization;
using System.Text;
using TieRodCalc.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Files;

/// <summary>Reads mutated files one after the other, in a folder of its own, and computes what they are good for.</summary>
internal sealed class MutatedFileWorker
{
    /// <summary>Of one in so many jobs the corners are reviewed.</summary>
    private const int CornerShare = 16;

    private static readonly TimeSpan s_slow = TimeSpan.FromSeconds(0.5);

    private static readonly int s_orders = Enum.GetValues<ChoiceOrder>().Length;

    private readonly MutatedSources _sources;
    private readonly FileMutation _mutation;
    private readonly NumberWalk _walk = new();
    private readonly string _folder;
    private long _startedAt = Stopwatch.GetTimestamp();
    private int _index;

    public MutatedFileWorker(MutatedSources sources, int number) =>
        (_sources, _mutation, _folder) = (sources, new FileMutation(sources), sources.FolderOfThread(number));

    public MutatedFileTally Tally { get; } = new();

    /// <summary>Cases to be timed again, alone.</summary>
    public List<int> SlowOnes { get; } = [];

    /// <summary>How long the last case computed.</summary>
    public TimeSpan LastTime { get; private set; }

    /// <summary>How long the present case runs.</summary>
    public TimeSpan RunsSince => Stopwatch.GetElapsedTime(Volatile.Read(ref _startedAt));

    /// <summary>Reads and computes one case.</summary>
    /// <returns>What is wrong, or null.</returns>
    public string? Run(int index)
    {
        MutatedFile file = Take(index);
        TimeSpan started = ThreadClock.Now;
        long before = GC.GetAllocatedBytesForCurrentThread();
        string? wrong;
        bool refused = false;
        try
        {
            wrong = Outcome(file, out refused);
        }
#pragma warning disable CA1031 // Whatever it is, it is what is looked for.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            wrong = exception.ToString();
        }

        LastTime = ThreadClock.Now - started;
        Tally.Add(file.Kind, refused);
        Tally.Measured(index, GC.GetAllocatedBytesForCurrentThread() - before, LastTime);
        Tally.Numbers = _walk.Numbers;
        if (LastTime > s_slow)
        {
            SlowOnes.Add(index);
        }

        return wrong is null ? null : $"{wrong}\n{Describe()}";
    }

    /// <summary>The present case, to be looked at.</summary>
    public string Describe()
    {
        MutatedFile file = _mutation.Of(_index);
        string what = string.Create(
            CultureInfo.InvariantCulture, $"case {_index}, seed {RandomCounts.Seed}, {file.Kind}, {file.PartName ?? "job"}");
        string job = file.PartName is null ? string.Empty : Encoding.UTF8.GetString(file.Job);
        return $"{what}:\n{Encoding.UTF8.GetString(file.Content)}\n{job}";
    }

    private MutatedFile Take(int index)
    {
        _index = index;
        MutatedFile file = _mutation.Of(index);
        if (file.PartName is { } name)
        {
            File.WriteAllBytes(MutatedSources.PartPath(_folder, name), file.Content);
        }

        Volatile.Write(ref _startedAt, Stopwatch.GetTimestamp());
        return file;
    }

    private string? Outcome(MutatedFile file, out bool refused)
    {
        refused = false;
        if (file.PartName is { } name)
        {
            Reading<PartCatalog> parts = JobReader.ReadParts(MutatedSources.PartPath(_folder, name));
            refused = parts.Value is null;
            if (PlaceFault.Of(parts.Problems, parts.Notes, file.Content, parts.Value is not null) is { } fault)
            {
                return fault;
            }
        }

        using MemoryStream content = new(file.Job);
        Reading<Job> read = JobReader.Read(content, "-", file.PartName is null ? _sources.JobFolder : _folder);
        refused |= read.Value is null;
        if (PlaceFault.Of(read.Problems, read.Notes, file.PartName is null ? file.Content : null, read.Value is not null) is { } wrong)
        {
            return wrong;
        }

        if (read.Value is not { } job)
        {
            return null;
        }

        WholeComputation computed = WholeComputation.Of(job, (ChoiceOrder)(_index % s_orders), corners: _index / 3 % CornerShare == 0);
        Tally.Add(computed);
        return _walk.NotFinite(computed);
    }
}
