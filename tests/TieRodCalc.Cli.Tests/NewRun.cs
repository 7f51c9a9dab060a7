namespace TieRodCalc.Cli.Tests;

/// <summary>A dialog in a folder of its own.</summary>
internal sealed class NewRun : IDisposable
{
    /// <summary>The answers for the left rod of the demo job.</summary>
    public static readonly string[] Left = File.ReadAllLines(Path.Combine(Repository.Root, "docs", "new-left-rod.txt"));

    public string Folder { get; } = Directory.CreateTempSubdirectory("tierodcalc-").FullName;

    public string[] Files =>
        [.. Directory.GetFileSystemEntries(Folder).Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal)];

    public string JobFile => Path.Combine(Folder, "no-27-coupe.yaml");

    public string PartFile => Path.Combine(Folder, "no-27-coupe-parts.yaml");

    public CommandLine Answer(IEnumerable<string> answers, params string[] options) =>
        CommandLine.RunWith(string.Concat(answers.Select(answer => $"{answer}\n")), ["new", "--folder", Folder, .. options]);

    /// <summary>The answers with some of them exchanged.</summary>
    public static string[] With(string[] answers, params (int At, string Answer)[] changes)
    {
        string[] changed = [.. answers];
        foreach ((int at, string answer) in changes)
        {
            changed[at] = answer;
        }

        return changed;
    }

    /// <summary>Where an answer stands that occurs once.</summary>
    public static int At(string answer) => Array.IndexOf(Left, answer);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
