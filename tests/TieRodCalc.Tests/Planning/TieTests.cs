using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Which of two that come to the same is named: always the same one, and only within the comparison constant.</summary>
public class TieTests
{
    /// <summary>Below the comparison constant, and well above it.</summary>
    private const double Hair = 5e-7;
    private const double Seen = 1e-4;

    [Theory]
    [InlineData(0, Limit.NutRoom)]
    [InlineData(Hair, Limit.NutRoom)]
    [InlineData(-Seen, Limit.NutRoom)]
    [InlineData(Seen, Limit.ClosedBore)]
    public void A_closed_bore_and_nut_room_met_together_are_called_nut_room(double moreThread, Limit expected)
    {
        // 48 mm of thread less a nut of 8 mm is the 40 mm of the bore.
        Travel shorter = Planned(CaseVariants.Twin
            .WithInner(joint => joint with { ThreadLength = Dim.OfMm(48 + moreThread) })
            .WithOuter(joint => joint with { ThreadLength = Dim.OfMm(48 + moreThread) })).Shorter;
        Assert.Equal((expected, RodSide.Inner), (shorter.EndsAt, shorter.End));
    }

    [Theory]
    [InlineData(0, RodSide.Inner)]
    [InlineData(Hair, RodSide.Inner)]
    [InlineData(-Seen, RodSide.Inner)]
    [InlineData(Seen, RodSide.Outer)]
    public void Inner_and_outer_met_together_are_called_inner(double shallower, RodSide expected)
    {
        // The setting is the middle of what engagement leaves, so that the outer bore alone decides which end is first.
        Travel shorter = Planned(CaseVariants.Twin.WithOuter(joint => joint with { Depth = Dim.OfMm(40 - shallower) })).Shorter;
        Assert.Equal((Limit.ClosedBore, expected), (shorter.EndsAt, shorter.End));
        Assert.Equal(16 - 2 * Math.Max(0, shallower), shorter.Length.Millimeters, 1e-9);
    }

    [Fact]
    public void Both_ends_running_out_together_are_called_inner()
    {
        Travel longer = Planned(CaseVariants.Twin).Longer;
        Assert.Equal((Limit.Engagement, RodSide.Inner), (longer.EndsAt, longer.End));
        Assert.Equal(11.5, longer.Length.Millimeters, 1e-9);
        Assert.Equal(11.5 / 3, longer.Turns, 1e-9);
    }

    [Theory]
    [InlineData(0, Limit.ClosedBore)]
    [InlineData(Hair, Limit.ClosedBore)]
    [InlineData(Seen, Limit.Tips)]
    public void The_inner_end_and_the_tips_met_together_are_called_the_inner_end(double wider, Limit expected)
    {
        // 120 mm of sleeve less two bores of 40 mm leaves a gap of 40 mm.
        Travel shorter = Planned(CaseVariants.Twin with { TipGap = Dim.OfMm(40 + wider) }).Shorter;
        Assert.Equal((expected, expected == Limit.Tips ? null : (RodSide?)RodSide.Inner), (shorter.EndsAt, shorter.End));
    }

    [Theory]
    [InlineData(0.0, null, Limit.Engagement)]
    [InlineData(Hair, null, Limit.Engagement)]
    [InlineData(Seen, null, Limit.Witness)]
    [InlineData(null, 0.0, Limit.Engagement)]
    [InlineData(null, Hair, Limit.Engagement)]
    [InlineData(null, Seen, Limit.Clamp)]
    [InlineData(Seen, Seen, Limit.Witness)]
    [InlineData(Seen, 2 * Seen, Limit.Clamp)]
    public void Engagement_witness_and_clamp_met_together_are_called_by_the_first(double? witness, double? clamp, Limit expected)
    {
        // Engagement asks for 0.75 mm of countersink and 24 mm of thread beyond the lead.
        RodCase rod = CaseVariants.Twin.WithInner(joint => joint with { Witness = Beyond(witness), Clamp = Beyond(clamp) });
        Travel longer = Planned(rod).Longer;
        Assert.Equal((expected, RodSide.Inner), (longer.EndsAt, longer.End));
        BindingLimit[] tooLong = [.. (rod with { Target = Dim.OfMm(290) }).Plan().Binding.Where(binding => binding.End == RodSide.Inner)];
        Assert.Equal(expected, Assert.Single(tooLong).Limit);

        static Dim? Beyond(double? more) => more is { } mm ? Dim.OfMm(24.75 + mm) : null;
    }

    [Theory]
    [InlineData(0, RodSide.Inner)]
    [InlineData(Hair, RodSide.Inner)]
    [InlineData(-Seen, RodSide.Inner)]
    [InlineData(Seen, RodSide.Outer)]
    public void Equal_turns_start_with_the_inner_end(double longerLead, RodSide expected)
    {
        StartProcedure start = Planned(CaseVariants.Twin.WithOuter(joint => joint with { Lead = Dim.OfMm(1.5 + longerLead) })).Start;
        Assert.Equal(expected, start.First);
        Assert.Equal(Math.Abs(longerLead) / 1.5, start.AloneTurns, 1e-9);
    }

    private static RodSolution Planned(RodCase rod) => rod.Plan().Solution!;
}
