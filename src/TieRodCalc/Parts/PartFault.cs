namespace TieRodCalc.Parts;

/// <summary>Dimensions of one part that contradict each other.</summary>
public enum PartFault
{
    /// <summary>An end's full thread is longer than the way from ball center to tip.</summary>
    ThreadLongerThanEnd,

    /// <summary>An end's lead is not shorter than its thread.</summary>
    LeadNotShorterThanThread,

    /// <summary>The most that may be cut is not less than the way from ball center to tip.</summary>
    CutLongerThanEnd,

    /// <summary>The thread and the thread still to be chased are longer than the way from ball center to tip.</summary>
    RethreadLongerThanEnd,

    /// <summary>The countersink is not shallower than the thread.</summary>
    CountersinkNotShallowerThanThread,

    /// <summary>The threads of a sleeve's two ends are together longer than the sleeve.</summary>
    ThreadsLongerThanSleeve,

    /// <summary>The thread of an outer end reaches past its ball center.</summary>
    SocketDeeperThanEnd,

    /// <summary>A witness hole lies beyond the sleeve.</summary>
    WitnessBeyondSleeve,

    /// <summary>A clamp lies beyond the sleeve.</summary>
    ClampBeyondSleeve,

    /// <summary>The outside of a sleeve is not larger than one of its threads.</summary>
    OutsideNotLargerThanThread,
}

/// <summary>
/// Finds dimensions of one part that contradict each other. Nominal values are compared; a miss of up to 1e-6 mm is none.
/// </summary>
public static class PartFaults
{
    /// <summary>The faults of an end, none where it is sound.</summary>
    public static IEnumerable<PartFault> Of(ThreadedEnd end)
    {
        ArgumentNullException.ThrowIfNull(end);
        if (Exceeds(end.ThreadLength.Mm, end.CenterToTip.Mm))
        {
            yield return PartFault.ThreadLongerThanEnd;
        }
        else if (Exceeds(end.ThreadLength.Mm + end.Rethread.Mm, end.CenterToTip.Mm))
        {
            yield return PartFault.RethreadLongerThanEnd;
        }

        if (!Exceeds(end.ThreadLength.Mm, end.LeadMm))
        {
            yield return PartFault.LeadNotShorterThanThread;
        }

        if (!Exceeds(end.CenterToTip.Mm, end.MaxCut.Mm))
        {
            yield return PartFault.CutLongerThanEnd;
        }
    }

    /// <summary>The faults of a threaded hole, none where it is sound.</summary>
    /// <param name="hole">The hole.</param>
    /// <param name="sleeve">
    /// The length of the sleeve that it is an end of, or of the way to the ball center; null where it is not known.
    /// </param>
    public static IEnumerable<PartFault> Of(TappedHole hole, UnitsNet.Length? sleeve = null)
    {
        ArgumentNullException.ThrowIfNull(hole);
        if (!Exceeds(hole.Depth.Mm, hole.CountersinkMm))
        {
            yield return PartFault.CountersinkNotShallowerThanThread;
        }

        double within = sleeve is { } length ? Millimeters.Of(length) : double.PositiveInfinity;
        if (Exceeds(hole.Witness?.Mm ?? 0, within))
        {
            yield return PartFault.WitnessBeyondSleeve;
        }

        if (Exceeds(hole.Clamp?.Mm ?? 0, within))
        {
            yield return PartFault.ClampBeyondSleeve;
        }
    }

    /// <summary>The faults of an outer end with an internal thread, those of that thread included; none where it is sound.</summary>
    public static IEnumerable<PartFault> Of(SocketEnd end)
    {
        ArgumentNullException.ThrowIfNull(end);
        return (Exceeds(end.Socket.Depth.Mm, end.CenterToFace.Mm) ? [PartFault.SocketDeeperThanEnd] : Array.Empty<PartFault>())
            .Concat(Of(end.Socket, end.CenterToFace.Nominal));
    }

    /// <summary>The faults of a sleeve, those of its two ends included; none where it is sound.</summary>
    public static IEnumerable<PartFault> Of(Sleeve sleeve)
    {
        ArgumentNullException.ThrowIfNull(sleeve);
        if (Exceeds(sleeve.Inner.Depth.Mm + sleeve.Outer.Depth.Mm, sleeve.Length.Mm))
        {
            yield return PartFault.ThreadsLongerThanSleeve;
        }

        if (sleeve.Outside is { } outside
            && !(outside.Encloses(sleeve.Inner.Thread.Size) && outside.Encloses(sleeve.Outer.Thread.Size)))
        {
            yield return PartFault.OutsideNotLargerThanThread;
        }

        foreach (PartFault fault in Of(sleeve.Inner, sleeve.Length.Nominal).Concat(Of(sleeve.Outer, sleeve.Length.Nominal)))
        {
            yield return fault;
        }
    }

    private static bool Exceeds(double value, double limit) => value > limit + Millimeters.Negligible;
}
