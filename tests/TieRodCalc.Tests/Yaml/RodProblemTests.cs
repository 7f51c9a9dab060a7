using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>What can be wrong with a rod, each in a sound job with one piece of it replaced.</summary>
public class RodProblemTests
{
    private const string Nuts = "nuts: {inner: jn-m18l, outer: jn-58r}";

    [Theory]
    [InlineData("inner: in-m18l-212", "inner: «in-m18l-221»", "there is no inner end 'in-m18l-221'", "in-m18l-212")]
    [InlineData("inner: in-m18l-212", "inner: «re-58r»", "re-58r is an outer end, not an inner end", null)]
    [InlineData("inner: in-m18l-212", "inner: «none»", "there is no inner end 'none'", null)]
    [InlineData("sleeve: sl-8-m18l-58r", "sleeve: «sl-8-m18l-58»", "there is no sleeve", "sl-8-m18l-58r")]
    [InlineData("sleeve: sl-8-m18l-58r", "sleeve: «st-850»", "st-850 is a material, not a sleeve", null)]
    [InlineData("outer: re-58r\n", "outer: «re-58l»\n", "there is no outer end 're-58l'", "re-58r")]
    [InlineData("outer: jn-58r}", "outer: «jn-58l»}", "there is no jam nut 'jn-58l'", "jn-58r")]
    [InlineData("material: st-850\nouter", "material: «st-85»\nouter", "there is no material 'st-85'", "st-850")]
    [InlineData("inner: in-m18l-212", "inner: [in-m18l-212, «x»]", "there is no inner end 'x'", null)]
    [InlineData("inner: in-m18l-212", "inner: [in-m18l-212, «[x]»]", "must be an id", null)]
    [InlineData("inner: in-m18l-212", "inner: «[]»", "the list of 'inner' is empty", null)]
    [InlineData("inner: in-m18l-212", "inner: {«tread»: 5/8-18}", "'inner' of rod left has no key 'tread'", "thread")]
    [InlineData("inner: in-m18l-212", "inner: {thread: 5/8-18 UNF-«2B»}", "internal threads", null)]
    [InlineData("inner: in-m18l-212", "«inner»:", "'inner' has no value", null)]
    public void A_part_that_is_none(string piece, string instead, string phrase, string? suggestion) =>
        Marked.In(Samples.Job, piece, instead).Problem(phrase, suggestion);

    [Theory]
    [InlineData("  - name: left\n    side: left", "  - «side: left»", "'name' is missing in this rod")]
    [InlineData("name: left\n    side: left\n    inner: in-m18l-212\n", "«name: left»\n", "'inner' is missing in rod left")]
    [InlineData("name: left\n    side: left\n    inner: in-m18l-212\n    sleeve: sl-8-m18l-58r\n", "«name: left»\n    inner: in-m18l-212\n", "'sleeve' is missing in rod left")]
    [InlineData(Nuts, "nuts: «{inner: jn-m18l}»", "'outer' is missing in 'nuts' of rod left")]
    [InlineData(Nuts, "nuts: «{outer: none}»", "'inner' is missing in 'nuts' of rod left")]
    [InlineData("adjust: 3/16 in", "adjust: «{shorter: 1 in}»", "'longer' is missing in 'adjust' of rod left")]
    [InlineData("length: 15 3/4 in", "length: «{from: [0 in, 0 in, 0 in]}»", "'to' is missing in 'length' of rod left")]
    [InlineData("length: 15 3/4 in", "length: «{rod: 16 in, toe: 0 in}»", "'want' is missing in 'length' of rod left")]
    public void A_missing_key(string piece, string instead, string phrase) => Marked.In(Samples.Job, piece, instead).Problem(phrase);

    [Theory]
    [InlineData("side: left", "side: «Left»", "'side' must be left or right", "left")]
    [InlineData("length: 15 3/4 in", "length: 15 3/4 in «± 1 mm»", "a tolerance belongs to dimensions")]
    [InlineData("length: 15 3/4 in", "length: «0 in»", "'length' must be above zero")]
    [InlineData("adjust: 3/16 in", "adjust: 3/16«»", "the unit is missing")]
    [InlineData("adjust: 3/16 in", "adjust: {shorter: 1 in, longer: 1 in «± 1 mm»}", "a tolerance belongs to dimensions")]
    [InlineData("adjust: 3/16 in", "adjust: 3/16 in\n    rules: {mark: «0 mm»}", "'mark' must be above zero")]
    [InlineData("adjust: 3/16 in", "adjust: 3/16 in\n    rules: {engagement: 2 «turns»}", "diameters")]
    [InlineData("adjust: 3/16 in", "adjust: 3/16 in\n    rules: {load: «0 kN»}", "above zero")]
    [InlineData("adjust: 3/16 in", "adjust: 3/16 in\n    rules: {«tipgap»: 0 kN}", "'rules' of rod left has no key", "tip_gap")]
    [InlineData("adjust: 3/16 in", "adjust: 3/16 in\n    clocking: 90«»", "the unit is missing")]
    [InlineData("adjust: 3/16 in", "adjust: 3/16 in\n    built: {showing: {inner: «x»}}", "expected a length")]
    [InlineData("adjust: 3/16 in", "adjust: 3/16 in\n    built: {cut: {«left»: 1 in}}", "'cut' of 'built' of rod left has no key 'left'")]
    [InlineData("length: 15 3/4 in", "length: {from: [0 in, 0 in, 0 in], to: «[0 in, 0 in, 0 in]»}", "the points 'from' and 'to' are the same")]
    [InlineData("length: 15 3/4 in", "length: {from: [0 in, 0 in, 0«»], to: [1 in, 0 in, 0 in]}", "the unit is missing")]
    [InlineData("length: 15 3/4 in", "length: {from: «[0 in, 0 in]», to: [1 in, 0 in, 0 in]}", "a point has three coordinates")]
    [InlineData("length: 15 3/4 in", "length: {from: [0 in, «[1 in]», 0 in], to: [1 in, 0 in, 0 in]}", "a coordinate is a length")]
    [InlineData("length: 15 3/4 in", "length: {from: «1 in», to: [1 in, 0 in, 0 in]}", "'from' must be a point")]
    [InlineData("length: 15 3/4 in", "length: «{from: [0 in, 0 in, 0 in], to: [1 in, 0 in, 0 in], rod: 3 in}»", "not by both")]
    [InlineData("length: 15 3/4 in", "length: {rod: 16 in, toe: 1/8 in in, want: «x»}", "toe")]
    [InlineData("length: 15 3/4 in", "length: «[15 3/4 in]»", "'length' must be a single value")]
    [InlineData("job: No. 27 ice-race coupe", "units: «inch»", "'units' must be in or mm", "in")]
    [InlineData("rods:\n", "rods:\n  - «left»\n", "must be keys and values")]
    public void A_wrong_value(string piece, string instead, string phrase, string? suggestion = null) =>
        Marked.In(Samples.Job, piece, instead).Problem(phrase, suggestion);

    [Fact]
    public void Two_rods_of_one_name() => Marked.In(
        Samples.Job,
        "rods:\n",
        "rods:\n  - {name: left, inner: any, outer: any, sleeve: any, nuts: {inner: none, outer: none}, length: 9 in, adjust: 0 in}\n")
        .Text.Replace("  - name: left", "  - name: «left»", StringComparison.Ordinal)
        .AsMarked().Problem("there is a rod left already, in line 4");

    [Theory]
    [InlineData("inner: {thread: M18x1.5-6H LH", "inner: {thread: M18x1.5-6H", "inner: «in-m18l-212»", "in-m18l-212 (M18x1.5-6g LH) does not go into sleeve sl-8-m18l-58r (M18x1.5-6H): hand differs")]
    [InlineData("outer: {thread: 5/8-18 UNF-2B", "outer: {thread: M16x1.5-6H", "outer: «re-58r»\n", "diameter, pitch and form differ; it would start and then bind, so do not force it")]
    [InlineData("outer: {thread: 5/8-18 UNF-2B", "outer: {thread: 3/4-16 UNF-2B", "outer: «re-58r»\n", "re-58r (5/8-18 UNF-2A) does not go into sleeve sl-8-m18l-58r (3/4-16 UNF-2B): diameter and pitch differ")]
    [InlineData("{id: jn-m18l, thread: M18x1.5-6H LH", "{id: jn-m18l, thread: M18x2-6H LH", "inner: «jn-m18l»", "in-m18l-212 (M18x1.5-6g LH) does not go into nut jn-m18l (M18x2-6H LH): pitch differs")]
    [InlineData("{id: jn-58r, thread: 5/8-18 UNF-2B", "{id: jn-58r, thread: 5/8-18 UNF-2B LH", "outer: «jn-58r»}", "does not go into nut jn-58r (5/8-18 UNF-2B LH): hand differs")]
    public void Threads_that_do_not_go_together(string piece, string instead, string marked, string phrase)
    {
        string plain = marked.Replace("«", "", StringComparison.Ordinal).Replace("»", "", StringComparison.Ordinal);
        string spoiled = Samples.Job.Replace(piece, instead, StringComparison.Ordinal);
        Marked.In(spoiled, plain, marked).Problem(phrase);
    }

    [Fact]
    public void Threads_that_could_not_start_are_not_warned_of()
    {
        string spoiled = Samples.Job.Replace("outer: {thread: 5/8-18 UNF-2B", "outer: {thread: 3/4-16 UNF-2B", StringComparison.Ordinal);
        Assert.DoesNotContain("force", Assert.Single(Marked.Check(spoiled).Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fault_of_a_part_is_reported_at_the_part_alone() => Marked.In(
        Samples.Job, "countersink: 0.75 mm", "countersink: «3 in»").Problem("the countersink of 3 in");

    [Fact]
    public void Clocking_is_needed_where_both_ends_are_bent()
    {
        string bent = Samples.Job.Replace("joint: rod end", "joint: rod end, offset: 10 mm", StringComparison.Ordinal);
        Marked.In(bent, "name: left", "«name: left»").Problem("both ends of rod left are bent: 'clocking' is missing");
        CheckedFile read = Marked.Check(bent.Replace("adjust: 3/16 in", "adjust: 3/16 in\n    clocking: 90 deg", StringComparison.Ordinal));
        Assert.Empty(read.Problems);
        Assert.DoesNotContain(read.Notes, note => note.Message.Contains("clocking", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("90«»", "the unit is missing")]
    [InlineData("90 «degrees»", "expected the unit")]
    [InlineData("«[90 deg]»", "'clocking' must be a single value")]
    public void A_clocking_that_cannot_be_read_is_not_missing_too(string clocking, string phrase) => Samples.Job
        .Replace("joint: rod end", "joint: rod end, offset: 10 mm", StringComparison.Ordinal)
        .Replace("adjust: 3/16 in", "adjust: 3/16 in\n    clocking: " + clocking, StringComparison.Ordinal)
        .AsMarked().Problem(phrase);

    [Fact]
    public void Clocking_of_a_straight_end_is_noted()
    {
        CheckedFile read = Marked.Check(Samples.Job.Replace("adjust: 3/16 in", "adjust: 3/16 in\n    clocking: 90 deg", StringComparison.Ordinal));
        Problem note = Assert.Single(read.Notes, note => note.Message.Contains("clocking", StringComparison.Ordinal));
        Assert.Equal((12, 5, 8), (note.Line, note.Column, note.Length));
    }

    [Theory]
    [InlineData("length: «14 mm»", "3/16 in", "the length of 14 mm is not above 14.00 mm, the least distance")]
    [InlineData("length: «{from: [0 mm, 0 mm, 0 mm], to: [0 mm, 13 mm, 0 mm]}»", "3/16 in", "the length of 13.00 mm is not above 14.00 mm")]
    [InlineData("length: «3 in»", "2.5 in", "the length of 3 in less 63.50 mm of adjustment is not above 14.00 mm")]
    [InlineData("length: «3 in»", "{shorter: 3 in, longer: 0 in}", "less 76.20 mm of adjustment")]
    public void A_length_below_the_offset(string length, string adjust, string phrase) => Marked.In(
        Samples.Job.Replace("adjust: 3/16 in", "adjust: " + adjust, StringComparison.Ordinal), "length: 15 3/4 in", length).Problem(phrase);

    [Fact]
    public void A_socket_leaves_no_place_for_a_sleeve()
    {
        IReadOnlyList<Problem> problems = Samples.Job
            .Replace("outer: re-58r\n", "outer: rk-m14\n", StringComparison.Ordinal)
            .Replace("inner: in-m18l-212", "inner: «in-m18l-212»", StringComparison.Ordinal)
            .Replace("outer: jn-58r}", "«outer»: jn-58r}", StringComparison.Ordinal)
            .Replace("sleeve: sl", "«sleeve»: sl", StringComparison.Ordinal).AsMarked().Problems();
        Assert.Contains("does not go into the socket of rk-m14 (M14x1.5-6H): hand and diameter differ", problems[0].Message, StringComparison.Ordinal);
        Assert.Contains("there is no place for a sleeve", problems[1].Message, StringComparison.Ordinal);
        Assert.Contains("there is no outer joint for a nut", problems[2].Message, StringComparison.Ordinal);
    }
}
