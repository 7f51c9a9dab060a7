using TieRodCalc.Planning;
using TieRodCalc.Tests.Yaml;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Files;

/// <summary>A number that is none is found wherever it stands, and the numbers of a job are looked at.</summary>
public class NumberWalkTests
{
    [Fact]
    public void A_number_that_is_none_is_found_at_its_place()
    {
        NumberWalk walk = new();
        Assert.Null(walk.NotFinite(new List<(string, double?)> { ("one", 1), ("none", null) }));
        Assert.Equal("[1].Item2 is NaN", walk.NotFinite(new List<(string, double?)> { ("one", 1), ("none", double.NaN) }));
        Assert.EndsWith(" is Infinity", walk.NotFinite(new Held([new(double.PositiveInfinity)])), StringComparison.Ordinal);
        Assert.Equal(".Half is NaN", walk.NotFinite(new Worked("0/0")));
    }

    [Fact]
    public void Every_dimension_of_a_job_is_looked_at()
    {
        Job job = Marked.Check(Samples.Job).Job!;
        NumberWalk walk = new();
        Assert.Null(walk.NotFinite(WholeComputation.Of(job, ChoiceOrder.Best, corners: true)));
        Assert.True(walk.Numbers > 300, $"{walk.Numbers}");
    }

    private sealed record Held(IReadOnlyList<Inside> Items);

    private sealed record Inside(double Number);

    private sealed record Worked(string Text)
    {
        public double Half => Text == "0/0" ? double.NaN : 0;
    }
}
