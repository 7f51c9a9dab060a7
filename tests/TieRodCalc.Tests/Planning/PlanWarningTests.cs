using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>The warnings that hang on figures of the plan, each exactly where its figure says.</summary>
public class PlanWarningTests(PlannedRods rods) : IClassFixture<PlannedRods>
{
    private const double Tolerance = 1e-6;

    /// <summary>1/16 in: a cut that leaves less than this to spare is warned of (common practice, no source).</summary>
    private const double LittleToSpare = 25.4 / 16;

    private static readonly RodSide[] s_sides = [RodSide.Inner, RodSide.Outer];

    [Fact]
    public void Joints_without_nut_or_clamp_are_told()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.All)
        {
            RodSide[] free = [.. s_sides.Where(side => planned.Rod.Joint(side) is { Nut: null, Clamp: null })];
            Locking expected = free switch
            {
                [] => Locking.Both,
                [RodSide.Outer] => Locking.Inner,
                [RodSide.Inner] => Locking.Outer,
                _ => Locking.None,
            };
            findings.That(planned.Rod, $"locking {planned.Plan.Locking}", planned.Plan.Locking == expected);
            findings.That(planned.Rod, "not locked", Warned(planned, WarningCode.NotLocked, null) == (free.Length == 2));
            bool oneTold = planned.Plan.Warnings.Any(
                warning => warning.Code == WarningCode.OneJointLocked && warning.End is { } end && free.SequenceEqual([end]));
            findings.That(planned.Rod, "one joint locked", oneTold == (free.Length == 1));
        }

        findings.AssertNone();
    }

    [Fact]
    public void Little_to_spare_of_the_cut_is_told()
    {
        Findings findings = new();
        foreach ((PlannedRod planned, RodSide side) in Ends().Where(end => end.Planned.Advice(end.Side) is { IsNeeded: true }))
        {
            double spare = planned.Window(side)!.Value.High - planned.Recommended.Of(side);
            Check(findings, planned, side, WarningCode.LittleCutToSpare, spare, LittleToSpare);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_cut_off_the_marks_is_told()
    {
        Findings findings = new();
        foreach ((PlannedRod planned, RodSide side) in Ends())
        {
            bool offMarks = planned.Advice(side) is { IsNeeded: true, OnMark: false };
            findings.That(planned.Rod, $"{side} off the marks", Warned(planned, WarningCode.CutOffTheMarks, side) == offMarks);
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_nut_with_less_than_a_pitch_to_be_backed_off_by_is_told()
    {
        Findings findings = new();
        foreach ((PlannedRod planned, RodSide side) in Ends())
        {
            JointCase joint = planned.Rod.Joint(side);
            double room = joint.Nut is null ? double.PositiveInfinity : planned.JointPlan(side).NutRoomLeast.Millimeters;
            Check(findings, planned, side, WarningCode.LittleRoomForTheNut, room, joint.Thread.PitchMm);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Steel_is_assumed_where_the_usual_rule_is_taken_and_the_sleeve_is_neither_steel_nor_aluminum()
    {
        Findings findings = new();
        int others = 0;
        foreach (PlannedRod planned in rods.All)
        {
            bool assumed = planned.Rod is { Engagement: null, SleeveKind: null or MaterialKind.Other };
            others += planned.Rod is { Engagement: null, SleeveKind: MaterialKind.Other } ? 1 : 0;
            findings.That(planned.Rod, "steel assumed", Warned(planned, WarningCode.SteelAssumed, null) == assumed);
        }

        findings.AssertNone();
        Assert.True(others > RandomCounts.Rods / 50);
    }

    private IEnumerable<(PlannedRod Planned, RodSide Side)> Ends() =>
        rods.Solved.SelectMany(planned => s_sides.Select(side => (planned, side)));

    private static void Check(Findings findings, PlannedRod planned, RodSide side, WarningCode code, double value, double limit)
    {
        if (Math.Abs(value - limit) > Tolerance)
        {
            findings.That(planned.Rod, $"{code} {side} at {value}", Warned(planned, code, side) == value < limit);
        }
    }

    private static bool Warned(PlannedRod planned, WarningCode code, RodSide? side) =>
        planned.Plan.Warnings.Any(warning => warning.Code == code && warning.End == side);
}
