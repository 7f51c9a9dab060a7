namespace TieRodCalc.Rods;

/// <summary>
/// What a turn of the sleeve does while the ends are held. Seen from the inner end toward the outer end, one clockwise turn
/// changes <c>s1</c> by <c>-h1 P1</c>, <c>s2</c> by <c>+h2 P2</c> and the axial length by <c>h1 P1 - h2 P2</c>. A rod with one threaded
/// joint is turned by its inner end: one clockwise turn changes <c>s</c> by <c>+h P</c> and the axial length by <c>-h P</c>.
/// </summary>
internal readonly struct Turning
{
    private readonly double _innerPerTurn;
    private readonly double _outerPerTurn;

    public Turning(in RodDimensions rod)
    {
        ref readonly JointDimensions inner = ref rod[RodSide.Inner];
        ref readonly JointDimensions outer = ref rod[RodSide.Outer];
        _innerPerTurn = (rod.OneJoint ? inner.Hand : -inner.Hand) * inner.Pitch;
        _outerPerTurn = outer.Hand * outer.Pitch;
        AxialPerTurn = -(_innerPerTurn + _outerPerTurn);
        OppositeHands = !rod.OneJoint && inner.Hand != outer.Hand;
        StartStep = Adjusts ? inner.Pitch * outer.Pitch / Math.Abs(AxialPerTurn) : double.PositiveInfinity;
    }

    /// <summary>Change of the axial length by one clockwise turn.</summary>
    public double AxialPerTurn { get; }

    /// <summary>Whether the two ends run in together.</summary>
    public bool OppositeHands { get; }

    /// <summary>Whether turning the sleeve changes the length at all: not so with the same hand and the same pitch.</summary>
    public bool Adjusts => Math.Abs(AxialPerTurn) > Millimeters.Negligible;

    /// <summary>
    /// What starting one thread a turn later moves <c>s1</c> by once the sleeve has been turned back to the same length:
    /// <c>P1 P2 / |h1 P1 - h2 P2|</c>.
    /// </summary>
    public double StartStep { get; }

    /// <summary>The turn that lengthens the rod.</summary>
    public TurnDirection Lengthens => AxialPerTurn > 0 ? TurnDirection.Clockwise : TurnDirection.Counterclockwise;

    /// <summary>The turn that shortens the rod.</summary>
    public TurnDirection Shortens => AxialPerTurn > 0 ? TurnDirection.Counterclockwise : TurnDirection.Clockwise;

    /// <summary>How turning moves the insertions.</summary>
    public Motion Motion => new(Share(RodSide.Inner), Share(RodSide.Outer), Math.Abs(AxialPerTurn));

    /// <summary>
    /// Change of one end's insertion for one millimeter more of axial length; 0 where turning does not change the length.
    /// </summary>
    public double Share(RodSide side) =>
        !Adjusts ? 0 : (side == RodSide.Inner ? _innerPerTurn : _outerPerTurn) / AxialPerTurn;
}
