using System.Text;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Planning;

/// <summary>A test catalog written as a job file and read again.</summary>
internal sealed record ReadCatalog(Job Job)
{
    public JobRod Open => Job.Rods[0];

    public static ReadCatalog Of(CatalogCase catalog)
    {
        using MemoryStream content = new(Encoding.UTF8.GetBytes(CatalogText.Of(catalog)));
        Reading<Job> reading = JobReader.Read(content, "-", string.Empty);
        return new ReadCatalog(reading.Value ?? throw new InvalidOperationException($"{string.Join("\n", reading.Problems)}\n{catalog}"));
    }

    /// <summary>The plan of one of the rods that the reference finds.</summary>
    public RodPlan Plan(ReferenceChoice choice) => RodPlanner.Plan(Rod(choice), Open.Request!);

    /// <summary>One of the rods that the reference finds.</summary>
    public Rod Rod(ReferenceChoice choice)
    {
        RodParts parts = choice.OneJoint
            ? new RodParts(
                Job.Catalog.InnerEnds.Single(end => end.Info.Id == choice.Inner),
                Job.Catalog.SocketEnds.Single(end => end.Info.Id == choice.Outer),
                Nut(choice.InnerNut))
            : new RodParts(
                Job.Catalog.InnerEnds.Single(end => end.Info.Id == choice.Inner),
                Job.Catalog.Sleeves.Single(sleeve => sleeve.Info.Id == choice.Sleeve),
                Job.Catalog.OuterEnds.Single(end => end.Info.Id == choice.Outer),
                Nut(choice.InnerNut),
                Nut(choice.OuterNut),
                Open.Candidates!.Clocking);
        RodFaults? faults = TieRodCalc.Rods.Rod.Make(parts, out Rod? rod);
        return rod ?? throw new InvalidOperationException($"No rod: {faults}\n{choice.Rod}");
    }

    private JamNut? Nut(NutCase? nut) => Job.Catalog.JamNuts.SingleOrDefault(made => made.Info.Id == nut?.Id);
}
