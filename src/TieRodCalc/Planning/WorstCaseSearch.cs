using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>
/// Carries tolerances through a plan. Each condition of <see cref="FitConditions"/> is straight in every dimension, so that its worst
/// value in the box is its nominal one less what each tolerance takes by itself; nothing is sampled.
/// </summary>
internal sealed class WorstCaseSearch
{
    private readonly ToleranceBox _box;
    private readonly double _mark;
    private readonly double[] _nominal = new double[FitConditions.Count];
    private readonly double[] _worst = new double[FitConditions.Count];
    private readonly double[] _perInnerCut = new double[FitConditions.Count];
    private readonly double[] _perOuterCut = new double[FitConditions.Count];
    private readonly double[][] _taken;

    public WorstCaseSearch(RodProblem wanted, ToleranceBox box, double mark)
    {
        _box = box;
        _mark = mark;
        FitConditions.Slacks(wanted, default, _nominal);
        FitConditions.Slacks(wanted, new Cuts(1, 0), _perInnerCut);
        FitConditions.Slacks(wanted, new Cuts(0, 1), _perOuterCut);
        _taken = [.. box.All.Select(tolerance => Taken(tolerance))];
        for (int i = 0; i < FitConditions.Count; i++)
        {
            // A cut gives or takes all of itself or nothing.
            _perInnerCut[i] = Math.Round(Change(_nominal[i], _perInnerCut[i]));
            _perOuterCut[i] = Math.Round(Change(_nominal[i], _perOuterCut[i]));
            double taken = 0;
            foreach (double[] one in _taken)
            {
                taken += one[i];
            }

            _worst[i] = _nominal[i] - taken;
        }
    }

    /// <summary>Whether any dimension of the parts carries a tolerance.</summary>
    public bool TolerancesStated => _box.All.Count > 0;

    /// <summary>What the worst case says of a plan.</summary>
    /// <param name="planned">The cuts at nominal dimensions.</param>
    public WorstCase Of(Cuts planned)
    {
        Cuts? least = LeastSafe();
        Cuts? safe = IsSafe(planned) ? planned : SafeNear(planned, least);
        (int first, double slack) = FailsFirst(planned);
        return new WorstCase
        {
            Verdict = least is not { } some ? Verdict.NotBuildable : some.Total > 0 ? Verdict.BuildableAfterCutting : Verdict.Buildable,
            TolerancesStated = TolerancesStated,
            LeastCut = least is { } found ? Mm(found.Total) : null,
            InnerCut = safe is { } inner ? Mm(inner.Inner) : null,
            OuterCut = safe is { } outer ? Mm(outer.Outer) : null,
            PlanIsSafe = IsSafe(planned),
            Slack = double.IsFinite(slack) ? Mm(slack) : null,
            Dimensions = first < 0 ? [] : Effects(planned, first),
        };
    }

    /// <summary>A safe cut near to the planned one; null where the planned one is safe or none is.</summary>
    public Cuts? Safer(Cuts planned) => IsSafe(planned) ? null : SafeNear(planned, LeastSafe());

    private static Length Mm(double value) => Length.FromMillimeters(value);

    /// <summary>What a condition without end gains or loses is nothing.</summary>
    private static double Change(double from, double to) => double.IsFinite(from) && double.IsFinite(to) ? to - from : 0;

    private double[] Taken(Tolerance tolerance)
    {
        double[] low = new double[FitConditions.Count];
        double[] high = new double[FitConditions.Count];
        FitConditions.Slacks(tolerance.Low, default, low);
        FitConditions.Slacks(tolerance.High, default, high);
        for (int i = 0; i < FitConditions.Count; i++)
        {
            low[i] = tolerance.Share * Math.Max(0, -Math.Min(Change(_nominal[i], low[i]), Change(_nominal[i], high[i])));
        }

        return low;
    }

    private bool IsSafe(Cuts cuts)
    {
        for (int i = 0; i < FitConditions.Count; i++)
        {
            if (Worst(i, cuts) < -Millimeters.Negligible)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The condition that is nearest to failing, of those that a tolerance or the saw can change.</summary>
    private (int Condition, double Slack) FailsFirst(Cuts cuts)
    {
        (int Condition, double Slack) first = (-1, double.PositiveInfinity);
        for (int i = 0; i < FitConditions.Count; i++)
        {
            double slack = Worst(i, cuts);
            if (slack < first.Slack - Millimeters.Negligible && Nominal(i, cuts) - slack > Millimeters.Negligible)
            {
                first = (i, slack);
            }
        }

        return first;
    }

    private double Nominal(int condition, Cuts cuts) =>
        _nominal[condition] + _perInnerCut[condition] * cuts.Inner + _perOuterCut[condition] * cuts.Outer;

    /// <summary>
    /// The worst value of a condition: every end that is cut may have lost one mark more or less, but not less than nothing. An end
    /// that is not cut cannot be cut too much.
    /// </summary>
    private double Worst(int condition, Cuts cuts) =>
        (condition == FitConditions.InnerCut && cuts.Inner <= 0) || (condition == FitConditions.OuterCut && cuts.Outer <= 0)
            ? double.PositiveInfinity
            : _worst[condition] + AtWorst(_perInnerCut[condition], cuts.Inner) + AtWorst(_perOuterCut[condition], cuts.Outer);

    private double AtWorst(double per, double cut) => cut <= 0 ? 0
        : per < 0 ? per * (cut + _mark)
        : per * Math.Max(0, cut - _mark);

    /// <summary>The least total cut that is safe; of equal totals the one that takes most from the inner end.</summary>
    private Cuts? LeastSafe()
    {
        Cuts? least = null;
        foreach ((bool inner, bool outer) in (ReadOnlySpan<(bool, bool)>)[(false, false), (true, false), (false, true), (true, true)])
        {
            if (Region(inner, outer) is { } region && region.Least is var cuts
                && (least is null || cuts.Total < least.Value.Total - Millimeters.Negligible))
            {
                least = cuts;
            }
        }

        return least;
    }

    private Cuts? SafeNear(Cuts planned, Cuts? least)
    {
        if (least is not { } found)
        {
            return null;
        }

        bool inner = planned.Inner > 0;
        bool outer = planned.Outer > 0;
        CutRegion region = (inner || outer ? Region(inner, outer) : null) ?? Region(found.Inner > 0, found.Outer > 0)!.Value;
        double innerCut = CutRounding.Marked(region.InnerWindow, planned.Inner, _mark);
        return new(innerCut, CutRounding.Marked(region.OuterWindow(innerCut), planned.Outer, _mark));
    }

    /// <summary>The safe cuts where the ends named are cut and the others not; null where there are none.</summary>
    private CutRegion? Region(bool inner, bool outer)
    {
        double innerMark = inner ? _mark : 0;
        double outerMark = outer ? _mark : 0;
        double most = double.PositiveInfinity;
        CutRegion region = new(new(0, inner ? most : 0), new(0, outer ? most : 0), new(0, most));
        for (int i = 0; i < FitConditions.Count; i++)
        {
            double slack = _worst[i];
            switch (Math.Sign(_perInnerCut[i]), Math.Sign(_perOuterCut[i]))
            {
                case (0, 0) when slack < -Millimeters.Negligible:
                    return null;
                case ( > 0, 0) when slack < -Millimeters.Negligible:
                    region = region with { Inner = region.Inner.From(innerMark - slack) };
                    break;
                case (0, > 0) when slack < -Millimeters.Negligible:
                    region = region with { Outer = region.Outer.From(outerMark - slack) };
                    break;
                case ( > 0, > 0) when slack < -Millimeters.Negligible:
                    region = region with { Total = region.Total.From(innerMark + outerMark - slack) };
                    break;
                case ( < 0, 0):
                    region = region with { Inner = region.Inner.To(slack - innerMark) };
                    break;
                case (0, < 0):
                    region = region with { Outer = region.Outer.To(slack - outerMark) };
                    break;
                case ( < 0, < 0):
                    region = region with { Total = region.Total.To(slack - innerMark - outerMark) };
                    break;
            }
        }

        return region.IsEmpty ? null : region;
    }

    private List<ToleranceEffect> Effects(Cuts cuts, int first)
    {
        List<(RodDimension Dimension, RodSide? End, double PlusMinus, double[] Taken)> all =
        [
            .. _box.All.Select((tolerance, i) => (tolerance.Dimension, tolerance.End, tolerance.PlusMinus, _taken[i])),
        ];
        foreach ((RodSide side, double[] per) in new[] { (RodSide.Inner, _perInnerCut), (RodSide.Outer, _perOuterCut) })
        {
            if (cuts[side] > 0)
            {
                all.Add((RodDimension.Cut, side, _mark, [.. per.Select(share => _mark * Math.Abs(share))]));
            }
        }

        List<ToleranceEffect> effects = [];
        foreach ((RodDimension dimension, RodSide? end, double plusMinus, double[] taken) in all)
        {
            double share = 1;
            double takes = taken[first];
            bool matters = takes > Millimeters.Negligible;
            for (int i = 0; i < FitConditions.Count; i++)
            {
                double nominal = Nominal(i, cuts);
                double worst = Worst(i, cuts);
                if (worst < -Millimeters.Negligible && taken[i] > Millimeters.Negligible)
                {
                    takes = matters ? takes : Math.Max(takes, taken[i]);
                    share = Math.Min(share, Math.Max(0, nominal / (nominal - worst)));
                }
            }

            if (takes > Millimeters.Negligible)
            {
                bool helps = share < 1 && plusMinus * share > Millimeters.Negligible;
                effects.Add(new(dimension, end, Mm(plusMinus), Mm(takes), helps ? Mm(plusMinus * share) : null));
            }
        }

        return [.. effects.OrderByDescending(effect => Millimeters.Of(effect.Takes))];
    }
}

/// <summary>The cuts that are safe: bounds of each and of their total.</summary>
internal readonly record struct CutRegion(Interval Inner, Interval Outer, Interval Total)
{
    public bool IsEmpty => Inner.IsEmpty || Outer.IsEmpty || Total.IsEmpty
        || Inner.Low + Outer.Low > Total.High + Millimeters.Negligible
        || Inner.High + Outer.High < Total.Low - Millimeters.Negligible;

    /// <summary>The least total; the inner end has as much of it as it may.</summary>
    public Cuts Least
    {
        get
        {
            double total = Math.Max(Total.Low, Inner.Low + Outer.Low);
            double inner = Math.Max(Inner.Low, Math.Min(Inner.High, total - Outer.Low));
            return new(inner, Math.Max(Outer.Low, total - inner));
        }
    }

    public Interval InnerWindow => new(Math.Max(Inner.Low, Total.Low - Outer.High), Math.Min(Inner.High, Total.High - Outer.Low));

    public Interval OuterWindow(double inner) => new(Math.Max(Outer.Low, Total.Low - inner), Math.Min(Outer.High, Total.High - inner));
}
