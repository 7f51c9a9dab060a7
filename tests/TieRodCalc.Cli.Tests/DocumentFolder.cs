using System.Diagnostics;
using System.Text.RegularExpressions;

namespace TieRodCalc.Cli.Tests;

/// <summary>A copy of what the commands of a document read, in which what they write does not stay.</summary>
internal sealed partial class DocumentFolder : IDisposable
{
    /// <summary>Environment variable that keeps the commands within the process of the tests, for runs that have changed it.</summary>
    private const string OneProcess = "TIERODCALC_ONE_PROCESS";

    private readonly string _root = Directory.CreateTempSubdirectory("tierodcalc-").FullName;
    private readonly Dictionary<string, (int Status, string Shown)> _runs = [];

    public DocumentFolder()
    {
        Copy("catalog-samples", "*.yaml");
        Copy("docs", "*.txt");
    }

    /// <summary>Runs a command line of which several excerpts may be shown.</summary>
    public (int Status, string Shown) RunOnce(string command)
    {
        if (!_runs.TryGetValue(command, out (int Status, string Shown) run))
        {
            run = _runs[command] = Run(command);
        }

        return run;
    }

    /// <summary>Runs a command line.</summary>
    /// <param name="command">The words after <c>tierodcalc</c>; input may come from a file, output may go into one.</param>
    /// <param name="input">What is read where the command line names no file to read from.</param>
    /// <returns>The exit status and what a terminal shows.</returns>
    public (int Status, string Shown) Run(string command, string input = "")
    {
        string[] words = [.. Word().Matches(command).Select(match => match.Value.Replace("\"", string.Empty, StringComparison.Ordinal))];
        int from = Array.IndexOf(words, "<");
        int to = Array.IndexOf(words, ">");
        int end = new[] { from, to, words.Length }.Where(at => at >= 0).Min();
        string read = from < 0 ? input : File.ReadAllText(Path.Combine(_root, words[from + 1]));
        CommandLine run = Environment.GetEnvironmentVariable(OneProcess) is null ? Start(words[..end], read) : RunHere(words[..end], read);
        if (to < 0)
        {
            // The questions of a dialog stand before what it comes to.
            bool asks = words[0] == "new";
            return (run.Status, asks ? run.Error + run.Output : run.Output + run.Error);
        }

        File.WriteAllText(Path.Combine(_root, words[to + 1]), run.Output);
        return (run.Status, run.Error);
    }

    public string Read(string file) => File.ReadAllText(Path.Combine(_root, file));

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private CommandLine Start(string[] words, string input)
    {
        using Process process = CommandProcess.Start(words, withInput: true, _root, ("LC_ALL", "C.UTF-8"));
        Task<string> error = process.StandardError.ReadToEndAsync();
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        try
        {
            process.StandardInput.Write(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // A command that reads nothing may have ended by now.
        }

        process.WaitForExit();
        return new CommandLine(process.ExitCode, output.Result, error.Result);
    }

    private CommandLine RunHere(string[] words, string input)
    {
        string before = Directory.GetCurrentDirectory();
        Directory.SetCurrentDirectory(_root);
        try
        {
            return CommandLine.RunWith(input, words);
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
        }
    }

    private void Copy(string folder, string files)
    {
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), files, SearchOption.AllDirectories))
        {
            string copy = Path.Combine(_root, Path.GetRelativePath(Repository.Root, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    [GeneratedRegex("(\"[^\"]*\"|[^\\s\"])+")]
    private static partial Regex Word();
}
