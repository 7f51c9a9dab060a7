using System.Text.RegularExpressions;
using TieRodCalc.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>Jobs made out of others by a change of words, and what reader and planner make of them without the command line.</summary>
internal static partial class JobChanges
{
    /// <summary>The job with other words; words that are not there would leave a test checking nothing.</summary>
    public static string With(this string job, string words, string others)
    {
        Assert.Contains(words, job, StringComparison.Ordinal);
        return job.Replace(words, others, StringComparison.Ordinal);
    }

    /// <summary>The job with every left-hand thread made right-hand and the other way round.</summary>
    public static string WithHandsSwapped(this string job) =>
        ThreadKey().Replace(job, match => $"thread: {match.Groups[1].Value}{(match.Groups[2].Success ? string.Empty : " LH")},");

    public static Reading<Job> Read(string job)
    {
        using MemoryStream content = new(System.Text.Encoding.UTF8.GetBytes(job));
        Reading<Job> reading = JobReader.Read(content, "-", string.Empty);
        Assert.Empty(reading.Problems);
        return reading;
    }

    /// <summary>The plan of the first rod.</summary>
    public static RodPlan Plan(string job)
    {
        JobRod rod = Read(job).Value!.Rods[0];
        return RodPlanner.Plan(rod.Rod!, rod.Request!);
    }

    public static RodSolution Solution(string job) => Plan(job).Solution!;

    [GeneratedRegex("thread: ([^,]+?)( LH)?,")]
    private static partial Regex ThreadKey();
}
