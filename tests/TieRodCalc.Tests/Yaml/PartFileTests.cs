using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>The part files that a job names.</summary>
public sealed class PartFileTests : IDisposable
{
    private const string Rod = """
        rods:
          - {name: a, inner: i, outer: o, sleeve: s, nuts: {inner: none, outer: none}, length: 400 mm, adjust: 2 mm}

        """;

    private const string Ends = """
        tierodcalc: 1
        inner_ends:
          - {id: i, thread: M18x1.5 LH, center_to_tip: 200 mm, thread_length: 80 mm, material: steel}
        outer_ends:
          - {id: o, thread: M18x1.5, center_to_tip: 80 mm, thread_length: 60 mm}

        """;

    private const string Sleeves = """
        tierodcalc: 1
        materials:
          - {id: steel, kind: steel}
        sleeves:
          - {id: s, length: 200 mm, inner: {thread: M18x1.5 LH, depth: 50 mm, bore: closed}, outer: {thread: M18x1.5, depth: 50 mm, bore: open}}

        """;

    private readonly TemporaryFolder _folder = new();

    public PartFileTests()
    {
        _folder.Write("parts/ends.yaml", Ends);
        _folder.Write("parts/sleeves.yml", Sleeves);
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("[../parts/ends.yaml, ../parts/sleeves.yml]")]
    [InlineData("[../parts]")]
    [InlineData("[../parts/]")]
    [InlineData("[../parts/ends.yaml, ../parts, ../jobs/../parts/sleeves.yml]")]
    public void Files_and_folders_are_read_once(string parts)
    {
        Job job = JobReader.Read(Job(parts)).Value!;
        Assert.NotNull(job.Rods[0].Rod);
        Assert.Equal("steel", Assert.Single(job.Catalog.InnerEnds).Info.Material!.Id);
    }

    [Fact]
    public void A_stream_has_the_folder_that_it_is_given()
    {
        using MemoryStream stream = new("tierodcalc: 1\njob: x\nparts: [ends.yaml, sleeves.yml]\n"u8.ToArray());
        Assert.Single(JobReader.Read(stream, "-", _folder.At("parts")).Value!.Catalog.Sleeves);
    }

    [Fact]
    public void A_path_may_be_absolute() =>
        Assert.Empty(JobReader.Read(Job($"['{_folder.At("parts/ends.yaml")}', '{_folder.At("parts/sleeves.yml")}']")).Problems);

    [Fact]
    public void A_folder_is_read_in_ordinal_order_and_not_deeper()
    {
        _folder.Write("many/b.yaml", "tierodcalc: 1\nmaterials: [{id: b}]\n");
        _folder.Write("many/B.yml", "tierodcalc: 1\nmaterials: [{id: B}]\n");
        _folder.Write("many/a.yaml", "tierodcalc: 1\nmaterials: [{id: a}]\n");
        _folder.Write("many/.hidden.yaml", "nonsense");
        _folder.Write("many/notes.txt", "nonsense");
        _folder.Write("many/job.yaml", "tierodcalc: 1\njob: is passed over\nrods: [nonsense]\n");
        _folder.Write("many/deeper/c.yaml", "nonsense");
        _folder.Write("many/folder.yaml/c.yaml", "nonsense");
        string job = _folder.Write("many/here.yaml", "tierodcalc: 1\njob: x\nparts: [.]\n");
        Assert.Equal(["B", "a", "b"], JobReader.Read(job).Value!.Catalog.Materials.Select(material => material.Id));
    }

    [Fact]
    public void Problems_of_part_files_carry_their_own_name_and_follow_those_of_the_job()
    {
        _folder.Write("parts/ends.yaml", Ends.Replace("80 mm,", "80,", StringComparison.Ordinal) + "# °\nnuts: []\n");
        _folder.Write("parts/sleeves.yml", Sleeves.Replace("open", "opne", StringComparison.Ordinal));
        string job = Job("[../parts/ends.yaml, ../parts/sleeves.yml]", "unit: mm\n");
        IReadOnlyList<Problem> problems = JobReader.Read(job).Problems;
        string folder = _folder.At("parts") + Path.DirectorySeparatorChar;
        Assert.Equal(
            [(job, 4), (folder + "ends.yaml", 3), (folder + "ends.yaml", 5), (folder + "ends.yaml", 7), (folder + "sleeves.yml", 5)],
            problems.Select(problem => (problem.File, problem.Line)));
        Assert.Equal("nuts: []", problems[3].SourceLine);
        Assert.Equal("jam_nuts", problems[3].Suggestion);
    }

    [Fact]
    public void A_missing_file_is_a_problem_where_it_is_named_and_makes_no_id_unknown()
    {
        Problem problem = Assert.Single(JobReader.Read(Job("[../parts/endds.yaml, ../parts/sleeves.yml]")).Problems);
        Assert.Equal("'../parts/endds.yaml': there is no such file", problem.Message);
        Assert.Equal((3, 9, 19), (problem.Line, problem.Column, problem.Length));
        Assert.Equal("../parts/ends.yaml", problem.Suggestion);
    }

    [Theory]
    [InlineData("[../parts/none.yaml]", "there is no such file")]
    [InlineData("[../none]", "there is no such file")]
    [InlineData("[../empty]", "the folder has no *.yaml or *.yml file")]
    [InlineData("[job.yaml]", "this is a job, not a part file")]
    [InlineData("[[a]]", "must be the path of a file or folder")]
    [InlineData("[~]", "must be the path of a file or folder")]
    [InlineData("../parts", "'parts' must be a list, not a single value")]
    public void What_is_no_part_file(string parts, string phrase)
    {
        Directory.CreateDirectory(_folder.At("empty"));
        string job = _folder.Write("jobs/job.yaml", $"tierodcalc: 1\njob: x\nparts: {parts}\n");
        Problem problem = Assert.Single(JobReader.Read(job).Problems);
        Assert.Contains(phrase, problem.Message, StringComparison.Ordinal);
        Assert.Equal((job, 3), (problem.File, problem.Line));
    }

    [Fact]
    public void A_part_file_that_cannot_be_understood_is_a_problem_of_its_own_and_makes_no_id_unknown()
    {
        _folder.Write("parts/ends.yaml", "tierodcalc: 2\n");
        Problem problem = Assert.Single(JobReader.Read(Job("[../parts]")).Problems);
        Assert.EndsWith("ends.yaml", problem.File, StringComparison.Ordinal);
        Assert.Contains("another version", problem.Message, StringComparison.Ordinal);
        _folder.Write("parts/ends.yaml", "");
        Assert.Equal(0, Assert.Single(JobReader.Read(Job("[../parts]")).Problems).Line);
    }

    [Fact]
    public void An_id_defined_twice_names_both_places()
    {
        _folder.Write("parts/more.yaml", "tierodcalc: 1\nmaterials:\n  - {id: other}\n  - {id: steel}\n  - {id: other}\n");
        IReadOnlyList<Problem> problems = JobReader.Read(Job("[../parts/sleeves.yml, ../parts/more.yaml, ../parts/ends.yaml]")).Problems;
        string folder = _folder.At("parts") + Path.DirectorySeparatorChar;
        Assert.Equal(
            [
                (folder + "more.yaml", 4, 10, 5, $"there is a material steel already, at {folder}sleeves.yml:3"),
                (folder + "more.yaml", 5, 10, 5, $"there is a material other already, at {folder}more.yaml:3"),
            ],
            problems.Select(problem => (problem.File, problem.Line, problem.Column, problem.Length, problem.Message)));
    }

    [Fact]
    public void Ids_are_unique_within_their_kind_and_no_further()
    {
        Assert.Empty(Marked.Check("tierodcalc: 1\nmaterials: [{id: x}]\njam_nuts: [{id: x, thread: M18, thickness: 9 mm}]\n").Problems);
        new Marked("""
            tierodcalc: 1
            outer_ends:
              - {id: x, thread: M18, center_to_tip: 80 mm, thread_length: 60 mm}
              - {id: «x», center_to_face: 2 in, socket: {thread: M14x1.5-6H, depth: 1.2 in, bore: closed}}
            """).Problem("there is an outer end x already, at -:3");
    }

    [Fact]
    public void A_part_file_by_itself_knows_its_own_materials_alone()
    {
        Assert.Contains("no material 'steel'", Assert.Single(JobReader.ReadParts(_folder.At("parts/ends.yaml")).Problems).Message, StringComparison.Ordinal);
        Assert.Single(JobReader.Check(_folder.At("parts/ends.yaml")).Problems);
        Assert.Empty(JobReader.ReadParts(_folder.At("parts/sleeves.yml")).Problems);
    }

    private string Job(string parts, string more = "") =>
        _folder.Write("jobs/job.yaml", $"tierodcalc: 1\njob: x\nparts: {parts}\n{more}{Rod}");
}
