using TieRodCalc.Parts;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Yaml;

/// <summary>Swing and stud of ends: kept, and noted where they are not checked.</summary>
public class SwingNoteTests
{
    private const string Points =
        "lower: {axis: [[-6 in, 8 in, 5 in], [6 in, 8 in, 5 in]], ball: [0 in, 20 in, 5 in]}, "
            + "upper: {axis: [[-6 in, 10 in, 13 in], [6 in, 10 in, 13 in]], ball: [0 in, 19 in, 15 in]}, wheel: [0 in, 22 in, 9 in]";

    private const string Left = "axis: [[0 in, 20 in, 5 in], [0 in, 19 in, 15 in]], outer: [-6 in, 20 in, 6 in], inner: [-6 in, 8 in, 6 in]";
    private const string Corner = "steering: {left: {" + Left + "}}\ncorner: {left: {" + Points + "}}\n";
    private const string Unknown = "corner: {left: {" + Points + "}}\n";

    private static string Job => Samples.Job
        .Replace("joint: tapered stud ", "joint: tapered stud\n    swing: 20 deg\n    stud: along car\n    #", StringComparison.Ordinal)
        .Replace("1 5/8 in, joint: rod end}", "1 5/8 in, joint: rod end, stud: vertical, swing: 14 deg}", StringComparison.Ordinal)
        .Replace("bore: closed}}   # no sleeve", "bore: closed}, swing: 9 deg}", StringComparison.Ordinal);

    [Fact]
    public void Swing_and_stud_of_either_sort_of_end_are_kept()
    {
        CheckedFile read = Marked.Check("""
            tierodcalc: 1
            inner_ends:
              - {id: a, thread: M18x1.5, center_to_tip: 200 mm, thread_length: 80 mm, joint: tapered stud, swing: 14.5 deg, stud: vertical}
            outer_ends:
              - {id: b, thread: M18x1.5, center_to_tip: 90 mm, thread_length: 40 mm, swing: 16 deg, stud: along car}
              - {id: c, center_to_face: 2 in, socket: {thread: M14x1.5, depth: 30 mm, bore: closed}, joint: rod end, swing: 22 deg, stud: along axle}
              - {id: d, center_to_face: 2 in, socket: {thread: M14x1.5, depth: 30 mm, bore: closed}}
            """);
        Assert.Empty(read.Problems);
        ThreadedEnd inner = Assert.Single(read.Parts!.InnerEnds);
        Assert.Equal((JointKind.TaperedStud, 14.5, StudDirection.Vertical), (inner.Joint, inner.Swing!.Value.Degrees, inner.Stud));
        ThreadedEnd outer = Assert.Single(read.Parts.OuterEnds);
        Assert.Equal((null, 16, StudDirection.AlongCar), (outer.Joint, outer.Swing!.Value.Degrees, outer.Stud));
        Assert.Equal(["c", "d"], read.Parts.SocketEnds.Select(end => end.Info.Id));
        SocketEnd socket = read.Parts.SocketEnds[0];
        Assert.Equal((JointKind.RodEnd, 22, StudDirection.AlongAxle), (socket.Joint, socket.Swing!.Value.Degrees, socket.Stud));
        SocketEnd silent = read.Parts.SocketEnds[1];
        Assert.Equal((null, null, null), (silent.Joint, silent.Swing, silent.Stud));
        Assert.Empty(read.Notes);
    }

    [Fact]
    public void A_job_without_the_corner_of_a_rod_notes_each_key_once()
    {
        foreach (string job in new[]
            {
                Job,
                Job + Unknown,
                Job + "steering: {left: {" + Left + "}}\n",
                (Job + Corner).Replace("    side: left\n", "", StringComparison.Ordinal),
                (Job + Corner).Replace("    side: left\n", "    side: right\n", StringComparison.Ordinal),
            })
        {
            CheckedFile read = Marked.Check(job);
            Assert.Empty(read.Problems);
            Assert.Equal(
                new[] { "swing", "stud" }.Select(key =>
                    $"'{key}' is checked by 'bump' and 'plan' only where the job gives the points of the rod's corner, in 'corner' and 'steering'"),
                read.Notes.Select(note => note.Message));
            Assert.Equal(["    swing: 20 deg", "    stud: along car"], read.Notes.Select(note => note.SourceLine));
            Assert.Equal([(5, 5), (5, 4)], read.Notes.Select(note => (note.Column, note.Length)));
        }
    }

    [Fact]
    public void With_the_corner_nothing_is_noted()
    {
        CheckedFile read = Marked.Check(Job + Corner);
        Assert.Empty(read.Problems);
        Assert.Empty(read.Notes);
        Assert.NotNull(read.Job!.Corners[0].Geometry);
    }

    [Fact]
    public void Ends_that_no_rod_uses_are_not_noted()
    {
        string job = Job.Replace("    swing: 20 deg\n    stud: along car\n", "", StringComparison.Ordinal)
            .Replace(", stud: vertical, swing: 14 deg", "", StringComparison.Ordinal);
        Assert.Empty(Marked.Check(job).Notes);
        Assert.Contains("swing: 9 deg", job, StringComparison.Ordinal);

        string open = job.Replace("    sleeve: sl-8-m18l-58r\n    outer: re-58r\n", "    outer: any\n", StringComparison.Ordinal)
            .Replace("nuts: {inner: jn-m18l, outer: jn-58r}", "nuts: {inner: any}", StringComparison.Ordinal);
        CheckedFile chosen = Marked.Check(open);
        Assert.Empty(chosen.Problems);
        Assert.StartsWith("'swing' is checked", Assert.Single(chosen.Notes).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_file_gets_its_note_from_the_job_that_uses_it()
    {
        using TemporaryFolder folder = new();
        int parts = Job.IndexOf("materials:", StringComparison.Ordinal);
        folder.Write("parts.yaml", "tierodcalc: 1\n" + Job[parts..]);
        folder.Write("job.yaml", Job[..parts] + "parts: [parts.yaml]\n");
        Reading<Job> read = JobReader.Read(folder.At("job.yaml"));
        Assert.Empty(read.Problems);
        Assert.Equal(["parts.yaml", "parts.yaml"], read.Notes.Select(note => Path.GetFileName(note.File)));
        Assert.Empty(JobReader.Check(folder.At("parts.yaml")).Notes);
    }

    [Theory]
    [InlineData("swing: «90 deg»", "'swing' must be above 0 and below 90 deg")]
    [InlineData("stud: «across»", "'stud' must be vertical, along axle or along car, not 'across'")]
    [InlineData("stud: «along cart»", "'stud' must be vertical, along axle or along car", "along car")]
    public void They_are_checked(string entry, string phrase, string? suggestion = null) =>
        Marked.In(Samples.Parts, "joint: tapered stud", $"joint: tapered stud\n    {entry}").Problem(phrase, suggestion);
}
