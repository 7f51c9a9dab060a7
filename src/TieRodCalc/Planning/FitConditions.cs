using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>
/// What must hold so that some setting keeps all limits, the cuts being made: the limits with the insertions eliminated, each of
/// them straight in every dimension and in the cuts. Where all of them are zero or more, and only there, such a setting exists.
/// </summary>
internal static class FitConditions
{
    /// <summary>How many there are.</summary>
    public const int Count = 30;

    /// <summary>Where the limit of the inner end's cut stands.</summary>
    public const int InnerCut = 7;

    /// <summary>Where the limit of the outer end's cut stands.</summary>
    public const int OuterCut = 15;

    /// <summary>By how much each holds; below zero it is missed. Those of a joint that the rod has not hold without end.</summary>
    public static void Slacks(in RodProblem wanted, Cuts cuts, Span<double> slacks)
    {
        RodDimensions rod = wanted.Rod;
        double shorter = wanted.AxialShorter;
        double longer = wanted.AxialLonger;
        double sum = rod.Stretched - wanted.Axial - cuts.Total;
        End inner = new(rod, wanted.Turning, RodSide.Inner, cuts.Inner, shorter, longer);
        End outer = new(rod, wanted.Turning, RodSide.Outer, cuts.Outer, shorter, longer);
        int next = 0;
        foreach (End end in (ReadOnlySpan<End>)[inner, outer])
        {
            foreach (double least in (ReadOnlySpan<double>)[end.Engaged, end.Witness, end.Clamp])
            {
                slacks[next++] = end.Deepest - least;
                slacks[next++] = end.Thread - least;
            }

            slacks[next++] = end.Depth;
            slacks[next++] = end.CutLeft;
        }

        foreach (double least in (ReadOnlySpan<double>)[inner.Engaged, inner.Witness, inner.Clamp])
        {
            foreach (double other in (ReadOnlySpan<double>)[outer.Engaged, outer.Witness, outer.Clamp])
            {
                slacks[next++] = sum - least - other;
            }
        }

        foreach (double most in (ReadOnlySpan<double>)[inner.Deepest, inner.Thread])
        {
            slacks[next++] = most + outer.Deepest - sum;
            slacks[next++] = most + outer.Thread - sum;
        }

        slacks[next] = rod.Sleeve - rod.TipGap - shorter - sum;
    }

    /// <summary>What bounds one end at the target, the wanted adjustment taken off.</summary>
    private readonly struct End
    {
        public End(in RodDimensions rod, in Turning turning, RodSide side, double cut, double shorter, double longer)
        {
            ref readonly JointDimensions joint = ref rod[side];
            double share = turning.Share(side);
            double rise = Math.Max(share * longer, -share * shorter);
            double fall = Math.Min(share * longer, -share * shorter);
            Engaged = joint.Lead + joint.Mouth + joint.Required - fall;
            Witness = joint.Lead + joint.Witness - fall;
            Clamp = joint.Lead + joint.Clamp - fall;
            Deepest = rod.Deepest(side).At - rise;
            Thread = joint.ThreadForInsertion - cut - rise;
            Depth = joint.Depth - joint.Mouth - joint.Required;
            CutLeft = joint.MostCut - cut;
        }

        public double Engaged { get; }

        public double Witness { get; }

        public double Clamp { get; }

        public double Deepest { get; }

        public double Thread { get; }

        public double Depth { get; }

        public double CutLeft { get; }
    }
}
