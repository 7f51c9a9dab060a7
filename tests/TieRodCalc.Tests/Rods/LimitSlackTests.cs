using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Rods;

/// <summary>
/// The smallest slack of a setting, each limit missed by itself. All figures are quarters of a millimeter, which doubles hold
/// exactly.
/// </summary>
public class LimitSlackTests
{
    private const double Insertion = 40;
    private const double Cut = 10;
    private const double Missed = -0.25;

    private static readonly JointDimensions s_joint = new()
    {
        CenterToTip = 200,
        ThreadLength = 110,
        Lead = 1.5,
        Pitch = 1.5,
        Hand = 1,
        Depth = 50,
        Mouth = 0.75,
        ClosedBore = true,
        Nut = 8,
        Required = 24,
        MostCut = 20,
    };

    private static readonly RodDimensions s_rod = new() { Inner = s_joint, Outer = s_joint, Sleeve = 150, TipGap = 3, Offset = 0 };

    /// <summary>What one joint is changed to so that one limit alone is missed by a quarter of a millimeter.</summary>
    private static readonly Dictionary<string, Func<JointDimensions, JointDimensions>> s_missed = new()
    {
        ["engagement at this insertion"] = joint => joint with { Required = 38 },
        ["engagement at any insertion"] = joint => joint with { Depth = 24.5, ClosedBore = false },
        ["witness"] = joint => joint with { Witness = 38.75 },
        ["clamp"] = joint => joint with { Clamp = 38.75 },
        ["nut room"] = joint => joint with { Nut = 60.25 },
        ["closed bore"] = joint => joint with { Depth = 39.75 },
        ["cut"] = joint => joint with { MostCut = 9.75 },
    };

    public static TheoryData<string, RodSide> Limits
    {
        get
        {
            TheoryData<string, RodSide> data = [];
            foreach (string limit in s_missed.Keys)
            {
                data.Add(limit, RodSide.Inner);
                data.Add(limit, RodSide.Outer);
            }

            return data;
        }
    }

    [Fact]
    public void Where_nothing_is_missed_the_nearest_limit_counts()
    {
        // The closed bores are 10 mm away, and so are both limits of the cut.
        Assert.Equal(10, Worst(s_rod));
        Assert.Equal(9.75, LimitSlack.Worst(s_rod, Insertion + 0.25, Insertion, Cut, Cut));
        Assert.Equal(9.75, LimitSlack.Worst(s_rod, Insertion, Insertion + 0.25, Cut, Cut));
    }

    [Theory]
    [MemberData(nameof(Limits))]
    public void A_limit_of_one_end_is_missed_by_itself(string limit, RodSide side)
    {
        JointDimensions joint = s_missed[limit](s_joint);
        Assert.Equal(Missed, Worst(side == RodSide.Inner ? s_rod with { Inner = joint } : s_rod with { Outer = joint }));
    }

    [Theory]
    [InlineData(RodSide.Inner)]
    [InlineData(RodSide.Outer)]
    public void The_far_thread_is_missed_by_itself_where_the_bore_is_open(RodSide side)
    {
        // 39.75 mm of sleeve before the thread of the other end begins; a closed bore would end at 50 mm.
        JointDimensions open = s_joint with { ClosedBore = false };
        RodDimensions shorter = s_rod with { Sleeve = 89.75 };
        Assert.Equal(Missed, Worst(side == RodSide.Inner ? shorter with { Inner = open } : shorter with { Outer = open }));
        Assert.True(Worst(shorter) > 0);
    }

    [Fact]
    public void The_tips_are_missed_by_themselves()
    {
        Assert.Equal(Missed, Worst(s_rod with { TipGap = 70.25 }));
        Assert.Equal(Missed, Worst(s_rod with { Sleeve = 82.75 }));
    }

    [Theory]
    [InlineData(Missed, Cut)]
    [InlineData(Cut, Missed)]
    public void A_cut_below_zero_is_none(double inner, double outer) =>
        Assert.Equal(Missed, LimitSlack.Worst(s_rod, Insertion, Insertion, inner, outer));

    private static double Worst(in RodDimensions rod) => LimitSlack.Worst(rod, Insertion, Insertion, Cut, Cut);
}
