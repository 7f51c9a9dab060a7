using TieRodCalc.Threads;
using static TieRodCalc.Tests.Threads.Pairs;

namespace TieRodCalc.Tests.Threads;

/// <summary>The kernel allocates nothing.</summary>
public class AllocationTests
{
    private const int Rounds = 2_000;

    [Theory]
    [InlineData("5/8-18 UNF-2A", "5/8-18 UNF-2B")]
    [InlineData("11/16-18 UNS-3A", "11/16-18 UNS-3B")]
    [InlineData("M18x1.5-6g", "M18x1.5-6H")]
    [InlineData("M18x1.5-4g6g", "M18x1.5-4H5H")]
    [InlineData("M16x1.1-6g", "M16x1.1-6H")]
    public void Limits_and_required_engagement_of_a_pair_allocate_nothing(string male, string female)
    {
        ThreadMember external = Member(male, ThreadGender.External);
        ThreadMember @internal = Member(female, ThreadGender.Internal);
        double warm = Sum(external, @internal);
        long before = GC.GetAllocatedBytesForCurrentThread();
        double sum = Sum(external, @internal);
        long after = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(0, after - before);
        Assert.Equal(warm, sum);
        Assert.True(double.IsFinite(sum) && sum > 0);
    }

    private static double Sum(in ThreadMember external, in ThreadMember @internal)
    {
        double sum = 0;
        for (int round = 0; round < Rounds; round++)
        {
            double maleMPa = 400 + round;
            const double FemaleMPa = 700;
            SizeLimits printed = external.Printed!.Value;
            PairStrength strength = PairStrength.Of(external, external.Exact!.Value, @internal.Exact!.Value);
            double ratio = strength.Ratio(maleMPa, FemaleMPa);
            StripFactors factors = StripFactors.Of(1.2 + (round / (double)Rounds), false, ratio);
            sum += strength.RequiredEngagement(ratio, factors) + strength.MaleStrip(maleMPa, 10, factors)
                + strength.FemaleStrip(FemaleMPa, 10, factors) + strength.TensileArea(maleMPa)
                + printed.PitchLeast + @internal.Printed!.Value.PitchMost;
        }

        return sum;
    }
}
