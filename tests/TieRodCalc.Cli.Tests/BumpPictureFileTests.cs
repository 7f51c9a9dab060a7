using static TieRodCalc.Cli.Tests.BumpJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>The file that <c>--picture</c> writes: whole or not at all, and none that exists is lost.</summary>
public sealed class BumpPictureFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_picture_is_written_beside_the_answer()
    {
        string path = Path.Combine(_folder, "bump.svg");
        CommandLine plain = CommandLine.RunWith(Height, "bump", "-");
        CommandLine drawn = CommandLine.RunWith(Height, "bump", "-", "--picture", path);

        Assert.Equal(plain, drawn);
        Assert.Equal([path], Directory.GetFiles(_folder));
        Assert.StartsWith("<svg ", File.ReadAllText(path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_exists_is_kept_unless_it_is_forced()
    {
        string path = Path.Combine(_folder, "bump.svg");
        File.WriteAllText(path, "mine");

        CommandLine kept = CommandLine.RunWith(Height, "bump", "-", "--picture", path);
        Assert.Equal((ExitStatus.WrongInput, string.Empty), (kept.Status, kept.Output));
        Assert.Equal($"tierodcalc: {path} exists; --force overwrites it. Nothing was written.\n", kept.Error);
        Assert.Equal("mine", File.ReadAllText(path));

        Assert.Equal(ExitStatus.Holds, CommandLine.RunWith(Height, "bump", "-", "--picture", path, "--force").Status);
        Assert.StartsWith("<svg ", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal([path], Directory.GetFiles(_folder));
    }

    [Theory]
    [InlineData("none/bump.svg")]
    [InlineData("")]
    public void A_place_that_cannot_be_written_is_status_2_and_leaves_nothing(string name)
    {
        string path = name.Length == 0 ? _folder : Path.Combine(_folder, name);
        CommandLine run = CommandLine.RunWith(Height, "bump", "-", "--picture", path, "--force");

        Assert.Equal((ExitStatus.WrongInput, string.Empty), (run.Status, run.Output));
        Assert.Contains(path, run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
        Assert.Equal(ExitStatus.WrongInput, CommandLine.RunWith(Height, "bump", "-", "--picture", string.Empty).Status);
    }

    [Fact]
    public void A_folder_is_no_file_and_nothing_is_left_beside_it()
    {
        string path = Directory.CreateDirectory(Path.Combine(_folder, "bump.svg")).FullName;
        CommandLine run = CommandLine.RunWith(Height, "bump", "-", "--picture", path, "--force");

        Assert.Equal((ExitStatus.WrongInput, string.Empty), (run.Status, run.Output));
        Assert.Equal([path], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void A_wrong_job_writes_nothing()
    {
        string path = Path.Combine(_folder, "bump.svg");

        Assert.Equal(ExitStatus.WrongInput, CommandLine.RunWith(Height.With("zeroed: once", "zeroed: twice"), "bump", "-", "--picture", path).Status);
        Assert.False(File.Exists(path));
    }

    [Fact]
    public void Readings_that_do_not_suffice_are_drawn_too()
    {
        string path = Path.Combine(_folder, "bump.svg");
        CommandLine run = CommandLine.RunWith(Unread + Bump(Sheet(1e-4, 0, travels: 40)), "bump", "-", "--picture", path);

        Assert.Equal(ExitStatus.DoesNotHold, run.Status);
        Assert.True(File.Exists(path));
    }
}
