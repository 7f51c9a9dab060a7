using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>A random rod made and set as its plan says.</summary>
internal sealed record BuiltRod(BuiltCase Built, RodPlan Plan)
{
    public RodCase Rod => Built.Rod;

    public JointPlan Joint(RodSide side) => side == RodSide.Inner ? Plan.Solution!.Inner : Plan.Solution!.Outer!;
}

/// <summary>All random rods that can be made, planned once.</summary>
public sealed class BuiltRods
{
    private static readonly Lazy<IReadOnlyList<BuiltRod>> s_all = new(MakeAll);

    internal IReadOnlyList<BuiltRod> All => s_all.Value;

    private static BuiltRod[] MakeAll()
    {
        BuiltRod?[] made = new BuiltRod?[RandomCounts.Rods];
        Parallel.For(0, made.Length, index =>
        {
            RodCase rod = RandomRods.Draw(index);
            RodPlan plan = rod.Plan();
            made[index] = plan.Solution is { } solution ? new BuiltRod(BuiltCase.Of(rod, solution), plan) : null;
        });
        return [.. made.OfType<BuiltRod>()];
    }
}
