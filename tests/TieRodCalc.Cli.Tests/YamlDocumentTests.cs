using System.Globalization;
using System.Text;

namespace TieRodCalc.Cli.Tests;

/// <summary>Valid and invalid documents of YAML as files, through the commands.</summary>
public sealed class YamlDocumentTests : IDisposable
{
    private const string Sound = CheckJobs.W2 + "\n";

    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-yaml").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>Each with where it is refused. What is added stands behind the 16 lines of a sound job, or before them.</summary>
    public static TheoryData<string, string, string, string> Refused => new()
    {
        { "anchor", "", "job: &a demo\n", ":17:6: error: anchors are not read" },
        { "alias", "", "job: *a\n", ":17:6: error: aliases are not read" },
        { "alias of itself", "", "job: &a [*a]\n", ":17:6: error: anchors are not read" },
        { "merge key", "", "steering:\n  <<: {layout: rod per side}\n", ":18:3: error: merge keys are not read" },
        { "merge of an alias", "", "<<: *a\n", ":17:1: error: merge keys are not read" },
        { "tag", "", "job: !!str demo\n", ":17:6: error: tags are not read" },
        { "tag of an object", "", "job: !<tag:x,2000:object> {a: b}\n", ":17:6: error: tags are not read" },
        { "set", "", "? a\n? b\n", ":17:3: error: the job has no key 'a'" },
        { "second document", "", "---\njob: other\n", ":17:1: error: a second document begins here" },
        { "document behind the end", "", "...\njob: other\n", ":18:1: error: a second document begins here" },
        { "other version of YAML", "%YAML 1.1\n---\n", "", ":1:1: error: this program reads YAML 1.2" },
        { "directive for tags", "%TAG ! tag:x,2000:\n---\n", "", ":1:1: error: tags are not read" },
        { "tab", "", "steering:\n\tlayout: rod per side\n", ":18:1: error: a tab cannot indent a line" },
        { "NUL", "", "job: a\0b\n", ":17:7: error: a control character (U+0000)" },
        { "escaped NUL", "", "job: \"a\\0b\"\n", ":17:6: error: a control character, even an escaped one" },
        { "byte-order mark inside", "", "\uFEFFjob: demo\n", ":17:1: error: " },
        { "open quote", "", "job: \"demo\n", ":17:6: error: a quotation mark opens here and never closes" },
        { "open bracket", "", "bump: [{side: left\n", ":17:8: error: the bracket '{' opens here and never closes" },
        { "key of a list", "", "? [a]\n: b\n", ":17:3: error: a key must be a plain text" },
        { "duplicate key", "", "units: in\n", ":17:1: error: the key 'units' stands here already, in line 2" },
        { "octal and words", "", "job: demo\nbump: 0o17\n", ":18:7: error: 'bump' must be a list" },
        { "literal block for a number", "", "rules:\n  mark: |\n    1/32 ell\n", ":18:9: error: " },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_document_is_refused_at_its_place(string what, string before, string behind, string error)
    {
        string path = Write($"{what}.yaml", Encoding.UTF8.GetBytes(before + Sound + behind));
        AssertRefused(path, path + error, what);
    }

    [Fact]
    public void A_bomb_of_aliases_is_refused_at_each_place()
    {
        StringBuilder bomb = new("tierodcalc: 1\na0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 30; i++)
        {
            bomb.Append(CultureInfo.InvariantCulture, $"a{i}: &a{i} [").AppendJoin(", ", Enumerable.Repeat($"*a{i - 1}", 9)).Append("]\n");
        }

        string path = Write("bomb.yaml", Encoding.UTF8.GetBytes(bomb.ToString()));
        AssertRefused(path, path + ":31:6: error: anchors are not read", "bomb");
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    public void Deep_nesting_is_refused_where_it_is_too_deep(string opening)
    {
        string deep = string.Concat(Enumerable.Repeat(opening, 100_000));
        string path = Write("deep.yaml", Encoding.UTF8.GetBytes($"{Sound}bump:\n  {deep}"));
        AssertRefused(path, $"{path}:18:{3 + (63 * opening.Length)}: error: lists and keys are nested more than 64 deep", opening);
    }

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("utf-32")]
    public void Text_of_another_encoding_is_told(string encoding)
    {
        Encoding other = Encoding.GetEncoding(encoding);
        string path = Write("other.yaml", [.. other.GetPreamble(), .. other.GetBytes(Sound)]);
        AssertRefused(path, $"{path}: error: the file is UTF-", encoding);
    }

    [Fact]
    public void A_byte_that_is_no_utf_8_is_told_at_its_place()
    {
        string path = Write("latin.yaml", [.. Encoding.UTF8.GetBytes(Sound + "job: caf"), 0xE9, (byte)'\n']);
        AssertRefused(path, path + ":17:9: error: the byte 0xE9 here is not UTF-8", "latin");
    }

    /// <summary>Spellings of one and the same job.</summary>
    public static TheoryData<string, string> Valid => new()
    {
        { "byte-order mark", "\uFEFF" + Sound },
        { "CR LF", Sound.Replace("\n", "\r\n", StringComparison.Ordinal) },
        { "CR", Sound.Replace("\n", "\r", StringComparison.Ordinal) },
        { "no end of line at the end", Sound.TrimEnd() },
        { "markers", "---\n" + Sound + "...\n" },
        { "directive and comments", "# before\n%YAML 1.2\n--- # begins\n" + Sound + "# behind\n" },
        { "tabs between", Sound.Replace("length: 45", "length:\t45", StringComparison.Ordinal) },
        { "quotes", Sound.Replace("units: mm", "\"units\": 'mm'", StringComparison.Ordinal) },
        { "escapes", Sound.Replace("id: s", "id: \"\\x73\"", StringComparison.Ordinal) },
        { "folded text", Sound.Replace("units: mm", "units: >-\n  mm", StringComparison.Ordinal) },
        { "literal text", Sound.Replace("length: 120 mm", "length: |-\n      120 mm", StringComparison.Ordinal) },
        { "question marks", Sound.Replace("units: mm", "? units\n: mm", StringComparison.Ordinal) },
        { "lists without indentation", Sound.Replace("inner_ends:\n  - {", "inner_ends:\n- {", StringComparison.Ordinal) },
        { "brackets over lines", Sound.Replace("{id: i, ", "{\n      id: i,\n\n  # here\n      ", StringComparison.Ordinal) },
        { "a comma too many", Sound.Replace("adjust: 2 mm}", "adjust: 2 mm,}", StringComparison.Ordinal) },
    };

    [Theory]
    [MemberData(nameof(Valid))]
    public void A_job_may_be_written_in_every_way_of_YAML(string what, string text)
    {
        string plain = Write("plain.yaml", Encoding.UTF8.GetBytes(Sound));
        string other = Write("other.yaml", Encoding.UTF8.GetBytes(text));
        CommandLine expected = CommandLine.Run("plan", plain, "--json");
        Assert.InRange(expected.Status, 0, 1);
        Assert.True(what.Length == 0 || File.ReadAllText(plain) != text, what);
        Assert.Equal(expected, CommandLine.Run("plan", other, "--json"));
    }

    private static void AssertRefused(string path, string error, string what)
    {
        foreach (string command in new[] { "check", "plan", "toe" })
        {
            CommandLine run = CommandLine.Run(command, path);
            Assert.True(run.Status == 2 && run.Output.Length == 0, $"{what}: {run}");
            Assert.Contains(error, run.Error, StringComparison.Ordinal);
        }
    }

    private string Write(string name, byte[] content)
    {
        string path = Path.Combine(_folder, name);
        File.WriteAllBytes(path, content);
        return path;
    }
}
