using TieRodCalc.Parts;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Rods;

/// <summary>The parts that a rod is made of.</summary>
/// <param name="Inner">Inner end.</param>
/// <param name="Sleeve">Adjuster sleeve.</param>
/// <param name="Outer">Outer end.</param>
/// <param name="InnerNut">Jam nut of the inner end, or null where there is none.</param>
/// <param name="OuterNut">Jam nut of the outer end, or null where there is none.</param>
/// <param name="Clocking">
/// Angle between the two offset directions seen along the rod, 0 where both ends are bent to the same side; needed where
/// both offsets are above zero, without effect elsewhere.
/// </param>
public sealed record RodParts(
    ThreadedEnd Inner,
    Sleeve Sleeve,
    ThreadedEnd Outer,
    JamNut? InnerNut,
    JamNut? OuterNut,
    Angle? Clocking)
{
    /// <summary>True where one end may be started half a turn round, so that starts lie half as far apart.</summary>
    internal bool StartsByHalves => Inner.TurnsByHalves || Outer.TurnsByHalves;

    internal ThreadedEnd EndAt(RodSide side) => side == RodSide.Inner ? Inner : Outer;

    internal TappedHole HoleAt(RodSide side) => side == RodSide.Inner ? Sleeve.Inner : Sleeve.Outer;

    internal JamNut? NutAt(RodSide side) => side == RodSide.Inner ? InnerNut : OuterNut;
}

/// <summary>A rod of parts whose threads go together.</summary>
public sealed record Rod
{
    private Rod(RodParts parts) => Parts = parts;

    /// <summary>The parts.</summary>
    public RodParts Parts { get; }

    /// <summary>Which joints a nut or a clamp locks.</summary>
    public Locking Locking => (Locked(RodSide.Inner), Locked(RodSide.Outer)) switch
    {
        (true, true) => Locking.Both,
        (true, false) => Locking.Inner,
        (false, true) => Locking.Outer,
        _ => Locking.None,
    };

    /// <summary>
    /// The least distance between the ball centers, reached where the axial length is zero:
    /// <c>O = sqrt(o1^2 + o2^2 - 2 o1 o2 cos(clocking))</c>. A rod's length is above it.
    /// </summary>
    public Length Offset => Length.FromMillimeters(OffsetMm(Parts));

    /// <summary>Whether a rod of these parts can have a length at all: only what is above <see cref="Offset"/> can be had.</summary>
    /// <param name="length">Length, ball center to ball center.</param>
    public bool CanHave(Length length) => Millimeters.Of(length) > OffsetMm(Parts) + Millimeters.Negligible;

    /// <summary>Makes a rod, or says what keeps the parts from being one.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="rod">The rod, or null.</param>
    /// <returns>Null where the rod was made; otherwise everything that is wrong.</returns>
    public static RodFaults? Make(RodParts parts, out Rod? rod)
    {
        ArgumentNullException.ThrowIfNull(parts);
        List<ThreadMismatch> mismatches = [];
        Compare(mismatches, RodSide.Inner, parts.Inner, FemalePart.Sleeve, parts.Sleeve.Info.Id, parts.Sleeve.Inner.Thread);
        Compare(mismatches, RodSide.Outer, parts.Outer, FemalePart.Sleeve, parts.Sleeve.Info.Id, parts.Sleeve.Outer.Thread);
        CompareNut(mismatches, RodSide.Inner, parts.Inner, parts.InnerNut);
        CompareNut(mismatches, RodSide.Outer, parts.Outer, parts.OuterNut);
        List<FaultyPart> faults =
        [
            .. PartFaults.Of(parts.Inner).Select(fault => new FaultyPart(parts.Inner.Info.Id, fault)),
            .. PartFaults.Of(parts.Sleeve).Select(fault => new FaultyPart(parts.Sleeve.Info.Id, fault)),
            .. PartFaults.Of(parts.Outer).Select(fault => new FaultyPart(parts.Outer.Info.Id, fault)),
        ];
        bool clockingMissing = parts is { Clocking: null, Inner.IsBent: true, Outer.IsBent: true };
        bool sound = mismatches.Count == 0 && faults.Count == 0 && !clockingMissing;
        rod = sound ? new Rod(parts) : null;
        return sound ? null : new RodFaults(mismatches, faults, clockingMissing);
    }

    /// <summary>Everything that keeps two threads from going together.</summary>
    public static ThreadDifference Difference(ThreadDesignation male, ThreadDesignation female)
    {
        ArgumentNullException.ThrowIfNull(male);
        ArgumentNullException.ThrowIfNull(female);
        return (male.Size.Form != female.Size.Form ? ThreadDifference.Form : 0)
            | (Differs(male.Size.DiameterMm, female.Size.DiameterMm) ? ThreadDifference.Diameter : 0)
            | (Differs(male.Size.PitchMm, female.Size.PitchMm) ? ThreadDifference.Pitch : 0)
            | (male.Hand != female.Hand ? ThreadDifference.Hand : 0);
    }

    internal static double OffsetMm(RodParts parts)
    {
        double inner = parts.Inner.Offset.Mm;
        double outer = parts.Outer.Offset.Mm;
        double cosine = Math.Cos(parts.Clocking?.Radians ?? 0);
        return Math.Sqrt(Math.Max(0, inner * inner + outer * outer - 2 * inner * outer * cosine));
    }

    private bool Locked(RodSide side) => Parts.NutAt(side) is not null || Parts.HoleAt(side).Clamp is not null;

    private static bool Differs(double one, double other) => Math.Abs(one - other) > Millimeters.Negligible;

    private static void CompareNut(List<ThreadMismatch> found, RodSide side, ThreadedEnd end, JamNut? nut)
    {
        if (nut is not null)
        {
            Compare(found, side, end, FemalePart.JamNut, nut.Info.Id, nut.Thread);
        }
    }

    private static void Compare(
        List<ThreadMismatch> found, RodSide side, ThreadedEnd end, FemalePart female, string femaleId, ThreadDesignation femaleThread)
    {
        ThreadDifference difference = Difference(end.Thread, femaleThread);
        if (difference != ThreadDifference.None)
        {
            found.Add(new ThreadMismatch(
                side, female, end.Info.Id, end.Thread, femaleId, femaleThread, difference, ThreadFit.Of(end.Thread, femaleThread)));
        }
    }
}
