using System.IO.Compression;
using System.Xml.Linq;

namespace TieRodCalc.Cli.Tests;

/// <summary>The packages of the two libraries, packed into a folder of their own, with the packages that they say they depend on.</summary>
public sealed class PackedLibraries : IDisposable
{
    private static readonly string[] s_projects = ["TieRodCalc", "TieRodCalc.Yaml"];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tierodcalc-packages-");

    public PackedLibraries()
    {
        string built = In("built");
        foreach (string project in s_projects.Reverse())
        {
            // Beside the real output, which may be in use; the second project is there already when the first one is built.
            DotnetProcess.Output(
                Repository.Root, "", "pack", Path.Combine("src", project), "-c", "Release", "--artifacts-path", built, "-o", Packages);
        }

        string restored = XDocument.Load(Path.Combine(built, "obj", s_projects[^1], $"{s_projects[^1]}.csproj.nuget.g.props"))
            .Descendants().Single(element => element.Name.LocalName == "NuGetPackageRoot").Value;
        foreach ((string id, string version) in s_projects.SelectMany(Dependencies).Where(needed => !s_projects.Contains(needed.Id)))
        {
            string name = id.ToLowerInvariant();
            string file = $"{name}.{version}.nupkg";
            File.Copy(Path.Combine(restored, name, version, file), Path.Combine(Packages, file));
        }
    }

    /// <summary>The one folder that programs take packages from.</summary>
    public string Packages => In("packages");

    /// <summary>A path in the folder of this run.</summary>
    public string In(params string[] path) => Path.Combine([_folder.FullName, .. path]);

    /// <summary>The package of a project, opened.</summary>
    /// <param name="project">The project.</param>
    /// <param name="extension">nupkg, or snupkg for the symbols.</param>
    public ZipArchive Open(string project, string extension) => ZipFile.OpenRead(Directory
        .GetFiles(Packages, $"{project}.*.{extension}")
        .Single(file => char.IsAsciiDigit(Path.GetFileName(file)[project.Length + 1])));

    /// <summary>What a package says of itself.</summary>
    public XElement Metadata(string project)
    {
        using ZipArchive package = Open(project, "nupkg");
        using Stream manifest = package.GetEntry($"{project}.nuspec")!.Open();
        return XDocument.Load(manifest).Root!.Elements().Single();
    }

    /// <summary>The packages that a package depends on.</summary>
    public IEnumerable<(string Id, string Version)> Dependencies(string project) => Metadata(project).Descendants()
        .Where(element => element.Name.LocalName == "dependency")
        .Select(element => (element.Attribute("id")!.Value, element.Attribute("version")!.Value));

    public void Dispose() => _folder.Delete(recursive: true);
}
