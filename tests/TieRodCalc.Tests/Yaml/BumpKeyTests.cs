using TieRodCalc.Steering;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Yaml;

/// <summary>Bump sheets of a job, and the limits of its rules.</summary>
public class BumpKeyTests
{
    private const string Head = "tierodcalc: 1\njob: x\n";
    private const string Gauge = "gauge: {spacing: 10 in, zeroed: once, grows: outward}";
    private const string Steps = "gauge: {spacing: 10 in, zeroed: each step, grows: outward}";
    private const string Reading = "readings: [{travel: -1 in, front: 0 in, rear: -0.5 mm}]";
    private const string Far = "is more than half of the spacing of the indicators: check the units, the decimal points and the signs";

    [Fact]
    public void Sheets_are_read_in_the_order_of_the_file()
    {
        IReadOnlyList<JobBumpSheet> sheets = Read("""
            bump:
              - side: right
                gauge: {spacing: 10 in ± 1/16 in, zeroed: each step, grows: inward, resolution: 0.01 mm}
                readings:
                  - {travel: 2 in, front: -0.011 in, rear: 0.3 mm}
                  - {travel: -1 in, front: 0.014 in, rear: 0.009 in}
                then: {outer_raised: -2 mm, rod_longer: 1/16 in}
              - side: left
                gauge: {spacing: 250 mm, zeroed: once, grows: outward}
                readings: [{travel: -500 mm, front: 0 in, rear: 0 in}]
                then: {rod_longer: -1 mm}
            """).Bump;
        Assert.Equal([CarSide.Right, CarSide.Left], sheets.Select(sheet => sheet.Side));
        BumpSheet right = sheets[0].Sheet;
        Assert.Equal((IndicatorZero.EachStep, IndicatorSense.Inward), (right.Zeroed, right.Grows));
        Assert.Equal([254, 0.01, -2, 1.5875], Mm(right.Spacing, right.Resolution!.Value, right.Then.OuterRaised, right.Then.RodLonger));
        Assert.Equal([50.8, -0.2794, 0.3], Mm(right.Readings[0].Travel, right.Readings[0].Front, right.Readings[0].Rear));
        Assert.Equal([-25.4, 0.3556, 0.2286], Mm(right.Readings[1].Travel, right.Readings[1].Front, right.Readings[1].Rear));
        BumpSheet left = sheets[1].Sheet;
        Assert.Equal((IndicatorZero.Once, IndicatorSense.Outward), (left.Zeroed, left.Grows));
        Assert.Equal([250, -500, 0, -1], Mm(left.Spacing, left.Readings[0].Travel, left.Then.OuterRaised, left.Then.RodLonger));
        Assert.Null(left.Resolution);
        Assert.Equal([2, 1], sheets.Select(sheet => sheet.Sheet.Readings.Count));
    }

    [Fact]
    public void Ride_height_that_is_written_out_is_passed_over()
    {
        CheckedFile read = Marked.Check(Head + "bump: [{side: left, " + Gauge + ", readings: "
            + "[{travel: -1 in, front: 0 in, rear: 1 mm}, {travel: 0 mm, front: 0 in, rear: -0 in}, {travel: 1 in, front: 0 in, rear: 1 mm}]}]");
        Assert.Empty(read.Problems);
        Assert.Empty(read.Notes);
        Assert.Equal([-1, 1], read.Job!.Bump[0].Sheet.Readings.Select(reading => reading.Travel.Inches));
    }

    [Theory]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: [{travel: 1 in, front: 5 in, rear: 0 in}]}]")]
    [InlineData("bump: [{side: left, " + Steps + ", readings: [{travel: 2 in, front: 2 in, rear: 0 in}, {travel: 1 in, front: 3 in, rear: 0 in}]}]")]
    [InlineData("bump: []")]
    public void What_a_wheel_can_give_is_no_problem(string entry) => Assert.Empty(Marked.Check($"{Head}{entry}\n").Problems);

    [Theory]
    [InlineData("bump: [«{" + Gauge + ", " + Reading + "}»]", "'side' is missing in this bump sheet")]
    [InlineData("bump: [«{side: left, " + Reading + "}»]", "'gauge' is missing in this bump sheet")]
    [InlineData("bump: [«{side: left, " + Gauge + "}»]", "'readings' is missing in this bump sheet")]
    [InlineData("bump: [{side: left, gauge: «{spacing: 10 in, grows: inward}», " + Reading + "}]", "'zeroed' is missing in 'gauge'")]
    [InlineData("bump: [{side: left, gauge: «{spacing: 10 in, zeroed: once}», " + Reading + "}]", "'grows' is missing in 'gauge'")]
    [InlineData("bump: [{side: left, gauge: «{zeroed: once, grows: inward}», " + Reading + "}]", "'spacing' is missing in 'gauge'")]
    [InlineData("bump: [{side: left, gauge: {spacing: «0 in», zeroed: once, grows: inward}, " + Reading + "}]", "'spacing' must be above zero")]
    [InlineData("bump: [{side: left, gauge: {spacing: 1 in, zeroed: once, grows: inward, resolution: «0 in»}, " + Reading + "}]", "'resolution' must be above zero")]
    [InlineData("bump: [{side: left, gauge: {spacing: 10 in, zeroed: «each»,  grows: inward}, " + Reading + "}]", "'zeroed' must be once or each step", "each step")]
    [InlineData("bump: [{side: left, gauge: {spacing: 10 in, zeroed: once,  grows: «out»}, " + Reading + "}]", "'grows' must be outward or inward, not 'out'", "outward")]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: [«{travel: 1 in, front: 1 in}»]}]", "'rear' is missing in this reading")]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: [{travel: 1 in, front: 1 in, rear: 1«»}]}]", "the unit is missing")]
    [InlineData("bump: [{side: left, " + Gauge + ", " + Reading + ", then: {«raised»: 1 in}}]", "has no key 'raised'", "outer_raised")]
    [InlineData("bump: «{side: left}»", "'bump' must be a list")]
    [InlineData("bump: [{side: left, " + Gauge + ", «readings»: []}]", "'readings' needs at least one reading")]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: «[{travel: 0 in, front: 0 in, rear: 0 in}]»}]", "'readings' has none away from ride height")]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: [{travel: «0 in», front: 0 in, rear: 1 mm}]}]", "ride height is where the readings count from: both are zero there")]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: [{travel: «-501 mm», front: 0 in, rear: 1 mm}]}]", "a travel of -501 mm is out of range: it is at most 500 mm each way")]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: [{travel: 1 in, front: 0 in, rear: 1 mm},\n  {travel: «25.4 mm», front: 0 in, rear: 1 mm}]}]", "there is a reading at 25.4 mm already, in line 3")]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: [«{travel: 1 in, front: 0 in, rear: -5.01 in}»]}]", "rear less front " + Far)]
    [InlineData("bump: [{side: left, " + Steps + ", readings: [«{travel: 2 in, front: 2 in, rear: 0 in}», {travel: 1 in, front: 3.1 in, rear: 0 in}]}]", "rear less front, added up from ride height, " + Far)]
    public void Sheets_are_checked(string entry, string phrase, string? suggestion = null) =>
        new Marked($"{Head}{entry}\n").Problem(phrase, suggestion);

    [Fact]
    public void Zeroed_once_a_reading_is_wrong_by_itself_whatever_is_wrong_with_others()
    {
        string sheet = "bump: [{side: left, gauge, readings: [{travel: 1 in, front: 0 in, rear: 1«»}, READING]}]";
        string far = "{travel: 2 in, front: 0 in, rear: 6 in}";
        IReadOnlyList<Problem> once = new Marked(
            Head + sheet.Replace("gauge", Gauge, StringComparison.Ordinal).Replace("READING", $"«{far}»", StringComparison.Ordinal)).Problems();
        Assert.EndsWith(Far, once[1].Message, StringComparison.Ordinal);
        new Marked(Head + sheet.Replace("gauge", Steps, StringComparison.Ordinal).Replace("READING", far, StringComparison.Ordinal))
            .Problem("the unit is missing");
    }

    [Fact]
    public void Every_reading_that_is_wrong_by_itself_is_named()
    {
        IReadOnlyList<Problem> problems = new Marked($$"""
            {{Head}}bump:
              - side: left
                {{Steps}}
                readings:
                  - {travel: 2 in, front: 0 in, rear: 1 mm}
                  - «{travel: 1 in, front: 0 in, rear: 6 in}»
                  - «{travel: -1 in, front: 0 in, rear: 6 in}»
            """).Problems();
        Assert.Equal(2, problems.Count);
        Assert.All(problems, problem => Assert.EndsWith(Far, problem.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{}", 0.254, 0.508, 0.762, null)]
    [InlineData("{very_good: 0.1 mm, felt: 0.2 mm, strongly_felt: 0.3 mm, spacing: 25 cm}", 0.1, 0.2, 0.3, 250)]
    [InlineData("{felt: 0.3 mm}", 0.254, 0.3, 0.762, null)]
    [InlineData("{very_good: 1 mm, felt: 2 mm, strongly_felt: 3 mm}", 1, 2, 3, null)]
    public void Limits_are_the_usual_ones_where_the_job_is_silent(string limits, double good, double felt, double strongly, int? spacing)
    {
        BumpLimits read = Read($"rules: {{bump: {limits}}}").BumpLimits;
        Assert.Equal([good, felt, strongly], Mm(read.VeryGood, read.Felt, read.StronglyFelt));
        Assert.Equal<double?>(spacing, read.Spacing is { } said ? Math.Round(said.Millimeters, 9) : null);
    }

    [Fact]
    public void Limits_of_a_job_without_them_are_the_usual_ones()
    {
        Assert.Equal(BumpLimits.Usual, Read("units: mm").BumpLimits);
        Assert.Equal(BumpLimits.Usual, Read("rules: {mark: 1 mm}").BumpLimits);
    }

    [Theory]
    [InlineData("rules: {bump: {very_good: 0.1 mm, felt: «0.1 mm»}}", "'felt' must lie above 'very_good', 0.004 in")]
    [InlineData("rules: {bump: {strongly_felt: 4 mm, very_good: 3 mm, felt: «2 mm»}}", "'felt' must lie above 'very_good', 0.118 in")]
    [InlineData("rules: {bump: {very_good: «0.02 in»}}", "'very_good' must lie below 'felt', 0.020 in, where the job says no other")]
    [InlineData("rules: {bump: {strongly_felt: «0.02 in»}}", "'strongly_felt' must lie above 'felt', 0.020 in, where the job says no other")]
    [InlineData("rules: {bump: {felt: «0.04 in»}}", "'felt' must lie below 'strongly_felt', 0.030 in, where the job says no other")]
    [InlineData("rules: {bump: {spacing: «0 in»}}", "'spacing' must be above zero")]
    [InlineData("rules: {bump: {very_good: «0 in»}}", "'very_good' must be above zero")]
    [InlineData("rules: {bump: {very_good: 0.01«»}}", "the unit is missing")]
    [InlineData("rules: {bump: {«good»: 1 mm}}", "'bump' of 'rules' of the job has no key 'good'", "very_good")]
    [InlineData("rules: {bump: «0.01 in»}", "'bump' must be keys and values, not a single value")]
    public void Limits_are_checked(string entry, string phrase, string? suggestion = null) =>
        new Marked($"{Head}{entry}\n").Problem(phrase, suggestion);

    [Fact]
    public void Limits_of_bump_steer_are_no_rule_of_a_rod() =>
        Marked.In(Samples.Job, "adjust: 3/16 in", "adjust: 3/16 in\n    rules: {«bump»: {felt: 0.02 in}}").Problem("'rules' of rod left has no key 'bump'");

    private static Job Read(string entries)
    {
        CheckedFile read = Marked.Check($"{Head}{entries}\n");
        Assert.Empty(read.Problems);
        Assert.Empty(read.Notes);
        return read.Job!;
    }

    private static double[] Mm(params Length[] lengths) => [.. lengths.Select(length => Math.Round(length.Millimeters, 9))];
}
