using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>One wheel and its rod, the toe that was measured, and the turns that give the wanted toe; angles in radians.</summary>
internal sealed record ToeCase(ToeRodCase Rod, ToeWheel Wheel, double Now, double Camber, double Turns)
{
    /// <summary>The turn of the upright from where the geometry states it to the present length.</summary>
    private double TurnNow { get; } = Wheel.TurnFor(Rod.Present.Mm);

    public double Want => ToeAt(Turns);

    public double ToeAt(double turns) => turns == 0
        ? Now
        : Wheel.ToeAfter(Now, Camber, Wheel.TurnFor(Rod.LengthAt(turns)) - TurnNow);

    /// <summary>The same rod at another length, with another toe, where other turns are wanted.</summary>
    public ToeCase At(double present, double now, double turns) =>
        new(new ToeRodCase(Rod.Rod, Rod.OneJoint) { Present = Dim.OfMm(present) }, Wheel, now, Camber, turns);

    /// <summary>The same on the other side of the car.</summary>
    public ToeCase Mirrored() => new(Rod, Wheel.Mirrored(), Now, Camber, Turns);

    /// <summary>
    /// What the library says of this wheel alone, the other one standing straight ahead; stated in inches and degrees, or as it is drawn
    /// and in radians.
    /// </summary>
    public ToeMove Move(bool inches = false)
    {
        ToeRod rod = Rod.OnCar(Wheel, Camber, inches);
        bool left = Wheel.Side == CarSide.Left;
        return ToePlanner.Plan(new ToeRequest
        {
            Now = default(WheelToes).With(Wheel.Side, Stated(Now)),
            Want = default(WheelToes).With(Wheel.Side, Stated(Want)),
            Share = left ? ToeShare.LeftOnly : ToeShare.RightOnly,
            Left = left ? rod : null,
            Right = left ? null : rod,
        }).Moves.Single();

        Angle Stated(double radians) => inches ? Angle.FromDegrees(radians * 180 / Math.PI) : Angle.FromRadians(radians);
    }

    public override string ToString() => FormattableString.Invariant(
        $"{Wheel} toe now {Now:R} camber {Camber:R} wanted turns {Turns:R} {Rod}");
}

/// <summary>
/// Draws random rods on random wheels, the left wheel for every even index and the right one for every odd index: some at the planned
/// length, some moved from it, some past a limit or a whole number of steps from one; and toes from no change to well past the limits.
/// </summary>
internal static class RandomToes
{
    private static readonly Lazy<IReadOnlyList<ToeCase>> s_all = new(DrawAll);

    public static IReadOnlyList<ToeCase> All => s_all.Value;

    private static ToeCase[] DrawAll()
    {
        ToeCase[] all = new ToeCase[RandomCounts.Rods];
        Parallel.For(0, all.Length, index => all[index] = new Drawing(index).Case());
        return all;
    }

    private sealed class Drawing(int index)
    {
        private const double MostToe = 0.05;
        private const double MostCamber = 0.07;

        // The rods of the other tests take the sources of the indices from zero up.
        private readonly Random _random = RandomCounts.For(-1 - index);

        public ToeCase Case()
        {
            RodCase drawn = RandomRods.Draw(index);
            ToeRodCase rod = Chance(0.15) ? OneJoint(drawn) : Sleeved(drawn);
            CarSide side = index % 2 == 0 ? CarSide.Left : CarSide.Right;
            while (true)
            {
                ToeWheel wheel = ToeWheel.Draw(_random, side, rod.Present.Mm + (Chance(0.5) ? 0 : Between(-3, 3)));
                double turns = Turns(rod);

                // Some steps more than what is wanted must be in reach as well: rounding up, and one step beyond a limit.
                double[] asked = [-2, 2, turns - 1.5, turns + 1.5];
                if (asked.All(some => rod.Axial + some * rod.PerTurn > 5 && wheel.Reaches(rod.LengthAt(some))))
                {
                    return new(rod, wheel, Between(-MostToe, MostToe), Chance(0.3) ? 0 : Between(-MostCamber, MostCamber), turns);
                }
            }
        }

        private ToeRodCase OneJoint(RodCase drawn)
        {
            JointCase inner = drawn.Inner with { MaxCut = Chance(0.2) ? drawn.Inner.MaxCut : default, Bore = Bore.Closed };
            JointCase none = drawn.Outer with { Depth = Dim.OfMm(4), Bore = Bore.Closed, Witness = null, Clamp = null, Countersink = null };
            Dim center = Dim.OfMm(inner.Depth.Mm + 4 + Between(0, 30));
            RodCase rod = drawn with { Inner = inner, Outer = none, SleeveLength = center };
            double low = inner.LeadMm + inner.CountersinkMm + rod.RequiredMm(inner);
            double high = Math.Min(inner.ThreadLength.Mm - inner.NutMm, inner.Depth.Mm);
            double axial = inner.CenterToTip.Mm + center.Mm - (low + Between(-0.3, 1.3) * (high - low));
            return new ToeRodCase(rod, true) { Present = Dim.OfMm(Math.Sqrt(axial * axial + inner.Offset.Mm * inner.Offset.Mm)) };
        }

        private ToeRodCase Sleeved(RodCase drawn)
        {
            ToeRodCase planned = new(drawn, false) { Present = drawn.Target };
            double moved = _random.Next(10) switch
            {
                < 4 => 0,
                < 8 => Between(-1.3, 1.3),
                8 => -1,
                _ => 1,
            };
            double turns = moved * Travel(planned, moved > 0);
            if (Math.Abs(moved) == 1)
            {
                turns -= moved * planned.Step * _random.Next(4);
            }

            double axial = Math.Max(40, planned.Axial + turns * planned.PerTurn);
            return moved == 0 ? planned : new ToeRodCase(drawn, false) { Present = Dim.OfMm(drawn.LengthOf(axial)) };
        }

        /// <summary>From nothing, and what rounds to nothing, to beyond the limits.</summary>
        private double Turns(ToeRodCase rod) => _random.Next(10) switch
        {
            0 => 0,
            1 => Between(-0.6, 0.6) * rod.Step,
            2 => rod.Step * _random.Next(-8, 9),
            < 6 => Between(-2, 2),
            _ => Chance(0.5) ? -Between(0, 1.4) * Travel(rod, false) : Between(0, 1.4) * Travel(rod, true),
        };

        /// <summary>Turns until the first limit is met, at least two; where the setting is not known, three.</summary>
        private static double Travel(ToeRodCase rod, bool longer)
        {
            if (!rod.SettingKnown)
            {
                return 3;
            }

            IEnumerable<double> met = rod.Slacks(0)
                .Zip(rod.Slacks(longer ? 1 : -1), (now, then) => now.Left / (now.Left - then.Left))
                .Where(turns => turns > 0 && double.IsFinite(turns));
            return met.DefaultIfEmpty(3).Min() is var turns && turns * rod.PerTurn > 40 ? 40 / rod.PerTurn : Math.Max(turns, 0.1);
        }

        private bool Chance(double of) => _random.NextDouble() < of;

        private double Between(double low, double high) => low + (high - low) * _random.NextDouble();
    }
}
