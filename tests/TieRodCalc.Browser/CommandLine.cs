using System.Diagnostics;

namespace TieRodCalc.Browser;

/// <summary>What a run of the command gave.</summary>
/// <param name="Status">Its exit status.</param>
/// <param name="Output">Its standard output.</param>
/// <param name="Errors">Its standard error.</param>
internal sealed record CommandResult(int Status, string Output, string Errors);

/// <summary>The command <c>tierodcalc</c> as it was built: a program, or a DLL that the runtime starts.</summary>
internal sealed class CommandLine(string path)
{
    public async Task<CommandResult> RunAsync(params string[] arguments)
    {
        bool library = Path.GetExtension(path).Equals(".dll", StringComparison.OrdinalIgnoreCase);
        ProcessStartInfo start = new(library ? "dotnet" : path) { RedirectStandardOutput = true, RedirectStandardError = true };
        Array.ForEach<string>(library ? [path, .. arguments] : arguments, start.ArgumentList.Add);
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new CommandResult(process.ExitCode, await output, await errors);
    }
}
