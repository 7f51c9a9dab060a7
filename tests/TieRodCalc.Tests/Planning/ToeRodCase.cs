using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// A rod on the car as the tests see it: what is turned, where the insertions stand and what is left to each limit after some turns,
/// straight from the definitions. A rod with one threaded joint is the inner joint of its case alone; its outer end carries the
/// thread, and the length of the case's sleeve is the way from there to the ball center.
/// </summary>
internal sealed record ToeRodCase(RodCase Rod, bool OneJoint)
{
    private const double EighthOfTurn = 0.125;

    private readonly Lazy<RodPlan?> _plan = new(() => OneJoint ? null : Rod.Plan());

    /// <summary>The case with nothing in the place of the second joint, for the plain sums.</summary>
    private readonly RodCase _sums = !OneJoint ? Rod : Rod with
    {
        Outer = Rod.Outer with { CenterToTip = default, Offset = default, Depth = default },
        ClockingDegrees = null,
        Outside = null,
    };

    /// <summary>The rod's length now.</summary>
    public required Dim Present { get; init; }

    public RodPlan? Plan => _plan.Value;

    public bool TurnsSleeve => !OneJoint && Rod.SleeveAdjusts;

    /// <summary>The straight rod end may be turned by halves and is the one to turn; else it is the outer end.</summary>
    public TurnedPart Part => TurnsSleeve ? TurnedPart.Sleeve
        : Rod.Inner.TurnsByHalves && !OuterByHalves ? TurnedPart.InnerEnd
        : TurnedPart.OuterEnd;

    public double Step => TurnsSleeve ? EighthOfTurn : Rod.Inner.TurnsByHalves || OuterByHalves ? 0.5 : 1;

    /// <summary>What one turn adds to the axial length.</summary>
    public double PerTurn => TurnsSleeve ? Math.Abs(Rod.AxialPerTurn) : Rod.Inner.Thread.PitchMm;

    public double Axial => _sums.AxialOf(Present.Mm);

    /// <summary>Whether the cuts, and with them the insertions, are known.</summary>
    public bool SettingKnown => OneJoint ? Rod.Inner.MaxCut.Mm == 0 : Plan!.Solution is not null;

    public CutPair Cuts => Plan?.Solution is { } solution
        ? new(solution.InnerCut?.Recommended.Millimeters ?? 0, solution.OuterCut?.Recommended.Millimeters ?? 0)
        : default;

    public bool HasFlats => TurnsSleeve && Rod.Outside?.Shape == OutsideShape.Hexagon;

    public IEnumerable<RodSide> Joints => OneJoint ? [RodSide.Inner] : [RodSide.Inner, RodSide.Outer];

    private bool OuterByHalves => OneJoint ? Rod.Outer.Joint == JointKind.RodEnd : Rod.Outer.TurnsByHalves;

    public double LengthAt(double turns) => _sums.LengthOf(Axial + turns * PerTurn);

    public double TurnsTo(double length) => (_sums.AxialOf(length) - Axial) / PerTurn;

    /// <summary>
    /// Of the sleeve from the inner end outward, of an end from its own ball: a right-hand end comes out counterclockwise.
    /// </summary>
    public TurnDirection? Direction(double turns)
    {
        bool lengthensClockwise = TurnsSleeve ? Rod.AxialPerTurn > 0 : Rod.Inner.Thread.Hand == Hand.Left;
        return turns == 0 ? null : turns > 0 == lengthensClockwise ? TurnDirection.Clockwise : TurnDirection.Counterclockwise;
    }

    /// <summary>The insertions with so many lengthening turns made from the present length.</summary>
    public Setting At(double turns)
    {
        if (OneJoint)
        {
            // axial = c + b - s, whichever end is turned.
            return new(_sums.Inner.CenterToTip.Mm + _sums.SleeveLength.Mm - Axial - turns * PerTurn, 0);
        }

        RodSolution solution = Plan!.Solution!;
        Setting planned = new(solution.Inner.Insertion.Millimeters, solution.Outer!.Insertion.Millimeters);
        if (TurnsSleeve)
        {
            return LimitTable.Turned(Rod, planned, LimitTable.TurnsTo(Rod, Present.Mm) + turns * Math.Sign(Rod.AxialPerTurn));
        }

        // The end that is turned comes out by all that the rod gets longer.
        double longer = Axial + turns * PerTurn - Rod.AxialOf(Rod.Target.Mm);
        return Part == TurnedPart.InnerEnd
            ? planned with { Inner = planned.Inner - longer }
            : planned with { Outer = planned.Outer - longer };
    }

    /// <summary>What is left to each limit after so many turns.</summary>
    public Slack[] Slacks(double turns) =>
        [.. LimitTable.Slacks(_sums, Cuts, At(turns)).Where(slack => !OneJoint || slack.End == RodSide.Inner)];

    public double Worst(double turns) => Slacks(turns).Min(slack => slack.Left);

    public double RequiredMm(RodSide side) => _sums.RequiredMm(_sums.Joint(side));

    /// <summary>The library's rod on its wheel.</summary>
    public ToeRod OnCar(ToeWheel wheel, double camber, bool inches = false)
    {
        RodCase stated = inches ? Rod.InUnit(true) : Rod;
        Rod made = stated.ToRod();
        return new ToeRod
        {
            Rod = OneJoint ? Socketed(made.Parts, Rod.Outer.Joint) : made,
            Request = stated.ToRequest(),
            Present = (inches ? Present.InUnit(true) : Present).ToLength(),
            Steering = wheel.Geometry,
            Camber = Angle.FromRadians(camber),
        };
    }

    /// <summary>Without the case itself, which findings show on their own.</summary>
    public override string ToString() => $"{(OneJoint ? "one joint" : "sleeve")} present {Present}";

    private static Rod Socketed(RodParts parts, JointKind? joint)
    {
        SocketEnd socket = new()
        {
            Info = parts.Sleeve!.Info,
            CenterToFace = new Measured(parts.Sleeve.Length.Nominal),
            Socket = parts.Sleeve.Inner,
            Joint = joint,
        };
        Assert.Null(TieRodCalc.Rods.Rod.Make(new RodParts(parts.Inner, socket, parts.InnerNut), out Rod? rod));
        return rod!;
    }
}
