using TieRodCalc.Parts;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// Draws rods that a shop could meet: half of them stated in sixty-fourths of an inch or half millimeters, where limits
/// often meet exactly, half of them continuous. The ranges are invented, and wide enough that every limit gets in the way.
/// </summary>
internal static class RandomRods
{
    private static readonly (bool Unified, double Diameter, double Pitch)[] s_threads =
    [
        (true, 0.5, 20), (true, 0.5625, 18), (true, 0.625, 18), (true, 0.6875, 18), (true, 0.75, 16),
        (false, 14, 1.5), (false, 16, 1.5), (false, 16, 2), (false, 18, 1.5), (false, 20, 1.5),
    ];

    public static RodCase Draw(int index) => new Drawing(RandomCounts.For(index)).Rod();

    /// <summary>How the dimensions of one rod are rounded.</summary>
    private enum Grid
    {
        None,
        HalfMillimeter,
        SixtyFourth,
    }

    private sealed class Drawing(Random random)
    {
        private readonly Grid _grid = Pick(random, Grid.None, Grid.None, Grid.HalfMillimeter, Grid.SixtyFourth);

        public RodCase Rod()
        {
            Hand innerHand = Hands();
            Hand outerHand = Chance(0.75) ? (innerHand == Hand.Left ? Hand.Right : Hand.Left) : innerHand;
            ThreadCase innerThread = Thread(innerHand);
            ThreadCase outerThread = Chance(0.35) ? innerThread with { Hand = outerHand } : Thread(outerHand);
            JointCase inner = Joint(innerThread, 110, 250);
            JointCase outer = Joint(outerThread, 55, 150);
            double depths = inner.Depth.Mm + outer.Depth.Mm;
            Dim sleeve = Chance(0.15) ? Sum(inner.Depth, outer.Depth) : Up(depths + Between(0, 90));
            bool clocked = inner.Offset.Mm > 0 && outer.Offset.Mm > 0;
            RodCase rod = new()
            {
                Inner = inner,
                Outer = outer,
                SleeveLength = sleeve,
                SleeveKind = Pick<MaterialKind?>(
                    random, null, MaterialKind.Steel, MaterialKind.Steel, MaterialKind.Aluminum, MaterialKind.Aluminum, MaterialKind.Other),
                Outside = Outside(Math.Max(innerThread.DiameterMm, outerThread.DiameterMm)),
                ClockingDegrees = clocked ? Math.Round(Between(0, 180)) : null,
                Target = default,
                Shorter = default,
                Longer = default,
                TipGap = Pick(random, Dim.OfMm(3), Dim.OfMm(3), Dim.OfMm(0), On(Between(0, 12))),
                Engagement = Rule(),
                SleeveTensileMpa = Chance(0.4) ? Between(300, 1100) : null,
                LoadNewtons = Chance(0.5) ? Between(2000, 40000) : null,
                Mark = Chance(0.5) ? Dim.OfMm(0.5) : Dim.OfInches(1.0 / 32),
                Allowance = Chance(0.5) ? Dim.OfMm(1.5) : Dim.OfInches(1.0 / 16),
            };
            return Wished(rod);
        }

        private static T Pick<T>(Random random, params T[] from) => from[random.Next(from.Length)];

        /// <summary>A target that a setting near the limits gives, and an adjustment in proportion to what a turn does.</summary>
        private RodCase Wished(RodCase rod)
        {
            CutPair cut = new(Cut(rod.Inner), Cut(rod.Outer));
            Setting setting = new(Insertion(rod, rod.Inner, rod.Outer, cut.Inner), Insertion(rod, rod.Outer, rod.Inner, cut.Outer));
            double axial = Math.Max(40, LimitTable.Axial(rod, cut, setting));
            double turns = Pick(random, 0, 0.5, 1, 2, 3);
            double adjust = rod.SleeveAdjusts ? Math.Abs(rod.AxialPerTurn) * turns : Chance(0.5) ? Between(0.5, 3) : 0;
            return rod with
            {
                Target = On(rod.LengthOf(axial)),
                Shorter = On(Chance(0.25) ? Between(0, 1.5) * adjust : adjust),
                Longer = On(Chance(0.25) ? Between(0, 1.5) * adjust : adjust),
            };
        }

        private double Cut(JointCase joint) => Chance(0.25) ? 0 : Between(0, 1.1) * joint.MaxCut.Mm;

        private double Insertion(RodCase rod, JointCase joint, JointCase other, double cut)
        {
            double low = joint.LeadMm
                + Math.Max(joint.CountersinkMm + rod.RequiredMm(joint), Math.Max(joint.Witness?.Mm ?? 0, joint.Clamp?.Mm ?? 0));
            double high = Math.Min(
                joint.ThreadLength.Mm - cut - joint.NutMm,
                joint.Bore == Bore.Closed ? joint.Depth.Mm : rod.SleeveLength.Mm - other.Depth.Mm);
            return low + Between(cut > 0 ? 0.5 : -0.1, 1.05) * (high - low);
        }

        private JointCase Joint(ThreadCase thread, double shortest, double longest)
        {
            Dim center = On(Between(shortest, longest));
            Dim threadLength = On(Math.Min(Between(30, 110), center.Mm - 4));
            Dim depth = On(Between(26, 62));
            bool cuttable = Chance(0.7);
            bool clamped = Chance(0.12);
            return new JointCase
            {
                Thread = thread,
                CenterToTip = center,
                ThreadLength = threadLength,
                Lead = Chance(0.5) ? null : On(Between(1, 3)),
                Offset = Chance(0.25) ? On(Between(6, 22)) : default,
                MaxCut = cuttable ? On(Math.Min(Between(3, 55), center.Mm - 10)) : default,
                Nut = clamped || Chance(0.1) ? null : On(Between(5, 12)),
                Depth = depth,
                Bore = Chance(0.5) ? Bore.Closed : Bore.Open,
                Countersink = Chance(0.5) ? null : On(Between(0.3, 2)),
                Witness = Chance(0.15) ? On(Between(0.5, 0.95) * depth.Mm) : null,
                Clamp = clamped ? On(Between(0.4, 0.95) * depth.Mm) : null,
                Joint = Pick<JointKind?>(random, null, JointKind.TaperedStud, JointKind.RodEnd),
                TensileMpa = Chance(0.6) ? Between(350, 1300) : null,
            };
        }

        /// <summary>Larger than both threads, or unsaid.</summary>
        private OutsideCase? Outside(double thread)
        {
            Dim across = Up(thread + Between(2, 9));
            OutsideShape? shape = Pick<OutsideShape?>(random, null, OutsideShape.Round, OutsideShape.Hexagon, OutsideShape.Hexagon);
            return shape is { } said ? new OutsideCase(said, across) : null;
        }

        private EngagementCase? Rule() => random.Next(4) switch
        {
            0 => new EngagementCase(Math.Round(Between(0.8, 2), 1), null),
            1 => new EngagementCase(null, On(Between(12, 34))),
            _ => null,
        };

        private ThreadCase Thread(Hand hand)
        {
            (bool unified, double diameter, double pitch) = s_threads[random.Next(s_threads.Length)];
            return new ThreadCase(unified, diameter, pitch, hand);
        }

        private Hand Hands() => Chance(0.5) ? Hand.Left : Hand.Right;

        private bool Chance(double of) => random.NextDouble() < of;

        private double Between(double low, double high) => low + (high - low) * random.NextDouble();

        private Dim On(double mm) => _grid switch
        {
            Grid.HalfMillimeter => Dim.OfMm(Math.Round(mm * 2) / 2),
            Grid.SixtyFourth => Dim.OfInches(Math.Round(Dim.OfMm(mm).InUnit(true).Value * 64) / 64),
            _ => Dim.OfMm(mm),
        };

        private Dim Up(double mm) => On(mm) is { } rounded && rounded.Mm >= mm ? rounded : On(mm + 0.5);

        private static Dim Sum(Dim one, Dim other) => new(one.Value + other.Value, one.InInches);
    }
}
