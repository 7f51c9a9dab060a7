using System.Text.RegularExpressions;
using TieRodCalc.Planning;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Lengths are rounded to the safe side in every spelling: what is needed is never shown smaller, what is there never
/// larger, and both by less than one last place.
/// </summary>
public sealed partial class PlanRoundingTests
{
    private const double ThousandthOfInch = 0.0254;
    private const double HundredthOfMillimeter = 0.01;
    private const double SixtyFourth = 25.4 / 64;

    /// <summary>What is within a ten-thousandth of the last place is taken as exact.</summary>
    private const double TakenAsExact = 1e-4;

    public static TheoryData<string> Jobs
    {
        get
        {
            TheoryData<string> jobs = [];
            foreach (double target in new[] { 380.103, 380.628, 381.377, 382, 382.931, 383.309, 383.742, 384.216 })
            {
                string job = CheckJobs.W5(target)
                    .With("countersink: 0.75 mm}", "countersink: 0.75 mm, witness: 20.003 mm}")
                    .With("40 mm}", "40 mm, joint: rod end}")
                    .With("41.275 mm}", "41.275 mm, joint: rod end}");
                jobs.Add(job);
                jobs.Add(job.With("units: in", "units: mm"));
            }

            return jobs;
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_cut_is_never_shown_less_than_the_least_nor_more_than_the_most(string job)
    {
        CutAdvice cut = JobChanges.Solution(job).InnerCut!;
        PlanPage page = PlanPage.Of(job);

        NotBelow(cut.Least, Shown(page.Row("  least that works")));
        List<Spelling> most = Shown(page.Row("  most that works"));
        NotAbove(cut.Most, most[..(most.Count / 2)]);
        NotAbove(cut.Spare, most[(most.Count / 2)..]);
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void What_a_joint_has_is_never_shown_more_and_what_it_needs_never_less(string job)
    {
        RodSolution solution = JobChanges.Solution(job);
        PlanPage page = PlanPage.Of(job);
        foreach ((string name, JointPlan joint) in new[] { ("inner joint", solution.Inner), ("outer joint", solution.Outer!) })
        {
            List<Spelling> inserted = Shown(page.Row("  inserted", name));
            NotBelow(joint.InsertionSpan.Shortest, inserted[^2..^1]);
            NotAbove(joint.InsertionSpan.Longest, inserted[^1..]);
            NotAbove(joint.Engaged, Shown(page.Row("  engaged", name)));
            List<Spelling> least = Shown(page.Row("  engaged, at least", name));
            NotAbove(joint.EngagedLeast, least[..^1]);
            NotBelow(joint.Required.Required, least[^1..]);
            List<Spelling> room = Shown(page.Row("  left outside the nut", name));
            NotAbove(joint.NutRoom, room[..^1]);
            NotAbove(joint.NutRoomLeast, room[^1..]);
        }

        NotAbove(solution.Inner.WitnessProves!.Value, Shown(page.Row("  witness hole", "inner joint")));
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Reach_and_adjustment_are_never_shown_wider(string job)
    {
        RodPlan plan = JobChanges.Plan(job);
        RodSolution solution = plan.Solution!;
        PlanPage page = PlanPage.Of(job);

        AssertSpan(plan.UncutReach!, Shown(page.Row("reach of uncut parts")));
        AssertSpan(solution.Reach, Shown(page.Row("reach as made")));
        NotAbove(solution.Shorter.Length, Shown(page.Row("shorter")));
        NotAbove(solution.Longer.Length, Shown(page.Row("longer")));
        NotAbove(solution.Inner.InsertionSpan.Width, Shown(page.Row("other starts"))[^1..]);
        foreach ((string way, double turns) in new[] { ("shorter", solution.Shorter.Turns), ("longer", solution.Longer.Turns) })
        {
            double shown = Number(Turns().Match(page.Row(way)).Groups[1].Value);
            Assert.InRange(turns - shown, -1e-6, 0.01);
        }
    }

    /// <summary>Where one of the jobs would have it right by chance, another has it wrong: rounding to the nearest would be seen.</summary>
    [Fact]
    public void The_jobs_tell_rounding_to_the_safe_side_from_rounding_to_the_nearest()
    {
        foreach (LengthDisplay unit in Enum.GetValues<LengthDisplay>())
        {
            CutAdvice[] cuts = [.. Jobs.AsEnumerable<object[]>().Select(job => JobChanges.Solution((string)job[0]).InnerCut!)];
            Assert.Contains(cuts, cut => Differs(cut.Least, unit, LengthRounding.Up));
            Assert.Contains(cuts, cut => Differs(cut.Most, unit, LengthRounding.Down));
            Assert.Contains(cuts, cut => Differs(cut.Spare, unit, LengthRounding.Down));
        }
    }

    private static bool Differs(Length length, LengthDisplay unit, LengthRounding rounding) =>
        LengthFormat.Decimal(length, unit, rounding) != LengthFormat.Decimal(length, unit);

    private static void AssertSpan(LengthSpan span, List<Spelling> shown)
    {
        NotBelow(span.Shortest, shown[..(shown.Count / 2)]);
        NotAbove(span.Longest, shown[(shown.Count / 2)..]);
    }

    private static void NotBelow(Length exact, IEnumerable<Spelling> shown)
    {
        Assert.NotEmpty(shown);
        Assert.All(shown, one => Assert.InRange(one.Mm - exact.Millimeters, -TakenAsExact * one.LastPlace, one.LastPlace));
    }

    private static void NotAbove(Length exact, IEnumerable<Spelling> shown)
    {
        Assert.NotEmpty(shown);
        Assert.All(shown, one => Assert.InRange(exact.Millimeters - one.Mm, -TakenAsExact * one.LastPlace, one.LastPlace));
    }

    /// <summary>Every spelling of a length in a row, in order: decimals of both units and fractions.</summary>
    private static List<Spelling> Shown(string row) =>
    [
        .. Lengths().Matches(row).Select(match => match switch
        {
            { Groups: var groups } when groups["mm"].Success => new Spelling(Number(groups["mm"].Value), HundredthOfMillimeter),
            { Groups: var groups } when groups["in"].Success => new Spelling(Number(groups["in"].Value) * 25.4, ThousandthOfInch),
            { Groups: var groups } => new Spelling(Fraction(groups["fraction"].Value), SixtyFourth),
        }),
    ];

    private static double Fraction(string words)
    {
        Parsed<Length> parsed = LengthText.ParseExact(words + " in");
        Assert.Null(parsed.Fault);
        return parsed.Value.Millimeters;
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<mm>\d+\.\d\d) mm|(?<in>\d+\.\d{3}) in|\(~?(?<fraction>\d+( \d+/\d+)?|\d+/\d+)(?=,| in\))")]
    private static partial Regex Lengths();

    [GeneratedRegex(@", (\d+\.\d\d) turns;")]
    private static partial Regex Turns();

    private sealed record Spelling(double Mm, double LastPlace);
}
