using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>A worked rod with the figures of two independent computations, in millimeters; null where none is stated.</summary>
internal sealed record CheckCase(string Name, RodCase Rod, Verdict Verdict, Span UncutReach)
{
    public double? LeastInnerCut { get; init; }

    public double? MostInnerCut { get; init; }

    public double? Axial { get; init; }

    /// <summary>Insertions in the middle of what the least cut allows.</summary>
    public (double Inner, double? Outer)? LeastCutSetting { get; init; }

    /// <summary>Inner insertions that the least cut allows.</summary>
    public Span? Free { get; init; }

    /// <summary>At the least cut.</summary>
    public (double Inner, double Outer)? Engaged { get; init; }

    /// <summary>At the least cut.</summary>
    public (double Inner, double Outer)? Room { get; init; }

    /// <summary>Change of the axial length by one turn.</summary>
    public double? AxialPerTurn { get; init; }

    /// <summary>The limits in the way of a rod that cannot be built.</summary>
    public IReadOnlyList<(Limit Limit, RodSide? End, AdjustmentPoint At)> InTheWay { get; init; } = [];

    /// <summary>The limit that asks for the cut.</summary>
    public Limit? Presses { get; init; }
}

/// <summary>The worked rods.</summary>
internal static class CheckCases
{
    private const int ThreadsPerInch = 18;

    /// <summary>5/8-18.</summary>
    private static readonly ThreadCase s_fiveEighths = new(true, 0.625, ThreadsPerInch, Hand.Right);

    private static readonly JointCase s_longInner = new()
    {
        Thread = Metric(16, 1.5, Hand.Left),
        CenterToTip = Mm(190),
        ThreadLength = Mm(110),
        MaxCut = Mm(60),
        Nut = Mm(8),
        Depth = Mm(35),
        Bore = Bore.Open,
        Countersink = Mm(0.75),
    };

    private static readonly JointCase s_shortOuter = new()
    {
        Thread = Metric(16, 1.5, Hand.Right),
        CenterToTip = Mm(80),
        ThreadLength = Mm(48),
        Nut = Mm(8),
        Depth = Mm(32),
        Bore = Bore.Open,
        Countersink = Mm(0.75),
    };

    private static readonly JointCase s_bentInner = new()
    {
        Thread = Metric(18, 1.5, Hand.Left),
        CenterToTip = Mm(200),
        ThreadLength = Mm(75),
        Offset = Mm(16),
        Nut = Mm(9),
        Depth = Mm(45),
        Bore = Bore.Closed,
        Countersink = Mm(0.75),
    };

    public static CheckCase Inch { get; } = new(
        "inch parts, closed bores",
        Rod(
            new JointCase
            {
                Thread = s_fiveEighths with { Hand = Hand.Left },
                CenterToTip = Mm(215.9),
                ThreadLength = Mm(88.9),
                MaxCut = Mm(38.1),
                Nut = Mm(9.525),
                Depth = Mm(50.8),
                Bore = Bore.Closed,
                Countersink = Mm(0.762),
            },
            new JointCase
            {
                Thread = s_fiveEighths,
                CenterToTip = Mm(66.675),
                ThreadLength = Mm(44.45),
                Nut = Mm(9.525),
                Depth = Mm(50.8),
                Bore = Bore.Closed,
                Countersink = Mm(0.762),
            },
            177.8,
            365.125,
            3.175),
        Verdict.BuildableAfterCutting,
        new Span(374.650, 408.404))
    {
        LeastInnerCut = 12.700,
        MostInnerCut = 38.100,
        LeastCutSetting = (49.212, 33.338),
        Engaged = (47.039, 31.164),
        Room = (17.463, 1.587),
        AxialPerTurn = 2.8222,
        Presses = Limit.ClosedBore,
    };

    public static CheckCase NoRoomForNuts { get; } = new(
        "no room for the nuts",
        Rod(
            s_longInner with { CenterToTip = Mm(150), ThreadLength = Mm(45), MaxCut = Mm(30), Depth = Mm(50) },
            s_shortOuter with { CenterToTip = Mm(70), ThreadLength = Mm(42), Depth = Mm(50) },
            120,
            262,
            2),
        Verdict.NotBuildable,
        new Span(269.000, 287.500))
    {
        InTheWay =
        [
            (Limit.NutRoom, RodSide.Inner, AdjustmentPoint.Shortest), (Limit.NutRoom, RodSide.Outer, AdjustmentPoint.Shortest),
        ],
    };

    public static CheckCase TipsMeet { get; } = new(
        "tips meet", Rod(s_longInner, s_shortOuter, 90, 262, 3), Verdict.BuildableAfterCutting, new Span(273.000, 307.500))
    {
        LeastInnerCut = 14.000,
        MostInnerCut = 42.500,
        LeastCutSetting = (50.875, 33.125),
        Free = new Span(45.500, 56.250),
        Presses = Limit.Tips,
    };

    public static CheckCase TooLong { get; } = new(
        "too long", Rod(s_longInner, s_shortOuter, 90, 330, 3), Verdict.NotBuildable, new Span(273.000, 307.500))
    {
        InTheWay =
        [
            (Limit.Engagement, RodSide.Inner, AdjustmentPoint.Longest), (Limit.Engagement, RodSide.Outer, AdjustmentPoint.Longest),
        ],
    };

    public static CheckCase Bent { get; } = new(
        "one bent end",
        Rod(
            s_bentInner with { MaxCut = Mm(40) },
            new JointCase
            {
                Thread = s_fiveEighths,
                CenterToTip = Mm(66.675),
                ThreadLength = Mm(41.275),
                Nut = Mm(9.525),
                Depth = Mm(45),
                Bore = Bore.Closed,
                Countersink = Mm(0.7),
            },
            200,
            382,
            5),
        Verdict.BuildableAfterCutting,
        new Span(390.253, 411.812))
    {
        Axial = 381.665,
        LeastInnerCut = 13.265,
        MostInnerCut = 24.832,
        LeastCutSetting = (42.421, 29.324),
    };

    public static CheckCase SameHand { get; } = new(
        "same hand",
        Rod(
            s_longInner with
            {
                Thread = Metric(16, 2, Hand.Right),
                CenterToTip = Mm(150),
                ThreadLength = Mm(60),
                MaxCut = default,
                Depth = Mm(45),
                Bore = Bore.Closed,
                Countersink = Mm(1),
            },
            s_shortOuter with { Depth = Mm(45), Bore = Bore.Closed },
            150,
            310,
            1),
        Verdict.Buildable,
        new Span(295.000, 326.750))
    {
        LeastCutSetting = (36.875, 33.125),
        Free = new Span(33.000, 40.750),
        AxialPerTurn = 0.500,
    };

    public static CheckCase BothBent { get; } = Clocked(0, 460.017, 494.516, 469.983, 40.009);

    public static CheckCase BothBentSquare { get; } = Clocked(90, 460.435, 494.904, 469.574, 40.213);

    public static CheckCase BothBentOpposite { get; } = Clocked(180, 460.851, 495.292, 469.165, 40.417);

    public static CheckCase OpenInnerBore { get; } = new(
        "open inner bore",
        Rod(s_longInner, s_shortOuter with { Depth = Mm(40), Bore = Bore.Closed }, 120, 285, 3),
        Verdict.Buildable,
        new Span(273.000, 337.500))
    {
        LeastCutSetting = (71.875, 33.125),
        Free = new Span(66.500, 77.250),
    };

    public static IReadOnlyList<CheckCase> All { get; } =
    [
        Inch, NoRoomForNuts, TipsMeet, TooLong, Bent, SameHand, BothBent, BothBentSquare, BothBentOpposite, OpenInnerBore,
    ];

    private static CheckCase Clocked(double degrees, double shortest, double longest, double axial, double inner) => new(
        $"both ends bent, clocking {degrees}",
        Rod(
            s_bentInner,
            s_shortOuter with { CenterToTip = Mm(150), ThreadLength = Mm(60), Offset = Mm(12), Depth = Mm(45), Bore = Bore.Closed },
            200,
            470,
            4) with
        {
            ClockingDegrees = degrees,
        },
        Verdict.Buildable,
        new Span(shortest, longest))
    {
        Axial = axial,
        LeastCutSetting = (inner, null),
    };

    private static Dim Mm(double value) => Dim.OfMm(value);

    private static ThreadCase Metric(double diameter, double pitch, Hand hand) => new(false, diameter, pitch, hand);

    private static RodCase Rod(JointCase inner, JointCase outer, double sleeve, double target, double adjust) => new()
    {
        Inner = inner,
        Outer = outer,
        SleeveLength = Mm(sleeve),
        Target = Mm(target),
        Shorter = Mm(adjust),
        Longer = Mm(adjust),
    };
}
