using System.CommandLine;
using System.Diagnostics;

namespace TieRodCalc.Cli.Tests;

/// <summary>Help of every command, as somebody in the shop reads it.</summary>
public sealed class HelpTests : IDisposable
{
    private const string ExampleMark = "Example: tierodcalc ";
    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-help").FullName;

    /// <summary>The command that asks questions; without answers it ends with status 2.</summary>
    private const string Dialog = "new";

    public static TheoryData<string> Commands => [string.Empty, .. Application.Root(CommandLine.Nowhere).Subcommands.Select(command =>
        command.Name)];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Commands))]
    public void Fits_into_80_columns_and_ends_with_an_example(string command)
    {
        string[] lines = Help(command).TrimEnd('\n').Split('\n');
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 79));
        Assert.All(lines, line => Assert.Equal(line.TrimEnd(), line));
        Assert.StartsWith(command.Length == 0 ? ExampleMark : $"{ExampleMark}{command} ", lines[^1] + " ", StringComparison.Ordinal);
        Assert.Single(lines, line => line.StartsWith(ExampleMark, StringComparison.Ordinal));
        Assert.Single(lines, line => line.StartsWith($"Usage: tierodcalc {(command.Length == 0 ? "COMMAND" : command)}",
            StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Says_of_every_word_what_it_is(string name)
    {
        RootCommand root = Application.Root(CommandLine.Nowhere);
        Command command = name.Length == 0 ? root : root.Subcommands.Single(command => command.Name == name);
        string help = OneLine(Help(name));
        foreach (Option option in command.Options)
        {
            Assert.EndsWith(".", option.Description, StringComparison.Ordinal);
            Assert.Equal(option.ValueType == typeof(bool) || option.ValueType == typeof(void), option.HelpName is null);
            Assert.Contains($"{option.Name}{(option.HelpName is { } value ? $" {value}" : string.Empty)} ", help, StringComparison.Ordinal);
            Assert.Contains(option.Description!, help, StringComparison.Ordinal);
        }

        foreach (Argument argument in command.Arguments)
        {
            Assert.EndsWith(".", argument.Description, StringComparison.Ordinal);
            Assert.Contains($"{argument.Name} {argument.Description}", help, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task The_example_works(string command)
    {
        CopyOf(Path.Combine(Repository.Root, "catalog-samples"), Path.Combine(_folder, "catalog-samples"));
        string example = Help(command).TrimEnd('\n').Split('\n')[^1][ExampleMark.Length..];
        using Process process = CommandProcess.Start(example.Split(' '), withInput: true, folder: _folder);
        process.StandardInput.Close();
        Task<string> reading = process.StandardError.ReadToEndAsync();
        string output = await process.StandardOutput.ReadToEndAsync();
        string error = await reading;
        await process.WaitForExitAsync();

        Assert.DoesNotContain("Help: tierodcalc", error, StringComparison.Ordinal);
        if (command != Dialog)
        {
            Assert.InRange(process.ExitCode, 0, 1);
            Assert.NotEmpty(output);
            Assert.Empty(error);
        }
    }

    [Fact]
    public void Of_the_whole_names_every_command_and_every_caution()
    {
        string help = OneLine(Help(string.Empty));
        Assert.All(Application.Root(CommandLine.Nowhere).Subcommands, command => Assert.Contains(
            $" {command.Name} {string.Join(' ', command.Arguments.Select(argument => argument.Name))}", help, StringComparison.Ordinal));
        Assert.All(TieRodCalc.Text.Cautions.All, caution => Assert.Contains(caution, help, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("COLUMNS", "20")]
    [InlineData("COLUMNS", "nonsense")]
    [InlineData("TERM", "dumb")]
    [InlineData("LC_ALL", "de_DE.UTF-8")]
    [InlineData("DOTNET_CLI_UI_LANGUAGE", "fr")]
    public void Terminal_and_locale_change_nothing(string name, string value)
    {
        using Process process = CommandProcess.Start(["choose", "--help"], environment: (name, value));
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        Assert.Equal(Help("choose"), output);
    }

    [Theory]
    [InlineData("-h")]
    [InlineData("-?")]
    public void Is_the_same_by_its_short_names(string option) => Assert.Equal(Help("plan"), CommandLine.Run("plan", option).Output);

    private static string Help(string command)
    {
        CommandLine run = CommandLine.Run(command.Length == 0 ? ["--help"] : [command, "--help"]);
        Assert.Equal((0, string.Empty), (run.Status, run.Error));
        return run.Output;
    }

    private static string OneLine(string text) => string.Join(' ', text.Split(' ', '\n').Where(word => word.Length > 0));

    private static void CopyOf(string from, string to)
    {
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
