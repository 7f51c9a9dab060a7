using System.Diagnostics;

namespace TieRodCalc.Cli.Tests;

/// <summary>What only the program as a process of its own shows.</summary>
public sealed class ProcessTests
{
    private static readonly string Demo = Repository.Sample("jobs", "car-27.yaml");

    [Fact]
    public void The_version_is_that_of_the_package()
    {
        using Process process = CommandProcess.Start(["--version"]);
        Assert.Equal("0.1.0\n", process.StandardOutput.ReadToEnd());
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }

    [Theory]
    [InlineData(CheckJobs.W1)]
    [InlineData(CheckJobs.W2)]
    public void A_closed_output_pipe_ends_quietly(string job)
    {
        using Process process = CommandProcess.Start(["plan", "-"], withInput: true);
        process.StandardOutput.Close();
        process.StandardInput.Write(job);
        process.StandardInput.Close();
        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();

        Assert.Equal(string.Empty, error);
        Assert.Equal(0, process.ExitCode);
    }

    [Theory]
    [InlineData("C")]
    [InlineData("de_DE.UTF-8")]
    [InlineData("tr_TR.ISO-8859-9")]
    public void The_locale_changes_nothing_but_what_drawings_are_made_of(string locale)
    {
        using Process process = CommandProcess.Start(["plan", Demo], environment: ("LC_ALL", locale));
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        string expected = CommandLine.Run("plan", Demo).Output;
        Assert.Equal(Locale.IsAsciiAlone(locale) ? Rendering.SketchGrid.InAscii(expected) : expected, output);
        Assert.Contains("ROD left", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_on_standard_input_finds_its_parts_from_the_current_folder()
    {
        using Process process = CommandProcess.Start(["plan", "-"], withInput: true, folder: Path.GetDirectoryName(Demo)!);
        process.StandardInput.Write(File.ReadAllText(Demo));
        process.StandardInput.Close();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        Assert.Equal(0, process.ExitCode);
        Assert.Contains("ROD right: BUILDABLE", output, StringComparison.Ordinal);
    }
}
