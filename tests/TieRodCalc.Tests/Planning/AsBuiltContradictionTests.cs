using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Measurements that do not go together are told, with what they miss each other by; those that do are not.</summary>
public class AsBuiltContradictionTests(MadeRods rods) : IClassFixture<MadeRods>
{
    private const double Tolerance = 2e-6;

    [Fact]
    public void A_length_that_the_parts_do_not_add_up_to()
    {
        Findings findings = new();
        foreach ((MadeRod made, int index) in rods.All.Select((made, index) => (made, index)))
        {
            double wrong = made.Built.CenterToCenter + Off(index, 2, 9);
            BuiltReadings read = made.Readings() with { CenterToCenter = MadeRod.Of(wrong) };
            double apart = Math.Abs(made.Case.AxialOf(wrong) - made.Built.Axial);
            Expect(findings, made, read, ContradictionKind.Length, null, apart);

            double plusMinus = 0.75 * Math.Abs(wrong - made.Built.CenterToCenter);
            double stated = plusMinus * wrong / made.Case.AxialOf(wrong);
            double allowed = stated + made.Joints.Count() * made.Case.Mark.Mm / 2;
            BuiltReadings loose = read with { CenterToCenter = MadeRod.Of(wrong, plusMinus) };
            if (apart > allowed + 1e-4)
            {
                Expect(findings, made, loose, ContradictionKind.Length, null, apart - stated);
            }
            else if (apart < allowed - 1e-4)
            {
                ExpectNone(findings, made, loose);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_thread_showing_that_the_length_does_not_allow()
    {
        Findings findings = new();
        foreach ((MadeRod made, RodSide side, int index) in Ends())
        {
            double wrong = made.Built.Showing(side) - Off(index, 2, 4);
            JointCase joint = made.Case.Joint(side);
            if (wrong < 0 || wrong + made.Built.Cut.Of(side) > joint.ThreadLength.Mm)
            {
                continue;
            }

            BuiltReadings read = With(made.Readings(), side, ends => ends with { Showing = MadeRod.Of(wrong) });
            Expect(findings, made, read, ContradictionKind.Length, null, Math.Abs(wrong - made.Built.Showing(side)));
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_depth_that_cut_and_thread_showing_do_not_leave()
    {
        Findings findings = new();
        foreach ((MadeRod made, RodSide side, int index) in Ends())
        {
            double off = Off(index, 2, 6);
            double wrong = made.Built.Setting.Of(side) + off;
            BuiltReadings read = With(made.Readings(), side, ends => ends with { Depth = MadeRod.Of(wrong) });
            if (wrong > 0)
            {
                Expect(findings, made, read, ContradictionKind.End, side, Math.Abs(off));
                BuiltReadings stated = With(made.Readings(), side, ends => ends with { Depth = MadeRod.Of(wrong, 1) });
                double allowed = 1 + made.Case.Mark.Mm / 2 + made.Case.Mark.Mm;
                if (Math.Abs(off) > allowed + 1e-4)
                {
                    Expect(findings, made, stated, ContradictionKind.End, side, Math.Abs(off) - 1);
                }
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void More_thread_showing_than_the_end_has_left()
    {
        Findings findings = new();
        foreach ((MadeRod made, RodSide side, int index) in Ends())
        {
            double over = Math.Abs(Off(index, 2, 6));
            double left = made.Case.Joint(side).ThreadLength.Mm - made.Built.Cut.Of(side);
            BuiltReadings read = With(made.Readings(), side, ends => ends with { Showing = MadeRod.Of(left + over) });
            Expect(findings, made, read with { CenterToCenter = null }, ContradictionKind.Showing, side, over);
        }

        findings.AssertNone();
    }

    [Fact]
    public void What_a_rule_can_be_read_to_is_no_contradiction()
    {
        Findings findings = new();
        foreach ((MadeRod made, int index) in rods.All.Select((made, index) => (made, index)))
        {
            // Half a mark each way for every reading; the length is read along the rod.
            double mark = made.Case.Mark.Mm;
            double off = (index % 2 == 0 ? 1 : -1) * 0.49 * mark;
            BuiltReadings read = made.Readings() with { CenterToCenter = MadeRod.Of(made.Built.CenterToCenter - off) };
            read = With(read, RodSide.Inner, ends => ends with { Showing = MadeRod.Of(made.Built.Showing(RodSide.Inner) + off) });
            if (made.Built.Showing(RodSide.Inner) + off >= 0)
            {
                ExpectNone(findings, made, read);
            }
        }

        findings.AssertNone();
    }

    private static double Off(int index, double least, double most)
    {
        Random random = RandomCounts.For(700_000 + index);
        return (random.Next(2) == 0 ? 1 : -1) * (least + (most - least) * random.NextDouble());
    }

    private static BuiltReadings With(BuiltReadings readings, RodSide side, Func<EndReadings, EndReadings> change) => side == RodSide.Inner
        ? readings with { Inner = change(readings.Inner) }
        : readings with { Outer = change(readings.Outer) };

    private static void Expect(
        Findings findings, MadeRod made, BuiltReadings readings, ContradictionKind kind, RodSide? end, double missedBy)
    {
        BuiltRod built = made.Check(readings);
        string all = string.Join(", ", built.Contradictions);
        findings.That(made.Case, $"verdict {built.Verdict}", built.Verdict == Verdict.NotChecked);
        findings.That(made.Case, "spare", built.Spare is null);
        Contradiction? found = built.Contradictions.FirstOrDefault(contradiction => contradiction.Kind == kind && contradiction.End == end);
        findings.That(made.Case, $"expected {kind} {end}, was {all}", found is not null && built.Contradictions.Count(Others) == 1);
        findings.Near(made.Case, $"{kind} {end}", missedBy, found?.MissedBy.Millimeters ?? double.NaN, Tolerance);
    }

    /// <summary>A tip that would be too deep in a closed bore is told beside the readings that say so.</summary>
    private static bool Others(Contradiction contradiction) => contradiction.Kind != ContradictionKind.Bore;

    private static void ExpectNone(Findings findings, MadeRod made, BuiltReadings readings)
    {
        BuiltRod built = made.Check(readings);
        findings.That(made.Case, $"contradictions {string.Join(", ", built.Contradictions)}", built.Contradictions.Count == 0);
    }

    private IEnumerable<(MadeRod Made, RodSide Side, int Index)> Ends()
    {
        int index = 0;
        foreach (MadeRod made in rods.All)
        {
            foreach (RodSide side in made.Joints)
            {
                yield return (made, side, index++);
            }
        }
    }
}
