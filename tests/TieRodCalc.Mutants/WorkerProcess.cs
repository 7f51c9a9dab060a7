using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace TieRodCalc.Mutants;

/// <summary>A process that tests mutants; another takes its place where it ends or gives no answer.</summary>
/// <param name="given">What it is told beside the number of its mutant.</param>
/// <param name="patience">How long an answer may take; in a process that is new, twice as long.</param>
internal sealed class WorkerProcess(string[] given, TimeSpan patience) : IDisposable
{
    private Process? _process;
    private BlockingCollection<string> _answers = [];
    private HashSet<int> _initializers = [];

    private string Broken => _answers.IsCompleted ? "crashed\t" : "endless\t";

    /// <summary>What comes of a mutant.</summary>
    public string Try(Mutant mutant)
    {
        if (_process is null)
        {
            Start(-1);
        }
        if (!_initializers.Contains(mutant.Id))
        {
            return Ask(mutant);
        }
        using WorkerProcess own = new(given, patience);
        own.Start(mutant.Id);
        return own.Ask(mutant);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_process is not null)
        {
            _process.Kill(true);
            _process.Dispose();
            _process = null;
        }
    }

    private void Start(int mutant)
    {
        ProcessStartInfo start = new(Environment.ProcessPath!, ["work", mutant.ToString(CultureInfo.InvariantCulture), .. given])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DOTNET_GCHeapHardLimit"] = "0x40000000";
        _process = Process.Start(start)!;
        BlockingCollection<string> answers = [];
        _answers = answers;
        _process.OutputDataReceived += (_, line) =>
        {
            if (line.Data is null)
            {
                answers.CompleteAdding();
            }
            else if (line.Data.StartsWith(Worker.Mark, StringComparison.Ordinal))
            {
                answers.Add(line.Data[Worker.Mark.Length..]);
            }
        };
        _process.ErrorDataReceived += (_, _) => { };
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
        if (mutant < 0 && Answer(2 * patience) is { } list)
        {
            _initializers = [.. list.Split(',').Select(id => int.Parse(id, CultureInfo.InvariantCulture))];
        }
    }

    private string Ask(Mutant mutant)
    {
        bool own = _initializers.Count == 0;
        if (own && Answer(2 * patience) is null)
        {
            return Broken;
        }
        _process!.StandardInput.WriteLine($"{mutant.Id}\t{mutant.Place}");
        _process.StandardInput.Flush();
        string? answer = Answer(own ? 2 * patience : patience);
        if (answer is null)
        {
            answer = Broken;
            Dispose();
        }
        return answer;
    }

    private string? Answer(TimeSpan longest) => _answers.TryTake(out string? answer, longest) ? answer : null;
}
