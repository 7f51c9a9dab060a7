using TieRodCalc.Parts;

namespace TieRodCalc.Yaml;

/// <summary>The parts of one or more part files, each kind in the order of the files.</summary>
public sealed record PartCatalog
{
    /// <summary>Materials.</summary>
    public IReadOnlyList<Material> Materials { get; init; } = [];

    /// <summary>Inner ends.</summary>
    public IReadOnlyList<ThreadedEnd> InnerEnds { get; init; } = [];

    /// <summary>Sleeves.</summary>
    public IReadOnlyList<Sleeve> Sleeves { get; init; } = [];

    /// <summary>Outer ends with an external thread.</summary>
    public IReadOnlyList<ThreadedEnd> OuterEnds { get; init; } = [];

    /// <summary>Outer ends that carry the internal thread themselves.</summary>
    public IReadOnlyList<SocketEnd> SocketEnds { get; init; } = [];

    /// <summary>Jam nuts.</summary>
    public IReadOnlyList<JamNut> JamNuts { get; init; } = [];
}
