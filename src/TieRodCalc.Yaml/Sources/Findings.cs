namespace TieRodCalc.Yaml.Sources;

/// <summary>What was found in one file, in the order in which it was found.</summary>
internal sealed class Findings
{
    private readonly List<Finding> _problems = [];
    private readonly List<Finding> _notes = [];

    /// <summary>How many problems were found so far.</summary>
    public int Count => _problems.Count;

    /// <summary>Adds a problem.</summary>
    public void Problem(TextSpan span, string message, string? suggestion = null) =>
        _problems.Add(new Finding(span, message, suggestion));

    /// <summary>Adds a note.</summary>
    public void Note(TextSpan span, string message) => _notes.Add(new Finding(span, message, null));

    /// <summary>Forgets everything and keeps one problem.</summary>
    public void Only(TextSpan span, string message)
    {
        _problems.Clear();
        _notes.Clear();
        Problem(span, message);
    }

    /// <summary>Adds the problems and notes to lists, each in the order of the file.</summary>
    public void AddTo(SourceText source, List<Problem> problems, List<Problem> notes)
    {
        Add(source, _problems, problems);
        Add(source, _notes, notes);
    }

    private static void Add(SourceText source, List<Finding> findings, List<Problem> all)
    {
        // OrderBy keeps the order of findings at one place.
        foreach (Finding finding in findings.OrderBy(finding => finding.Span.Start))
        {
            all.Add(source.At(finding.Span, finding.Message, finding.Suggestion));
        }
    }

    private readonly record struct Finding(TextSpan Span, string Message, string? Suggestion);
}
