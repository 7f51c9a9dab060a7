using TieRodCalc.Text;
using TieRodCalc.Yaml.Binding;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml;

/// <summary>Finds and reads the part files that a job names.</summary>
/// <param name="job">The job.</param>
/// <param name="folder">The folder that its paths are relative to.</param>
internal sealed class PartFiles(MapReader job, string folder)
{
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);

    /// <summary>The part files, each once, in the order in which they are named.</summary>
    public List<LoadedFile> Files { get; } = [];

    /// <summary>False where a file or folder that is named could not be read.</summary>
    public bool Whole { get; private set; } = true;

    /// <summary>Reads the part files of a job.</summary>
    public void Read()
    {
        if (job.List("parts") is not { } list)
        {
            return;
        }

        foreach (Node item in list.Items)
        {
            if (item is ScalarNode { IsEmpty: false } path)
            {
                Add(path);
            }
            else if (item is not RefusedNode)
            {
                job.Findings.Problem(item.Span, "an item of the list 'parts' must be the path of a file or folder");
            }
        }
    }

    private void Add(ScalarNode path)
    {
        string combined = Path.Combine(folder, path.Value);
        if (Directory.Exists(combined))
        {
            AddFolder(path, combined);
        }
        else if (_seen.Add(Guard.FullPath(combined)))
        {
            AddFile(path, combined);
        }
    }

    private void AddFile(ScalarNode path, string combined)
    {
        FileBytes bytes = Guard.ReadFile(combined);
        if (!bytes.Opened)
        {
            NotRead(path, bytes.Fault, NearestFile(path.Value, combined));
            return;
        }

        LoadedFile file = LoadedFile.Load(Guard.ShownName(combined), bytes);
        if (file.JobKey is not null)
        {
            NotRead(path, "this is a job, not a part file", null);
            return;
        }

        Files.Add(file);
    }

    /// <summary>Reads the part files of a folder; jobs that lie beside them are passed over.</summary>
    private void AddFolder(ScalarNode path, string combined)
    {
        (IReadOnlyList<string> names, string? fault) = Guard.ListFolder(combined);
        bool any = false;
        foreach (string name in names)
        {
            if (!IsYaml(name))
            {
                continue;
            }

            any = true;
            string full = Path.Combine(combined, name);
            if (_seen.Add(Guard.FullPath(full)) && LoadedFile.Load(Guard.ShownName(full), Guard.ReadFile(full)) is { JobKey: null } file)
            {
                Files.Add(file);
            }
        }

        if (fault is not null || !any)
        {
            NotRead(path, fault ?? "the folder has no *.yaml or *.yml file", null);
        }
    }

    private void NotRead(ScalarNode path, string? fault, string? suggestion)
    {
        Whole = false;
        job.Findings.Problem(path.Span, $"{Wording.Quote(path.Value)}: {fault}", suggestion);
    }

    /// <summary>Hidden files, as editors leave them, are none.</summary>
    private static bool IsYaml(string name) =>
        !name.StartsWith('.')
        && (name.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase));

    private static string? NearestFile(string written, string combined)
    {
        string name = Path.GetFileName(written);
        (IReadOnlyList<string> names, _) = Guard.ListFolder(Path.GetDirectoryName(combined) is { Length: > 0 } parent ? parent : ".");
        List<string> yaml = [];
        foreach (string candidate in names)
        {
            if (IsYaml(candidate))
            {
                yaml.Add(candidate);
            }
        }

        return Nearest.Of(name, yaml) is { } nearest ? written[..^name.Length] + nearest : null;
    }
}
