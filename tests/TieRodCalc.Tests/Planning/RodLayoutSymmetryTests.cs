using TieRodCalc.Planning;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>Where parts lie does not depend on units, on hands, or on the end that a rod is looked at from.</summary>
public sealed class RodLayoutSymmetryTests(LaidOutRods rods) : IClassFixture<LaidOutRods>
{
    private const double Tolerance = 1e-5;

    [Fact]
    public void It_is_the_same_in_either_unit()
    {
        foreach (LaidOutRod laid in rods.All)
        {
            LaidOutRod other = LaidOutRod.Of(laid.Job with { Rod = laid.Job.Rod.InUnit(inches: !laid.Job.Rod.Target.InInches) });
            if (Comparable(laid, other))
            {
                Same(laid, Places(laid, false), Places(other, false));
            }
        }
    }

    [Fact]
    public void A_rod_of_the_other_hands_lies_the_same()
    {
        foreach (LaidOutRod laid in rods.All)
        {
            LaidOutRod other = LaidOutRod.Of(laid.Job with { Rod = laid.Job.Rod.Mirrored() });
            if (Comparable(laid, other))
            {
                Same(laid, Places(laid, false), Places(other, false));
            }
        }
    }

    [Fact]
    public void Turned_end_for_end_it_lies_the_other_way_round()
    {
        int compared = 0;
        foreach (LaidOutRod laid in rods.All.Where(laid => !laid.Job.OneJoint))
        {
            // Where both ends may be cut, the inner one is cut first: turned round that is another rod.
            RodJob job = laid.Job;
            LaidOutRod other = LaidOutRod.Of(job with { Rod = job.Rod.Swapped(), InnerRethread = job.OuterRethread, OuterRethread = job.InnerRethread });
            bool oneCuts = job.Rod.Inner.MaxCut.Mm == 0 || job.Rod.Outer.MaxCut.Mm == 0;
            if (oneCuts && laid.Plan.Verdict == other.Plan.Verdict && laid.Layout.At == other.Layout.At && SameEndIsInTheWay(laid, other))
            {
                compared++;
                Same(laid, Places(laid, false), Places(other, true));
            }
        }

        Assert.True(compared > 500);
    }

    private static bool Comparable(LaidOutRod one, LaidOutRod other) => one.Plan.Verdict == other.Plan.Verdict
        && one.Plan.Binding.Select(Kind).SequenceEqual(other.Plan.Binding.Select(Kind));

    /// <summary>Of limits that miss by the same, either may come first.</summary>
    private static bool SameEndIsInTheWay(LaidOutRod one, LaidOutRod other) => First(one)?.End is var end && First(other)?.End is var turned
        && (one.Plan.Solution is not null || (end is not null && turned is not null && end != turned));

    private static BindingLimit? First(LaidOutRod laid) => laid.Plan.Binding.FirstOrDefault(binding => binding.Limit != Limit.Cut);

    private static (Limit Limit, RodSide? End, AdjustmentPoint At) Kind(BindingLimit binding) => (binding.Limit, binding.End, binding.At);

    private static double?[] Places(LaidOutRod laid, bool turned)
    {
        RodLayout layout = laid.Layout;
        double axial = layout.Axial.Millimeters;
        double? Of(Length? place) => turned ? axial - place?.Millimeters : place?.Millimeters;
        double?[] Joint(JointLayout? joint) => joint is null ? [] :
        [
            Of(joint.Ball), Of(joint.ThreadStart), Of(joint.Lead), Of(joint.Tip), Of(joint.UncutTip), Of(joint.Face), Of(joint.Mouth),
            Of(joint.HoleEnd), Of(joint.NeededTip), Of(joint.Nut), Of(joint.Witness), Of(joint.Clamp), joint.Engaged?.Width.Millimeters,
        ];
        return turned ? [.. Joint(layout.Outer), .. Joint(layout.Inner), axial] : [.. Joint(layout.Inner), .. Joint(layout.Outer), axial];
    }

    private static void Same(LaidOutRod laid, double?[] one, double?[] other)
    {
        Assert.Equal(one.Length, other.Length);
        for (int place = 0; place < one.Length; place++)
        {
            Assert.True(
                one[place] is null == other[place] is null && Math.Abs((one[place] ?? 0) - (other[place] ?? 0)) <= Tolerance,
                $"place {place}: {one[place]} and {other[place]}\n{laid}");
        }
    }
}
