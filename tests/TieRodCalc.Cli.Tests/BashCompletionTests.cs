using System.Diagnostics;
using TieRodCalc.Cli.Commands;

namespace TieRodCalc.Cli.Tests;

/// <summary>Completion in bash: how a line is taken apart, how words are quoted, and the printed script in bash itself.</summary>
public sealed class BashCompletionTests : IDisposable
{
    /// <summary>As bash has them from the start.</summary>
    private const string Breaks = " \t\n\"'@><=;|&(:";

    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-bash").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("tierodcalc ", "", "")]
    [InlineData("tierodcalc pl", "", "pl")]
    [InlineData("./tierodcalc  plan\tcar.yaml ", "plan|car.yaml", "")]
    [InlineData("tierodcalc plan my\\ job.yaml --rod \"left fr", "plan|my job.yaml|--rod", "left fr")]
    [InlineData("tierodcalc plan 'my job.yaml' --rod 'it''s \"", "plan|my job.yaml|--rod", "its \"")]
    [InlineData("tierodcalc plan \"a\\\"b\\$c\\d\" x\\", "plan|a\"b$c\\d", "x")]
    [InlineData("tierodcalc plan '' x", "plan|", "x")]
    [InlineData("tierodcalc plan $(touch x) `y", "plan|$(touch|x)", "`y")]
    public void A_line_is_taken_apart_as_bash_does(string line, string before, string word)
    {
        BashLine found = BashLine.Of(line, string.Empty, Breaks);
        Assert.Equal(before, string.Join('|', found.Before));
        Assert.Equal(word, found.Word);
        Assert.Empty(found.After);
    }

    [Theory]
    [InlineData("tierodcalc plan --rod ", " my\\ job.yaml --json", "", "my job.yaml|--json")]
    [InlineData("tierodcalc plan --rod ", "car.yaml", "", "car.yaml")]
    [InlineData("tierodcalc plan --rod le", "ft car.yaml", "le", "car.yaml")]
    [InlineData("tierodcalc plan --rod 'le", "ft front' car.yaml", "le", "car.yaml")]
    public void Words_behind_the_cursor_are_seen(string before, string after, string word, string following)
    {
        BashLine found = BashLine.Of(before, after, Breaks);
        Assert.Equal(["plan", "--rod"], found.Before);
        Assert.Equal(word, found.Word);
        Assert.Equal(following, string.Join('|', found.After));
    }

    /// <summary>What bash puts in, in place of what it takes for the word, makes the word.</summary>
    [Theory]
    [InlineData("--rod le", "left front", @"left\ front")]
    [InlineData("--rod \"le", "left front", "left front")]
    [InlineData("--rod 'it", "it's", @"it'\''s")]
    [InlineData("--rod \"it", "it's \"odd\" $x", "it's \\\"odd\\\" \\$x")]
    [InlineData("--rod=le", "--rod=left front", @"left\ front")]
    [InlineData("--rod a:", "a:b=c", "b=c")]
    [InlineData(@"--rod a\:", "a:b=c", "a:b=c")]
    [InlineData("--rod Ö", "Öse hinten", @"Öse\ hinten")]
    public void A_word_is_quoted_from_where_bash_breaks_it(string line, string word, string quoted) =>
        Assert.Equal(quoted, BashLine.Of($"tierodcalc plan {line}", string.Empty, Breaks).Quote(word));

    [Fact]
    public void A_word_is_whole_where_nothing_breaks_it() =>
        Assert.Equal(@"--rod=left\ front", BashLine.Of("tierodcalc plan --rod=le", string.Empty, " \t\n").Quote("--rod=left front"));

    [Theory]
    [InlineData("plan", "tierodcalc pl")]
    [InlineData("left|right", "tierodcalc plan JOB --rod ")]
    [InlineData("left", "tierodcalc plan JOB --rod=l")]
    [InlineData("longer-sleeve", "tierodcalc plan SHORT --with lo")]
    [InlineData("best|margin|price|mass|cut", "tierodcalc choose JOB --sort ")]
    [InlineData("", "tierodcalc plan ca")]
    [InlineData("", "tierodcalc plan nowhere.yaml --rod ")]
    [InlineData("", "tierodcalc plan - --rod ")]
    public void The_printed_script_completes_in_bash(string words, string line)
    {
        string written = line.Replace("JOB", "catalog-samples/jobs/car-27.yaml", StringComparison.Ordinal)
            .Replace("SHORT", "catalog-samples/jobs/car-27-short-sleeve.yaml", StringComparison.Ordinal);
        Assert.Equal(words.Split('|', StringSplitOptions.RemoveEmptyEntries), InBash(written,
            "for word in \"${COMPREPLY[@]}\"; do echo \"$word\"; done"));
    }

    /// <summary>Each word is put into the line and the line read by bash, which then has the name of the rod.</summary>
    [Fact]
    public void Names_are_quoted_so_that_bash_reads_them_back()
    {
        string job = Path.Combine(_folder, "my \"job\".yaml");
        File.WriteAllText(job, CompletionJobs.WithRods(CompletionJobs.Names));
        const string ReadBack = "for word in \"${COMPREPLY[@]}\"; do eval \"printf '%s\\n' $OPEN$word$OPEN\"; done";
        string line = $"tierodcalc plan '{job}' --rod ";
        Assert.Equal(CompletionJobs.Names, InBash(line, $"OPEN=''; {ReadBack}"));
        Assert.Equal(CompletionJobs.Names, InBash($"{line}\"", $"OPEN='\"'; {ReadBack}").Select(word => word.Replace("\\!", "!",
            StringComparison.Ordinal)));
        Assert.Equal(CompletionJobs.Names, InBash($"{line}'", $"OPEN=\"'\"; {ReadBack}"));
    }

    /// <summary>Nothing of a line is carried out while it is being written.</summary>
    [Fact]
    public void Commands_within_a_line_are_not_run()
    {
        string file = Path.Combine(_folder, "touched");
        InBash($"tierodcalc plan $(touch {file}) `touch {file}` --rod ", "true");
        Assert.False(File.Exists(file));
    }

    /// <summary>Files are left to the shell, unless a word is asked for.</summary>
    [Fact]
    public void The_shell_completes_files_itself()
    {
        const string Registered = "complete -p tierodcalc";
        Assert.Equal(["complete -o bashdefault -o default -F _tierodcalc tierodcalc"], InBash("tierodcalc plan ", Registered));
        const string Switched = "compopt() { printf '%s ' \"$@\"; }; _tierodcalc tierodcalc";
        Assert.Empty(InBash("tierodcalc plan ca", Switched));
        Assert.Equal(["+o default +o bashdefault "], InBash("tierodcalc plan nowhere.yaml --rod ca", Switched));
    }

    /// <summary>What commands print in bash after the script has been loaded and asked to complete a line.</summary>
    private string[] InBash(string line, string commands)
    {
        if (OperatingSystem.IsWindows())
        {
            return [];
        }

        string script = Path.Combine(_folder, "complete.bash");
        File.WriteAllText(
            script,
            """
            tierodcalc() { dotnet "$PROGRAM" "$@"; }
            source <(tierodcalc completion bash)
            COMP_POINT=${#COMP_LINE} COMP_WORDBREAKS=$' \t\n"\'@><=;|&(:'
            _tierodcalc tierodcalc
            eval "$COMMANDS"
            """);
        ProcessStartInfo start = new("bash", ["--norc", "--noprofile", script])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
            WorkingDirectory = Repository.Root,
        };
        start.Environment["PROGRAM"] = typeof(Application).Assembly.Location;
        start.Environment["COMP_LINE"] = line;
        start.Environment["COMMANDS"] = commands;
        start.Environment["LC_ALL"] = "C.UTF-8";
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(string.Empty, error.Result);
        return output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
