using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>Which of the changes is worth its work, with a wheel that is felt by the driver: 0.025 in per inch.</summary>
public class BumpWorkTests
{
    private const double Now = 0.025;

    private static readonly BumpFindings s_read = BumpCase.Draw(0).Read();

    [Theory]
    [InlineData(0.005, 0.004, 0.001, BumpWork.Height)]
    [InlineData(0.015, 0.004, 0.001, BumpWork.Length)]
    [InlineData(null, 0.004, null, BumpWork.Length)]
    [InlineData(0.015, 0.018, 0.001, BumpWork.Both)]
    [InlineData(0.015, 0.018, 0.024, BumpWork.Both)]
    [InlineData(0.015, 0.018, 0.025, BumpWork.Height)]
    [InlineData(0.018, 0.015, 0.026, BumpWork.Length)]
    [InlineData(0.015, 0.015, null, BumpWork.Height)]
    [InlineData(0.024, 0.025, null, BumpWork.Height)]
    [InlineData(0.025, 0.024, null, BumpWork.Length)]
    [InlineData(0.030, null, 0.025, BumpWork.Nothing)]
    [InlineData(null, null, null, BumpWork.Nothing)]
    public void The_least_work_that_does(double? height, double? length, double? both, BumpWork expected)
    {
        BumpFindings found = With(Advice(height, 2, 0), Advice(length, 0, 5), Advice(both, 2, 5));
        Assert.Equal(expected, found.Work);
        Assert.Same(
            expected switch { BumpWork.Height => found.HeightAlone, BumpWork.Length => found.LengthAlone, BumpWork.Both => found.Both, _ => null },
            found.AdviceOf(found.Work));
    }

    [Fact]
    public void Nothing_is_done_to_a_wheel_that_is_very_good()
    {
        BumpFindings found = With(Advice(0.001, 2, 0), Advice(0.001, 0, 5), Advice(0.001, 2, 5));
        Assert.Equal(
            BumpWork.Nothing, (found with { Sheets = [found.Newest with { Grade = BumpGrade.VeryGood }] }).Work);
    }

    [Fact]
    public void A_change_that_rounds_to_none_is_no_work()
    {
        Assert.Equal(BumpWork.Nothing, With(Advice(0.001, 0, 0), Advice(0.001, 0, 0), Advice(0.001, 0, 0)).Work);
        Assert.Equal(BumpWork.Height, With(Advice(0.015, 2, 0), null, Advice(0.001, 2, 0)).Work);
        Assert.Equal(BumpWork.Height, With(Advice(0.015, 2, 0), null, Advice(0.001, 0, 5)).Work);
        Assert.False(With(null, null, null).Betters(null));
    }

    [Theory]
    [InlineData(BumpWarningCode.SheetsContradict, false)]
    [InlineData(BumpWarningCode.SheetsContradictSense, false)]
    [InlineData(BumpWarningCode.FarChange, true)]
    public void Sheets_that_contradict_each_other_do_not_suffice(BumpWarningCode code, bool suffices)
    {
        BumpFindings found = With(null, null, Advice(0.01, 2, 5)) with { Warnings = [] };
        Assert.True(found.Suffices);
        Assert.False((found with { Both = null }).Suffices);
        Assert.Equal(suffices, (found with { Warnings = [new(BumpWarningCode.OneSided), new(code)] }).Suffices);
    }

    [Fact]
    public void A_measured_point_is_found_by_its_travel()
    {
        BumpSheetFindings sheet = s_read.Newest;
        Assert.All(sheet.Points, point => Assert.Equal(point, sheet.At(point.Travel)));
        Assert.Null(sheet.At(Length.FromMillimeters(1234)));
    }

    [Fact]
    public void Changes_are_of_the_same_things_by_what_is_not_zero()
    {
        BumpChange[] kinds = [default, Of(3, 0), Of(0, -4), Of(-1, 2)];
        BumpChange[] others = [default, Of(-2, 0), Of(0, 7), Of(5, 6)];
        for (int i = 0; i < kinds.Length; i++)
        {
            Assert.Equal(i == 0, kinds[i].IsNone);
            for (int j = 0; j < others.Length; j++)
            {
                Assert.Equal(i == j, kinds[i].ChangesTheSameAs(others[j]));
            }
        }
    }

    private static BumpFindings With(BumpAdvice? height, BumpAdvice? length, BumpAdvice? both) => s_read with
    {
        Sheets =
        [
            s_read.Newest with
            {
                Worst = s_read.Newest.Worst with { PerInch = Length.FromInches(-Now) },
                Grade = BumpGrade.Felt,
                Limits = BumpLimits.Usual,
            },
        ],
        HeightAlone = height,
        LengthAlone = length,
        Both = both,
    };

    private static BumpAdvice? Advice(double? worst, double raised, double longer) => worst is not { } left ? null : new BumpAdvice
    {
        Change = Of(raised, longer),
        Uncertainty = null,
        WantedLength = Length.FromMillimeters(300),
        Predicted = [],
        PredictedWorst = Length.Zero,
        Rounded = Of(raised, longer),
        RoundedLength = Length.FromMillimeters(300),
        RoundedPredicted = [],
        RoundedWorst = Length.FromInches(left),
    };

    private static BumpChange Of(double raised, double longer) => new(Length.FromMillimeters(raised), Length.FromMillimeters(longer));
}
