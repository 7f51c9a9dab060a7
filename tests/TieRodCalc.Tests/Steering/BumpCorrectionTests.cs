using TieRodCalc.Steering;
using Xunit.Abstractions;
using static System.FormattableString;

namespace TieRodCalc.Tests.Steering;

/// <summary>Random corners are read with a gauge, changed as the readings ask for, and read again.</summary>
public class BumpCorrectionTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void One_correction_leaves_a_quarter_and_two_leave_little(bool lowersInner)
    {
        CorrectedCorners corners = CorrectedCorners.Draw(RandomCounts.BumpCorners, lowersInner);
        output.WriteLine(RandomCounts.Description);
        output.WriteLine($"{corners.All.Count} corners{(lowersInner ? ", inner joint lowered" : "")}; drawn again: {corners.Skipped}");
        Print("all", corners.All);
        double[] ends = [0, 0.05, 0.15, 0.25, double.PositiveInfinity];
        foreach ((double low, double high) in ends.Zip(ends.Skip(1)))
        {
            Print(Invariant($"{low:P0} to {high:P0}"), [.. corners.All.Where(corner => corner.Part >= low && corner.Part < high)]);
        }

        Assert.True(corners.All.Count >= 200);
        Assert.InRange(corners.Skipped.NoLength + corners.Skipped.OutOfReachAfter, 0, corners.All.Count / 10);
        Assert.InRange(Left(corners.All, corner => corner.First, 0.5), 0, 0.25);
        Assert.InRange(Left(corners.All, corner => corner.First, 0.9), 0, 0.35);
        Assert.InRange(Left(corners.All, corner => corner.Second, 0.5), 0, 0.07);
        Assert.InRange(Left(corners.All, corner => corner.Second, 0.9), 0, 0.12);

        // One in a hundred is left with more; those steered themselves little before, in ways that two terms do not hold. None gets worse.
        Assert.InRange(Left(corners.All, corner => corner.First, 0.99), 0, 0.5);
        Assert.InRange(Left(corners.All, corner => corner.Second, 0.99), 0, 0.25);
        Assert.All(corners.All, corner => Assert.InRange(Math.Max(corner.First, corner.Second), 0, 1));
    }

    private static double Left(IReadOnlyList<CorrectedCorner> corners, Func<CorrectedCorner, double> of, double part) =>
        CorrectedCorners.Percentile(corners.Select(of), part);

    private void Print(string which, IReadOnlyList<CorrectedCorner> corners)
    {
        string Of(Func<CorrectedCorner, double> of) => Invariant(
            $"median {Left(corners, of, 0.5):P1}, ninetieth {Left(corners, of, 0.9):P1}, 99th {Left(corners, of, 0.99):P1}, ")
            + Invariant($"worst {Left(corners, of, 1):P1}");
        double[] left = [.. corners.Select(corner => corner.Before * corner.Second)];
        output.WriteLine(($"{which}: {corners.Count} corners, first {Of(corner => corner.First)}; second {Of(corner => corner.Second)}; "
            + $"{corners.Count(corner => corner.Contradicted)} contradicted; ")
            + Invariant($"in per inch: before {Left(corners, corner => corner.Before, 0.5):F4}, ")
            + Invariant($"after two {CorrectedCorners.Percentile(left, 0.5):F4}, at most {left.DefaultIfEmpty().Max():F4}"));
    }
}
