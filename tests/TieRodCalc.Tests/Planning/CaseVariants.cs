using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>Rods that differ from a case in one thing, for what hangs on that thing alone.</summary>
internal static class CaseVariants
{
    /// <summary>
    /// Both ends the same but for their hands, a straight rod at the middle of what the limits leave: two limits of either
    /// kind are met together. Each end lies between 26.25 mm (lead, countersink and 24 mm of engagement) and the 40 mm of its
    /// closed bore; the nuts leave 42 mm.
    /// </summary>
    public static RodCase Twin { get; } = Symmetrical();

    /// <summary>The case with some parts exchanged for others, which must still make a rod.</summary>
    public static RodPlan PlanWith(this RodCase rod, Func<RodParts, RodParts> exchange)
    {
        RodFaults? faults = Rod.Make(exchange(rod.ToRod().Parts), out Rod? made);
        return RodPlanner.Plan(made ?? throw new InvalidOperationException($"No rod: {faults}"), rod.ToRequest());
    }

    /// <summary>The case with its inner joint changed.</summary>
    public static RodCase WithInner(this RodCase rod, Func<JointCase, JointCase> change) => rod with { Inner = change(rod.Inner) };

    /// <summary>The case with its outer joint changed.</summary>
    public static RodCase WithOuter(this RodCase rod, Func<JointCase, JointCase> change) => rod with { Outer = change(rod.Outer) };

    private static RodCase Symmetrical()
    {
        JointCase end = CheckCases.OpenInnerBore.Rod.Outer with
        {
            Thread = CheckCases.OpenInnerBore.Rod.Outer.Thread with { Hand = Hand.Left },
            CenterToTip = Dim.OfMm(100),
            ThreadLength = Dim.OfMm(50),
            Nut = Dim.OfMm(8),
            Lead = Dim.OfMm(1.5),
            Depth = Dim.OfMm(40),
            Bore = Bore.Closed,
            Countersink = Dim.OfMm(0.75),
        };
        return CheckCases.OpenInnerBore.Rod with
        {
            Inner = end,
            Outer = end with { Thread = end.Thread with { Hand = Hand.Right } },
            SleeveLength = Dim.OfMm(120),
            Target = Dim.OfMm(256),
            Shorter = Dim.OfMm(2),
            Longer = Dim.OfMm(2),
        };
    }
}
