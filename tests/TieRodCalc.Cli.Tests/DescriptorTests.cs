using System.Diagnostics;

namespace TieRodCalc.Cli.Tests;

/// <summary>Standard input, output and error that are closed, full or nowhere; the environment; signals.</summary>
public sealed class DescriptorTests
{
    private const string Usual = "";
    private static readonly string Demo = Repository.Sample("jobs", "car-27.yaml");

    [Theory]
    [InlineData("<&-", 2, "plan", "-")]
    [InlineData("<&-", 2, "check", "-")]
    [InlineData("<&-", 2, "new")]
    [InlineData("<&-", 0, "plan", null)]
    [InlineData(">&-", 2, "plan", null)]
    [InlineData("<&- >&-", 2, "plan", null)]
    [InlineData("<&- >&- 2>&-", 2, "plan", null)]
    [InlineData("2>&-", 0, "plan", null)]
    [InlineData(">&- 2>&-", 2, "plan", "none.yaml")]
    [InlineData("> /dev/full", 2, "plan", null)]
    [InlineData("> /dev/full", 2, "--version")]
    [InlineData("2> /dev/full", 2, "plan", "none.yaml")]
    public void What_is_closed_or_full_ends_with_its_status_and_no_trace(string behind, int status, params string?[] words)
    {
        CommandLine run = CommandProcess.InShell(Usual, behind, string.Empty, [.. words.Select(word => word ?? Demo)]);

        Assert.True(run.Status == status, $"{run.Status}: {run.Error}");
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.Equal(status == 0, run.Output.Length > 0);
        bool full = behind.Contains("/dev/full", StringComparison.Ordinal);
        bool said = status == 2 && !behind.Contains("2>", StringComparison.Ordinal);
        Assert.Equal(said, run.Error.Length > 0);
        Assert.Equal(said && full, run.Error.Contains("No space left", StringComparison.Ordinal));
        Assert.Equal(
            said && behind.Contains(">&-", StringComparison.Ordinal),
            run.Error.Contains("standard output is closed", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("COLUMNS=20")]
    [InlineData("COLUMNS=1 LINES=1 TERM=dumb")]
    [InlineData("COLUMNS=0 NO_COLOR=1 TERM=")]
    [InlineData("COLUMNS=-5 TERM=xterm-256color FORCE_COLOR=1 CLICOLOR_FORCE=1")]
    [InlineData("COLUMNS=99999 COLORTERM=truecolor LANG=tr_TR.UTF-8 TZ=nowhere")]
    public void The_environment_changes_nothing(string variables)
    {
        CommandLine run = CommandProcess.InShell(variables, string.Empty, string.Empty, "plan", Demo);
        Assert.Equal(CommandLine.Run("plan", Demo), run);
        Assert.DoesNotContain('\x1B', run.Output);
    }

    /// <summary>A reader that wants one line, and one that wants nothing: the status of the command, not of the reader.</summary>
    [Theory]
    [InlineData("head -n 1", "plan")]
    [InlineData("true", "choose")]
    public void A_reader_that_leaves_ends_it_quietly(string reader, string command)
    {
        string sample = Repository.Sample("jobs", command == "plan" ? "car-27.yaml" : $"car-27-{command}.yaml");
        using Process process = Process.Start(new ProcessStartInfo(
            "sh", ["-c", $"{{ dotnet \"$0\" \"$@\"; echo $? >&2; }} | {reader}", typeof(Application).Assembly.Location, command, sample])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.Equal("0\n", error);
    }

    /// <summary>A signal ends what waits or computes as the system does: 128 and the number of the signal, without a word.</summary>
    [Theory]
    [InlineData("-INT", 130, "plan", "-")]
    [InlineData("-TERM", 143, "choose", "-")]
    [InlineData("-HUP", 129, "check", "-")]
    [InlineData("-TERM", 143, "new")]
    public void A_signal_ends_it_without_a_trace(string signal, int status, params string[] args)
    {
        string folder = Directory.CreateTempSubdirectory("tierodcalc-").FullName;
        using Process process = CommandProcess.Start(args, withInput: true, folder: folder, forSignals: true);
        process.StandardInput.Write("tierodcalc: 1\n");
        process.StandardInput.Flush();
        Thread.Sleep(400);
        Kill(process, signal);
        string output = process.StandardOutput.ReadToEnd();
        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();

        Assert.Equal((status, string.Empty), (process.ExitCode, output));
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
        Assert.True(args[0] == "new" || error.Length == 0, error);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
        Directory.Delete(folder);
    }

    /// <summary>Many parts, so that it is computing when the signal comes.</summary>
    [Fact]
    public async Task A_signal_while_it_chooses_ends_it()
    {
        string many = string.Concat(Enumerable.Range(0, 400).Select(number => FormattableString.Invariant(
            $"  - {{id: i{number}, thread: 5/8-18 LH, center_to_tip: {200 + (number / 10.0)} mm, thread_length: 88.9 mm}}\n")));
        string job = CheckJobs.W1.With("inner_ends:\n", "inner_ends:\n" + many).With("inner: i,", "inner: any,")
            + string.Concat(Enumerable.Range(2, 1_000).Select(number =>
                $"\n  - {{name: w{number}, inner: any, sleeve: any, outer: any, nuts: {{inner: any, outer: any}}, "
                    + $"length: 36{number % 10} mm, adjust: 3 mm}}"));
        using Process process = CommandProcess.Start(["choose", "-", "--top", "10000"], withInput: true, forSignals: true);
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> error = process.StandardError.ReadToEndAsync();
        await process.StandardInput.WriteAsync(job);
        process.StandardInput.Close();
        await Task.Delay(600);
        Assert.False(process.HasExited, "It has ended before the signal came.");
        Kill(process, "-INT");
        await process.WaitForExitAsync();
        Assert.Equal((130, string.Empty, string.Empty), (process.ExitCode, await output, await error));
    }

    private static void Kill(Process process, string signal)
    {
        using Process kill = Process.Start("kill", [signal, $"{process.Id}"]);
        kill.WaitForExit();
    }
}
