using System.Diagnostics;
using System.Text;

namespace TieRodCalc.Cli.Tests;

/// <summary>The dotnet command in a folder, as somebody would run it in a shell and not from inside a test.</summary>
internal static class DotnetProcess
{
    /// <summary>What the test host tells its own parts: which build engine, which settings.</summary>
    private static readonly string[] s_ofTheHost = ["MSBUILD", "DOTNET_", "VSTEST", "TESTINGPLATFORM", "CORECLR_", "COMPLUS_"];

    /// <summary>What the command prints on standard output. Any other status than 0 fails the test.</summary>
    public static string Output(string folder, string packages, params string[] args)
    {
        ProcessStartInfo start = new("dotnet", args)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        foreach (string name in start.Environment.Keys.Where(IsOfTheHost).ToArray())
        {
            start.Environment.Remove(name);
        }

        if (packages.Length > 0)
        {
            start.Environment["NUGET_PACKAGES"] = packages;
        }

        start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
        start.Environment["DOTNET_NOLOGO"] = "1";
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";

        // A server that stays would keep the streams open.
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        start.Environment["DOTNET_CLI_USE_MSBUILD_SERVER"] = "0";
        start.Environment["UseSharedCompilation"] = "false";
        start.Environment["TreatWarningsAsErrors"] = "true";

        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"dotnet {string.Join(' ', args)} in {folder}: {process.ExitCode}\n{output}{error.Result}");
        return output;
    }

    private static bool IsOfTheHost(string name) =>
        name != "DOTNET_ROOT" && s_ofTheHost.Any(start => name.StartsWith(start, StringComparison.OrdinalIgnoreCase));
}
