using System.Text;
using TieRodCalc.Steering;
using UnitsNet;
using static System.FormattableString;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// The tables of docs/bump.md: what corrections leave on random corners, and how far computed sensitivities are true there.
/// </summary>
internal static class BumpTrustTable
{
    /// <summary>Random corners of the tables, the same on every machine and in every run.</summary>
    public const int Count = 1_000;

    private static readonly (double Low, double High, string Name)[] s_parts =
    [
        (0, double.PositiveInfinity, "any"),
        (0, 0.05, "under 5 %"),
        (0.05, 0.15, "5 to 15 %"),
        (0.15, 0.25, "15 to 25 %"),
        (0.25, double.PositiveInfinity, "over 25 %"),
    ];

    /// <summary>What is left after corrections, by the size of the first change of length.</summary>
    public static string Trust()
    {
        StringBuilder text = new();
        text.Append(Invariant(
            $"""
            {Count} random corners, in rows by the first change of length in parts of the rod; the rest is the worst toe change per inch of
            travel after one correction and after two, in percent of what it was: median, ninetieth percentile and worst.

            | change of length | changed besides | corners | one: median | 90th | worst | two: median | 90th | worst |
            |---|---|---|---|---|---|---|---|---|

            """));
        foreach (bool lowersInner in (bool[])[false, true])
        {
            CorrectedCorners corners = CorrectedCorners.Draw(Count, lowersInner);
            foreach ((double low, double high, string name) in s_parts)
            {
                CorrectedCorner[] part = [.. corners.All.Where(corner => corner.Part >= low && corner.Part < high)];
                text.Append(Invariant($"| {name} | {(lowersInner ? "inner joint lowered" : "outer joint raised")} | {part.Length} |"))
                    .Append(Left(part.Select(corner => corner.First)))
                    .Append(Left(part.Select(corner => corner.Second)))
                    .Append('\n');
            }
        }

        return text.ToString();
    }

    /// <summary>The true sensitivities in parts of the computed ones.</summary>
    public static string Spread()
    {
        StringBuilder text = new();
        text.Append(Invariant(
            $"""
            The true change of slope and curvature by a small change, on {Count} random corners, in parts of a computed one: mean, standard
            deviation, and the fifth and ninety-fifth percentile.

            | change | changes the | in parts of what is computed for the | mean | deviation | 5th | 95th |
            |---|---|---|---|---|---|---|

            """));
        SensitivitySpread[] corners = [.. SensitivitySpread.Draw(Count)];
        foreach ((string change, string changes, string by, Func<SensitivitySpread, double> of) in Rows)
        {
            double[] values = [.. corners.Select(of)];
            text.Append(Invariant($"| {change} | {changes} | {by} | {SensitivitySpread.Mean(values):F3} |"))
                .Append(Invariant($" {SensitivitySpread.Deviation(values):F3} | {CorrectedCorners.Percentile(values, 0.05):F3} |"))
                .Append(Invariant($" {CorrectedCorners.Percentile(values, 0.95):F3} |\n"));
        }

        return text.ToString();
    }

    private static IEnumerable<(string Change, string Changes, string By, Func<SensitivitySpread, double> Of)> Rows =>
    [
        ("outer joint raised", "slope", "slope by raising", one => one.OuterRaised.Slope),
        ("outer joint raised", "curvature", "curvature by length", one => one.OuterRaised.Curvature),
        ("inner joint lowered", "slope", "slope by raising", one => one.InnerLowered.Slope),
        ("inner joint lowered", "curvature", "curvature by length", one => one.InnerLowered.Curvature),
        ("rod longer", "slope", "slope by raising", one => one.Longer.Slope),
        ("rod longer", "curvature", "curvature by length", one => one.Longer.Curvature),
    ];

    private static string Left(IEnumerable<double> values)
    {
        double[] left = [.. values];
        return Invariant($" {100 * CorrectedCorners.Percentile(left, 0.5):F0} | {100 * CorrectedCorners.Percentile(left, 0.9):F0} |")
            + Invariant($" {100 * left.Max():F0} |");
    }
}

/// <summary>
/// What a millimeter of each change truly does on a corner: to the slope in parts of what is computed for the slope by raising, to the
/// curvature in parts of what is computed for the curvature by length.
/// </summary>
internal sealed record SensitivitySpread(
    (double Slope, double Curvature) OuterRaised, (double Slope, double Curvature) InnerLowered, (double Slope, double Curvature) Longer)
{
    /// <summary>Half of the difference that derivatives are taken over, in millimeters.</summary>
    private const double Small = 0.25;

    /// <summary>Those of so many random corners.</summary>
    public static IEnumerable<SensitivitySpread> Draw(int count) => Enumerable.Range(0, int.MaxValue)
        .Select(index => Of(RandomCorners.Draw(index).Geometry))
        .OfType<SensitivitySpread>()
        .Take(count);

    public static double Mean(double[] values) => values.Average();

    public static double Deviation(double[] values) =>
        Math.Sqrt(values.Sum(value => (value - Mean(values)) * (value - Mean(values))) / (values.Length - 1));

    /// <summary>By differences; null where the corner does not reach the travels.</summary>
    private static SensitivitySpread? Of(CornerGeometry corner) =>
        Derivative(corner, each => new JointMoves(each, Length.Zero, Length.Zero)) is { } raised
        && Derivative(corner, each => new JointMoves(Length.Zero, -each, Length.Zero)) is { } lowered
        && Derivative(corner, each => new JointMoves(Length.Zero, Length.Zero, each)) is { } longer
            ? new SensitivitySpread(raised, lowered, longer)
            : null;

    private static (double Slope, double Curvature)? Derivative(CornerGeometry corner, Func<Length, JointMoves> moves)
    {
        if (Terms(corner.Moved(moves(BumpSheets.Mm(Small)))) is not { } above
            || Terms(corner.Moved(moves(BumpSheets.Mm(-Small)))) is not { } below)
        {
            return null;
        }

        // Raising changes the slope by -1/(L r), length the curvature by 1/(L^2 r).
        double length = corner.RodLength.Millimeters;
        double arm = corner.Steering.LengthPerToe;
        return (
            -(above.Slope - below.Slope) / (2 * Small) * length * arm,
            (above.Curvature - below.Curvature) / (2 * Small) * length * length * arm);
    }

    private static ToeTerms? Terms(CornerGeometry? corner) =>
        corner is not null && BumpSheets.Of(corner) is { } sheet ? ToeTerms.Of(new BumpCurve(sheet)) : null;
}
