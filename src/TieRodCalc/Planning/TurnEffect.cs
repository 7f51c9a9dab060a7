using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What one turn, or a part of one, does in the direction that lengthens the rod.</summary>
/// <param name="Length">Change of length.</param>
/// <param name="Toe">
/// Change of toe, toe-in positive: of one wheel where each side has a rod, of both together where one rod joins the wheels.
/// Null where it was not computed.
/// </param>
/// <param name="ToeAtPlates">The same at the toe plates, or null.</param>
public sealed record TurnEffect(Length Length, Angle? Toe, Length? ToeAtPlates);
