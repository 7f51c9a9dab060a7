using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>A span of lengths.</summary>
/// <param name="Shortest">The low end.</param>
/// <param name="Longest">The high end.</param>
public sealed record LengthSpan(Length Shortest, Length Longest)
{
    /// <summary>Longest less shortest.</summary>
    public Length Width => Longest - Shortest;
}
