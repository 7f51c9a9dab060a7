namespace TieRodCalc.Browser;

/// <summary>Prints what was found and counts it.</summary>
internal sealed class Tally(TextWriter output)
{
    /// <summary>One broken rule is mostly broken in many places.</summary>
    private const int MostShown = 25;

    private int _passed;

    public int Failed { get; private set; }

    public void Add(string subject, IEnumerable<Finding> findings)
    {
        foreach (Finding finding in findings)
        {
            Add(subject, finding);
        }
    }

    public void Add(string subject, Finding finding)
    {
        output.WriteLine($"{(finding.Holds ? "ok    " : "FAILED")} {subject}: {finding.Check}");
        foreach (string problem in finding.Problems.Take(MostShown))
        {
            output.WriteLine("       " + problem);
        }

        if (finding.Problems.Count > MostShown)
        {
            output.WriteLine($"       and {finding.Problems.Count - MostShown} more");
        }

        _passed += finding.Holds ? 1 : 0;
        Failed += finding.Holds ? 0 : 1;
    }

    public void End() => output.WriteLine($"{_passed} passed, {Failed} failed");
}
