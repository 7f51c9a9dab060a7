using System.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>Files in block style: what is written is what the reader reads.</summary>
public sealed class BlockTextTests
{
    [Fact]
    public void Maps_and_lists_stand_one_key_a_line()
    {
        string text = new BlockText()
            .Comment("Invented.")
            .Field("tierodcalc", "1")
            .Open("sleeves").Item().Field("id", "s").Open("inner").Field("thread", "5/8-18 LH").Close().Field("length", "8 in").Close()
            .Item().Field("id", "t").Close().Close()
            .Open("parts").Entry("one.yaml").Close()
            .ToString();
        Assert.Equal(
            """
            # Invented.
            tierodcalc: 1
            sleeves:
              - id: s
                inner:
                  thread: 5/8-18 LH
                length: 8 in
              - id: t
            parts:
              - one.yaml

            """,
            text);
    }

    [Theory]
    [InlineData("8 in", "8 in")]
    [InlineData("8\"", "'8\"'")]
    [InlineData("it's", "\"it's\"")]
    [InlineData("a: b", "'a: b'")]
    [InlineData("a #b", "'a #b'")]
    [InlineData("- a", "'- a'")]
    [InlineData("Null", "'Null'")]
    [InlineData("", "''")]
    public void A_value_is_quoted_where_it_must_be(string value, string written) =>
        Assert.Equal($"name: {written}\n", new BlockText().Field("name", value).ToString());

    /// <summary>Every name of one or two printable ASCII characters, and some longer ones.</summary>
    [Fact]
    public void Every_value_is_read_as_it_was_given()
    {
        string[] letters = [.. Enumerable.Range('!', '~' - '!' + 1).Select(code => $"{(char)code}")];
        string[] names =
        [
            .. letters, .. letters.SelectMany(one => letters.Select(other => one + other)), .. letters.Select(one => $"a {one} b"),
            "null", "true", "1.0", "a\\'\"b", "ends with:", "'", "\"", "''", "🏁 Čárka", "x: y # z",
        ];
        BlockText text = new BlockText().Field("tierodcalc", "1").Open("materials");
        for (int i = 0; i < names.Length; i++)
        {
            text.Item().Field("id", $"m{i}").Field("name", names[i]).Close();
        }

        using MemoryStream content = new(Encoding.UTF8.GetBytes(text.ToString()));
        CheckedFile read = JobReader.Check(content, "names", string.Empty);
        Assert.Empty(read.Problems);
        Assert.Equal(names, read.Parts!.Materials.Select(material => material.Name));
    }

    [Fact]
    public void The_place_of_the_last_value_is_the_one_that_the_reader_names()
    {
        BlockText text = new BlockText().Field("tierodcalc", "1").Open("jam_nuts").Item().Field("id", "n").Field("thickness", "9 furlongs");
        (int line, int column) = text.LastValue;
        using MemoryStream content = new(Encoding.UTF8.GetBytes(text.ToString()));
        Problem problem = JobReader.Check(content, "nut", string.Empty).Problems.Single(problem => problem.Line == line);
        Assert.Equal((4, 16), (line, column));
        Assert.Equal(column + 2, problem.Column);
    }

    [Fact]
    public void What_is_not_open_cannot_be_closed() =>
        Assert.Throws<InvalidOperationException>(() => new BlockText().Open("a").Close().Close());
}
