using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>A random rod made and set as its plan says.</summary>
internal sealed record MadeRod(BuiltCase Built, Rod Rod, RodRequest Request, RodPlan Plan)
{
    public RodCase Case => Built.Rod;

    public IEnumerable<RodSide> Joints => Built.Joints;

    public JointPlan Planned(RodSide side) => side == RodSide.Inner ? Plan.Solution!.Inner : Plan.Solution!.Outer!;

    /// <summary>What can be measured on it: the length, and at each end the thread showing and what was cut.</summary>
    public BuiltReadings Readings() => new()
    {
        CenterToCenter = Of(Built.CenterToCenter),
        Inner = Of(RodSide.Inner),
        Outer = Built.OneJoint ? default : Of(RodSide.Outer),
    };

    public BuiltRod Check(BuiltReadings readings) => AsBuilt.Check(Rod, Request, readings);

    /// <summary>A reading of so many millimeters.</summary>
    public static Measured Of(double mm, double plusMinus = 0) =>
        new(Length.FromMillimeters(Math.Max(0, mm)), Length.FromMillimeters(plusMinus));

    private EndReadings Of(RodSide side) => new(Of(Built.Showing(side)), Of(Built.Cut.Of(side)), null);
}

/// <summary>All random rods that can be made, with and without a sleeve, planned once.</summary>
public sealed class MadeRods
{
    private static readonly Lazy<IReadOnlyList<MadeRod>> s_all = new(MakeAll);

    internal IReadOnlyList<MadeRod> All => s_all.Value;

    private static MadeRod[] MakeAll()
    {
        MadeRod?[] made = new MadeRod?[RandomCounts.Rods];
        Parallel.For(0, made.Length, index =>
        {
            RodCase drawn = RandomRods.Draw(index);
            Rod rod = drawn.ToRod();
            RodRequest request = drawn.ToRequest();
            RodPlan plan = RodPlanner.Plan(rod, request);
            made[index] = plan.Solution is { } solution ? new MadeRod(BuiltCase.Of(drawn, solution), rod, request, plan) : null;
        });
        return [.. made.OfType<MadeRod>(), .. WithOneJoint()];
    }

    private static IEnumerable<MadeRod> WithOneJoint() =>
        from catalog in new ChoiceCatalogs().All
        from choice in catalog.All
        where choice.OneJoint
        let rod = catalog.Read.Rod(choice)
        let request = catalog.Read.Open.Request!
        let built = new BuiltCase(choice.Rod, choice.Cut, choice.Setting) { OneJoint = true }
        select new MadeRod(built, rod, request, RodPlanner.Plan(rod, request));
}
