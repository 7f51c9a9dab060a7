using System.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Problems of files, each with the line itself and the place marked.</summary>
internal static class ProblemText
{
    /// <summary>How much of a line is shown; a longer one is shown around the place.</summary>
    private const int Shown = 100;

    /// <summary>All problems.</summary>
    public static string Of(IReadOnlyList<Problem> problems)
    {
        StringBuilder text = new();
        foreach (Problem problem in problems)
        {
            Append(text, problem, "error");
        }

        return text
            .Append(problems.Count == 1 ? "1 error" : $"{problems.Count} errors")
            .Append("; nothing was computed.\n")
            .ToString();
    }

    /// <summary>One place with its message.</summary>
    public static void Append(StringBuilder text, Problem problem, string kind)
    {
        text.Append(Place(problem)).Append(": ").Append(kind).Append(": ").Append(problem.Message);
        if (problem.Suggestion is { } nearest)
        {
            text.Append('.').Append(Suggestion.Sentence(nearest));
        }

        text.Append('\n');
        if (problem.SourceLine is { } line && problem.Column > 0)
        {
            AppendMarked(text, line, problem.Column - 1, Math.Max(1, problem.Length));
        }
    }

    /// <summary>File, line and column.</summary>
    public static string Place(Problem problem) =>
        problem.Line > 0 ? $"{problem.File}:{problem.Line}:{problem.Column}" : problem.File;

    /// <summary>A line with a place in it marked below.</summary>
    /// <param name="text">Where it is added.</param>
    /// <param name="line">The line.</param>
    /// <param name="start">Where the place begins, counted from 0.</param>
    /// <param name="length">How many characters it has, one at least.</param>
    public static void AppendMarked(StringBuilder text, string line, int start, int length)
    {
        int from = start <= Shown * 2 / 3 ? 0 : start - Shown / 3;
        string part = line[Math.Min(from, line.Length)..Math.Min(line.Length, from + Shown)];
        int marked = Math.Clamp(Math.Min(length, part.Length - (start - from)), 1, Shown);

        // Tabs stay tabs in the line below, so that the mark stands under its place at any tab width.
        text.Append("    ").Append(part).Append("\n    ");
        foreach (char character in part.AsSpan(0, Math.Min(start - from, part.Length)))
        {
            text.Append(character == '\t' ? '\t' : ' ');
        }

        text.Append('^', marked).Append('\n');
    }
}
