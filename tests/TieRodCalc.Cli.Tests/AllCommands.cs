namespace TieRodCalc.Cli.Tests;

/// <summary>Every command on every sample, as text and as JSON; those that are refused too.</summary>
internal static class AllCommands
{
    private static readonly string[] s_ofJobs = ["plan", "toe", "choose", "asbuilt", "bump", "check"];

    public static string[][] Lines { get; } =
    [
        .. Directory.GetFiles(Repository.Sample("jobs")).Order(StringComparer.Ordinal).SelectMany(OfJob),
        ["thread", "5/8-18", "UNF"],
        ["thread", "M16x1.5", "--into", "5/8-18", "--male-tensile", "120 ksi", "--json"],
        ["thread", "11/16-18", "--outside", "hex 1 in", "--female-tensile", "500,5 MPa"],
        ["completion", "bash"],
        ["plan", "--help"],
        ["paln"],
        ["plan", "none.yaml"],
    ];

    private static IEnumerable<string[]> OfJob(string path) =>
        s_ofJobs.SelectMany(command => command == "check" ? [[command, path]] : (string[][])[[command, path], [command, path, "--json"]]);
}
