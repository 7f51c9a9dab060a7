using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>A made-up rod that is to get another length: what was cut off stays off.</summary>
public class RodRelengthTests(MadeRods rods) : IClassFixture<MadeRods>
{
    private const double Fine = 1e-6;

    /// <summary>Made for 262 mm: planned to be cut by 14 mm and the allowance of 1.5 mm; its uncut parts reach 273 to 307.5 mm.</summary>
    private static RodCase Cut => CheckCases.TipsMeet.Rod;

    [Fact]
    public void Without_a_record_the_planned_cut_is_taken()
    {
        RodRelength answer = Of(Cut, null, 262);
        Assert.Equal(15.5, answer.InnerCut!.Value.Millimeters, Fine);
        Assert.Equal(0, answer.OuterCut!.Value.Millimeters);
        Assert.True(answer.CutsFromPlan);
        Assert.True(answer.Holds);
        Assert.Equal(Verdict.Buildable, answer.AsMade!.Verdict);
        Assert.Equal(Verdict.BuildableAfterCutting, answer.NewParts.Verdict);
        Assert.Equal(262, answer.Wanted.Millimeters);
    }

    [Fact]
    public void A_recorded_cut_goes_before_the_planned_one()
    {
        RodRelength answer = Of(Cut, Record(inner: 20), 262);
        Assert.Equal(20, answer.InnerCut!.Value.Millimeters);
        Assert.Equal(0, answer.OuterCut!.Value.Millimeters);
        Assert.False(answer.CutsFromPlan);
        SamePlan(Trimmed(Cut, 20, 0).ToRod(), answer.AsMade!, 262);
    }

    /// <summary>Recorded although the part does not allow it: it is off all the same.</summary>
    [Fact]
    public void A_recorded_cut_of_an_end_that_must_not_be_cut_is_off()
    {
        RodRelength answer = Of(Cut, Record(inner: 20, outer: 4), 262);
        Assert.Equal(4, answer.OuterCut!.Value.Millimeters);
        SamePlan(Trimmed(Cut, 20, 4).ToRod(), answer.AsMade!, 262);
    }

    [Fact]
    public void An_end_that_must_not_be_cut_is_whole()
    {
        RodRelength answer = Of(CheckCases.SameHand.Rod, null, 312);
        Assert.Equal((0.0, 0.0, false), (answer.InnerCut!.Value.Millimeters, answer.OuterCut!.Value.Millimeters, answer.CutsFromPlan));
        Assert.True(answer.Holds);
        SamePlan(CheckCases.SameHand.Rod.ToRod(), answer.AsMade!, 312);
    }

    /// <summary>With 42.5 mm off the rod reaches 307.5 - 42.5 = 265 mm; new parts need no cut for 280 mm.</summary>
    [Theory]
    [InlineData(262, true)]
    [InlineData(262.001, false)]
    [InlineData(280, false)]
    public void What_is_cut_off_cannot_be_put_back(double wanted, bool holds)
    {
        RodRelength answer = Of(Cut, Record(inner: 42.5), wanted);
        Assert.Equal(holds, answer.Holds);
        Assert.Equal(holds ? Verdict.Buildable : Verdict.NotBuildable, answer.AsMade!.Verdict);
        Assert.NotEqual(Verdict.NotBuildable, answer.NewParts.Verdict);
        Assert.Equal(wanted == 280, answer.NewParts.Verdict == Verdict.Buildable);
    }

    /// <summary>
    /// 247 mm at its shortest: 273 - 247 = 26 mm off in all, 10.5 mm of it further, with the allowance 12 mm; from the ball center
    /// 190 - 15.5 - 12 mm.
    /// </summary>
    [Fact]
    public void A_shorter_length_is_cut_further_from_where_it_is()
    {
        RodRelength answer = Of(Cut, Record(inner: 15.5), 250);
        CutAdvice further = answer.AsMade!.Solution!.InnerCut!;
        Assert.Equal(Verdict.BuildableAfterCutting, answer.AsMade.Verdict);
        Assert.Equal(10.5, further.Least.Millimeters, Fine);
        Assert.Equal(12, further.Recommended.Millimeters, Fine);
        Assert.Equal(162.5, further.MarkFromCenter.Millimeters, Fine);
        Assert.Equal(110 - 27.5, further.ThreadLeft.Millimeters, Fine);
        Assert.Equal(26, answer.NewParts.Solution!.InnerCut!.Least.Millimeters, Fine);
        Assert.True(answer.Holds);
    }

    [Fact]
    public void Cuts_of_a_rod_that_has_no_plan_are_not_known()
    {
        RodCase rod = CheckCases.TooLong.Rod;
        RodRelength unknown = Of(rod, null, 290);
        Assert.Null(unknown.InnerCut);
        Assert.Null(unknown.AsMade);
        Assert.False(unknown.CutsFromPlan);
        Assert.False(unknown.Holds);
        Assert.Equal(Verdict.Buildable, unknown.NewParts.Verdict);
        RodRelength known = Of(rod, Record(inner: 0), 290);
        Assert.Equal(0, known.InnerCut!.Value.Millimeters);
        Assert.True(known.Holds);
    }

    /// <summary>The thread is 110 mm long, one pitch of it lead.</summary>
    [Theory]
    [InlineData(108.4, true)]
    [InlineData(108.5, false)]
    [InlineData(150, false)]
    public void A_cut_that_leaves_no_thread_leaves_no_rod(double cut, bool rod)
    {
        RodRelength answer = Of(Cut, Record(inner: cut), 262);
        Assert.Equal(cut, answer.InnerCut!.Value.Millimeters);
        Assert.Equal(rod, answer.AsMade is not null);
        Assert.False(answer.Holds);
    }

    [Fact]
    public void A_rod_that_nothing_locks_does_not_hold()
    {
        RodRelength answer = Of(CheckCases.SameHand.Rod.WithInner(Bare).WithOuter(Bare), null, 312);
        Assert.NotEqual(Verdict.NotBuildable, answer.AsMade!.Verdict);
        Assert.False(answer.Holds);

        static JointCase Bare(JointCase end) => end with { Nut = null };
    }

    /// <summary>A bend of 16 mm: no rod is as short, its wanted adjustment of 5 mm reserved.</summary>
    [Theory]
    [InlineData(21, false)]
    [InlineData(21.001, true)]
    public void A_length_that_no_rod_of_these_parts_has_is_none(double wanted, bool some) =>
        Assert.Equal(some, RodRelength.Of(CheckCases.Bent.Rod.ToRod(), CheckCases.Bent.Rod.ToRequest(), null, Mm(wanted)) is not null);

    /// <summary>
    /// Rods with a sleeve and with one joint, made as planned, cuts recorded: the plan of another length is that of parts trimmed by hand.
    /// What cut parts can become new ones can.
    /// </summary>
    [Fact]
    public void The_plan_is_that_of_parts_trimmed_by_hand()
    {
        Findings findings = new();
        (int cut, int one, int further, int lost) = (0, 0, 0, 0);
        int index = 0;
        foreach (MadeRod made in rods.All.Where(_ => index++ % 10 == 0 || _.Built.OneJoint))
        {
            double wanted = made.Request.Target.Millimeters + 30 * (RandomCounts.For(7_000_000 + index).NextDouble() - 0.5);
            if (RodRelength.Of(made.Rod, made.Request, made.Readings(), Mm(wanted)) is not { } answer)
            {
                continue;
            }

            CutPair cuts = made.Built.Cut;
            cut += cuts.Inner + cuts.Outer > 0 ? 1 : 0;
            one += made.Built.OneJoint ? 1 : 0;
            RodParts trimmed = made.Rod.Parts with
            {
                Inner = Trimmed(made.Rod.Parts.Inner, cuts.Inner),
                Outer = made.Rod.Parts.Outer is { } outer ? Trimmed(outer, cuts.Outer) : null,
            };
            Assert.Null(Rod.Make(trimmed, out Rod? rod));
            RodPlan expected = RodPlanner.Plan(rod!, made.Request with { Target = Mm(wanted) });
            findings.That(made.Case, $"{answer.AsMade?.Verdict}, not {expected.Verdict}", answer.AsMade?.Verdict == expected.Verdict);
            findings.That(made.Case, "figures", Figures(expected).SequenceEqual(Figures(answer.AsMade!)));
            findings.That(
                made.Case,
                "new parts can be cut so as well",
                expected.Verdict == Verdict.NotBuildable || answer.NewParts.Verdict != Verdict.NotBuildable);
            findings.That(made.Case, "recorded", !answer.CutsFromPlan && answer.InnerCut!.Value.Millimeters == cuts.Inner);
            further += expected.Verdict == Verdict.BuildableAfterCutting ? 1 : 0;
            lost += expected.Verdict == Verdict.NotBuildable && answer.NewParts.Verdict != Verdict.NotBuildable ? 1 : 0;
        }

        findings.AssertNone();
        Assert.True(cut > 0 && one > 0 && further > 0 && lost > 0, $"{cut} cut, {one} with one joint, {further} cut further, {lost} lost");
    }

    /// <summary>Its own length again: the rod as planned, nothing recorded, holds without another cut.</summary>
    [Fact]
    public void Its_own_length_needs_no_further_cut()
    {
        Findings findings = new();
        int index = 0;
        foreach (MadeRod made in rods.All.Where(_ => index++ % 10 == 0))
        {
            RodRelength answer = RodRelength.Of(made.Rod, made.Request, null, made.Request.Target)!;
            findings.That(made.Case, $"{answer.AsMade?.Verdict}", answer.AsMade?.Verdict == Verdict.Buildable);
        }

        findings.AssertNone();
    }

    private static RodRelength Of(RodCase rod, BuiltReadings? built, double wanted) =>
        RodRelength.Of(rod.ToRod(), rod.ToRequest(), built, Mm(wanted))!;

    private static BuiltReadings Record(double inner, double? outer = null) => new()
    {
        Inner = new EndReadings(null, new Measured(Mm(inner)), null),
        Outer = new EndReadings(null, outer is { } cut ? new Measured(Mm(cut)) : null, null),
    };

    private static RodCase Trimmed(RodCase rod, double inner, double outer) =>
        rod.WithInner(end => Trimmed(end, inner)).WithOuter(end => Trimmed(end, outer));

    private static JointCase Trimmed(JointCase end, double by) => end with
    {
        CenterToTip = Dim.OfMm(end.CenterToTip.Mm - by),
        ThreadLength = Dim.OfMm(end.ThreadLength.Mm - by),
        MaxCut = Dim.OfMm(Math.Max(0, end.MaxCut.Mm - by)),
    };

    private static ThreadedEnd Trimmed(ThreadedEnd end, double by) => end with
    {
        CenterToTip = Less(end.CenterToTip, by),
        ThreadLength = Less(end.ThreadLength, by),
        MaxCut = Less(end.MaxCut, by),
    };

    private static Measured Less(Measured from, double by) => new(Mm(Math.Max(0, from.Nominal.Millimeters - by)), from.PlusMinus);

    private static void SamePlan(Rod trimmed, RodPlan plan, double wanted)
    {
        RodPlan expected = RodPlanner.Plan(trimmed, new RodRequest
        {
            Target = Mm(wanted),
            Shorter = Mm(wanted == 312 ? 1 : 3),
            Longer = Mm(wanted == 312 ? 1 : 3),
            Rules = Cut.ToRequest().Rules,
        });
        Assert.Equal(expected.Verdict, plan.Verdict);
        Assert.Equal(Figures(expected), Figures(plan));
    }

    /// <summary>Cuts, settings and what is in the way, to a micrometer.</summary>
    private static IEnumerable<double> Figures(RodPlan plan) => ((double[])
        [
            .. plan.Binding.Select(limit => limit.MissedBy.Millimeters),
            plan.Solution?.InnerCut?.Least.Millimeters ?? -1,
            plan.Solution?.InnerCut?.Most.Millimeters ?? -1,
            plan.Solution?.InnerCut?.Recommended.Millimeters ?? -1,
            plan.Solution?.OuterCut?.Recommended.Millimeters ?? -1,
            plan.Solution?.Inner.Insertion.Millimeters ?? -1,
            plan.Solution?.Outer?.Insertion.Millimeters ?? -1,
        ]).Select(figure => Math.Round(figure, 5) + 0.0);

    private static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);
}
