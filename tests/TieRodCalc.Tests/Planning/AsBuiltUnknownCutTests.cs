using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Outside measurements cannot show what was cut off inside: an end that may be cut is never taken as uncut.</summary>
public class AsBuiltUnknownCutTests(MadeRods rods) : IClassFixture<MadeRods>
{
    private const double Tolerance = 2e-6;

    [Fact]
    public void An_end_that_may_be_cut_gives_the_span_over_its_cuts_and_is_not_checked()
    {
        Findings findings = new();
        int spans = 0;
        foreach ((MadeRod made, RodSide open) in EndsThatMayBeCut())
        {
            spans++;
            BuiltRod built = made.Check(Without(made.Readings(), open));
            findings.That(made.Case, $"verdict {built.Verdict}", built.Verdict == Verdict.NotChecked);
            findings.That(made.Case, $"contradictions {built.Contradictions.Count}", built.Contradictions.Count == 0);
            findings.That(made.Case, "adjustment, spare", built is { Shorter: null, Longer: null, Spare: null });
            findings.That(made.Case, $"binding {string.Join(", ", built.Binding)}", built.Binding.Count == 0);
            BuiltJoint joint = Joint(built, open);
            findings.That(made.Case, $"{open} is known", joint is { Cut: null, Insertion: null, Engaged: null, EngagedLeast: null });
            Span insertion = made.Built.InsertionSpan(open);
            findings.Near(made.Case, $"{open} insertion from", Math.Max(0, insertion.Low), joint.InsertionSpan!.Shortest, Tolerance);
            findings.Near(made.Case, $"{open} insertion to", insertion.High, joint.InsertionSpan.Longest, Tolerance);
            Span engaged = made.Built.EngagedSpan(open);
            findings.Near(made.Case, $"{open} engaged from", engaged.Low, joint.EngagedSpan!.Shortest, Tolerance);
            findings.Near(made.Case, $"{open} engaged to", engaged.High, joint.EngagedSpan.Longest, Tolerance);
            findings.Near(made.Case, $"{open} room", made.Planned(open).NutRoom.Millimeters, joint.NutRoom!.Value, Tolerance);
            if (!made.Built.OneJoint)
            {
                RodSide other = open == RodSide.Inner ? RodSide.Outer : RodSide.Inner;
                double planned = made.Planned(other).Insertion.Millimeters;
                findings.Near(made.Case, $"{other} insertion", planned, Joint(built, other).Insertion!.Value, Tolerance);
            }
        }

        findings.AssertNone();
        Assert.True(spans > rods.All.Count / 5, $"only {spans} ends may be cut");
    }

    [Fact]
    public void A_depth_reading_resolves_it()
    {
        Findings findings = new();
        foreach ((MadeRod made, RodSide open) in EndsThatMayBeCut())
        {
            BuiltReadings unknown = Without(made.Readings(), open);
            EndReadings WithDepth(EndReadings read) => read with { Depth = MadeRod.Of(made.Built.Setting.Of(open)) };
            BuiltRod built = made.Check(open == RodSide.Inner
                ? unknown with { Inner = WithDepth(unknown.Inner) }
                : unknown with { Outer = WithDepth(unknown.Outer) });
            BuiltJoint joint = Joint(built, open);
            findings.That(made.Case, $"verdict {built.Verdict}", built.Verdict == Verdict.Buildable);
            findings.Near(made.Case, $"{open} cut", made.Built.Cut.Of(open), joint.Cut!.Value, Tolerance);
            findings.Near(made.Case, $"{open} insertion", made.Built.Setting.Of(open), joint.Insertion!.Value, Tolerance);
            findings.Near(made.Case, $"{open} engaged", made.Planned(open).Engaged.Millimeters, joint.Engaged!.Value, Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void An_end_that_must_not_be_cut_needs_no_word_of_its_cut()
    {
        Findings findings = new();
        foreach (MadeRod made in rods.All)
        {
            if (made.Joints.All(side => made.Case.Joint(side).MaxCut.Mm == 0))
            {
                BuiltReadings all = made.Readings();
                BuiltRod built = made.Check(
                    all with { Inner = all.Inner with { Cut = null }, Outer = all.Outer with { Cut = null } });
                findings.That(made.Case, $"verdict {built.Verdict}", built.Verdict == Verdict.Buildable);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Without_thread_showing_at_either_end_nothing_is_known_of_the_insertions()
    {
        Findings findings = new();
        foreach (MadeRod made in rods.All.Where(made => !made.Built.OneJoint))
        {
            BuiltReadings all = made.Readings();
            BuiltRod built = made.Check(
                all with { Inner = all.Inner with { Showing = null }, Outer = all.Outer with { Showing = null } });
            findings.That(made.Case, $"verdict {built.Verdict}", built is { Verdict: Verdict.NotChecked, Shorter: null, Spare: null });
            findings.That(
                made.Case,
                "insertion",
                built is { Inner: { Insertion: null, NutRoom: null }, Outer: { Insertion: null, NutRoom: null }, Binding.Count: 0 });
        }

        findings.AssertNone();
    }

    [Fact]
    public void Of_one_end_alone_there_is_room_now_and_no_word_of_the_least()
    {
        Findings findings = new();
        foreach (MadeRod made in rods.All.Where(made => !made.Built.OneJoint))
        {
            BuiltRod built = made.Check(made.Readings() with { CenterToCenter = null, Outer = default });
            findings.Near(made.Case, "room", made.Planned(RodSide.Inner).NutRoom.Millimeters, built.Inner.NutRoom!.Value, Tolerance);
            findings.That(
                made.Case,
                "least room",
                built is { Present: null, Inner.NutRoomLeast: null, Outer.NutRoom: null, Binding.Count: 0 });
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_nut_without_room_is_found_also_where_the_cut_is_not_known()
    {
        Findings findings = new();
        foreach ((MadeRod made, RodSide open) in EndsThatMayBeCut())
        {
            // The end is in so far that its nut meets the sleeve half a millimeter before the rod is as short as it shall be.
            double least = made.Planned(open).NutRoomLeast.Millimeters;
            BuiltReadings unknown = Without(made.Readings(), open) with { CenterToCenter = null };
            EndReadings Less(EndReadings read) => read with { Showing = MadeRod.Of(made.Built.Showing(open) - least - 0.5) };
            if (made.Built.Showing(open) - least - 0.5 < 0 || made.Case.Shorter.Mm > 0 || made.Case.Longer.Mm > 0)
            {
                continue;
            }

            BuiltRod built = made.Check(
                open == RodSide.Inner ? unknown with { Inner = Less(unknown.Inner) } : unknown with { Outer = Less(unknown.Outer) });
            BindingLimit[] room = [.. built.Binding.Where(limit => limit.Limit == Limit.NutRoom && limit.End == open)];
            findings.That(made.Case, $"binding {string.Join(", ", built.Binding)}", room.Length == 1);
            findings.Near(made.Case, "missed by", 0.5, room.FirstOrDefault()?.MissedBy.Millimeters ?? double.NaN, Tolerance);
            findings.That(made.Case, $"verdict {built.Verdict}", built.Verdict is Verdict.NotChecked or Verdict.NotBuildable);
        }

        findings.AssertNone();
    }

    private static BuiltJoint Joint(BuiltRod built, RodSide side) => side == RodSide.Inner ? built.Inner : built.Outer!;

    private static BuiltReadings Without(BuiltReadings readings, RodSide side) => side == RodSide.Inner
        ? readings with { Inner = readings.Inner with { Cut = null } }
        : readings with { Outer = readings.Outer with { Cut = null } };

    private IEnumerable<(MadeRod Made, RodSide Side)> EndsThatMayBeCut() =>
        from made in rods.All
        from side in made.Joints
        where made.Case.Joint(side).MaxCut.Mm > Millimeters.Negligible
        select (made, side);
}
