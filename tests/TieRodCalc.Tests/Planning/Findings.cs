using System.Globalization;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>Gathers what does not agree over many rods, so that one run shows how often it happens and where it is simplest.</summary>
internal sealed class Findings
{
    private const int Shown = 3;

    private readonly List<(RodCase Rod, string What)> _found = [];

    public void Near(RodCase rod, string what, double expected, double actual, double tolerance)
    {
        if (!(Math.Abs(expected - actual) <= tolerance))
        {
            Add(rod, string.Create(CultureInfo.InvariantCulture, $"{what}: expected {expected:R}, was {actual:R}"));
        }
    }

    public void Near(RodCase rod, string what, double expectedMm, Length actual, double tolerance) =>
        Near(rod, what, expectedMm, actual.Millimeters, tolerance);

    public void That(RodCase rod, string what, bool holds)
    {
        if (!holds)
        {
            Add(rod, what);
        }
    }

    public void Add(RodCase rod, string what) => _found.Add((rod, what));

    /// <summary>Takes over what was found elsewhere.</summary>
    public void AddAll(Findings others) => _found.AddRange(others._found);

    /// <summary>Fails where anything was found, and shows the shortest descriptions.</summary>
    public void AssertNone()
    {
        if (_found.Count > 0)
        {
            IEnumerable<string> simplest = _found
                .Select(found => $"{found.What}\n  {found.Rod}")
                .OrderBy(text => text.Length)
                .Take(Shown);
            Assert.Fail($"{_found.Count} findings over {RandomCounts.Description}; the shortest:\n{string.Join("\n", simplest)}");
        }
    }
}
