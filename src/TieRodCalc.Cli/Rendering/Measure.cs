using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>A dimension that is drawn and listed under one letter.</summary>
/// <param name="Letter">Its letter, the same on every sheet; of what is missing a number.</param>
/// <param name="Name">Its name in the drawing's data.</param>
/// <param name="Words">What it is.</param>
/// <param name="Value">Its length.</param>
/// <param name="Rounding">Which way it is rounded where it is shown.</param>
/// <param name="From">Where it begins, in millimeters along the axis of the drawing.</param>
/// <param name="To">Where it ends.</param>
internal sealed record Measure(string Letter, string Name, string Words, Length Value, LengthRounding Rounding, double From, double To)
{
    /// <summary>Whether a person can hold a rule or a caliper to it from outside.</summary>
    public bool FromOutside { get; init; }

    /// <summary>True of a line that is measured straight from ball center to ball center or across a bend.</summary>
    public bool Straight { get; init; }

    /// <summary>True of a line that does not lie in the paper: it is drawn shorter than it is.</summary>
    public bool SeenShortened { get; init; }

    /// <summary>False of what is missing where the drawing does not show it in its size.</summary>
    public bool SizeShown { get; init; } = true;

    /// <summary>True of what is missing.</summary>
    public bool Missing { get; init; }

    /// <summary>Letter and length, as they stand in a drawing.</summary>
    public string Label(LengthDisplay unit) => Missing
        ? $"{Letter}{(SizeShown ? $" {LengthFormat.Decimal(Value, unit, Rounding)} missing" : string.Empty)}"
        : $"{Letter} {LengthFormat.Decimal(Value, unit, Rounding)}";
}
