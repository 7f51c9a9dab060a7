using System.Text;
using TieRodCalc.Tests.Architecture;
using TieRodCalc.Tests.Yaml;

namespace TieRodCalc.Tests.Files;

/// <summary>The sample files that are mutated, in a folder of their own; the shelf is cut down to what a test has time for.</summary>
internal sealed class MutatedSources : IDisposable
{
    /// <summary>The parts of the shelf that are kept: those of the rack rods, and some of which a rod can be chosen.</summary>
    private static readonly string[] s_kept =
    [
        "id: in-m14r-rack-300,", "id: in-m14r-rack-290,", "id: rk-m14r-62,", "id: jn-m14r-thin,", "id: in-34l-9.5,", "id: in-58l-11,",
        "id: sl-6-34l-58r,", "id: sl-4.5-58l-58r,", "id: re-58r-3.25,", "id: jn-34l-thin,", "id: jn-58l-thin,", "id: jn-58r-thin,",
    ];

    private readonly TemporaryFolder _folder = new();

    public MutatedSources()
    {
        string samples = Path.Combine(SourceTree.Root, "catalog-samples");
        foreach (string path in Directory.GetFiles(Path.Combine(samples, "jobs"), "*.yaml").Order(StringComparer.Ordinal))
        {
            string text = File.ReadAllText(path);
            Jobs.Add(text);
            _folder.Write($"jobs/{Path.GetFileName(path)}", text);
        }

        FullShelf = File.ReadAllText(Path.Combine(samples, "parts", "shelf.yaml"));
        Parts.Add("pinewater.yaml", File.ReadAllText(Path.Combine(samples, "parts", "pinewater.yaml")));
        Parts.Add("shelf.yaml", CutDown(FullShelf));
        WriteParts(JobFolder);
    }

    /// <summary>The jobs.</summary>
    public List<string> Jobs { get; } = [];

    /// <summary>The part files by their names.</summary>
    public Dictionary<string, string> Parts { get; } = new(StringComparer.Ordinal);

    /// <summary>The shelf as it is.</summary>
    public string FullShelf { get; }

    /// <summary>The folder that the jobs are in, beside sound parts.</summary>
    public string JobFolder => _folder.At("jobs");

    /// <summary>A folder for jobs beside parts that one thread may spoil.</summary>
    public string FolderOfThread(int thread)
    {
        string folder = _folder.At($"thread-{thread}/jobs");
        Directory.CreateDirectory(folder);
        WriteParts(folder);
        return folder;
    }

    /// <summary>Where the jobs of a folder find a part file.</summary>
    public static string PartPath(string jobFolder, string name) => Path.Combine(Path.GetDirectoryName(jobFolder)!, "parts", name);

    public void Dispose() => _folder.Dispose();

    private void WriteParts(string jobFolder)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PartPath(jobFolder, "any"))!);
        foreach ((string name, string text) in Parts)
        {
            File.WriteAllText(PartPath(jobFolder, name), text);
        }
    }

    private static string CutDown(string shelf)
    {
        StringBuilder kept = new();
        bool keep = true;
        bool materials = false;
        foreach (string line in shelf.Split('\n'))
        {
            materials = line.Length > 0 && char.IsLetter(line[0]) ? line == "materials:" : materials;
            keep = line.StartsWith("  - ", StringComparison.Ordinal)
                ? materials || s_kept.Any(id => line.Contains(id, StringComparison.Ordinal))
                : line.StartsWith("     ", StringComparison.Ordinal) ? keep : !line.StartsWith("  #", StringComparison.Ordinal);
            kept.Append(keep ? line + "\n" : string.Empty);
        }

        return kept.ToString();
    }
}
