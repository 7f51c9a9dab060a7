using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>Faults of YAML itself: said in plain words, at their place, after what was wrong before them.</summary>
public class SyntaxFaultTests
{
    [Theory]
    [InlineData("tierodcalc: 1\njob: «'»demo\n", "a quotation mark opens here and never closes")]
    [InlineData("tierodcalc: 1\njob: \"9\"«\"»\n", "a quotation mark opens here and never closes")]
    [InlineData("tierodcalc: 1\njob: demo\nrules: «{»mark: 1 in\nrods: c\n", "the bracket '{' opens here and never closes")]
    [InlineData("tierodcalc: 1\njob: demo\nrods: «[»\n", "the bracket '[' opens here and never closes")]
    [InlineData("tierodcalc: 1\njob: demo\nrules: «{»mark: 1 in,\n", "the bracket '{' opens here and never closes")]
    [InlineData("tierodcalc: 1\njob: demo\nrules: {mark: 1 in«]»\n", "a comma or a closing '}' is missing")]
    [InlineData("tierodcalc: 1\njob: demo«:» x\n", "a colon and a space cannot stand inside a value")]
    [InlineData("tierodcalc: 1\njob: demo\nparts:\n«\t»- x\n", "a tab cannot indent a line")]
    [InlineData("tierodcalc: 1\njob: demo\nrods:\n  - name: left\n  «\t»side: left\n", "a tab cannot indent a line")]
    [InlineData("tierodcalc: 1\njob: «@»demo\n", "a value cannot begin with this character")]
    [InlineData("tierodcalc: 1\njob: «\"C:»\\parts\"\n", "a backslash in double quotes begins an escape")]
    [InlineData("tierodcalc: 1\njob: 'a' «b»\n", "this does not fit what stands before it")]
    [InlineData("tierodcalc: 1\njob: demo\n«other»\n", "this does not fit what stands before it")]
    [InlineData("tierodcalc: 1\njob: demo\nparts: «-» a\n", "a list in lines begins on a line of its own")]
    [InlineData("tierodcalc: 1\njob: demo\nparts: «]»\n", "a value is missing here")]
    [InlineData("tierodcalc: 1\njob: demo\nparts: []«]»\n", "this does not fit what stands before it")]
    public void Is_said_in_plain_words(string marked, string phrase) => new Marked(marked).Problem(phrase);

    [Fact]
    public void Comes_after_the_problems_before_it()
    {
        IReadOnlyList<Problem> problems = new Marked("""
            tierodcalc: 1
            job: demo
            «unit»: in
            rods:
              - name: left
                side: «middle»
                inner: re-1
                outer: re-2
                nuts: {inner: none, outer: none}
                length: 15«»
                adjust: 3/16 in
              - «nmae»: «[»
            """).Problems();
        Assert.Contains("the bracket '['", problems[^1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_that_may_stand_behind_the_fault_is_not_called_missing()
    {
        // The first rod is closed, so it lacks what it lacks; the second one is not.
        CheckedFile read = Marked.Check("tierodcalc: 1\nrods:\n  - name: a\n  - name: b\n    side: 'x\n");
        Assert.Equal(5, read.Problems.Count(problem => problem.Line == 3));
        Assert.Equal(6, read.Problems.Count);
        Assert.Equal((5, 11), (read.Problems[^1].Line, read.Problems[^1].Column));
    }

    [Fact]
    public void An_id_that_may_stand_behind_the_fault_is_not_called_unknown() => new Marked(
        "tierodcalc: 1\nrods:\n  - {name: a, inner: x, outer: y, sleeve: z, nuts: {inner: none, outer: none}, length: 9 in, adjust: 0 in}\nsleeves: «'»\n")
        .Problem("never closes");

    [Fact]
    public void Before_the_version_it_stands_alone()
    {
        new Marked("job: «'»demo\n").Problem("never closes");
        new Marked("tierodcalc: «2»\njob: 'demo\n").Problem("another version");
    }
}
