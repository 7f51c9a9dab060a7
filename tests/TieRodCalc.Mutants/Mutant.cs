using System.Globalization;
using System.Text.Json;

namespace TieRodCalc.Mutants;

/// <summary>One change to the library: its number in the mutated assembly, where it is and what it puts there.</summary>
internal sealed record Mutant(int Id, string Room, string File, int Line, string Kind, string Replacement)
{
    /// <summary>Those of a report that compile and that are not one with another.</summary>
    public static IEnumerable<Mutant> Of(JsonDocument report) =>
        from file in report.RootElement.GetProperty("files").EnumerateObject()
        from mutant in file.Value.GetProperty("mutants").EnumerateArray()
        let status = mutant.GetProperty("status").GetString()
        where status is not ("CompileError" or "Ignored")
        select new Mutant(
            int.Parse(mutant.GetProperty("id").GetString()!, CultureInfo.InvariantCulture),
            Path.GetFileName(Path.GetDirectoryName(file.Name))!,
            Path.GetFileName(file.Name),
            mutant.GetProperty("location").GetProperty("start").GetProperty("line").GetInt32(),
            mutant.GetProperty("mutatorName").GetString()!,
            mutant.GetProperty("replacement").GetString()!);

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Room}/{File}:{Line}\t{Kind}\t{string.Join(' ', Replacement.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))}";
}
