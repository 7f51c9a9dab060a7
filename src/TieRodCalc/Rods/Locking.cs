namespace TieRodCalc.Rods;

/// <summary>Which joints of a rod a jam nut or a clamp locks.</summary>
public enum Locking
{
    /// <summary>None.</summary>
    None,

    /// <summary>Only the inner joint.</summary>
    Inner,

    /// <summary>Only the outer joint.</summary>
    Outer,

    /// <summary>Both joints.</summary>
    Both,
}
