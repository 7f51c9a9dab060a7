namespace TieRodCalc.Text;

/// <summary>How toe is set, whatever the numbers (common practice, no source).</summary>
public static class ToeProcedure
{
    /// <summary>The steps, one or two sentences each.</summary>
    public static IReadOnlyList<string> Steps { get; } =
    [
        "Ride height, camber and caster first: each of them moves toe.",
        "Steering wheel at its center, and locked there.",
        "Loosen both nuts. A left-hand nut loosens the other way.",
        "Hold both ends while the sleeve turns, so that neither joint is carried to the end of its swing.",
        "Before tightening: both joints in mid-swing, free from lock to lock. Then tighten both nuts.",
        "Roll the car forward and measure again. The nuts take up the play of the threads; that is worth about a tenth of a turn.",
    ];
}
