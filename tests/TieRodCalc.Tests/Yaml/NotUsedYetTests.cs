using TieRodCalc.Parts;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>Keys that are read and checked and not used yet.</summary>
public class NotUsedYetTests
{
    private const string Gauge = "gauge: {spacing: 10 in, zeroed: once, grows: outward}";
    private const string Reading = "readings: [{travel: -1 in, front: 0 in, rear: -0.5 mm}]";

    [Theory]
    [InlineData("swing: 14 deg", "swing")]
    [InlineData("stud: along axle", "stud")]
    public void Keys_of_parts_are_noted_at_the_first_that_has_them(string entry, string key)
    {
        string end = $"thread: M18x1.5, center_to_tip: 200 mm, thread_length: 80 mm, {entry}}}\n";
        CheckedFile read = Marked.Check($"tierodcalc: 1\ninner_ends:\n  - {{id: a, {end}  - {{id: b, {end}");
        Assert.Empty(read.Problems);
        Problem note = Assert.Single(read.Notes);
        Assert.Equal($"'{key}' is read and checked for spelling, but this version does not use it yet", note.Message);
        Assert.Equal((3, key.Length), (note.Line, note.Length));
    }

    [Fact]
    public void Swing_and_stud_of_either_sort_of_end_are_kept()
    {
        CheckedFile read = Marked.Check("""
            tierodcalc: 1
            inner_ends:
              - {id: a, thread: M18x1.5, center_to_tip: 200 mm, thread_length: 80 mm, joint: tapered stud, swing: 14.5 deg, stud: vertical}
            outer_ends:
              - {id: b, thread: M18x1.5, center_to_tip: 90 mm, thread_length: 40 mm, swing: 16 deg, stud: along axle}
              - {id: c, center_to_face: 2 in, socket: {thread: M14x1.5, depth: 30 mm, bore: closed}, joint: rod end, swing: 22 deg, stud: along axle}
              - {id: d, center_to_face: 2 in, socket: {thread: M14x1.5, depth: 30 mm, bore: closed}}
            """);
        Assert.Empty(read.Problems);
        ThreadedEnd inner = Assert.Single(read.Parts!.InnerEnds);
        Assert.Equal((JointKind.TaperedStud, 14.5, StudDirection.Vertical), (inner.Joint, inner.Swing!.Value.Degrees, inner.Stud));
        ThreadedEnd outer = Assert.Single(read.Parts.OuterEnds);
        Assert.Equal((null, 16, StudDirection.AlongAxle), (outer.Joint, outer.Swing!.Value.Degrees, outer.Stud));
        Assert.Equal(["c", "d"], read.Parts.SocketEnds.Select(end => end.Info.Id));
        SocketEnd socket = read.Parts.SocketEnds[0];
        Assert.Equal((JointKind.RodEnd, 22, StudDirection.AlongAxle), (socket.Joint, socket.Swing!.Value.Degrees, socket.Stud));
        SocketEnd silent = read.Parts.SocketEnds[1];
        Assert.Equal((null, null, null), (silent.Joint, silent.Swing, silent.Stud));
    }

    [Theory]
    [InlineData("bump: [{side: left, " + Gauge + ", " + Reading + "}]")]
    [InlineData("bump: [{side: left, " + Gauge + ", " + Reading + ", then: {outer_raised: -2 mm}}]")]
    [InlineData("bump: []")]
    [InlineData("corner: {right: {wheel: [0 in, 0 in, 0 in]}}")]
    public void Sheets_and_corners_are_noted(string entry)
    {
        CheckedFile read = Marked.Check($"tierodcalc: 1\njob: x\n{entry}\n");
        Assert.Empty(read.Problems);
        Assert.Equal((3, 1), (Assert.Single(read.Notes).Line, read.Notes[0].Column));
    }

    [Theory]
    [InlineData("bump: [«{" + Gauge + ", " + Reading + "}»]", "'side' is missing in this bump sheet")]
    [InlineData("bump: [«{side: left, " + Reading + "}»]", "'gauge' is missing in this bump sheet")]
    [InlineData("bump: [«{side: left, " + Gauge + "}»]", "'readings' is missing in this bump sheet")]
    [InlineData("bump: [{side: left, gauge: «{spacing: 10 in, grows: inward}», " + Reading + "}]", "'zeroed' is missing in 'gauge'")]
    [InlineData("bump: [{side: left, gauge: {spacing: «0 in», zeroed: once, grows: inward}, " + Reading + "}]", "'spacing' must be above zero")]
    [InlineData("bump: [{side: left, gauge: {spacing: 10 in, zeroed: «each»,  grows: inward}, " + Reading + "}]", "'zeroed' must be once or each step", "each step")]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: [«{travel: 1 in, front: 1 in}»]}]", "'rear' is missing in this reading")]
    [InlineData("bump: [{side: left, " + Gauge + ", readings: [{travel: 1 in, front: 1 in, rear: 1«»}]}]", "the unit is missing")]
    [InlineData("bump: [{side: left, " + Gauge + ", " + Reading + ", then: {«raised»: 1 in}}]", "has no key 'raised'", "outer_raised")]
    [InlineData("bump: «{side: left}»", "'bump' must be a list")]
    [InlineData("corner: {«front»: {}}", "'corner' of the job has no key 'front'")]
    [InlineData("corner: {left: {lower: {ball: «[1 in]»}}}", "a point has three coordinates")]
    [InlineData("corner: {left: {upper: {axis: [[1 in, 1 in, 1 in], «2 in»]}}}", "'axis' must be a point")]
    public void They_are_checked_all_the_same(string entry, string phrase, string? suggestion = null) =>
        new Marked($"tierodcalc: 1\njob: x\n{entry}\n").Problem(phrase, suggestion);
}
