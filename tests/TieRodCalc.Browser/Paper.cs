namespace TieRodCalc.Browser;

/// <summary>A sheet of paper in the printer.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Width">Its width in millimeters.</param>
/// <param name="Height">Its height in millimeters.</param>
internal sealed record Paper(string Name, double Width, double Height)
{
    public const double MillimetersPerInch = 25.4;

    /// <summary>A pixel of CSS is a ninety-sixth of an inch on paper.</summary>
    public const double PixelsPerMillimeter = 96 / MillimetersPerInch;

    /// <summary>Both papers that a shop has in its printer: one is narrower, the other shorter.</summary>
    public static IReadOnlyList<Paper> Both { get; } = [new("Letter", 215.9, 279.4), new("A4", 210, 297)];
}
