using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What a job's corners are held against: the travel that counts, and the rods on them.</summary>
internal static class CornerUse
{
    /// <summary>The travel each way that counts where neither the corner nor a sheet says one; it is shown with the result.</summary>
    private static readonly Length s_usualTravel = Length.FromMillimeters(50);

    /// <summary>The travel that the corner says, or what the newest sheet of that side measured; and the steering.</summary>
    public static SwingRange RangeOf(Job job, JobCorner corner)
    {
        BumpSheet? newest = job.Bump.LastOrDefault(sheet => sheet.Side == corner.Side)?.Sheet;
        double[] travels = [.. newest?.Readings.Select(reading => reading.Travel.Millimeters) ?? []];
        Length Measured(int side) => travels.Length == 0
            ? s_usualTravel
            : Length.FromMillimeters(travels.Max(travel => Math.Max(0, side * travel)));
        return new SwingRange(
            corner.DroopTravel ?? Measured(-1), corner.BumpTravel ?? Measured(+1), corner.Steer ?? Length.Zero);
    }

    /// <summary>The swing of a rod's joints; empty where its corner is not known, or its ends say nothing of it.</summary>
    public static IReadOnlyList<SwingCheck> SwingOf(Job job, CarSide? side, Rod rod) =>
        job.Corners.FirstOrDefault(corner => corner.Side == side) is { Geometry: { } geometry } known
            ? SwingCheck.Of(rod, geometry, RangeOf(job, known))
            : [];
}
