using System.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>
/// A file in which the expected places of problems stand between « and »: every test of a problem is at once one of its
/// line, its column and what is marked. An empty mark stands where something is missing.
/// </summary>
internal sealed class Marked
{
    private readonly List<(int Line, int Column, string Text)> _marks = [];

    public Marked(string marked)
    {
        StringBuilder text = new();
        int line = 1;
        int lineStart = 0;
        int open = -1;
        foreach (char c in marked)
        {
            switch (c)
            {
                case '«':
                    open = text.Length;
                    break;
                case '»':
                    _marks.Add((line, open - lineStart + 1, OrNothing(text.ToString(open, text.Length - open))));
                    break;
                default:
                    text.Append(c);
                    if (c == '\n')
                    {
                        line++;
                        lineStart = text.Length;
                    }

                    break;
            }
        }

        Text = text.ToString();
    }

    public string Text { get; }

    /// <summary>A sample with one piece of it replaced.</summary>
    public static Marked In(string sample, string piece, string instead)
    {
        Assert.Contains(piece, sample, StringComparison.Ordinal);
        int at = sample.IndexOf(piece, StringComparison.Ordinal);
        return new Marked(sample[..at] + instead + sample[(at + piece.Length)..]);
    }

    public static CheckedFile Check(string text) => Check(Encoding.UTF8.GetBytes(text));

    public static CheckedFile Check(byte[] content)
    {
        using MemoryStream stream = new(content);
        return JobReader.Check(stream, "-", string.Empty);
    }

    /// <summary>The problems of the file, which must stand at the marks, in their order.</summary>
    public IReadOnlyList<Problem> Problems()
    {
        CheckedFile read = Check(Text);
        Assert.Equal(_marks, read.Problems.Select(Place));
        Assert.All(read.Problems, problem => Assert.Equal("-", problem.File));
        Assert.Null(read.Job);
        Assert.Null(read.Parts);
        return read.Problems;
    }

    /// <summary>The one problem of the file, which must stand at the one mark.</summary>
    public Problem Problem(string phrase, string? suggestion = null)
    {
        Problem problem = Assert.Single(Problems());
        Assert.Contains(phrase, problem.Message, StringComparison.Ordinal);
        Assert.Equal(suggestion, problem.Suggestion);
        return problem;
    }

    /// <summary>Where something is missing, the one character behind it is marked, whatever it is.</summary>
    private static string OrNothing(string marked) => marked is " " or "," or "}" or "]" ? "" : marked;

    private static (int Line, int Column, string Text) Place(Problem problem)
    {
        Assert.NotNull(problem.SourceLine);
        int start = problem.Column - 1;
        bool behind = start == problem.SourceLine.Length;
        return (problem.Line, problem.Column, behind ? "" : OrNothing(problem.SourceLine.Substring(start, problem.Length)));
    }
}

/// <summary>Reads naturally at the end of a row of replacements.</summary>
internal static class MarkedText
{
    public static Marked AsMarked(this string text) => new(text);
}
