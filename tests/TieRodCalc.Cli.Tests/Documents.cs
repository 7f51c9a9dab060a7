using System.Text.RegularExpressions;

namespace TieRodCalc.Cli.Tests;

/// <summary>The documents of the repository, found in its folders.</summary>
internal static partial class Documents
{
    /// <summary>Their paths from the top folder, with slashes: README and the like, what is in docs, the readmes of the packages.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        .. new[] { ".", "docs", "src", "tests", "catalog-samples" }
            .SelectMany(folder => Directory.EnumerateFiles(
                Path.Combine(Repository.Root, folder),
                "*.md",
                folder == "." ? SearchOption.TopDirectoryOnly : SearchOption.AllDirectories))
            .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'))
            .Where(file => !BuildFolder().IsMatch(file))
            .Order(StringComparer.Ordinal),
    ];

    public static TheoryData<string> Each
    {
        get
        {
            TheoryData<string> each = [];
            foreach (string document in All)
            {
                each.Add(document);
            }

            return each;
        }
    }

    public static string[] Lines(string document) => File.ReadAllLines(Path.Combine(Repository.Root, document));

    /// <summary>The lines of a document with whether each belongs to a block between fences, the fences counted in.</summary>
    public static IEnumerable<(string Line, bool Fenced)> Fences(IEnumerable<string> lines)
    {
        bool inside = false;
        foreach (string line in lines)
        {
            bool fence = line.StartsWith("```", StringComparison.Ordinal);
            yield return (line, inside || fence);
            inside ^= fence;
        }
    }

    [GeneratedRegex("(^|/)(bin|obj)/")]
    private static partial Regex BuildFolder();
}
