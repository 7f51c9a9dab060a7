using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Where the parts of a rod lie that cannot be built, and where on it is what is missing.</summary>
public sealed class RodLayoutObstacleTests(LaidOutRods rods) : IClassFixture<LaidOutRods>
{
    private const double Tolerance = 1e-6;

    [Fact]
    public void Insertions_and_cuts_add_up_to_the_length()
    {
        foreach (LaidOutRod laid in rods.All)
        {
            // s1 + s2 + x1 + x2 = c1 + c2 + S - axial
            RodNumbers rod = laid.Numbers;
            double stretched = rod.Inner.CenterToTip + (rod.OneJoint ? 0 : rod.Outer.CenterToTip) + rod.Sleeve;
            double sum = laid.Joints.Sum(joint => Insertion(laid, joint) + Cut(laid, joint));
            Assert.True(Math.Abs(stretched - laid.Layout.Axial.Millimeters - sum) <= Tolerance, $"{sum}\n{laid}");
        }
    }

    [Fact]
    public void It_is_shown_where_the_limit_is_that_is_most_in_the_way()
    {
        Assert.All(rods.NotMade, laid => Assert.Equal(First(laid)?.At ?? AdjustmentPoint.Any, laid.Layout.At));
    }

    [Fact]
    public void An_end_is_cut_as_far_as_it_may_be_where_a_cut_is_in_the_way_and_not_at_all_elsewhere()
    {
        foreach (LaidOutRod laid in rods.NotMade)
        {
            Assert.All(laid.Joints, joint =>
            {
                bool inTheWay = laid.Plan.Binding.Any(binding => binding.Limit == Limit.Cut && binding.End == joint.Side);
                double expected = inTheWay ? laid.Numbers.Joint(joint.Side).MostCut : 0;
                Assert.True(Math.Abs(expected - Cut(laid, joint)) <= Tolerance, $"{joint.Side}: {Cut(laid, joint)}\n{laid}");
            });
        }

        Assert.Contains(rods.NotMade, laid => laid.Joints.Any(joint => Cut(laid, joint) > 1));
    }

    [Fact]
    public void The_end_that_is_not_in_the_way_stands_where_its_limits_let_it()
    {
        int checkedEnds = 0;
        foreach (LaidOutRod laid in rods.NotMade.Where(laid => !laid.Job.OneJoint))
        {
            RodSide way = First(laid)?.End ?? RodSide.Inner;
            JointLayout other = way == RodSide.Inner ? laid.Layout.Outer! : laid.Layout.Inner;
            (JointNumbers part, JointNumbers far) = way == RodSide.Inner
                ? (laid.Numbers.Outer, laid.Numbers.Inner) : (laid.Numbers.Inner, laid.Numbers.Outer);
            double low = part.Lead + Math.Max(part.Countersink + part.Required, Math.Max(part.Witness ?? 0, part.Clamp ?? 0));
            double high = Math.Min(
                part.ThreadLength - Cut(laid, other) - part.Nut,
                part.Bore == Bore.Closed ? part.Depth : laid.Numbers.Sleeve - far.Depth);
            if (low <= high)
            {
                checkedEnds++;
                double stands = Insertion(laid, other);
                Assert.True(stands >= low - Tolerance && stands <= high + Tolerance, $"{stands} is not from {low} to {high}\n{laid}");
            }
        }

        Assert.True(checkedEnds > 100);
    }

    [Fact]
    public void What_is_missing_is_as_wide_as_the_limit_is_missed_where_the_parts_lie()
    {
        HashSet<Limit> seen = [];
        foreach (LaidOutRod laid in rods.NotMade)
        {
            foreach (BindingLimit binding in laid.Plan.Binding)
            {
                seen.Add(binding.Limit);
                double? expected = Missed(laid, binding);
                double? found = laid.Layout.Missing(binding)?.Width.Millimeters;
                Assert.True(
                    expected is null == found is null && Math.Abs((expected ?? 0) - (found ?? 0)) <= Tolerance,
                    $"{binding}: {expected} by its definition, {found} in the layout\n{laid}");
            }
        }

        Assert.Equal(Enum.GetValues<Limit>().Order(), seen.Order());
    }

    [Fact]
    public void With_one_joint_and_one_limit_in_the_way_all_of_the_miss_shows()
    {
        int found = 0;
        foreach (LaidOutRod laid in rods.NotMade.Where(laid => laid.Job.OneJoint))
        {
            BindingLimit[] most =
                [.. laid.Plan.Binding.Where(binding => binding.Limit != Limit.Cut)];
            if (most.Length == 1)
            {
                found++;
                double width = laid.Layout.Missing(most[0])!.Width.Millimeters;
                Assert.True(Math.Abs(width - most[0].MissedBy.Millimeters) <= Tolerance, $"{most[0]} is {width} wide\n{laid}");
            }
        }

        Assert.True(found > 10);
    }

    [Fact]
    public void Too_little_engaged_in_a_rod_that_its_sleeve_cannot_adjust_is_missing_at_the_tip()
    {
        int found = 0;
        foreach (LaidOutRod laid in rods.NotMade.Where(laid => !laid.Numbers.Adjusts))
        {
            foreach (BindingLimit binding in laid.Plan.Binding.Where(binding => binding.Limit == Limit.Engagement))
            {
                JointNumbers part = laid.Numbers.Joint(binding.End!.Value);
                JointLayout joint = binding.End == RodSide.Inner ? laid.Layout.Inner : laid.Layout.Outer!;
                if (part.Depth - part.Countersink >= part.Required)
                {
                    found++;
                    LengthSpan place = laid.Layout.Missing(binding)!;
                    double[] ends = [.. new[] { place.Shortest, place.Longest }.Select(end => Math.Abs(end.Millimeters - joint.Tip.Millimeters))];
                    Assert.True(ends.Min() <= Tolerance, $"{binding}: {ends[0]} and {ends[1]} from the tip\n{laid}");
                }
            }
        }

        Assert.True(found > 10);
    }

    private static BindingLimit? First(LaidOutRod laid) => laid.Plan.Binding.FirstOrDefault(binding => binding.Limit != Limit.Cut)
        ?? (laid.Plan.Binding is [var cut, ..] ? cut : null);

    private static double Cut(LaidOutRod laid, JointLayout joint) => laid.FromBall(joint, joint.UncutTip) - laid.FromBall(joint, joint.Tip);

    private static double Insertion(LaidOutRod laid, JointLayout joint) => laid.FromBall(joint, joint.Tip) - laid.FromBall(joint, joint.Face);

    /// <summary>How far a limit is from being met exactly, by its definition; null for a cut.</summary>
    private static double? Missed(LaidOutRod laid, BindingLimit binding)
    {
        JointLayout joint = binding.End == RodSide.Outer ? laid.Layout.Outer! : laid.Layout.Inner;
        (JointNumbers part, JointNumbers far) = binding.End == RodSide.Outer
            ? (laid.Numbers.Outer, laid.Numbers.Inner) : (laid.Numbers.Inner, laid.Numbers.Outer);
        double s = Insertion(laid, joint);
        double shallow = part.Countersink + part.Required - part.Depth;
        bool isHole = binding.At == AdjustmentPoint.Any && Math.Abs(shallow - binding.MissedBy.Millimeters) <= Tolerance;
        double? slack = binding.Limit switch
        {
            Limit.Engagement => isHole ? shallow : part.Lead + part.Countersink + part.Required - s,
            Limit.NutRoom => part.ThreadLength - Cut(laid, joint) - part.Nut - s,
            Limit.ClosedBore => part.Depth - s,
            Limit.FarThread => laid.Numbers.Sleeve - far.Depth - s,
            Limit.Tips => laid.Numbers.Sleeve - laid.Numbers.TipGap - laid.Joints.Sum(each => Insertion(laid, each)),
            Limit.Witness => part.Lead + part.Witness!.Value - s,
            Limit.Clamp => part.Lead + part.Clamp!.Value - s,
            _ => null,
        };
        return slack is { } off ? Math.Abs(off) : null;
    }
}
