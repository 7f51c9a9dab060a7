namespace TieRodCalc.Rods;

/// <summary>
/// How the insertions of a rod move while one of its parts is turned and the others are held: for one millimeter more of axial
/// length they grow by these shares.
/// </summary>
/// <param name="Inner">Share of the inner end.</param>
/// <param name="Outer">Share of the outer end.</param>
/// <param name="AxialPerTurn">How much axial length one turn gives or takes, zero or more.</param>
internal readonly record struct Motion(double Inner, double Outer, double AxialPerTurn)
{
    /// <summary>Whether turning changes the length at all.</summary>
    public bool Adjusts => AxialPerTurn > Millimeters.Negligible;

    public double this[RodSide side] => side == RodSide.Inner ? Inner : Outer;

    /// <summary>One end is taken off its pin and turned in its thread; the other stays as it is.</summary>
    public static Motion OfEnd(RodSide side, double pitch) =>
        side == RodSide.Inner ? new(-1, 0, pitch) : new(0, -1, pitch);
}
