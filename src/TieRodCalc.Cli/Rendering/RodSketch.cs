using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// The drawings of a rod in characters: to scale along the thread axis, with the letters of the dimensions below. A row is taken as
/// twice as high as a column is wide, so a bend stands about where it is.
/// </summary>
internal static class RodSketch
{
    private const int Columns = 75;
    private const int RowsPerColumn = 2;
    private const int MostRowsOfBend = 3;

    /// <summary>In millimeters; of a bend at a right angle to the paper the cosine leaves a trace.</summary>
    private const double LeastBend = 1e-6;

    /// <summary>The rod as it is made, or what is in the way of it.</summary>
    public static IReadOnlyList<string> Of(PlannedRod planned, RodLayout layout, IReadOnlyList<Measure> measures)
    {
        RodParts parts = planned.Rod.Parts;
        JointLayout[] joints = [.. new[] { layout.Inner, layout.Outer }.OfType<JointLayout>()];
        double[] places =
        [
            0, layout.Axial.Millimeters, .. joints.SelectMany(joint => new[] { joint.Tip, joint.Face }).Select(place => place.Millimeters),
            .. measures.SelectMany(measure => new[] { measure.From, measure.To }),
        ];
        Scale across = new(places.Min(), places.Max(), 1, Columns - 2);
        int innerUp = Bend(RodShapes.SeenOffset(parts, RodSide.Inner), across);
        int outerUp = Bend(RodShapes.SeenOffset(parts, RodSide.Outer), across);
        int axis = Math.Max(1, Math.Max(innerUp, outerUp));
        SketchGrid grid = new(Columns, axis + 1 + Math.Max(1, -Math.Min(innerUp, outerUp)));

        int innerFace = Column(across, layout.Inner.Face.Millimeters);
        int outerFace = Column(across, layout.Outer?.Face.Millimeters ?? layout.Axial.Millimeters);
        grid.Box(innerFace, outerFace, axis - 1, axis + 1);
        grid.Row(axis, innerFace + 1, outerFace - 1, '/');

        // Both bores first: an open one reaches to where the other end may stand.
        foreach (JointLayout joint in joints)
        {
            int inward = joint.Side == RodSide.Inner ? 1 : -1;
            grid.Row(axis, Column(across, joint.Face.Millimeters) + inward, Column(across, HoleEnd(parts, layout, joint)), ' ');
        }

        foreach (JointLayout joint in joints)
        {
            ThreadedEnd end = parts.EndAt(joint.Side);
            int face = Column(across, joint.Face.Millimeters);
            End(grid, across, axis, end, joint, joint.Side == RodSide.Inner ? innerUp : outerUp);
            grid.Put(axis, face, SketchGrid.Wall);
            if (joint.Nut is { } nut)
            {
                grid.Box(Column(across, nut.Millimeters), face, axis - 1, axis + 1);
            }
        }

        if (layout.Outer is { } other && layout.Inner.Tip > other.Tip)
        {
            grid.Row(axis, Column(across, other.Tip.Millimeters), Column(across, layout.Inner.Tip.Millimeters), 'X');
        }

        if (parts.Socket is not null)
        {
            grid.Put(axis, Column(across, layout.Axial.Millimeters), 'O');
        }

        return [.. grid.Lines(), .. Dimensions(across, measures)];
    }

    /// <summary>An end before it is cut, the line between what stays and what is cut off.</summary>
    public static IReadOnlyList<string> Of(ThreadedEnd end, CutAdvice cut, IReadOnlyList<Measure> measures)
    {
        double center = end.CenterToTip.Nominal.Millimeters;
        Scale across = new(0, center, 1, Columns - 2);
        int up = Bend(end.Offset.Nominal.Millimeters, across);
        int axis = Math.Max(1, up);
        SketchGrid grid = new(Columns, axis + 2);
        int mark = Column(across, cut.MarkFromCenter.Millimeters);
        Shank(grid, axis, up, 1, Column(across, center - end.ThreadLength.Nominal.Millimeters));
        grid.Row(axis, Column(across, center - end.ThreadLength.Nominal.Millimeters), mark, SketchGrid.Thread);
        grid.Row(axis, mark, Column(across, center), 'x');
        grid.Column(mark, axis - 1, axis + 1, SketchGrid.Scribe);
        return [.. grid.Lines(), .. Dimensions(across, measures)];
    }

    private static void End(SketchGrid grid, Scale across, int axis, ThreadedEnd end, JointLayout joint, int up)
    {
        int ball = Column(across, joint.Ball.Millimeters);
        int start = Column(across, joint.ThreadStart.Millimeters);
        int face = Column(across, joint.Face.Millimeters);
        int tip = Column(across, joint.Tip.Millimeters);
        Shank(grid, axis, up, ball, start);
        grid.Row(axis, start, face, SketchGrid.Thread);
        if ((tip - face) * Math.Sign(tip - start) <= 0)
        {
            grid.Row(axis, start, tip, SketchGrid.Thread);
            return;
        }

        grid.Row(axis, face, tip, SketchGrid.Inserted);
        if (joint.Engaged is { } engaged)
        {
            grid.Row(axis, Column(across, engaged.Shortest.Millimeters), Column(across, engaged.Longest.Millimeters), SketchGrid.Engaged);
        }
    }

    /// <summary>From the ball to the thread; a bent one comes down to the thread axis on the way.</summary>
    private static void Shank(SketchGrid grid, int axis, int up, int ball, int start)
    {
        int inward = Math.Sign(start - ball);
        int knee = ball + ((start - ball) / 2);
        if (up == 0)
        {
            knee = ball;
        }

        for (int column = ball; column != knee; column += inward)
        {
            int row = axis - up + (up * Math.Abs(column - ball) / Math.Abs(knee - ball));
            int next = axis - up + (up * Math.Abs(column + inward - ball) / Math.Abs(knee - ball));
            grid.Put(row, column, next == row ? SketchGrid.Shank : next > row == inward > 0 ? '\\' : '/');
        }

        grid.Row(axis, knee, start, SketchGrid.Shank);
        grid.Put(axis - up, ball, SketchGrid.Ball);
    }

    /// <summary>Lanes of lines with their letters below a drawing.</summary>
    private static IEnumerable<string> Dimensions(Scale across, IEnumerable<Measure> measures)
    {
        DimensionLanes lanes = new(across, Columns, 1);
        IReadOnlyList<LaidDimension> laid = lanes.Of(measures, measure => measure.Letter.Length);
        SketchGrid grid = new(Columns, laid.Count == 0 ? 0 : laid.Max(dimension => dimension.Lane) + 1);
        foreach (LaidDimension dimension in laid)
        {
            int from = (int)Math.Round(dimension.From, MidpointRounding.AwayFromZero);
            int to = Math.Max(from, (int)Math.Round(dimension.To, MidpointRounding.AwayFromZero));
            grid.Row(dimension.Lane, from, to, SketchGrid.Line);
            grid.Put(dimension.Lane, from, SketchGrid.Stop);
            grid.Put(dimension.Lane, to, SketchGrid.Stop);
            int label = (int)Math.Round(dimension.Label, MidpointRounding.AwayFromZero);
            for (int letter = 0; letter < dimension.Measure.Letter.Length; letter++)
            {
                grid.Put(dimension.Lane, label + letter, dimension.Measure.Letter[letter]);
            }
        }

        return grid.Lines();
    }

    private static double HoleEnd(RodParts parts, RodLayout layout, JointLayout joint)
    {
        Bore bore = parts.Socket is not null ? Bore.Closed
            : joint.Side == RodSide.Inner ? parts.Sleeve!.Inner.Bore
            : parts.Sleeve!.Outer.Bore;
        JointLayout? other = joint.Side == RodSide.Inner ? layout.Outer : layout.Inner;
        return (bore == Bore.Open && other is not null ? other.HoleEnd : joint.HoleEnd).Millimeters;
    }

    /// <summary>How many rows a ball center is above the thread axis; a bent end is seen to be bent.</summary>
    private static int Bend(double offset, Scale across)
    {
        double rows = offset * (across.Last - across.First) / (across.To - across.From) / RowsPerColumn;
        return Math.Abs(offset) < LeastBend ? 0 : Math.Sign(offset) * Math.Clamp((int)Math.Round(Math.Abs(rows)), 1, MostRowsOfBend);
    }

    private static int Column(Scale across, double millimeters) =>
        (int)Math.Round(across.At(millimeters), MidpointRounding.AwayFromZero);
}
