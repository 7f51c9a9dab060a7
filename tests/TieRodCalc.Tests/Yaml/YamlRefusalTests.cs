using System.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>What YAML allows and these files must not use.</summary>
public class YamlRefusalTests
{
    [Theory]
    [InlineData("tierodcalc: 1\njob: «&x» demo\n", "anchors are not read")]
    [InlineData("tierodcalc: 1\njob: demo\nrods: «&x» []\n", "anchors are not read")]
    [InlineData("tierodcalc: 1\n«&k» job: demo\n", "anchors are not read")]
    [InlineData("tierodcalc: 1\njob: «*x»\n", "aliases are not read")]
    [InlineData("tierodcalc: 1\njob: demo\nparts: [«*x»]\n", "aliases are not read")]
    [InlineData("tierodcalc: 1\njob: demo\n«*k» : demo\n", "aliases are not read")]
    [InlineData("tierodcalc: 1\njob: «!!str» demo\n", "tags are not read")]
    [InlineData("tierodcalc: 1\njob: «!» demo\n", "tags are not read")]
    [InlineData("tierodcalc: 1\njob: «!<tag:yaml.org,2002:str>» demo\n", "tags are not read")]
    [InlineData("tierodcalc: 1\njob: demo\nrods: «!!seq» []\n", "tags are not read")]
    [InlineData("tierodcalc: 1\njob: demo\n«<<»: {rods: []}\n", "merge keys are not read")]
    [InlineData("tierodcalc: 1\njob: demo\n«---»\njob: other\n", "a second document begins here")]
    [InlineData("tierodcalc: 1\njob: demo\n...\n«j»ob: other\n", "a second document begins here")]
    [InlineData("«%YAML 1.1»\n---\ntierodcalc: 1\njob: demo\n", "YAML 1.2")]
    [InlineData("«%YAML 1.3» # newer\n---\ntierodcalc: 1\njob: demo\n", "YAML 1.2")]
    [InlineData("«%TAG ! tag:x,2000:»\n---\ntierodcalc: 1\njob: demo\n", "tags are not read")]
    [InlineData("«%OTHER x»\n---\ntierodcalc: 1\njob: demo\n", "unknown directive")]
    [InlineData("tierodcalc: 1\njob: demo\n«job»: other\n", "the key 'job' stands here already, in line 2")]
    [InlineData("tierodcalc: 1\njob: demo\n«\"job\"»: other\n", "the key 'job' stands here already, in line 2")]
    [InlineData("tierodcalc: 1\njob: demo\n? «[»a, b]\n: c\n", "a key must be a plain text")]
    [InlineData("tierodcalc: 1\njob: demo\n? «{»a: b}\n: c\n", "a key must be a plain text")]
    [InlineData("tierodcalc: 1\njob: demo\n«:» x\n", "the key before the colon is missing")]
    [InlineData("tierodcalc: 1\njob: «\"bell \\a\"»\n", "a control character, even an escaped one")]
    [InlineData("tierodcalc: 1\njob: «\"bell \\x9B\"»\n", "a control character, even an escaped one")]
    public void Is_refused_at_its_place(string marked, string phrase) => new Marked(marked).Problem(phrase);

    [Fact]
    public void Everything_is_reported_at_once() => Assert.Equal(
        6,
        new Marked(
            "tierodcalc: 1\njob: «&x» «!!str» demo\nparts: [«*x»]\n«<<»: {a: b}\n«job»: other\n«---»\na: b\n").Problems().Count);

    [Fact]
    public void Version_1_2_may_be_said() =>
        Assert.Empty(Marked.Check("# a comment\n%YAML 1.2\n--- # begins\ntierodcalc: 1\njob: demo\n...\n# ends\n").Problems);

    [Fact]
    public void Nesting_is_read_down_to_64()
    {
        // The lists below 'parts' begin on the second level.
        Problem deep = new Marked($"tierodcalc: 1\njob: x\nparts: [«[»{new string('[', 61)}«[»]]]\n").Problems()[1];
        Assert.Contains("nested more than 64 deep", deep.Message, StringComparison.Ordinal);
        Assert.Equal((3, 71), (deep.Line, deep.Column));
        Problem wrong = Assert.Single(
            Marked.Check($"tierodcalc: 1\njob: x\nparts: [{new string('[', 62)}{new string(']', 62)}]\n").Problems);
        Assert.Contains("must be the path", wrong.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    [InlineData("? ")]
    [InlineData("[[]")]
    public void Deep_nesting_ends_the_reading_soon(string opening)
    {
        StringBuilder text = new("tierodcalc: 1\nparts:\n  ");
        while (text.Length < 1_000_000)
        {
            text.Append(opening);
        }

        DateTime start = DateTime.UtcNow;
        Assert.NotEmpty(Marked.Check(text.ToString()).Problems);
        Assert.True(DateTime.UtcNow - start < TimeSpan.FromSeconds(5));
    }

    [Fact]
    public void Many_duplicate_keys_are_found_in_time()
    {
        StringBuilder text = new("tierodcalc: 1\njob: demo\n");
        for (int i = 0; i < 20_000; i++)
        {
            text.Append('k').Append(i % 10_000).Append(": x\n");
        }

        IReadOnlyList<Problem> problems = Marked.Check(text.ToString()).Problems;
        Assert.Equal(20_000, problems.Count);
        Assert.Equal("the key 'k0' stands here already, in line 3", problems[10_000].Message);
    }
}
