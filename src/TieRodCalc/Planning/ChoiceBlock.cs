using TieRodCalc.Parts;
using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>
/// One sleeve or socket with one group of inner and one group of outer ends: all that the limits take from threads, sleeve, nuts and
/// wish is the same for every pair of them, and only the lengths of the two ends differ.
/// </summary>
internal sealed class ChoiceBlock
{
    private readonly double _innerBase;
    private readonly double _outerBase;
    private readonly double _innerDeepest;
    private readonly double _outerDeepest;
    private readonly double _innerNut;
    private readonly double _outerNut;
    private readonly double _stretch;
    private readonly double _tipRoom;
    private readonly double _sleeveRoom;
    private readonly double _tooShallow;
    private readonly double _eachWay;

    public ChoiceBlock(RodParts like, RodProblem problem, EndGroup inner, EndGroup outer, int place, int locked)
    {
        (Like, Inner, Outer, Place, Locked) = (like, inner, outer, place, locked);
        RodDimensions rod = problem.Rod;
        double shorter = problem.AxialShorter;
        double longer = problem.AxialLonger;
        (_innerBase, _innerDeepest, _innerNut) = Joint(problem, RodSide.Inner, shorter, longer);
        (_outerBase, _outerDeepest, _outerNut) = Joint(problem, RodSide.Outer, shorter, longer);
        _stretch = rod.Sleeve - problem.Axial;
        _tipRoom = problem.Axial - shorter - rod.TipGap;
        _sleeveRoom = rod.Sleeve - rod.TipGap - shorter;
        _tooShallow = rod.OneJoint ? Shallow(rod.Inner) : Math.Max(Shallow(rod.Inner), Shallow(rod.Outer));

        // Two insertions share what is free between the limits; a single one has no choice.
        _eachWay = rod.OneJoint ? 1 : 0.5;
        MostMargin = Math.Min(
            Math.Min(-_tooShallow, _tipRoom - inner.Center - outer.Center),
            Math.Min(
                MostWay / 2,
                _eachWay * Math.Min(
                    inner.ToFullThread[^1] - _innerBase + MostToFullThread + _stretch,
                    InnerMost(inner.Center, inner.BeyondThread) + OuterMost - _stretch)));
    }

    /// <summary>Parts that stand for all pairs of the block.</summary>
    public RodParts Like { get; }

    public EndGroup Inner { get; }

    public EndGroup Outer { get; }

    /// <summary>The sleeve's or socket's place in the catalog.</summary>
    public int Place { get; }

    /// <summary>0 where all joints are locked, 1 where one is, 2 where none is.</summary>
    public int Locked { get; }

    /// <summary>No pair of the block has a greater worst margin without a cut.</summary>
    public double MostMargin { get; }

    /// <summary>Whether some pair may reach the length with a cut or without.</summary>
    public bool MayReach => _tooShallow <= Millimeters.Negligible
        && Inner.ToFullThread[^1] - _innerBase + MostToFullThread + _stretch >= -Millimeters.Negligible
        && MostWay >= -Millimeters.Negligible
        && InnerMost(Inner.Center, Inner.BeyondThread) + OuterMost - _stretch >= -(Inner.MostCut + Outer.MostCut) - Millimeters.Negligible
        && _tipRoom - Inner.Center - Outer.Center >= -(Inner.MostCut + Outer.MostCut) - Millimeters.Negligible;

    private double MostWay => Math.Min(
        _innerDeepest - _innerBase - Inner.Lead,
        Like.OneJoint ? double.PositiveInfinity : _outerDeepest - _outerBase - Outer.Lead);

    private double MostToFullThread => Outer.ToFullThread[^1] - _outerBase;

    private double OuterMost => Most(Outer.Center, Outer.BeyondThread, _outerDeepest, _outerNut);

    /// <summary>No pair with this inner end has a greater worst margin without a cut.</summary>
    public double MostMarginOf(in EndLengths inner)
    {
        double most = InnerMost(inner.Center, inner.Thread - inner.Center);
        double toFullThread = inner.Center - inner.Lead - _innerBase;
        return Math.Min(
            _tipRoom - inner.Center - Outer.Center,
            Math.Min(
                (most + toFullThread) / 2,
                _eachWay * Math.Min(toFullThread + MostToFullThread + _stretch, most + OuterMost - _stretch)));
    }

    /// <summary>
    /// The outer ends that may go with an inner end, in the group's order. What is outside the window has less margin, or needs more cut.
    /// </summary>
    public ReadOnlySpan<EndLengths> Window(in EndLengths inner, double margin, double cut)
    {
        double free = margin / _eachWay;
        double low = free - (inner.Center - inner.Lead - _innerBase) - _stretch + _outerBase;
        double most = InnerMost(inner.Center, inner.Thread - inner.Center);
        double high = Math.Min(_tipRoom - margin - inner.Center + cut, _outerDeepest + most - _stretch - free + cut);
        int from = First(Outer.ToFullThread, low - 2 * Millimeters.Negligible);
        int to = First(Outer.ToFullThread, high + 2 * Millimeters.Negligible);
        return Outer.Ends.AsSpan(from, Math.Max(0, to - from));
    }

    /// <summary>
    /// Whether a pair reaches the length within the limits. Says the least total cut and the worst margin at the middle of what the
    /// insertion of the inner end may be; of a pair that is cut, what that margin is at most.
    /// </summary>
    public bool Fits(in EndLengths inner, in EndLengths outer, out double cut, out double margin)
    {
        const double Missed = -Millimeters.Negligible;
        double innerFull = inner.Center - inner.Lead - _innerBase;
        double outerFull = outer.Center - outer.Lead - _outerBase;
        double innerThread = inner.Thread - inner.Center - _innerNut;
        double outerThread = outer.Thread - outer.Center - _outerNut;
        double innerBore = _innerDeepest - inner.Center;
        double outerBore = _outerDeepest - outer.Center;
        double innerMost = Math.Min(innerThread, innerBore);
        double outerMost = Math.Min(outerThread, outerBore);
        double engaged = innerFull + outerFull + _stretch;
        double tips = _tipRoom - inner.Center - outer.Center;
        double way = innerMost + outerMost - _stretch;
        double ends = Math.Min(innerMost + innerFull, Like.OneJoint ? double.PositiveInfinity : outerMost + outerFull);
        cut = Math.Max(-tips, -way);
        margin = Math.Min(-_tooShallow, Math.Min(_eachWay * engaged, ends / 2));
        if (_tooShallow > Millimeters.Negligible || engaged < Missed || ends < Missed)
        {
            return false;
        }

        double sum = _sleeveRoom + innerFull + outerFull - inner.Center - outer.Center;
        if (cut <= Millimeters.Negligible)
        {
            cut = 0;
            margin = Math.Min(margin, Math.Min(tips, _eachWay * way));
            return sum >= Missed;
        }

        return sum >= Missed
            && Math.Min(innerThread, innerBore + inner.MostCut) + Math.Min(outerThread, outerBore + outer.MostCut) - _stretch >= Missed
            && tips + inner.MostCut + outer.MostCut >= Missed
            && innerThread + innerFull + outer.MostCut + tips >= Missed
            && outerThread + outerFull + inner.MostCut + tips >= Missed;
    }

    /// <summary>No pair has a greater worst margin, cut or not.</summary>
    public double MostMarginCut => Math.Min(-_tooShallow, MostWay / 2);

    /// <summary>What a joint takes beside its end's lengths: least insertion less the lead, deepest insertion, nut; the travel in all.</summary>
    private static (double Base, double Deepest, double Nut) Joint(RodProblem problem, RodSide side, double shorter, double longer)
    {
        JointDimensions joint = problem.Rod[side];
        double share = problem.Turning.Share(side);
        double rise = Math.Max(share * longer, -share * shorter);
        double fall = Math.Min(share * longer, -share * shorter);
        return (joint.Least.At - joint.Lead - fall, problem.Rod.Deepest(side).At - rise, joint.Nut + rise);
    }

    private static double Shallow(in JointDimensions joint) => joint.Required - (joint.Depth - joint.Mouth);

    private static double Most(double center, double beyondThread, double deepest, double nut) =>
        Math.Min(beyondThread - nut, deepest - center);

    private double InnerMost(double center, double beyondThread) => Most(center, beyondThread, _innerDeepest, _innerNut);

    /// <summary>The first place of a rising row whose value is not below a bound.</summary>
    private static int First(double[] row, double bound)
    {
        int low = 0;
        int high = row.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (row[middle] < bound)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}
