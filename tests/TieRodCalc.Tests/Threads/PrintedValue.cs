using System.Globalization;

namespace TieRodCalc.Tests.Threads;

/// <summary>A value as a table prints it, with the mark behind it.</summary>
internal readonly record struct PrintedValue(decimal Value, bool Confirmed)
{
    /// <summary>A value with its mark, null where the table has a dash.</summary>
    public static PrintedValue? Read(string cell) => cell == "-"
        ? null
        : new(decimal.Parse(cell.TrimEnd('?', '\'', '~'), CultureInfo.InvariantCulture), !cell.EndsWith('?'));

    /// <summary>The rows of a table: the cells of each of its parts.</summary>
    public static IEnumerable<string[][]> Rows(string table) => table
        .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Select(line => line.Split('|').Select(part => part.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToArray());
}

/// <summary>One printed limit, and ours.</summary>
/// <param name="Name">Thread, class and limit: what an exception is known by.</param>
/// <param name="Printed">The printed one.</param>
/// <param name="Ours">Ours, in the same unit.</param>
internal sealed record PrintedLimit(string Name, PrintedValue Printed, double Ours)
{
    /// <summary>A thousandth of the last digit of either table: what conversion to millimeters and back may add.</summary>
    private const double Digits = 1e-7;

    /// <summary>Whether ours is the printed number.</summary>
    public bool Agrees => Math.Abs((double)Printed.Value - Ours) < Digits;

    /// <summary>Those of a list that differ, but for the exceptions, and the exceptions that do not; a line each.</summary>
    public static string Faults(IEnumerable<PrintedLimit> limits, IReadOnlyDictionary<string, string> exceptions) => string.Join(
        Environment.NewLine,
        limits
            .Where(limit => limit.Agrees == exceptions.ContainsKey(limit.Name))
            .Select(limit => FormattableString.Invariant($"{limit.Name}: printed {limit.Printed.Value}, ours {limit.Ours:0.00000}")));
}
