namespace TieRodCalc.Cli.Tests;

/// <summary>What the program answers to a shell that completes: whether a file or a word is wanted, and which words.</summary>
public sealed class CompletionTests : IDisposable
{
    private const string Files = "files";
    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-completion").FullName;
    private readonly string _job;

    private static readonly string Car = Repository.Sample("jobs", "car-27.yaml");
    private static readonly string Short = Repository.Sample("jobs", "car-27-short-sleeve.yaml");

    public CompletionTests()
    {
        _job = Path.Combine(_folder, "names.yaml");
        File.WriteAllText(_job, CompletionJobs.WithRods(CompletionJobs.Names));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("words plan", "pl|")]
    [InlineData("words choose check completion", "c|")]
    [InlineData("words", "x|")]
    [InlineData("words --help --version", "-|")]
    [InlineData(Files, "plan", "|")]
    [InlineData(Files, "plan", "ca|")]
    [InlineData(Files, "plan", "--json", "|")]
    [InlineData(Files, "check", "one.yaml", "|")]
    [InlineData(Files, "toe", "one.yaml", "--picture", "|")]
    [InlineData(Files, "toe", "one.yaml", "--picture=a|")]
    [InlineData("words --rod --json --top --sort --help", "choose", "one.yaml", "|")]
    [InlineData("words --rod --top --sort --help", "choose", "--json", "-|", "one.yaml")]
    [InlineData("words --sort", "choose", "one.yaml", "--s|")]
    [InlineData("words best margin price mass cut", "choose", "one.yaml", "--sort", "|")]
    [InlineData("words --sort=margin --sort=mass", "choose", "one.yaml", "--sort=ma|")]
    [InlineData("words", "choose", "one.yaml", "--top", "|")]
    [InlineData("words bash zsh fish powershell", "completion", "|")]
    [InlineData("words", "completion", "bash", "b|")]
    [InlineData("words", "thread", "|")]
    [InlineData(Files, "plan", "--", "-|")]
    public void Commands_options_values_and_files(string answer, params string[] words) => Assert.Equal(answer.Split(' '), Answer(words));

    /// <summary>Whatever the command, its options are offered where they are begun, and a file where a job or a file stands.</summary>
    [Fact]
    public void Every_command_offers_its_options()
    {
        foreach (System.CommandLine.Command command in Application.Root(CommandLine.Nowhere).Subcommands)
        {
            Assert.Contains(command.Name, Answer([$"{command.Name[..2]}|"]));
            string[] options = [.. command.Options.Select(option => option.Aliases.Prepend(option.Name).MaxBy(name => name.Length)!),
                "--help"];
            Assert.Equal(["words", .. options.Distinct()], Answer([command.Name, "-|"]));
            Assert.All(
                command.Options.Where(option => option.HelpName is "FILE" or "DIR"),
                option => Assert.Equal([Files], Answer([command.Name, option.Name, "|"])));
        }
    }

    [Fact]
    public void Rods_are_those_of_the_job_wherever_it_stands()
    {
        Assert.Equal(["words", "left", "right"], Answer(["plan", Car, "--rod", "|"]));
        Assert.Equal(["words", "left", "right"], Answer(["plan", "--rod", "|", Car]));
        Assert.Equal(["words", "right"], Answer(["toe", Car, "--rod", "r|"]));
        Assert.Equal(["words", "left"], Answer(["plan", Car, "--rod", "left|"]));
        Assert.Equal(["words", "--rod=left"], Answer(["asbuilt", "--rod=l|", Car]));
        Assert.Equal(["words", "right"], Answer(["plan", Car, "--rod", "left", "--rod", "|"]));
        Assert.Equal(["words", .. CompletionJobs.Names], Answer(["choose", _job, "--rod", "|"]));
    }

    [Fact]
    public void Remedies_are_those_that_the_plan_names()
    {
        Assert.Equal(["words", "longer-sleeve", "shorter-target"], Answer(["plan", Short, "--with", "|"]));
        Assert.Equal(["words", "shorter-target"], Answer(["plan", Short, "--with", "s|"]));
        Assert.Equal(["words"], Answer(["plan", Car, "--with", "|"]));
    }

    [Fact]
    public void Remedies_are_those_of_the_rods_asked_for()
    {
        string both = Path.Combine(_folder, "both.yaml");
        File.WriteAllText(
            both, CompletionJobs.WithRods(["fits"]) + CompletionJobs.Rod("short", CompletionJobs.TooLong));
        string[] all = Answer(["plan", both, "--with", "|"]);
        Assert.Contains("longer-sleeve", all);
        Assert.Equal(all, Answer(["plan", both, "--rod", "short", "--with", "|"]));
        Assert.Equal(["words"], Answer(["plan", both, "--rod", "fits", "--with", "|"]));
    }

    [Fact]
    public void A_job_that_cannot_be_read_gives_nothing_and_says_nothing()
    {
        string wrong = Path.Combine(_folder, "wrong.yaml");
        File.WriteAllText(wrong, "tierodcalc: 1\nrods: [nonsense\n");
        string large = Path.Combine(_folder, "large.yaml");
        File.WriteAllText(large, new string('#', 9 << 20));
        foreach (string job in (string[])[wrong, large, _folder, Path.Combine(_folder, "none.yaml"), "-", ""])
        {
            Assert.Equal(["words"], Answer(["plan", job, "--rod", "|"]));
            Assert.Equal(["words"], Answer(["plan", job, "--with", "|"]));
        }

        Assert.Equal(["words"], Answer(["plan", "--rod", "|"]));
    }

    /// <summary>A reader that waits for standard input or a pipe would wait forever.</summary>
    [Fact]
    public void A_pipe_is_not_opened()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        string pipe = Path.Combine(_folder, "pipe");
        System.Diagnostics.Process.Start("mkfifo", [pipe]).WaitForExit();
        Assert.True(File.Exists(pipe));
        Assert.Equal(["words"], Answer(["plan", pipe, "--rod", "|"]));
    }

    /// <summary>The plans of so many rods take a minute; an answer that comes late is none.</summary>
    [Fact]
    public void A_job_that_takes_long_gives_nothing()
    {
        string job = Path.Combine(_folder, "long.yaml");
        IEnumerable<string> names = Enumerable.Range(0, 12_000).Select(number => $"rod{number}");
        File.WriteAllText(job, CompletionJobs.WithRods(names, CompletionJobs.TooLong));
        Assert.Equal("words\n", CommandProcess.Output("[complete:3]", "plan", job, "--with", "="));
    }

    [Theory]
    [InlineData("[complete:9]", "plan")]
    [InlineData("[complete:-1]", "plan")]
    [InlineData("[complete:0]", "plan")]
    [InlineData("[complete:x]")]
    [InlineData("[complete:bash]", "tierodcalc ")]
    public void A_wrong_question_gets_no_answer(params string[] args)
    {
        CommandLine run = CommandLine.Run(args);
        Assert.Equal((0, "words\n", string.Empty), (run.Status, run.Output, run.Error));
    }

    /// <summary>The parser's own way to ask, which takes a line apart by rules of its own.</summary>
    [Fact]
    public void The_common_directive_is_answered_too()
    {
        string line = $"tierodcalc plan \"{Car}\" --rod ";
        Assert.Equal("left\nright\n", CommandLine.Run($"[suggest:{line.Length}]", line).Output.ReplaceLineEndings("\n"));
    }

    /// <summary>The answer for words of which the one with a bar behind it is being written.</summary>
    private static string[] Answer(string[] words)
    {
        int at = Array.FindIndex(words, word => word.EndsWith('|'));
        string[] asked = [.. words];
        asked[at] = $"={words[at][..^1]}";
        CommandLine run = CommandLine.Run([$"[complete:{at}]", .. asked]);
        Assert.Equal((0, string.Empty), (run.Status, run.Error));
        return run.Output.TrimEnd('\n').Split('\n');
    }
}
