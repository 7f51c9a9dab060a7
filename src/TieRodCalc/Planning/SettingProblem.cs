using System.Diagnostics.CodeAnalysis;
using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>What the limits leave to one end at the target, the wanted adjustment taken off.</summary>
/// <param name="Least">The least insertion, <c>a</c>.</param>
/// <param name="Deepest">The most insertion that the sleeve allows, <c>B</c>.</param>
/// <param name="Thread">The most that insertion and cut together may be for the nut to have room, <c>T</c>.</param>
/// <param name="MostCut">The most that may be cut, <c>M</c>.</param>
/// <param name="LeastLimit">The limit that sets <paramref name="Least"/>.</param>
/// <param name="DeepestLimit">The limit that sets <paramref name="Deepest"/>.</param>
/// <param name="LeastAt">Where in the adjustment <paramref name="Least"/> is met.</param>
/// <param name="DeepestAt">Where in the adjustment <paramref name="Deepest"/> and <paramref name="Thread"/> are met.</param>
/// <param name="ThreadTooShallow">By how much the sleeve's thread is shorter than the required engagement.</param>
internal readonly record struct EndRoom(
    double Least,
    double Deepest,
    double Thread,
    double MostCut,
    Limit LeastLimit,
    Limit DeepestLimit,
    AdjustmentPoint LeastAt,
    AdjustmentPoint DeepestAt,
    double ThreadTooShallow)
{
    /// <summary>The most that insertion and cut can add up to.</summary>
    public double Reach => Math.Min(Thread, Deepest + MostCut);

    /// <summary>Whether the nut's room is what ends that.</summary>
    public bool NutEndsReach => Thread <= Deepest + MostCut + Millimeters.Negligible;
}

/// <summary>
/// The limits of a rod for one target and one wanted adjustment, as inequalities in two insertions at the target and two
/// cuts, with <c>s1 + s2 + x1 + x2 = K</c>. Turning the sleeve moves the insertions in fixed proportion to the length, so
/// each limit has to be met at one end of the adjustment only, and the travel up to there is taken off it:
/// <c>a_i &lt;= s_i &lt;= B_i</c>, <c>s_i + x_i &lt;= T_i</c>, <c>s1 + s2 &lt;= Q</c>, <c>0 &lt;= x_i &lt;= M_i</c>.
/// All answers below follow from eliminating the insertions by hand; nothing is searched.
/// </summary>
internal readonly struct SettingProblem
{
    private readonly EndRoom _inner;
    private readonly EndRoom _outer;
    private readonly bool _oneJoint;

    /// <summary>Sets the problem up.</summary>
    public SettingProblem(in RodProblem wanted)
    {
        RodDimensions rod = wanted.Rod;
        Turning = new(rod);
        Motion = Turning.Motion;
        Axial = rod.Axial(wanted.Target);
        AxialShorter = Axial - rod.Axial(wanted.Target - wanted.Shorter);
        AxialLonger = rod.Axial(wanted.Target + wanted.Longer) - Axial;
        Sum = rod.Stretched - Axial;
        TipRoom = rod.Sleeve - rod.TipGap - AxialShorter;
        _oneJoint = rod.OneJoint;
        _inner = EndAt(rod, RodSide.Inner);
        _outer = EndAt(rod, RodSide.Outer);
    }

    /// <summary>What turning does.</summary>
    public Turning Turning { get; }

    /// <summary>How turning moves the insertions.</summary>
    public Motion Motion { get; }

    /// <summary>Axial length at the target.</summary>
    public double Axial { get; }

    /// <summary>How much of axial length the shorter wish takes.</summary>
    public double AxialShorter { get; }

    /// <summary>How much of axial length the longer wish takes.</summary>
    public double AxialLonger { get; }

    /// <summary>Whether the wanted adjustment can be had by turning at all.</summary>
    public bool Adjusts => Turning.Adjusts || AxialShorter + AxialLonger <= Millimeters.Negligible;

    /// <summary>What insertions and cuts add up to at the target, <c>K</c>.</summary>
    public double Sum { get; }

    /// <summary>The most that the two insertions may add up to at the target, <c>Q</c>.</summary>
    public double TipRoom { get; }

    [UnscopedRef]
    public ref readonly EndRoom this[RodSide side] => ref (side == RodSide.Inner ? ref _inner : ref _outer);

    /// <summary>The allowed insertions of the inner end at the target.</summary>
    public Interval InnerInsertions(Cuts cuts)
    {
        double sum = Sum - cuts.Total;
        double innerMost = Math.Min(_inner.Deepest, _inner.Thread - cuts.Inner);
        double outerMost = Math.Min(_outer.Deepest, _outer.Thread - cuts.Outer);
        return new(Math.Max(_inner.Least, sum - outerMost), Math.Min(innerMost, sum - _outer.Least));
    }

    /// <summary>
    /// The least total cut, and of the pairs with that total the one that takes most from the inner end; only where
    /// <see cref="Conflicts"/> finds nothing. The total is what is left of <c>K</c> when the insertions are as large as the
    /// limits let them be; the inner end's share is bounded by its own limits and by what the outer nut's room forbids.
    /// </summary>
    public Cuts LeastCuts()
    {
        double total = Sum - Math.Min(
            TipRoom, Math.Min(_inner.Deepest, _inner.Thread) + Math.Min(_outer.Deepest, _outer.Thread));
        if (total <= Millimeters.Negligible)
        {
            return default;
        }

        double inner = Math.Min(
            Math.Min(total, _inner.MostCut),
            Math.Min(_inner.Thread - _inner.Least, _inner.Thread + _outer.Deepest - Sum + total));
        inner = NoCutIfNegligible(inner);
        double outer = NoCutIfNegligible(total - inner);
        return new(outer > 0 ? inner : total, outer);
    }

    /// <summary>The cuts of one end for which all limits hold, the other end's cut fixed.</summary>
    public Interval CutWindow(RodSide side, double otherCut)
    {
        ref readonly EndRoom end = ref this[side];
        ref readonly EndRoom other = ref this[RodDimensions.Other(side)];
        double rest = Sum - otherCut;
        double otherMost = Math.Min(other.Deepest, other.Thread - otherCut);
        double least = Math.Max(0, Math.Max(rest - TipRoom, rest - end.Deepest - otherMost));
        double most = Math.Min(end.MostCut, Math.Min(end.Thread - end.Least, rest - end.Least - other.Least));
        return new(NoCutIfNegligible(least), Math.Max(0, most));
    }

    /// <summary>
    /// Every contradiction that no allowed cut lifts: the inequalities left when insertions and cuts are eliminated, of
    /// which all hold exactly where some cut works. Each names the limits that it comes from.
    /// </summary>
    public IReadOnlyList<BindingLimit> Conflicts()
    {
        List<BindingLimit>? found = null;
        Add(ref found, _inner.ThreadTooShallow, Term.InnerDepth);
        Add(ref found, _inner.Least - _inner.Deepest, Term.InnerLeast, Term.InnerDeepest);
        Add(ref found, _inner.Least - _inner.Thread, Term.InnerLeast, Term.InnerNut);
        Add(ref found, _outer.ThreadTooShallow, Term.OuterDepth);
        Add(ref found, _outer.Least - _outer.Deepest, Term.OuterLeast, Term.OuterDeepest);
        Add(ref found, _outer.Least - _outer.Thread, Term.OuterLeast, Term.OuterNut);
        Add(ref found, _inner.Least + _outer.Least - Sum, Term.InnerLeast, Term.OuterLeast);

        double beyond = Sum - _inner.Reach - _outer.Reach;
        Add(ref found, beyond, _inner.NutEndsReach ? [Term.InnerNut] : [Term.InnerDeepest, Term.InnerCut]);
        Add(ref found, beyond, _outer.NutEndsReach ? [Term.OuterNut] : [Term.OuterDeepest, Term.OuterCut]);

        Add(ref found, _inner.Least + _outer.Least - TipRoom, Term.InnerLeast, Term.OuterLeast, Term.Tips);
        Add(ref found, Sum - _inner.MostCut - _outer.MostCut - TipRoom, Term.Tips, Term.InnerCut, Term.OuterCut);
        Add(
            ref found,
            _inner.Least + Sum - _inner.Thread - _outer.MostCut - TipRoom,
            Term.InnerLeast, Term.InnerNut, Term.OuterCut, Term.Tips);
        Add(
            ref found,
            _outer.Least + Sum - _outer.Thread - _inner.MostCut - TipRoom,
            Term.OuterLeast, Term.OuterNut, Term.InnerCut, Term.Tips);
        return found is null ? (IReadOnlyList<BindingLimit>)[] : Sorted(found);
    }

    private EndRoom EndAt(in RodDimensions rod, RodSide side)
    {
        ref readonly JointDimensions joint = ref rod[side];
        double share = Motion[side];
        double rise = Math.Max(share * AxialLonger, -share * AxialShorter);
        double fall = Math.Min(share * AxialLonger, -share * AxialShorter);
        Bound least = joint.Least;
        Bound deepest = rod.Deepest(side);
        (AdjustmentPoint leastAt, AdjustmentPoint deepestAt) = share switch
        {
            < 0 => (AdjustmentPoint.Longest, AdjustmentPoint.Shortest),
            > 0 => (AdjustmentPoint.Shortest, AdjustmentPoint.Longest),
            _ => (AdjustmentPoint.Any, AdjustmentPoint.Any),
        };
        return new EndRoom(
            least.At - fall,
            deepest.At - rise,
            joint.ThreadForInsertion - rise,
            joint.MostCut,
            least.Limit,
            deepest.Limit,
            leastAt,
            deepestAt,
            joint.Required - (joint.Depth - joint.Mouth));
    }

    private static double NoCutIfNegligible(double cut) => cut <= Millimeters.Negligible ? 0 : cut;

    /// <summary>Adds the limits of a contradiction where there is one; each limit stands once, with its greatest miss.</summary>
    private void Add(ref List<BindingLimit>? found, double missedBy, params ReadOnlySpan<Term> terms)
    {
        if (missedBy <= Millimeters.Negligible)
        {
            return;
        }

        found ??= [];
        foreach (Term term in terms)
        {
            BindingLimit limit = Named(term, UnitsNet.Length.FromMillimeters(missedBy));
            if (_oneJoint && limit.End == RodSide.Outer)
            {
                continue;
            }

            int index = found.FindIndex(known => known.Limit == limit.Limit && known.End == limit.End && known.At == limit.At);
            if (index < 0)
            {
                found.Add(limit);
            }
            else if (Millimeters.Of(found[index].MissedBy) < missedBy)
            {
                found[index] = limit;
            }
        }
    }

    private BindingLimit Named(Term term, UnitsNet.Length missedBy)
    {
        RodSide side = term < Term.OuterDepth ? RodSide.Inner : RodSide.Outer;
        ref readonly EndRoom end = ref this[side];
        return term switch
        {
            Term.InnerDepth or Term.OuterDepth => new(Limit.Engagement, side, AdjustmentPoint.Any, missedBy),
            Term.InnerLeast or Term.OuterLeast => new(end.LeastLimit, side, end.LeastAt, missedBy),
            Term.InnerDeepest or Term.OuterDeepest => new(end.DeepestLimit, side, end.DeepestAt, missedBy),
            Term.InnerNut or Term.OuterNut => new(Limit.NutRoom, side, end.DeepestAt, missedBy),
            Term.InnerCut or Term.OuterCut => new(Limit.Cut, side, AdjustmentPoint.Any, missedBy),
            _ => new(Limit.Tips, null, AdjustmentPoint.Shortest, missedBy),
        };
    }

    /// <summary>Greatest miss first; equal misses stay in the order in which they were found.</summary>
    private static List<BindingLimit> Sorted(List<BindingLimit> found)
    {
        List<BindingLimit> sorted = [];
        foreach (BindingLimit limit in found)
        {
            double missedBy = Millimeters.Of(limit.MissedBy) - Millimeters.Negligible;
            int place = sorted.FindIndex(known => Millimeters.Of(known.MissedBy) < missedBy);
            sorted.Insert(place < 0 ? sorted.Count : place, limit);
        }

        return sorted;
    }

    /// <summary>What bounds an inequality.</summary>
    private enum Term : byte
    {
        InnerDepth,
        InnerLeast,
        InnerDeepest,
        InnerNut,
        InnerCut,
        OuterDepth,
        OuterLeast,
        OuterDeepest,
        OuterNut,
        OuterCut,
        Tips,
    }
}
