using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace TieRodCalc.Tests.Architecture;

/// <summary>Every package that is taken stands in DEVELOPERS.md, with its reason and its license, and no other.</summary>
public partial class PackageTests
{
    /// <summary>Where a package names a file or an address instead of a license, the list says what was read there.</summary>
    private const string ReadFromText = ", read from its text";

    private const string Shipped = "shipped";

    private const string ForTests = "for build and tests";

    private const string Tool = "tool";

    /// <summary>Every project takes it by itself, for what it warns of; nothing of it is shipped.</summary>
    private const string TrimWarnings = "Microsoft.NET.ILLink.Tasks";

    /// <summary>The folder that packages were restored to.</summary>
    private static readonly string s_cache = JsonNode("tests/TieRodCalc.Tests/obj/project.assets.json")
        .GetProperty("packageFolders").EnumerateObject().First().Name;

    private static readonly string s_list = File.ReadAllText(Path.Combine(SourceTree.Root, "DEVELOPERS.md"))
        .Split("\n## Packages\n")[1].Split("\n## ")[0];

    public static TheoryData<string> Projects => [.. ProjectNames()];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_has_a_lock_file_that_says_what_the_project_says(string project)
    {
        Dictionary<string, string> central = XDocument.Load(Path.Combine(SourceTree.Root, "src", "Directory.Packages.props"))
            .Descendants("PackageVersion").ToDictionary(package => Attribute(package, "Include"), package => Attribute(package, "Version"));
        string[] wanted =
        [
            .. XDocument.Load(Path.Combine(SourceTree.Root, project)).Descendants("PackageReference")
                .Select(package => Attribute(package, "Include")).Order(StringComparer.Ordinal),
        ];
        Locked[] direct = [.. LockedBy(project).Where(package => package.Kind == "Direct" && package.Id != TrimWarnings)];
        Assert.Equal(wanted, direct.Select(package => package.Id).Order(StringComparer.Ordinal));
        Assert.All(direct, package => Assert.Equal(central[package.Id], package.Version));
        Assert.All(LockedBy(project), package => Assert.NotEmpty(package.Checksum));
    }

    [Fact]
    public void Shipped_packages_are_listed_with_the_assembly_that_needs_them_and_bring_along_no_others()
    {
        string[] projects = [.. ProjectNames().Where(IsShipped)];
        Assert.Equal(3, projects.Length);
        Assert.Equal(
            projects.SelectMany(project => LockedBy(project).Where(package => package.Kind == "Direct" && package.Id != TrimWarnings)
                .Select(package => $"{package.Id} in {Path.GetFileNameWithoutExtension(project)}")).Order(StringComparer.Ordinal),
            Table(Shipped).Select(row => $"{row[0]} in {row[1]}").Order(StringComparer.Ordinal));
        Assert.DoesNotContain(projects.SelectMany(LockedBy), package => package.Kind == "Transitive");
    }

    [Fact]
    public void Packages_of_build_and_tests_are_listed_and_what_they_bring_along_as_well()
    {
        Locked[] all = [.. ProjectNames().SelectMany(LockedBy)];
        HashSet<string> shipped = [.. Table(Shipped).Select(row => row[0])];
        HashSet<string> direct = [.. all.Where(package => package.Kind == "Direct").Select(package => package.Id).Except(shipped)];
        Assert.Equal(direct.Order(StringComparer.Ordinal), Table(ForTests).Select(row => row[0]).Order(StringComparer.Ordinal));
        Assert.Equal(
            all.Select(package => package.Id).Distinct().Except(direct).Except(shipped).Order(StringComparer.Ordinal),
            BroughtAlong().Select(package => package.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Tools_are_listed_and_their_versions_fixed()
    {
        JsonProperty[] tools = [.. JsonNode(".config/dotnet-tools.json").GetProperty("tools").EnumerateObject()];
        Assert.Equal(tools.Select(tool => tool.Name).Order(), Table(Tool).Select(row => Lower(row[0])).Order());
        Assert.All(tools, tool => Assert.False(tool.Value.GetProperty("rollForward").GetBoolean()));
    }

    [Fact]
    public void Every_listed_package_has_a_reason()
    {
        string[][] rows = [.. Table(Shipped), .. Table(ForTests), .. Table(Tool)];
        Assert.All(rows, row => Assert.True(row[^2].Length > 0 && row[^1].Length > 0, row[0]));
    }

    [Fact]
    public void A_listed_license_is_that_of_the_package()
    {
        Dictionary<string, string> listed = new[] { Shipped, ForTests, Tool }.SelectMany(Table)
            .Select(row => (Id: row[0], License: row[^1])).Concat(BroughtAlong())
            .ToDictionary(package => Lower(package.Id), package => package.License);
        Locked[] tools = [.. JsonNode(".config/dotnet-tools.json").GetProperty("tools").EnumerateObject().Select(tool =>
            new Locked(tool.Name, "Tool", tool.Value.GetProperty("version").GetString()!, string.Empty))];
        HashSet<string> restored = [.. LockedBy("tests/TieRodCalc.Tests/TieRodCalc.Tests.csproj").Select(package => package.Id)];
        Assert.All(ProjectNames().SelectMany(LockedBy).Concat(tools).Distinct(), package =>
        {
            string id = Lower(package.Id);
            string manifest = Path.Combine(s_cache, id, package.Version, id + ".nuspec");

            // Packages of another project, and tools, are in the cache only where those were restored.
            if (File.Exists(manifest) || restored.Contains(package.Id))
            {
                Assert.True(
                    Said(manifest) is { } said ? listed[id] == said : listed[id].EndsWith(ReadFromText, StringComparison.Ordinal),
                    $"{package.Id} is listed as {listed[id]}, and says {Said(manifest) ?? "in a text"}");
            }
        });
    }

    [Fact]
    public void What_goes_with_the_command_names_every_shipped_package_and_has_the_license_that_asks_for_it()
    {
        string notices = File.ReadAllText(Path.Combine(SourceTree.Root, "src", "TieRodCalc.Cli", "THIRD-PARTY-NOTICES.txt"));
        Assert.All(Table(Shipped), row => Assert.Matches($"(?m)^{Regex.Escape($"{row[0]}: {row[^1]}")}( |$)", notices));
        const string Granted = "Permission is hereby granted";
        string[] ours = File.ReadAllText(Path.Combine(SourceTree.Root, "LICENSE")).Split(Granted);
        Assert.Contains(Words(Granted + ours[1]), Words(notices), StringComparison.Ordinal);

        static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>The license that a package says of itself, or null where it names a file or an address.</summary>
    private static string? Said(string manifest) => XDocument.Load(manifest).Descendants()
        .SingleOrDefault(element => element.Name.LocalName == "license" && element.Attribute("type")?.Value == "expression")?.Value;

    private static IEnumerable<string[]> Table(string firstHeading)
    {
        string[] lines = s_list.Split('\n');
        int heading = Array.FindIndex(lines, line => line.StartsWith($"| {firstHeading} ", StringComparison.Ordinal));
        Assert.True(heading >= 0, firstHeading);
        return lines[(heading + 2)..].TakeWhile(line => line.StartsWith('|')).Select(line => line.Trim('|', ' ').Split(" | "));
    }

    /// <summary>The list of licenses, each with its packages.</summary>
    private static IEnumerable<(string Id, string License)> BroughtAlong() =>
        from Match item in BulletOfLicense().Matches(s_list)
        from id in item.Groups["ids"].Value.Split(',', StringSplitOptions.TrimEntries)
        select (id, item.Groups["license"].Value);

    /// <summary>Every project, from the folder of the repository.</summary>
    private static IEnumerable<string> ProjectNames() => new[] { "src", "tests" }
        .SelectMany(folder => Directory.EnumerateDirectories(Path.Combine(SourceTree.Root, folder)))
        .SelectMany(folder => Directory.EnumerateFiles(folder, "*.csproj"))
        .Select(path => Path.GetRelativePath(SourceTree.Root, path)).Order(StringComparer.Ordinal);

    private static bool IsShipped(string project) => project.StartsWith("src", StringComparison.Ordinal);

    private static IEnumerable<Locked> LockedBy(string project) =>
        from frameworks in new[] { JsonNode(Path.Combine(Path.GetDirectoryName(project)!, "packages.lock.json")) }
        from framework in frameworks.GetProperty("dependencies").EnumerateObject()
        from package in framework.Value.EnumerateObject()
        let kind = package.Value.GetProperty("type").GetString()!
        where kind != "Project"
        select new Locked(
            package.Name, kind, package.Value.GetProperty("resolved").GetString()!, package.Value.GetProperty("contentHash").GetString()!);

    private static JsonElement JsonNode(string path)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(Path.Combine(SourceTree.Root, path)));
        return document.RootElement.Clone();
    }

    private static string Attribute(XElement element, string name) => element.Attribute(name)!.Value;

    private static string Lower(string id) => id.ToLowerInvariant();

    [GeneratedRegex("""^- (?<license>[^:\n]+): (?<ids>[^\n]+(?:\n  [^\n]+)*)""", RegexOptions.Multiline)]
    private static partial Regex BulletOfLicense();

    /// <summary>A package of a lock file.</summary>
    private sealed record Locked(string Id, string Kind, string Version, string Checksum);
}
