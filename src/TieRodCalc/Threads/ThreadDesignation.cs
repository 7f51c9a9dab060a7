namespace TieRodCalc.Threads;

/// <summary>A thread as a part or a drawing names it: size and hand, and series and tolerance class where they are said.</summary>
/// <param name="Size">Form, nominal diameter and pitch.</param>
/// <param name="Hand">Hand; right-hand where a designation does not say.</param>
public sealed record ThreadDesignation(ThreadSize Size, Hand Hand)
{
    /// <summary>The Unified series where it is said, null otherwise and for metric threads.</summary>
    public UnifiedSeries? Series { get; init; }

    /// <summary>The tolerance class as the standard writes it (<c>2A</c>, <c>6g</c>), null where it is not said.</summary>
    public string? ToleranceClass { get; init; }

    /// <summary>True where only the diameter was said (<c>M18</c>) and the coarse pitch of ISO 261 was taken.</summary>
    public bool CoarsePitchAssumed { get; init; }

    /// <summary>The Unified series that is said, or else the one that has this size; null for metric threads.</summary>
    public UnifiedSeries? SeriesInUse => Size.Form == ThreadForm.Unified
        ? Series ?? StandardThreads.SeriesOrSpecial(Size.DiameterMm, Size.PitchMm)
        : null;

    /// <summary>
    /// True where no series of ASME B1.1, or no line of ISO 261 up to 150 mm, has this diameter with this pitch. Its limits of size
    /// then follow from the standard's formulas: Unified with nine pitches of engagement, metric with the tolerances of its pitch.
    /// </summary>
    public bool IsSpecial => Size.Form == ThreadForm.Unified
        ? StandardThreads.SeriesOrSpecial(Size.DiameterMm, Size.PitchMm) == UnifiedSeries.Uns
        : !MetricSeries.Has(Size.DiameterMm, Size.PitchMm);

    /// <summary>One member of the thread.</summary>
    /// <param name="gender">Which; a class of the other one says nothing of it.</param>
    /// <param name="className">The class that was taken.</param>
    /// <returns>Null where the class that is said is none of the standard.</returns>
    internal ThreadMember? Member(ThreadGender gender, out string className)
    {
        ThreadGender other = gender == ThreadGender.External ? ThreadGender.Internal : ThreadGender.External;
        bool said = ToleranceClass is not null && Threads.ToleranceClass.Read(Size.Form, other, ToleranceClass) is null;
        className = said ? ToleranceClass! : Threads.ToleranceClass.Usual(Size.Form, gender);
        return Threads.ToleranceClass.Read(Size.Form, gender, className) is { } read
            ? new ThreadMember(Size.Form, gender, Size.DiameterMm, Size.PitchMm, SeriesInUse ?? UnifiedSeries.Uns, read)
            : null;
    }
}
