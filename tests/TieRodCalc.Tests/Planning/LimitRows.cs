using TieRodCalc.Parts;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// The limits of a rod as rows, written from the definitions of the limits: one row for each limit, end and place in the wanted
/// adjustment. Unknown are the inner insertion at the target and the two cuts; the outer insertion is what the target leaves. Rows of
/// rods that differ in dimensions alone stand in the same order. How far the internal thread of an outer end is open beyond itself is
/// not known, so it counts as closed.
/// </summary>
internal static class LimitRows
{
    /// <summary>The unknowns of a row before anything that is changed.</summary>
    public const int Insertion = 0;
    public const int InnerCut = 1;
    public const int OuterCut = 2;
    public const int Unknowns = 3;

    /// <summary>Places in the wanted adjustment: the target and both ends. The rows of each follow those of the one before.</summary>
    public const int Places = 3;

    /// <summary>What is left to a limit that a rod does not have.</summary>
    private static readonly Row s_none = Row.Constant(1e6);

    /// <summary>The rows of a rod.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="leftOut">Limits that are not asked for, or null.</param>
    public static List<Row> Of(RodNumbers rod, Func<Limit, RodSide?, bool>? leftOut = null)
    {
        List<Row> rows = [];
        double axial = rod.Axial(rod.Target);
        double toShortest = rod.Axial(rod.Target - rod.Shorter) - axial;
        double toLongest = rod.Axial(rod.Target + rod.Longer) - axial;
        (double innerShare, double outerShare) = rod.Shares;

        // axial = (c1 - x1) + (c2 - x2) + S - s1 - s2; of an outer end with the internal thread nothing counts but center to face.
        double left = rod.Inner.CenterToTip + (rod.OneJoint ? 0 : rod.Outer.CenterToTip) + rod.Sleeve - axial;
        Row inner = rod.OneJoint ? new(0, -1, 0, left) : new(1, 0, 0, 0);
        Row outer = new(-1, -1, -1, left);
        foreach (double moved in (double[])[0, toShortest, toLongest])
        {
            Row innerMoved = inner + innerShare * moved;
            Row outerMoved = outer + outerShare * moved;
            JointNumbers first = rod.OneJoint ? rod.Inner with { Bore = Bore.Closed } : rod.Inner;
            AddJoint(rows, first, innerMoved, Row.Of(InnerCut), rod.Sleeve - rod.Outer.Depth, LeftOut(RodSide.Inner));
            if (rod.OneJoint)
            {
                rows.AddRange([Row.Of(OuterCut), -Row.Of(OuterCut)]);
                continue;
            }

            AddJoint(rows, rod.Outer, outerMoved, Row.Of(OuterCut), rod.Sleeve - rod.Inner.Depth, LeftOut(RodSide.Outer));
            rows.Add(leftOut?.Invoke(Limit.Tips, null) == true ? s_none : -(innerMoved + outerMoved) + (rod.Sleeve - rod.TipGap));
        }

        // What the sleeve cannot turn to is out of reach.
        rows.Add(rod.Adjusts ? s_none : Row.Constant(-(toLongest - toShortest)));
        return rows;

        Func<Limit, bool> LeftOut(RodSide side) => limit => leftOut?.Invoke(limit, side) ?? false;
    }

    private static void AddJoint(List<Row> rows, JointNumbers joint, Row s, Row x, double farThread, Func<Limit, bool> leftOut)
    {
        void Add(Limit limit, Row row) => rows.Add(leftOut(limit) ? s_none : row);

        // engagement: s >= l + m + required, and d - m >= required
        Add(Limit.Engagement, s + -(joint.Lead + joint.Countersink + joint.Required));
        Add(Limit.Engagement, Row.Constant(joint.Depth - joint.Countersink - joint.Required));

        // nut room: s <= t - x - n
        Add(Limit.NutRoom, -(s + x) + (joint.ThreadLength - joint.Nut));

        // closed bore: s <= d; far thread: s1 <= S - d2
        Add(Limit.ClosedBore, joint.Bore == Bore.Closed ? -s + joint.Depth : s_none);
        Add(Limit.FarThread, joint.Bore == Bore.Closed ? s_none : -s + farThread);

        // witness: s - l >= w; clamp: s - l >= k
        Add(Limit.Witness, joint.Witness is { } witness ? s + -(joint.Lead + witness) : s_none);
        Add(Limit.Clamp, joint.Clamp is { } clamp ? s + -(joint.Lead + clamp) : s_none);

        // cut: 0 <= x <= the most that the part allows
        Add(Limit.Cut, -x + joint.MostCut);
        rows.Add(x);
    }
}
