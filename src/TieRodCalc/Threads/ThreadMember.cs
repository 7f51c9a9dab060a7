namespace TieRodCalc.Threads;

/// <summary>All that the limits of size of one member follow from.</summary>
/// <param name="Form">The system.</param>
/// <param name="Gender">Outside or inside.</param>
/// <param name="DiameterMm">Nominal diameter.</param>
/// <param name="PitchMm">Pitch.</param>
/// <param name="Series">Unified: the series; without effect in a metric thread.</param>
/// <param name="Class">The tolerance class.</param>
internal readonly record struct ThreadMember(
    ThreadForm Form, ThreadGender Gender, double DiameterMm, double PitchMm, UnifiedSeries Series, ToleranceClass Class)
{
    /// <summary>Limits as the standard's tables print them; null where the standard has no such class for this pitch.</summary>
    public SizeLimits? Printed => Form == ThreadForm.Unified ? UnifiedLimits.Of(this, rounded: true) : MetricLimits.Of(this, rounded: true);

    /// <summary>The same before they are rounded.</summary>
    public SizeLimits? Exact => Form == ThreadForm.Unified ? UnifiedLimits.Of(this, rounded: false) : MetricLimits.Of(this, rounded: false);
}
