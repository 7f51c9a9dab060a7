using System.Diagnostics;
using static TieRodCalc.Cli.Tests.NewRun;

namespace TieRodCalc.Cli.Tests;

/// <summary>The files that the dialog writes: both or none.</summary>
public sealed class NewFileTests : IDisposable
{
    private readonly NewRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void A_file_that_exists_is_refused_at_its_question()
    {
        File.WriteAllText(_run.JobFile, "mine");
        File.WriteAllText(_run.PartFile, "mine");
        CommandLine asked = _run.Answer([.. Left[..^1], "other.yaml", Left[^1], "other-parts.yaml"]);

        Assert.Equal(ExitStatus.Holds, asked.Status);
        Assert.Contains(
            $"Not taken: {_run.JobFile} exists; take another name, or start again with --force\n", asked.Error, StringComparison.Ordinal);
        Assert.Contains($"Not taken: {_run.PartFile} exists;", asked.Error, StringComparison.Ordinal);
        Assert.Equal(["no-27-coupe-parts.yaml", "no-27-coupe.yaml", "other-parts.yaml", "other.yaml"], _run.Files);
        Assert.Equal(("mine", "mine"), (File.ReadAllText(_run.JobFile), File.ReadAllText(_run.PartFile)));

        Assert.Equal(ExitStatus.Holds, _run.Answer(Left, "--force").Status);
        Assert.StartsWith("# ", File.ReadAllText(_run.JobFile), StringComparison.Ordinal);
        Assert.StartsWith("# ", File.ReadAllText(_run.PartFile), StringComparison.Ordinal);
        Assert.Equal(4, _run.Files.Length);
    }

    [Fact]
    public void A_folder_of_that_name_is_refused_also_with_force()
    {
        Directory.CreateDirectory(_run.JobFile);
        CommandLine asked = _run.Answer([.. Left[..^1], "other.yaml", Left[^1]], "--force");
        Assert.Equal(ExitStatus.Holds, asked.Status);
        Assert.Contains($"Not taken: {_run.JobFile} is a folder\n", asked.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_usual_names_are_made_of_the_jobs_name()
    {
        Assert.Equal(ExitStatus.Holds, _run.Answer([.. With(Left, (0, "  No. 27 Coupé!  "))[..^2], "", ""]).Status);
        Assert.Equal(["no-27-coupé-parts.yaml", "no-27-coupé.yaml"], _run.Files);
    }

    [Fact]
    public void A_folder_that_is_not_there_or_takes_no_file_is_said_before_anything_is_asked()
    {
        CommandLine none = CommandLine.RunWith(string.Join('\n', Left), "new", "--folder", Path.Combine(_run.Folder, "none"));
        Assert.Equal((ExitStatus.WrongInput, string.Empty), (none.Status, none.Output));
        Assert.Equal($"tierodcalc: there is no folder {Path.Combine(_run.Folder, "none")}; nothing was asked.\n", none.Error);

        CommandLine closed = CommandLine.RunWith(string.Join('\n', Left), "new", "--folder", "/proc");
        Assert.Equal((ExitStatus.WrongInput, string.Empty), (closed.Status, closed.Output));
        Assert.StartsWith("tierodcalc: no file can be written into /proc: ", closed.Error, StringComparison.Ordinal);
        Assert.Single(closed.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void Where_the_second_file_cannot_be_placed_the_first_is_taken_back()
    {
        string first = Path.Combine(_run.Folder, "first");
        string second = Directory.CreateDirectory(Path.Combine(_run.Folder, "second")).FullName;
        Terminal terminal = new(() => Stream.Null, Stream.Null, Stream.Null);

        Assert.False(OutputFile.WriteAll([(first, () => "new"), (second, () => "new")], overwrite: true, terminal));
        Assert.Equal(["second"], _run.Files);

        File.WriteAllText(first, "mine");
        Assert.False(OutputFile.WriteAll([(first, () => "new"), (second, () => "new")], overwrite: true, terminal));
        Assert.Equal(["first", "second"], _run.Files);
        Assert.Equal("mine", File.ReadAllText(first));

        Directory.Delete(second);
        string Hindered()
        {
            // Not there when the place was looked at, there when the file is to be moved to it.
            Directory.CreateDirectory(second);
            return "new";
        }

        Assert.False(OutputFile.WriteAll([(first, () => "new"), (second, Hindered)], overwrite: true, terminal));
        Assert.Equal(["first", "second"], _run.Files);
        Assert.Equal("mine", File.ReadAllText(first));

        Directory.Delete(second);
        File.Delete(first);
        Assert.False(OutputFile.WriteAll([(first, () => "new"), (second, Hindered)], overwrite: true, terminal));
        Assert.Equal(["second"], _run.Files);

        Directory.Delete(second);
        File.WriteAllText(first, "mine");
        Assert.True(OutputFile.WriteAll([(first, () => "new"), (second, () => "new")], overwrite: true, terminal));
        Assert.Equal(["first", "second"], _run.Files);
        Assert.Equal(("new", "new"), (File.ReadAllText(first), File.ReadAllText(second)));
    }

    [Fact]
    public void A_signal_while_files_are_on_their_way_leaves_none()
    {
        string first = Path.Combine(_run.Folder, "first");
        Terminal terminal = new(() => Stream.Null, Stream.Null, Stream.Null);
        string Signaled()
        {
            using Process kill = Process.Start("kill", ["-INT", $"{Environment.ProcessId}"]);
            kill.WaitForExit();
            Thread.Sleep(500);
            return "new";
        }

        Assert.Throws<OperationCanceledException>(() => OutputFile.WriteAll(
            [(first, () => "new"), (Path.Combine(_run.Folder, "second"), Signaled)], overwrite: false, terminal));
        Assert.Empty(_run.Files);
    }

    [Fact]
    public async Task Interrupted_at_a_question_it_ends_with_130_and_leaves_nothing()
    {
        using Process process = CommandProcess.Start(["new", "--folder", _run.Folder], withInput: true);
        await process.StandardInput.WriteAsync(string.Join('\n', Left[..20]) + "\n");
        await process.StandardInput.FlushAsync();
        string? line;
        do
        {
            line = await process.StandardError.ReadLineAsync();
        }
        while (line?.Contains("M18x1.5-6H LH", StringComparison.Ordinal) == false);

        await Signal(process, "-INT");
        Assert.Equal(ExitStatus.Interrupted, process.ExitCode);
        Assert.Empty(_run.Files);
    }

    /// <summary>Whenever it comes, there are both files or none, and nothing beside them.</summary>
    [Theory]
    [InlineData("-INT", 0)]
    [InlineData("-INT", 60)]
    [InlineData("-TERM", 120)]
    [InlineData("-INT", 200)]
    public async Task A_signal_at_the_end_leaves_both_files_or_none(string signal, int milliseconds)
    {
        using Process process = CommandProcess.Start(["new", "--folder", _run.Folder], withInput: true);
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        await process.StandardInput.WriteAsync(string.Join('\n', Left[..^1]) + "\n");
        await process.StandardInput.FlushAsync();
        string? line;
        do
        {
            line = await process.StandardError.ReadLineAsync();
        }
        while (line?.Contains("beside it", StringComparison.Ordinal) == false);

        await process.StandardInput.WriteAsync($"{Left[^1]}\n");
        await process.StandardInput.FlushAsync();
        await Task.Delay(milliseconds);
        Task<string> error = process.StandardError.ReadToEndAsync();
        await Signal(process, signal);
        await output;
        await error;
        Assert.True(_run.Files is [] or ["no-27-coupe-parts.yaml", "no-27-coupe.yaml"], string.Join(", ", _run.Files));
    }

    private static async Task Signal(Process process, string signal)
    {
        if (!process.HasExited)
        {
            using Process kill = Process.Start("kill", [signal, $"{process.Id}"]);
            await kill.WaitForExitAsync();
        }

        await process.WaitForExitAsync();
    }
}
