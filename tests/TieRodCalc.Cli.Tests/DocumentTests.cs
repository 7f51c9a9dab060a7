using System.Text;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Output shown in README and docs is what the program prints. Set the environment variable TIERODCALC_UPDATE_DOCS to write
/// it anew.
/// </summary>
[Collection("README.md")]
public sealed class DocumentTests
{
    private const string End = "<!-- end -->";

    [Theory]
    [InlineData("README.md")]
    [InlineData("docs/threads.md")]
    [InlineData("docs/toe.md")]
    [InlineData("docs/remedies.md")]
    [InlineData("docs/tolerance.md")]
    [InlineData("docs/choosing.md")]
    [InlineData("docs/spares.md")]
    public void Shown_output_is_real(string document)
    {
        string path = Path.Combine(Repository.Root, document);
        string before = File.ReadAllText(path);
        string after = Regenerated(before, Block);
        if (Environment.GetEnvironmentVariable("TIERODCALC_UPDATE_DOCS") is { Length: > 0 })
        {
            File.WriteAllText(path, after);
        }

        Assert.Equal(after, before);
    }

    [Fact]
    public void The_shown_picture_is_real()
    {
        string shown = Path.Combine(Repository.Root, "docs", "toe-over-turns.svg");
        string drawn = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid()}.svg");
        string before = File.Exists(shown) ? File.ReadAllText(shown) : string.Empty;
        CommandProcess.Output("toe", "catalog-samples/jobs/car-27.yaml", "--picture", drawn);
        string after = File.ReadAllText(drawn);
        File.Delete(drawn);
        if (Environment.GetEnvironmentVariable("TIERODCALC_UPDATE_DOCS") is { Length: > 0 })
        {
            File.WriteAllText(shown, after);
        }

        Assert.Equal(after, before);
    }

    [Fact]
    public void The_readme_states_the_job_first_and_its_two_commands_early()
    {
        string[] lines = File.ReadAllLines(Path.Combine(Repository.Root, "README.md"));
        Assert.StartsWith("TieRodCalc tells a fabricator how to make up a steering tie rod", lines[2], StringComparison.Ordinal);
        int demo = Array.IndexOf(lines, "dotnet run --project src/TieRodCalc.Cli -- plan catalog-samples/jobs/car-27.yaml");
        Assert.InRange(demo, 0, 20);
        Assert.Equal("dotnet test", lines[demo + 1]);
    }

    /// <summary>A document with its blocks of shown output written anew.</summary>
    /// <param name="document">The document.</param>
    /// <param name="block">What belongs below a line that begins a block; null of other lines.</param>
    internal static string Regenerated(string document, Func<string, string?> block)
    {
        StringBuilder text = new();
        string? replaced = null;
        foreach (string line in document.Split('\n'))
        {
            if (replaced is null)
            {
                text.Append(line).Append('\n');
                replaced = block(line);
                text.Append(replaced);
            }
            else if (line == End)
            {
                text.Append(line).Append('\n');
                replaced = null;
            }
        }

        Assert.True(replaced is null, "a block of shown output has no end");
        return text.ToString()[..^1];
    }

    private static string? Block(string line)
    {
        const string Output = "<!-- output: ";
        if (line == "<!-- cautions -->")
        {
            return string.Concat(Cautions.All.Append(Cautions.NotChecked).Select(caution => $"- {caution}\n"));
        }

        if (!line.StartsWith(Output, StringComparison.Ordinal))
        {
            return null;
        }

        string command = line[Output.Length..line.IndexOf(" -->", StringComparison.Ordinal)];
        return $"```\n$ tierodcalc {command}\n{CommandProcess.Output(command.Split(' '))}```\n";
    }
}
