using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>
/// Where everything of a planned rod lies along its thread axis, to draw it from. A rod that cannot be built lies as near to what is
/// wanted as its limits let it, so that what is missing shows at one place.
/// </summary>
public sealed record RodLayout
{
    private readonly double _tipGap;

    private RodLayout(double tipGap) => _tipGap = tipGap;

    /// <summary>The length at which it lies so: the target, or that end of the wanted adjustment at which a limit is in the way.</summary>
    public required AdjustmentPoint At { get; init; }

    /// <summary>Its axial length there: the place of the outer ball center.</summary>
    public required Length Axial { get; init; }

    /// <summary>The inner joint.</summary>
    public required JointLayout Inner { get; init; }

    /// <summary>The outer joint, or null where there is one joint only.</summary>
    public required JointLayout? Outer { get; init; }

    /// <summary>The layout of a plan: of its setting at the recommended cut, or of what is in the way.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="request">What is wanted of it.</param>
    /// <param name="plan">Its plan.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">As <see cref="RodPlanner.Plan"/>.</exception>
    public static RodLayout Of(Rod rod, RodRequest request, RodPlan plan)
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        RodProblem wanted = RodProblem.Of(
            rod, request, Millimeters.Of(plan.InnerRequired.Required), Millimeters.Of(plan.OuterRequired?.Required ?? Length.Zero));
        AdjustmentPoint at = InTheWay(plan)?.At ?? AdjustmentPoint.Any;
        double axial = at switch
        {
            AdjustmentPoint.Shortest => wanted.Axial - wanted.AxialShorter,
            AdjustmentPoint.Longest => wanted.Axial + wanted.AxialLonger,
            _ => wanted.Axial,
        };
        Setting setting = plan.Solution is { } made ? Planned(made) : Nearest(wanted.Rod, plan, axial);
        RodParts parts = rod.Parts;
        return new RodLayout(Millimeters.Of(request.Rules.TipGap))
        {
            At = at,
            Axial = Length.FromMillimeters(axial),
            Inner = JointLayout.Of(parts, wanted.Rod, RodSide.Inner, setting, axial),
            Outer = parts.OneJoint ? null : JointLayout.Of(parts, wanted.Rod, RodSide.Outer, setting, axial),
        };
    }

    /// <summary>
    /// From where a limit lets something be to where it is: what has to go. Null where that is no place on the rod, as with a cut.
    /// </summary>
    /// <param name="binding">A limit that is in the way.</param>
    /// <exception cref="ArgumentNullException">The limit is null.</exception>
    public LengthSpan? Missing(BindingLimit binding)
    {
        ArgumentNullException.ThrowIfNull(binding);
        JointLayout joint = binding.End == RodSide.Outer ? Outer! : Inner;
        JointLayout? other = binding.End == RodSide.Outer ? Inner : Outer;
        return binding.Limit switch
        {
            Limit.Engagement => NotEngaged(joint, binding),
            Limit.NutRoom => JointLayout.Ordered(joint.ThreadStart, joint.Nut ?? joint.Face),
            Limit.ClosedBore => JointLayout.Ordered(joint.HoleEnd, joint.Tip),
            Limit.FarThread => JointLayout.Ordered(other!.HoleEnd, joint.Tip),
            Limit.Tips => JointLayout.Ordered(Inner.Tip + Length.FromMillimeters(_tipGap), Outer!.Tip),
            Limit.Witness => JointLayout.Ordered(joint.Lead, joint.Witness!.Value),
            Limit.Clamp => JointLayout.Ordered(joint.Lead, joint.Clamp!.Value),
            _ => null,
        };
    }

    /// <summary>
    /// What is in the way at every length alike is a hole that is too shallow, or else the tip of a rod that its sleeve cannot adjust.
    /// </summary>
    private static LengthSpan NotEngaged(JointLayout joint, BindingLimit binding)
    {
        Length needed = joint.NeededTip + (joint.Lead - joint.Tip);
        LengthSpan hole = JointLayout.Ordered(joint.HoleEnd, needed);
        bool isHole = binding.At == AdjustmentPoint.Any
            && (needed - joint.Face).Abs() > (joint.HoleEnd - joint.Face).Abs()
            && Math.Abs((hole.Width - binding.MissedBy).Millimeters) <= Millimeters.Negligible;
        return isHole ? hole : JointLayout.Ordered(joint.Tip, joint.NeededTip);
    }

    /// <summary>The limit that is most in the way, one that has a place on the rod before a cut.</summary>
    private static BindingLimit? InTheWay(RodPlan plan) =>
        plan.Binding.OrderBy(binding => binding.Limit == Limit.Cut).FirstOrDefault();

    private static Setting Planned(RodSolution made) => new(
        Millimeters.Of(made.Inner.Insertion),
        Millimeters.Of(made.Outer?.Insertion ?? Length.Zero),
        new Cuts(
            Millimeters.Of(made.InnerCut?.Recommended ?? Length.Zero), Millimeters.Of(made.OuterCut?.Recommended ?? Length.Zero)));

    /// <summary>
    /// Cut as far as allowed where a cut is in the way, uncut else. The end that is not in the way stands where its limits let it,
    /// so near to what would suit the other that all of the rest is the other's.
    /// </summary>
    private static Setting Nearest(in RodDimensions rod, RodPlan plan, double axial)
    {
        Cuts cuts = new(CutAt(rod, plan, RodSide.Inner), CutAt(rod, plan, RodSide.Outer));
        double sum = rod.Stretched - axial - cuts.Total;
        if (rod.OneJoint)
        {
            return new Setting(sum, 0, cuts);
        }

        RodSide side = InTheWay(plan)?.End ?? RodSide.Inner;
        RodSide other = RodDimensions.Other(side);
        double free = sum - Allowed(rod, side, cuts).Middle;
        Interval allowed = Allowed(rod, other, cuts);
        double stands = Math.Min(Math.Max(free, allowed.Low), allowed.High);
        return side == RodSide.Inner ? new Setting(sum - stands, stands, cuts) : new Setting(stands, sum - stands, cuts);
    }

    private static double CutAt(in RodDimensions rod, RodPlan plan, RodSide side) =>
        plan.Binding.Any(binding => binding.Limit == Limit.Cut && binding.End == side) ? rod[side].MostCut : 0;

    private static Interval Allowed(in RodDimensions rod, RodSide side, Cuts cuts) =>
        new(rod[side].Least.At, Math.Min(rod.Deepest(side).At, rod[side].ThreadForInsertion - cuts[side]));
}
