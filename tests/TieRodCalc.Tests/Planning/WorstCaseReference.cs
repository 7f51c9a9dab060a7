using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// The worst of a tolerance box, written from the definitions of the limits: every corner of the box is laid out on its own, and at
/// each the insertion is free. Distance across two bent ends counts with its least and greatest value in the box, where the least may
/// lie inside. A cut is off by a mark either way where something is cut.
/// </summary>
internal sealed class WorstCaseReference
{
    private readonly TolerancedRod _rod;
    private readonly Row[][] _corners;
    private readonly List<Row>[] _whole;
    private readonly Lazy<List<Row>> _withoutInsertion;

    public WorstCaseReference(TolerancedRod rod)
    {
        _rod = rod;
        _whole = [.. Corners().Select(corner => LimitRows.Of(corner, IsCut))];
        _corners = [.. _whole.Select(rows => Elimination.Narrowest(rows.Where(row => !IsBare(row))).ToArray())];
        _withoutInsertion = new(() =>
            Elimination.Narrowest(_corners.SelectMany(rows => Elimination.Without(LimitRows.Insertion, rows))));
    }

    /// <summary>Whether two bent ends are nearest across not at a corner but inside the box.</summary>
    public bool LeastAcrossLiesInside => OffsetsSquared() is { } squared && squared.Within.Low < squared.AtCorners.Low - 1e-6;

    private double Mark => _rod.Rod.Mark.Mm;

    /// <summary>
    /// What is left between the limits in the worst corner with cuts that were asked for; below zero, by how much the limits contradict
    /// each other there.
    /// </summary>
    public double Margin(CutPair cuts) => Math.Min(CutLeft(cuts), Made(cuts).Min(made => _corners.Min(rows => Margin(rows, made))));

    /// <summary>
    /// The least that is left between a limit from below and one from above, or to a limit that stands alone, in the worst corner; of
    /// those that any corner or the saw narrows by more than nothing. Null where none does.
    /// </summary>
    public double? Slack(CutPair cuts)
    {
        double[] nominal = Left(LimitRows.Of(_rod.Nominal, IsCut), cuts);
        double[] worst = [.. nominal];
        foreach (CutPair made in Made(cuts))
        {
            foreach (List<Row> corner in _whole)
            {
                double[] left = Left(corner, made);
                for (int i = 0; i < worst.Length; i++)
                {
                    worst[i] = Math.Min(worst[i], left[i]);
                }
            }
        }

        double[] narrowed = [.. worst.Where((left, i) => left < nominal[i] - Millimeters.Negligible), CutLeft(cuts)];
        return double.IsFinite(narrowed.Min()) ? narrowed.Min() : null;
    }

    /// <summary>Whether some insertion works at every corner, given up at the first where none does.</summary>
    public bool IsSafe(CutPair cuts, double allowed) => CutLeft(cuts) >= -allowed
        && Made(cuts).All(made => _corners.All(rows => Margin(rows, made) >= -allowed));

    /// <summary>
    /// A cut of the least total that is safe at every corner; null where none is. Whether an end is cut at
    /// all decides whether its cut can be off, so the four ways are asked one by one.
    /// </summary>
    /// <param name="narrower">By how much every limit is narrowed.</param>
    public CutPair? LeastSafeCut(double narrower = 0)
    {
        CutPair? best = null;
        foreach ((bool inner, bool outer) in (ReadOnlySpan<(bool, bool)>)[(false, false), (true, false), (false, true), (true, true)])
        {
            if (LeastSafeCut(inner, outer, narrower) is { } cut
                && (best is null || cut.Total < best.Value.Total - 1e-9))
            {
                best = cut;
            }
        }

        return best;
    }

    private static double Margin(Row[] rows, CutPair cut)
    {
        (double low, double high, double least) = (double.NegativeInfinity, double.PositiveInfinity, double.PositiveInfinity);
        foreach (Row row in rows)
        {
            double rest = row.Rest + row.X1 * cut.Inner + row.X2 * cut.Outer;
            switch (row.S)
            {
                case > 0:
                    low = Math.Max(low, -rest);
                    break;
                case < 0:
                    high = Math.Min(high, rest);
                    break;
                default:
                    least = Math.Min(least, rest);
                    break;
            }
        }

        return Math.Min(least, high - low);
    }

    /// <summary>The cut limit is asked for apart, since an end that is not cut cannot be cut too much.</summary>
    private static bool IsCut(Limit limit, RodSide? end) => limit == Limit.Cut;

    /// <summary>What is left to the cut limit of the ends that are cut; without end where none is.</summary>
    private double CutLeft(CutPair cuts) => new[] { RodSide.Inner, RodSide.Outer }
        .Where(side => cuts.Of(side) > 0)
        .Select(side => MostCut(side) - cuts.Of(side) - Mark)
        .DefaultIfEmpty(double.PositiveInfinity)
        .Min();

    /// <summary>The most that an end may be cut in the worst corner.</summary>
    private double MostCut(RodSide side) => _rod.OneJoint && side == RodSide.Outer ? 0 : _rod.Nominal.Joint(side).MostCut - _rod.Tolerances
        .Where(tolerance => tolerance.Dimension == PartDimension.MaxCut && tolerance.Side == side)
        .Sum(tolerance => tolerance.PlusMinus);

    /// <summary>
    /// What is left between every limit from below and every limit from above, and to those that stand alone. A limit counts once, at
    /// the place in the adjustment where it is narrowest.
    /// </summary>
    private static double[] Left(List<Row> rows, CutPair cut)
    {
        int limits = (rows.Count - 1) / LimitRows.Places;
        double[] low = [.. Enumerable.Repeat(double.NegativeInfinity, limits)];
        double[] high = [.. Enumerable.Repeat(double.PositiveInfinity, limits)];
        double[] alone = [.. Enumerable.Repeat(double.PositiveInfinity, limits)];
        for (int i = 0; i < limits * LimitRows.Places; i++)
        {
            Row row = rows[i];
            double rest = row.Rest + row.X1 * cut.Inner + row.X2 * cut.Outer;
            int at = i % limits;
            switch (row.S)
            {
                case > 0:
                    low[at] = Math.Max(low[at], -rest);
                    break;
                case < 0:
                    high[at] = Math.Min(high[at], rest);
                    break;
                default:
                    alone[at] = IsBare(row) ? alone[at] : Math.Min(alone[at], rest);
                    break;
            }
        }

        return [.. alone, .. low.SelectMany(below => high.Select(above => above - below))];
    }

    /// <summary>What may have been cut where a cut was asked for; nothing can be put on again.</summary>
    private IEnumerable<CutPair> Made(CutPair cuts) =>
        from inner in Made(cuts.Inner)
        from outer in Made(cuts.Outer)
        select new CutPair(inner, outer);

    private double[] Made(double cut) => cut > 0 ? [Math.Max(0, cut - Mark), cut + Mark] : [0];

    /// <summary>
    /// A cut is not below zero, whatever it is off by: that is asked of the cut, not of what was made.
    /// </summary>
    private static bool IsBare(Row row) => row is { S: 0, Rest: 0 };

    /// <summary>The rows that the cuts which were asked for have to meet, from all corners.</summary>
    private IEnumerable<Row> SafeRows(bool inner, bool outer, double narrower)
    {
        foreach (Row row in _withoutInsertion.Value)
        {
            // The worse of a mark more and a mark less.
            double off = (inner ? Math.Abs(row.X1) : 0) + (outer ? Math.Abs(row.X2) : 0);
            yield return new Row(0, 0, 0, row.Rest - off * Mark - narrower, row.X1, row.X2);
        }
    }

    private CutPair? LeastSafeCut(bool inner, bool outer, double narrower)
    {
        double[] caps = [.. new[] { (inner, RodSide.Inner), (outer, RodSide.Outer) }
            .Select(end => end.Item1 ? MostCut(end.Item2) - Mark - narrower : 0)];
        return caps.Min() >= 0 && LeastSize.LeastSum([.. SafeRows(inner, outer, narrower)], caps[0], caps[1]) is { } least
            ? new CutPair(least.First, least.Second)
            : null;
    }

    /// <summary>Every corner of what else may be off, with the least and the greatest distance across and one between.</summary>
    private IEnumerable<RodNumbers> Corners()
    {
        ToleranceCase[] others = [.. _rod.Tolerances.Where(tolerance => tolerance.Dimension != PartDimension.Offset)];
        TolerancedRod straight = _rod with { Tolerances = others };
        Span offsets = OffsetsSquared().Within;
        double[] across = offsets.Width > 0 ? [offsets.Low, offsets.Middle, offsets.High] : [offsets.Low];
        for (int corner = 0; corner < 1 << others.Length; corner++)
        {
            RodNumbers rod = straight.Off([.. Enumerable.Range(0, others.Length).Select(bit => (corner >> bit & 1) == 0 ? -1.0 : 1.0)]);
            foreach (double squared in across)
            {
                yield return rod with { OffsetSquaredWithin = squared };
            }
        }
    }

    /// <summary>
    /// Least and greatest O^2 over the two offsets, within their tolerances and at the corners alone. It is convex, so the greatest lies
    /// at a corner, and the least where one offset is the foot of the other, o1 = o2 cos(clocking), as far as the tolerance lets it.
    /// </summary>
    private (Span Within, Span AtCorners) OffsetsSquared()
    {
        RodNumbers nominal = _rod.Nominal;
        Span inner = Offsets(RodSide.Inner, nominal.Inner.Offset);
        Span outer = nominal.OneJoint ? default : Offsets(RodSide.Outer, nominal.Outer.Offset);
        double cosine = Math.Cos(nominal.ClockingRadians);
        double[] inners = [inner.Low, inner.High];
        double[] outers = [outer.Low, outer.High];
        List<double> corners = [.. inners.SelectMany(one => outers.Select(other => Squared(one, other)))];
        List<double> all =
        [
            .. corners,
            .. inners.Select(one => Squared(one, Math.Clamp(one * cosine, outer.Low, outer.High))),
            .. outers.Select(other => Squared(Math.Clamp(other * cosine, inner.Low, inner.High), other)),
        ];
        return (new Span(Math.Max(0, all.Min()), all.Max()), new Span(corners.Min(), corners.Max()));

        double Squared(double one, double other) => RodNumbers.OffsetSquaredOf(one, other, nominal.ClockingRadians);
    }

    private Span Offsets(RodSide side, double nominal)
    {
        double plusMinus = _rod.Tolerances
            .Where(tolerance => tolerance.Dimension == PartDimension.Offset && tolerance.Side == side)
            .Sum(tolerance => tolerance.PlusMinus);
        return new Span(Math.Max(0, nominal - plusMinus), nominal + plusMinus);
    }
}
