using TieRodCalc.Parts;
using UnitsNet;

namespace TieRodCalc.Rods;

/// <summary>A rod with one threaded joint: the outer end carries the internal thread itself, and there is no sleeve.</summary>
/// <param name="Inner">Inner end.</param>
/// <param name="Outer">Outer end with the socket.</param>
/// <param name="Nut">Jam nut of the joint, or null where there is none.</param>
/// <remarks>Whether the threads go together is for <see cref="Rod.Difference"/> to say.</remarks>
public sealed record SocketRod(ThreadedEnd Inner, SocketEnd Outer, JamNut? Nut)
{
    /// <summary>Whether a nut or a clamp locks the joint.</summary>
    public bool Locked => Nut is not null || Outer.Socket.Clamp is not null;

    /// <summary>The least distance between the ball centers: the offset of the inner end.</summary>
    public Length Offset => Length.FromMillimeters(Inner.Offset.Mm);

    /// <summary>Whether a rod of these parts can have a length at all: only what is above <see cref="Offset"/> can be had.</summary>
    /// <param name="length">Length, ball center to ball center.</param>
    public bool CanHave(Length length) => Millimeters.Of(length) > Inner.Offset.Mm + Millimeters.Negligible;
}
