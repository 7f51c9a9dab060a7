using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>A rod that was made as its plan says, measured: what is read gives back the setting of the plan.</summary>
public class AsBuiltTests(MadeRods rods) : IClassFixture<MadeRods>
{
    private const double Tolerance = 2e-6;

    [Fact]
    public void Length_thread_showing_and_cuts_give_back_the_plan()
    {
        Findings findings = new();
        foreach (MadeRod made in rods.All)
        {
            Check(findings, made, made.Check(made.Readings()), "all");
        }

        findings.AssertNone();
        Assert.True(rods.All.Count(made => made.Built.Cut.Total > 0) > rods.All.Count / 50, "hardly any is cut");
        Assert.True(rods.All.Count(made => made.Built.OneJoint) > RandomCounts.Catalogs / 50, "hardly any has one joint");
    }

    [Fact]
    public void What_was_not_read_follows_from_the_rest()
    {
        Findings findings = new();
        foreach (MadeRod made in rods.All)
        {
            BuiltReadings all = made.Readings();
            Check(findings, made, made.Check(all with { CenterToCenter = null }), "no length");
            Check(findings, made, made.Check(all with { Inner = all.Inner with { Showing = null } }), "inner end not read");
            if (!made.Built.OneJoint)
            {
                Check(findings, made, made.Check(all with { Outer = all.Outer with { Showing = null } }), "outer end not read");
            }

            Check(findings, made, made.Check(ByDepth(made, all, read => read with { Cut = null })), "depth in place of cut");
            Check(findings, made, made.Check(ByDepth(made, all, read => read with { Showing = null })), "depth in place of thread showing");
            Check(findings, made, made.Check(ByDepth(made, all, read => read)), "depth besides");
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_spare_is_made_like_the_rod_of_its_plan()
    {
        Findings findings = new();
        foreach (MadeRod made in rods.All)
        {
            SpareRod spare = made.Check(made.Readings()).Spare!;
            StartProcedure start = made.Plan.Solution!.Start;
            findings.Near(made.Case, "length", made.Built.CenterToCenter, spare.Length, Tolerance);
            findings.That(made.Case, $"starts with {spare.Start.First}", spare.Start.First == start.First);
            findings.Near(made.Case, "turns alone", start.AloneTurns, spare.Start.AloneTurns, Tolerance);
            findings.Near(made.Case, "showing first", start.ShowingBeforeSecond.Millimeters, spare.Start.ShowingBeforeSecond, Tolerance);
            foreach (RodSide side in made.Joints)
            {
                JointCase joint = made.Case.Joint(side);
                SpareEnd end = side == RodSide.Inner ? spare.Inner : spare.Outer!;
                double cut = made.Built.Cut.Of(side);
                double fromCenter = joint.CenterToTip.Mm - cut;
                double straight = Math.Sqrt(fromCenter * fromCenter + joint.Offset.Mm * joint.Offset.Mm);
                findings.Near(made.Case, $"{side} cut", cut, end.Cut, Tolerance);
                findings.Near(made.Case, $"{side} mark", fromCenter, end.MarkFromCenter, Tolerance);
                findings.Near(made.Case, $"{side} thread left", joint.ThreadLength.Mm - cut, end.ThreadLeft, Tolerance);
                findings.Near(made.Case, $"{side} insertion", made.Built.Setting.Of(side), end.Insertion, Tolerance);
                findings.Near(made.Case, $"{side} showing", made.Built.Showing(side), end.Showing, Tolerance);
                findings.That(
                    made.Case,
                    $"{side} straight {end.StraightFromCenter}",
                    joint.Offset.Mm == 0
                        ? end.StraightFromCenter is null
                        : Math.Abs(end.StraightFromCenter!.Value.Millimeters - straight) < Tolerance);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void The_readings_that_are_kept_give_the_same_answer_again()
    {
        Findings findings = new();
        foreach (MadeRod made in rods.All)
        {
            BuiltReadings all = made.Readings();
            BuiltRod first = made.Check(ByDepth(made, all, read => read with { Cut = null }) with { CenterToCenter = null });
            Check(findings, made, made.Check(first.Readings), "kept");
        }

        findings.AssertNone();
    }

    private static BuiltReadings ByDepth(MadeRod made, BuiltReadings readings, Func<EndReadings, EndReadings> change)
    {
        EndReadings Changed(RodSide side, EndReadings read) => change(read with { Depth = MadeRod.Of(made.Built.Setting.Of(side)) });
        return readings with
        {
            Inner = Changed(RodSide.Inner, readings.Inner),
            Outer = made.Built.OneJoint ? default : Changed(RodSide.Outer, readings.Outer),
        };
    }

    private static void Check(Findings findings, MadeRod made, BuiltRod built, string readings)
    {
        findings.That(made.Case, $"{readings}: verdict {built.Verdict}", built.Verdict == Verdict.Buildable);
        findings.That(made.Case, $"{readings}: contradictions {string.Join(", ", built.Contradictions)}", built.Contradictions.Count == 0);
        findings.That(made.Case, $"{readings}: binding {string.Join(", ", built.Binding)}", built.Binding.Count == 0);
        findings.That(made.Case, $"{readings}: locked {built.Locking}", built.Locking == made.Plan.Locking);
        findings.That(
            made.Case,
            $"{readings}: warned of {string.Join(", ", OfLocking(built.Warnings))}",
            OfLocking(built.Warnings).SequenceEqual(OfLocking(made.Plan.Warnings)));
        findings.Near(made.Case, $"{readings}: length", made.Built.CenterToCenter, built.Present!.Value, Tolerance);
        EndReadings[] kept = [.. made.Joints.Select(side => side == RodSide.Inner ? built.Readings.Inner : built.Readings.Outer)];
        findings.That(
            made.Case,
            $"{readings}: kept {built.Readings}",
            built.Readings.CenterToCenter is not null && Array.TrueForAll(kept, read => read is { Showing: not null, Cut: not null }));
        foreach (RodSide side in made.Joints)
        {
            BuiltJoint joint = side == RodSide.Inner ? built.Inner : built.Outer!;
            JointPlan plan = made.Planned(side);
            string at = $"{readings}: {side}";
            findings.Near(made.Case, $"{at} insertion", plan.Insertion.Millimeters, joint.Insertion!.Value, Tolerance);
            findings.Near(made.Case, $"{at} engaged", plan.Engaged.Millimeters, joint.Engaged!.Value, Tolerance);
            findings.Near(made.Case, $"{at} least engaged", plan.EngagedLeast.Millimeters, joint.EngagedLeast!.Value, Tolerance);
            findings.Near(made.Case, $"{at} showing", plan.Showing.Millimeters, joint.Showing!.Value, Tolerance);
            findings.Near(made.Case, $"{at} cut", made.Built.Cut.Of(side), joint.Cut!.Value, Tolerance);
            findings.Near(made.Case, $"{at} room", plan.NutRoom.Millimeters, joint.NutRoom!.Value, Tolerance);
            findings.Near(made.Case, $"{at} least room", plan.NutRoomLeast.Millimeters, joint.NutRoomLeast!.Value, Tolerance);
            findings.Near(made.Case, $"{at} span from", plan.Insertion.Millimeters, joint.InsertionSpan!.Shortest, Tolerance);
            findings.Near(made.Case, $"{at} span to", plan.Insertion.Millimeters, joint.InsertionSpan.Longest, Tolerance);
            findings.That(made.Case, $"{at} required", joint.Required == plan.Required);
        }

        findings.Near(made.Case, $"{readings}: shorter", made.Plan.Solution!.Shorter.Length.Millimeters, built.Shorter!.Length, Tolerance);
        findings.Near(made.Case, $"{readings}: longer", made.Plan.Solution.Longer.Length.Millimeters, built.Longer!.Length, Tolerance);
    }

    private static IEnumerable<PlanWarning> OfLocking(IReadOnlyList<PlanWarning> warnings) =>
        warnings.Where(warning => warning.Code is WarningCode.NotLocked or WarningCode.OneJointLocked);
}
