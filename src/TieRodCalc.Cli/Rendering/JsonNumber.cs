using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Numbers as the JSON has them: rounded to 6 decimals, without a minus at zero.</summary>
internal static class JsonNumber
{
    private const int Decimals = 6;

    public static double Of(double value) => Math.Round(value, Decimals, MidpointRounding.AwayFromZero) + 0.0;

    public static double? Of(double? value) => value is { } known ? Of(known) : null;

    public static double Mm(Length length) => Of(length.Millimeters);

    public static double? Mm(Length? length) => length is { } known ? Mm(known) : null;
}
