using TieRodCalc.Parts;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Rods;

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

    /// <summary>Whether every joint that the rod has is locked.</summary>
    public bool AllLocked => Parts.Joints.All(Locked);

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
        foreach (RodSide side in parts.Joints)
        {
            FemalePart female = parts.OneJoint ? FemalePart.Socket : FemalePart.Sleeve;
            Compare(mismatches, side, parts.EndAt(side), female, parts.Female.Id, parts.HoleAt(side).Thread);
        }

        foreach (RodSide side in parts.Joints)
        {
            CompareNut(mismatches, side, parts.EndAt(side), parts.NutAt(side));
        }

        bool clockingMissing = parts is { Clocking: null, Inner.IsBent: true, Outer.IsBent: true };
        List<FaultyPart> faults = Faults(parts);
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
        double inner = parts.OffsetAt(RodSide.Inner);
        double outer = parts.OffsetAt(RodSide.Outer);
        double cosine = Math.Cos(parts.Clocking?.Radians ?? 0);
        return Math.Sqrt(Math.Max(0, inner * inner + outer * outer - 2 * inner * outer * cosine));
    }

    private static List<FaultyPart> Faults(RodParts parts)
    {
        List<FaultyPart> faults = [.. PartFaults.Of(parts.Inner).Select(fault => new FaultyPart(parts.Inner.Info.Id, fault))];
        faults.AddRange(
            (parts.Socket is { } socket ? PartFaults.Of(socket) : PartFaults.Of(parts.Sleeve!))
                .Select(fault => new FaultyPart(parts.Female.Id, fault)));
        if (parts.Outer is { } outer)
        {
            faults.AddRange(PartFaults.Of(outer).Select(fault => new FaultyPart(outer.Info.Id, fault)));
        }

        return faults;
    }

    private bool Locked(RodSide side) =>
        Parts.Joints.Contains(side) && (Parts.NutAt(side) is not null || Parts.HoleAt(side).Clamp is not null);

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
