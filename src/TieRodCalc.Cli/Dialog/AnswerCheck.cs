using System.Text;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Dialog;

/// <summary>Holds the answers against the reader of the files, which alone says what is right.</summary>
internal static class AnswerCheck
{
    private const string Name = "the answers";

    /// <summary>
    /// What is wrong now that a last answer was given, in words, or null. What lies in no answer is something that was not asked yet.
    /// </summary>
    /// <param name="answers">The answers; all but the last were sound without it.</param>
    /// <param name="last">Its key.</param>
    public static string? Fault(Answers answers, string last)
    {
        JobText text = JobText.Whole(answers);
        (Problem Problem, int Column, string Key)[] found =
        [
            .. Read(text).Problems
                .Select(problem => (Problem: problem, Place: text.At(problem.Line)))
                .Where(one => one.Place is { } place && one.Problem.Column >= place.Column)
                .Select(one => (one.Problem, one.Place!.Value.Column, one.Place.Value.Key)),
        ];
        return found.Length == 0 ? null : Words(found.FirstOrDefault(one => one.Key == last, found[0]), last);
    }

    /// <summary>What is wrong with the whole job, in words, or null.</summary>
    public static string? Fault(Answers answers)
    {
        Reading<Job> reading = Read(JobText.Whole(answers));
        return reading.Problems.Count == 0 ? null : string.Concat(reading.Problems.Select(problem => $"{problem.Message}\n"));
    }

    private static Reading<Job> Read(JobText text)
    {
        using MemoryStream content = new(Encoding.UTF8.GetBytes(text.ToString()));
        return JobReader.Read(content, Name, string.Empty);
    }

    /// <summary>The message; the place is marked in the value, or in its line where it is that of an earlier answer.</summary>
    private static string Words((Problem Problem, int Column, string Key) found, string last)
    {
        Problem problem = found.Problem;
        StringBuilder words = new(problem.Message);
        _ = problem.Suggestion is { } nearest ? words.Append("; nearest: ").Append(nearest) : words;
        words.Append('\n');
        if (problem.SourceLine is { } line)
        {
            int from = found.Key == last ? found.Column - 1 : line.Length - line.TrimStart().Length;
            ProblemText.AppendMarked(words, line[from..], problem.Column - 1 - from, problem.Length);
        }

        return words.ToString();
    }
}
