using TieRodCalc.Steering;
using UnitsNet;
using Xunit.Abstractions;

namespace TieRodCalc.Tests.Steering;

/// <summary>What is warned of, and not without cause; and what is no sheet at all.</summary>
public class BumpWarningTests(ITestOutputHelper output)
{
    private const double L = 393.7;
    private const double Arm = 152.4;

    private static readonly double[] s_alternating = [1, -1, 1, -1, 1, -1, 1, -1];

    /// <summary>Raised by 3 mm and 24 mm longer, told well: nothing to warn of.</summary>
    [Fact]
    public void A_plain_sheet_warns_of_nothing()
    {
        BumpFindings found = BumpSheets.Read(Behind(), Plain());
        Assert.Empty(found.Warnings);
        Assert.True(found.Suffices);
    }

    [Theory]
    [InlineData(1, BumpWarningCode.TooFewReadings)]
    [InlineData(2, BumpWarningCode.NothingToCheckBy)]
    [InlineData(3, null)]
    public void Few_readings_are_warned_of(int count, BumpWarningCode? expected)
    {
        double[] travels = [.. ((double[])[40, -40, 20]).Take(count)];
        BumpFindings found = BumpSheets.Read(Behind(), BumpSheets.Of(PlainToe, travels));
        Assert.Equal(expected is { } code ? [code] : [], Codes(found));
        Assert.Equal(count >= 2, found.Suffices);
        Assert.Equal(count >= 2, found.Both is not null && found.HeightAlone is not null && found.LengthAlone is not null);
        Assert.Equal(count >= 2, found.Newest.SlopePerMm is not null);
        Assert.Equal(count, found.Newest.Steps.Count);
    }

    [Fact]
    public void Two_readings_on_one_side_are_warned_of_twice() => Assert.Equal(
        [BumpWarningCode.NothingToCheckBy, BumpWarningCode.OneSided],
        Codes(BumpSheets.Read(Behind(), BumpSheets.Of(PlainToe, [20, 40]))).Take(2));

    /// <summary>A cubic of which neither a slope nor a curvature explains anything: what is left is all that was read.</summary>
    [Theory]
    [InlineData(BumpSheets.Resolution)]
    [InlineData(null)]
    public void What_neither_height_nor_length_explains_is_told(double? resolution)
    {
        double[] travels = [-40, -20, 20, 40];
        double even = travels.Sum(z => z * z * z * z) / travels.Sum(z => z * z);
        double Toe(double z) => 2e-7 * (z * z * z - even * z);
        BumpFindings found = BumpSheets.Read(Behind(), BumpSheets.Of(Toe, travels, resolution));
        BumpWarning warning = Assert.Single(found.Warnings, warning => warning.Code == BumpWarningCode.TwoTermsMiss);
        double all = BumpSheets.Spacing * Math.Sqrt(travels.Average(z => Toe(z) * Toe(z)));
        Assert.Equal(all, warning.Value!.Value.Millimeters, 1e-6);
        Assert.Null(found.Both);
        Assert.False(found.Suffices);

        BumpFindings half = BumpSheets.Read(Behind(), BumpSheets.Of(z => Toe(z) + 1e-3 * z, travels, resolution));
        Assert.DoesNotContain(BumpWarningCode.TwoTermsMiss, Codes(half));
    }

    /// <summary>A rod that would have had no length when the sheet was read.</summary>
    [Fact]
    public void A_rod_that_was_made_longer_by_more_than_it_is_gives_no_advice()
    {
        BumpChange longer = new(UnitsNet.Length.Zero, Behind().RodLength + UnitsNet.Length.FromMillimeters(1));
        BumpFindings found = BumpSheets.Read(Behind(), Plain() with { Then = longer });
        Assert.Equal([BumpWarningCode.WheelNotGiven], Codes(found));
        Assert.Null(found.Both);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void Readings_on_one_side_are_warned_of(int side) => Assert.Equal(
        [BumpWarningCode.OneSided], Codes(BumpSheets.Read(Behind(), BumpSheets.Of(PlainToe, [side * 20, side * 40, side * 60]))));

    [Fact]
    public void A_resolution_that_is_not_said_leaves_no_uncertainty()
    {
        BumpFindings found = BumpSheets.Read(Behind(), BumpSheets.Of(PlainToe, resolution: null));
        Assert.Equal([BumpWarningCode.ResolutionNotGiven], Codes(found));
        Assert.Null(found.Both!.Uncertainty);
        Assert.Null(found.HeightAlone!.Uncertainty);
        Assert.Null(found.LengthAlone!.Uncertainty);
        Assert.Equal(3.0, found.Both.Rounded.OuterRaised.Millimeters, 1e-9);
    }

    [Fact]
    public void Readings_that_scatter_do_not_suffice()
    {
        BumpFindings found = BumpSheets.Read(Behind(), BumpSheets.Of(z => PlainToe(z) + Miss(z, 6 * BumpSheets.Resolution)));
        Assert.Contains(BumpWarningCode.ReadingsScatter, Codes(found));
        Assert.False(found.Suffices);
        BumpFindings within = BumpSheets.Read(Behind(), BumpSheets.Of(z => PlainToe(z) + Miss(z, 2 * BumpSheets.Resolution)));
        Assert.DoesNotContain(BumpWarningCode.ReadingsScatter, Codes(within));
    }

    [Theory]
    [InlineData(0, 2e-6, BumpWarningCode.HeightNotTold)]
    [InlineData(1e-4, 0, BumpWarningCode.LengthNotTold)]
    public void A_change_that_cannot_be_told_from_none_is_left_at_none(double slope, double curvature, BumpWarningCode expected)
    {
        BumpFindings found = BumpSheets.Read(Behind(), BumpSheets.Of(z => slope * z + curvature * z * z / 2 + 2e-6 * z));
        BumpWarning warning = Assert.Single(found.Warnings);
        Assert.Equal(expected, warning.Code);
        bool height = expected == BumpWarningCode.HeightNotTold;
        BumpAdvice both = found.Both!;
        Assert.Equal(
            (height ? both.Uncertainty!.Value.OuterRaised : both.Uncertainty!.Value.RodLonger).Millimeters,
            warning.Value!.Value.Millimeters,
            1e-12);
        Assert.Equal(height, both.Rounded.OuterRaised.Millimeters == 0);
        Assert.Equal(!height, both.Rounded.RodLonger.Millimeters == 0);
        Assert.True(found.Suffices);
    }

    /// <summary>1 / 393.7 = 0.00254 = 152.4 x 0.0000166667: from there on no finite rod bends with the path.</summary>
    [Theory]
    [InlineData(-1.60e-5, false)]
    [InlineData(-1.67e-5, true)]
    public void A_path_that_bends_the_other_way_has_no_rod(double curvature, bool none)
    {
        BumpFindings found = BumpSheets.Read(Behind(), BumpSheets.Of(z => 1e-4 * z + curvature * z * z / 2));
        Assert.Equal([none ? BumpWarningCode.NoLengthDoes : BumpWarningCode.FarChange], Codes(found));
        Assert.Equal(none, found.Both is null);
        Assert.NotNull(found.HeightAlone);
        Assert.Equal(!none, found.Suffices);
    }

    /// <summary>A quarter of the rod, 98.425 mm: raised by L r s with s = 1 / (4 r) = 0.00164042.</summary>
    [Theory]
    [InlineData(0.001640, false)]
    [InlineData(0.001641, true)]
    [InlineData(-0.001641, true)]
    public void A_far_change_is_warned_of(double slope, bool far) => Assert.Equal(
        far ? [BumpWarningCode.FarChange] : [], Codes(BumpSheets.Read(Behind(), BumpSheets.Of(z => slope * z + 1e-6 * z * z / 2))));

    [Fact]
    public void Without_a_wheel_there_are_steps_and_no_advice()
    {
        BumpFindings found = BumpSheets.Read(null, Plain());
        Assert.Equal([BumpWarningCode.WheelNotGiven], Codes(found));
        Assert.Null(found.Both ?? found.HeightAlone ?? found.LengthAlone);
        Assert.Null(found.Rod);
        Assert.Equal(8, found.Newest.Steps.Count);
        Assert.False(found.Suffices);
    }

    [Fact]
    public void A_rod_in_line_with_the_steer_axis_gets_no_advice()
    {
        Point At(double x, double y, double z) => new(Mm(x), Mm(y), Mm(z));
        SteeringGeometry wheel = SteeringGeometry.FromPoints(
            CarSide.Left, At(0, 640, 0), At(0, 640, 100), At(0, 600, 0), At(0, 200, 0));
        BumpFindings found = BumpSheets.Read(wheel, Plain());
        Assert.Equal([BumpWarningCode.RodInLine], Codes(found));
        Assert.Null(found.Both);
    }

    [Theory]
    [InlineData(149, true)]
    [InlineData(150, false)]
    [InlineData(450, false)]
    [InlineData(451, true)]
    public void A_gauge_that_is_not_of_a_wheels_width_is_warned_of(double spacing, bool expected)
    {
        BumpSheet sheet = BumpSheets.Of(PlainToe, spacing: spacing);
        BumpFindings found = BumpSheets.Read(Behind(), sheet);
        Assert.Equal(expected ? [BumpWarningCode.GaugeUnusual] : [], Codes(found));
        Assert.Equal(expected ? spacing : null, found.Warnings.SingleOrDefault()?.Value?.Millimeters);
        Assert.Empty(BumpSteer.Read(new BumpRequest
        {
            Sheets = [sheet],
            Wheel = Behind(),
            Limits = BumpLimits.Usual with { Spacing = Mm(254) },
            Shim = Mm(0.5),
        }).Warnings);
    }

    /// <summary>
    /// Exact readings of real corners before and after a real change: none scatters. Each is read with a resolution between 0.0005 and
    /// 0.002 in. That sheets contradict each other is rare, however good the indicators.
    /// </summary>
    [Fact]
    public void Corners_that_are_read_without_noise_are_not_said_to_scatter_or_contradict()
    {
        int scatter = 0;
        int contradict = 0;
        int all = 0;
        for (int index = 0; index < RandomCounts.BumpCorners; index++)
        {
            Random random = RandomCounts.For(5_000_000 + index);
            double Between(double low, double high) => low + (high - low) * random.NextDouble();
            double resolution = Between(0.0005, 0.002) * Millimeters.Inch;
            CornerGeometry corner = RandomCorners.Draw(index).Geometry;
            BumpChange change = new(Mm(Between(-15, 15)), Mm(Between(-50, 50)));
            if (BumpSheets.Of(corner, resolution) is not { } before
                || CorrectedCorners.Changed(corner, change, random.Next(2) == 0) is not { } changed
                || BumpSheets.Of(changed, resolution) is not { } after)
            {
                continue;
            }

            BumpWarningCode[] codes = Codes(BumpSheets.Read(changed.Steering, before with { Then = change }, after));
            all++;
            scatter += codes.Contains(BumpWarningCode.ReadingsScatter) ? 1 : 0;
            contradict += codes.Any(code => code is BumpWarningCode.SheetsContradict or BumpWarningCode.SheetsContradictSense) ? 1 : 0;
        }

        output.WriteLine($"{all} corners, {scatter} said to scatter, {contradict} to contradict");
        Assert.InRange(all, RandomCounts.BumpCorners * 9 / 10, RandomCounts.BumpCorners);
        Assert.Equal(0, scatter);
        Assert.InRange(contradict, 0, all / 50);
    }

    public static TheoryData<string> NoRequests => [.. s_wrong.Keys];

    [Theory]
    [MemberData(nameof(NoRequests))]
    public void What_no_wheel_gives_is_refused(string what) => Assert.ThrowsAny<ArgumentException>(() => BumpSteer.Read(s_wrong[what](new()
    {
        Sheets = [Plain()],
        Wheel = Behind(),
        Shim = Mm(0.5),
    })));

    private static readonly Dictionary<string, Func<BumpRequest, BumpRequest>> s_wrong = new()
    {
        ["no sheet"] = request => request with { Sheets = [] },
        ["no reading"] = request => request with { Sheets = [Plain() with { Readings = [] }] },
        ["no shim"] = request => request with { Shim = Length.Zero },
        ["a shim below zero"] = request => request with { Shim = Mm(-1) },
        ["no spacing"] = request => request with { Sheets = [Plain() with { Spacing = Length.Zero }] },
        ["a spacing that is no number"] = request => request with { Sheets = [Plain() with { Spacing = Mm(double.NaN) }] },
        ["a resolution of zero"] = request => request with { Sheets = [Plain() with { Resolution = Length.Zero }] },
        ["a resolution below zero"] = request => request with { Sheets = [Plain() with { Resolution = Mm(-0.01) }] },
        ["ride height"] = request => Reading(request, new(Length.Zero, Mm(1), Mm(2))),
        ["a travel that is there already"] = request => Reading(request, new(Mm(50.8), Mm(1), Mm(2))),
        ["a travel that is no number"] = request => Reading(request, new(Mm(double.NaN), Mm(1), Mm(2))),
        ["a travel without end"] = request => Reading(request, new(Mm(double.PositiveInfinity), Mm(1), Mm(2))),
        ["a reading that is no number"] = request => Reading(request, new(Mm(60), Mm(double.NaN), Mm(2))),
        ["a reading beyond 30 degrees"] = request => Reading(request, new(Mm(60), Mm(0), Mm(127.1))),
        ["a change that is no number"] = request => request with
        {
            Sheets = [Plain() with { Then = new BumpChange(Mm(double.NaN), Mm(0)) }],
        },
        ["in the older sheet"] = request => request with { Sheets = [Plain() with { Spacing = Length.Zero }, Plain()] },
    };

    [Fact]
    public void The_first_reading_that_no_wheel_gives_is_told_by_its_place()
    {
        Assert.Null(Plain().FirstWrong);
        BumpReading[] readings = [.. Plain().Readings];
        Assert.Equal(3, (Plain() with { Readings = [.. readings[..3], readings[0], readings[3]] }).FirstWrong);
        Assert.Equal(1, (Plain() with { Readings = [readings[0], default, default] }).FirstWrong);
        Assert.Equal(0, (Plain() with { Readings = [new(Mm(40), Mm(-70), Mm(60)), .. readings] }).FirstWrong);
    }

    private static BumpRequest Reading(BumpRequest request, BumpReading reading) =>
        request with { Sheets = [Plain() with { Readings = [.. Plain().Readings, reading] }] };

    private static double PlainToe(double z) => 0.00005 * z - 0.000001 * z * z / 2;

    private static BumpSheet Plain() => BumpSheets.Of(PlainToe);

    private static double Miss(double travel, double gauge) =>
        gauge / BumpSheets.Spacing * s_alternating[Array.IndexOf(BumpSheets.Travels, travel)];

    private static BumpWarningCode[] Codes(BumpFindings found) => [.. found.Warnings.Select(warning => warning.Code)];

    private static SteeringGeometry Behind() =>
        SteeringGeometry.FromArm(CarSide.Left, Mm(Arm), JointPlace.BehindAxle, Angle.Zero, Mm(L));

    private static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);
}
