using UnitsNet;

namespace TieRodCalc.Threads;

/// <summary>Which of two threads is the male.</summary>
public enum FitDirection
{
    /// <summary>The thread asked about is the male and is turned into the look-alike.</summary>
    IntoLookAlike,

    /// <summary>The look-alike is the male and is turned into the thread asked about.</summary>
    LookAlikeInto,
}

/// <summary>A standard thread that another one can be taken for, in one direction.</summary>
/// <param name="Thread">The look-alike, with the hand of the thread asked about and the usual class.</param>
/// <param name="Direction">Which of the two is the male.</param>
/// <param name="Fit">What happens when they are turned together.</param>
public sealed record LookAlike(ThreadDesignation Thread, FitDirection Direction, ThreadFit Fit)
{
    /// <summary>
    /// The look-alikes of a thread among the standard threads (UNC, UNF, UNEF and UN of ASME B1.1, ISO 261), found by their limits
    /// of size: those of which a full turn goes in, in one direction at least, and whose crests overlap there. Both directions are
    /// given, the most dangerous first: what goes in loose, what starts and binds, what does not start; of each, the nearest
    /// diameter first.
    /// </summary>
    /// <exception cref="ArgumentNullException">The thread is null.</exception>
    public static IReadOnlyList<LookAlike> Of(ThreadDesignation thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        if (ThreadLimits.Of(thread, ThreadGender.External) is not { } external
            || ThreadLimits.Of(thread, ThreadGender.Internal) is not { } @internal)
        {
            return [];
        }

        List<LookAlike> found = [];
        foreach (ThreadSize size in Candidates(thread.Size))
        {
            ThreadDesignation other = new(size, thread.Hand);
            if (ThreadLimits.Of(other, ThreadGender.External) is not { } male
                || ThreadLimits.Of(other, ThreadGender.Internal) is not { } female)
            {
                continue; // The finest pitches have no 6H.
            }

            var into = ThreadFit.Of(external, female);
            var from = ThreadFit.Of(male, @internal);
            if (IsTaken(into) || IsTaken(from))
            {
                found.Add(new(other, FitDirection.IntoLookAlike, into));
                found.Add(new(other, FitDirection.LookAlikeInto, from));
            }
        }

        return [.. found
            .OrderByDescending(alike => alike.Fit.Outcome)
            .ThenBy(alike => Math.Abs(alike.Thread.Size.DiameterMm - thread.Size.DiameterMm))];
    }

    private static bool IsTaken(ThreadFit fit) => fit.Outcome != FitOutcome.DoesNotStart && fit.MostOverlap > Length.Zero;

    /// <summary>
    /// The standard sizes near a size, itself left out. Where crests overlap, the diameters differ by less than two pitches.
    /// </summary>
    private static IEnumerable<ThreadSize> Candidates(ThreadSize size) =>
        StandardThreads.All.Select(listed => ThreadSize.Unified(Length.FromMillimeters(listed.DiameterMm), listed.ThreadsPerInch))
            .Concat(MetricSeries.All.Select(listed =>
                ThreadSize.Metric(Length.FromMillimeters(listed.DiameterMm), Length.FromMillimeters(listed.PitchMm))))
            .Where(listed => !listed.Matches(size)
                && Math.Abs(listed.DiameterMm - size.DiameterMm) < 2 * Math.Max(listed.PitchMm, size.PitchMm));
}
