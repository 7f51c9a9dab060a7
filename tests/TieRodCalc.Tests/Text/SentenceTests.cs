using System.Text;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Tests.Architecture;
using TieRodCalc.Tests.Planning;
using TieRodCalc.Tests.Steering;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Text;

/// <summary>
/// Every sentence and every way to write a figure, as last accepted in Sentences.txt. Set the environment variable
/// TIERODCALC_UPDATE_DOCS to write it anew.
/// </summary>
public class SentenceTests
{
    private static readonly LengthDisplay[] s_units = Enum.GetValues<LengthDisplay>();
    private static readonly RodSide?[] s_ends = [null, RodSide.Inner, RodSide.Outer];

    [Fact]
    public void Sentences_are_as_accepted()
    {
        StringBuilder text = new();
        foreach ((string part, IEnumerable<string> sentences) in Parts())
        {
            text.Append(part).Append('\n');
            foreach (string sentence in sentences.Distinct())
            {
                text.Append("    ").Append(sentence).Append('\n');
            }
        }

        AcceptedFile.AssertIs(text.ToString(), "tests", "TieRodCalc.Tests", "Text", "Sentences.txt");
    }

    private static IEnumerable<(string Part, IEnumerable<string> Sentences)> Parts() =>
    [
        ("cautions", [.. Cautions.All, Cautions.NotChecked]),
        ("warnings of a plan", Enum.GetValues<WarningCode>().SelectMany(OfPlan)),
        ("limits in the way", Enum.GetValues<Limit>().SelectMany(OfLimit)),
        ("how far a rod adjusts", OfTravel()),
        ("why a rod cannot be built", Reasons()),
        ("remedies", Enum.GetValues<ChangeKind>().SelectMany(OfChange)),
        ("made-up rods", OfBuilt()),
        ("tolerances", OfWorstCase()),
        ("warnings of toe", Enum.GetValues<ToeWarningCode>().SelectMany(OfToe)),
        ("toe", Toes()),
        ("warnings of bump sheets", Enum.GetValues<BumpWarningCode>().SelectMany(OfBump)),
        ("bump sheets", Bumps()),
        ("warnings of threads", Enum.GetValues<ThreadWarningCode>().SelectMany(OfThread)),
        ("threads", Threads()),
        ("threads that do not belong together", Fits()),
        ("lengths", Lengths()),
        ("loads", Loads()),
    ];

    private static IEnumerable<string> OfPlan(WarningCode code)
    {
        PlanWarning warning = new(code, RodSide.Inner, Mm(3.21), Mm(47.9), 1.257, MissingStrength.End);
        PlanWarning other = new(code, null, Mm(0.6), null, 0.849, MissingStrength.Sleeve | MissingStrength.Limits);
        yield return new PlanSentences(LengthDisplay.Inch).Of(warning);
        yield return new PlanSentences(LengthDisplay.Millimeter).Of(other);
        yield return new PlanSentences(LengthDisplay.Millimeter).Of(other with { Ratio = 1, Missing = MissingStrength.Limits });
        yield return new PlanSentences(LengthDisplay.Millimeter, oneJoint: true)
            .Of(warning with { End = RodSide.Outer, Missing = MissingStrength.End | MissingStrength.Sleeve }, bothEnds: true);
    }

    private static IEnumerable<string> OfLimit(Limit limit) =>
        from at in Enum.GetValues<AdjustmentPoint>()
        let end = at == AdjustmentPoint.Longest ? RodSide.Outer : limit == Limit.Tips ? null : (RodSide?)RodSide.Inner
        let sentences = new PlanSentences(LengthDisplay.Inch, oneJoint: at == AdjustmentPoint.Shortest)
        select sentences.Of(new BindingLimit(limit, end, at, Mm(4.4)));

    private static IEnumerable<string> OfTravel() =>
        from limit in new Limit?[] { null, Limit.Tips, Limit.NutRoom }
        from end in s_ends
        select PlanSentences.Of(new Travel(Mm(2), 1, limit, end));

    private static IEnumerable<string> Reasons()
    {
        RodCase drawn = CheckCases.Bent.Rod;
        Rod[] rods =
        [
            drawn.ToRod(), drawn.WithInner(joint => joint with { Nut = null }).WithOuter(joint => joint with { Nut = null }).ToRod(),
            RodJob.Made(new RodJob(drawn with { ClockingDegrees = null }, default, default, true).Parts()),
        ];
        RodPlan none = drawn.Plan() with { Solution = null, Binding = [], MoreCutWouldHelp = false };
        yield return RemedySentences.Reason(rods[0], none with { Warnings = [new(WarningCode.SleeveCannotAdjust)] });
        yield return RemedySentences.Reason(
            rods[0], none with { Warnings = [new(WarningCode.SleeveCannotAdjust)], Solution = drawn.Plan().Solution });
        yield return RemedySentences.Reason(
            rods[0],
            none with { Warnings = [new(WarningCode.NominalTrusted), new(WarningCode.SleeveCannotAdjust)], MoreCutWouldHelp = true });
        foreach (Rod rod in rods)
        {
            foreach (Limit limit in Enum.GetValues<Limit>())
            {
                BindingLimit first = new(limit, limit == Limit.Tips ? null : RodSide.Inner, AdjustmentPoint.Shortest, Mm(1));
                BindingLimit both = first with { End = limit == Limit.Tips ? null : RodSide.Outer };
                BindingLimit last = new(Limit.Tips, null, AdjustmentPoint.Shortest, Mm(1));
                BindingLimit[][] all =
                [
                    [first], [first with { At = AdjustmentPoint.Longest }, both with { At = AdjustmentPoint.Longest }],
                    [both with { At = AdjustmentPoint.Any }, first], [first, both, last],
                    [first, last, new(Limit.Clamp, RodSide.Inner, AdjustmentPoint.Shortest, Mm(1))],
                ];
                foreach (BindingLimit[] binding in all)
                {
                    yield return RemedySentences.Reason(rod, none with { Binding = binding, MoreCutWouldHelp = binding.Length == 1 });
                }
            }
        }
    }

    private static IEnumerable<string> OfChange(ChangeKind kind)
    {
        Rod clamped = CheckCases.Bent.Rod.WithInner(joint => joint with { Nut = null, Clamp = Dim.OfMm(10) })
            .WithOuter(joint => joint with { Nut = null, Clamp = Dim.OfMm(10) }).ToRod();
        Rod free = CheckCases.Bent.Rod.WithInner(joint => joint with { Nut = null, Clamp = null }).ToRod();
        foreach ((Rod rod, RodSide? end, LengthDisplay unit) in new (Rod, RodSide?, LengthDisplay)[]
            {
                (clamped, RodSide.Outer, LengthDisplay.Inch), (free, RodSide.Inner, LengthDisplay.Millimeter),
            })
        {
            RodPlan plan = RodPlanner.Plan(rod, CheckCases.Bent.Rod.ToRequest());
            RodChange change = new(kind, end, Mm(3.21), Mm(47.9));
            yield return new RemedySentences(unit).Of(new Remedy([change], null, rod, CheckCases.Bent.Rod.ToRequest(), plan));
            RodChange second = new(ChangeKind.Cut, RodSide.Inner, Mm(1), Mm(12));
            Remedy two = new([change, second], null, rod, CheckCases.Bent.Rod.ToRequest(), plan);
            yield return $"{new RemedySentences(unit).Of(two)} {RemedySentences.Verdict(two)}";
        }
    }

    private static IEnumerable<string> OfBuilt()
    {
        foreach (Contradiction contradiction in
            from kind in Enum.GetValues<ContradictionKind>()
            from end in s_ends
            select new Contradiction(kind, end, Mm(2.3)))
        {
            yield return new BuiltSentences(LengthDisplay.Inch).Of(contradiction);
        }

        RodCase drawn = CheckCases.Bent.Rod.WithInner(joint => joint with { MaxCut = Dim.OfMm(20) });
        foreach (BuiltReadings readings in new BuiltReadings[]
            {
                new(),
                new() { CenterToCenter = new Measured(drawn.Target.ToLength()) },
                new() { Inner = new EndReadings(new Measured(Mm(20)), null, null) },
                new() { CenterToCenter = new Measured(drawn.Target.ToLength()), Outer = new EndReadings(new Measured(Mm(20)), null, null) },
            })
        {
            BuiltRod built = AsBuilt.Check(drawn.ToRod(), drawn.ToRequest(), readings);
            foreach ((string code, RodSide? end, string sentence) in BuiltSentences.Missing(built))
            {
                yield return $"{code} {end}: {sentence}";
            }
        }
    }

    private static IEnumerable<string> OfWorstCase()
    {
        WorstCase safe = CheckCases.Bent.Rod.Plan().Solution!.WorstCase with
        {
            TolerancesStated = true,
            PlanIsSafe = true,
            Slack = Mm(1),
            InnerCut = null,
            OuterCut = null,
            Dimensions = [],
        };
        WorstCase missed = safe with { PlanIsSafe = false, Slack = Mm(-0.6) };
        ToleranceEffect effect = new(RodDimension.Depth, RodSide.Inner, Mm(0.5), Mm(0.31), null);
        WorstCase[] all =
        [
            safe, safe with { TolerancesStated = false }, safe with { TolerancesStated = false, Slack = null },
            safe with { Slack = null }, missed, missed with { TolerancesStated = false }, missed with { InnerCut = Mm(3) },
            missed with { InnerCut = Mm(3), OuterCut = Mm(4) }, missed with { InnerCut = Length.Zero, OuterCut = Mm(4) },
            missed with { Dimensions = [effect] }, missed with { Dimensions = [effect, effect with { Needed = Mm(0.2) }] },
        ];
        return all.SelectMany(_ => s_units, (worst, unit) => new WorstCaseSentences(unit).Of(worst))
            .Concat(s_units.Select(unit => new WorstCaseSentences(unit).Of(effect)))
            .Append(new WorstCaseSentences(LengthDisplay.Inch).Of(effect with { Needed = Mm(0.2) }));
    }

    private static IEnumerable<string> OfToe(ToeWarningCode code)
    {
        ToeSentences inch = new(LengthDisplay.Inch);
        yield return inch.Of(new ToeWarning(code, CarSide.Left, RodSide.Inner, Mm(3.21)));
        yield return new ToeSentences(LengthDisplay.Millimeter).Of(new ToeWarning(code, CarSide.Right, null, null));
        yield return inch.Of(new ToeWarning(code, null, RodSide.Outer, Mm(3.21)), bothWheels: true);
        yield return inch.Of(new ToeWarning(code));
    }

    private static IEnumerable<string> Toes()
    {
        foreach (TurnedPart part in Enum.GetValues<TurnedPart>())
        {
            yield return ToeSentences.SeenFrom(part);
        }

        foreach (LengthDisplay unit in s_units)
        {
            yield return new ToeSentences(unit).Of(new ToeGauge(GaugePlace.Plates, Mm(450)));
            yield return new ToeSentences(unit).Of(new ToeGauge(GaugePlace.Tire, Mm(640)));
            foreach (double mm in new[] { 0, 1.6, -1.6, 0.004, -0.004, 0.006 })
            {
                yield return $"{ToeFormat.Of(Mm(mm), unit)} | {ToeFormat.LeftOver(Mm(mm), unit)}";
            }
        }

        foreach (double value in new[] { 0, 0.25, -0.25, 0.0004, -0.0004, 0.0006, 1, -2.5, 0.999951, 1.004, 0.125, 3.375, 2 / 3.0 })
        {
            Angle angle = Angle.FromDegrees(value);
            yield return $"{ToeFormat.Of(angle)} | {ToeFormat.Degrees(angle)} | {ToeFormat.LeftOver(angle)} | {ToeFormat.Turns(value)} | "
                + $"{ToeFormat.Flats(value)} | {ToeFormat.Left(value)} | {ToeFormat.Exact(value)} | {ToeFormat.ExactFlats(value)}";
        }
    }

    private static IEnumerable<string> OfBump(BumpWarningCode code) =>
    [
        new BumpSentences(LengthDisplay.Inch).Of(new BumpWarning(code, Mm(1.3), 2)),
        new BumpSentences(LengthDisplay.Millimeter).Of(new BumpWarning(code)),
    ];

    private static IEnumerable<string> Bumps()
    {
        yield return BumpSentences.OrTheInner;
        foreach (LengthDisplay unit in s_units)
        {
            BumpSentences bump = new(unit);
            yield return bump.Of(BumpLimits.Usual, Mm(300));
            foreach (double mm in new[] { 0, 5e-7, 2e-6, 25.4, -12.7, 0.4, -0.4, 0.0004 })
            {
                yield return $"{bump.Travel(Mm(mm))} | {bump.AtGauge(Mm(mm))} | {bump.PerInch(Mm(mm))}";
            }

            BumpChange[] changes = [default, Of(4, 0), Of(-4, 0), Of(0, 12.7), Of(0, -3), Of(4, 12.7), Of(-4, -3)];
            foreach (BumpChange change in changes)
            {
                BumpAdvice advice = BumpCase.Draw(0).Read().Both! with { Change = change, Uncertainty = null };
                BumpAdvice known = advice with { Uncertainty = Of(0.3, 0.7) };
                yield return $"{bump.Task(change)} | {bump.Then(change)} | {bump.Height(advice)} | {bump.Longer(advice)} | "
                    + $"{bump.Height(known)} | {bump.Longer(known)}";
            }

            double[][] ways = [[0.2, -0.1], [-0.2, 0], [0.1, -0.1, 0.1, -0.1, 0.1, 0.1], [0, 0], [0.3], [0.1, -0.1, 0.2]];
            foreach (double[] toes in ways)
            {
                yield return bump.Trend(Points(1, toes));
                yield return bump.Trend([.. Points(-1, toes).Reverse(), .. Points(1, [0.1])]);
            }

            yield return bump.Of(new SwingCheck(RodSide.Inner, Angle.FromDegrees(22), true, null));
            yield return bump.Of(new SwingCheck(RodSide.Inner, Angle.FromDegrees(22), false, null));
            foreach ((double most, double steer) in new[] { (20.0, 0.0), (20, 6), (25, -6), (25, 0) })
            {
                yield return bump.Of(new SwingCheck(
                    RodSide.Outer, Angle.FromDegrees(22), true, new JointSwing(Angle.FromDegrees(most), Mm(-30), Mm(steer))));
            }
        }

        static BumpPoint[] Points(int side, double[] toes) =>
            [.. toes.Select((toe, index) => new BumpPoint(Mm(side * 10 * (index + 1)), Angle.FromDegrees(toe), Mm(toe)))];

        static BumpChange Of(double raised, double longer) => new(Mm(raised), Mm(longer));
    }

    private static IEnumerable<string> OfThread(ThreadWarningCode code) =>
        from thread in new[] { "5/8-18 UNF-2A LH", "M18x1.5" }
        from member in new ThreadGender?[] { null, ThreadGender.External, ThreadGender.Internal }
        let gender = member ?? ThreadGender.External
        let limits = ThreadLimits.Of(Thread(thread) with { ToleranceClass = null }, gender)!
        select new ThreadSentences(ThreadSentences.UnitOf(limits.Thread)).Of(new ThreadWarning(code, limits, member));

    private static IEnumerable<string> Threads()
    {
        yield return ThreadSentences.NotInLoads;
        yield return ThreadSentences.OfSmallerArea;
        yield return ThreadSentences.AboutDrills;
        foreach (double ratio in new[] { 0.99, 1, 1.01 })
        {
            yield return ThreadSentences.OfRatio(ratio);
        }

        string[] names = ["5/8-18 UNF", "5/8-18", "5/8-18 UN", "5/8-17 UNS", "5/8-17", "M18x1.5", "M18x1.3", "M18", "0.6-18"];
        foreach (string name in names)
        {
            ThreadDesignation thread = Thread(name);
            yield return $"{name}: {ThreadSentences.OfSeries(thread)}; {ThreadText.Format(thread)}; "
                + ThreadSentences.OfNarrowOutside(thread);
        }

        foreach ((string name, string? toleranceClass, ThreadGender gender) in new[]
            {
                ("M3x0.2", null, ThreadGender.Internal), ("M3x0.25", "6H", ThreadGender.External), ("M18x1.5", "3H", ThreadGender.Internal),
                ("M18x1.5", "9g", ThreadGender.External), ("M18x1.5", "2h", ThreadGender.External), ("M3x0.2", "8H", ThreadGender.Internal),
            })
        {
            yield return ThreadSentences.OfMissingClass(Thread(name) with { ToleranceClass = toleranceClass }, gender);
        }

        foreach (RodCase rod in new[] { CheckCases.Bent.Rod, Strong() })
        {
            RequiredEngagement engagement = rod.Plan().InnerRequired;
            yield return $"{engagement.GovernedBy}: {ThreadSentences.OfGoverning(engagement)}";
        }

        static RodCase Strong() => CheckCases.Bent.Rod.WithInner(joint => joint with { TensileMpa = 800 }) with { SleeveTensileMpa = 500 };
    }

    private static IEnumerable<string> Fits()
    {
        yield return FitSentences.HowTurnsAreCounted;
        yield return FitSentences.NeverForce;
        yield return FitSentences.NoLookAlike;
        foreach (FitOutcome outcome in Enum.GetValues<FitOutcome>())
        {
            yield return FitSentences.GroupHeadline(outcome);
        }

        foreach (int difference in Enumerable.Range(0, 16))
        {
            yield return FitSentences.OfDifference((ThreadDifference)difference);
        }

        foreach ((string male, string female) in new[]
            {
                ("5/8-18 UNF", "5/8-18 UNF"), ("5/8-18 UNF LH", "5/8-18 UNF"), ("M16x1.5", "5/8-18 UNF"), ("5/8-18 UNF", "M16x1.5"),
                ("5/8-11 UNC", "5/8-18 UNF"), ("M18x1.5", "5/8-18 UNF"), ("M14x1.5", "5/8-18 UNF"), ("M15x1.5", "5/8-18 UNF"),
                ("5/8-18 UNF", "11/16-24 UNEF"), ("9/16-18 UNF", "5/8-18 UNF"), ("M16x1.5", "M16x2"), ("M16x1.5", "5/8-18 UNF LH"),
                ("1/2-20 UNF", "M13x1.25"), ("M12x1.25", "1/2-20 UNF"), ("7/16-20 UNF", "M12x1.25"), ("M18x1.5", "M18x1.6"),
            })
        {
            ThreadFit fit = ThreadFit.Of(Thread(male), Thread(female))!;
            foreach (LengthDisplay unit in s_units)
            {
                yield return $"{male} into {female}: {FitSentences.Headline(fit)}, {FitSentences.CountsTurns(fit)} | "
                    + $"{new FitSentences(unit).Short(fit)} | {new FitSentences(unit).Of(Thread(male), Thread(female), fit)}";
            }
        }

        ThreadFit made = new(FitOutcome.StartsAndBinds, 1, 2, Mm(0.1), Mm(0.2));
        foreach (ThreadFit fit in new[]
            {
                made, made with { LeastTurns = null, MostTurns = 2.34 }, made with { LeastTurns = 1.26, MostTurns = null }, made with { LeastTurns = null, MostTurns = null },
                made with { LeastTurns = 0.09 }, made with { LeastTurns = 0.1 },
                made with { LeastTurns = 1.2999999, MostTurns = 2.30000001 },
                made with { Outcome = FitOutcome.GoesInLoose }, made with { Outcome = FitOutcome.GoesInLoose, MostOverlap = Length.Zero },
                made with { Outcome = FitOutcome.GoesInLoose, MostOverlap = Mm(0.0001) },
            })
        {
            yield return $"{new FitSentences(LengthDisplay.Inch).Short(fit)}, {FitSentences.CountsTurns(fit)}, "
                + FitSentences.Headline(fit);
        }
    }

    private static IEnumerable<string> Lengths() =>
        from mm in new[] { 0, 25.4, 9.525, 9.6, -9.6, 0.004, 0.006, 1234.5678, 12.7 / 64, 25.4 / 128, 3 * 25.4 / 64, 24.9 }
        from unit in s_units
        from rounding in Enum.GetValues<LengthRounding>()
        let length = Mm(mm)
        select $"{LengthFormat.Decimal(length, unit, rounding)} | {LengthFormat.Fraction(length, rounding)} | "
            + $"{LengthFormat.Both(length, unit, rounding)} | {LengthFormat.Fine(length, unit, rounding)} | "
            + LengthFormat.FineBoth(length, unit, rounding);

    private static IEnumerable<string> Loads() =>
        from newtons in new[] { 0, 4.44822161526, 44.4822161526, 999.4, 999.6, 12_345, 98_765, 1_234_567 }
        from unit in s_units
        from rounding in Enum.GetValues<LengthRounding>()
        select $"{LoadFormat.Of(Force.FromNewtons(newtons), unit, rounding)} | "
            + LoadFormat.Of(Pressure.FromMegapascals(newtons / 100), unit, rounding);

    private static ThreadDesignation Thread(string text) => ThreadText.Parse(text).Value!;

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
