using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Planning;

/// <summary>The arithmetic of the worked examples in docs, done again by hand and held against the library.</summary>
public class WorkedExampleTests
{
    private const double Near = 1e-6;

    [Fact]
    public void The_sleeve_of_remedies_is_too_short_by_what_is_worked_out()
    {
        (Rod rod, RodRequest request, _) = Sample("car-27-short-sleeve.yaml");
        double together = 212 + 127 + 66.675;
        double axial = together - (1.5 + 0.75 + 1.5 * 18) - (1.5875 + 0.762 + 1.5 * 15.875);
        double wanted = Math.Sqrt((393.7 + 4.7625) * (393.7 + 4.7625) - 14 * 14);
        IReadOnlyList<Remedy> remedies = RodRemedies.Of(rod, request);
        Assert.Equal([ChangeKind.LongerSleeve, ChangeKind.ShorterTarget], remedies.Select(remedy => Assert.Single(remedy.Changes).Kind));
        Assert.Equal(wanted - axial, remedies[0].Size.Millimeters, Near);
        Assert.Equal(127 + wanted - axial, remedies[0].Changes[0].To.Millimeters, Near);
        double target = Math.Sqrt(axial * axial + 14 * 14) - 4.7625;
        Assert.Equal(393.7 - target, remedies[1].Size.Millimeters, Near);
    }

    [Fact]
    public void The_cut_of_tolerance_is_what_is_worked_out()
    {
        (Rod rod, RodRequest request, _) = Sample("car-27-tolerances.yaml");
        double axial = Math.Sqrt((393.7 - 4.7625) * (393.7 - 4.7625) - 14 * 14);
        double least = 212 + 203.2 + 66.675 - 50.8 - (44.45 - 9.525) - axial;
        RodSolution solution = RodPlanner.Plan(rod, request).Solution!;
        Assert.Equal(least, solution.InnerCut!.Least.Millimeters, Near);
        Assert.Equal(12.7, solution.InnerCut.Recommended.Millimeters, Near);
        WorstCase worst = solution.WorstCase;
        Assert.Equal(Verdict.BuildableAfterCutting, worst.Verdict);
        Assert.True(worst.PlanIsSafe);
        Assert.Equal(least + 0.5 + 1.5875 + 1.5875 + 0.79375, worst.LeastCut!.Value.Millimeters, Near);
        Assert.Equal(12.7 - worst.LeastCut.Value.Millimeters, worst.Slack!.Value.Millimeters, Near);
        Assert.Equal(
            [
                (RodDimension.Depth, RodSide.Inner, 1.5875), (RodDimension.SleeveLength, null, 1.5875), (RodDimension.Cut, RodSide.Inner, 0.79375),
                (RodDimension.CenterToTip, (RodSide?)RodSide.Inner, 0.5),
            ],
            worst.Dimensions.Select(effect => (effect.Dimension, effect.End, Math.Round(effect.Takes.Millimeters, 6))));
    }

    [Fact]
    public void The_rod_of_spares_is_engaged_by_what_is_worked_out()
    {
        (Rod rod, RodRequest request, BuiltReadings? built) = Sample("car-27-built.yaml");
        BuiltRod check = AsBuilt.Check(rod, request, built!);
        double inserted = 80 - 10.31875 - 23.415625;
        Assert.Equal(Verdict.Buildable, check.Verdict);
        Assert.Equal(inserted, check.Inner.Insertion!.Value.Millimeters, Near);
        Assert.Equal(inserted - 1.5 - 0.75, check.Inner.Engaged!.Value.Millimeters, Near);
        Assert.Equal(212 - 10.31875, check.Spare!.Inner.MarkFromCenter.Millimeters, Near);
    }

    [Fact]
    public void The_rack_is_cut_by_what_is_worked_out()
    {
        // Closed at 38 mm: 300 + 62 - 38 - (323.85 - 3.175) = 3.325 mm; the axial model of one joint, (c - x) + b - s.
        (Rod rod, RodRequest request, _) = Sample("car-27-rack.yaml");
        Assert.True(rod.Parts.OneJoint);
        double deep = rod.Parts.Socket!.Socket.Depth.Nominal.Millimeters;
        RodPlan plan = RodPlanner.Plan(rod, request);
        Assert.Equal(Verdict.BuildableAfterCutting, plan.Verdict);
        Assert.Equal(300 + 62 - deep - (323.85 - 3.175), plan.Solution!.InnerCut!.Least.Millimeters, Near);
        double cut = plan.Solution.InnerCut.Recommended.Millimeters;
        Assert.Equal(300 - cut + 62 - 323.85, plan.Solution.Inner.Insertion.Millimeters, Near);
        Assert.Equal(1.5, plan.Solution.PerTurn!.Length.Millimeters, Near);
        Assert.Equal(TurnDirection.Counterclockwise, plan.Solution.Lengthens);
        Assert.Null(plan.Solution.Outer);
        Assert.Null(plan.OuterRequired);
    }

    private static (Rod Rod, RodRequest Request, BuiltReadings? Built) Sample(string job)
    {
        Reading<Job> reading = JobReader.Read(Path.Combine(Architecture.SourceTree.Root, "catalog-samples", "jobs", job));
        Assert.Empty(reading.Problems);
        JobRod rod = reading.Value!.Rods[0];
        return (rod.Rod!, rod.Request!, rod.Built);
    }
}
