using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>What one sheet says, by hand and against general least squares. Lengths in millimeters.</summary>
public class BumpReadingTests
{
    private const double L = 393.7;
    private const double Arm = 152.4;
    private const double Fine = 1e-7;

    /// <summary>Uneven, in no order, both sides.</summary>
    private static readonly double[] s_travels = [20, -45, 5, -12, 60, -30, 41];

    /// <summary>
    /// A left wheel with its joint behind the axle, toe s z + k z^2 / 2 with s = 0.00005 and k = -0.000001: raise 393.7 x 152.4 x 0.00005 =
    /// 2.999994; 1 / Lw = 1 / 393.7 - 152.4 x 0.000001 = 0.00238760508..., Lw = 418.829734.
    /// </summary>
    [Fact]
    public void Raise_is_length_times_arm_times_slope_and_the_wanted_length_has_its_reciprocal()
    {
        BumpFindings found = BumpSheets.Read(Behind(), BumpSheets.Of(z => 0.00005 * z - 0.000001 * z * z / 2));
        Near(0.00005, found.Newest.SlopePerMm!.Value, 1e-14);
        Near(-0.000001, found.Newest.CurvaturePerMm2!.Value, 1e-15);
        Near(2.999994, found.Both!.Change.OuterRaised.Millimeters);
        Near(418.829734, found.Both.WantedLength.Millimeters, 1e-6);
        Near(418.829734 - 393.7, found.Both.Change.RodLonger.Millimeters, 1e-6);
        Near(0, found.Both.PredictedWorst.Millimeters);
        Assert.Equal(393.7, found.Rod!.Value.Millimeters);
        Assert.Equal(3.0, found.Both.Rounded.OuterRaised.Millimeters, Fine);
        Assert.Equal(25.0, found.Both.Rounded.RodLonger.Millimeters, Fine);
        Assert.Equal(418.7, found.Both.RoundedLength.Millimeters, Fine);
        Assert.InRange(found.Both.RoundedWorst.Millimeters, 1e-4, 0.01);
        Assert.Null(found.Measured);
    }

    /// <summary>The same toe, the joint ahead of the axle: lower by as much; 1 / Lw = 1 / 393.7 + 0.0001524, Lw = 371.414836.</summary>
    [Theory]
    [InlineData(CarSide.Left)]
    [InlineData(CarSide.Right)]
    public void Joint_ahead_of_the_axle_turns_both_signs(CarSide side)
    {
        SteeringGeometry wheel = SteeringGeometry.FromArm(side, Mm(Arm), JointPlace.AheadOfAxle, Angle.Zero, Mm(L));
        BumpAdvice both = BumpSheets.Read(wheel, BumpSheets.Of(z => 0.00005 * z - 0.000001 * z * z / 2)).Both!;
        Near(-2.999994, both.Change.OuterRaised.Millimeters);
        Near(1 / (1 / 393.7 + 0.0001524), both.WantedLength.Millimeters);
    }

    /// <summary>
    /// A rod 30 degrees off square stands 152.4 cos 30 = 131.982271 from the steer axis: raise 393.7 x 131.982271 x 0.00005 = 2.598071.
    /// </summary>
    [Theory]
    [InlineData(30)]
    [InlineData(-30)]
    public void What_counts_is_the_distance_of_the_rods_line_from_the_steer_axis(double rodAngle)
    {
        SteeringGeometry wheel = SteeringGeometry.FromArm(
            CarSide.Left, Mm(Arm), JointPlace.BehindAxle, Angle.FromDegrees(rodAngle), Mm(L));
        BumpAdvice both = BumpSheets.Read(wheel, BumpSheets.Of(z => 0.00005 * z + 0.000001 * z * z / 2)).Both!;
        Near(2.598071, both.Change.OuterRaised.Millimeters, 1e-6);
        Near(1 / (1 / 393.7 + 131.982271e-6), both.WantedLength.Millimeters, 1e-6);
    }

    /// <summary>
    /// Readings in inches as a shop takes them: toe-in in bump, 0.018 in at 1 in, another 0.012 in to 2 in; toe-out in droop, 0.010 in.
    /// </summary>
    [Fact]
    public void Steps_run_upward_and_the_worst_is_the_greatest_of_either_sign()
    {
        BumpFindings found = BumpSheets.Read(Behind(), BumpSheets.Sheet(
        [
            new(Length.FromInches(1), Length.FromInches(-0.011), Length.FromInches(0.007)),
            new(Length.FromInches(-0.5), Length.FromInches(0.004), Length.FromInches(-0.006)),
            new(Length.FromInches(2), Length.FromInches(-0.020), Length.FromInches(0.010)),
        ]));
        BumpSheetFindings sheet = found.Newest;
        Assert.Equal([-12.7, 0, 25.4, 50.8], sheet.Points.Select(point => point.Travel.Millimeters), new Nearness(Fine));
        Assert.Equal([-0.254, 0, 0.4572, 0.762], sheet.Points.Select(point => point.AtGauge.Millimeters), new Nearness(Fine));
        Assert.Equal([0.020, 0.018, 0.012], sheet.Steps.Select(step => step.PerInch.Inches), new Nearness(Fine));
        Assert.Equal([0.010, 0.018, 0.012], sheet.Steps.Select(step => step.AtGauge.Inches), new Nearness(Fine));
        Assert.Equal(sheet.Steps[0], sheet.Worst);
        Near(Math.Asin(0.4572 / 254), sheet.Steps[1].ToeChange.Radians);
        Assert.Equal(BumpGrade.Felt, sheet.Grade);
        Assert.Equal(4, sheet.Fitted.Count);
    }

    [Theory]
    [InlineData(0.0099, BumpGrade.VeryGood)]
    [InlineData(0.010, BumpGrade.Fair)]
    [InlineData(0.0199, BumpGrade.Fair)]
    [InlineData(0.020, BumpGrade.Felt)]
    [InlineData(0.030, BumpGrade.Felt)]
    [InlineData(0.0301, BumpGrade.StronglyFelt)]
    public void Grades_begin_at_their_limits(double perInch, BumpGrade expected)
    {
        foreach (int sign in (int[])[1, -1])
        {
            Assert.Equal(expected, BumpLimits.Usual.Of(Length.FromInches(sign * perInch)));
            BumpSheet sheet = BumpSheets.Sheet([new(Length.FromInches(2), Length.Zero, Length.FromInches(sign * 2 * perInch))]);
            Assert.Equal(expected, BumpSheets.Read(null, sheet).Newest.Grade);
        }
    }

    /// <summary>Limits that hold for 10 in, read with a gauge of 20 in: the same toe reads twice as much there.</summary>
    [Fact]
    public void Limits_go_with_the_spacing_they_hold_for()
    {
        BumpLimits limits = BumpLimits.Usual with { Spacing = Length.FromInches(10) };
        BumpSheet sheet = BumpSheets.Sheet([new(Length.FromInches(1), Length.Zero, Length.FromInches(0.021))], spacing: 508);
        BumpFindings found = BumpSteer.Read(new BumpRequest { Sheets = [sheet], Limits = limits, Shim = Mm(1) });
        Near(0.020, found.Newest.Limits.VeryGood.Inches);
        Near(0.040, found.Newest.Limits.Felt.Inches);
        Near(0.060, found.Newest.Limits.StronglyFelt.Inches);
        Assert.Equal(sheet.Spacing, found.Newest.Limits.Spacing);
        Assert.Equal(BumpGrade.Fair, found.Newest.Grade);
        Assert.Same(BumpLimits.Usual, BumpLimits.Usual.At(Length.FromInches(20)));
    }

    [Fact]
    public void Slope_and_curvature_are_those_of_general_least_squares()
    {
        BumpSheet sheet = Cubic(null);
        BumpSheetFindings found = BumpSheets.Read(null, sheet).Newest;
        double[] toes = [.. s_travels.Select(CubicToe)];
        double[] fitted = Fit.LinearCombination(s_travels, toes, z => z, z => z * z / 2);
        Near(fitted[0], found.SlopePerMm!.Value, 1e-15);
        Near(fitted[1], found.CurvaturePerMm2!.Value, 1e-16);
        foreach (BumpPoint point in found.Fitted)
        {
            double z = point.Travel.Millimeters;
            Near(fitted[0] * z + fitted[1] * z * z / 2, point.Toe.Radians, 1e-13);
            Near(254 * Math.Sin(point.Toe.Radians), point.AtGauge.Millimeters);
        }
    }

    /// <summary>
    /// Raising by h adds -h z / (L r) to the toe, a length that counts as longer by m adds m z^2 / (2 L^2 r): each is fitted alone to
    /// the toes.
    /// </summary>
    [Fact]
    public void A_change_alone_is_that_of_general_least_squares()
    {
        BumpFindings found = BumpSheets.Read(Behind(), Cubic(null));
        double[] against = [.. s_travels.Select(z => -CubicToe(z))];
        double raise = Fit.LinearCombination(s_travels, against, z => -z / (L * Arm))[0];
        double longer = Fit.LinearCombination(s_travels, against, z => z * z / (2 * L * L * Arm))[0];
        double wanted = 1 / (1 / L - longer / (L * L));
        Near(raise, found.HeightAlone!.Change.OuterRaised.Millimeters);
        Assert.Equal(0, found.HeightAlone.Change.RodLonger.Millimeters);
        Near(L, found.HeightAlone.WantedLength.Millimeters);
        Near(wanted - L, found.LengthAlone!.Change.RodLonger.Millimeters);
        Near(wanted, found.LengthAlone.WantedLength.Millimeters);
        Assert.Equal(0, found.LengthAlone.Change.OuterRaised.Millimeters);
        foreach ((BumpAdvice advice, double up, double m) in
            ((BumpAdvice, double, double)[])[(found.HeightAlone, raise, 0), (found.LengthAlone, 0, longer)])
        {
            Assert.All(advice.Predicted.Where(point => point.Travel.Millimeters != 0), point =>
            {
                double z = point.Travel.Millimeters;
                Near(CubicToe(z) - up * z / (L * Arm) + m * z * z / (2 * L * L * Arm), point.Toe.Radians, 1e-13);
            });
        }
    }

    /// <summary>
    /// With the covariance of the toes written out, the identity for readings zeroed once, the lower triangle of ones times its transpose
    /// for those zeroed at each step, that of the terms is (X'X)^-1 X' C X (X'X)^-1; told are two standard errors.
    /// </summary>
    [Theory]
    [InlineData(IndicatorZero.Once)]
    [InlineData(IndicatorZero.EachStep)]
    public void Uncertainty_is_two_standard_errors_of_the_full_covariance(IndicatorZero zeroed)
    {
        const double Resolution = 0.2;
        BumpSheet once = Cubic(Resolution);
        BumpFindings found = BumpSheets.Read(Behind(), zeroed == IndicatorZero.Once ? once : BumpSheets.ZeroedEachStep(once));
        double noise = Math.Sqrt(2) * Resolution / 254;
        Matrix<double> errors = Matrix<double>.Build.Dense(s_travels.Length, s_travels.Length, (row, column) =>
            row == column || (zeroed == IndicatorZero.EachStep && Beyond(s_travels[row], s_travels[column])) ? noise : 0);
        Matrix<double> toes = errors * errors.Transpose();
        Matrix<double> terms = Matrix<double>.Build.Dense(s_travels.Length, 2, (row, column) =>
            column == 0 ? s_travels[row] : s_travels[row] * s_travels[row] / 2);
        Matrix<double> weights = (terms.Transpose() * terms).Inverse() * terms.Transpose();
        Matrix<double> covariance = weights * toes * weights.Transpose();
        double wanted = found.Both!.WantedLength.Millimeters;
        Near(2 * L * Arm * Math.Sqrt(covariance[0, 0]), found.Both.Uncertainty!.Value.OuterRaised.Millimeters);
        Near(2 * wanted * wanted * Arm * Math.Sqrt(covariance[1, 1]), found.Both.Uncertainty.Value.RodLonger.Millimeters);

        Vector<double> alone = terms.Column(0) / terms.Column(0).DotProduct(terms.Column(0));
        Near(2 * L * Arm * Math.Sqrt(alone * toes * alone), found.HeightAlone!.Uncertainty!.Value.OuterRaised.Millimeters);
    }

    /// <summary>
    /// Where readings miss a smooth curve by more than the indicators explain, that is the noise; three times that, and nothing is told.
    /// </summary>
    [Fact]
    public void Readings_that_scatter_count_with_their_scatter()
    {
        double[] travels = BumpSheets.Travels;
        double[] missed = [1, -1, 1, -1, 1, -1, 1, -1];
        double Off(double z, double by) => CubicToe(z) + by * missed[Array.IndexOf(travels, z)];
        double Toe(double z) => Off(z, 0.0003);
        BumpFindings found = BumpSheets.Read(Behind(), BumpSheets.Of(Toe));
        double[] toes = [.. travels.Select(Toe)];
        double[] cubic = Fit.LinearCombination(travels, toes, z => z, z => z * z, z => z * z * z);
        double squares = travels.Sum(z => Math.Pow(Toe(z) - cubic[0] * z - cubic[1] * z * z - cubic[2] * z * z * z, 2));
        double scatter = Math.Sqrt(squares / (travels.Length - 3));
        Assert.DoesNotContain(found.Warnings, one => one.Code == BumpWarningCode.ReadingsScatter);
        BumpFindings wild = BumpSheets.Read(Behind(), BumpSheets.Of(z => Off(z, 0.003)));
        Near(2540 * scatter, Assert.Single(wild.Warnings, one => one.Code == BumpWarningCode.ReadingsScatter).Value!.Value.Millimeters, 1e-3);
        Assert.Equal((null, null, null, false), (wild.Both, wild.HeightAlone, wild.LengthAlone, wild.Suffices));
        double slope = scatter / Math.Sqrt(travels.Sum(z => z * z));
        Near(2 * L * Arm * slope, found.Both!.Uncertainty!.Value.OuterRaised.Millimeters);
    }

    /// <summary>Whether a toe zeroed at each step counts the step to another travel: one nearer to ride height on the same side.</summary>
    private static bool Beyond(double travel, double nearer) => travel * nearer > 0 && Math.Abs(travel) > Math.Abs(nearer);

    private static double CubicToe(double z) => 6e-5 * z - 8e-7 * z * z / 2 + 2e-8 * z * z * z;

    private static BumpSheet Cubic(double? resolution) => BumpSheets.Of(CubicToe, s_travels, resolution);

    private static SteeringGeometry Behind() =>
        SteeringGeometry.FromArm(CarSide.Left, Mm(Arm), JointPlace.BehindAxle, Angle.Zero, Mm(L));

    private static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);

    private static void Near(double expected, double actual, double tolerance = 1e-8) => Assert.Equal(expected, actual, tolerance);

    private sealed class Nearness(double tolerance) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= tolerance;

        public int GetHashCode(double obj) => 0;
    }
}
