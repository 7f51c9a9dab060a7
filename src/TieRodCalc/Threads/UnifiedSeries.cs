namespace TieRodCalc.Threads;

/// <summary>Series of Unified threads (ASME B1.1).</summary>
public enum UnifiedSeries
{
    /// <summary>Coarse.</summary>
    Unc,

    /// <summary>Fine.</summary>
    Unf,

    /// <summary>Extra fine.</summary>
    Unef,

    /// <summary>Constant pitch.</summary>
    Un,

    /// <summary>Special: a diameter and pitch outside the standard series.</summary>
    Uns,
}
