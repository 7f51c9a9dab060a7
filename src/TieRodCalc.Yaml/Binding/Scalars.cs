namespace TieRodCalc.Yaml.Binding;

/// <summary>Texts as they are written into a file.</summary>
internal static class Scalars
{
    /// <summary>What may follow the first letter or digit of a text without quotes; it means nothing to YAML there.</summary>
    private const string Harmless = " ./+-±×°,()_";

    /// <summary>A text in quotes, in which nothing means anything to YAML.</summary>
    public static string Quoted(string text) =>
        $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    /// <summary>
    /// A value in block style: as it is where that is safe, otherwise in single quotes, in which it stands character by
    /// character, and in double ones where it has a single quote itself.
    /// </summary>
    public static string Written(string value) =>
        IsPlain(value) ? value : value.Contains('\'', StringComparison.Ordinal) ? Quoted(value) : $"'{value}'";

    private static bool IsPlain(string value)
    {
        if (value.Length == 0 || !char.IsLetterOrDigit(value[0]) || value[^1] == ' '
            || value.Equals("null", StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        foreach (char character in value)
        {
            if (!char.IsLetterOrDigit(character) && !Harmless.Contains(character, StringComparison.Ordinal))
            {
                return false;
            }
        }

        return true;
    }
}
