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

    public static Process Start(
        string[] args, bool withInput = false, string? folder = null, (string Name, string Value)? environment = null)
    {
        ProcessStartInfo start = new("dotnet", [typeof(Application).Assembly.Location, .. args])
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
