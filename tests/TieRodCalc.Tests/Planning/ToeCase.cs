using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Tests.Steering;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// A random rod on a random wheel, and the move to another toe as the definitions give it: points and spin axis turned by a
/// rotation matrix, a root finder, insertions by what a turn does, each limit from its own line of the table.
/// </summary>
internal sealed record ToeCase(int Index, RodCase Rod, RodPlan Plan, WheelCase Wheel, double Present, double Now, double Want, double Camber)
{
    /// <summary>The toes drawn stay within this, so that the wheel stays within what it was drawn clear for.</summary>
    private const double MostToe = 0.05;

    private const double MostTurn = 0.25;

    public bool BySleeve => Rod.SleeveAdjusts;

    /// <summary>Without a sleeve that adjusts: the end that goes by halves, else the outer one.</summary>
    public RodSide End => Rod.Inner.TurnsByHalves && !Rod.Outer.TurnsByHalves ? RodSide.Inner : RodSide.Outer;

    public double Step => BySleeve ? 0.125 : Rod.StartTurns;

    /// <summary>What a turn that lengthens adds along the axis.</summary>
    public double PerTurn => BySleeve ? Math.Abs(Rod.AxialPerTurn) : Rod.Inner.Thread.PitchMm;

    public CutPair Cuts => new(
        Plan.Solution?.InnerCut?.Recommended.Millimeters ?? 0, Plan.Solution?.OuterCut?.Recommended.Millimeters ?? 0);

    private Triple Spin => Wheel.SpinOf(Now, Camber);

    private double PresentTurns => (Rod.AxialOf(Present) - Rod.AxialOf(Rod.Target.Mm)) / PerTurn;

    public static ToeCase Draw(int index)
    {
        RodCase rod = RandomRods.Draw(index);
        Random random = RandomCounts.For(index + 500_000);
        double Between(double low, double high) => low + (high - low) * random.NextDouble();

        double turns = random.Next(3) == 0 ? Between(-3, 3) : 0;
        double perTurn = rod.SleeveAdjusts ? Math.Abs(rod.AxialPerTurn) : rod.Inner.Thread.PitchMm;
        double present = turns == 0 ? rod.Target.Mm : rod.LengthOf(Math.Max(30, rod.AxialOf(rod.Target.Mm) + turns * perTurn));
        double now = Between(-0.3, 0.3) * MostToe;
        double want = random.Next(4) == 0 ? Between(-1, 1) * MostToe : now + Between(-0.3, 0.3) * MostToe;
        return new ToeCase(index, rod, rod.Plan(), DrawWheel(random, present), present, now, want, Between(-0.07, 0.07));
    }

    public ToeMove Move()
    {
        ToeRod rod = new()
        {
            Rod = Rod.ToRod(),
            Request = Rod.ToRequest(),
            Present = Length.FromMillimeters(Present),
            Steering = Wheel.Geometry,
            Camber = Angle.FromRadians(Camber),
        };
        bool left = Wheel.Side == CarSide.Left;
        WheelToes toes = new WheelToes(Angle.FromDegrees(0.3), Angle.FromDegrees(0.3)).With(Wheel.Side, Angle.FromRadians(Now));
        return ToePlanner.Plan(new ToeRequest
        {
            Now = toes,
            Want = toes.With(Wheel.Side, Angle.FromRadians(Want)),
            Share = left ? ToeShare.LeftOnly : ToeShare.RightOnly,
            Left = left ? rod : null,
            Right = left ? null : rod,
        }).Moves[0];
    }

    public double WantedLength() => Wheel.RodLengthAt(Wheel.TurnForToe(Want, Spin));

    public double TurnsTo(double length) => (Rod.AxialOf(length) - Rod.AxialOf(Present)) / PerTurn;

    public double ToeAfter(double turns) =>
        Wheel.ToeAt(Wheel.TurnFor(Rod.LengthOf(Rod.AxialOf(Present) + turns * PerTurn)), Spin);

    /// <summary>The setting after turns from the present length, from the planned setting on.</summary>
    public Setting SettingAfter(double turns)
    {
        Setting planned = new(Plan.Solution!.Inner.Insertion.Millimeters, Plan.Solution.Outer.Insertion.Millimeters);
        double all = PresentTurns + turns;
        if (BySleeve)
        {
            return LimitTable.Turned(Rod, planned, all * Math.Sign(Rod.AxialPerTurn));
        }

        return End == RodSide.Inner
            ? planned with { Inner = planned.Inner - all * PerTurn }
            : planned with { Outer = planned.Outer - all * PerTurn };
    }

    public IEnumerable<Slack> Slacks(double turns) => LimitTable.Slacks(Rod, Cuts, SettingAfter(turns));

    public TurnDirection DirectionOf(double turns)
    {
        // The sleeve: what a clockwise turn does. An end, from its own ball: clockwise drives a right-hand thread in.
        bool clockwiseLengthens = BySleeve ? Rod.AxialPerTurn > 0 : Rod.Inner.Thread.Hand == Hand.Left;
        return clockwiseLengthens == turns > 0 ? TurnDirection.Clockwise : TurnDirection.Counterclockwise;
    }

    public override string ToString() => $"{Index}: {Rod}\n  present {Present:R} now {Now:R} want {Want:R} camber {Camber:R} {Wheel}";

    /// <summary>A wheel whose joints stand as far apart as the rod is long, clear of dead center over the toes that are drawn.</summary>
    private static WheelCase DrawWheel(Random random, double length)
    {
        while (true)
        {
            WheelCase drawn = WheelCase.Draw(random);
            Triple along = drawn.Inner.Less(drawn.Outer);
            WheelCase wheel = drawn with { Inner = drawn.Outer.Plus(along, length / along.Size) };
            double[] lengths = [.. Enumerable.Range(-5, 11).Select(step => wheel.RodLengthAt(step * MostTurn / 5))];
            double[] steps = [.. lengths.Zip(lengths.Skip(1), (one, next) => next - one)];
            if (steps.All(step => step > 1.5) || steps.All(step => step < -1.5))
            {
                return wheel;
            }
        }
    }
}
