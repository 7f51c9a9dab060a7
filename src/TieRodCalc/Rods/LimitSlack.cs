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
            OfSetting(rod, innerInsertion, outerInsertion, innerCut, outerCut),
            OfCuts(rod, innerCut, outerCut));

    /// <summary>The smallest slack of all limits at one setting but for those of the cuts themselves.</summary>
    public static double OfSetting(
        in RodDimensions rod, double innerInsertion, double outerInsertion, double innerCut, double outerCut)
    {
        double inner = OfEnd(rod, RodSide.Inner, innerInsertion, innerCut);
        return rod.OneJoint
            ? inner
            : Math.Min(
                rod.Sleeve - rod.TipGap - innerInsertion - outerInsertion,
                Math.Min(inner, OfEnd(rod, RodSide.Outer, outerInsertion, outerCut)));
    }

    /// <summary>How much less than allowed is cut, and no less than nothing.</summary>
    public static double OfCuts(in RodDimensions rod, double innerCut, double outerCut) => Math.Min(
        Math.Min(rod[RodSide.Inner].MostCut - innerCut, innerCut), Math.Min(rod[RodSide.Outer].MostCut - outerCut, outerCut));

    private static double OfEnd(in RodDimensions rod, RodSide side, double insertion, double cut)
    {
        ref readonly JointDimensions joint = ref rod[side];
        double slack = Math.Min(insertion - joint.Least.At, joint.Depth - joint.Mouth - joint.Required);
        slack = Math.Min(slack, joint.NutRoom(insertion, cut));
        return Math.Min(slack, rod.Deepest(side).At - insertion);
    }

    /// <summary>How far a setting is from each limit by itself; a joint that the rod has not has none.</summary>
    public static IEnumerable<(Limit Limit, RodSide? End, double Slack)> Each(
        RodDimensions rod, double innerInsertion, double outerInsertion, double innerCut, double outerCut)
    {
        foreach ((RodSide side, double insertion, double cut) in new[]
            {
                (RodSide.Inner, innerInsertion, innerCut), (RodSide.Outer, outerInsertion, outerCut),
            })
        {
            if (rod.OneJoint && side == RodSide.Outer)
            {
                continue;
            }

            JointDimensions joint = rod[side];
            Bound deepest = rod.Deepest(side);
            yield return (
                Limit.Engagement,
                side,
                Math.Min(insertion - joint.Lead - joint.Mouth - joint.Required, joint.Depth - joint.Mouth - joint.Required));
            yield return (Limit.NutRoom, side, joint.NutRoom(insertion, cut));
            yield return (deepest.Limit, side, deepest.At - insertion);
            if (joint.Witness > 0)
            {
                yield return (Limit.Witness, side, insertion - joint.Lead - joint.Witness);
            }

            if (joint.Clamp > 0)
            {
                yield return (Limit.Clamp, side, insertion - joint.Lead - joint.Clamp);
            }

            yield return (Limit.Cut, side, joint.MostCut - cut);
        }

        if (!rod.OneJoint)
        {
            yield return (Limit.Tips, null, rod.Sleeve - rod.TipGap - innerInsertion - outerInsertion);
        }
    }
}
