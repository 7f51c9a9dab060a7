using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using TieRodCalc.Steering;
using SheetPair = TieRodCalc.Steering.ToeSensitivity.SheetPair;

namespace TieRodCalc.Tests.Steering;

/// <summary>What sheets teach, against weighted least squares of everything at once by a general solver.</summary>
public class ToeSensitivityTests
{
    /// <summary>Standard errors of what is computed, relative to it, as docs/bump.md has them.</summary>
    private const double Own = 0.3;
    private const double SlopeByLength = 0.02;
    private const double CurvatureByRaising = 1;

    private const double Relative = 1e-9;

    [Fact]
    public void One_sheet_after_the_other_teaches_what_all_at_once_do()
    {
        int learned = 0;
        for (int index = 0; index < 200; index++)
        {
            Random random = RandomCounts.For(970_000 + index);
            double Between(double low, double high) => low + (high - low) * random.NextDouble();

            (double length, double perToe) = (Between(250, 450), (random.Next(2) == 0 ? -1 : 1) * Between(80, 180));
            double slope = -1 / (length * perToe);
            double curvature = 1 / (length * length * perToe);
            ToeSensitivity known = ToeSensitivity.Computed(length, perToe);
            List<(double Raise, double Longer, double Seen, double Error)> slopes =
                [(1, 0, slope, Own * slope), (0, 1, 0, SlopeByLength * slope)];
            List<(double Raise, double Longer, double Seen, double Error)> curvatures =
                [(1, 0, 0, CurvatureByRaising * curvature), (0, 1, curvature, Own * curvature)];
            for (int sheet = random.Next(1, 4); sheet > 0; sheet--)
            {
                (double raise, double longer) = (Between(-6, 6), Between(-20, 20));
                (double slopeError, double curvatureError) = (Between(0.01, 2) * Math.Abs(slope), Between(0.01, 20) * Math.Abs(curvature));
                ToeTerms before = new(Between(-1, 1) * slope, Between(-1, 1) * curvature, [], []);
                (double slopeSeen, double curvatureSeen) = (Between(0.8, 1.2) * slope * raise, Between(0.8, 1.2) * curvature * longer);
                ToeTerms after = new(before.Slope + slopeSeen, before.Curvature + curvatureSeen, [], []);
                if (known.Learned(new SheetPair(before, after, (raise, longer), slopeError, curvatureError)) is not { } next)
                {
                    continue;
                }

                known = next;
                slopes.Add((raise, longer, slopeSeen, slopeError));
                curvatures.Add((raise, longer, curvatureSeen, curvatureError));
                learned++;
            }

            Vector<double> ofSlope = Solved(slopes);
            Vector<double> ofCurvature = Solved(curvatures);
            Near(ofSlope[0], known.SlopePerRaise, slope);
            Near(ofSlope[1], known.SlopePerLonger, slope);
            Near(ofCurvature[0], known.CurvaturePerRaise, curvature);
            Near(ofCurvature[1], known.CurvaturePerLonger, curvature);
            double travel = Between(-60, 60);
            double adds = (3 * ofSlope[0] - 7 * ofSlope[1]) * travel + (3 * ofCurvature[0] - 7 * ofCurvature[1]) * travel * travel / 2;
            Near(adds, known.Adds(travel, 3, -7), slope * travel);
        }

        Assert.True(learned > 200, $"only {learned} sheets taught something");

        static void Near(double expected, double actual, double scale) => Assert.Equal(expected, actual, Relative * Math.Abs(scale));
    }

    /// <summary>Three standard errors of what is known and of what was seen together.</summary>
    [Theory]
    [InlineData(4.0, 0.0)]
    [InlineData(0.0, -12.0)]
    [InlineData(-3.0, 15.0)]
    public void Sheets_contradict_beyond_three_standard_errors(double raise, double longer)
    {
        (double length, double perToe) = (320, 130);
        double slope = -1 / (length * perToe);
        double curvature = 1 / (length * length * perToe);
        ToeSensitivity known = ToeSensitivity.Computed(length, perToe);
        (double slopeError, double curvatureError) = (0.4 * Math.Abs(slope), 3 * Math.Abs(curvature));
        double mostSlope = 3 * Root(Own * slope * raise, SlopeByLength * slope * longer, slopeError);
        double mostCurvature = 3 * Root(CurvatureByRaising * curvature * raise, Own * curvature * longer, curvatureError);
        foreach (int side in new[] { -1, 1 })
        {
            Assert.NotNull(Learned(side * 0.999 * mostSlope, 0));
            Assert.Null(Learned(side * 1.001 * mostSlope, 0));
            Assert.NotNull(Learned(0, side * 0.999 * mostCurvature));
            Assert.Null(Learned(0, side * 1.001 * mostCurvature));
        }

        // Counted the other way, the second sheet says what was computed, or more than three standard errors beside it.
        ToeTerms none = new(0, 0, [], []);
        foreach ((double off, bool agrees) in new[] { (0, true), (0.999, true), (1.001, false), (-1.001, false) })
        {
            ToeTerms after = new(-slope * raise - off * mostSlope, -curvature * longer, [], []);
            Assert.Equal(agrees, known.WouldAgreeReversed(new(none, after, (raise, longer), slopeError, curvatureError)));
        }

        ToeSensitivity? Learned(double slopeOff, double curvatureOff) => known.Learned(Pair(slopeOff, curvatureOff));

        SheetPair Pair(double slopeOff, double curvatureOff) => new(
            new ToeTerms(1e-4, -2e-6, [], []),
            new ToeTerms(1e-4 + slope * raise + slopeOff, -2e-6 + curvature * longer + curvatureOff, [], []),
            (raise, longer),
            slopeError,
            curvatureError);
    }

    [Fact]
    public void What_is_exact_and_without_a_change_teaches_nothing()
    {
        ToeSensitivity known = ToeSensitivity.Computed(320, 130);
        ToeTerms same = new(1e-4, -2e-6, [], []);
        ToeSensitivity learned = known.Learned(new SheetPair(same, same, (0, 0), 0, 0))!;
        Assert.Equal(
            (known.SlopePerRaise, known.SlopePerLonger, known.CurvaturePerRaise, known.CurvaturePerLonger),
            (learned.SlopePerRaise, learned.SlopePerLonger, learned.CurvaturePerRaise, learned.CurvaturePerLonger));
    }

    /// <summary>What both changes leave has neither slope nor curvature, with the effects that the sheets have taught.</summary>
    [Fact]
    public void Both_changes_leave_neither_slope_nor_curvature()
    {
        int measured = 0;
        for (int index = 0; index < 400; index++)
        {
            BumpFindings found = BumpCase.Draw(index).Read();
            if (found.Both is not { } both || found.Newest.Points.Count < 4)
            {
                continue;
            }

            measured += found.Measured is null ? 0 : 1;
            (double slope, double curvature) = Terms(both.Predicted);
            (double before, double bent) = Terms(found.Newest.Points);
            Assert.Equal(0, slope, 1e-9 + 1e-6 * Math.Abs(before));
            Assert.Equal(0, curvature, 1e-11 + 1e-6 * Math.Abs(bent));
        }

        Assert.True(measured > 20, $"only {measured} were measured");

        static (double Slope, double Curvature) Terms(IReadOnlyList<BumpPoint> points)
        {
            BumpPoint[] away = [.. points.Where(point => point.Travel.Millimeters != 0)];
            double[] fitted = Fit.LinearCombination(
                [.. away.Select(point => point.Travel.Millimeters)],
                [.. away.Select(point => point.Toe.Radians)],
                travel => travel,
                travel => travel * travel / 2);
            return (fitted[0], fitted[1]);
        }
    }

    private static double Root(params double[] errors) => Math.Sqrt(errors.Sum(error => error * error));

    private static Vector<double> Solved(List<(double Raise, double Longer, double Seen, double Error)> rows) =>
        Matrix<double>.Build.DenseOfRows(rows.Select(row => new[] { row.Raise / row.Error, row.Longer / row.Error }))
            .QR().Solve(Vector<double>.Build.DenseOfEnumerable(rows.Select(row => row.Seen / row.Error)));
}
