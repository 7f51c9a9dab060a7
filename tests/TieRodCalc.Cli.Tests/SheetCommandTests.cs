namespace TieRodCalc.Cli.Tests;

/// <summary><c>sheet</c> and <c>plan --picture</c> as commands: which file is written, what is printed, which status.</summary>
public sealed class SheetCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-").FullName;

    /// <summary>The two commands that write a drawing, and the option that names its file.</summary>
    public static TheoryData<string, string> Commands => new() { { "sheet", "-o" }, { "plan", "--picture" } };

    private string File => Path.Combine(_folder, "drawn");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_file_that_exists_is_kept_unless_it_is_forced(string command, string option)
    {
        System.IO.File.WriteAllText(File, "mine");
        CommandLine kept = CommandLine.RunWith(CheckJobs.W1, command, "-", option, File);

        Assert.Equal((ExitStatus.WrongInput, string.Empty), (kept.Status, kept.Output));
        Assert.Equal($"tierodcalc: {File} exists; --force overwrites it. Nothing was written.\n", kept.Error);
        Assert.Equal("mine", System.IO.File.ReadAllText(File));

        Assert.Equal(ExitStatus.Holds, CommandLine.RunWith(CheckJobs.W1, command, "-", option, File, "--force").Status);
        Assert.StartsWith("<", System.IO.File.ReadAllText(File), StringComparison.Ordinal);
        Assert.Equal([File], Directory.GetFileSystemEntries(_folder));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_folder_and_a_place_that_is_not_there_are_refused(string command, string option)
    {
        foreach (string path in (string[])[_folder, Path.Combine(_folder, "none", "drawn")])
        {
            CommandLine run = CommandLine.RunWith(CheckJobs.W1, command, "-", option, path, "--force");

            Assert.Equal((ExitStatus.WrongInput, string.Empty), (run.Status, run.Output));
            Assert.Contains(_folder, run.Error, StringComparison.Ordinal);
        }

        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void What_is_wrong_on_the_command_line_or_in_the_job_writes_nothing(string command, string option)
    {
        string[][] wrong =
        [
            ["-", option, File, "--rod", "w9"],
            ["-", option, File, "--with", "longer-sleeve"],
            ["no-such-file.yaml", option, File],
            ["-", option],
            ["-", option, ""],
        ];
        foreach (string[] words in wrong)
        {
            CommandLine run = CommandLine.RunWith(CheckJobs.W1, [command, .. words]);
            Assert.Equal((ExitStatus.WrongInput, string.Empty), (run.Status, run.Output));
            Assert.NotEmpty(run.Error);
        }

        CommandLine broken = CommandLine.RunWith(CheckJobs.W1.With("length: 365.125 mm", "length: 365.125"), command, "-", option, File);
        Assert.Equal((ExitStatus.WrongInput, string.Empty), (broken.Status, broken.Output));
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void A_sheet_needs_a_file()
    {
        CommandLine run = CommandLine.RunWith(CheckJobs.W1, "sheet", "-");

        Assert.Equal((ExitStatus.WrongInput, string.Empty), (run.Status, run.Output));
        Assert.Contains("-o FILE", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("car-27.yaml", 0)]
    [InlineData("car-27-short-sleeve.yaml", 1)]
    public void What_is_printed_as_json_is_what_plan_prints(string sample, int status)
    {
        string job = Repository.Sample("jobs", sample);
        CommandLine plan = CommandLine.Run("plan", job, "--json");
        CommandLine sheet = CommandLine.Run("sheet", job, "-o", File, "--json");
        CommandLine drawn = CommandLine.Run("plan", job, "--picture", File + ".svg", "--json");

        Assert.Equal((status, string.Empty), (sheet.Status, sheet.Error));
        Assert.Equal(plan, sheet);
        Assert.Equal(plan, drawn);
    }

    [Theory]
    [InlineData("car-27.yaml", 0, "2 pages", "  rod left: buildable after cutting\n  rod right: buildable\n")]
    [InlineData("car-27-short-sleeve.yaml", 1, "1 page", "  rod left: not buildable\n")]
    public void The_answer_names_the_file_its_pages_and_the_verdicts(string sample, int status, string pages, string verdicts)
    {
        CommandLine sheet = CommandLine.Run("sheet", Repository.Sample("jobs", sample), "-o", File);

        Assert.Equal((status, string.Empty), (sheet.Status, sheet.Error));
        Assert.StartsWith($"{File}: {pages}\n{verdicts}", sheet.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_rods_asked_for_are_drawn()
    {
        SheetFile sheet = SheetFile.OfSample("car-27.yaml", "--rod", "right");
        Assert.StartsWith("Rod right: ", Assert.Single(sheet.Rods).Descendants("h2").Single().Value, StringComparison.Ordinal);

        Assert.Equal(0, CommandLine.Run("plan", Repository.Sample("jobs", "car-27.yaml"), "--rod", "right", "--picture", File).Status);
        string drawn = System.IO.File.ReadAllText(File);
        Assert.Contains("ROD right: BUILDABLE", drawn, StringComparison.Ordinal);
        Assert.DoesNotContain("ROD left", drawn, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_changes_nothing_in_what_plan_prints()
    {
        Assert.Equal(CommandLine.RunWith(CheckJobs.W7(60), "plan", "-"), CommandLine.RunWith(CheckJobs.W7(60), "plan", "-", "--picture", File));
        Assert.StartsWith("<svg ", System.IO.File.ReadAllText(File), StringComparison.Ordinal);
    }
}
