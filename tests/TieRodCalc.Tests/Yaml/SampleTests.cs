using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Yaml;

public sealed class SampleTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public SampleTests()
    {
        _folder.Write("parts/pinewater.yaml", Samples.Parts);
        _folder.Write("jobs/coupe.yaml", Samples.WholeJob);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_whole_job_is_read()
    {
        Job job = Read(out Reading<Job> reading);
        Assert.Equal("No. 27 ice-race coupe, narrowed front axle", job.Name);
        Assert.Equal(LengthDisplay.Inch, job.Units);
        JobRod read = Assert.Single(job.Rods);
        Assert.Equal("left", read.Name);
        Assert.Equal(CarSide.Left, read.Side);
        Assert.Null(read.NotPlanned);
        Assert.Equal("in-m18l-212", read.Rod!.Parts.Inner.Info.Id);
        Assert.Equal("sl-8-m18l-58r", read.Rod.Parts.Sleeve!.Info.Id);
        Assert.Equal("re-58r", read.Rod.Parts.Outer!.Info.Id);
        Assert.Equal("jn-m18l", read.Rod.Parts.InnerNut!.Info.Id);
        Assert.Equal("jn-58r", read.Rod.Parts.OuterNut!.Info.Id);
        Assert.Equal(90, read.Rod.Parts.Clocking!.Value.Degrees);
        Assert.Empty(reading.Problems);
    }

    [Fact]
    public void What_is_wanted_of_the_rod_is_read()
    {
        RodRequest request = Read(out _).Rods[0].Request!;
        Assert.Equal(400.05, request.Target.Millimeters, 1e-9);
        Assert.Equal(4.7625, request.Shorter.Millimeters, 1e-9);
        Assert.Equal(4.7625, request.Longer.Millimeters, 1e-9);
        Assert.Equal(28, request.Rules.Engagement!.AsLength!.Value.Millimeters, 1e-9);
        Assert.Equal(3.175, request.Rules.TipGap.Millimeters, 1e-9);
        Assert.Equal(0.79375, request.Rules.Mark.Millimeters, 1e-9);
        Assert.Equal(1.5875, request.Rules.Allowance.Millimeters, 1e-9);
        Assert.Equal(609.6, request.Plates!.Value.Millimeters, 1e-9);
        Assert.Equal(
            SteeringGeometry.FromArm(
                CarSide.Left, Length.FromInches(6), JointPlace.BehindAxle, Angle.FromDegrees(4), request.Target),
            request.Steering);
    }

    [Fact]
    public void Every_key_of_an_inner_end_is_read()
    {
        ThreadedEnd end = Assert.Single(Read(out _).Catalog.InnerEnds);
        Assert.Equal("in-m18l-212", end.Info.Id);
        Assert.Equal("bent inner end, M18 left-hand", end.Info.Name);
        Assert.Equal("st-850", end.Info.Material!.Id);
        Assert.Equal(new Price(31.00m, "USD"), end.Info.Price);
        Assert.Equal(Hand.Left, end.Thread.Hand);
        Assert.Equal("6g", end.Thread.ToleranceClass);
        Assert.Equal(212, end.CenterToTip.Nominal.Millimeters, 1e-9);
        Assert.Equal(0.5, end.CenterToTip.PlusMinus.Millimeters, 1e-9);
        Assert.Equal(80, end.ThreadLength.Nominal.Millimeters, 1e-9);
        Assert.Equal(1.5, end.Lead!.Value.Nominal.Millimeters, 1e-9);
        Assert.Equal(14, end.Offset.Nominal.Millimeters, 1e-9);
        Assert.Equal(40, end.MaxCut.Nominal.Millimeters, 1e-9);
        Assert.Equal(0, end.Rethread.Nominal.Millimeters);
        Assert.Equal(JointKind.TaperedStud, end.Joint);
    }

    [Fact]
    public void Every_other_part_is_read()
    {
        PartCatalog catalog = Read(out _).Catalog;
        Material steel = Assert.Single(catalog.Materials);
        Assert.Equal(MaterialKind.Steel, steel.Kind);
        Assert.Equal(850, steel.TensileStrength!.Value.Megapascals, 1e-9);
        Assert.Equal("invented for the demo", steel.Source);

        Sleeve sleeve = Assert.Single(catalog.Sleeves);
        Assert.Equal(203.2, sleeve.Length.Nominal.Millimeters, 1e-9);
        Assert.Equal(0.75, sleeve.Inner.Countersink!.Value.Nominal.Millimeters, 1e-9);
        Assert.Equal(38.1, sleeve.Inner.Witness!.Value.Nominal.Millimeters, 1e-9);
        Assert.Equal(50.8, sleeve.Outer.Depth.Nominal.Millimeters, 1e-9);
        Assert.Equal(Bore.Closed, sleeve.Outer.Bore);
        Assert.Null(sleeve.Outer.Clamp);
        Assert.Equal(OutsideShape.Hexagon, sleeve.Outside!.Shape);

        ThreadedEnd rodEnd = Assert.Single(catalog.OuterEnds);
        Assert.Equal(JointKind.RodEnd, rodEnd.Joint);
        Assert.Null(rodEnd.Lead);
        SocketEnd socket = Assert.Single(catalog.SocketEnds);
        Assert.Equal(50.8, socket.CenterToFace.Nominal.Millimeters, 1e-9);
        Assert.Equal(30.48, socket.Socket.Depth.Nominal.Millimeters, 1e-9);
        Assert.Equal(["jn-m18l", "jn-58r"], catalog.JamNuts.Select(nut => nut.Info.Id));
        Assert.Equal(9.525, catalog.JamNuts[1].Thickness.Nominal.Millimeters, 1e-9);
    }

    [Fact]
    public void What_it_says_of_bump_steer_is_read()
    {
        Job job = Read(out Reading<Job> reading);
        Problem note = Assert.Single(reading.Notes);
        Assert.StartsWith("'clocking' changes nothing here", note.Message, StringComparison.Ordinal);
        JobBumpSheet sheet = Assert.Single(job.Bump);
        Assert.Equal((CarSide.Left, 2), (sheet.Side, sheet.Sheet.Readings.Count));
        Assert.Equal(2, sheet.Sheet.Then.OuterRaised.Millimeters, 1e-9);
        Assert.Equal(254, job.BumpLimits.Spacing!.Value.Millimeters, 1e-9);
        Assert.Equal([CarSide.Left, CarSide.Right], job.Corners.Select(corner => corner.Side));
        Assert.Null(job.Corners[0].Geometry);
        Assert.Equal("  left:", job.Corners[0].Missing!.SourceLine![..7]);
        Assert.Equal(12.7, job.Corners[1].Moves!.Outer.More.Millimeters, 1e-9);
        Assert.NotNull(job.Corners[1].Geometry);
    }

    [Fact]
    public void A_part_file_is_read_by_itself()
    {
        Reading<PartCatalog> reading = JobReader.ReadParts(_folder.At("parts/pinewater.yaml"));
        Assert.Empty(reading.Problems);
        Assert.Equal(2, reading.Value!.JamNuts.Count);
        CheckedFile check = JobReader.Check(_folder.At("parts/pinewater.yaml"));
        Assert.Null(check.Job);
        Assert.Single(check.Parts!.Sleeves);
    }

    [Fact]
    public void A_job_is_no_part_file_and_the_other_way_round()
    {
        Problem job = Assert.Single(JobReader.ReadParts(_folder.At("jobs/coupe.yaml")).Problems);
        Assert.Equal(("this is a job, not a part file", 2, 1, 3), (job.Message, job.Line, job.Column, job.Length));
        Reading<Job> parts = JobReader.Read(_folder.At("parts/pinewater.yaml"));
        Assert.Null(parts.Value);
        Assert.Contains("this is a part file", Assert.Single(parts.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_may_have_no_rods()
    {
        CheckedFile read = Marked.Check("tierodcalc: 1\njob: empty\nunits: mm\n");
        Assert.Empty(read.Problems);
        Assert.Empty(read.Job!.Rods);
        Assert.Equal(LengthDisplay.Millimeter, read.Job.Units);
    }

    [Fact]
    public void A_metric_job_has_metric_rules()
    {
        Job job = Marked.Check(Samples.Job.Replace("job: No", "units: mm\njob: No", StringComparison.Ordinal)).Job!;
        Assert.Equal(PlanRules.Metric, job.Rods[0].Request!.Rules);
        Assert.Equal(PlanRules.Inch, Marked.Check(Samples.Job).Job!.Rods[0].Request!.Rules);
    }

    private Job Read(out Reading<Job> reading)
    {
        reading = JobReader.Read(_folder.At("jobs/coupe.yaml"));
        Assert.Empty(reading.Problems);
        return reading.Value!;
    }
}
