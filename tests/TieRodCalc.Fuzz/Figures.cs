using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using TieRodCalc.Text;

namespace TieRodCalc.Fuzz;

/// <summary>
/// The figures of a sound job, replaced. What a fuzzer makes of a whole file seldom reads any more; of its values alone it often does, and
/// then all is computed from figures that nobody has thought of.
/// </summary>
internal static partial class Figures
{
    /// <summary>One reader for each kind of value; what another one reads is not put in its place.</summary>
    private static readonly ImmutableArray<Func<string, bool>> s_kinds =
    [
        text => LengthText.ParseExact(text).Fault is null,
        text => LengthText.ParseSigned(text).Fault is null,
        text => LengthText.Parse(text).Fault is null,
        text => ThreadText.Parse(text).Fault is null,
        text => ValueText.ParseAngle(text).Fault is null,
        text => ValueText.ParseStress(text).Fault is null,
        text => ValueText.ParseForce(text).Fault is null,
        text => ValueText.ParseMass(text).Fault is null,
        text => ValueText.ParsePrice(text).Fault is null,
        text => ValueText.ParseOutside(text).Fault is null,
        text => ValueText.ParseEngagement(text).Fault is null,
        text => ValueText.ParseToe(text).Fault is null,
    ];

    /// <summary>Those that are sound with the parts in them: some samples have parts of their own.</summary>
    private static readonly ImmutableArray<string> s_jobs =
        [.. FirstInputs.WholeJobs().Where(job => FileReaders.Parts(Encoding.UTF8.GetBytes(job)))];

    /// <summary>Each whole job as an input: the letter of the job, then its figures, one a line.</summary>
    public static IEnumerable<string> FirstOnes() => s_jobs.Select((job, index) =>
        string.Join('\n', Values(job).Select(value => value.Value).Prepend($"{(char)('a' + index)}")));

    /// <summary>Puts the figures of an input into the job that its first letter stands for, and computes all of it.</summary>
    public static bool Read(string text)
    {
        string[] lines = text.Split('\n');
        string job = s_jobs[Math.Abs(lines[0].FirstOrDefault() - 'a') % s_jobs.Length];
        int next = 0;
        string changed = Value().Replace(job, old =>
            KindOf(old.Value) is not { } reads ? old.Value
            : ++next < lines.Length && reads(lines[next]) ? lines[next]
            : old.Value);
        return FileReaders.Job(Encoding.UTF8.GetBytes(changed));
    }

    private static IEnumerable<Match> Values(string job) => Value().Matches(job).Where(value => KindOf(value.Value) is not null);

    private static Func<string, bool>? KindOf(string value) => s_kinds.FirstOrDefault(reads => reads(value));

    /// <summary>What stands behind a colon, a bracket or a comma.</summary>
    [GeneratedRegex("""(?<=[:\[,][ ]*)[^\s,{}\[\]:'"-][^,{}\[\]:\n'"]*|(?<=[:\[,][ ]+)-[0-9][^,{}\[\]:\n'"]*""")]
    private static partial Regex Value();
}
