using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace TieRodCalc.Tests.Architecture;

/// <summary>The source files, found from the place of this one.</summary>
internal static partial class SourceTree
{
    public static string Root { get; } = FindRoot();

    /// <summary>The files of a project under src, each with the folder that it stands in ("" for the project's own).</summary>
    public static IEnumerable<(string Folder, string Path)> Files(string project)
    {
        string root = Path.Combine(Root, "src", project);
        foreach (string path in Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories))
        {
            string folder = Path.GetDirectoryName(Path.GetRelativePath(root, path)) ?? "";
            string first = folder.Split(Path.DirectorySeparatorChar)[0];
            if (first is not ("bin" or "obj"))
            {
                yield return (folder, path);
            }
        }
    }

    /// <summary>The code of a file without comments and without what stands in quotes.</summary>
    public static string Code(string path) => CommentOrText().Replace(File.ReadAllText(path), " ");

    [GeneratedRegex("""//[^\n]*|/\*.*?\*/|"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)'""", RegexOptions.Singleline)]
    private static partial Regex CommentOrText();

    private static string FindRoot([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
