using System.Runtime.CompilerServices;
using TieRodCalc.Steering;
using Xunit.Abstractions;
using static System.FormattableString;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// The computed blocks of docs/bump.md. Set the environment variable TIERODCALC_UPDATE_DOCS to write them anew.
/// </summary>
public class BumpDocumentTests(ITestOutputHelper output)
{
    private const string End = "<!-- end -->";

    [Fact]
    public void Computed_blocks_are_what_random_corners_give()
    {
        string path = Path.GetFullPath(Path.Combine(Folder(), "..", "..", "..", "docs", "bump.md"));
        string before = File.ReadAllText(path);
        string after = before;
        foreach ((string name, string text) in ((string, string)[])
            [("example", BumpExample.Text()), ("trust", BumpTrustTable.Trust()), ("spread", BumpTrustTable.Spread())])
        {
            string mark = $"<!-- bump: {name} -->\n";
            int start = after.IndexOf(mark, StringComparison.Ordinal);
            Assert.True(start >= 0, $"docs/bump.md has no block {name}");
            start += mark.Length;
            after = after[..start] + text + after[after.IndexOf(End, start, StringComparison.Ordinal)..];
        }

        if (Environment.GetEnvironmentVariable("TIERODCALC_UPDATE_DOCS") is { Length: > 0 })
        {
            File.WriteAllText(path, after);
        }

        Assert.Equal(after, before);
    }

    [Fact]
    public void The_worked_example_is_what_the_library_finds()
    {
        string text = BumpExample.Text();
        BumpAdvice found = BumpExample.Found();

        Assert.Contains(Invariant($"= {found.Change.OuterRaised.Inches:F3} in\n"), text, StringComparison.Ordinal);
        Assert.Contains(Invariant($"L_wanted = {found.WantedLength.Inches:F3} in\n"), text, StringComparison.Ordinal);
        Assert.Contains(Invariant($"= {found.Uncertainty!.Value.OuterRaised.Inches:F4} in\n"), text, StringComparison.Ordinal);
        Assert.Contains(Invariant($"= {found.Uncertainty!.Value.RodLonger.Inches:F3} in\n"), text, StringComparison.Ordinal);
    }

    /// <summary>
    /// The standard errors that the sensitivities start from are not smaller than what the corners show, the mean's own error counted in.
    /// </summary>
    [Fact]
    public void Computed_sensitivities_are_known_about_as_well_as_they_say()
    {
        SensitivitySpread[] corners = [.. SensitivitySpread.Draw(BumpTrustTable.Count)];
        const double Computed = 1;
        foreach ((string name, double said, double expected, Func<SensitivitySpread, double> of) in
            ((string, double, double, Func<SensitivitySpread, double>)[])
            [
                ("slope by raising", ToeSensitivity.OwnSpread, Computed, one => one.OuterRaised.Slope),
                ("curvature by length", ToeSensitivity.OwnSpread, Computed, one => one.Longer.Curvature),
                ("slope by length", ToeSensitivity.SlopeByLength, 0, one => one.Longer.Slope),
                ("curvature by raising", ToeSensitivity.CurvatureByRaising, 0, one => one.OuterRaised.Curvature),
            ])
        {
            double[] off = [.. corners.Select(one => of(one) - expected)];
            double found = Math.Sqrt(off.Average(each => each * each));
            Assert.InRange(found, 0, said);
            output.WriteLine(Invariant($"{name}: said {said}, root of the mean square {found:F3}"));
        }
    }

    private static string Folder([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
