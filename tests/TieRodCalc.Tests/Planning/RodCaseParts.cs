using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>Makes the library's parts and requests of test cases, and cases out of cases.</summary>
internal static class RodCaseParts
{
    public static RodPlan Plan(this RodCase rod) => RodPlanner.Plan(rod.ToRod(), rod.ToRequest());

    public static Rod ToRod(this RodCase rod)
    {
        RodParts parts = new(
            End(rod.Inner, "inner"),
            new Sleeve
            {
                Info = new PartInfo("sleeve")
                {
                    Material = rod is { SleeveKind: null, SleeveTensileMpa: null }
                        ? null
                        : new Material("sleeve stock") { Kind = rod.SleeveKind, TensileStrength = Stress(rod.SleeveTensileMpa) },
                },
                Length = Of(rod.SleeveLength),
                Inner = Hole(rod.Inner),
                Outer = Hole(rod.Outer),
                Outside = rod.Outside is { } outside ? new Outside(outside.Shape, Of(outside.Across)) : null,
            },
            End(rod.Outer, "outer"),
            Nut(rod.Inner, "inner nut"),
            Nut(rod.Outer, "outer nut"),
            rod.ClockingDegrees is { } degrees ? Angle.FromDegrees(degrees) : null);
        RodFaults? faults = Rod.Make(parts, out Rod? made);
        return made ?? throw new InvalidOperationException(
            $"A test case is no rod: {string.Join(", ", faults!.PartFaults)} {string.Join(", ", faults.Mismatches)}\n{rod}");
    }

    public static RodRequest ToRequest(this RodCase rod) => new()
    {
        Target = rod.Target.ToLength(),
        Shorter = rod.Shorter.ToLength(),
        Longer = rod.Longer.ToLength(),
        Rules = new PlanRules
        {
            Mark = rod.Mark.ToLength(),
            Allowance = rod.Allowance.ToLength(),
            TipGap = rod.TipGap.ToLength(),
            Load = rod.LoadNewtons is { } load ? Force.FromNewtons(load) : null,
            Engagement = rod.Engagement switch
            {
                { Diameters: { } diameters } => EngagementRule.Diameters(diameters),
                { Length: { } length } => EngagementRule.FromLength(length.ToLength()),
                _ => null,
            },
        },
    };

    /// <summary>The same rod with every dimension stated in inches, or every one in millimeters; threads stay as they are named.</summary>
    public static RodCase InUnit(this RodCase rod, bool inches) => rod with
    {
        Inner = InUnit(rod.Inner, inches),
        Outer = InUnit(rod.Outer, inches),
        SleeveLength = rod.SleeveLength.InUnit(inches),
        Outside = rod.Outside is { } outside ? outside with { Across = outside.Across.InUnit(inches) } : null,
        Target = rod.Target.InUnit(inches),
        Shorter = rod.Shorter.InUnit(inches),
        Longer = rod.Longer.InUnit(inches),
        TipGap = rod.TipGap.InUnit(inches),
        Engagement = rod.Engagement is { } rule ? rule with { Length = rule.Length?.InUnit(inches) } : null,
        Mark = rod.Mark.InUnit(inches),
        Allowance = rod.Allowance.InUnit(inches),
    };

    /// <summary>The rod turned end for end. A thread's hand does not depend on the side that it is seen from.</summary>
    public static RodCase Swapped(this RodCase rod) => rod with { Inner = rod.Outer, Outer = rod.Inner };

    /// <summary>The rod in a mirror: every hand the other one.</summary>
    public static RodCase Mirrored(this RodCase rod) => rod with { Inner = Mirrored(rod.Inner), Outer = Mirrored(rod.Outer) };

    /// <summary>The rod with its cuts made: shorter ends that must not be cut again.</summary>
    public static RodCase Cut(this RodCase rod, CutPair cut) => rod with
    {
        Inner = Cut(rod.Inner, cut.Inner),
        Outer = Cut(rod.Outer, cut.Outer),
    };

    private static JointCase Cut(JointCase joint, double cut) => joint with
    {
        CenterToTip = Dim.OfMm(joint.CenterToTip.Mm - cut),
        ThreadLength = Dim.OfMm(joint.ThreadLength.Mm - cut),
        MaxCut = default,
    };

    private static JointCase Mirrored(JointCase joint) => joint with
    {
        Thread = joint.Thread with { Hand = joint.Thread.Hand == Hand.Right ? Hand.Left : Hand.Right },
    };

    private static JointCase InUnit(JointCase joint, bool inches) => joint with
    {
        CenterToTip = joint.CenterToTip.InUnit(inches),
        ThreadLength = joint.ThreadLength.InUnit(inches),
        Lead = joint.Lead?.InUnit(inches),
        Offset = joint.Offset.InUnit(inches),
        MaxCut = joint.MaxCut.InUnit(inches),
        Nut = joint.Nut?.InUnit(inches),
        Depth = joint.Depth.InUnit(inches),
        Countersink = joint.Countersink?.InUnit(inches),
        Witness = joint.Witness?.InUnit(inches),
        Clamp = joint.Clamp?.InUnit(inches),
    };

    private static ThreadedEnd End(JointCase joint, string id) => new()
    {
        Info = new PartInfo(id)
        {
            Material = joint.TensileMpa is null ? null : new Material($"{id} stock") { TensileStrength = Stress(joint.TensileMpa) },
        },
        Thread = Thread(joint.Thread),
        CenterToTip = Of(joint.CenterToTip),
        ThreadLength = Of(joint.ThreadLength),
        Lead = Of(joint.Lead),
        Offset = Of(joint.Offset),
        MaxCut = Of(joint.MaxCut),
        Joint = joint.Joint,
    };

    private static TappedHole Hole(JointCase joint) => new()
    {
        Thread = Thread(joint.Thread),
        Depth = Of(joint.Depth),
        Bore = joint.Bore,
        Countersink = Of(joint.Countersink),
        Witness = Of(joint.Witness),
        Clamp = Of(joint.Clamp),
    };

    private static JamNut? Nut(JointCase joint, string id) => joint.Nut is { } thickness
        ? new JamNut { Info = new PartInfo(id), Thread = Thread(joint.Thread), Thickness = Of(thickness) }
        : null;

    private static ThreadDesignation Thread(ThreadCase thread) => new(
        thread.Unified
            ? ThreadSize.Unified(thread.Dimension.ToLength(), thread.PitchOrThreadsPerInch)
            : ThreadSize.Metric(thread.Dimension.ToLength(), Length.FromMillimeters(thread.PitchOrThreadsPerInch)),
        thread.Hand);

    private static Pressure? Stress(double? mpa) => mpa is { } known ? Pressure.FromMegapascals(known) : null;

    private static Measured Of(Dim dimension) => new(dimension.ToLength());

    private static Measured? Of(Dim? dimension) => dimension is { } value ? Of(value) : null;
}
