using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// One thing that may be changed about a job, with the bounds that it has: written from the definitions of the limits and of what may be
/// changed.
/// </summary>
/// <param name="Kind">What is changed.</param>
/// <param name="End">At which end, or null.</param>
/// <param name="Cap">The most by which it may be changed; the thickness of a nut that is left out.</param>
/// <param name="Apply">The rod changed by so many millimeters.</param>
internal sealed record ReferenceChange(ChangeKind Kind, RodSide? End, double Cap, Func<RodNumbers, double, RodNumbers> Apply)
{
    /// <summary>Nobody has longer sleeves or rods.</summary>
    private const double Far = 9_000;

    public bool IsNut => Kind == ChangeKind.NoNut;

    /// <summary>Changes that may be too large as well; all others help the more the larger they are.</summary>
    private bool MayBeTooLarge => Kind is ChangeKind.ShorterSleeve or ChangeKind.LongerSleeve or ChangeKind.ShorterOuterEnd
        or ChangeKind.LongerOuterEnd or ChangeKind.ShorterTarget or ChangeKind.LongerTarget;

    /// <summary>The least size that works alone, or null where none does.</summary>
    public double? Least(RodNumbers rod) => IsNut ? LeastSize.Margin(Apply(rod, Cap)) >= 0 ? Cap : null
        : MayBeTooLarge ? LeastSize.Of(size => Apply(rod, size), Cap)
        : LeastSize.ByHalving(size => Apply(rod, size), Cap);

    /// <summary>The sizes of the least sum that work together, or null where none do.</summary>
    public (double One, double Other)? Least(RodNumbers rod, ReferenceChange other)
    {
        if (IsNut || other.IsNut)
        {
            (ReferenceChange nut, ReferenceChange sized) = IsNut ? (this, other) : (other, this);
            return nut.Apply(rod, nut.Cap) is var without && !sized.IsNut && sized.Least(without) is { } size
                ? IsNut ? (Cap, size) : (size, other.Cap)
                : null;
        }

        return LeastSize.OfTwo((one, two) => other.Apply(Apply(rod, one), two), Cap, other.Cap);
    }

    /// <summary>Whether two changes are of different things; the two ways of an adjustment are different things.</summary>
    public bool GoesWith(ReferenceChange other)
    {
        ChangeKind[][] same =
        [
            [ChangeKind.ShorterSleeve, ChangeKind.LongerSleeve],
            [ChangeKind.ShorterOuterEnd, ChangeKind.LongerOuterEnd],
            [ChangeKind.ShorterTarget, ChangeKind.LongerTarget],
            [ChangeKind.LessAdjustment, ChangeKind.LessShorter],
            [ChangeKind.LessAdjustment, ChangeKind.LessLonger],
        ];
        return !same.Any(pair => pair.Contains(Kind) && pair.Contains(other.Kind));
    }

    /// <summary>Every change that may be made to a job.</summary>
    public static IEnumerable<ReferenceChange> All(RodJob job)
    {
        RodNumbers rod = job.Numbers;
        RodSide[] sides = job.OneJoint ? [RodSide.Inner] : [RodSide.Inner, RodSide.Outer];
        IEnumerable<ReferenceChange> all =
        [
            .. sides.SelectMany(side => OfEnd(job, rod, side)),
            .. OfSleeve(rod),
            .. OfWishes(rod),
        ];
        return all.Where(change => change.Cap > 1e-6);
    }

    private static IEnumerable<ReferenceChange> OfEnd(RodJob job, RodNumbers rod, RodSide side)
    {
        JointCase joint = job.Rod.Joint(side);
        yield return new(ChangeKind.Cut, side, rod.Joint(side).CenterToTip - rod.Joint(side).MostCut - 0.01, (changed, by) =>
            changed.With(side, end => end with { MostCut = end.MostCut + by }));
        yield return new(ChangeKind.Chase, side, (side == RodSide.Inner ? job.InnerRethread : job.OuterRethread).Mm, (changed, by) =>
            changed.With(side, end => end with { ThreadLength = end.ThreadLength + by }));
        if (EngagementFloor(job.Rod, joint) is { } floor)
        {
            yield return new(ChangeKind.LessEngagement, side, rod.Joint(side).Required - floor, (changed, by) =>
                changed.With(side, end => end with { Required = end.Required - by }));
        }

        if (MayLeaveOutNut(job, side))
        {
            yield return new(ChangeKind.NoNut, side, joint.NutMm, (changed, by) =>
                changed.With(side, end => end with { Nut = by > 0 ? 0 : end.Nut }));
        }
    }

    private static IEnumerable<ReferenceChange> OfSleeve(RodNumbers rod)
    {
        double least = new[]
        {
            rod.Inner.Depth + (rod.OneJoint ? 0 : rod.Outer.Depth),
            rod.Inner.Witness ?? 0,
            rod.Inner.Clamp ?? 0,
            rod.OneJoint ? 0 : rod.Outer.Witness ?? 0,
            rod.OneJoint ? 0 : rod.Outer.Clamp ?? 0,
        }.Max();
        yield return new(
            rod.OneJoint ? ChangeKind.ShorterOuterEnd : ChangeKind.ShorterSleeve,
            null,
            rod.Sleeve - least,
            (changed, by) => changed with { Sleeve = changed.Sleeve - by });
        yield return new(
            rod.OneJoint ? ChangeKind.LongerOuterEnd : ChangeKind.LongerSleeve,
            null,
            Far,
            (changed, by) => changed with { Sleeve = changed.Sleeve + by });
    }

    private static IEnumerable<ReferenceChange> OfWishes(RodNumbers rod)
    {
        yield return new(ChangeKind.LessShorter, null, rod.Shorter, (changed, by) => changed with { Shorter = changed.Shorter - by });
        yield return new(ChangeKind.LessLonger, null, rod.Longer, (changed, by) => changed with { Longer = changed.Longer - by });
        if (Math.Abs(rod.Shorter - rod.Longer) < 1e-6)
        {
            yield return new(ChangeKind.LessAdjustment, null, rod.Shorter, (changed, by) => changed with
            {
                Shorter = changed.Shorter - by,
                Longer = changed.Longer - by,
            });
        }

        double shortest = rod.Target - rod.Shorter - Math.Sqrt(Math.Max(0, rod.OffsetSquared)) - 0.01;
        yield return new(ChangeKind.ShorterTarget, null, shortest, (changed, by) => changed with { Target = changed.Target - by });
        yield return new(ChangeKind.LongerTarget, null, Far, (changed, by) => changed with { Target = changed.Target + by });
    }

    /// <summary>
    /// Only where both strengths are known: the larger of one diameter in steel, two in aluminum, the usual one and a half in what is
    /// neither, and of what strength asks for.
    /// </summary>
    public static double? EngagementFloor(RodCase rod, JointCase joint)
    {
        double diameters = rod.SleeveKind switch
        {
            MaterialKind.Steel => 1,
            MaterialKind.Aluminum => 2,
            _ => 1.5,
        };
        return StrengthReference.Of(rod, joint) is { } strength
            ? Math.Max(diameters * joint.Thread.DiameterMm, strength.RequiredMm)
            : null;
    }

    /// <summary>
    /// Never at a bent end, and only where the other joint stays locked. Without a clamp at its own joint nothing but its joint keeps the
    /// end from turning by itself: where nothing is said of that, or where there is no second joint, its nut stays.
    /// </summary>
    public static bool MayLeaveOutNut(RodJob job, RodSide side)
    {
        JointCase joint = job.Rod.Joint(side);
        JointCase other = job.Rod.Joint(side == RodSide.Inner ? RodSide.Outer : RodSide.Inner);
        return joint is { Nut: not null, Offset.Mm: 0 }
            && (job.OneJoint || other.Nut is not null || other.Clamp is not null)
            && (joint.Clamp is not null || (!job.OneJoint && joint.Joint is not null));
    }
}
