using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Parts;

/// <summary>How an end is held by its joint; it decides by what steps the end may be turned.</summary>
public enum JointKind
{
    /// <summary>Tapered stud: whole turns only.</summary>
    TaperedStud,

    /// <summary>Rod end (heim joint): may be turned by half turns where it is straight.</summary>
    RodEnd,
}

/// <summary>How the stud or bolt of a joint stands.</summary>
public enum StudDirection
{
    /// <summary>Upright.</summary>
    Vertical,

    /// <summary>Along the axle.</summary>
    AlongAxle,

    /// <summary>Along the car, fore and aft.</summary>
    AlongCar,
}

/// <summary>An end with an external thread: an inner end, or an outer end that goes into a sleeve.</summary>
public sealed record ThreadedEnd
{
    /// <summary>Id, name, material, price and mass.</summary>
    public required PartInfo Info { get; init; }

    /// <summary>The external thread.</summary>
    public required ThreadDesignation Thread { get; init; }

    /// <summary>Ball center to tip, along the thread axis.</summary>
    public required Measured CenterToTip { get; init; }

    /// <summary>Length of full thread measured from the tip, the lead chamfer included.</summary>
    public required Measured ThreadLength { get; init; }

    /// <summary>The incomplete thread at the tip; null: one pitch, also on a tip that was cut and chamfered again.</summary>
    public Measured? Lead { get; init; }

    /// <summary>Lateral offset of the ball center from the thread axis; zero on a straight end.</summary>
    public Measured Offset { get; init; }

    /// <summary>The most that may be cut off the tip; zero: the part must not be cut.</summary>
    public Measured MaxCut { get; init; }

    /// <summary>How much further up the shank a die can go; zero: not at all.</summary>
    public Measured Rethread { get; init; }

    /// <summary>How the end is held, or null where it was not said: then only whole turns are counted on.</summary>
    public JointKind? Joint { get; init; }

    /// <summary>The angle that the joint may swing each way, or null.</summary>
    public Angle? Swing { get; init; }

    /// <summary>How the stud stands, or null.</summary>
    public StudDirection? Stud { get; init; }

    internal double LeadMm => Lead?.Mm ?? Thread.Size.PitchMm;

    /// <summary>True where the end may be turned by half turns: a rod end that is straight.</summary>
    public bool TurnsByHalves => Joint == JointKind.RodEnd && !IsBent;

    /// <summary>True where the ball center lies beside the thread axis.</summary>
    public bool IsBent => Offset.Mm > Millimeters.Negligible;
}
