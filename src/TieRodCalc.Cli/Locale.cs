namespace TieRodCalc.Cli;

/// <summary>What a terminal can show.</summary>
internal static class Locale
{
    /// <summary>
    /// Whether drawings are to be made of ASCII alone: where the locale says a character set other than UTF-8. Where nothing is said
    /// the terminal is taken to be of today.
    /// </summary>
    /// <param name="variables">The values of LC_ALL, LC_CTYPE and LANG, of which the first that is set decides (POSIX).</param>
    public static bool IsAsciiAlone(params IEnumerable<string?> variables) =>
        variables.FirstOrDefault(value => !string.IsNullOrEmpty(value)) is { } locale
        && !locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase)
        && !locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);
}
