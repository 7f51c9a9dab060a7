using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>A toe as it is written: a length at the plates or an angle, toe-in positive.</summary>
/// <param name="AsLength">The length, or null.</param>
/// <param name="AsAngle">The angle, or null.</param>
public sealed record ToeReading(Length? AsLength, Angle? AsAngle);
