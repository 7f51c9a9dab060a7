namespace TieRodCalc.Rods;

/// <summary>A value that a limit sets, and which limit that is.</summary>
internal readonly record struct Bound(double At, Limit Limit);

/// <summary>
/// The dimensions of one threaded joint in millimeters, along the thread axis. <c>x</c> is what is cut off the tip,
/// <c>s</c> the insertion: how far the tip is past the sleeve's face.
/// </summary>
internal readonly record struct JointDimensions
{
    /// <summary>Ball center to tip, <c>c</c>.</summary>
    public required double CenterToTip { get; init; }

    /// <summary>Full thread from the tip, the lead included, <c>t</c>.</summary>
    public required double ThreadLength { get; init; }

    /// <summary>Incomplete thread at the tip, <c>l</c>; the same after a cut.</summary>
    public required double Lead { get; init; }

    /// <summary>Pitch, <c>P</c>.</summary>
    public required double Pitch { get; init; }

    /// <summary>+1 right-hand, -1 left-hand, <c>h</c>.</summary>
    public required int Hand { get; init; }

    /// <summary>Full thread of the sleeve from the face, <c>d</c>.</summary>
    public required double Depth { get; init; }

    /// <summary>Countersink of the mouth, <c>m</c>.</summary>
    public required double Mouth { get; init; }

    /// <summary>Whether the bore beyond the thread is closed.</summary>
    public required bool ClosedBore { get; init; }

    /// <summary>Thickness of the jam nut, 0 where there is none, <c>n</c>.</summary>
    public required double Nut { get; init; }

    /// <summary>Required engagement.</summary>
    public required double Required { get; init; }

    /// <summary>Far edge of the witness hole, <c>w</c>; 0 where there is none.</summary>
    public double Witness { get; init; }

    /// <summary>Inner edge of the clamp, <c>k</c>; 0 where there is none.</summary>
    public double Clamp { get; init; }

    /// <summary>The most that may be cut.</summary>
    public required double MostCut { get; init; }

    /// <summary>The least insertion that the joint's own limits allow, at any cut.</summary>
    public Bound Least
    {
        get
        {
            Bound least = new(Lead + Mouth + Required, Limit.Engagement);
            least = Larger(least, Lead + Witness, Limit.Witness);
            return Larger(least, Lead + Clamp, Limit.Clamp);
        }
    }

    /// <summary>Thread that the nut leaves free on the uncut end: insertion and cut together may not be more.</summary>
    public double ThreadForInsertion => ThreadLength - Nut;

    /// <summary>Full-form thread on full-form thread: <c>max(0, min(d, s - l) - max(m, s - (t - x)))</c>.</summary>
    public double Engaged(double s, double x) =>
        Math.Max(0, Math.Min(Depth, s - Lead) - Math.Max(Mouth, s - (ThreadLength - x)));

    /// <summary>Thread left outside the nut: <c>(t - x) - s - n</c>.</summary>
    public double NutRoom(double s, double x) => ThreadLength - x - s - Nut;

    /// <summary>Thread outside the sleeve's face, what a caliper reads: <c>(t - x) - s</c>.</summary>
    public double Showing(double s, double x) => ThreadLength - x - s;

    /// <summary>Which way a jam nut loosens, seen from the end's ball toward the thread.</summary>
    public TurnDirection NutLoosens => Hand > 0 ? TurnDirection.Counterclockwise : TurnDirection.Clockwise;

    /// <summary>The larger bound; of two that are equal the first one gives the name.</summary>
    private static Bound Larger(Bound bound, double at, Limit limit) =>
        at > bound.At + Millimeters.Negligible ? new(at, limit) : bound with { At = Math.Max(at, bound.At) };
}
