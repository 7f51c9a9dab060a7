namespace TieRodCalc.Yaml.Sources;

/// <summary>The version of the files that this program reads.</summary>
internal static class JobVersion
{
    /// <summary>The key.</summary>
    public const string Key = "tierodcalc";

    /// <summary>Its value.</summary>
    public const string Number = "1";

    /// <summary>What a file must say.</summary>
    public const string Wanted = "this program reads files that say 'tierodcalc: 1' at the top";
}
