using TieRodCalc.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Fuzz;

/// <summary>The reader of files: what a file holds, with finite numbers, or problems with their places.</summary>
internal static class FileReaders
{
    private static readonly string[] s_commands = ["plan", "asbuilt", "choose", "toe", "bump"];

    /// <summary>Reads a part file (or a job, where it has become one).</summary>
    public static bool Parts(byte[] bytes) => Read(bytes) is { Problems.Count: 0 };

    /// <summary>Reads a job, and computes all that it is for where it is sound.</summary>
    public static bool Job(byte[] bytes)
    {
        if (Read(bytes).Job is not { } job)
        {
            return false;
        }

        foreach (JobRod rod in job.Rods)
        {
            if (rod is { Rod: { } made, Request: { } request })
            {
                Finite.Check(RodPlanner.Plan(made, request), "plan");
                Finite.Check(RodRemedies.Of(made, request), "remedies");
            }
        }

        foreach (string command in s_commands)
        {
            InProcess.Run(bytes, command, "-");
            InProcess.Run(bytes, command, "-", "--json");
        }

        return true;
    }

    private static CheckedFile Read(byte[] bytes)
    {
        using MemoryStream content = new(bytes);
        CheckedFile read = JobReader.Check(content, "-", string.Empty);
        Finding.Unless(
            (read.Problems.Count == 0) == (read.Job is not null || read.Parts is not null), "neither read nor refused, or both");
        foreach (Problem problem in read.Problems.Concat(read.Notes))
        {
            Finding.Unless(IsPlaced(problem) || (IsOfWholeFile(problem) && read.Problems.Count == 1), $"no place in the file: {problem}");
            Finding.Unless(problem.Message.Length > 0 && !problem.Message.Any(char.IsControl), $"cannot be shown: {problem}");
        }

        Finite.Check(read.Job, "job");
        Finite.Check(read.Parts, "parts");
        return read;
    }

    /// <summary>Whether it has line and column, inside of the line that is shown or just behind it.</summary>
    private static bool IsPlaced(Problem problem) => problem is { Line: > 0, Column: > 0, Length: > 0, SourceLine: { } line }
        && problem.Column <= line.Length + 1
        && problem.Column + problem.Length <= line.Length + 2;

    /// <summary>Whether the file as a whole is meant: it is UTF-16, say, or does not say which version it is.</summary>
    private static bool IsOfWholeFile(Problem problem) => problem is { Line: 0, Column: 0, Length: 0, SourceLine: null };
}
