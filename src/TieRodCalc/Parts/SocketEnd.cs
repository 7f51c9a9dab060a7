namespace TieRodCalc.Parts;

/// <summary>An outer end that carries the internal thread itself; the rod then has no sleeve.</summary>
public sealed record SocketEnd
{
    /// <summary>Id, name, material, price and mass.</summary>
    public required PartInfo Info { get; init; }

    /// <summary>Ball center to the face of the thread, along the thread axis.</summary>
    public required Measured CenterToFace { get; init; }

    /// <summary>The internal thread.</summary>
    public required TappedHole Socket { get; init; }

    /// <summary>How the end is held, or null where it was not said.</summary>
    public JointKind? Joint { get; init; }

    /// <summary>The angle that the joint may swing each way, or null.</summary>
    public UnitsNet.Angle? Swing { get; init; }

    /// <summary>How the stud stands, or null.</summary>
    public StudDirection? Stud { get; init; }
}
