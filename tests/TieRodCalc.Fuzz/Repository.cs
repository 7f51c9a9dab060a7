using System.Runtime.CompilerServices;

namespace TieRodCalc.Fuzz;

/// <summary>Where the files of the repository are.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Folder(), "..", ".."));

    private static string Folder([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
