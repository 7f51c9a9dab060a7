using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// The settings and cuts of a rod that give its target and keep every limit over the whole wanted adjustment, as the half-spaces of
/// <c>s1, x1, x2</c>: each is read off the table of limits at four points, since a limit is linear in them. Least and most are looked
/// for in the corners, every three planes in turn.
/// </summary>
internal sealed class RodPolytope
{
    /// <summary>What a corner may be past a plane: far below the comparison constant, far above what sums lose.</summary>
    private const double Corner = 1e-7;

    private readonly List<Plane> _planes;

    private RodPolytope(IEnumerable<Plane> planes) =>
        _planes = [.. planes.GroupBy(plane => (plane.S, plane.X1, plane.X2)).Select(same => same.MinBy(plane => plane.Right))];

    /// <summary><c>S s1 + X1 x1 + X2 x2 &lt;= Right</c>.</summary>
    private readonly record struct Plane(double S, double X1, double X2, double Right)
    {
        public double Past(Point point) => S * point.S + X1 * point.X1 + X2 * point.X2 - Right;
    }

    private readonly record struct Point(double S, double X1, double X2);

    public static RodPolytope Of(RodCase rod)
    {
        List<Plane> planes = [new(0, -1, 0, 0), new(0, 0, -1, 0)];
        foreach (double length in (double[])[rod.Target.Mm - rod.Shorter.Mm, rod.Target.Mm + rod.Longer.Mm])
        {
            double turns = LimitTable.TurnsTo(rod, length);
            Slack[] Left(double s, double x1, double x2)
            {
                CutPair cut = new(x1, x2);
                Setting setting = new(s, OuterInsertion(rod, cut, s));
                return [.. LimitTable.Slacks(rod, cut, LimitTable.Turned(rod, setting, turns))];
            }

            Slack[] none = Left(0, 0, 0);
            Slack[] s = Left(1, 0, 0);
            Slack[] x1 = Left(0, 1, 0);
            Slack[] x2 = Left(0, 0, 1);
            planes.AddRange(none.Select((slack, at) => new Plane(
                Math.Round(slack.Left - s[at].Left),
                Math.Round(slack.Left - x1[at].Left),
                Math.Round(slack.Left - x2[at].Left),
                slack.Left)));
        }

        return new RodPolytope(planes);
    }

    /// <summary>The insertion of the outer end that gives the target.</summary>
    public static double OuterInsertion(RodCase rod, CutPair cut, double inner) =>
        LimitTable.Axial(rod, cut, new Setting(inner, 0)) - rod.AxialOf(rod.Target.Mm);

    /// <summary>The insertions of the inner end that some cuts allow; inverted where they allow none.</summary>
    public Span InnerInsertions(CutPair cut)
    {
        Span span = new(double.NegativeInfinity, double.PositiveInfinity);
        foreach (Plane plane in _planes)
        {
            double right = plane.Right - plane.X1 * cut.Inner - plane.X2 * cut.Outer;
            span = plane.S switch
            {
                > 0 => span with { High = Math.Min(span.High, right / plane.S) },
                < 0 => span with { Low = Math.Max(span.Low, right / plane.S) },
                _ => right < -Millimeters.Negligible ? new Span(double.PositiveInfinity, double.NegativeInfinity) : span,
            };
        }

        return span;
    }

    /// <summary>Whether some cuts allow a setting.</summary>
    public bool Allows(CutPair cut) => InnerInsertions(cut) is { } span && span.Low <= span.High + Millimeters.Negligible;

    /// <summary>The least total cut, of equal ones that which takes most from the inner end; null where no cut works.</summary>
    public CutPair? LeastCut()
    {
        if (Allows(default))
        {
            return default(CutPair);
        }

        List<Point> corners = Corners(_planes);
        if (corners.Count == 0)
        {
            return null;
        }

        double least = corners.Min(corner => corner.X1 + corner.X2);
        Point best = corners.Where(corner => corner.X1 + corner.X2 <= least + Corner).MaxBy(corner => corner.X1);
        return new CutPair(NoneIfNegligible(best.X1), NoneIfNegligible(best.X2));
    }

    /// <summary>Least and most cut of one end, the other one cut by so much; null where none works.</summary>
    public Span? Window(RodSide side, double other)
    {
        (double x1, double x2) = side == RodSide.Inner ? (0d, 1d) : (1d, 0d);
        List<Point> corners = Corners([.. _planes, new Plane(0, x1, x2, other), new Plane(0, -x1, -x2, -other)]);
        double[] cuts = [.. corners.Select(corner => side == RodSide.Inner ? corner.X1 : corner.X2)];
        return cuts.Length == 0 ? null : new Span(cuts.Min(), cuts.Max());
    }

    private static double NoneIfNegligible(double cut) => cut <= Millimeters.Negligible ? 0 : cut;

    private static List<Point> Corners(List<Plane> planes)
    {
        List<Point> corners = [];
        for (int first = 0; first < planes.Count; first++)
        {
            for (int second = first + 1; second < planes.Count; second++)
            {
                for (int third = second + 1; third < planes.Count; third++)
                {
                    if (Meet(planes[first], planes[second], planes[third]) is { } corner
                        && planes.TrueForAll(plane => plane.Past(corner) <= Corner))
                    {
                        corners.Add(corner);
                    }
                }
            }
        }

        return corners;
    }

    /// <summary>Cramer's rule; null where the three planes do not meet in one point.</summary>
    private static Point? Meet(Plane a, Plane b, Plane c)
    {
        double det = Determinant((a.S, b.S, c.S), (a.X1, b.X1, c.X1), (a.X2, b.X2, c.X2));
        (double, double, double) right = (a.Right, b.Right, c.Right);
        return Math.Abs(det) < 0.5
            ? null
            : new Point(
                Determinant(right, (a.X1, b.X1, c.X1), (a.X2, b.X2, c.X2)) / det,
                Determinant((a.S, b.S, c.S), right, (a.X2, b.X2, c.X2)) / det,
                Determinant((a.S, b.S, c.S), (a.X1, b.X1, c.X1), right) / det);
    }

    private static double Determinant(
        (double A, double B, double C) x, (double A, double B, double C) y, (double A, double B, double C) z) =>
        x.A * (y.B * z.C - y.C * z.B) - y.A * (x.B * z.C - x.C * z.B) + z.A * (x.B * y.C - x.C * y.B);
}
