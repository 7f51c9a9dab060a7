using UnitsNet;

namespace TieRodCalc.Threads;

/// <summary>The limits of size of one diameter.</summary>
/// <param name="Least">The least, or null where the standard leaves it open.</param>
/// <param name="Most">The most, or null where the standard leaves it open.</param>
public sealed record DiameterLimits(Length? Least, Length? Most);

/// <summary>
/// The limits of size of one member of a thread, as the tables of ASME B1.1 and ISO 965-2 print them: Unified to 0.0001 in (the
/// minor diameter of classes 1B and 2B to 0.001 in), metric to 0.001 mm.
/// </summary>
public sealed record ThreadLimits
{
    private ThreadLimits(ThreadDesignation thread, in ThreadMember member, string toleranceClass, in SizeLimits printed)
    {
        Thread = thread;
        Member = member;
        ToleranceClass = toleranceClass;
        Printed = printed;
    }

    /// <summary>The thread.</summary>
    public ThreadDesignation Thread { get; }

    /// <summary>Outside or inside.</summary>
    public ThreadGender Gender => Member.Gender;

    /// <summary>The tolerance class.</summary>
    public string ToleranceClass { get; }

    /// <summary>True where the class was not said of this member and the usual one was taken: 2A or 2B, 6g or 6H.</summary>
    public bool ClassAssumed => Thread.ToleranceClass != ToleranceClass;

    /// <summary>
    /// True where the standard's tables do not reach: Unified threads below 0.060 in or above 6 in, or finer than 80 or coarser than 4 threads per
    /// inch, metric diameters and pitches that ISO 965-1 has no tolerance for. Its formulas were used.
    /// </summary>
    public bool BeyondTables => Thread.Size.Form == ThreadForm.Unified
        ? !UnifiedLimits.InTables(Thread.Size.DiameterMm, Thread.Size.PitchMm)
        : !MetricTolerances.HasSize(Thread.Size.DiameterMm, Thread.Size.PitchMm);

    /// <summary>Major diameter; the most of an internal thread is open.</summary>
    public DiameterLimits Major => new(Open(Printed.MajorLeast), Open(Printed.MajorMost));

    /// <summary>Pitch diameter.</summary>
    public DiameterLimits Pitch => new(Open(Printed.PitchLeast), Open(Printed.PitchMost));

    /// <summary>
    /// Minor diameter; the least of an external thread is open. Of an internal thread it is the range of its tap drill.
    /// </summary>
    public DiameterLimits Minor => new(Open(Printed.MinorLeast), Open(Printed.MinorMost));

    internal ThreadMember Member { get; }

    internal SizeLimits Printed { get; }

    /// <summary>The limits of one member of a thread.</summary>
    /// <param name="thread">The thread; a class of the other member says nothing of this one, so that the usual class is taken.</param>
    /// <param name="gender">Which member.</param>
    /// <returns>Null where the standard has no such class for the pitch (5g, or 8g of M5x0.5).</returns>
    /// <exception cref="ArgumentNullException">The thread is null.</exception>
    public static ThreadLimits? Of(ThreadDesignation thread, ThreadGender gender)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return thread.Member(gender, out string toleranceClass) is { } member && member.Printed is { } printed
            ? new(thread, member, toleranceClass, printed)
            : null;
    }

    private static Length? Open(double mm) => double.IsFinite(mm) ? Length.FromMillimeters(mm) : null;
}
