using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>A change that may be made to a rod.</summary>
/// <param name="Kind">What is changed.</param>
/// <param name="End">At which end, or null.</param>
/// <param name="Most">The most by which it can be changed.</param>
/// <param name="From">What the changed dimension is now.</param>
/// <param name="Sign">+1 where it grows, -1 where it shrinks.</param>
/// <param name="Apply">The problem changed by so much.</param>
/// <param name="Make">Parts and request changed by so much.</param>
internal sealed record PossibleChange(
    ChangeKind Kind,
    RodSide? End,
    double Most,
    double From,
    int Sign,
    Func<RodProblem, double, RodProblem> Apply,
    Func<RodParts, RodRequest, double, (RodParts Parts, RodRequest Request)> Make)
{
    private bool IsNut => Kind == ChangeKind.NoNut;

    /// <summary>What the dimension is after the change.</summary>
    public double Becomes(double size) => Math.Max(0, From + Sign * size);

    /// <summary>The least size that makes the rod buildable, or null where none does.</summary>
    public double? Size(RodProblem wanted) => IsNut
        ? Fits(Apply(wanted, Most)) ? Most : null
        : LeastChange.Of(wanted, new(Most, Apply));

    /// <summary>The least sizes with another change made too, or null where they are not enough.</summary>
    public (double One, double Other)? Size(RodProblem wanted, PossibleChange other) => (IsNut, other.IsNut) switch
    {
        (true, true) => null,
        (true, _) => LeastChange.Of(Apply(wanted, Most), new(other.Most, other.Apply)) is { } size ? (Most, size) : null,
        (_, true) => LeastChange.Of(other.Apply(wanted, other.Most), new(Most, Apply)) is { } size ? (size, other.Most) : null,
        _ => LeastChange.Of(wanted, new(Most, Apply), new(other.Most, other.Apply)),
    };

    private static bool Fits(RodProblem wanted) => wanted.Adjusts && wanted.Setting.Conflicts().Count == 0;
}

/// <summary>All changes that may be made to a rod, in the order in which they are told.</summary>
internal sealed class PossibleChanges
{
    /// <summary>Longer than any sleeve, end or rod; beyond it nothing is looked for.</summary>
    private const double Far = 10_000;

    /// <summary>What must be left of an end that is cut, and what a length stays above, millimeters.</summary>
    private const double Left = 1e-3;

    private readonly List<PossibleChange> _all = [];

    public PossibleChanges(Rod rod, RodRequest request)
    {
        Rod = rod;
        Request = request;
        JointNeeds[] joints = [.. rod.Parts.Joints.Select(side => JointNeeds.Of(rod.Parts, side, request.Rules))];
        Wanted = RodProblem.Of(rod, request, joints[0].RequiredMm, rod.Parts.OneJoint ? 0 : joints[1].RequiredMm);
        foreach (RodSide side in rod.Parts.Joints)
        {
            AddCut(side);
        }

        AddSleeve();
        foreach (RodSide side in rod.Parts.Joints)
        {
            AddChase(side);
        }

        AddAdjustment();
        AddTarget();
        foreach (JointNeeds joint in joints)
        {
            AddEngagement(joint);
        }

        foreach (RodSide side in rod.Parts.Joints)
        {
            AddNut(side);
        }
    }

    public Rod Rod { get; }

    public RodRequest Request { get; }

    public RodProblem Wanted { get; }

    public IReadOnlyList<PossibleChange> All => _all;

    /// <summary>Two changes of the same dimension do not go together.</summary>
    public static bool GoTogether(PossibleChange one, PossibleChange other) =>
        Family(one.Kind) != Family(other.Kind) || one.End != other.End
        || (one.Kind, other.Kind) == (ChangeKind.LessShorter, ChangeKind.LessLonger);

    private static ChangeKind Family(ChangeKind kind) => kind switch
    {
        ChangeKind.LongerSleeve => ChangeKind.ShorterSleeve,
        ChangeKind.LongerOuterEnd => ChangeKind.ShorterOuterEnd,
        ChangeKind.LongerTarget => ChangeKind.ShorterTarget,
        ChangeKind.LessShorter or ChangeKind.LessLonger => ChangeKind.LessAdjustment,
        _ => kind,
    };

    private static Measured Changed(Measured measured, double by) =>
        new(Length.FromMillimeters(Math.Max(0, measured.Mm + by)), measured.PlusMinus);

    private static RodProblem Joint(RodProblem problem, RodSide side, Func<JointDimensions, JointDimensions> change) =>
        problem with { Rod = problem.Rod.With(side, change(problem.Rod[side])) };

    private static RodParts End(RodParts parts, RodSide side, Func<ThreadedEnd, ThreadedEnd> change) => side == RodSide.Inner
        ? parts with { Inner = change(parts.Inner) }
        : parts with { Outer = change(parts.Outer!) };

    private void Add(PossibleChange change)
    {
        if (change.Most > Millimeters.Negligible)
        {
            _all.Add(change);
        }
    }

    /// <summary>
    /// Once more than the part allows is cut, it is planned like any cut: the least and its allowance, up to the other limits.
    /// </summary>
    private void AddCut(RodSide side)
    {
        JointDimensions joint = Wanted.Rod[side];
        Add(new(
            ChangeKind.Cut,
            side,
            joint.CenterToTip - joint.MostCut - Left,
            joint.MostCut,
            1,
            (problem, by) => Joint(problem, side, end => end with { MostCut = end.MostCut + by }),
            (parts, request, _) => (
                End(parts, side, end => end with { MaxCut = new(Length.FromMillimeters(end.CenterToTip.Mm - Left)) }), request)));
    }

    private void AddSleeve()
    {
        RodDimensions rod = Wanted.Rod;
        double least = rod.OneJoint
            ? Math.Max(rod.Inner.Depth, Math.Max(rod.Inner.Witness, rod.Inner.Clamp))
            : Math.Max(
                rod.Inner.Depth + rod.Outer.Depth,
                Math.Max(Math.Max(rod.Inner.Witness, rod.Inner.Clamp), Math.Max(rod.Outer.Witness, rod.Outer.Clamp)));
        foreach ((int sign, double most) in new[] { (-1, rod.Sleeve - least), (1, Far) })
        {
            Add(new(
                (rod.OneJoint, sign) switch
                {
                    (true, < 0) => ChangeKind.ShorterOuterEnd,
                    (true, _) => ChangeKind.LongerOuterEnd,
                    (_, < 0) => ChangeKind.ShorterSleeve,
                    _ => ChangeKind.LongerSleeve,
                },
                null,
                most,
                rod.Sleeve,
                sign,
                (problem, by) => problem with { Rod = problem.Rod with { Sleeve = problem.Rod.Sleeve + sign * by } },
                (parts, request, by) => (parts.Socket is { } socket
                    ? parts with { Socket = socket with { CenterToFace = Changed(socket.CenterToFace, sign * by) } }
                    : parts with { Sleeve = parts.Sleeve! with { Length = Changed(parts.Sleeve.Length, sign * by) } }, request)));
        }
    }

    private void AddChase(RodSide side)
    {
        Add(new(
            ChangeKind.Chase,
            side,
            Rod.Parts.EndAt(side).Rethread.Mm,
            Wanted.Rod[side].ThreadLength,
            1,
            (problem, by) => Joint(problem, side, end => end with { ThreadLength = end.ThreadLength + by }),
            (parts, request, by) => (
                End(parts, side, end => end with
                {
                    ThreadLength = Changed(end.ThreadLength, by),
                    Rethread = Changed(end.Rethread, -by),
                }),
                request)));
    }

    private void AddAdjustment()
    {
        static Length Less(Length wish, double by) => Length.FromMillimeters(Math.Max(0, Millimeters.Of(wish) - by));
        Add(new(
            ChangeKind.LessShorter,
            null,
            Wanted.Shorter,
            Wanted.Shorter,
            -1,
            (problem, by) => problem with { Shorter = problem.Shorter - by },
            (parts, request, by) => (parts, request with { Shorter = Less(request.Shorter, by) })));
        Add(new(
            ChangeKind.LessLonger,
            null,
            Wanted.Longer,
            Wanted.Longer,
            -1,
            (problem, by) => problem with { Longer = problem.Longer - by },
            (parts, request, by) => (parts, request with { Longer = Less(request.Longer, by) })));
        if (Math.Abs(Wanted.Shorter - Wanted.Longer) <= Millimeters.Negligible)
        {
            Add(new(
                ChangeKind.LessAdjustment,
                null,
                Wanted.Shorter,
                Wanted.Shorter,
                -1,
                (problem, by) => problem with { Shorter = problem.Shorter - by, Longer = problem.Longer - by },
                (parts, request, by) => (
                    parts, request with { Shorter = Less(request.Shorter, by), Longer = Less(request.Longer, by) })));
        }
    }

    private void AddTarget()
    {
        foreach ((int sign, double most) in new[] { (-1, Wanted.Target - Wanted.Shorter - Wanted.Rod.Offset - Left), (1, Far) })
        {
            Add(new(
                sign < 0 ? ChangeKind.ShorterTarget : ChangeKind.LongerTarget,
                null,
                most,
                Wanted.Target,
                sign,
                (problem, by) => problem with { Target = problem.Target + sign * by },
                (parts, request, by) => (
                    parts, request with { Target = Length.FromMillimeters(Millimeters.Of(request.Target) + sign * by) })));
        }
    }

    /// <summary>
    /// Only where both strengths are known, and not below them, nor below 1 diameter in steel and the usual rule elsewhere.
    /// </summary>
    private void AddEngagement(JointNeeds joint)
    {
        if (joint.Required.Strength is not { } strength)
        {
            return;
        }

        RodSide side = joint.Side;
        double diameters = joint.Materials.Sleeve?.Kind == MaterialKind.Steel ? 1 : EngagementRequirement.Usual(joint.Materials.Sleeve);
        double floor = Math.Max(diameters * joint.Materials.Male.Size.DiameterMm, Millimeters.Of(strength.Required));
        double required = joint.RequiredMm;
        Add(new(
            ChangeKind.LessEngagement,
            side,
            required - floor,
            required,
            -1,
            (problem, by) => Joint(problem, side, end => end with { Required = end.Required - by }),
            (parts, request, by) =>
            {
                EngagementRule rule = EngagementRule.FromLength(Length.FromMillimeters(required - by));
                return (parts, request with
                {
                    Rules = side == RodSide.Inner
                        ? request.Rules with { InnerEngagement = rule }
                        : request.Rules with { OuterEngagement = rule },
                });
            }));
    }

    /// <summary>
    /// Not at a bent end, nor where the end is not said to be held by its joint, since it could then turn by itself, but for a clamp
    /// that still locks it; and only where the other joint stays locked.
    /// </summary>
    private void AddNut(RodSide side)
    {
        RodParts parts = Rod.Parts;
        ThreadedEnd end = parts.EndAt(side);
        if (parts.NutAt(side) is not { } nut || !Rod.AllLocked
            || end.IsBent || (parts.HoleAt(side).Clamp is null && (parts.OneJoint || end.Joint is null)))
        {
            return;
        }

        Add(new(
            ChangeKind.NoNut,
            side,
            nut.Thickness.Mm,
            nut.Thickness.Mm,
            -1,
            (problem, by) => Joint(problem, side, joint => joint with { Nut = 0 }),
            (made, request, by) => (side == RodSide.Inner ? made with { InnerNut = null } : made with { OuterNut = null }, request)));
    }
}
