using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>The recommended cut: inside the window, on the marks where there is one, not past the middle without need.</summary>
public class RecommendedCutTests(PlannedRods rods) : IClassFixture<PlannedRods>
{
    private const double Tolerance = 1e-6;

    [Fact]
    public void Recommended_cut_lies_from_least_to_most()
    {
        Findings findings = new();
        foreach ((PlannedRod planned, RodSide side, CutAdvice advice) in Needed())
        {
            Span window = planned.Window(side)!.Value;
            double cut = advice.Recommended.Millimeters;
            findings.That(planned.Rod, $"{side}: {cut:R} is in {window}", cut >= window.Low - Tolerance && cut <= window.High + Tolerance);
            findings.That(planned.Rod, $"{side}: {cut:R} is not below {advice.Least}", cut >= advice.Least.Millimeters - Tolerance);
            findings.That(planned.Rod, $"{side}: {cut:R} is not above {advice.Most}", cut <= advice.Most.Millimeters + Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Advice_is_all_zero_exactly_where_nothing_needs_to_be_cut()
    {
        Findings findings = new();
        foreach (PlannedRod planned in rods.Solved)
        {
            foreach (RodSide side in (RodSide[])[RodSide.Inner, RodSide.Outer])
            {
                if (planned.Advice(side) is { } advice)
                {
                    bool needed = planned.Reference.LeastCut!.Value.Of(side) > Millimeters.Negligible;
                    UnitsNet.Length[] figures = [advice.Least, advice.Most, advice.Recommended, advice.MarkFromCenter, advice.ThreadLeft];
                    findings.That(planned.Rod, $"{side}: {advice}", needed ? advice.IsNeeded : figures.All(figure => figure.Value == 0));
                }
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Recommended_cuts_follow_the_rule_one_end_after_the_other()
    {
        Findings findings = new();
        using LinearProgram program = new();
        foreach (PlannedRod planned in rods.Solved.Where(planned => planned.Plan.Verdict == Verdict.BuildableAfterCutting))
        {
            RodCase rod = planned.Rod;
            CutPair least = planned.Reference.LeastCut!.Value;
            program.Load(rod, loosenedAll: planned.Reference.Loosening);
            double inner = CutRule.Recommended(rod, least.Inner, program.CutSpan(RodSide.Inner, least.Outer)!.Value);
            Span outerWindow = program.CutSpan(RodSide.Outer, inner)!.Value;
            double outer = CutRule.Recommended(rod, least.Outer, outerWindow with { Low = Math.Max(least.Outer, outerWindow.Low) });
            findings.Near(rod, "inner", inner, planned.Recommended.Inner, Tolerance);
            findings.Near(rod, "outer", outer, planned.Recommended.Outer, Tolerance);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Recommended_cut_is_on_a_mark_unless_there_is_none_in_the_window()
    {
        Findings findings = new();
        foreach ((PlannedRod planned, RodSide side, CutAdvice advice) in Needed())
        {
            double mark = planned.Rod.Mark.Mm;
            double marks = advice.Recommended.Millimeters / mark;
            bool onMark = Math.Abs(marks - Math.Round(marks)) * mark < Tolerance;
            findings.That(planned.Rod, $"{side}: {advice.Recommended} is on a mark of {mark} mm", onMark || !advice.OnMark);
            if (!advice.OnMark)
            {
                findings.That(
                    planned.Rod,
                    $"{side}: a mark lies from {advice.Least} to {advice.Most}",
                    (Math.Ceiling(advice.Least.Millimeters / mark) * mark > advice.Most.Millimeters) || onMark);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void Cut_advice_carries_the_numbers_to_measure_by()
    {
        Findings findings = new();
        foreach ((PlannedRod planned, RodSide side, CutAdvice advice) in Needed())
        {
            JointCase joint = planned.Rod.Joint(side);
            double x = planned.Recommended.Of(side);
            double center = joint.CenterToTip.Mm - x;
            findings.Near(planned.Rod, $"{side} mark", center, advice.MarkFromCenter, Tolerance);
            findings.Near(planned.Rod, $"{side} thread left", joint.ThreadLength.Mm - x, advice.ThreadLeft, Tolerance);
            bool straightEnd = joint.Offset.Mm == 0;
            findings.That(planned.Rod, $"{side} has a straight line where it is bent", advice.StraightFromCenter is null == straightEnd);
            if (advice.StraightFromCenter is { } straight)
            {
                double line = Math.Sqrt(center * center + joint.Offset.Mm * joint.Offset.Mm);
                findings.Near(planned.Rod, $"{side} straight line", line, straight, Tolerance);
            }
        }

        findings.AssertNone();
    }

    private IEnumerable<(PlannedRod Planned, RodSide Side, CutAdvice Advice)> Needed() =>
        from planned in rods.Solved
        from side in (RodSide[])[RodSide.Inner, RodSide.Outer]
        let advice = planned.Advice(side)
        where advice is { IsNeeded: true }
        select (planned, side, advice);
}
