using TieRodCalc.Parts;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What the parts of a rod are chosen from, each list in the order of the catalog.</summary>
public sealed record RodCandidates
{
    /// <summary>Inner ends.</summary>
    public required IReadOnlyList<ThreadedEnd> Inner { get; init; }

    /// <summary>Sleeves; none where the rod has one threaded joint.</summary>
    public IReadOnlyList<Sleeve> Sleeves { get; init; } = [];

    /// <summary>Outer ends that go into a sleeve.</summary>
    public IReadOnlyList<ThreadedEnd> Outer { get; init; } = [];

    /// <summary>Outer ends that carry the internal thread, for rods with one threaded joint.</summary>
    public IReadOnlyList<SocketEnd> Sockets { get; init; } = [];

    /// <summary>Jam nuts of the inner end.</summary>
    public NutCandidates InnerNuts { get; init; } = NutCandidates.None;

    /// <summary>Jam nuts of the outer end.</summary>
    public NutCandidates OuterNuts { get; init; } = NutCandidates.None;

    /// <summary>Angle between the offsets where both ends are bent; without it two bent ends are not put together.</summary>
    public Angle? Clocking { get; init; }
}

/// <summary>What a jam nut is chosen from.</summary>
/// <param name="Nuts">The nuts in the order of the catalog; the thinnest that fits the end is taken.</param>
/// <param name="Must">
/// True where the job names the nut or says that there is none: an end that a named nut does not fit is not taken then. Otherwise an
/// end that no nut fits goes without one, and so does one that a clamp locks.
/// </param>
public sealed record NutCandidates(IReadOnlyList<JamNut> Nuts, bool Must)
{
    /// <summary>There is no nut.</summary>
    public static NutCandidates None { get; } = new([], Must: true);
}
