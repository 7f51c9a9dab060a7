using System.Diagnostics;
using System.Globalization;
using System.Text;
using TieRodCalc.Cli.Dialog;

namespace TieRodCalc.Cli.Tests;

/// <summary>The dialog that docs/new.md shows is the one that the program leads; written anew like the other documents.</summary>
[Collection("README.md")]
public sealed class NewDocumentTests
{
    [Fact]
    public void The_shown_dialog_is_real()
    {
        string path = Path.Combine(Repository.Root, "docs", "new.md");
        string before = File.ReadAllText(path);
        string after = DocumentTests.Regenerated(before, Block);
        if (Environment.GetEnvironmentVariable("TIERODCALC_UPDATE_DOCS") is { Length: > 0 })
        {
            File.WriteAllText(path, after);
        }

        Assert.Equal(after, before);
    }

    private static string? Block(string line)
    {
        string[] words = line.Split(' ');
        return words is ["<!--", "dialog:" or "questions:" or "written:", { } file, "-->"]
            ? Block(words[1], file, File.ReadAllText(Path.Combine(Repository.Root, file)))
            : null;
    }

    private static string Block(string kind, string file, string answers)
    {
        if (kind == "questions:")
        {
            return Questions(answers.Split('\n')[..^1]);
        }

        string folder = Directory.CreateTempSubdirectory("tierodcalc-").FullName;
        using Process process = CommandProcess.Start(["new"], withInput: true, folder);
        Task<string> error = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(answers);
        process.StandardInput.Close();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        StringBuilder files = new();
        foreach (string written in Directory.GetFiles(folder).Order(StringComparer.Ordinal))
        {
            files.Append(CultureInfo.InvariantCulture, $"`{Path.GetFileName(written)}`:\n\n```yaml\n{File.ReadAllText(written)}```\n");
        }

        Directory.Delete(folder, recursive: true);
        return kind == "dialog:"
            ? $"```\n$ tierodcalc new < {file}\n{error.Result}{output}```\n"
            : files.ToString().Replace("```\n`", "```\n\n`", StringComparison.Ordinal);
    }

    private static string Questions(string[] lines)
    {
        StringBuilder table = new("\n| line | question | answer |\n|---|---|---|\n");
        Answers answers = new();
        Script script = new(new FileQuestions(string.Empty, overwrite: true));
        for (int count = 1; count <= lines.Length; count++)
        {
            Asked asked = script.Next(answers)!;
            string line = lines[count - 1];
            answers.Give(asked.Key, line.Length > 0 ? line : asked.Question.Default?.Invoke(asked.Scope) ?? string.Empty);
            string shown = line.Length > 0 ? $"`{line}`" : "an empty line";
            table.Append(CultureInfo.InvariantCulture, $"| {count} | {asked.Shown} | {shown} |\n");
        }

        Assert.Null(script.Next(answers));
        return table.Append('\n').ToString();
    }
}
