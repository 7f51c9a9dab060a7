using TieRodCalc.Steering;
using UnitsNet;
using Xunit.Abstractions;
using static System.FormattableString;

namespace TieRodCalc.Tests.Steering;

/// <summary>What sheets say of each other, and of what was changed between them.</summary>
public class BumpBetweenSheetsTests(ITestOutputHelper output)
{
    private const double L = 393.7;
    private const double Arm = 152.4;
    private const double Slope = 0.00005;
    private const double Curvature = -0.000001;

    [Fact]
    public void What_was_changed_after_the_newest_sheet_counts_as_done()
    {
        BumpSheet sheet = World(Slope, Curvature);
        BumpAdvice before = BumpSheets.Read(Wheel(L), sheet).Both!;
        BumpChange done = new(Mm(1), Mm(2));
        BumpFindings after = BumpSheets.Read(Wheel(L + 2), sheet with { Then = done });
        Assert.Equal(before.Change.OuterRaised.Millimeters - 1, after.Both!.Change.OuterRaised.Millimeters, 1e-9);
        Assert.Equal(before.Change.RodLonger.Millimeters - 2, after.Both.Change.RodLonger.Millimeters, 1e-9);
        Assert.Equal(before.WantedLength.Millimeters, after.Both.WantedLength.Millimeters, 1e-9);
        Assert.Equal(0, after.Both.PredictedWorst.Millimeters, 1e-9);
        Assert.Equal(L + 2, after.Rod!.Value.Millimeters);

        // All of it done: the rest is nothing, the height alone and the length alone neither.
        BumpFindings all = BumpSheets.Read(Wheel(before.WantedLength.Millimeters), sheet with { Then = before.Change });
        foreach (BumpAdvice? rest in (BumpAdvice?[])[all.Both, all.HeightAlone, all.LengthAlone])
        {
            Assert.Equal(0, rest!.Change.OuterRaised.Millimeters, 1e-7);
            Assert.Equal(0, rest.Change.RodLonger.Millimeters, 1e-7);
        }
    }

    /// <summary>
    /// The height alone is found with the length as it is now. The toes with the rod 2 mm longer: curvature more by (1/L - 1/(L+2)) / r;
    /// over travels as far each way the height answers the slope alone.
    /// </summary>
    [Fact]
    public void A_change_alone_goes_by_what_else_was_changed()
    {
        BumpSheet sheet = World(Slope, Curvature) with { Then = new BumpChange(Mm(1), Mm(2)) };
        BumpFindings after = BumpSheets.Read(Wheel(L + 2), sheet);
        double left = Curvature + (1 / L - 1 / (L + 2)) / Arm;
        BumpPoint top = after.HeightAlone!.Predicted[^1];
        Assert.Equal(left * 50.8 * 50.8 / 2, top.Toe.Radians, 1e-12);
        Assert.Equal((Slope - 1 / (L * Arm)) * 50.8, after.LengthAlone!.Predicted[^1].Toe.Radians, 1e-12);
    }

    /// <summary>In this world a change does 0.8 of what is computed. What a first change did is known for the second one.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Measured_sensitivities_replace_computed_ones(bool raises)
    {
        const double True = 0.8;
        BumpChange change = raises ? new(Mm(2), default) : new(default, Mm(15));
        (double slope, double curvature) = Changed(Slope, Curvature, L, change, True);
        BumpSheet[] sheets =
        [
            World(Slope, Curvature, 1e-5) with { Then = change },
            World(slope, curvature, 1e-5),
        ];
        double length = L + change.RodLonger.Millimeters;
        BumpFindings found = BumpSheets.Read(Wheel(length), sheets);
        MeasuredEffect measured = found.Measured!;
        Assert.Equal(1, measured.Sheets);
        Assert.Equal(raises ? True : 1, measured.Raising, 1e-3);
        Assert.Equal(raises ? 1 : True, measured.Length, 1e-3);
        double raise = (raises ? slope / True : slope) * length * Arm;
        double wanted = 1 / (1 / length + (raises ? curvature : curvature / True) * Arm);
        Assert.Equal(raise, found.Both!.Change.OuterRaised.Millimeters, 5e-3);
        Assert.Equal(wanted, found.Both.WantedLength.Millimeters, 5e-2);
        Assert.DoesNotContain(found.Warnings, warning => warning.Code is BumpWarningCode.SheetsContradict);
    }

    /// <summary>
    /// Both changed, one after the other, with readings off by a resolution of 0.001 in: what is measured is 0.8 on the average, and off
    /// by no more than the noise of both sheets explains in nineteen of twenty cases.
    /// </summary>
    [Fact]
    public void Measured_sensitivities_are_true_within_the_noise()
    {
        const double True = 0.8;
        BumpChange raised = new(Mm(3), default);
        BumpChange longer = new(default, Mm(30));
        (double slope, double curvature) second = Changed(Slope, Curvature, L, raised, True);
        (double slope, double curvature) third = Changed(second.slope, second.curvature, L, longer, True);
        List<double> raising = [];
        List<double> length = [];
        for (int index = 0; index < 400; index++)
        {
            Random random = RandomCounts.For(6_000_000 + index);
            MeasuredEffect measured = BumpSheets.Read(
                Wheel(L + 30),
                Noisy(World(Slope, Curvature), random) with { Then = raised },
                Noisy(World(second.slope, second.curvature), random) with { Then = longer },
                Noisy(World(third.slope, third.curvature), random)).Measured!;
            Assert.Equal(2, measured.Sheets);
            raising.Add(measured.Raising);
            length.Add(measured.Length);
        }

        // Standard error of a slope: noise / sqrt(sum z^2); of the difference of two: sqrt 2 of it; in parts of what is computed.
        double noise = Math.Sqrt(2) * BumpSheets.Resolution / BumpSheets.Spacing;
        double ofSlope = Math.Sqrt(2) * noise / Math.Sqrt(BumpSheets.Travels.Sum(z => z * z)) * L * Arm / 3;
        double ofCurvature = Math.Sqrt(2) * noise / Math.Sqrt(BumpSheets.Travels.Sum(z => z * z * z * z / 4)) * Arm
            / (1 / L - 1 / (L + 30));
        output.WriteLine(Invariant($"raising {raising.Average():F4} of {True}, noise {ofSlope:F4}; ")
            + Invariant($"length {length.Average():F4}, noise {ofCurvature:F4}"));
        Assert.Equal(True, raising.Average(), 0.02);
        Assert.Equal(True, length.Average(), 0.02);
        Assert.InRange(raising.Count(each => Math.Abs(each - True) <= 2 * ofSlope + 0.01), 380, 400);
        Assert.InRange(length.Count(each => Math.Abs(each - True) <= 2 * ofCurvature + 0.01), 380, 400);
    }

    [Fact]
    public void The_same_read_twice_contradicts_nothing_and_measures_nothing()
    {
        BumpFindings found = BumpSheets.Read(Wheel(L), World(Slope, Curvature), World(Slope, Curvature));
        Assert.Empty(found.Warnings);
        Assert.Null(found.Measured);
        Assert.True(found.Suffices);
    }

    [Theory]
    [InlineData(0.00009, Curvature)]
    [InlineData(Slope, 0.000001)]
    public void Another_reading_without_a_change_between_contradicts(double slope, double curvature)
    {
        BumpFindings found = BumpSheets.Read(Wheel(L), World(Slope, Curvature), World(slope, curvature));
        Assert.Equal(new BumpWarning(BumpWarningCode.SheetsContradict, null, 1), Assert.Single(found.Warnings));
        Assert.False(found.Suffices);
        Assert.NotNull(found.Both);
    }

    [Fact]
    public void The_pair_that_contradicts_is_named_by_its_first_sheet()
    {
        BumpSheet sheet = World(Slope, Curvature);
        BumpFindings found = BumpSheets.Read(Wheel(L), sheet, sheet, World(2 * Slope, Curvature));
        Assert.Equal(new BumpWarning(BumpWarningCode.SheetsContradict, null, 2), Assert.Single(found.Warnings));
        Assert.Equal(2, BumpSheets.Read(Wheel(L), World(2 * Slope, Curvature), sheet, World(-2 * Slope, Curvature))
            .Warnings.Count(warning => warning.Code == BumpWarningCode.SheetsContradict));
    }

    /// <summary>The second sheet read with indicators that grow the other way, and not said so.</summary>
    [Fact]
    public void Indicators_that_grew_the_other_way_are_suspected()
    {
        BumpFindings found = BumpSheets.Read(Wheel(L), World(Slope, Curvature), World(-Slope, -Curvature));
        Assert.Equal(new BumpWarning(BumpWarningCode.SheetsContradictSense, null, 1), Assert.Single(found.Warnings));
        Assert.False(found.Suffices);
    }

    /// <summary>Without the noise nothing can be told to contradict.</summary>
    [Fact]
    public void Without_a_resolution_sheets_are_not_held_against_each_other()
    {
        BumpFindings found = BumpSheets.Read(Wheel(L), World(Slope, Curvature, null), World(-Slope, Curvature));
        Assert.Empty(found.Warnings);
        Assert.Null(found.Measured);
    }

    /// <summary>Toe-in per raising and length in parts of what is computed: slope by -h / (L r), curvature by (1/L - 1/L') / r.</summary>
    private static (double Slope, double Curvature) Changed(
        double slope, double curvature, double length, BumpChange change, double effect) => (
        slope - effect * change.OuterRaised.Millimeters / (length * Arm),
        curvature + effect * (1 / length - 1 / (length + change.RodLonger.Millimeters)) / Arm);

    private static BumpSheet World(double slope, double curvature, double? resolution = BumpSheets.Resolution) =>
        BumpSheets.Of(z => slope * z + curvature * z * z / 2, resolution: resolution);

    /// <summary>Each reading off by a normal error, the resolution its standard deviation.</summary>
    private static BumpSheet Noisy(BumpSheet sheet, Random random)
    {
        Length Off(Length reading) => reading + Mm(BumpSheets.Resolution * BumpNoiseTests.Normal(random));
        return sheet with
        {
            Readings = [.. sheet.Readings.Select(reading => reading with { Front = Off(reading.Front), Rear = Off(reading.Rear) })],
        };
    }

    private static SteeringGeometry Wheel(double length) =>
        SteeringGeometry.FromArm(CarSide.Left, Mm(Arm), JointPlace.BehindAxle, Angle.Zero, Mm(length));

    private static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);
}
