namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>check</c> reports of several files that belong together.</summary>
public sealed class CheckCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-check").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>A job whose rod may be made of any part of its file.</summary>
    private const string AnyEnd =
        "tierodcalc: 1\njob: any\nparts: [parts.yaml]\nrods:\n  - {name: r, inner: any, sleeve: any, outer: any, "
        + "nuts: {inner: any, outer: any}, length: 300 mm, adjust: 0 mm}\n";

    [Fact]
    public void A_problem_of_a_part_file_is_reported_once_by_itself_and_through_a_job()
    {
        string parts = Write("parts.yaml", "tierodcalc: 1\njam_nuts:\n  - {id: n, thread: M16x2, thicknes: 8 mm, thickness: 8}\n");
        string job = Write("job.yaml", "tierodcalc: 1\njob: two\nparts: [parts.yaml]\nrods: []\nunit: in\n");

        foreach (string[] order in (string[][])[[parts, job], [job, parts], [parts, job, parts, job]])
        {
            CommandLine run = CommandLine.Run(["check", .. order]);

            Assert.Equal(2, run.Status);
            Assert.Empty(run.Output);
            Assert.Equal(2, Count(run.Error, $"{parts}:3:"));
            Assert.Equal(1, Count(run.Error, $"{job}:5:1: error: "));
            Assert.Contains(". Did you mean 'thickness'?\n", run.Error, StringComparison.Ordinal);
            Assert.Contains(". Did you mean 'units'?\n", run.Error, StringComparison.Ordinal);
            Assert.EndsWith("3 errors; nothing was computed.\n", run.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Problems_of_all_files_are_reported_also_where_the_first_is_sound()
    {
        string sound = Write("sound.yaml", "tierodcalc: 1\njam_nuts:\n  - {id: n, thread: M16x2, thickness: 8 mm}\n");
        CommandLine run = CommandLine.Run("check", sound, Path.Combine(_folder, "one.yaml"), Path.Combine(_folder, "two.yaml"));

        Assert.Equal(2, run.Status);
        Assert.Empty(run.Output);
        Assert.Contains("one.yaml: error: ", run.Error, StringComparison.Ordinal);
        Assert.Contains("two.yaml: error: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_are_shown_with_their_place_and_change_no_status()
    {
        const string End = "    swing: 9 deg";
        const string Before = "inner_ends:\n  - id: n\n    thread: M16\n    center_to_tip: 9 cm\n    thread_length: 4 cm";
        string parts = Write("parts.yaml", $"tierodcalc: 1\n{Before}\n{End}\n");
        string job = Write("job.yaml", AnyEnd);

        CommandLine run = CommandLine.Run("check", job);

        int column = End.IndexOf("swing", StringComparison.Ordinal) + 1;
        Assert.Equal(0, run.Status);
        Assert.Empty(run.Error);
        Assert.StartsWith(
            $"{job}: sound; a job with 1 rod\n{parts}:7:{column}: note: ",
            run.Output,
            StringComparison.Ordinal);
        Assert.EndsWith($"\n    {End}\n    {new string(' ', column - 1)}^^^^^\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Outer_ends_with_a_socket_are_outer_ends_and_each_kind_is_counted_by_itself()
    {
        const string Kinds =
            """
            tierodcalc: 1
            materials: [{id: m}]
            inner_ends:
              - {id: i1, thread: M16x2, center_to_tip: 100 mm, thread_length: 50 mm}
              - {id: i2, thread: M16x2, center_to_tip: 100 mm, thread_length: 50 mm}
            outer_ends:
              - {id: o1, thread: M16x2, center_to_tip: 100 mm, thread_length: 50 mm}
              - {id: o2, thread: M16x2, center_to_tip: 100 mm, thread_length: 50 mm}
              - {id: o3, center_to_face: 50 mm, socket: {thread: M16x2, depth: 30 mm, bore: closed}}
            jam_nuts:
              - {id: n1, thread: M16x2, thickness: 8 mm}
              - {id: n2, thread: M16x2, thickness: 8 mm}
              - {id: n3, thread: M16x2, thickness: 8 mm}
              - {id: n4, thread: M16x2, thickness: 8 mm}
            """;

        Assert.StartsWith(
            "-: sound; 2 inner ends, 0 sleeves, 3 outer ends, 4 jam nuts, 1 material\n",
            CommandLine.RunWith(Kinds, "check", "-").Output,
            StringComparison.Ordinal);
        Assert.Equal("-: sound; a job with 1 rod\n", CommandLine.RunWith(CheckJobs.W1, "check", "-").Output);
    }

    private static int Count(string text, string words) => text.Split(words).Length - 1;

    private string Write(string name, string content)
    {
        string path = Path.Combine(_folder, name);
        File.WriteAllText(path, content);
        return path;
    }

    [Fact]
    public void A_note_that_several_files_lead_to_is_shown_once()
    {
        Write("parts.yaml", "tierodcalc: 1\ninner_ends:\n  - {id: n, thread: M16x2, center_to_tip: 90 mm, thread_length: 40 mm, swing: 9 deg}\n");
        string one = Write("one.yaml", AnyEnd);
        string two = Write("two.yaml", AnyEnd);

        Assert.Equal(1, Count(CommandLine.Run("check", one, two).Output, "note: 'swing'"));
    }
}
