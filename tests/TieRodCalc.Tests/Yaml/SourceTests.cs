using System.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>The bytes of a file.</summary>
public sealed class SourceTests : IDisposable
{
    private const string Sound = "tierodcalc: 1\njob: demo\n";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    [InlineData("\u0085")]
    public void Every_end_of_line_counts(string lineEnd)
    {
        string text = "tierodcalc: 1\njob: demo\nunits: inches\n".Replace("\n", lineEnd, StringComparison.Ordinal);
        Problem problem = Assert.Single(Marked.Check(text).Problems);
        Assert.Equal((3, 8, 6, "units: inches"), (problem.Line, problem.Column, problem.Length, problem.SourceLine));
    }

    [Fact]
    public void A_byte_order_mark_moves_no_column()
    {
        byte[] content = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("tierodcalc: 2\n")];
        Problem problem = Assert.Single(Marked.Check(content).Problems);
        Assert.Equal((1, 13, 1), (problem.Line, problem.Column, problem.Length));
        Assert.Empty(Marked.Check([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Sound)]).Problems);
    }

    [Fact]
    public void A_wide_character_counts_as_the_line_that_is_shown_counts_it() =>
        new Marked("tierodcalc: 1\njob: demo\nrules: {tip_gap: «\U0001F600»}\n").Problem("expected a length");

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Utf_16_is_told_by_its_name(bool withMark)
    {
        foreach (Encoding encoding in new Encoding[] { new UnicodeEncoding(false, withMark), new UnicodeEncoding(true, withMark) })
        {
            Problem problem = Assert.Single(Marked.Check([.. encoding.GetPreamble(), .. encoding.GetBytes(Sound)]).Problems);
            Assert.Contains("UTF-16", problem.Message, StringComparison.Ordinal);
            Assert.Equal((0, 0, 0, null), (problem.Line, problem.Column, problem.Length, problem.SourceLine));
        }
    }

    [Fact]
    public void A_byte_that_is_no_utf_8_has_its_place()
    {
        byte[] content = [.. Encoding.UTF8.GetBytes("tierodcalc: 1\njob: caf"), 0xE9, .. Encoding.UTF8.GetBytes(" °\nx: [\n")];
        Problem problem = Assert.Single(Marked.Check(content).Problems);
        Assert.Contains("0xE9", problem.Message, StringComparison.Ordinal);
        Assert.Equal((2, 9, 1, "job: caf\uFFFD °"), (problem.Line, problem.Column, problem.Length, problem.SourceLine));
    }

    [Theory]
    [InlineData('\0', "U+0000")]
    [InlineData('\u0007', "U+0007")]
    [InlineData('\u001B', "U+001B")]
    [InlineData('\u007F', "U+007F")]
    [InlineData('\u009B', "U+009B")]
    [InlineData('\uFFFE', "U+FFFE")]
    public void A_control_character_is_refused_and_not_shown(char control, string name)
    {
        Problem problem = Assert.Single(Marked.Check($"tierodcalc: 1\n# a{control}b\nx: [\n").Problems);
        Assert.Contains(name, problem.Message, StringComparison.Ordinal);
        Assert.Equal((2, 4, 1, "# a\uFFFDb"), (problem.Line, problem.Column, problem.Length, problem.SourceLine));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("# nothing but a comment\n")]
    [InlineData("---\n")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("job")]
    [InlineData("job: x\nunits: parsecs\n")]
    [InlineData("materials: [{}]\n")]
    public void Without_a_version_there_is_one_problem(string text)
    {
        Problem problem = Assert.Single(Marked.Check(text).Problems);
        Assert.Contains("'tierodcalc' is missing: this program reads files that say 'tierodcalc: 1'", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tierodcalc: «2»\nunits: parsecs\njob: &x *y\n")]
    [InlineData("tierodcalc: «1.0»\nx: y\n")]
    [InlineData("tierodcalc: «one»\n")]
    [InlineData("«tierodcalc»:\n")]
    [InlineData("«tierodcalc»: ~\n")]
    [InlineData("tierodcalc: «[1]»\n")]
    public void Of_another_version_there_is_one_problem(string marked) =>
        new Marked(marked).Problem("another version: this program reads files that say 'tierodcalc: 1'");

    [Fact]
    public void Eight_mebibytes_are_read_and_not_a_byte_more()
    {
        byte[] content = new byte[8 * 1024 * 1024];
        content.AsSpan().Fill((byte)'#');
        Encoding.UTF8.GetBytes(Sound).CopyTo(content, 0);
        Assert.Empty(Marked.Check(content).Problems);
        string path = _folder.At("large.yaml");
        File.WriteAllBytes(path, content);
        Assert.Empty(JobReader.Check(path).Problems);

        byte[] larger = [.. content, (byte)'#'];
        File.WriteAllBytes(path, larger);
        foreach (CheckedFile read in new[] { Marked.Check(larger), JobReader.Check(path) })
        {
            Problem problem = Assert.Single(read.Problems);
            Assert.Equal(("the file is larger than 8 MiB", 0), (problem.Message, problem.Line));
        }
    }

    [Fact]
    public void An_endless_stream_is_not_read_to_its_end()
    {
        using EndlessStream stream = new();
        Assert.Contains("8 MiB", Assert.Single(JobReader.Read(stream, "-", "").Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stream_that_fails_is_a_problem()
    {
        using FailingStream stream = new();
        Problem problem = Assert.Single(JobReader.Read(stream, "-", "").Problems);
        Assert.Equal(("-", 0), (problem.File, problem.Line));
        Assert.Contains("cannot be read: the cable is out", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_file_is_a_problem_of_the_file_as_a_whole()
    {
        AssertProblem("", "cannot be the name");
        AssertProblem("a\0b", "cannot be the name");
        AssertProblem(_folder.At("missing.yaml"), "no such file");
        AssertProblem(_folder.At("missing/missing.yaml"), "no such file");
        AssertProblem(_folder.At(""), "a folder, not a file");
        AssertProblem(_folder.Write("empty.yaml", ""), "'tierodcalc: 1'");
    }

    [Fact]
    public void A_device_is_not_opened()
    {
        if (!OperatingSystem.IsWindows())
        {
            AssertProblem("/dev/zero", "a device or a pipe");
            File.CreateSymbolicLink(_folder.At("link.yaml"), "/dev/zero");
            AssertProblem(_folder.At("link.yaml"), "a device or a pipe");
        }
    }

    [Fact]
    public void A_link_to_a_file_is_followed()
    {
        if (!OperatingSystem.IsWindows())
        {
            _folder.Write("real.yaml", Sound);
            File.CreateSymbolicLink(_folder.At("link.yaml"), _folder.At("real.yaml"));
            Assert.Empty(JobReader.Read(_folder.At("link.yaml")).Problems);
        }
    }

    private static void AssertProblem(string path, string phrase)
    {
        Problem problem = Assert.Single(JobReader.Read(path).Problems);
        Assert.Contains(phrase, problem.Message, StringComparison.Ordinal);
        Assert.Equal((path, 0, 0, 0), (problem.File, problem.Line, problem.Column, problem.Length));
    }

    private sealed class EndlessStream : MemoryStream
    {
        public override int Read(byte[] buffer, int offset, int count) => count;
    }

    private sealed class FailingStream : MemoryStream
    {
        public override int Read(byte[] buffer, int offset, int count) => throw new IOException("the cable is out.");
    }
}
