using BenchmarkDotNet.Attributes;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Benchmarks;

/// <summary>What planning a rod costs, with and without toe, beside the toe alone.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private readonly Rod _rod = MakeRod();
    private readonly RodRequest _request = Request();
    private readonly RodRequest _withSteering = Request() with { Steering = Wheel() };
    private readonly SteeringGeometry _wheel = Wheel();
    private readonly Length _longer = Mm(402.911111);

    /// <summary>The plan without toe; what the others are compared with.</summary>
    [Benchmark(Baseline = true)]
    public RodPlan Plan() => RodPlanner.Plan(_rod, _request);

    /// <summary>The plan with toe per turn, half turn and flat.</summary>
    [Benchmark]
    public RodPlan PlanWithToe() => RodPlanner.Plan(_rod, _withSteering);

    /// <summary>One toe from one length.</summary>
    [Benchmark]
    public ToeAnswer ToeFromLength() => Toe.FromLength(_wheel, _longer);

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static Measured Of(double value) => new(Mm(value));

    private static SteeringGeometry Wheel() =>
        SteeringGeometry.FromArm(CarSide.Left, Mm(152.4), JointPlace.BehindAxle, Angle.Zero, Mm(400));

    private static RodRequest Request() => new()
    {
        Target = Mm(400),
        Shorter = Mm(3),
        Longer = Mm(3),
        Rules = PlanRules.Metric,
    };

    private static Rod MakeRod()
    {
        ThreadDesignation left = new(ThreadSize.Metric(Mm(18), Mm(1.5)), Hand.Left);
        ThreadDesignation right = new(ThreadSize.Unified(Length.FromInches(0.625), 18), Hand.Right);
        RodParts parts = new(
            End("inner", left, 212, 80, 40),
            new Sleeve
            {
                Info = new PartInfo("sleeve"),
                Length = Of(203.2),
                Inner = Hole(left),
                Outer = Hole(right),
                Outside = new Outside(OutsideShape.Hexagon, Of(25.4)),
            },
            End("outer", right, 66.675, 41.275, 0),
            Nut("inner nut", left),
            Nut("outer nut", right),
            null);
        return Rod.Make(parts, out Rod? rod) is null ? rod! : throw new InvalidOperationException("The parts do not go together.");
    }

    private static ThreadedEnd End(string id, ThreadDesignation thread, double center, double length, double mostCut) => new()
    {
        Info = new PartInfo(id),
        Thread = thread,
        CenterToTip = Of(center),
        ThreadLength = Of(length),
        MaxCut = Of(mostCut),
    };

    private static TappedHole Hole(ThreadDesignation thread) => new() { Thread = thread, Depth = Of(50.8), Bore = Bore.Closed };

    private static JamNut Nut(string id, ThreadDesignation thread) =>
        new() { Info = new PartInfo(id), Thread = thread, Thickness = Of(9) };
}
