using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>How far the two tips are past the sleeve's faces, and what was cut off them.</summary>
internal readonly record struct Setting(double Inner, double Outer, Cuts Cuts)
{
    /// <summary>Intervals may be inverted by the comparison constant; a limit may be missed by that and by what doubles lose.</summary>
    public const double Lost = 2 * Millimeters.Negligible;

    public double this[RodSide side] => side == RodSide.Inner ? Inner : Outer;

    /// <summary>The setting after a motion that makes the rod longer by so much along its axis.</summary>
    public Setting Moved(in Motion motion, double longer) =>
        this with { Inner = Inner + motion.Inner * longer, Outer = Outer + motion.Outer * longer };

    /// <summary>The smallest slack of all limits; below zero one is missed.</summary>
    public double WorstSlack(in RodDimensions rod) => LimitSlack.Worst(rod, Inner, Outer, Cuts.Inner, Cuts.Outer);
}
