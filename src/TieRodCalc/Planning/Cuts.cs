using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>What is cut off the two ends.</summary>
internal readonly record struct Cuts(double Inner, double Outer)
{
    public double Total => Inner + Outer;

    public double this[RodSide side] => side == RodSide.Inner ? Inner : Outer;
}
