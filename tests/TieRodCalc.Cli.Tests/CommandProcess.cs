using System.Diagnostics;

namespace TieRodCalc.Cli.Tests;

/// <summary>The command as a process of its own, by default in the top folder of the repository.</summary>
internal static class CommandProcess
{
    /// <summary>What a command prints, on both streams.</summary>
    public static string Output(params string[] args)
    {
        using Process process = Start(args);
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output + error.Result;
    }

    /// <summary>One run from a shell, which can close or redirect what the command reads and writes.</summary>
    /// <param name="before">What stands in front of the command.</param>
    /// <param name="behind">What stands behind it.</param>
    /// <param name="input">Standard input.</param>
    /// <param name="args">The words of the command.</param>
    public static CommandLine InShell(string before, string behind, string input, params string[] args)
    {
        string line = $"{before} exec dotnet \"$0\" \"$@\" {behind}";
        ProcessStartInfo start = new("sh", ["-c", line, typeof(Application).Assembly.Location, .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
            WorkingDirectory = Repository.Root,
        };
        start.Environment["LC_ALL"] = "C.UTF-8";
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        const int Longest = 60_000;
        if (!process.WaitForExit(Longest))
        {
            process.Kill();
            Assert.Fail($"{string.Join(' ', args)} {behind}: still running after a minute");
        }

        return new CommandLine(process.ExitCode, output.Result, error.Result);
    }

    /// <summary>A run that is still going on.</summary>
    /// <param name="args">The words of the command.</param>
    /// <param name="withInput">Whether standard input is written to.</param>
    /// <param name="folder">Where it runs.</param>
    /// <param name="environment">One more variable.</param>
    /// <param name="forSignals">Whether signals reach it though they are ignored here, as they are behind <c>nohup</c>.</param>
    public static Process Start(
        string[] args, bool withInput = false, string? folder = null, (string Name, string Value)? environment = null, bool forSignals = false)
    {
        string[] signals = forSignals ? ["--default-signal=HUP,INT,TERM"] : [];
        ProcessStartInfo start = new("env", [.. signals, "dotnet", typeof(Application).Assembly.Location, .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = withInput,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
            WorkingDirectory = folder ?? Repository.Root,
        };
        // Drawings follow the locale.
        start.Environment["LC_ALL"] = "C.UTF-8";
        if (environment is { } variable)
        {
            start.Environment[variable.Name] = variable.Value;
        }

        return Process.Start(start)!;
    }
}
