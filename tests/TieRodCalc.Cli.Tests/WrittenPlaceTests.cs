using System.Diagnostics;

namespace TieRodCalc.Cli.Tests;

/// <summary>Where a file may be written: links stay, and what is no file is never replaced, nor is the job itself.</summary>
public sealed class WrittenPlaceTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-").FullName;

    /// <summary>Every command that writes a file, with the option that names it and a sample for it.</summary>
    public static TheoryData<string, string, string> Writers => new()
    {
        { "plan", "--picture", "car-27.yaml" },
        { "sheet", "-o", "car-27.yaml" },
        { "toe", "--picture", "car-27.yaml" },
        { "bump", "--picture", "car-27-bump.yaml" },
        { "asbuilt", "--record", "car-27-built.yaml" },
    };

    private string Target => Path.Combine(_folder, "target");

    private string Link => Path.Combine(_folder, "link");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Writers))]
    public void A_link_stays_and_the_file_that_it_leads_to_is_the_old_one_or_the_new_one(string command, string option, string sample)
    {
        File.WriteAllText(Target, "mine");
        File.CreateSymbolicLink(Link, "target");
        Refused(command, option, sample, Link, Exists(Link), force: false);
        Assert.Equal("mine", File.ReadAllText(Target));

        Written(command, option, sample, Link);
        Assert.Equal("target", new FileInfo(Link).LinkTarget);
        Assert.NotEqual("mine", File.ReadAllText(Target));
        Assert.Equal([Link, Target], Directory.GetFileSystemEntries(_folder).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_link_to_nothing_is_there_already_and_forced_leads_to_a_new_file()
    {
        File.CreateSymbolicLink(Link, "target");
        Refused("plan", "--picture", "car-27.yaml", Link, Exists(Link), force: false);
        Written("plan", "--picture", "car-27.yaml", Link);
        Assert.StartsWith("<svg", File.ReadAllText(Target), StringComparison.Ordinal);
        Assert.Equal("target", new FileInfo(Link).LinkTarget);

        File.Delete(Link);
        File.CreateSymbolicLink(Link, Path.Combine("none", "target"));
        Refused(
            "plan",
            "--picture",
            "car-27.yaml",
            Link,
            $"tierodcalc: {Link} cannot be written: there is no folder {Path.Combine(_folder, "none")}. Nothing was written.\n");
    }

    [Fact]
    public void Links_that_lead_round_in_a_circle_or_to_a_folder_are_refused()
    {
        File.CreateSymbolicLink(Link, "target");
        File.CreateSymbolicLink(Target, "link");
        string error = Refused("plan", "--picture", "car-27.yaml", Link);
        Assert.StartsWith($"tierodcalc: {Link} cannot be written: ", error, StringComparison.Ordinal);

        File.Delete(Target);
        Directory.CreateDirectory(Target);
        Refused(
            "plan", "--picture", "car-27.yaml", Link, $"tierodcalc: {Link} is a folder; name a file in it. Nothing was written.\n");
        Assert.Empty(Directory.GetFileSystemEntries(Target));
    }

    [Theory]
    [MemberData(nameof(Writers))]
    public void A_pipe_is_not_replaced(string command, string option, string sample)
    {
        using Process made = Process.Start("mkfifo", [Target]);
        made.WaitForExit();
        Refused(command, option, sample, Target, $"tierodcalc: {Target} is a device or a pipe; name a file. Nothing was written.\n");
        Assert.False(OutputFile.IsFile(Target));
        Assert.Equal([Target], Directory.GetFileSystemEntries(_folder));
    }

    /// <summary>Asked of the check alone: a fault in it would replace a device of the machine.</summary>
    [Theory]
    [InlineData("/dev/null")]
    [InlineData("/dev/full")]
    [InlineData("/dev/zero")]
    public void A_device_is_no_file(string device) => Assert.False(OutputFile.IsFile(device));

    [Fact]
    public void A_file_is_a_file_also_where_it_is_empty()
    {
        File.WriteAllText(Target, string.Empty);
        Assert.True(OutputFile.IsFile(Target));
        File.WriteAllText(Target, "mine");
        Assert.True(OutputFile.IsFile(Target));
        Assert.Equal("mine", File.ReadAllText(Target));
    }

    /// <summary>The folders of the system are such for root too, to whom a mode says nothing.</summary>
    [Theory]
    [InlineData("/sys/drawn")]
    [InlineData("/proc/drawn")]
    public void A_folder_that_takes_no_file_is_said(string path)
    {
        foreach ((string command, string option, string sample) in Writers.Select(row => ((string)row[0], (string)row[1], (string)row[2])))
        {
            string error = Refused(command, option, sample, path);
            Assert.StartsWith($"tierodcalc: {path} cannot be written: ", error, StringComparison.Ordinal);
            Assert.DoesNotContain(".tierodcalc", error, StringComparison.Ordinal);
            Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_name_as_long_as_the_system_takes_is_taken_and_a_longer_one_is_refused()
    {
        const int Longest = 255;
        Written("plan", "--picture", "car-27.yaml", Path.Combine(_folder, new string('a', Longest)));
        string longer = Path.Combine(_folder, new string('b', Longest + 1));
        Assert.StartsWith(
            $"tierodcalc: {longer} cannot be written: ", Refused("plan", "--picture", "car-27.yaml", longer), StringComparison.Ordinal);
        Assert.Single(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void A_file_has_no_file_in_it()
    {
        File.WriteAllText(Target, "mine");
        string path = Path.Combine(Target, "drawn");
        Refused(
            "plan",
            "--picture",
            "car-27.yaml",
            path,
            $"tierodcalc: {path} cannot be written: there is no folder {Target}. Nothing was written.\n");
    }

    [Theory]
    [MemberData(nameof(Writers))]
    public void A_hyphen_is_no_file(string command, string option, string sample)
    {
        string error = Refused(command, option, sample, "-");
        Assert.StartsWith($"tierodcalc: {option} takes the name of a file, and - is none", error, StringComparison.Ordinal);
        Assert.False(File.Exists("-"));
    }

    [Theory]
    [MemberData(nameof(Writers))]
    public void The_job_itself_is_never_overwritten(string command, string option, string sample)
    {
        string text = File.ReadAllText(Repository.Sample("jobs", sample))
            .Replace("../parts", Repository.Sample("parts"), StringComparison.Ordinal);
        File.WriteAllText(Target, text);
        File.CreateSymbolicLink(Link, "target");
        foreach ((string job, string path) in ((string, string)[])[(Target, Target), (Target, Link), (Link, Target)])
        {
            CommandLine run = CommandLine.Run(command, job, option, path, "--force");
            Assert.Equal((ExitStatus.WrongInput, string.Empty), (run.Status, run.Output));
            Assert.StartsWith($"tierodcalc: {option} names the job itself, ", run.Error, StringComparison.Ordinal);
            Assert.Equal(text, File.ReadAllText(Target));
        }

        Assert.Equal(2, Directory.GetFileSystemEntries(_folder).Length);
        Assert.InRange(CommandLine.Run(command, Target, option, Path.Combine(_folder, "other")).Status, 0, 1);
    }

    private static string Exists(string path) => $"tierodcalc: {path} exists; --force overwrites it. Nothing was written.\n";

    private static void Written(string command, string option, string sample, string path)
    {
        CommandLine run = CommandLine.Run(command, Repository.Sample("jobs", sample), option, path, "--force");
        Assert.Empty(run.Error);
        Assert.InRange(run.Status, 0, 1);
    }

    private static string Refused(
        string command, string option, string sample, string path, string? expected = null, bool force = true)
    {
        string[] forced = force ? ["--force"] : [];
        CommandLine run = CommandLine.Run([command, Repository.Sample("jobs", sample), option, path, .. forced]);
        Assert.Equal((ExitStatus.WrongInput, string.Empty), (run.Status, run.Output));
        Assert.Equal(expected ?? run.Error, run.Error);
        return run.Error;
    }
}
