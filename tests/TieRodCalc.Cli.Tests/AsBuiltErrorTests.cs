using static TieRodCalc.Cli.Tests.AsBuiltJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>asbuilt</c> refuses: status 2, nothing on standard output, and the place.</summary>
public sealed class AsBuiltErrorTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-asbuilt").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("{show: {inner: 1 mm}}", "show", "has no key 'show'")]
    [InlineData("{showing: {left: 1 mm}}", "left", "has no key 'left'")]
    [InlineData("{depth: {inner: 1}}", "}}", "the unit is missing")]
    [InlineData("{depth: 1 mm}", "1 mm", "")]
    [InlineData("{cut: {outer: -1 mm}}", "-", "")]
    [InlineData("{center_to_center: 0 mm}", "0 mm", "must be above zero")]
    [InlineData("{center_to_center: 300 mm, center_to_center: 300 mm}", "center_to_center: 300 mm}", "")]
    public void Readings_with_an_error_at_their_place(string built, string mark, string phrase)
    {
        string job = WithBuilt(CheckJobs.W1, built);
        int at = job.IndexOf(mark, job.IndexOf("built: ", StringComparison.Ordinal) + 7, StringComparison.Ordinal);
        int lineStart = job.LastIndexOf('\n', at) + 1;
        int line = job[..at].Count(c => c == '\n') + 1;
        Refused(job, $"-:{line}:{at - lineStart + 1}: error: ");
        Refused(job, phrase);
    }

    [Fact]
    public void A_part_that_is_left_open()
    {
        const string Any = "  - {name: w1, inner: ";
        string job = CheckJobs.W1.With("inner: i, sleeve", "inner: any, sleeve");
        int line = job[..job.IndexOf(Any, StringComparison.Ordinal)].Count(c => c == '\n') + 1;
        Refused(job, $"-:{line}:{Any.Length + 1}: error: ");
    }

    [Fact]
    public void An_unknown_rod() => Refused(CheckJobs.W1, "no rod is called 'x'", "--rod", "x");

    [Fact]
    public void A_length_that_bent_ends_do_not_leave() =>
        Refused(WithBuilt(CheckJobs.W7(180), "{center_to_center: 27 mm}"), "error: ");

    [Fact]
    public void A_record_that_is_there_is_kept_unless_forced()
    {
        string file = Path.Combine(_folder, "kept.yaml");
        File.WriteAllText(file, "kept");
        Refused(Built(CheckJobs.W1), "kept.yaml", "--record", file);
        Assert.Equal("kept", File.ReadAllText(file));

        CommandLine forced = CommandLine.RunWith(Built(CheckJobs.W1), "asbuilt", "-", "--record", file, "--force");
        Assert.Equal((0, string.Empty), (forced.Status, forced.Error));
        Assert.StartsWith("# Build record", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_cannot_be_written()
    {
        Refused(Built(CheckJobs.W1), "record.yaml", "--record", Path.Combine(_folder, "no", "record.yaml"));
        Refused(Built(CheckJobs.W1), "--record", "--record");
    }

    [Fact]
    public void A_job_with_an_error_writes_no_record()
    {
        string file = Path.Combine(_folder, "none.yaml");
        Refused(WithBuilt(CheckJobs.W1, "{showing: {inner: 1}}"), "the unit is missing", "--record", file);
        Assert.False(File.Exists(file));
    }

    private static void Refused(string job, string words, params string[] options)
    {
        foreach (string[] form in (string[][])[[], ["--json"]])
        {
            CommandLine run = CommandLine.RunWith(job, ["asbuilt", "-", .. form, .. options]);

            Assert.True(run.Status == ExitStatus.WrongInput, $"status {run.Status}\n{run.Error}{run.Output}");
            Assert.Empty(run.Output);
            Assert.Contains(words, run.Error, StringComparison.Ordinal);
        }
    }
}
