using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>A random corner corrected twice by what its bump sheets say. What is left is in parts of the first worst toe change.</summary>
/// <param name="Part">The first change of length in parts of the rod.</param>
/// <param name="Before">The first worst toe change at the gauge for each millimeter of travel.</param>
/// <param name="First">Left after one correction.</param>
/// <param name="Second">Left after the second one.</param>
/// <param name="Contradicted">Whether the second reading took the two sheets to contradict each other.</param>
internal readonly record struct CorrectedCorner(double Part, double Before, double First, double Second, bool Contradicted);

/// <summary>How often corners had to be drawn again, and why.</summary>
internal sealed record CornersSkipped(int OutOfReach, int NoLength, int OutOfReachAfter);

/// <summary>
/// Random corners, their readings, and the corrections made on them: at the outer joint, or with the inner joint lowered in place of
/// the outer one raised.
/// </summary>
internal sealed class CorrectedCorners
{
    private CorrectedCorners(IReadOnlyList<CorrectedCorner> all, CornersSkipped skipped) => (All, Skipped) = (all, skipped);

    public IReadOnlyList<CorrectedCorner> All { get; }

    public CornersSkipped Skipped { get; }

    /// <summary>So many corners, drawn again where one does not reach the travels or no change helps it.</summary>
    public static CorrectedCorners Draw(int count, bool lowersInner)
    {
        List<CorrectedCorner> all = [];
        (int unreached, int noLength, int after) = (0, 0, 0);
        for (int index = 0; all.Count < count; index++)
        {
            CornerGeometry corner = RandomCorners.Draw(index).Geometry;
            if (BumpSheets.Of(corner) is not { } sheet)
            {
                unreached++;
            }
            else if (BumpSheets.Read(corner.Steering, sheet).Both is not { } advice)
            {
                noLength++;
            }
            else if (Corrected(corner, sheet, advice, lowersInner) is { } corrected)
            {
                all.Add(corrected);
            }
            else
            {
                after++;
            }
        }

        return new CorrectedCorners(all, new CornersSkipped(unreached, noLength, after));
    }

    /// <summary>What is left at a part of the corners: their median, their ninetieth percentile.</summary>
    public static double Percentile(IEnumerable<double> values, double part)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Length == 0 ? double.NaN : sorted[(int)Math.Min(sorted.Length - 1, part * sorted.Length)];
    }

    /// <summary>The corner with a change made; null where that leaves none.</summary>
    public static CornerGeometry? Changed(CornerGeometry corner, BumpChange change, bool lowersInner) => corner.Moved(lowersInner
        ? new JointMoves(Length.Zero, -change.OuterRaised, change.RodLonger)
        : new JointMoves(change.OuterRaised, Length.Zero, change.RodLonger));

    private static CorrectedCorner? Corrected(CornerGeometry corner, BumpSheet sheet, BumpAdvice advice, bool lowersInner)
    {
        if (Changed(corner, advice.Change, lowersInner) is not { } once || BumpSheets.Of(once) is not { } second)
        {
            return null;
        }

        BumpFindings found = BumpSheets.Read(once.Steering, sheet with { Then = advice.Change }, second);
        if (found.Both is not { } again
            || Changed(once, again.Change, lowersInner) is not { } twice
            || BumpSheets.ToesOf(twice) is not { } left)
        {
            return null;
        }

        double before = BumpSheets.Worst(BumpSheets.ToesOf(corner)!);
        return new CorrectedCorner(
            Math.Abs(advice.Change.RodLonger / corner.RodLength),
            before,
            BumpSheets.Worst(BumpSheets.ToesOf(once)!) / before,
            BumpSheets.Worst(left) / before,
            found.Warnings.Any(warning =>
                warning.Code is BumpWarningCode.SheetsContradict or BumpWarningCode.SheetsContradictSense));
    }
}
