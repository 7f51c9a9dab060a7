namespace TieRodCalc.Threads;

/// <summary>The system that a screw thread belongs to.</summary>
public enum ThreadForm
{
    /// <summary>Unified inch screw threads (ASME B1.1).</summary>
    Unified,

    /// <summary>ISO general-purpose metric screw threads (ISO 68-1, ISO 261).</summary>
    Metric,
}
