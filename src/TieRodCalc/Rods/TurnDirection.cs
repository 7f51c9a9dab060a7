namespace TieRodCalc.Rods;

/// <summary>Direction of a turn, seen from the inner end toward the outer end.</summary>
public enum TurnDirection
{
    /// <summary>Clockwise.</summary>
    Clockwise,

    /// <summary>Counterclockwise.</summary>
    Counterclockwise,
}
