namespace TieRodCalc.Tests.Architecture;

/// <summary>A file of the repository that a test writes where TIERODCALC_UPDATE_DOCS is set, and else holds.</summary>
internal static class AcceptedFile
{
    /// <summary>Its text; empty where it is not there yet.</summary>
    public static string Read(params ReadOnlySpan<string> place) => File.Exists(PathOf(place)) ? File.ReadAllText(PathOf(place)) : string.Empty;

    /// <summary>Fails where it is not what it should be; the run that writes it anew fails too.</summary>
    public static void AssertIs(string expected, params ReadOnlySpan<string> place)
    {
        string before = Read(place);
        if (Environment.GetEnvironmentVariable("TIERODCALC_UPDATE_DOCS") is { Length: > 0 })
        {
            File.WriteAllText(PathOf(place), expected);
        }

        Assert.Equal(expected, before);
    }

    private static string PathOf(ReadOnlySpan<string> place) => Path.Combine([SourceTree.Root, .. place]);
}
