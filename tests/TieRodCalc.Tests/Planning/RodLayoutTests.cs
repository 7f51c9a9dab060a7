using TieRodCalc.Planning;
using TieRodCalc.Rods;
using UnitsNet;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Planning;

/// <summary>Where the parts of a rod lie that can be built: by the model's definitions, and by the figures of the plan.</summary>
public sealed class RodLayoutTests(LaidOutRods rods, ITestOutputHelper output) : IClassFixture<LaidOutRods>
{
    private const double Tolerance = 1e-6;

    [Fact]
    public void There_are_rods_of_every_kind()
    {
        output.WriteLine($"{RandomCounts.Description}; {rods.Made.Count()} of {rods.All.Count} can be made");
        Assert.Contains(rods.Made, laid => laid.Job.OneJoint);
        Assert.Contains(rods.Made, laid => !laid.Job.OneJoint && laid.Job.Rod.ClockingDegrees is > 0);
        Assert.Contains(rods.Made, laid => !laid.Job.OneJoint && !laid.Job.Rod.SleeveAdjusts);
        Assert.Contains(rods.Made, laid => laid.Plan.Solution!.OuterCut is { IsNeeded: true });
        Assert.Contains(rods.Made, laid => laid.Joints.Any(joint => joint.Witness is not null));
        Assert.Contains(rods.Made, laid => laid.Joints.Any(joint => joint.Clamp is not null));
        Assert.Contains(rods.Made, laid => laid.Joints.Any(joint => joint.Nut is null));
    }

    [Fact]
    public void Distances_between_places_are_the_figures_of_the_plan()
    {
        foreach (LaidOutRod laid in rods.Made)
        {
            RodSolution made = laid.Plan.Solution!;
            Same(laid, "axial", laid.Plan.Axial.Millimeters, laid.Layout.Axial.Millimeters);
            foreach (JointLayout joint in laid.Joints)
            {
                JointPlan plan = joint.Side == RodSide.Inner ? made.Inner : made.Outer!;
                CutAdvice? cut = joint.Side == RodSide.Inner ? made.InnerCut : made.OuterCut;
                double Way(Length from, Length to) => laid.FromBall(joint, to) - laid.FromBall(joint, from);
                Same(laid, "showing", plan.Showing.Millimeters, Way(joint.ThreadStart, joint.Face));
                Same(laid, "insertion", plan.Insertion.Millimeters, Way(joint.Face, joint.Tip));
                Same(laid, "nut room", plan.NutRoom.Millimeters, Way(joint.ThreadStart, joint.Nut ?? joint.Face));
                Same(laid, "cut", cut?.Recommended.Millimeters ?? 0, Way(joint.Tip, joint.UncutTip));
                Same(laid, "engaged", plan.Engaged.Millimeters, joint.Engaged?.Width.Millimeters ?? 0);
                Same(laid, "required", plan.Required.Required.Millimeters, Way(joint.Mouth, joint.NeededTip) - Way(joint.Lead, joint.Tip));
                if (cut is { IsNeeded: true })
                {
                    Same(laid, "mark", cut.MarkFromCenter.Millimeters, Way(joint.Ball, joint.Tip));
                    Same(laid, "thread left", cut.ThreadLeft.Millimeters, Way(joint.ThreadStart, joint.Tip));
                }
            }

            if (laid.Layout.Outer is { } outer)
            {
                Same(laid, "tip gap", made.TipGap!.Value.Millimeters, outer.Tip.Millimeters - laid.Layout.Inner.Tip.Millimeters);
            }
        }
    }

    [Fact]
    public void Places_are_where_the_definitions_put_them()
    {
        foreach (LaidOutRod laid in rods.All)
        {
            // length^2 = axial^2 + O^2 at the length that is shown.
            RodNumbers rod = laid.Numbers;
            double length = laid.Layout.At switch
            {
                AdjustmentPoint.Shortest => rod.Target - rod.Shorter,
                AdjustmentPoint.Longest => rod.Target + rod.Longer,
                _ => rod.Target,
            };
            Same(laid, "axial", rod.Axial(length), laid.Layout.Axial.Millimeters);
            Same(laid, "inner ball", 0, laid.Layout.Inner.Ball.Millimeters);
            Assert.Equal(laid.Job.OneJoint, laid.Layout.Outer is null);
            double outerFace = laid.Layout.Outer?.Face.Millimeters ?? laid.Layout.Axial.Millimeters;
            Same(laid, "face to face", rod.Sleeve, outerFace - laid.Layout.Inner.Face.Millimeters);
            foreach (JointLayout joint in laid.Joints)
            {
                AllPlaces(laid, joint, rod.Joint(joint.Side));
            }
        }
    }

    [Fact]
    public void Only_a_rod_that_cannot_be_made_is_shown_at_another_length_than_the_target()
    {
        Assert.All(rods.Made, laid => Assert.Equal(AdjustmentPoint.Any, laid.Layout.At));
        Assert.Contains(rods.NotMade, laid => laid.Layout.At == AdjustmentPoint.Shortest);
        Assert.Contains(rods.NotMade, laid => laid.Layout.At == AdjustmentPoint.Longest);
    }

    /// <summary>Written from the model's letters: cut x and insertion s are read off the layout, all else follows from the part.</summary>
    private static void AllPlaces(LaidOutRod laid, JointLayout joint, JointNumbers part)
    {
        double x = laid.FromBall(joint, joint.UncutTip) - laid.FromBall(joint, joint.Tip);
        double s = laid.FromBall(joint, joint.Tip) - laid.FromBall(joint, joint.Face);
        (double c, double t, double l, double m, double d) = (part.CenterToTip, part.ThreadLength, part.Lead, part.Countersink, part.Depth);
        double face = c - x - s;
        void Is(string name, double expected, Length place) => Same(laid, $"{joint.Side} {name}", expected, laid.FromBall(joint, place));
        Is("ball", 0, joint.Ball);
        Is("uncut tip", c, joint.UncutTip);
        Is("thread start", c - t, joint.ThreadStart);
        Is("lead", c - x - l, joint.Lead);
        Is("mouth", face + m, joint.Mouth);
        Is("end of the hole", face + d, joint.HoleEnd);
        Is("needed tip", face + l + m + part.Required, joint.NeededTip);
        Same(laid, "witness", part.Witness, joint.Witness is { } witness ? laid.FromBall(joint, witness) - face : null);
        Same(laid, "clamp", part.Clamp, joint.Clamp is { } clamp ? laid.FromBall(joint, clamp) - face : null);
        Assert.Equal(part.Nut > 0, joint.Nut is not null);
        Same(laid, "nut", part.Nut, joint.Nut is { } nut ? face - laid.FromBall(joint, nut) : 0);

        // engaged(s) = max(0, min(d, s - l) - max(m, s - (t - x)))
        (double from, double to) = (Math.Max(m, s - (t - x)), Math.Min(d, s - l));
        if (to - from > Tolerance)
        {
            double[] ends =
                [.. new[] { joint.Engaged!.Shortest, joint.Engaged.Longest }.Select(end => laid.FromBall(joint, end)).Order()];
            Same(laid, "engaged from", face + from, ends[0]);
            Same(laid, "engaged to", face + to, ends[1]);
        }
        else
        {
            Same(laid, "engaged", 0, joint.Engaged?.Width.Millimeters ?? 0);
        }
    }

    private static void Same(LaidOutRod laid, string what, double? expected, double? actual) => Assert.True(
        expected is null == actual is null && Math.Abs((expected ?? 0) - (actual ?? 0)) <= Tolerance,
        $"{what}: {expected} by the definitions, {actual} in the layout\n{laid}");
}
