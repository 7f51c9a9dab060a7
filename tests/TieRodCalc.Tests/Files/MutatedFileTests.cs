using System.Collections.Concurrent;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Files;

/// <summary>
/// Part and job files with bytes, structure or values changed at random: read, and everything computed that they are good for.
/// </summary>
public sealed class MutatedFileTests(ITestOutputHelper output) : IDisposable
{
    private const long MostBytes = 64 * 1024 * 1024;

    private const int MostFailures = 10;

    private static readonly TimeSpan s_mostTime = TimeSpan.FromSeconds(1);

    /// <summary>A case that takes so long, whatever else the machine does, is taken for one without end.</summary>
    private static readonly TimeSpan s_endless = TimeSpan.FromMinutes(2);

    private readonly MutatedSources _sources = new();

    public void Dispose() => _sources.Dispose();

    [Fact]
    public void A_mutated_file_is_refused_at_a_place_or_computes_finite_numbers()
    {
        int count = RandomCounts.MutatedFiles;
        MutatedFileWorker[] workers =
        [
            .. Enumerable.Range(0, Environment.ProcessorCount).Select(number => new MutatedFileWorker(_sources, number)),
        ];
        ConcurrentQueue<string> failures = [];
        int next = -1;
        Thread[] threads = [.. workers.Select(worker => new Thread(() =>
        {
            int index;
            while (failures.Count < MostFailures && (index = Interlocked.Increment(ref next)) < count)
            {
                if (worker.Run(index) is { } failure)
                {
                    failures.Enqueue(failure);
                }
            }
        }) { IsBackground = true })];
        Array.ForEach(threads, thread => thread.Start());
        while (!threads.All(thread => thread.Join(TimeSpan.FromSeconds(1))))
        {
            Assert.All(workers, worker => Assert.False(worker.RunsSince > s_endless, $"without end: {worker.Describe()}"));
        }

        Assert.True(failures.IsEmpty, string.Join("\n\n", failures));
        MutatedFileWorker alone = new(_sources, workers.Length);
        foreach (int slow in workers.SelectMany(worker => worker.SlowOnes))
        {
            // What was compiled on the way counts once.
            TimeSpan least = Enumerable.Range(0, 3).Min(_ =>
            {
                alone.Run(slow);
                return alone.LastTime;
            });
            Assert.True(least < s_mostTime, $"{least}: {alone.Describe()}");
        }

        MutatedFileTally all = MutatedFileTally.Sum(workers.Select(worker => worker.Tally));
        output.WriteLine($"{RandomCounts.Description}\n{all}");
        Assert.Equal(count, all.Refused + all.Valid);
        Assert.True(all.MostBytes < MostBytes, $"{all.MostBytes} bytes: case {all.CaseOfMostBytes}");
        Assert.True(all.Refused > count / 5 && all.Valid > count / 5, all.ToString());
        Assert.All(all.Computed, computed => Assert.True(computed.Value > count / 5_000, all.ToString()));
    }
}
