using System.IO.Compression;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text;
using System.Xml.Linq;
using TieRodCalc.Planning;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>The packages as a program takes them: what they hold, and that the programs of the README run on them.</summary>
[Collection("README.md")]
public sealed class PackageTests(PackedLibraries packed) : IClassFixture<PackedLibraries>
{
    /// <summary>The kind of custom debug information that is an embedded source (Portable PDB format).</summary>
    private static readonly Guid s_embeddedSource = new("0E8A571B-6926-466E-B4AD-8AB04611F5FE");

    [Theory]
    [InlineData("TieRodCalc", "UnitsNet")]
    [InlineData("TieRodCalc.Yaml", "TieRodCalc", "YamlDotNet")]
    public void A_package_says_what_it_is_and_depends_on_no_more_than_it_needs(string project, params string[] dependencies)
    {
        XElement metadata = packed.Metadata(project);
        Assert.Equal(project, Value("id"));
        Assert.Equal("MIT", Value("license"));
        Assert.Equal("expression", Element("license")!.Attribute("type")!.Value);
        Assert.Equal("README.md", Value("readme"));
        Assert.NotEmpty(Value("description")!);
        Assert.Contains("tie-rod", Value("tags")!.Split(' '));
        Assert.Null(Element("repository"));
        Assert.Null(Element("projectUrl"));
        Assert.Equal(dependencies, packed.Dependencies(project).Select(needed => needed.Id));

        XElement? Element(string name) => metadata.Elements().SingleOrDefault(element => element.Name.LocalName == name);
        string? Value(string name) => Element(name)?.Value;
    }

    [Theory]
    [InlineData("TieRodCalc")]
    [InlineData("TieRodCalc.Yaml")]
    public void A_package_holds_assembly_documentation_and_readme(string project)
    {
        using ZipArchive package = packed.Open(project, "nupkg");
        string readme = Encoding.UTF8.GetString(Bytes(package, "README.md"));
        Assert.Equal(File.ReadAllText(Path.Combine(Repository.Root, "src", project, "README.md")), readme);
        string comments = Encoding.UTF8.GetString(Bytes(package, $"lib/net10.0/{project}.xml"));
        XElement documentation = XElement.Parse(comments.TrimStart('\uFEFF'));
        Assert.Equal(project, documentation.Element("assembly")!.Value);
        Assert.NotEmpty(documentation.Descendants("summary"));

        using PEReader assembly = new([.. Bytes(package, $"lib/net10.0/{project}.dll")]);
        Assert.Contains(("IsTrimmable", "True"), Marks(assembly.GetMetadataReader()));
        Assert.Contains(assembly.ReadDebugDirectory(), entry => entry.Type == DebugDirectoryEntryType.Reproducible);
        DebugDirectoryEntry symbols = assembly.ReadDebugDirectory().Single(entry => entry.Type == DebugDirectoryEntryType.CodeView);
        Assert.Equal($"/_/obj/{project}/{project}.pdb", assembly.ReadCodeViewDebugDirectoryData(symbols).Path);
    }

    [Theory]
    [InlineData("TieRodCalc")]
    [InlineData("TieRodCalc.Yaml")]
    public void The_symbols_hold_every_source_and_name_no_folder_of_the_machine(string project)
    {
        using ZipArchive package = packed.Open(project, "snupkg");
        using MetadataReaderProvider symbols =
            MetadataReaderProvider.FromPortablePdbImage([.. Bytes(package, $"lib/net10.0/{project}.pdb")]);
        MetadataReader reader = symbols.GetMetadataReader();
        Dictionary<string, string> sources = reader.Documents.ToDictionary(
            document => reader.GetString(reader.GetDocument(document).Name), document => Source(reader, document));
        Assert.All(sources.Keys, name => Assert.Matches("^/_/(src|obj)/", name));
        string[] own = [.. sources.Keys.Where(name => name.StartsWith("/_/src/", StringComparison.Ordinal))];
        Assert.All(own, name => Assert.Equal(File.ReadAllText(Path.Combine(Repository.Root, name["/_/".Length..])), sources[name]));
        string folder = Path.Combine(Repository.Root, "src", project);
        Assert.Superset(
            Directory.GetFiles(folder, "*er.cs", SearchOption.AllDirectories).Select(file => file[Repository.Root.Length..]).ToHashSet(),
            own.Select(name => name["/_".Length..]).ToHashSet());
    }

    [Theory]
    [InlineData("TieRodCalc", "parts")]
    [InlineData("TieRodCalc.Yaml", "job")]
    [InlineData("TieRodCalc.Cli", null)]
    public void The_readme_of_a_package_has_the_cautions_and_the_program_and_no_link_out_of_it(string project, string? program)
    {
        string readme = File.ReadAllText(Path.Combine(Repository.Root, "src", project, "README.md"));
        Assert.StartsWith($"# {project}\n", readme, StringComparison.Ordinal);
        Assert.All(
            Cautions.All.Append(Cautions.NotChecked),
            caution => Assert.Contains($"\n- {caution}\n", readme, StringComparison.Ordinal));
        Assert.DoesNotContain("](", readme, StringComparison.Ordinal);
        Assert.DoesNotContain("<!--", readme, StringComparison.Ordinal);
        if (program is not null)
        {
            Assert.Contains($"```csharp\n{ReadmePrograms.Code(ReadmePrograms.Readme(), program)}```\n", readme, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_job_in_the_readme_of_the_reader_is_sound_and_can_be_made()
    {
        string readme = File.ReadAllText(Path.Combine(Repository.Root, "src", "TieRodCalc.Yaml", "README.md"));
        string file = readme.Split("```yaml\n")[1].Split("```")[0];
        using MemoryStream content = new(Encoding.UTF8.GetBytes(file));
        Reading<Job> reading = JobReader.Read(content, "README.md", ".");
        Assert.Empty(reading.Problems);
        JobRod rod = Assert.Single(reading.Value!.Rods);
        Assert.Equal(Verdict.BuildableAfterCutting, RodPlanner.Plan(rod.Rod!, rod.Request!).Verdict);
    }

    [Fact]
    public void The_programs_of_the_readme_run_on_the_packages()
    {
        string folder = packed.In("program");
        Directory.CreateDirectory(Path.Combine(folder, "catalog-samples"));
        foreach (string file in Directory.GetFiles(Repository.Sample(), "*.yaml", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(folder, "catalog-samples", Path.GetRelativePath(Repository.Sample(), file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        File.WriteAllText(Path.Combine(folder, "NuGet.config"), """
            <configuration>
              <packageSources><clear /><add key="packed" value="../packages" /></packageSources>
              <fallbackPackageFolders><clear /></fallbackPackageFolders>
            </configuration>
            """);
        string before = ReadmePrograms.Readme();
        string after = ReadmePrograms.Run(
            before, command => DotnetProcess.Output(folder, packed.In("cache"), command), Path.Combine(folder, "shop"));
        if (Environment.GetEnvironmentVariable("TIERODCALC_UPDATE_DOCS") is { Length: > 0 })
        {
            File.WriteAllText(ReadmePrograms.Path, after);
        }

        Assert.Equal(after, before);
    }

    private static byte[] Bytes(ZipArchive package, string name)
    {
        using Stream entry = package.GetEntry(name)!.Open();
        using MemoryStream bytes = new();
        entry.CopyTo(bytes);
        return bytes.ToArray();
    }

    /// <summary>What the assembly says of itself in names and values.</summary>
    private static IEnumerable<(string?, string?)> Marks(MetadataReader reader)
    {
        foreach (CustomAttributeHandle handle in reader.GetAssemblyDefinition().GetCustomAttributes())
        {
            CustomAttribute mark = reader.GetCustomAttribute(handle);
            MemberReference made = reader.GetMemberReference((MemberReferenceHandle)mark.Constructor);
            if (reader.GetString(reader.GetTypeReference((TypeReferenceHandle)made.Parent).Name) == "AssemblyMetadataAttribute")
            {
                BlobReader value = reader.GetBlobReader(mark.Value);
                value.ReadUInt16();
                yield return (value.ReadSerializedString(), value.ReadSerializedString());
            }
        }
    }

    /// <summary>The source that is embedded for a document: its size where it is packed, or 0, and the bytes.</summary>
    private static string Source(MetadataReader reader, DocumentHandle document)
    {
        CustomDebugInformation source = reader.GetCustomDebugInformation(document)
            .Select(reader.GetCustomDebugInformation)
            .Single(found => reader.GetGuid(found.Kind) == s_embeddedSource);
        byte[] content = reader.GetBlobBytes(source.Value);
        using MemoryStream bytes = new(content, sizeof(int), content.Length - sizeof(int));
        using Stream plain = BitConverter.ToInt32(content) == 0 ? bytes : new DeflateStream(bytes, CompressionMode.Decompress);
        using StreamReader text = new(plain, Encoding.UTF8);
        return text.ReadToEnd();
    }
}
