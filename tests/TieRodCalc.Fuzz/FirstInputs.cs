using System.Text;
using System.Text.RegularExpressions;

namespace TieRodCalc.Fuzz;

/// <summary>What the fuzzer starts from: the samples, made small, and the spellings of values of the schemas.</summary>
/// <param name="root">The folder of the repository.</param>
internal sealed partial class FirstInputs(string root)
{
    /// <summary>A longer input is mutated at a place that matters too seldom.</summary>
    private const int MostBytes = 4_000;

    private const string PartsLine = "parts: [../parts/pinewater.yaml]\n";

    private const string VersionLine = "tierodcalc: 1\n";

    /// <summary>Those of a target.</summary>
    public IEnumerable<byte[]> Of(Target target) => target.Name switch
    {
        "job" => Jobs().Select(Encoding.UTF8.GetBytes),
        "parts" => PartFiles().Select(Encoding.UTF8.GetBytes),
        _ => Values().Distinct().Select(Encoding.UTF8.GetBytes).Where(target.Read),
    };

    /// <summary>Each sample as it is, and with the parts that it names instead of their file.</summary>
    private IEnumerable<string> Jobs()
    {
        string parts = Samples("parts").First(file => file.Length < MostBytes)[VersionLine.Length..];
        foreach (string job in Samples("jobs").Where(file => file.Length < MostBytes))
        {
            yield return job;
            if (job.Contains(PartsLine, StringComparison.Ordinal))
            {
                yield return job.Replace(PartsLine, parts, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>Each small sample, and each of its lists by itself.</summary>
    private IEnumerable<string> PartFiles()
    {
        foreach (string file in Samples("parts").Where(file => file.Length < MostBytes))
        {
            yield return file;
            foreach (string list in TopLevel().Split(file[VersionLine.Length..]).Where(list => list.Length > 0))
            {
                yield return VersionLine + list;
            }
        }
    }

    private IEnumerable<string> Values() => Vocabulary.OfSchemas(root)
        .Concat(Samples("jobs").Concat(Samples("parts")).SelectMany(file => Scalar().Matches(file)).Select(match => match.Groups[1].Value));

    /// <summary>The samples of a folder, without comments, empty lines and names of parts.</summary>
    private IEnumerable<string> Samples(string folder) =>
        Directory.EnumerateFiles(Path.Combine(root, "catalog-samples", folder), "*.yaml").Order(StringComparer.Ordinal)
            .Select(path => Blank().Replace(PartName().Replace(Comment().Replace(File.ReadAllText(path), ""), ""), "\n").TrimStart('\n'));

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
