namespace TieRodCalc.Yaml;

/// <summary>Something wrong in a file, or worth knowing, with its place.</summary>
/// <param name="File">The file as it was named; <c>-</c> for standard input.</param>
/// <param name="Line">Line, counted from 1; 0 where the file as a whole is meant.</param>
/// <param name="Column">Column in characters, counted from 1; 0 where the file as a whole is meant.</param>
/// <param name="Length">How many characters from there are meant, at least 1; 0 where the file as a whole is meant.</param>
/// <param name="Message">What is wrong, in one sentence.</param>
/// <param name="SourceLine">The line itself, or null.</param>
/// <param name="Suggestion">The nearest valid name, or null.</param>
public sealed record Problem(
    string File, int Line, int Column, int Length, string Message, string? SourceLine = null, string? Suggestion = null);
