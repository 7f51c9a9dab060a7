namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>plan</c> prints, read without minding where its lines are broken.</summary>
internal sealed class PlanPage
{
    private const int ValueColumn = 26;
    private readonly string[] _lines;

    private PlanPage(string output)
    {
        _lines = output.Split('\n');
        Text = Joined(output);
    }

    /// <summary>All words, one space between them.</summary>
    public string Text { get; }

    public static PlanPage Of(string job, int expectedStatus = 0)
    {
        CommandLine run = CommandLine.RunWith(job, "plan", "-");
        Assert.True(run.Status == expectedStatus, $"status {run.Status}\n{run.Error}{run.Output}");
        Assert.Empty(run.Error);
        return new PlanPage(run.Output);
    }

    public static string Joined(string text) => string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The value of the only row of a label, below the first line that begins with some words.</summary>
    public string Row(string label, string below = "") => Assert.Single(Rows(label, below));

    /// <summary>The values of all rows of a label.</summary>
    public IReadOnlyList<string> Rows(string label, string below = "")
    {
        string start = $"  {label}".PadRight(ValueColumn - 1) + " ";
        string hang = new(' ', ValueColumn);
        List<string> values = [];
        IEnumerable<string> lines = _lines.SkipWhile(line => !line.TrimStart().StartsWith(below, StringComparison.Ordinal));
        bool inside = false;
        foreach (string line in lines.TakeWhile(line => below.Length == 0 || !EndsJoint(line, below)))
        {
            if (line.StartsWith(start, StringComparison.Ordinal) && line.Length > ValueColumn && label.Length > 0)
            {
                values.Add(line[ValueColumn..]);
                inside = true;
            }
            else if (inside && line.StartsWith(hang, StringComparison.Ordinal) && line[ValueColumn] != ' ')
            {
                values[^1] += " " + line[ValueColumn..];
            }
            else
            {
                inside = false;
            }
        }

        return values;
    }

    /// <summary>The words from some words on, up to others.</summary>
    public string Between(string from, string to)
    {
        int start = Text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(start >= 0, $"'{from}' is not in: {Text}");
        int end = Text.IndexOf(to, start, StringComparison.Ordinal);
        Assert.True(end >= 0, $"'{to}' is not behind '{from}' in: {Text}");
        return Text[start..end];
    }

    /// <summary>Both joints have rows of the same labels.</summary>
    private static bool EndsJoint(string line, string below) =>
        line.StartsWith("  outer joint", StringComparison.Ordinal) && !below.StartsWith("outer", StringComparison.Ordinal);
}
