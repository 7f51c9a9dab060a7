namespace TieRodCalc.Browser;

/// <summary>What one check found.</summary>
/// <param name="Check">Its name.</param>
/// <param name="Problems">What is wrong and where; none where it holds.</param>
internal sealed record Finding(string Check, IReadOnlyList<string> Problems)
{
    public bool Holds => Problems.Count == 0;
}

/// <summary>All that the checks of one sheet found, in order.</summary>
internal sealed class Findings
{
    private readonly List<Finding> _all = [];

    public IReadOnlyList<Finding> All => _all;

    public void Add(string check, IEnumerable<string> problems) => _all.Add(new Finding(check, [.. problems]));

    /// <summary>One problem, or none where it holds.</summary>
    public void Add(string check, bool holds, string problem) => Add(check, holds ? [] : [problem]);
}
