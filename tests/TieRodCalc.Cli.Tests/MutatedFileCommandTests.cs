using System.Text;
using System.Text.Json;
using TieRodCalc.Tests;
using TieRodCalc.Tests.Files;
using Xunit.Abstractions;

namespace TieRodCalc.Cli.Tests;

/// <summary>Part and job files with bytes, structure or values changed at random, through the commands.</summary>
public sealed class MutatedFileCommandTests(ITestOutputHelper output) : IDisposable
{
    private static readonly string[][] s_commands =
    [
        ["plan"], ["plan", "--json"], ["toe"], ["toe", "--json"], ["asbuilt"], ["asbuilt", "--json"], ["bump"], ["bump", "--json"],
        ["choose", "--top", "3"], ["choose", "--top", "3", "--json"],
    ];

    private readonly MutatedSources _sources = new();

    public void Dispose() => _sources.Dispose();

    [Fact]
    public void A_mutated_file_gives_a_result_or_a_problem_and_no_number_that_is_none()
    {
        FileMutation mutation = new(_sources);
        string folder = _sources.FolderOfThread(0);
        string job = Path.Combine(folder, "job.yaml");
        int[] statuses = new int[3];
        for (int index = 0; index < RandomCounts.MutatedFiles / 100; index++)
        {
            MutatedFile file = mutation.Of(index);
            File.WriteAllBytes(job, file.Job);
            string parts = MutatedSources.PartPath(folder, file.PartName ?? "pinewater.yaml");
            byte[] sound = File.ReadAllBytes(parts);
            File.WriteAllBytes(parts, file.PartName is null ? sound : file.Content);
            CommandLine check = CommandLine.Run("check", job);
            AssertPlain(check, file, index);
            foreach (string[] command in check.Status == 0 ? s_commands : s_commands[..1])
            {
                CommandLine run = CommandLine.Run([command[0], job, .. command[1..]]);
                AssertPlain(run, file, index);
                Assert.True(check.Status == 0 || run.Status == 2, $"case {index}: {run}");
                statuses[run.Status]++;
                if (run.Status < 2 && command[^1] == "--json")
                {
                    using JsonDocument document = JsonDocument.Parse(run.Output);
                }
            }

            File.WriteAllBytes(parts, sound);
        }

        output.WriteLine($"{RandomCounts.Description}\nruns by status: {string.Join(", ", statuses)}");
        Assert.All(statuses, count => Assert.True(count > RandomCounts.MutatedFiles / 1_000, string.Join(", ", statuses)));
    }

    private static void AssertPlain(CommandLine run, MutatedFile file, int index)
    {
        Assert.True(run.Status is 0 or 1 or 2, $"case {index}: {run}");
        Assert.True(run.Status == 2 ? run.Output.Length == 0 && run.Error.Length > 0 : run.Error.Length == 0, $"case {index}: {run}");

        // As a name the word may stand in the file itself.
        string text = Encoding.UTF8.GetString(file.Content);
        foreach (string word in new[] { "NaN", "∞", "Infinity" }.Where(word => !text.Contains(word, StringComparison.Ordinal)))
        {
            Assert.False(run.Output.Contains(word, StringComparison.Ordinal), $"case {index}: {run}");
        }
    }
}
