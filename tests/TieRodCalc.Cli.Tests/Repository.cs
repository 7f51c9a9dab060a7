using System.Runtime.CompilerServices;

namespace TieRodCalc.Cli.Tests;

/// <summary>Where the files of the repository are.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Folder(), "..", ".."));

    public static string Sample(params string[] path) => Path.Combine([Root, "catalog-samples", .. path]);

    private static string Folder([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
