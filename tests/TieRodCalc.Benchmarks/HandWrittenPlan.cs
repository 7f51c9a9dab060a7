using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Benchmarks;

/// <summary>One end of a rod in plain doubles of millimeters; letters as in docs/plan.md, zero where there is none.</summary>
internal readonly struct HandWrittenEnd(in JointDimensions joint)
{
    public readonly double C = joint.CenterToTip;
    public readonly double T = joint.ThreadLength;
    public readonly double L = joint.Lead;
    public readonly double P = joint.Pitch;
    public readonly double H = joint.Hand;
    public readonly double D = joint.Depth;
    public readonly double M = joint.Mouth;
    public readonly double N = joint.Nut;
    public readonly double Required = joint.Required;
    public readonly double Witness = joint.Witness;
    public readonly double Clamp = joint.Clamp;
    public readonly double MostCut = joint.MostCut;
    public readonly bool Closed = joint.ClosedBore;
}

/// <summary>The answers; all of them zero or false where the rod cannot be built.</summary>
internal struct HandWrittenAnswer
{
    public bool Buildable;
    public double LeastInnerCut, LeastOuterCut, InnerCut, OuterCut, MostInnerCut, MostOuterCut;
    public bool InnerOnMark, OuterOnMark;
    public double Low, High, Inner, Outer, LeastCutInner, LeastCutOuter, Margin, Shortest, Longest;
    public HandWrittenWay Shorter, Longer;
    public HandWrittenJoint InnerJoint, OuterJoint;
}

/// <summary>An adjustment: the number of its limit, and of its end, 0 inner, 1 outer, -1 neither.</summary>
internal struct HandWrittenWay
{
    public double Length, Turns;
    public int Limit, End;
}

/// <summary>What is asked of one joint.</summary>
internal struct HandWrittenJoint
{
    public double Showing, Engaged, EngagedLeast, NutRoom, NutRoomLeast;
}

/// <summary>
/// The plan of one rod with a sleeve as somebody would write it down for himself: plain doubles, one function, the inequalities of
/// docs/plan.md worked out by hand. No quantities, no rods with one joint, nothing shared with other computations.
/// </summary>
internal sealed class HandWrittenPlan(RodProblem wanted, double allowance, double mark)
{
    private const double Eps = 1e-6;
    private const int Engagement = (int)Limit.Engagement, NutRoom = (int)Limit.NutRoom, ClosedBore = (int)Limit.ClosedBore;
    private const int FarThread = (int)Limit.FarThread, Tips = (int)Limit.Tips, Witness = (int)Limit.Witness, Clamp = (int)Limit.Clamp;

    private readonly HandWrittenEnd _1 = new(wanted.Rod.Inner);
    private readonly HandWrittenEnd _2 = new(wanted.Rod.Outer);
    private readonly double _s = wanted.Rod.Sleeve;
    private readonly double _gap = wanted.Rod.TipGap;
    private readonly double _o = wanted.Rod.Offset;
    private readonly double _target = wanted.Target;
    private readonly double _shorter = wanted.Shorter;
    private readonly double _longer = wanted.Longer;
    private readonly double _allowance = allowance;
    private readonly double _mark = mark;

    public void Solve(out HandWrittenAnswer answer)
    {
        answer = default;
        double o2 = _o * _o;
        double axial = Math.Sqrt(_target * _target - o2);
        double down = axial - Math.Sqrt((_target - _shorter) * (_target - _shorter) - o2);
        double up = Math.Sqrt((_target + _longer) * (_target + _longer) - o2) - axial;
        double perTurn = _1.H * _1.P - _2.H * _2.P;
        bool adjusts = Math.Abs(perTurn) > Eps;
        double share1 = adjusts ? -_1.H * _1.P / perTurn : 0;
        double share2 = adjusts ? _2.H * _2.P / perTurn : 0;

        // What each end's own limits leave, the adjustment not kept, and what it takes of that.
        double low1 = _1.L + Math.Max(_1.M + _1.Required, Math.Max(_1.Witness, _1.Clamp));
        double low2 = _2.L + Math.Max(_2.M + _2.Required, Math.Max(_2.Witness, _2.Clamp));
        double deep1 = _1.Closed ? _1.D : _s - _2.D;
        double deep2 = _2.Closed ? _2.D : _s - _1.D;
        double thread1 = _1.T - _1.N;
        double thread2 = _2.T - _2.N;
        double rise1 = share1 > 0 ? share1 * up : -share1 * down;
        double rise2 = share2 > 0 ? share2 * up : -share2 * down;
        double a1 = low1 - (share1 > 0 ? -share1 * down : share1 * up);
        double a2 = low2 - (share2 > 0 ? -share2 * down : share2 * up);
        double b1 = deep1 - rise1;
        double b2 = deep2 - rise2;
        double t1 = thread1 - rise1;
        double t2 = thread2 - rise2;
        double shallow = Math.Max(_1.Required + _1.M - _1.D, _2.Required + _2.M - _2.D);
        double sum = _1.C + _2.C + _s - axial;
        double tips = _s - _gap - down;
        if ((!adjusts && down + up > Eps) || shallow > Eps || a1 - b1 > Eps || a2 - b2 > Eps || a1 - t1 > Eps || a2 - t2 > Eps
            || a1 + a2 - sum > Eps || sum - Math.Min(t1, b1 + _1.MostCut) - Math.Min(t2, b2 + _2.MostCut) > Eps
            || a1 + a2 - tips > Eps || sum - _1.MostCut - _2.MostCut - tips > Eps
            || a1 + sum - t1 - _2.MostCut - tips > Eps || a2 + sum - t2 - _1.MostCut - tips > Eps)
        {
            return;
        }

        answer.Buildable = true;

        // The least cut, most of it from the inner end.
        double x1 = 0;
        double x2 = 0;
        double total = sum - Math.Min(tips, Math.Min(b1, t1) + Math.Min(b2, t2));
        if (total > Eps)
        {
            x1 = Math.Min(Math.Min(total, _1.MostCut), Math.Min(t1 - a1, t1 + b2 - sum + total));
            x1 = x1 > Eps ? x1 : 0;
            x2 = total - x1;
            x2 = x2 > Eps ? x2 : 0;
            x1 = x2 > 0 ? x1 : total;
        }

        answer.LeastInnerCut = x1;
        answer.LeastOuterCut = x2;
        double low = Math.Max(a1, sum - x1 - x2 - Math.Min(b2, t2 - x2));
        double high = Math.Min(Math.Min(b1, t1 - x1), sum - x1 - x2 - a2);
        answer.LeastCutInner = low + (high - low) / 2;
        answer.LeastCutOuter = sum - x1 - x2 - answer.LeastCutInner;

        // The recommended cuts, and the most.
        double rest = sum - x2;
        double least = Math.Max(0, rest - Math.Min(tips, b1 + Math.Min(b2, t2 - x2)));
        x1 = Recommended(least, Math.Min(Math.Min(_1.MostCut, t1 - a1), rest - a1 - a2), out answer.InnerOnMark);
        rest = sum - x1;
        least = Math.Max(0, rest - Math.Min(tips, b2 + Math.Min(b1, t1 - x1)));
        double most = Math.Min(Math.Min(_2.MostCut, t2 - a2), rest - a1 - a2);
        x2 = Recommended(least, most, out answer.OuterOnMark);
        answer.InnerCut = x1;
        answer.OuterCut = x2;
        answer.MostInnerCut = Math.Max(0, Math.Min(Math.Min(_1.MostCut, t1 - a1), sum - x2 - a1 - a2));
        answer.MostOuterCut = Math.Max(0, most);

        // The setting: the middle of what is allowed.
        rest = sum - x1 - x2;
        low = Math.Max(a1, rest - Math.Min(b2, t2 - x2));
        high = Math.Min(Math.Min(b1, t1 - x1), rest - a2);
        double s1 = low + (high - low) / 2;
        double s2 = rest - s1;
        answer.Low = low;
        answer.High = high;
        answer.Inner = s1;
        answer.Outer = s2;

        // The smallest slack over the adjustment, and the joints.
        double in1 = s1 - share1 * down;
        double in2 = s2 - share2 * down;
        double out1 = s1 + share1 * up;
        double out2 = s2 + share2 * up;
        double least1 = Math.Min(in1, out1);
        double most1 = Math.Max(in1, out1);
        double least2 = Math.Min(in2, out2);
        double most2 = Math.Max(in2, out2);
        double slack1 = Math.Min(least1 - low1, Math.Min(thread1 - x1, deep1) - most1);
        double slack2 = Math.Min(least2 - low2, Math.Min(thread2 - x2, deep2) - most2);
        double slackTips = _s - _gap - Math.Max(in1 + in2, out1 + out2);
        answer.Margin = Math.Min(Math.Min(slack1, slack2), Math.Min(slackTips, -shallow));
        Joint(_1, s1, x1, in1, out1, out answer.InnerJoint);
        Joint(_2, s2, x2, in2, out2, out answer.OuterJoint);

        // Reach without the adjustment.
        double stretched = _1.C + _2.C + _s - x1 - x2;
        double longest = stretched - low1 - low2;
        double shortest = stretched - Math.Min(_s - _gap, Math.Min(deep1, thread1 - x1) + Math.Min(deep2, thread2 - x2));
        answer.Shortest = Math.Sqrt(shortest * shortest + o2);
        answer.Longest = Math.Sqrt(longest * longest + o2);

        // The adjustment from the setting: the limit that is met first, the earlier one where two are met together.
        if (adjusts)
        {
            Adjust(axial, Math.Abs(perTurn), s1, s2, x1, x2, low1, low2, deep1, deep2, -share1, -share2, -1, out answer.Shorter);
            Adjust(axial, Math.Abs(perTurn), s1, s2, x1, x2, low1, low2, deep1, deep2, share1, share2, 1, out answer.Longer);
        }
    }

    private static void Joint(in HandWrittenEnd end, double s, double x, double s1, double s2, out HandWrittenJoint joint)
    {
        double t = end.T - x;
        joint.Showing = t - s;
        joint.NutRoom = t - s - end.N;
        joint.NutRoomLeast = t - Math.Max(s1, s2) - end.N;
        joint.Engaged = Math.Max(0, Math.Min(end.D, s - end.L) - Math.Max(end.M, s - t));
        joint.EngagedLeast = Math.Max(0, Math.Min(
            Math.Min(end.D, s1 - end.L) - Math.Max(end.M, s1 - t), Math.Min(end.D, s2 - end.L) - Math.Max(end.M, s2 - t)));
    }

    /// <summary>Which limit sets the least insertion of an end.</summary>
    private static int Least(in HandWrittenEnd end)
    {
        double engagement = end.M + end.Required;
        return end.Clamp > Math.Max(engagement, end.Witness) + Eps ? Clamp : end.Witness > engagement + Eps ? Witness : Engagement;
    }

    private double Recommended(double least, double most, out bool onMark)
    {
        onMark = true;
        if (least <= Eps)
        {
            return 0;
        }

        double middle = least + (Math.Max(0, most) - least) / 2;
        double wanted = Math.Min(least + _allowance, middle);
        double up = Math.Ceiling((wanted - Eps) / _mark) * _mark;
        if (up <= middle + Eps)
        {
            return up;
        }

        double down = Math.Floor((wanted + Eps) / _mark) * _mark;
        if (down >= least - Eps && down > 0)
        {
            return down;
        }

        onMark = up <= most + Eps;
        return onMark ? up : middle;
    }

    private void Adjust(
        double axial, double perTurn, double s1, double s2, double x1, double x2, double low1, double low2, double deep1, double deep2,
        double in1, double in2, double sign, out HandWrittenWay way)
    {
        double first = double.PositiveInfinity;
        way.Limit = Tips;
        way.End = -1;
        if (in1 != 0)
        {
            double nut = _1.T - x1 - s1 - _1.N;
            double deep = deep1 - s1;
            first = (in1 > 0 ? Math.Min(nut, deep) : s1 - low1) / Math.Abs(in1);
            way.Limit = in1 < 0 ? Least(_1) : nut <= deep + Eps ? NutRoom : _1.Closed ? ClosedBore : FarThread;
            way.End = 0;
        }

        if (in2 != 0)
        {
            double nut = _2.T - x2 - s2 - _2.N;
            double deep = deep2 - s2;
            double second = (in2 > 0 ? Math.Min(nut, deep) : s2 - low2) / Math.Abs(in2);
            if (second < first - Eps)
            {
                way.Limit = in2 < 0 ? Least(_2) : nut <= deep + Eps ? NutRoom : _2.Closed ? ClosedBore : FarThread;
                way.End = 1;
            }

            first = Math.Min(first, second);
        }

        if (sign < 0)
        {
            double tips = _s - _gap - s1 - s2;
            if (tips < first - Eps)
            {
                way.Limit = Tips;
                way.End = -1;
            }

            first = Math.Min(first, tips);
        }

        first = Math.Max(0, first);
        double to = axial + sign * first;
        way.Length = Math.Abs(Math.Sqrt(to * to + _o * _o) - _target);
        way.Turns = first / perTurn;
    }
}
