using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>A wheel and its bump sheets, in millimeters, each zeroed once with readings that grow outward.</summary>
internal sealed record BumpCase(WheelCase Wheel, IReadOnlyList<BumpSheet> Sheets)
{
    public const double Shim = 0.5;

    private const int MostReadings = 9;

    public BumpFindings Read() => Read(Wheel.Geometry, Sheets);

    public BumpFindings Read(Func<BumpSheet, BumpSheet> stated) => Read(Wheel.Geometry, [.. Sheets.Select(stated)]);

    public static BumpFindings Read(SteeringGeometry wheel, IReadOnlyList<BumpSheet> sheets, Length? shim = null) =>
        BumpSteer.Read(new BumpRequest { Sheets = sheets, Wheel = wheel, Shim = shim ?? Length.FromMillimeters(Shim) });

    /// <summary>
    /// Up to three sheets of a corner that a car could have: two terms, a third, and noise; the changes between the sheets do about
    /// what is computed, or now and then not. The ranges are invented.
    /// </summary>
    public static BumpCase Draw(int index)
    {
        Random random = RandomCounts.For(4_000_000 + index);
        double Between(double low, double high) => low + (high - low) * random.NextDouble();

        WheelCase wheel = WheelCase.Draw(random);
        double length = wheel.RodLength;
        double arm = wheel.Geometry.LengthPerToe;
        (double slope, double curvature, double third) = (Between(-2e-4, 2e-4), Between(-3e-6, 3e-6), Between(-1e-8, 1e-8));
        List<BumpSheet> sheets = [];
        for (int left = 1 + random.Next(3); left > 0; left--)
        {
            double spacing = Between(120, 500);
            double resolution = Between(0.01, 0.06);
            BumpChange then = random.Next(3) == 0 ? default : new BumpChange(Mm(Between(-6, 6)), Mm(Between(-20, 20)));
            BumpReading[] readings = [.. Travels(random).Select(travel =>
            {
                double toe = slope * travel + curvature * travel * travel / 2 + third * travel * travel * travel;
                double middle = Between(-4, 4);
                double half = spacing * Math.Sin(toe) / 2;
                return new BumpReading(
                    Mm(travel), Mm(middle - half + Between(-1, 1) * resolution), Mm(middle + half + Between(-1, 1) * resolution));
            })];
            sheets.Add(BumpSheets.Sheet(readings, random.Next(5) == 0 ? null : resolution, spacing) with { Then = then });
            double effect = random.Next(4) == 0 ? Between(-2, 4) : Between(0.7, 1.3);
            slope -= effect * then.OuterRaised.Millimeters / (length * arm);
            curvature += effect * then.RodLonger.Millimeters / (length * length * arm);
        }

        return new BumpCase(wheel, sheets);
    }

    /// <summary>Travels of a sheet, uneven and in any order, now and then on one side alone; each away from the next.</summary>
    private static IEnumerable<double> Travels(Random random)
    {
        int count = 1 + random.Next(MostReadings);
        int low = random.Next(6) == 0 ? 1 : -80;
        return Enumerable.Range(low, 81 - low).Where(travel => travel != 0).OrderBy(_ => random.Next()).Take(count)
            .Select(travel => travel + 0.4 * random.NextDouble());
    }

    private static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);
}
