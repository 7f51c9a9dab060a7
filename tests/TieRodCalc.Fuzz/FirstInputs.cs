using System.Text;
using System.Text.RegularExpressions;

namespace TieRodCalc.Fuzz;

/// <summary>What the fuzzer starts from: the samples, made small, and the spellings of values of the schemas.</summary>
internal static partial class FirstInputs
{
    /// <summary>A longer input is mutated at a place that matters too seldom.</summary>
    private const int MostBytes = 4_000;

    private const string PartsLine = "parts: [../parts/pinewater.yaml]\n";

    private const string VersionLine = "tierodcalc: 1\n";

    /// <summary>Those of a target.</summary>
    public static IEnumerable<byte[]> Of(Target target) => (target.Name switch
    {
        "job" => Samples("jobs").Concat(WholeJobs()),
        "parts" => PartFiles(),
        "figures" => Figures.FirstOnes(),
        _ => Values().Distinct().Where(value => target.Read(Encoding.UTF8.GetBytes(value))),
    }).Select(Encoding.UTF8.GetBytes);

    /// <summary>The samples with the parts that they name instead of their file.</summary>
    public static IEnumerable<string> WholeJobs()
    {
        string parts = Samples("parts").Single()[VersionLine.Length..];
        return Samples("jobs").Where(job => job.Contains(PartsLine, StringComparison.Ordinal))
            .Select(job => job.Replace(PartsLine, parts, StringComparison.Ordinal));
    }

    /// <summary>Each small sample, and each of its lists by itself.</summary>
    private static IEnumerable<string> PartFiles()
    {
        foreach (string file in Samples("parts"))
        {
            yield return file;
            foreach (string list in TopLevel().Split(file[VersionLine.Length..]).Where(list => list.Length > 0))
            {
                yield return VersionLine + list;
            }
        }
    }

    private static IEnumerable<string> Values() => Vocabulary.OfSchemas()
        .Concat(Samples("jobs").Concat(Samples("parts", int.MaxValue)).SelectMany(file => Scalar().Matches(file)).Select(match => match.Groups[1].Value));

    /// <summary>The samples of a folder that are not too long, without comments, empty lines and names of parts.</summary>
    private static IEnumerable<string> Samples(string folder, int most = MostBytes) =>
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "catalog-samples", folder), "*.yaml").Order(StringComparer.Ordinal)
            .Select(path => Blank().Replace(PartName().Replace(Comment().Replace(File.ReadAllText(path), ""), ""), "\n").TrimStart('\n'))
            .Where(text => text.Length <= most);

    [GeneratedRegex("""(?:^|[ ]+)#[^\n]*""", RegexOptions.Multiline)]
    private static partial Regex Comment();

    [GeneratedRegex("""^[ ]{4}name:[^\n]*""", RegexOptions.Multiline)]
    private static partial Regex PartName();

    [GeneratedRegex("""\n\s*\n""")]
    private static partial Regex Blank();

    [GeneratedRegex("""^(?=[a-z])""", RegexOptions.Multiline)]
    private static partial Regex TopLevel();

    [GeneratedRegex(""":[ ]+([^\s,{}\[\]][^,{}\[\]\n]*)""")]
    private static partial Regex Scalar();
}
