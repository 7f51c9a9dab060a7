using TieRodCalc.Parts;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Planning;

/// <summary>
/// Ends that are alike in everything that a joint's limits take from them but their lengths: thread with class, tensile strength and
/// offset. Sorted by ball center to full thread, <c>c - l</c>, on which a window can be laid.
/// </summary>
internal sealed class EndGroup
{
    private EndGroup(ThreadedEnd[] ends, int[] places)
    {
        Like = ends[0];
        double[] keys = [.. ends.Select(end => end.CenterToTip.Mm - end.LeadMm)];
        int[] order = [.. Enumerable.Range(0, ends.Length)];
        Array.Sort(keys, order);
        ToFullThread = keys;
        Ends = [.. order.Select(i => new EndLengths(ends[i], places[i]))];
        Lead = Ends.Min(end => end.Lead);
        Center = Ends.Min(end => end.Center);
        BeyondThread = Ends.Max(end => end.Thread - end.Center);
        MostCut = Ends.Max(end => end.MostCut);
    }

    private EndGroup()
    {
        ToFullThread = [0];
        Ends = [default];
    }

    /// <summary>The outer end of a rod with one threaded joint: it adds nothing to what its socket is.</summary>
    public static EndGroup None { get; } = new();

    /// <summary>One of the ends, for what they have in common; null for none.</summary>
    public ThreadedEnd? Like { get; }

    /// <summary>Ball center to full thread of each, rising.</summary>
    public double[] ToFullThread { get; }

    /// <summary>The lengths of each, in the same order.</summary>
    public EndLengths[] Ends { get; }

    /// <summary>The least lead.</summary>
    public double Lead { get; }

    /// <summary>The least way from ball center to tip.</summary>
    public double Center { get; }

    /// <summary>The greatest <c>t - c</c>: the shortest shank without thread has it.</summary>
    public double BeyondThread { get; }

    /// <summary>The most that any may be cut.</summary>
    public double MostCut { get; }

    /// <summary>The groups of ends that are sound, each by the size and hand of its thread.</summary>
    public static ILookup<ThreadKey, EndGroup> Of(IReadOnlyList<ThreadedEnd> ends) => ends
        .Select((end, place) => (End: end, Place: place))
        .Where(one => !PartFaults.Of(one.End).Any())
        .GroupBy(one => (one.End.Thread, Tensile: one.End.Info.Material?.TensileStrength?.Megapascals, Offset: one.End.Offset.Mm))
        .Select(group => new EndGroup([.. group.Select(one => one.End)], [.. group.Select(one => one.Place)]))
        .ToLookup(group => ThreadKey.Of(group.Like!.Thread));
}

/// <summary>The lengths of one end in millimeters, and its place in the catalog.</summary>
internal readonly struct EndLengths(ThreadedEnd end, int place)
{
    /// <summary>Ball center to tip.</summary>
    public double Center { get; } = end.CenterToTip.Mm;

    /// <summary>Full thread from the tip.</summary>
    public double Thread { get; } = end.ThreadLength.Mm;

    /// <summary>Lead.</summary>
    public double Lead { get; } = end.LeadMm;

    /// <summary>The most that may be cut.</summary>
    public double MostCut { get; } = end.MaxCut.Mm;

    /// <summary>Place in the catalog.</summary>
    public int Place { get; } = place;
}

/// <summary>Size and hand of a thread as one value: threads that go together have the same.</summary>
internal readonly record struct ThreadKey(ThreadForm Form, double Diameter, double Pitch, Hand Hand)
{
    public static ThreadKey Of(ThreadDesignation thread) => new(
        thread.Size.Form, Math.Round(thread.Size.DiameterMm, 5), Math.Round(thread.Size.PitchMm, 5), thread.Hand);
}
