namespace TieRodCalc.Yaml;

/// <summary>What came of reading a file.</summary>
/// <typeparam name="T">What it holds.</typeparam>
/// <param name="Value">The content, or null where there are problems.</param>
/// <param name="Problems">Every problem, in the order of files and lines; empty where the file is sound.</param>
/// <param name="Notes">What is no error and worth knowing, such as a key that changes nothing, each with its place.</param>
public sealed record Reading<T>(T? Value, IReadOnlyList<Problem> Problems, IReadOnlyList<Problem> Notes)
    where T : class;
