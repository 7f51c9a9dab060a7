using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>Bump sheets of the tests: readings worked out from toes, in millimeters and radians.</summary>
internal static class BumpSheets
{
    /// <summary>Distance of the two indicators.</summary>
    public const double Spacing = 254;

    /// <summary>What the indicators show at the least: 0.001 in.</summary>
    public const double Resolution = 0.0254;

    /// <summary>Half an inch apart, up to two inches each way.</summary>
    public static readonly double[] Travels = [-50.8, -38.1, -25.4, -12.7, 12.7, 25.4, 38.1, 50.8];

    /// <summary>The toes of a corner, or null where it does not reach one of the travels.</summary>
    public static double[]? ToesOf(CornerGeometry corner, double[]? travels = null)
    {
        double?[] toes = [.. (travels ?? Travels).Select(travel => corner.At(Mm(travel))?.Toe.Radians)];
        return toes.Any(toe => toe is null) ? null : [.. toes.Select(toe => toe!.Value)];
    }

    /// <summary>The readings on a corner, of a gauge whose points go with the wheel; null where a travel is out of reach.</summary>
    public static BumpSheet? Of(CornerGeometry corner, double resolution = Resolution)
    {
        int outward = corner.Side == CarSide.Left ? 1 : -1;
        List<BumpReading> readings = [];
        foreach (double travel in Travels)
        {
            if (corner.At(Mm(travel)) is not { } position)
            {
                return null;
            }

            // Half the spacing before and behind the wheel center along the ground line, which runs inward in front by the toe.
            double center = outward * (position.Wheel.Y - corner.Wheel.Y).Millimeters;
            double half = Spacing / 2 * Math.Sin(position.Toe.Radians);
            readings.Add(new BumpReading(Mm(travel), Mm(center - half), Mm(center + half)));
        }

        return Sheet(readings, resolution);
    }

    /// <summary>A sheet whose front indicator reads nothing, and the rear one all of the toe.</summary>
    public static BumpSheet Of(
        Func<double, double> toe, double[]? travels = null, double? resolution = Resolution, double spacing = Spacing) => Sheet(
        (travels ?? Travels).Select(travel => new BumpReading(Mm(travel), Length.Zero, Mm(spacing * Math.Sin(toe(travel))))),
        resolution,
        spacing);

    /// <summary>A sheet zeroed once whose readings grow outward.</summary>
    public static BumpSheet Sheet(IEnumerable<BumpReading> readings, double? resolution = Resolution, double spacing = Spacing) => new()
    {
        Spacing = Mm(spacing),
        Zeroed = IndicatorZero.Once,
        Grows = IndicatorSense.Outward,
        Resolution = resolution is { } least ? Mm(least) : null,
        Readings = [.. readings],
    };

    /// <summary>What sheets say of a wheel whose shims are half a millimeter.</summary>
    public static BumpFindings Read(SteeringGeometry? wheel, params IReadOnlyList<BumpSheet> sheets) =>
        BumpSteer.Read(new BumpRequest { Sheets = sheets, Wheel = wheel, Shim = Mm(0.5) });

    /// <summary>The greatest toe change of a step between toes, ride height among them, for each millimeter of travel.</summary>
    public static double Worst(double[] toes)
    {
        (double Travel, double Toe)[] points = [.. Travels.Zip(toes).Append((0, 0)).OrderBy(point => point.Item1)];
        return points.Zip(points.Skip(1), (low, high) =>
            Math.Abs(Spacing * (Math.Sin(high.Toe) - Math.Sin(low.Toe)) / (high.Travel - low.Travel))).Max();
    }

    /// <summary>The same sheet zeroed at each step, ride height outward.</summary>
    public static BumpSheet ZeroedEachStep(BumpSheet once)
    {
        BumpReading Before(BumpReading reading) => once.Readings
            .Where(other => other.Travel.Millimeters * reading.Travel.Millimeters > 0
                && Math.Abs(other.Travel.Millimeters) < Math.Abs(reading.Travel.Millimeters))
            .OrderBy(other => Math.Abs(other.Travel.Millimeters))
            .LastOrDefault();

        return once with
        {
            Zeroed = IndicatorZero.EachStep,
            Readings =
            [
                .. once.Readings.Select(reading => reading with
                {
                    Front = reading.Front - Before(reading).Front,
                    Rear = reading.Rear - Before(reading).Rear,
                }),
            ],
        };
    }

    public static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);
}
