using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Made-up rods whose parts and readings carry tolerances: what is off by how much, and what no tolerance explains.</summary>
public class AsBuiltToleranceTests(MadeRods rods) : IClassFixture<MadeRods>
{
    private const double Tolerance = 2e-6;

    /// <summary>Below the comparison constant, and above it.</summary>
    private const double Hair = 5e-7;
    private const double Seen = 4e-6;

    /// <summary>What is read of an end beside the length.</summary>
    private enum Kept
    {
        ShowingAndCut,
        ShowingAndDepth,
        CutAndDepth,
        All,
        Cut,
    }

    [Fact]
    public void Insertion_and_engagement_are_off_by_what_is_stated()
    {
        Findings findings = new();
        foreach ((LooseRod loose, RodSide side, Kept kept) in EachEnd())
        {
            BuiltReadings read = loose.With(side, end => Only(end, kept));
            BuiltRod built = loose.Check(read);
            EndReadings of = read.At(side);
            double unsure = PlusMinus(of.Cut) + (kept == Kept.Cut
                ? loose.FromLength(read) + loose.Parts - loose.Thread[side]
                    + loose.Joints.Where(joint => joint != side).Sum(joint => PlusMinus(read.At(joint).Showing))
                : loose.Thread[side] + PlusMinus(of.Showing) + (kept == Kept.All ? 0 : PlusMinus(of.Depth)));
            BuiltJoint joint = side == RodSide.Inner ? built.Inner : built.Outer!;
            double s = loose.Built.Setting.Of(side);
            double x = loose.Built.Cut.Of(side);
            double low = Math.Max(0, s - unsure);
            JointCase numbers = loose.Case.Joint(side);
            string what = $"{side} by {kept}";
            findings.Near(loose.Case, $"{what} from", low, joint.InsertionSpan!.Shortest, Tolerance);
            findings.Near(loose.Case, $"{what} to", s + unsure, joint.InsertionSpan.Longest, Tolerance);
            double least = LimitTable.Engaged(numbers, low, x);
            double most = LimitTable.Engaged(numbers, s + unsure, x);
            findings.Near(loose.Case, $"{what} engaged from", least, joint.EngagedSpan!.Shortest, Tolerance);
            findings.Near(loose.Case, $"{what} engaged to", most, joint.EngagedSpan.Longest, Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void What_may_be_missed_within_the_tolerances_is_warned_of()
    {
        Findings findings = new();
        int warned = 0;
        foreach (LooseRod loose in Loose())
        {
            BuiltReadings read = loose.Read;
            BuiltRod built = loose.Check(read);
            double Off(RodSide side) => loose.Thread[side] + PlusMinus(read.At(side).Showing) + PlusMinus(read.At(side).Cut);
            double inner = Off(RodSide.Inner);
            double outer = loose.Built.OneJoint ? 0 : Off(RodSide.Outer);
            double missed = -(
                from one in new[] { -inner, inner }
                from other in new[] { -outer, outer }
                let off = new Setting(loose.Built.Setting.Inner + one, loose.Built.Setting.Outer + other)
                from way in loose.Built.Ways
                from slack in loose.Built.Slacks(loose.Built.Turned(off, way))
                select slack.Left).Min();
            PlanWarning? found = built.Warnings.FirstOrDefault(warning => warning.Code == WarningCode.HoldsOnlyAtNominal);
            if (missed > Tolerance)
            {
                warned++;
                findings.Near(loose.Case, "missed by", missed, found?.Value?.Millimeters ?? double.NaN, Tolerance);
            }
            else if (missed < 0)
            {
                findings.That(loose.Case, $"warned of {found?.Value}", found is null);
            }

            findings.That(
                loose.Case,
                "tolerances stated",
                loose.AnyStated != built.Warnings.Any(warning => warning.Code == WarningCode.NominalTrusted));
        }

        findings.AssertNone();
        Assert.True(warned > rods.All.Count / 50, $"only {warned} may be missed");
    }

    [Fact]
    public void Each_tolerance_alone_is_a_tolerance_that_is_stated()
    {
        MadeRod made = rods.All.First(made => !made.Built.OneJoint);
        BuiltReadings none = made.Readings();
        Measured Loosened(Measured? value) => new(value!.Value.Nominal, UnitsNet.Length.FromMillimeters(0.25));
        BuiltReadings[] stated =
        [
            none with { CenterToCenter = Loosened(none.CenterToCenter) },
            none with { Inner = none.Inner with { Showing = Loosened(none.Inner.Showing) } },
            none with { Outer = none.Outer with { Cut = Loosened(none.Outer.Cut) } },
        ];
        Assert.Contains(made.Check(none).Warnings, warning => warning.Code == WarningCode.NominalTrusted);
        Assert.All(stated, read => Assert.DoesNotContain(made.Check(read).Warnings, warning => warning.Code == WarningCode.NominalTrusted));
        RodParts parts = made.Rod.Parts;
        Rod thicker = RodJob.Made(parts with { Sleeve = parts.Sleeve! with { Length = Loosened(parts.Sleeve.Length) } });
        Assert.DoesNotContain(
            AsBuilt.Check(thicker, made.Request, none).Warnings, warning => warning.Code == WarningCode.NominalTrusted);
    }

    [Fact]
    public void What_was_read_is_kept_as_it_was_read()
    {
        Findings findings = new();
        foreach (LooseRod loose in Loose())
        {
            BuiltReadings wrong = loose.Read with
            {
                CenterToCenter = MadeRod.Of(loose.Read.CenterToCenter!.Value.Nominal.Millimeters + 20, 0.25),
            };
            foreach (BuiltReadings read in new[] { loose.Read, wrong })
            {
                BuiltRod built = loose.Check(read);
                findings.That(loose.Case, $"kept {built.Readings}, read {read}", built.Readings == read);
                findings.Near(loose.Case, "inner", read.Inner.Showing!.Value.Nominal.Millimeters, built.Inner.Showing!.Value, Tolerance);
                if (built.Outer is { } outer)
                {
                    findings.Near(loose.Case, "outer", read.Outer.Showing!.Value.Nominal.Millimeters, outer.Showing!.Value, Tolerance);
                }
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Showing_cut_and_depth_miss_each_other_by_more_than_they_are_good_to()
    {
        Findings findings = new();
        foreach ((LooseRod loose, RodSide side, _) in EachEnd())
        {
            EndReadings read = loose.Read.At(side);
            double mark = loose.Case.Mark.Mm;
            double stated = loose.Thread[side] + PlusMinus(read.Showing) + PlusMinus(read.Cut) + PlusMinus(read.Depth);
            double allowed = loose.Thread[side] + GoodTo(read.Showing, mark / 2) + GoodTo(read.Depth, mark / 2) + GoodTo(read.Cut, mark);
            double depth = loose.Built.Setting.Of(side);
            foreach ((double off, bool contradicts) in Around(allowed))
            {
                Expect(loose, side, read with { Depth = At(read.Depth, depth + off) }, contradicts, off - stated);
                if (depth > off)
                {
                    Expect(loose, side, read with { Depth = At(read.Depth, depth - off) }, contradicts, off - stated);
                }
            }

            // Without a cut that was read, the depth says it: too deep for the uncut thread is a contradiction, less deep a cut, or a
            // contradiction too where the end must not be cut.
            EndReadings uncut = read with { Cut = null };
            bool mayBeCut = loose.Case.Joint(side).MaxCut.Mm > 0;
            double whole = loose.Case.Joint(side).ThreadLength.Mm - read.Showing!.Value.Nominal.Millimeters;
            foreach ((double off, bool contradicts) in Around(allowed - GoodTo(read.Cut, mark)))
            {
                double missedBy = off - stated + PlusMinus(read.Cut);
                Expect(loose, side, uncut with { Depth = At(read.Depth, whole + off) }, contradicts, missedBy);
                if (whole > off)
                {
                    Expect(loose, side, uncut with { Depth = At(read.Depth, whole - off) }, contradicts && !mayBeCut, missedBy);
                }
            }
        }

        findings.AssertNone();

        void Expect(LooseRod loose, RodSide side, EndReadings read, bool contradicts, double missedBy) => ExpectOf(
            findings,
            loose,
            loose.With(side, _ => read) with { CenterToCenter = null },
            (ContradictionKind.End, side),
            contradicts,
            missedBy);
    }

    [Fact]
    public void No_more_than_the_thread_that_is_left_shows_or_is_in()
    {
        Findings findings = new();
        foreach ((LooseRod loose, RodSide side, _) in EachEnd())
        {
            EndReadings read = loose.Read.At(side);
            double mark = loose.Case.Mark.Mm;
            double left = loose.Case.Joint(side).ThreadLength.Mm - read.Cut!.Value.Nominal.Millimeters;
            foreach (bool shows in new[] { false, true })
            {
                Measured? one = shows ? read.Showing : read.Depth;
                double stated = loose.Thread[side] + PlusMinus(one) + PlusMinus(read.Cut);
                double allowed = loose.Thread[side] + GoodTo(one, mark / 2) + GoodTo(read.Cut, mark);
                foreach ((double off, bool contradicts) in Around(allowed))
                {
                    EndReadings over = shows
                        ? read with { Depth = null, Showing = At(one, left + off) }
                        : read with { Showing = null, Depth = At(one, left + off) };
                    BuiltReadings all = loose.With(side, _ => over) with { CenterToCenter = null };
                    ExpectOf(findings, loose, all, (ContradictionKind.Showing, side), contradicts, off - stated);
                }
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_length_is_off_by_more_than_everything_it_follows_from()
    {
        Findings findings = new();
        foreach ((LooseRod loose, int index) in Loose().Select((loose, index) => (loose, index)))
        {
            // By thread showing, or by cut and depth.
            BuiltReadings read = index % 2 == 0
                ? loose.Read
                : loose.Joints.Aggregate(loose.Read, (all, side) => Put(all, side, all.At(side) with { Showing = null }));
            double mark = loose.Case.Mark.Mm;
            foreach (int sign in new[] { -1, 1 })
            {
                foreach (double beyond in new[] { -Seen, -Hair, Hair, Seen })
                {
                    double axial = loose.Built.Axial;
                    double allowed = 0;
                    for (int i = 0; i < 50; i++)
                    {
                        double share = loose.Case.LengthOf(axial) / axial;
                        allowed = loose.Parts + share * GoodTo(read.CenterToCenter, mark / 2)
                            + loose.Joints.Sum(side => Counted(read.At(side)).Sum(value => GoodTo(value, mark / 2)));
                        axial = loose.Built.Axial + sign * (allowed + beyond);
                    }

                    double length = loose.Case.LengthOf(axial);
                    double stated = loose.Parts + length / axial * PlusMinus(read.CenterToCenter)
                        + loose.Joints.Sum(side => Counted(read.At(side)).Sum(PlusMinus));
                    BuiltReadings wrong = read with { CenterToCenter = At(read.CenterToCenter, length) };
                    ExpectOf(findings, loose, wrong, (ContradictionKind.Length, null), beyond == Seen, allowed + beyond - stated);
                }
            }
        }

        findings.AssertNone();

        static Measured?[] Counted(EndReadings read) => read.Showing is null ? [read.Cut, read.Depth] : [read.Showing];
    }

    private static void ExpectOf(
        Findings findings,
        LooseRod loose,
        BuiltReadings read,
        (ContradictionKind Kind, RodSide? End) which,
        bool contradicts,
        double missedBy)
    {
        Contradiction? found = loose.Check(read).Contradictions.FirstOrDefault(each => (each.Kind, each.End) == which);
        findings.That(loose.Case, $"{which} {contradicts}, was {found}", found is not null == contradicts);
        if (contradicts)
        {
            findings.Near(loose.Case, $"{which}", missedBy, found?.MissedBy.Millimeters ?? double.NaN, Tolerance);
        }
    }

    private static (double Off, bool Contradicts)[] Around(double allowed) =>
        [(allowed - Seen, false), (allowed - Hair, false), (allowed + Hair, false), (allowed + Seen, true), (allowed + 1, true)];

    private static double PlusMinus(Measured? reading) => reading?.PlusMinus.Millimeters ?? 0;

    /// <summary>What a reading is good to: what is stated, or else so much.</summary>
    private static double GoodTo(Measured? reading, double unsaid) =>
        reading is null ? 0 : PlusMinus(reading) > 0 ? PlusMinus(reading) : unsaid;

    private static Measured At(Measured? like, double mm) => MadeRod.Of(mm, PlusMinus(like));

    private static EndReadings Only(EndReadings read, Kept kept) => kept switch
    {
        Kept.ShowingAndCut => read with { Depth = null },
        Kept.ShowingAndDepth => read with { Cut = null },
        Kept.CutAndDepth => read with { Showing = null },
        Kept.Cut => read with { Showing = null, Depth = null },
        _ => read,
    };

    private static BuiltReadings Put(BuiltReadings readings, RodSide side, EndReadings end) =>
        side == RodSide.Inner ? readings with { Inner = end } : readings with { Outer = end };

    private IEnumerable<(LooseRod Loose, RodSide Side, Kept Kept)> EachEnd() =>
        from loose in Loose()
        from side in loose.Joints
        select (loose, side, (Kept)loose.Random.Next(5));

    private IEnumerable<LooseRod> Loose() => rods.All.Select((made, index) => new LooseRod(made, RandomCounts.For(900_000 + index)));

    /// <summary>A made-up rod whose threads, centers, sleeve and readings may each be off by something stated, or by nothing.</summary>
    private sealed class LooseRod
    {
        private readonly MadeRod _made;
        private readonly Rod _rod;
        private readonly Dictionary<RodSide, double> _center = [];
        private readonly double _sleeve;

        public LooseRod(MadeRod made, Random random)
        {
            (_made, Random) = (made, random);
            RodParts parts = made.Rod.Parts;
            bool exact = random.Next(8) == 0;
            double Draw() => exact || random.Next(3) == 0 ? 0 : 0.8 * random.NextDouble();
            _sleeve = Draw();
            foreach (RodSide side in made.Joints)
            {
                (Thread[side], _center[side]) = (Draw(), Draw());
            }

            ThreadedEnd Loosened(ThreadedEnd end, RodSide side) => end with
            {
                ThreadLength = At(end.ThreadLength, Thread[side]),
                CenterToTip = At(end.CenterToTip, _center[side]),
            };
            _rod = RodJob.Made(parts with
            {
                Inner = Loosened(parts.Inner, RodSide.Inner),
                Outer = parts.Outer is { } outer ? Loosened(outer, RodSide.Outer) : null,
                Sleeve = parts.Sleeve is { } sleeve ? sleeve with { Length = At(sleeve.Length, _sleeve) } : null,
                Socket = parts.Socket is { } socket ? socket with { CenterToFace = At(socket.CenterToFace, _sleeve) } : null,
            });
            EndReadings Read(RodSide side) => new(
                MadeRod.Of(Built.Showing(side), Draw()),
                MadeRod.Of(Built.Cut.Of(side), Draw()),
                MadeRod.Of(Built.Setting.Of(side), Draw()));
            this.Read = new()
            {
                CenterToCenter = MadeRod.Of(Built.CenterToCenter, Draw()),
                Inner = Read(RodSide.Inner),
                Outer = Built.OneJoint ? default : Read(RodSide.Outer),
            };
        }

        public Random Random { get; }

        public BuiltCase Built => _made.Built;

        public RodCase Case => _made.Case;

        public IEnumerable<RodSide> Joints => _made.Joints;

        /// <summary>All that can be read, the tolerances with it.</summary>
        public BuiltReadings Read { get; }

        /// <summary>What the threads of the ends may be off.</summary>
        public Dictionary<RodSide, double> Thread { get; } = [];

        /// <summary>What the axial length may be off by the parts.</summary>
        public double Parts => _sleeve + Thread.Values.Sum() + _center.Values.Sum();

        public bool AnyStated => Parts + PlusMinus(Read.CenterToCenter)
            + Joints.Select(Read.At).Sum(read => PlusMinus(read.Showing) + PlusMinus(read.Cut)) > 0;

        /// <summary>What the axial length may be off by the length that was read.</summary>
        public double FromLength(BuiltReadings read) => Built.CenterToCenter / Built.Axial * PlusMinus(read.CenterToCenter);

        public BuiltReadings With(RodSide side, Func<EndReadings, EndReadings> change) => Put(Read, side, change(Read.At(side)));

        public BuiltRod Check(BuiltReadings readings) => AsBuilt.Check(_rod, _made.Request, readings);

        private static Measured At(Measured like, double plusMinus) => new(like.Nominal, UnitsNet.Length.FromMillimeters(plusMinus));
    }
}
