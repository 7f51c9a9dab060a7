namespace TieRodCalc.Rods;

/// <summary>One of the two ends of a rod.</summary>
public enum RodSide
{
    /// <summary>The inner end, toward the middle of the car.</summary>
    Inner,

    /// <summary>The outer end, toward the wheel.</summary>
    Outer,
}
