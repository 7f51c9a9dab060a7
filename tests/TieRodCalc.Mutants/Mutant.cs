using System.Globalization;
using System.Text.Json;

namespace TieRodCalc.Mutants;

/// <summary>One change to the library: its number in the mutated assembly, where it is and what it puts there.</summary>
internal sealed record Mutant(int Id, string Room, string File, int Line, string Kind, string Replacement)
{
    /// <summary>Room and file.</summary>
    public string Place => $"{Room}/{File}";

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
        $"{Line}\t{Kind}\t{string.Join(' ', Replacement.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))}";
}

/// <summary>What came of a mutant: killed and by which test, crashed, endless, or survived so many tests.</summary>
internal sealed record Result(int Mutant, string Place, string Answer)
{
    public string Outcome => Answer.Split('\t')[0];

    /// <summary>The test that killed it.</summary>
    public string? Killer => Answer.Split('\t') is ["killed", string test] ? test : null;

    public static Result Read(string line) => line.Split('\t') is [string mutant, string place, string outcome, string by, ..]
        ? new(int.Parse(mutant, CultureInfo.InvariantCulture), place, $"{outcome}\t{by}")
        : throw new InvalidDataException(line);

    /// <inheritdoc/>
    public override string ToString() => $"{Mutant}\t{Place}\t{Answer}";
}
