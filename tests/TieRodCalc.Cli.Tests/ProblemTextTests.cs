using System.Text;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>How a problem of a file is shown: its place, the nearest name, the line itself and the mark below it.</summary>
public sealed class ProblemTextTests
{
    private const int Shown = 100;

    [Fact]
    public void A_problem_has_its_place_and_its_mark()
    {
        Assert.Equal(
            "job.yaml:3:5: error: wrong\n    abc defg hi\n        ^^^^\n",
            Appended(new Problem("job.yaml", 3, 5, 4, "wrong", "abc defg hi")));
    }

    [Fact]
    public void The_nearest_name_stands_behind_the_sentence()
    {
        Assert.StartsWith(
            "job.yaml:3:5: error: wrong. Did you mean 'defh'?\n    abc",
            Appended(new Problem("job.yaml", 3, 5, 4, "wrong", "abc defg hi", "defh")),
            StringComparison.Ordinal);
        Assert.DoesNotContain("nearest", Appended(new Problem("job.yaml", 3, 5, 4, "wrong", "abc defg hi")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_as_a_whole_has_no_place_in_it()
    {
        Assert.Equal("job.yaml: error: empty\n", Appended(new Problem("job.yaml", 0, 0, 0, "empty")));
        Assert.Equal("job.yaml: error: empty\n", Appended(new Problem("job.yaml", 0, 0, 0, "empty", "a line")));
    }

    [Fact]
    public void A_note_is_called_one() => Assert.Equal(
        "job.yaml:1:1: note: unused\n    abc\n    ^\n", Appended(new Problem("job.yaml", 1, 1, 1, "unused", "abc"), "note"));

    [Fact]
    public void Tabs_stay_tabs_below_the_line() => Assert.Equal(
        "f:1:6: error: m\n    \ta\tb cd\n    \t \t  ^^\n", Appended(new Problem("f", 1, 6, 2, "m", "\ta\tb cd")));

    [Fact]
    public void A_place_behind_the_line_is_marked_there() => Assert.Equal(
        "f:1:4: error: m\n    abc\n       ^\n", Appended(new Problem("f", 1, 4, 0, "m", "abc")));

    [Fact]
    public void A_mark_does_not_run_past_the_line() => Assert.Equal(
        "f:1:3: error: m\n    abcd\n      ^^\n", Appended(new Problem("f", 1, 3, 50, "m", "abcd")));

    [Theory]
    [InlineData(1, 3, 3)]
    [InlineData(67, 3, 3)]
    [InlineData(68, 3, 3)]
    [InlineData(150, 4, 4)]
    [InlineData(300, 1, 1)]
    [InlineData(298, 7, 3)]
    [InlineData(1, 300, 100)]
    [InlineData(60, 300, 41)]
    [InlineData(150, 300, 67)]
    public void A_long_line_is_shown_around_the_place(int column, int length, int marks)
    {
        // Every place of the line can be told by its character.
        string line = string.Concat(Enumerable.Range(0, 300).Select(place => (char)(0x4E00 + place)));

        string[] lines = Appended(new Problem("f", 1, column, length, "m", line)).Split('\n');

        string part = lines[1][4..];
        Assert.InRange(part.Length, 1, Shown);
        Assert.Contains(part, line, StringComparison.Ordinal);
        int marked = lines[2].IndexOf('^', StringComparison.Ordinal);
        Assert.Equal(line[column - 1], lines[1][marked]);
        Assert.Equal(new string('^', marks), lines[2].TrimStart());
        Assert.InRange(lines[2].Length, 5, lines[1].Length);
        Assert.True(column > 67 || part[0] == line[0], "a place near the start is shown with the start of its line");
    }

    [Theory]
    [InlineData(1, "1 error; nothing was computed.\n")]
    [InlineData(2, "2 errors; nothing was computed.\n")]
    public void Problems_are_counted(int count, string last)
    {
        Problem[] problems = [.. Enumerable.Range(1, count).Select(line => new Problem("f", line, 1, 1, "m", "a"))];

        string text = ProblemText.Of(problems);
        Assert.EndsWith("    ^\n" + last, text, StringComparison.Ordinal);
        Assert.Equal(count, text.Split(": error: m\n").Length - 1);
    }

    private static string Appended(Problem problem, string kind = "error")
    {
        StringBuilder text = new();
        ProblemText.Append(text, problem, kind);
        return text.ToString();
    }
}
