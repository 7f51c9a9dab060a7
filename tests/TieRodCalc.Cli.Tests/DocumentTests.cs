using System.Text;
using TieRodCalc.Rods;
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
    [MemberData(nameof(Documents.Each), MemberType = typeof(Documents))]
    public void Shown_output_is_real(string document)
    {
        using DocumentFolder folder = new();
        string path = Path.Combine(Repository.Root, document);
        string before = File.ReadAllText(path);
        Keep(path, before, Regenerated(before, line => Block(line, folder)));
    }

    /// <summary>A block that begins with a command stands below a comment that has it written by a test.</summary>
    [Theory]
    [MemberData(nameof(Documents.Each), MemberType = typeof(Documents))]
    public void No_output_is_typed_by_hand(string document)
    {
        string[] lines = Documents.Lines(document);
        for (int at = 2; at < lines.Length; at++)
        {
            if (lines[at].StartsWith("$ ", StringComparison.Ordinal) && lines[at - 1].StartsWith("```", StringComparison.Ordinal))
            {
                string[] written = ["<!-- output: ", "<!-- dialog: ", "<!-- consumer runs: "];
                Assert.True(
                    written.Any(marker => lines[at - 2].StartsWith(marker, StringComparison.Ordinal)),
                    $"{document}:{at + 1}: {lines[at]}");
            }
        }
    }

    [Theory]
    [InlineData("toe-over-turns.svg", "toe catalog-samples/jobs/car-27.yaml")]
    [InlineData("toe-over-travel.svg", "bump catalog-samples/jobs/car-27-bump.yaml")]
    [InlineData("rod-left.svg", "plan catalog-samples/jobs/car-27.yaml --rod left")]
    [InlineData("rod-not-buildable.svg", "plan catalog-samples/jobs/car-27-short-sleeve.yaml")]
    public void The_shown_picture_is_real(string picture, string command)
    {
        using DocumentFolder folder = new();
        string path = Path.Combine(Repository.Root, "docs", picture);
        folder.Run($"{command} --picture drawn.svg");
        Keep(path, File.Exists(path) ? File.ReadAllText(path) : string.Empty, folder.Read("drawn.svg"));
    }

    [Fact]
    public void The_readme_states_the_job_first_and_its_two_commands_early()
    {
        string[] lines = Documents.Lines("README.md");
        Assert.StartsWith("TieRodCalc tells a fabricator how to make up a steering tie rod", lines[2], StringComparison.Ordinal);
        int demo = Array.IndexOf(lines, "dotnet run --project src/TieRodCalc.Cli -- plan catalog-samples/jobs/car-27.yaml");
        Assert.InRange(demo, 0, 20);
        Assert.Equal("dotnet test", lines[demo + 1]);
    }

    [Theory]
    [InlineData("docs/limits.md")]
    [InlineData("docs/plan.md")]
    public void The_table_of_limits_has_every_limit(string document)
    {
        string[] limits = [.. Documents.Lines(document)
            .SkipWhile(line => !line.StartsWith("| limit |", StringComparison.Ordinal))
            .Skip(2)
            .TakeWhile(line => line.StartsWith('|'))
            .Select(line => line.Split('|')[1].Trim())];
        Assert.Equal(Enum.GetValues<Limit>().Select(Names.Of), limits);
    }

    [Fact]
    public void Every_command_is_in_the_reference_of_commands()
    {
        string[] commands = [.. CommandLine.Run("--help").Output.Split('\n')
            .SkipWhile(line => line != "Commands")
            .Skip(1)
            .TakeWhile(line => line.Length > 0)
            .Where(line => line.Length > 2 && char.IsLetter(line[2]))
            .Select(line => line.Trim().Split(' ')[0])];
        Assert.NotEmpty(commands);
        string[] lines = Documents.Lines("docs/commands.md");
        Assert.All(commands, command => Assert.Contains($"<!-- output: {command} --help -->", lines));
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

    private static void Keep(string path, string before, string after)
    {
        if (Environment.GetEnvironmentVariable("TIERODCALC_UPDATE_DOCS") is { Length: > 0 })
        {
            File.WriteAllText(path, after);
        }

        Assert.Equal(after, before);
    }

    private static string? Block(string line, DocumentFolder folder) => line switch
    {
        "<!-- cautions -->" => string.Concat(Cautions.All.Append(Cautions.NotChecked).Select(caution => $"- {caution}\n")),
        _ => ShownOutput.Asked(line)?.In(folder),
    };
}
