using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Tests.Planning;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Rods;

/// <summary>What keeps parts from being a rod, and which lengths a rod can have.</summary>
public class RodMakeTests
{
    /// <summary>M16x1.5: left-hand inside, right-hand outside, a nut at each end.</summary>
    private static RodParts Sound => CheckCases.OpenInnerBore.Rod.ToRod().Parts;

    /// <summary>
    /// Into M16x1.5-6H, whose minor diameter is 14.376 to 14.676 mm: M15x1.5-6g (major 14.732 to 14.968 mm) still overlaps it.
    /// </summary>
    [Theory]
    [InlineData(15, 1.5, FitOutcome.GoesInLoose)]
    [InlineData(15, 1, FitOutcome.StartsAndBinds)]
    [InlineData(16, 2, FitOutcome.DoesNotStart)]
    [InlineData(17, 1.5, FitOutcome.DoesNotStart)]
    public void What_happens_to_a_male_that_differs_is_told(double diameter, double pitch, FitOutcome expected)
    {
        foreach (Hand hand in Enum.GetValues<Hand>())
        {
            Assert.Equal(expected, Fit(Metric(diameter, pitch, hand), Metric(16, 1.5, hand)));
            Assert.Equal(FitOutcome.DoesNotStart, Fit(Metric(diameter, pitch, hand), Metric(16, 1.5, Other(hand))));
        }
    }

    [Fact]
    public void Look_alikes_of_two_forms_start_and_bind()
    {
        ThreadDesignation inch = new(ThreadSize.Unified(Length.FromInches(0.625), 18), Hand.Right);
        Assert.Equal(FitOutcome.StartsAndBinds, Fit(Metric(16, 1.5, Hand.Right), inch));
        Assert.Equal(FitOutcome.StartsAndBinds, Fit(inch, Metric(16, 1.5, Hand.Right)));
        Assert.Equal(FitOutcome.DoesNotStart, Fit(Metric(16, 1.5, Hand.Left), inch));
    }

    [Fact]
    public void Threads_that_differ_in_hand_alone_do_not_start() =>
        Assert.Equal(FitOutcome.DoesNotStart, Fit(Metric(16, 1.5, Hand.Right), Metric(16, 1.5, Hand.Left)));

    [Fact]
    public void A_class_that_the_standard_does_not_have_leaves_the_outcome_open() =>
        Assert.Null(Fit(Metric(17, 1.5, Hand.Right) with { ToleranceClass = "5g" }, Metric(16, 1.5, Hand.Right)));

    [Theory]
    [InlineData(RodSide.Inner)]
    [InlineData(RodSide.Outer)]
    public void An_end_that_fits_neither_sleeve_nor_nut_is_told_of_both(RodSide side)
    {
        RodParts sound = Sound;
        bool inner = side == RodSide.Inner;
        ThreadedEnd end = sound.EndAt(side);
        ThreadedEnd other = end with { Thread = Metric(18, 2, end.Thread.Hand) };
        RodFaults faults = Make(inner ? sound with { Inner = other } : sound with { Outer = other })!;
        Assert.Equal([(side, FemalePart.Sleeve), (side, FemalePart.JamNut)], faults.Mismatches.Select(found => (found.Side, found.Female)));
        Assert.Equal(["sleeve", inner ? "inner nut" : "outer nut"], faults.Mismatches.Select(found => found.FemaleId));
        Assert.All(faults.Mismatches, found =>
        {
            Assert.Equal((other.Info.Id, other.Thread, end.Thread), (found.MaleId, found.MaleThread, found.FemaleThread));
            Assert.Equal(ThreadDifference.Diameter | ThreadDifference.Pitch, found.Difference);
        });
        Assert.Equal((0, false), (faults.PartFaults.Count, faults.ClockingMissing));
    }

    [Theory]
    [InlineData(RodSide.Inner)]
    [InlineData(RodSide.Outer)]
    public void A_nut_alone_may_be_the_wrong_one(RodSide side)
    {
        RodParts sound = Sound;
        static JamNut Turned(JamNut nut) => nut with { Thread = nut.Thread with { Hand = Other(nut.Thread.Hand) } };
        RodParts parts = side == RodSide.Inner
            ? sound with { InnerNut = Turned(sound.InnerNut!) }
            : sound with { OuterNut = Turned(sound.OuterNut!) };
        ThreadMismatch found = Assert.Single(Make(parts)!.Mismatches);
        Assert.Equal((side, FemalePart.JamNut, ThreadDifference.Hand), (found.Side, found.Female, found.Difference));
        Assert.Null(Make(sound with { InnerNut = null, OuterNut = null }));
    }

    [Fact]
    public void Faults_of_all_three_parts_are_told_with_their_ids()
    {
        RodParts sound = Sound;
        RodFaults faults = Make(sound with
        {
            Inner = sound.Inner with { ThreadLength = new(Length.FromMillimeters(500)) },
            Sleeve = sound.Sleeve! with { Length = new(Length.FromMillimeters(70)) },
            Outer = sound.Outer! with { MaxCut = sound.Outer.CenterToTip },
        })!;
        Assert.Equal(
            [
                new FaultyPart("inner", PartFault.ThreadLongerThanEnd),
                new FaultyPart("sleeve", PartFault.ThreadsLongerThanSleeve),
                new FaultyPart("outer", PartFault.CutLongerThanEnd),
            ],
            faults.PartFaults);
        Assert.Equal((0, false), (faults.Mismatches.Count, faults.ClockingMissing));
    }

    [Theory]
    [InlineData(0, 0, false)]
    [InlineData(16, 0, false)]
    [InlineData(0, 12, false)]
    [InlineData(16, 12, true)]
    public void Clocking_is_missing_only_where_both_ends_are_bent(double inner, double outer, bool expected)
    {
        RodFaults? faults = Make(Bent(inner, outer, null));
        Assert.Equal(expected, faults is not null);
        Assert.Equal(expected, faults?.ClockingMissing ?? false);
        Assert.Equal((0, 0), (faults?.Mismatches.Count ?? 0, faults?.PartFaults.Count ?? 0));
        Assert.Null(Make(Bent(inner, outer, 90)));
    }

    [Theory]
    [InlineData(0, 0, null, 0)]
    [InlineData(16, 0, null, 16)]
    [InlineData(0, 12, 90.0, 12)]
    [InlineData(16, 12, 0.0, 4)]
    [InlineData(16, 12, 90.0, 20)]
    [InlineData(16, 12, 180.0, 28)]
    public void A_rod_is_longer_than_its_offset(double inner, double outer, double? clocking, double offset)
    {
        Assert.Null(Rod.Make(Bent(inner, outer, clocking), out Rod? rod));
        Assert.Equal(offset, rod!.Offset.Millimeters, 1e-9);
        Assert.False(rod.CanHave(Length.FromMillimeters(offset - 1)));
        Assert.False(rod.CanHave(Length.FromMillimeters(offset)));
        Assert.False(rod.CanHave(Length.FromMillimeters(offset + Millimeters.Negligible / 2)));
        Assert.True(rod.CanHave(Length.FromMillimeters(offset + Millimeters.Negligible * 2)));

        // The plan refuses what the rod cannot have, at its shortest.
        RodRequest request = CheckCases.OpenInnerBore.Rod.ToRequest();
        RodRequest within = request with { Shorter = request.Target - Length.FromMillimeters(offset + 0.001) };
        RodRequest beyond = request with { Shorter = request.Target - Length.FromMillimeters(offset) };
        Assert.Equal(Verdict.NotBuildable, RodPlanner.Plan(rod, within).Verdict);
        Assert.Throws<ArgumentException>(() => RodPlanner.Plan(rod, beyond));
    }

    private static RodFaults? Make(RodParts parts)
    {
        RodFaults? faults = Rod.Make(parts, out Rod? rod);
        Assert.Equal(faults is null, rod is not null);
        return faults;
    }

    /// <summary>Of a rod whose inner end and sleeve have these threads.</summary>
    private static FitOutcome? Fit(ThreadDesignation male, ThreadDesignation female)
    {
        RodParts sound = Sound;
        RodFaults? faults = Make(sound with
        {
            Inner = sound.Inner with { Thread = male },
            InnerNut = null,
            Sleeve = sound.Sleeve! with { Inner = sound.Sleeve.Inner with { Thread = female } },
        });
        return Assert.Single(faults!.Mismatches).Fit?.Outcome;
    }

    private static RodParts Bent(double inner, double outer, double? clocking)
    {
        RodParts sound = Sound;
        return sound with
        {
            Inner = sound.Inner with { Offset = new(Length.FromMillimeters(inner)) },
            Outer = sound.Outer! with { Offset = new(Length.FromMillimeters(outer)) },
            Clocking = clocking is { } degrees ? Angle.FromDegrees(degrees) : null,
        };
    }

    private static ThreadDesignation Metric(double diameter, double pitch, Hand hand) =>
        new(ThreadSize.Metric(Length.FromMillimeters(diameter), Length.FromMillimeters(pitch)), hand);

    private static Hand Other(Hand hand) => hand == Hand.Right ? Hand.Left : Hand.Right;

    [Fact]
    public void Every_part_that_a_rod_needs_is_asked_for_by_its_name()
    {
        RodParts sleeved = CheckCases.Bent.Rod.ToRod().Parts;
        RodParts one = new RodJob(CheckCases.Bent.Rod, default, default, OneJoint: true).Parts();
        (ThreadedEnd inner, Sleeve sleeve, ThreadedEnd outer, SocketEnd socket) = (sleeved.Inner, sleeved.Sleeve!, sleeved.Outer!, one.Socket!);
        Assert.Throws<ArgumentNullException>("inner", () => new RodParts(null!, sleeve, outer, null, null, null));
        Assert.Throws<ArgumentNullException>("sleeve", () => new RodParts(inner, null!, outer, null, null, null));
        Assert.Throws<ArgumentNullException>("outer", () => new RodParts(inner, sleeve, null!, null, null, null));
        Assert.Throws<ArgumentNullException>("inner", () => new RodParts(null!, socket, null));
        Assert.Throws<ArgumentNullException>("socket", () => new RodParts(inner, null!, null));
    }
}
