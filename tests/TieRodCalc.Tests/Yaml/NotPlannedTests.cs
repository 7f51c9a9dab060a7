using TieRodCalc.Steering;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>Rods whose parts are left open, and rods of every kind that are planned.</summary>
public class NotPlannedTests
{
    private const string Open = "is left open: ask choose which parts reach the length, and name them";

    [Theory]
    [InlineData("inner: in-m18l-212", "inner: any", Open, 6, 12, 3)]
    [InlineData("inner: in-m18l-212", "inner: [in-m18l-212]", Open, 6, 12, 13)]
    [InlineData("inner: in-m18l-212", "inner: {thread: M18x1.5 LH}", Open, 6, 12, 20)]
    [InlineData("sleeve: sl-8-m18l-58r", "sleeve: {inner: M18x1.5 LH, outer: 5/8-18}", Open, 7, 13, 34)]
    [InlineData("sleeve: sl-8-m18l-58r", "sleeve: any", Open, 7, 13, 3)]
    [InlineData("outer: re-58r\n", "outer: any\n", Open, 8, 12, 3)]
    [InlineData("outer: jn-58r}", "outer: any}", Open, 9, 35, 3)]
    public void Is_said_at_its_place(string piece, string instead, string phrase, int line, int column, int length)
    {
        CheckedFile read = Marked.Check(Samples.Job.Replace(piece, instead, StringComparison.Ordinal));
        Assert.Empty(read.Problems);
        JobRod rod = Assert.Single(read.Job!.Rods);
        Assert.Null(rod.Rod);
        Assert.NotNull(rod.Request);
        Assert.Contains(phrase, rod.NotPlanned!.Message, StringComparison.Ordinal);
        Assert.Equal((line, column, length), (rod.NotPlanned.Line, rod.NotPlanned.Column, rod.NotPlanned.Length));
    }

    [Theory]
    [InlineData("nuts: {inner: none}")]
    [InlineData("nuts: {inner: none, outer: none}")]
    [InlineData("nuts: {inner: jn-m14, outer: none}")]
    public void A_rod_with_one_threaded_joint(string nuts)
    {
        CheckedFile read = Marked.Check("""
            tierodcalc: 1
            rods:
              - name: rack
                side: right
                inner: in-m14
                outer: rk-m14
                NUTS
                length: 250 mm
                adjust: 5 mm
            inner_ends:
              - {id: in-m14, thread: M14x1.5, center_to_tip: 220 mm, thread_length: 60 mm}
            jam_nuts:
              - {id: jn-m14, thread: M14x1.5, thickness: 8 mm}
            outer_ends:
              - {id: rk-m14, center_to_face: 2 in, socket: {thread: M14x1.5-6H, depth: 1.2 in, bore: closed}}
            """.Replace("NUTS", nuts, StringComparison.Ordinal));
        Assert.Empty(read.Problems);
        JobRod rod = Assert.Single(read.Job!.Rods);
        Assert.Equal(CarSide.Right, rod.Side);
        Assert.Null(rod.NotPlanned);
        Assert.True(rod.Rod!.Parts.OneJoint);
    }

    [Fact]
    public void The_length_between_two_points_is_planned()
    {
        JobRod rod = Marked.Check(Samples.Job.Replace(
            "length: 15 3/4 in", "length: {from: [0 in, 3 in, -1 mm], to: [300 mm, 3 in, 399 mm]}", StringComparison.Ordinal)).Job!.Rods[0];
        Assert.Null(rod.NotPlanned);
        Assert.Equal(500, rod.Request!.Target.Millimeters, 1e-9);
    }

    [Fact]
    public void Each_way_may_have_an_adjustment_of_its_own()
    {
        JobRod rod = Marked.Check(Samples.Job.Replace(
            "adjust: 3/16 in", "adjust: {shorter: 3 mm, longer: 0 in}", StringComparison.Ordinal)).Job!.Rods[0];
        Assert.Equal((3, 0), (rod.Request!.Shorter.Millimeters, rod.Request.Longer.Millimeters));
    }
}
