using TieRodCalc.Parts;
using TieRodCalc.Rods;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>Computes what the joints of a rod carry.</summary>
internal static class LoadCheck
{
    /// <summary>The strength of one joint at its least engagement.</summary>
    /// <param name="joint">What its strength follows from.</param>
    /// <param name="engaged">The least engagement over the wanted adjustment.</param>
    /// <param name="arm">How far the line of the ball centers passes from the thread's axis, millimeters.</param>
    /// <param name="load">The steering load, or null.</param>
    public static JointStrength Of(in JointMaterials joint, Length engaged, double arm, Force? load)
    {
        StressPerLoad stress = StressPerLoad.Of(joint.Male.Size, arm);
        Force? breaks = joint is { Pair: { } known, MaleTensile: { } strength }
            ? Force.FromNewtons(Math.Min(known.TensileLoad(strength).Newtons, strength.Megapascals / stress.Both))
            : null;
        PairLoads? loads = joint is { Pair: { } pair, MaleTensile: { } male, FemaleTensile: { } female }
            ? pair.Loads(male, female, engaged, joint.Wall) with { Tensile = breaks!.Value }
            : null;
        return new JointStrength
        {
            Breaks = breaks,
            Loads = loads,
            Load = load is { } force
                ? new(
                    force,
                    Length.FromMillimeters(arm),
                    Pressure.FromMegapascals(force.Newtons * stress.Axial),
                    Pressure.FromMegapascals(force.Newtons * stress.Bending),
                    breaks / force,
                    loads?.MaleStrip / force,
                    loads?.FemaleStrip / force)
                : null,
        };
    }

    /// <summary>
    /// How far the line of the ball centers passes from a thread's axis where it leaves the sleeve, and no less than the offset of
    /// that end's own ball.
    /// </summary>
    /// <param name="parts">The parts.</param>
    /// <param name="side">The joint.</param>
    /// <param name="fromBall">Ball center to the sleeve's face along the axis, millimeters.</param>
    /// <param name="axial">Axial length of the rod, millimeters.</param>
    public static double Arm(RodParts parts, RodSide side, double fromBall, double axial)
    {
        double along = Math.Clamp(fromBall / axial, 0, 1);
        double own = parts.OffsetAt(side);
        double far = parts.OffsetAt(RodDimensions.Other(side));
        double near = own * (1 - along);
        double other = far * along;
        double cosine = Math.Cos(parts.Clocking?.Radians ?? 0);
        return Math.Max(own, Math.Sqrt(Math.Max(0, near * near + other * other + 2 * near * other * cosine)));
    }

    /// <summary>
    /// Stress in megapascals for each newton: <c>1 / At</c>, and <c>32 o / (pi ds^3)</c> with <c>ds = sqrt(4 At / pi)</c>.
    /// </summary>
    private readonly record struct StressPerLoad(double Axial, double Bending)
    {
        public double Both => Axial + Bending;

        public static StressPerLoad Of(ThreadSize size, double arm)
        {
            double area = ThreadProfile.StressArea(size.Form, size.DiameterMm, size.PitchMm);
            double diameter = Math.Sqrt(4 * area / Math.PI);
            return new(1 / area, 32 * arm / (Math.PI * diameter * diameter * diameter));
        }
    }
}
