namespace TieRodCalc.Rods;

/// <summary>How far one setting of a rod is from each limit, straight from the definitions; below zero a limit is missed.</summary>
internal static class LimitSlack
{
    /// <summary>The smallest slack of all limits at one setting.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="innerInsertion">Insertion of the inner end.</param>
    /// <param name="outerInsertion">Insertion of the outer end.</param>
    /// <param name="innerCut">What is cut off the inner end.</param>
    /// <param name="outerCut">What is cut off the outer end.</param>
    public static double Worst(in RodDimensions rod, double innerInsertion, double outerInsertion, double innerCut, double outerCut) =>
        Math.Min(
            rod.Sleeve - rod.TipGap - innerInsertion - outerInsertion,
            Math.Min(OfEnd(rod, RodSide.Inner, innerInsertion, innerCut), OfEnd(rod, RodSide.Outer, outerInsertion, outerCut)));

    private static double OfEnd(in RodDimensions rod, RodSide side, double insertion, double cut)
    {
        JointDimensions joint = rod[side];
        double slack = Math.Min(insertion - joint.Least.At, joint.Depth - joint.Mouth - joint.Required);
        slack = Math.Min(slack, joint.NutRoom(insertion, cut));
        slack = Math.Min(slack, rod.Deepest(side).At - insertion);
        return Math.Min(slack, Math.Min(joint.MostCut - cut, cut));
    }
}
