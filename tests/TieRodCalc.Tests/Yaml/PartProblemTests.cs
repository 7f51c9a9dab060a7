using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>What can be wrong in a part list, each in a sound file with one piece of it replaced.</summary>
public class PartProblemTests
{
    [Theory]
    [InlineData("thread_length: 80 mm", "«thread_lenght»: 80 mm", "inner end in-m18l-212 has no key 'thread_lenght'", "thread_length")]
    [InlineData("depth: 2 in, bore: closed, c", "«dept»: 2 in, bore: closed, c", "'inner' of sleeve sl-8-m18l-58r has no key 'dept'", "depth")]
    [InlineData("price: 31.00 USD", "«weight»: 3 kg", "has no key 'weight'", null)]
    [InlineData("jam_nuts:", "«jam_nut»:", "the part file has no key 'jam_nut'", "jam_nuts")]
    [InlineData("tierodcalc: 1", "tierodcalc: 1\n«units»: mm", "'units' belongs in a job", null)]
    public void An_unknown_key(string piece, string instead, string phrase, string? suggestion) =>
        Marked.In(Samples.Parts, piece, instead).Problem(phrase, suggestion);

    [Theory]
    [InlineData("  - id: in-m18l-212\n    name: b", "  - «name: b", "'id' is missing in inner end bent inner end")]
    [InlineData("  - {id: jn-58r, thread: 5/8-18 UNF-2B, thickness: 3/8 in}", "  - «{thread: 5/8-18 UNF-2B, thickness: 3/8 in}»", "'id' is missing in this jam nut")]
    [InlineData("  - {id: jn-58r, thread: 5/8-18 UNF-2B, thickness: 3/8 in}", "  - «{id: jn-58r, thickness: 3/8 in}»", "'thread' is missing in jam nut jn-58r")]
    [InlineData("  - {id: jn-58r, thread: 5/8-18 UNF-2B, thickness: 3/8 in}", "  - «{id: jn-58r, thread: 5/8-18 UNF-2B}»", "'thickness' is missing in jam nut jn-58r")]
    [InlineData("    thread_length: 80 mm\n", "", "'thread_length' is missing in inner end in-m18l-212")]
    [InlineData("    center_to_tip: 212 mm ± 0.5 mm\n", "", "'center_to_tip' is missing in inner end in-m18l-212")]
    [InlineData("    thread: M18x1.5-6g LH\n", "", "'thread' is missing in inner end in-m18l-212")]
    [InlineData("    length: 8 in\n", "", "'length' is missing in sleeve sl-8-m18l-58r")]
    [InlineData("{thread: M18x1.5-6H LH, depth: 2 in, bore: closed, countersink: 0.75 mm, witness: 1.5 in}", "«{thread: M18x1.5-6H LH, depth: 2 in}»", "'bore' is missing in 'inner' of sleeve sl-8-m18l-58r")]
    [InlineData("{thread: M14x1.5-6H, depth: 1.2 in, bore: closed}", "«{thread: M14x1.5-6H, bore: closed}»", "'depth' is missing in 'socket' of outer end rk-m14")]
    [InlineData("{id: rk-m14, center_to_face: 2 in, socket: {thread: M14x1.5-6H, depth: 1.2 in, bore: closed}}", "«{id: rk-m14, center_to_face: 2 in}»", "'socket' is missing in outer end rk-m14")]
    [InlineData("{id: rk-m14, center_to_face: 2 in, ", "«{id: rk-m14, ", "'center_to_face' is missing in outer end rk-m14")]
    [InlineData("materials:\n", "materials:\n  - «{kind: steel}»\n", "'id' is missing in this material")]
    public void A_missing_key(string piece, string instead, string phrase)
    {
        // Where the part is not marked, its first line is what must be marked.
        string sample = Samples.Parts;
        Problem problem = instead.Contains('»', StringComparison.Ordinal)
            ? Marked.In(sample, piece, instead).Problem(phrase)
            : Only(sample.Replace(piece, instead.Replace("«", "", StringComparison.Ordinal), StringComparison.Ordinal), phrase);
        Assert.True(problem.Length > 1);
    }

    [Theory]
    [InlineData("thread: M18x1.5-6g LH", "thread: M18x1.5-«6H» LH", "is a class of internal threads")]
    [InlineData("thread: 5/8-18 UNF-2B, depth", "thread: 5/8-18 UNF-«2A», depth", "is a class of external threads")]
    [InlineData("{id: jn-58r, thread: 5/8-18 UNF-2B", "{id: jn-58r, thread: 5/8-18 UNF-«2A»", "is a class of external threads")]
    [InlineData("center_to_tip: 212 mm ± 0.5 mm", "center_to_tip: 212«»", "the unit is missing")]
    [InlineData("center_to_tip: 212 mm ± 0.5 mm", "center_to_tip: '212 «ft»'", "feet are not read")]
    [InlineData("center_to_tip: 212 mm ± 0.5 mm", "center_to_tip: \"212 «ft»\"", "feet are not read")]
    [InlineData("center_to_tip: 212 mm ± 0.5 mm", "center_to_tip: «\"212 \\x66t\"»", "feet are not read")]
    [InlineData("center_to_tip: 212 mm ± 0.5 mm", "center_to_tip: «212»\n      ft", "feet are not read")]
    [InlineData("center_to_tip: 212 mm ± 0.5 mm", "center_to_tip: «0 mm»", "'center_to_tip' must be above zero")]
    [InlineData("center_to_tip: 212 mm ± 0.5 mm", "center_to_tip: «-»1 mm", "without a sign")]
    [InlineData("center_to_tip: 212 mm ± 0.5 mm", "center_to_tip: «212 mm ± 212 mm»", "the tolerance of 'center_to_tip' must be smaller")]
    [InlineData("thread_length: 80 mm", "thread_length: «0 in»", "must be above zero")]
    [InlineData("length: 8 in", "length: «0 in»", "must be above zero")]
    [InlineData("depth: 1.2 in", "depth: «0 in»", "must be above zero")]
    [InlineData("thickness: 9 mm", "thickness: «0 mm»", "must be above zero")]
    [InlineData("joint: tapered stud", "joint: «tapered studd»", "'joint' must be tapered stud or rod end, not 'tapered studd'", "tapered stud")]
    [InlineData("kind: steel", "kind: «steal»", "'kind' must be steel, aluminum or other", "steel")]
    [InlineData("bore: closed}     #", "bore: «clsoed»}     #", "'bore' must be closed or open", "closed")]
    [InlineData("joint: tapered stud", "stud: «upright»", "'stud' must be vertical, along axle or along car")]
    [InlineData("joint: tapered stud", "swing: «90 deg»", "'swing' must be above 0 and below 90 deg")]
    [InlineData("joint: tapered stud", "swing: «0 deg»", "'swing' must be above 0 and below 90 deg")]
    [InlineData("price: 31.00 USD", "price: 31.00«»", "the currency is missing")]
    [InlineData("price: 31.00 USD", "mass: «0 kg»", "above zero")]
    [InlineData("tensile: 850 MPa", "tensile: «0 MPa»", "above zero")]
    [InlineData("outside: hex 1 in", "outside: «square» 1 in", "hex")]
    [InlineData("outside: hex 1 in", "outside: hex «0 in»", "above zero")]
    [InlineData("name: bent inner end, M18 left-hand", "name: «\"two\\nlines\"»", "'name' must stand on one line")]
    [InlineData("name: bent inner end, M18 left-hand", "«name»: ", "'name' has no value")]
    [InlineData("name: bent inner end, M18 left-hand", "«name»: ''", "'name' has no value")]
    [InlineData("name: bent inner end, M18 left-hand", "«name»: null", "'name' has no value")]
    [InlineData("thread_length: 80 mm", "«thread_length»: ~", "'thread_length' has no value")]
    [InlineData("thread_length: 80 mm", "thread_length: «[80 mm]»", "'thread_length' must be a single value, not a list")]
    [InlineData("thread_length: 80 mm", "thread_length: «{nominal: 80 mm}»", "'thread_length' must be a single value, not keys and values")]
    [InlineData("inner: {thread: M18x1.5-6H LH, depth: 2 in, bore: closed, countersink: 0.75 mm, witness: 1.5 in}", "inner: «M18x1.5»", "'inner' must be keys and values, not a single value")]
    [InlineData("materials:\n", "materials:\n  - «steel»\n", "must be keys and values, not a single value")]
    [InlineData("materials:\n", "materials:\n  -«»\n", "this item of the list has no value")]
    public void A_wrong_value(string piece, string instead, string phrase, string? suggestion = null) =>
        Marked.In(Samples.Parts, piece, instead).Problem(phrase, suggestion);

    [Theory]
    [InlineData("inner_ends")]
    [InlineData("sleeves")]
    [InlineData("outer_ends")]
    [InlineData("jam_nuts")]
    [InlineData("materials")]
    public void A_list_that_is_none(string key)
    {
        new Marked($"tierodcalc: 1\n{key}: «x»\n").Problem($"'{key}' must be a list, not a single value");
        new Marked($"tierodcalc: 1\n{key}:\n  «a: b»\n").Problem($"'{key}' must be a list, not keys and values");
        new Marked($"tierodcalc: 1\n«{key}»:\n").Problem($"'{key}' has no value");
        Assert.Empty(Marked.Check($"tierodcalc: 1\n{key}: []\n").Problems);
    }

    [Theory]
    [InlineData("«any»", "cannot be an id")]
    [InlineData("«none»", "cannot be an id")]
    [InlineData("a«ä»b", "letters and digits of the English alphabet")]
    [InlineData("a« »b", "letters and digits of the English alphabet")]
    [InlineData("a«/»b", "letters and digits of the English alphabet")]
    [InlineData("'«.»a'", "begins with a letter or digit")]
    [InlineData("«_»a", "begins with a letter or digit")]
    public void An_id_that_is_none(string id, string phrase) =>
        Marked.In(Samples.Parts, "id: jn-58r", "id: " + id).Problem(phrase);

    [Theory]
    [InlineData("1")]
    [InlineData("A.b_c-9")]
    [InlineData("'null'")]
    [InlineData("true")]
    public void An_id_that_is_one(string id) =>
        Assert.Empty(Marked.Check(Samples.Parts.Replace("id: jn-58r", "id: " + id, StringComparison.Ordinal)).Problems);

    [Theory]
    [InlineData("thread_length: 80 mm", "thread_length: «220 mm»", "the thread of 220 mm is longer than the 212 mm ± 0.5 mm from ball center to tip")]
    [InlineData("rethread: 0 mm", "rethread: «140 mm»", "the thread of 80 mm and 140 mm more are longer than the 212 mm ± 0.5 mm")]
    [InlineData("lead: 1.5 mm", "lead: «80 mm»", "the lead of 80 mm is not shorter than the thread of 80 mm")]
    [InlineData("thread_length: 1 5/8 in", "thread_length: «1/20 in»", "the lead of 1.41 mm (one pitch) is not shorter than the thread of 1/20 in")]
    [InlineData("max_cut: 40 mm", "max_cut: «212 mm»", "a cut of 212 mm leaves nothing of the 212 mm ± 0.5 mm")]
    [InlineData("countersink: 0.75 mm", "countersink: «2 in»", "the countersink of 2 in is not shallower than the thread of 2 in")]
    [InlineData("depth: 1.2 in", "depth: «0.7 mm»", "the countersink of 0.75 mm (half a pitch) is not shallower than the thread of 0.7 mm")]
    [InlineData("witness: 1.5 in", "witness: «8.1 in»", "the witness hole at 8.1 in lies beyond the sleeve's 8 in")]
    [InlineData("witness: 1.5 in", "clamp: «9 in»", "the clamp at 9 in lies beyond the sleeve's 8 in")]
    [InlineData("witness: 1.5 in", "witness: «8.001 in»", "the witness hole at 8.001 in lies beyond the sleeve's 8 in")]
    [InlineData("bore: closed}     #", "bore: closed, witness: «8.001 in»}     #", "the witness hole at 8.001 in lies beyond the sleeve's 8 in")]
    [InlineData("bore: closed}     #", "bore: closed, clamp: «203.21 mm»}     #", "the clamp at 203.21 mm lies beyond the sleeve's 8 in")]
    [InlineData("outside: hex 1 in", "outside: «hex 18 mm»", "the outside, hex 18 mm, must be larger than the threads inside it")]
    [InlineData("outside: hex 1 in", "outside: «round 5/8 in»", "the outside, round 5/8 in, must be larger than the threads inside it")]
    public void Dimensions_that_contradict_each_other(string piece, string instead, string phrase) =>
        Marked.In(Samples.Parts, piece, instead).Problem(phrase);

    [Theory]
    [InlineData("witness: 1.5 in", "witness: 8 in")]
    [InlineData("witness: 1.5 in", "clamp: 203.2 mm")]
    [InlineData("bore: closed}     #", "bore: closed, witness: 8 in, clamp: 8 in}     #")]
    [InlineData("outside: hex 1 in", "outside: hex 18.01 mm")]
    [InlineData("outside: hex 1 in", "outside: round 18.01 mm")]
    public void Dimensions_that_just_agree(string piece, string instead)
    {
        Assert.Contains(piece, Samples.Parts, StringComparison.Ordinal);
        CheckedFile read = Marked.Check(Samples.Parts.Replace(piece, instead, StringComparison.Ordinal));
        Assert.Empty(read.Problems);
        Assert.Single(read.Parts!.Sleeves);
    }

    [Fact]
    public void Threads_longer_than_their_sleeve() => new Marked(
        Samples.Parts.Replace("length: 8 in", "length: «8 in»", StringComparison.Ordinal)
            .Replace("UNF-2B, depth: 2 in", "UNF-2B, depth: 7 in", StringComparison.Ordinal))
        .Problem("the threads of the two ends are 2 in and 7 in, together longer than the sleeve's 8 in");

    [Theory]
    [InlineData("lead")]
    [InlineData("offset")]
    [InlineData("max_cut")]
    [InlineData("rethread")]
    public void Zero_is_a_value_of_what_may_be_nothing(string key) => Assert.Empty(Marked.Check(
        "tierodcalc: 1\ninner_ends:\n  - {id: a, thread: M18x1.5, center_to_tip: 200 mm, thread_length: 80 mm, " + key + ": 0 mm}\n").Problems);

    [Fact]
    public void An_end_with_a_socket_has_no_thread_of_its_own()
    {
        IReadOnlyList<Problem> problems = Marked.In(
            Samples.Parts, "{id: rk-m14, ", "{id: rk-m14, «thread»: M14, «max_cut»: 2 mm, ").Problems();
        Assert.Equal("'max_cut' belongs to an end with an external thread; outer end rk-m14 has a socket", problems[1].Message);
    }

    [Fact]
    public void An_inner_end_cannot_have_a_socket() =>
        Marked.In(Samples.Parts, "joint: tapered stud", "«socket»: {}").Problem("has no key 'socket'");

    [Fact]
    public void Every_problem_of_a_file_is_reported_at_once()
    {
        CheckedFile read = Marked.Check("""
            tierodcalc: 1
            sleeves:
              - id: a b
                length: 8
                inner: {thread: M18x1.5-6H L, deepth: 2 in, bore: closed}
            jam_nuts:
              - {id: n, thread: M18x1.5, thickness: 9 mm, colour: red}
            nuts: []
            """);
        Assert.Equal(
            [(3, 5), (3, 10), (4, 14), (5, 32), (5, 35), (7, 47), (8, 1)],
            read.Problems.Select(problem => (problem.Line, problem.Column)));
    }

    private static Problem Only(string text, string phrase)
    {
        Problem problem = Assert.Single(Marked.Check(text).Problems);
        Assert.Contains(phrase, problem.Message, StringComparison.Ordinal);
        Assert.Equal('-', problem.SourceLine!.TrimStart()[0]);
        Assert.Equal(5, problem.Column);
        return problem;
    }
}
