using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>A made-up rod: its parts, what was cut off them, and how far they are in.</summary>
internal sealed record BuiltCase(RodCase Rod, CutPair Cut, Setting Setting)
{
    /// <summary>Whether the outer end carries the internal thread; the sleeve's length is then from its ball center to the face.</summary>
    public bool OneJoint { get; init; }

    public IEnumerable<RodSide> Joints => OneJoint ? [RodSide.Inner] : [RodSide.Inner, RodSide.Outer];

    public double Axial => OneJoint
        ? Rod.Inner.CenterToTip.Mm - Cut.Inner + Rod.SleeveLength.Mm - Setting.Inner
        : LimitTable.Axial(Rod, Cut, Setting);

    /// <summary>The distance of the ball centers.</summary>
    public double CenterToCenter => Rod.LengthOf(Axial);

    /// <summary>A rod made and set as its plan says.</summary>
    public static BuiltCase Of(RodCase rod, RodSolution plan) => new(
        rod,
        new CutPair(plan.InnerCut?.Recommended.Millimeters ?? 0, plan.OuterCut?.Recommended.Millimeters ?? 0),
        new Setting(plan.Inner.Insertion.Millimeters, plan.Outer!.Insertion.Millimeters));

    /// <summary>Thread outside the face: <c>(t - x) - s</c>.</summary>
    public double Showing(RodSide side) => Rod.Joint(side).ThreadLength.Mm - Cut.Of(side) - Setting.Of(side);

    /// <summary>The insertions of one end over every cut that it may have, its thread showing being what it is.</summary>
    public Span InsertionSpan(RodSide side)
    {
        double uncut = Rod.Joint(side).ThreadLength.Mm - Showing(side);
        return new Span(uncut - Rod.Joint(side).MaxCut.Mm, uncut);
    }

    /// <summary>Engagement over every cut that the end may have, looked at in many places.</summary>
    public Span EngagedSpan(RodSide side)
    {
        const int Places = 201;
        JointCase joint = Rod.Joint(side);
        double[] engaged =
        [
            .. Enumerable.Range(0, Places).Select(place => joint.MaxCut.Mm * place / (Places - 1))
                .Select(x => LimitTable.Engaged(joint, joint.ThreadLength.Mm - x - Showing(side), x)),
        ];
        return new Span(engaged.Min(), engaged.Max());
    }

    /// <summary>How much longer along the axis the rod is turned from where it is: not at all, to its shortest, to its longest.</summary>
    public double[] Ways =>
    [
        0,
        Math.Min(0, Rod.AxialOf(Rod.Target.Mm - Rod.Shorter.Mm) - Axial),
        Math.Max(0, Rod.AxialOf(Rod.Target.Mm + Rod.Longer.Mm) - Axial),
    ];

    /// <summary>Where the sleeve alone takes a setting, or the end of a rod with one joint.</summary>
    public Setting Turned(Setting at, double longer) => this switch
    {
        { OneJoint: true } => at with { Inner = at.Inner - longer },
        { Rod.SleeveAdjusts: true } => LimitTable.Turned(Rod, at, longer / Rod.AxialPerTurn),
        _ => at,
    };

    /// <summary>Of one joint those of the inner end: beyond the thread of a socket, open or closed, the tip may not go.</summary>
    public IEnumerable<Slack> Slacks(Setting setting)
    {
        IEnumerable<Slack> all = LimitTable.Slacks(Rod, Cut, setting);
        return OneJoint
            ? all.Where(slack => slack.End == RodSide.Inner && slack.Limit != Limit.FarThread)
                .Append(new Slack(Limit.ClosedBore, RodSide.Inner, Rod.Inner.Depth.Mm - setting.Inner))
            : all;
    }
}
