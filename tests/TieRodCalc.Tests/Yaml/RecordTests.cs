using System.Text;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Tests.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>The build record holds parts, wishes and readings of a rod: what is read from it gives the same plan and check.</summary>
public class RecordTests(ChoiceCatalogs catalogs) : IClassFixture<ChoiceCatalogs>
{
    private const double Tolerance = 1e-9;

    [Fact]
    public void A_recorded_rod_is_planned_and_checked_as_before()
    {
        int recorded = 0;
        foreach (ChoiceCatalog catalog in catalogs.All.Where(catalog => catalog.All.Count > 0))
        {
            // The first cut one where there is one, so that the readings hold a cut.
            ReferenceChoice choice = catalog.All.FirstOrDefault(choice => choice.IsCut) ?? catalog.All[0];
            Rod rod = catalog.Read.Rod(choice);
            RodRequest request = catalog.Read.Open.Request!;
            RodPlan plan = RodPlanner.Plan(rod, request);
            BuiltCase built = new(choice.Rod, choice.Cut, choice.Setting) { OneJoint = choice.OneJoint };
            BuiltReadings readings = new MadeRod(built, rod, request, plan).Readings();
            string text = JobWriter.Record(catalog.Read.Job, [(catalog.Read.Open with { Rod = rod }, readings)]);

            JobRod read = Assert.Single(Read(text).Rods);
            Assert.Empty(PlanFigures.Differences(plan, RodPlanner.Plan(read.Rod!, read.Request!), Tolerance));
            Assert.Equal(Names(rod.Parts), Names(read.Rod!.Parts));
            BuiltRod before = AsBuilt.Check(rod, request, readings);
            BuiltRod after = AsBuilt.Check(read.Rod, read.Request!, read.Built!);
            Assert.Equal(Verdict.Buildable, before.Verdict);
            Assert.Equal(Verdict.Buildable, after.Verdict);
            Assert.Equal(before.Spare!.Inner.Cut.Millimeters, after.Spare!.Inner.Cut.Millimeters, Tolerance);
            Assert.Equal(before.Inner.Insertion!.Value.Millimeters, after.Inner.Insertion!.Value.Millimeters, Tolerance);
            recorded++;
        }

        Assert.True(recorded > RandomCounts.Catalogs / 3, $"only {recorded}");
    }

    [Fact]
    public void Tolerances_of_parts_and_readings_are_kept()
    {
        const string Built = """
                adjust: 3/16 in
                built:
                  center_to_center: 15.75 in ± 1/32 in
                  showing: {inner: 30 ± 0.2 mm}
                  cut: {inner: 9/32 in}
                  depth: {outer: 28 ± 1 mm}

            """;
        Job job = Marked.Check(Samples.Job.Replace("    adjust: 3/16 in\n", Built, StringComparison.Ordinal)).Job!;
        JobRod rod = job.Rods[0];
        JobRod read = Read(JobWriter.Record(job, [(rod, rod.Built!)])).Rods[0];
        AssertNear(rod.Built!.CenterToCenter, read.Built!.CenterToCenter);
        AssertNear(rod.Built.Inner.Showing, read.Built.Inner.Showing);
        AssertNear(rod.Built.Inner.Cut, read.Built.Inner.Cut);
        AssertNear(rod.Built.Outer.Depth, read.Built.Outer.Depth);
        Assert.Null(read.Built.Inner.Depth);
        Assert.Equal((null, null), (read.Built.Outer.Showing, read.Built.Outer.Cut));
        AssertNear(rod.Rod!.Parts.Inner.CenterToTip, read.Rod!.Parts.Inner.CenterToTip);
        Assert.Equal(rod.Rod.Parts.Inner.Info, read.Rod.Parts.Inner.Info);
        Assert.Equal(rod.Rod.Parts.Inner.Joint, read.Rod.Parts.Inner.Joint);
        Assert.Equal((rod.Name, rod.Side, job.Name), (read.Name, read.Side, Read(JobWriter.Record(job, [(rod, rod.Built!)])).Name));
    }

    [Fact]
    public void A_rod_with_an_open_part_cannot_be_recorded()
    {
        Job job = Marked.Check(Samples.Job.Replace("inner: in-m18l-212", "inner: any", StringComparison.Ordinal)).Job!;
        Assert.Throws<ArgumentException>(() => JobWriter.Record(job, [(job.Rods[0], new BuiltReadings())]));
    }

    private static void AssertNear(Measured? expected, Measured? actual)
    {
        Assert.Equal(expected!.Value.Nominal.Millimeters, actual!.Value.Nominal.Millimeters, Tolerance);
        Assert.Equal(expected.Value.PlusMinus.Millimeters, actual.Value.PlusMinus.Millimeters, Tolerance);
    }

    private static string[] Names(RodParts parts) =>
    [
        .. new[]
        {
            parts.Inner.Info, parts.Sleeve?.Info, parts.Outer?.Info, parts.Socket?.Info, parts.InnerNut?.Info, parts.OuterNut?.Info,
        }.Select(info => $"{info?.Id} {info?.Price} {info?.Mass?.Kilograms:0.#########} {info?.Material}"),
    ];

    private static Job Read(string text)
    {
        using MemoryStream content = new(Encoding.UTF8.GetBytes(text));
        Reading<Job> reading = JobReader.Read(content, "-", string.Empty);
        return reading.Value ?? throw new InvalidOperationException($"{string.Join("\n", reading.Problems)}\n{text}");
    }
}
