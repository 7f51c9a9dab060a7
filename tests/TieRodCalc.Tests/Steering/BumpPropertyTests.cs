using TieRodCalc.Steering;
using UnitsNet;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Steering;

/// <summary>What must not matter to the answer, on random sheets of random wheels.</summary>
public class BumpPropertyTests(ITestOutputHelper output)
{
    private static readonly Lazy<BumpCase[]> s_cases = new(() => [.. Enumerable.Range(0, RandomCounts.BumpSheets).Select(BumpCase.Draw)]);

    [Fact]
    public void Mirrored_car_gives_the_same() =>
        Each(one => (one with { Wheel = one.Wheel.Mirrored() }).Read(), new BumpComparison());

    [Fact]
    public void Units_do_not_matter() => Each(
        one => BumpCase.Read(
            InInches(one.Wheel), [.. one.Sheets.Select(InInches)], Inches(Length.FromMillimeters(BumpCase.Shim))),
        new BumpComparison());

    [Fact]
    public void Readings_that_grow_inward_give_the_same_negated() => Each(
        one => one.Read(sheet => sheet with
        {
            Grows = IndicatorSense.Inward,
            Readings = [.. sheet.Readings.Select(reading => reading with { Front = -reading.Front, Rear = -reading.Rear })],
        }),
        new BumpComparison());

    [Fact]
    public void Order_of_readings_does_not_matter() => Each(
        one => one.Read(sheet => sheet with { Readings = [.. sheet.Readings.OrderBy(reading => -reading.Travel.Millimeters)] }),
        new BumpComparison());

    [Fact]
    public void What_both_indicators_read_alike_does_not_matter() => Each(
        one => one.Read(sheet => sheet with
        {
            Readings = [.. sheet.Readings.Select(reading => reading with { Front = default, Rear = reading.Rear - reading.Front })],
        }),
        new BumpComparison());

    /// <summary>But for the noise, which steps add up: so no resolution is said here.</summary>
    [Fact]
    public void Readings_zeroed_at_each_step_add_up_to_those_zeroed_once() => Each(
        one => one.Read(sheet => BumpSheets.ZeroedEachStep(sheet) with { Resolution = null }),
        new BumpComparison(),
        one => one.Read(sheet => sheet with { Resolution = null }));

    /// <summary>With a resolution the change of a single sheet is still the same.</summary>
    [Fact]
    public void Readings_zeroed_at_each_step_ask_for_the_same_change() => Assert.All(
        s_cases.Value.Where(one => one.Sheets.Count == 1),
        one =>
        {
            BumpAdvice? once = one.Read().Both;
            BumpAdvice? each = one.Read(BumpSheets.ZeroedEachStep).Both;
            Assert.Equal(once is null, each is null);
            Assert.Equal(once?.Change.OuterRaised.Millimeters ?? 0, each?.Change.OuterRaised.Millimeters ?? 0, 1e-7);
            Assert.Equal(once?.WantedLength.Millimeters ?? 0, each?.WantedLength.Millimeters ?? 0, 1e-3);
        });

    [Fact]
    public void Everything_twice_as_large_asks_for_twice_the_change()
    {
        const double Twice = 2;
        Triple Large(Triple point) => default(Triple).Plus(point, Twice);
        Each(
            one => BumpCase.Read(
                (one.Wheel with
                {
                    Lower = Large(one.Wheel.Lower),
                    Upper = Large(one.Wheel.Upper),
                    Outer = Large(one.Wheel.Outer),
                    Inner = Large(one.Wheel.Inner),
                }).Geometry,
                [.. one.Sheets.Select(sheet => InEach(sheet, length => length * Twice))],
                Length.FromMillimeters(Twice * BumpCase.Shim)),
            new BumpComparison(Twice),
            // Whether a gauge is of a wheel's width is a matter of its size.
            except: BumpWarningCode.GaugeUnusual);
    }

    [Fact]
    public void Joint_ahead_with_toe_the_other_way_asks_for_the_same_change() => Each(
        one => BumpCase.Read(
            one.Wheel.FrontToBack().Geometry,
            [.. one.Sheets.Select(sheet => sheet with
            {
                Readings = [.. sheet.Readings.Select(reading => reading with { Front = reading.Rear, Rear = reading.Front })],
            })]),
        new BumpComparison(toe: -1));

    private static Length Inches(Length length) => Length.FromInches(length.Millimeters / Millimeters.Inch);

    private static BumpSheet InInches(BumpSheet sheet) => InEach(sheet, Inches);

    private static SteeringGeometry InInches(WheelCase wheel)
    {
        Point Of(Triple point)
        {
            Point millimeters = point.ToPoint();
            return new Point(Inches(millimeters.X), Inches(millimeters.Y), Inches(millimeters.Z));
        }

        return SteeringGeometry.FromPoints(wheel.Side, Of(wheel.Lower), Of(wheel.Upper), Of(wheel.Outer), Of(wheel.Inner));
    }

    /// <summary>The same sheet with every length replaced.</summary>
    private static BumpSheet InEach(BumpSheet sheet, Func<Length, Length> length) => sheet with
    {
        Spacing = length(sheet.Spacing),
        Resolution = sheet.Resolution is { } resolution ? length(resolution) : null,
        Then = new BumpChange(length(sheet.Then.OuterRaised), length(sheet.Then.RodLonger)),
        Readings =
        [
            .. sheet.Readings.Select(reading => new BumpReading(length(reading.Travel), length(reading.Front), length(reading.Rear))),
        ],
    };

    private void Each(
        Func<BumpCase, BumpFindings> other,
        BumpComparison comparison,
        Func<BumpCase, BumpFindings>? first = null,
        BumpWarningCode? except = null)
    {
        BumpFindings Without(BumpFindings found) =>
            found with { Warnings = [.. found.Warnings.Where(warning => warning.Code != except)] };

        int advised = 0;
        int measured = 0;
        Assert.All(s_cases.Value, one =>
        {
            BumpFindings found = first?.Invoke(one) ?? one.Read();
            advised += found.Both is null ? 0 : 1;
            measured += found.Measured is null ? 0 : 1;
            comparison.Same(Without(found), Without(other(one)));
        });
        output.WriteLine($"{s_cases.Value.Length} cases, {advised} advised, {measured} with measured sensitivities");
        Assert.InRange(advised, s_cases.Value.Length / 2, s_cases.Value.Length);
    }
}
