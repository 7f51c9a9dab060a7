using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>Where a toe that is a length is measured.</summary>
public enum GaugePlace
{
    /// <summary>At toe plates.</summary>
    Plates,

    /// <summary>At the tire, across its diameter.</summary>
    Tire,
}

/// <summary>What a toe that is a length is measured across.</summary>
/// <param name="Place">Where.</param>
/// <param name="Width">Width of the plates, or diameter of the tire.</param>
public sealed record ToeGauge(GaugePlace Place, Length Width);
