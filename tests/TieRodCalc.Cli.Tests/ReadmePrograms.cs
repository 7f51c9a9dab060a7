using System.Text;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// The programs that the README shows, between comments: the commands that make a project, the code of each program, and what a run
/// of it prints.
/// </summary>
internal static class ReadmePrograms
{
    private const string Fence = "```";
    private const string Runs = "<!-- consumer runs: ";
    private const string EndOfComment = " -->";
    private const string End = "<!-- end -->";

    public static string Path { get; } = System.IO.Path.Combine(Repository.Root, "README.md");

    public static string Readme() => File.ReadAllText(Path);

    /// <summary>The text of a block, without its fence.</summary>
    public static string Code(string readme, string name)
    {
        string[] lines = readme.Split('\n');
        int start = Array.IndexOf(lines, $"<!-- consumer: {name}{EndOfComment}");
        Assert.True(start >= 0, $"the README has no block {name}");
        int end = Array.IndexOf(lines, End, start);
        Assert.StartsWith(Fence, lines[start + 1], StringComparison.Ordinal);
        Assert.Equal(Fence, lines[end - 1]);
        return string.Concat(lines[(start + 2)..(end - 1)].Select(line => $"{line}\n"));
    }

    /// <summary>The README with what its programs print.</summary>
    /// <param name="readme">The README.</param>
    /// <param name="dotnet">Runs a dotnet command and gives what it prints.</param>
    /// <param name="project">The folder that the commands of the README make the project in.</param>
    public static string Run(string readme, Func<string[], string> dotnet, string project)
    {
        foreach (string command in Code(readme, "commands").Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            dotnet(Arguments(command));
        }

        StringBuilder text = new();
        bool replaced = false;
        int runs = 0;
        foreach (string line in readme.Split('\n'))
        {
            replaced &= line != End;
            text.Append(replaced ? "" : line + "\n");
            if (line.StartsWith(Runs, StringComparison.Ordinal))
            {
                string[] run = line[Runs.Length..^EndOfComment.Length].Split(' ');
                File.WriteAllText(System.IO.Path.Combine(project, "Program.cs"), Code(readme, run[0]));
                string command = $"dotnet run --project shop{(run.Length > 1 ? " -- " : "")}{string.Join(' ', run[1..])}";
                text.Append(Fence).Append("\n$ ").Append(command).Append('\n');
                text.Append(dotnet(Arguments(command))).Append(Fence).Append('\n');
                replaced = true;
                runs++;
            }
        }

        Assert.False(replaced, "a block of the README has no end");
        Assert.Equal(2, runs);
        return text.ToString()[..^1];
    }

    private static string[] Arguments(string command)
    {
        Assert.StartsWith("dotnet ", command, StringComparison.Ordinal);
        return command.Split(' ')[1..];
    }
}
