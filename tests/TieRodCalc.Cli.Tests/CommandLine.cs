using System.Text;
using System.Text.Json;

namespace TieRodCalc.Cli.Tests;

/// <summary>One run of the command line, in this process.</summary>
internal sealed record CommandLine(int Status, string Output, string Error)
{
    /// <summary>For a look at the commands, of which none is run.</summary>
    public static Terminal Nowhere => new(() => Stream.Null, Stream.Null, Stream.Null);

    public static CommandLine Run(params string[] args) => RunWith(string.Empty, args);

    public static CommandLine RunWith(string input, params string[] args)
    {
        using MemoryStream standardInput = new(Encoding.UTF8.GetBytes(input));
        using MemoryStream output = new();
        using MemoryStream error = new();
        int status = Application.Run(args, new Terminal(() => standardInput, output, error));
        return new CommandLine(status, Encoding.UTF8.GetString(output.ToArray()), Encoding.UTF8.GetString(error.ToArray()));
    }

    /// <summary>The first rod of a plan printed as JSON.</summary>
    public static JsonElement FirstRod(string job, int expectedStatus = 0)
    {
        CommandLine run = RunWith(job, "plan", "-", "--json");
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return JsonDocument.Parse(run.Output).RootElement.GetProperty("rods")[0];
    }
}
