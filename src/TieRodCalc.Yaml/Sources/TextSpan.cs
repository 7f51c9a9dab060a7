namespace TieRodCalc.Yaml.Sources;

/// <summary>A stretch of a file's text, in characters (UTF-16 code units) from 0.</summary>
/// <param name="Start">Its first character; below zero where the file as a whole is meant.</param>
/// <param name="End">The character behind its last one.</param>
internal readonly record struct TextSpan(int Start, int End)
{
    /// <summary>The file as a whole.</summary>
    public static TextSpan WholeFile => new(-1, -1);
}
