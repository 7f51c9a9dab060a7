using TieRodCalc.Parts;
using UnitsNet;

namespace TieRodCalc.Rods;

/// <summary>
/// The parts that a rod is made of: two ends on an adjuster sleeve, or an inner end in an outer end that carries the internal thread
/// itself, so that there is one threaded joint and no sleeve.
/// </summary>
public sealed record RodParts
{
    /// <summary>The parts of a rod with a sleeve.</summary>
    /// <param name="inner">Inner end.</param>
    /// <param name="sleeve">Adjuster sleeve.</param>
    /// <param name="outer">Outer end.</param>
    /// <param name="innerNut">Jam nut of the inner end, or null where there is none.</param>
    /// <param name="outerNut">Jam nut of the outer end, or null where there is none.</param>
    /// <param name="clocking">
    /// Angle between the two offset directions seen along the rod, 0 where both ends are bent to the same side; needed where
    /// both offsets are above zero, without effect elsewhere.
    /// </param>
    /// <exception cref="ArgumentNullException">An end or the sleeve is missing.</exception>
    public RodParts(ThreadedEnd inner, Sleeve sleeve, ThreadedEnd outer, JamNut? innerNut, JamNut? outerNut, Angle? clocking)
    {
        ArgumentNullException.ThrowIfNull(inner);
        ArgumentNullException.ThrowIfNull(sleeve);
        ArgumentNullException.ThrowIfNull(outer);
        (Inner, Sleeve, Outer, InnerNut, OuterNut, Clocking) = (inner, sleeve, outer, innerNut, outerNut, clocking);
    }

    /// <summary>The parts of a rod with one threaded joint.</summary>
    /// <param name="inner">Inner end.</param>
    /// <param name="socket">Outer end that carries the internal thread.</param>
    /// <param name="nut">Jam nut of the joint, or null where there is none.</param>
    /// <exception cref="ArgumentNullException">An end is missing.</exception>
    public RodParts(ThreadedEnd inner, SocketEnd socket, JamNut? nut)
    {
        ArgumentNullException.ThrowIfNull(inner);
        ArgumentNullException.ThrowIfNull(socket);
        (Inner, Socket, InnerNut) = (inner, socket, nut);
    }

    /// <summary>Inner end.</summary>
    public ThreadedEnd Inner { get; init; }

    /// <summary>Adjuster sleeve; null where the outer end carries the internal thread.</summary>
    public Sleeve? Sleeve { get; init; }

    /// <summary>Outer end that goes into the sleeve; null where there is no sleeve.</summary>
    public ThreadedEnd? Outer { get; init; }

    /// <summary>Outer end that carries the internal thread; null where there is a sleeve.</summary>
    public SocketEnd? Socket { get; init; }

    /// <summary>Jam nut of the inner end, or null where there is none.</summary>
    public JamNut? InnerNut { get; init; }

    /// <summary>Jam nut of the outer end, or null where there is none.</summary>
    public JamNut? OuterNut { get; init; }

    /// <summary>Angle between the two offset directions seen along the rod, or null where it was not said.</summary>
    public Angle? Clocking { get; init; }

    /// <summary>Whether there is one threaded joint only.</summary>
    public bool OneJoint => Socket is not null;

    /// <summary>The joints of the rod, each named by its end.</summary>
    public IReadOnlyList<RodSide> Joints => OneJoint ? OnlyInner : BothEnds;

    /// <summary>True where one end may be started half a turn round, so that starts lie half as far apart.</summary>
    internal bool StartsByHalves =>
        Inner.TurnsByHalves || Outer is { TurnsByHalves: true } || Socket is { Joint: JointKind.RodEnd };

    /// <summary>What carries the internal threads.</summary>
    internal PartInfo Female => Sleeve?.Info ?? Socket!.Info;

    private static RodSide[] OnlyInner { get; } = [RodSide.Inner];

    private static RodSide[] BothEnds { get; } = [RodSide.Inner, RodSide.Outer];

    /// <summary>The end with the external thread of a joint that the rod has.</summary>
    /// <param name="side">One of <see cref="Joints"/>.</param>
    /// <exception cref="ArgumentException">The rod has no such joint.</exception>
    public ThreadedEnd EndAt(RodSide side) =>
        side == RodSide.Inner ? Inner : Outer ?? throw new ArgumentException("The rod has one joint only.", nameof(side));

    /// <summary>The internal thread of a joint that the rod has.</summary>
    /// <param name="side">One of <see cref="Joints"/>.</param>
    public TappedHole HoleAt(RodSide side) => (Socket, side) switch
    {
        ({ } socket, _) => socket.Socket,
        (_, RodSide.Inner) => Sleeve!.Inner,
        _ => Sleeve!.Outer,
    };

    /// <summary>The jam nut of a joint, or null where there is none.</summary>
    /// <param name="side">Which joint.</param>
    public JamNut? NutAt(RodSide side) => side == RodSide.Inner ? InnerNut : OuterNut;

    /// <summary>Lateral offset of an end's ball center; a socket is straight.</summary>
    internal double OffsetAt(RodSide side) => (side == RodSide.Inner ? Inner : Outer)?.Offset.Mm ?? 0;
}
