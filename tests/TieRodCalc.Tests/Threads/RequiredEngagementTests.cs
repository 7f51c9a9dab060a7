using TieRodCalc.Threads;
using UnitsNet;
using static TieRodCalc.Tests.Threads.Pairs;

namespace TieRodCalc.Tests.Threads;

/// <summary>Shear areas and required engagement against values that were computed elsewhere.</summary>
public class RequiredEngagementTests
{
    private static readonly Pressure Even = Pressure.FromKilopoundsForcePerSquareInch(100);

    /// <summary>Check values of the model, computed by independent means from unrounded limits.</summary>
    [Fact]
    public void A_5_8_18_has_the_check_values()
    {
        ThreadedPair pair = Pair("5/8-18 UNF-2A", "5/8-18 UNF-2B");
        Assert.Equal(0.2560, pair.StressArea.SquareInches, 0.00005);
        Assert.Equal(1.0081, pair.MaleShearAreaPerMillimeter.SquareInches * 25.4, 0.00005);
        Assert.Equal(1.3654, pair.FemaleShearAreaPerMillimeter.SquareInches * 25.4, 0.00005);
        Assert.Equal(0.508, Equal(pair).Required.Inches, 0.0005);

        StrengthEngagement soft = pair.RequiredEngagement(
            Pressure.FromKilopoundsForcePerSquareInch(120), Pressure.FromKilopoundsForcePerSquareInch(45), FemaleWall.Unknown);
        Assert.Equal(1.969, soft.StrengthRatio, 0.0005);
        Assert.Equal(1.000, soft.Required.Inches, 0.0005);
        Assert.Equal(StrengthCaveats.OutsideUnknown, soft.Caveats);
        Assert.Null(soft.Dilation);
        Assert.Null(soft.MaleBending);
        Assert.Null(soft.FemaleBending);
    }

    [Fact]
    public void An_11_16_18_special_has_the_check_value() =>
        Assert.Equal(0.563, Equal(Pair("11/16-18 UNS-2A", "11/16-18 UNS-2B")).Required.Inches, 0.0005);

    [Fact]
    public void An_M18_has_the_check_values()
    {
        ThreadedPair pair = Pair("M18x1.5-6g", "M18x1.5-6H");
        Assert.Equal(216.2, pair.StressArea.SquareMillimeters, 0.05);
        Assert.Equal(14.6, Equal(pair).Required.Millimeters, 0.1); // "about 14.6"; by hand from the printed limits:
        double shear = Math.PI / 1.5 * 16.676 * (0.75 + (0.57735 * (16.854 - 16.676)));
        Assert.Equal(2 * 216.2 / shear, Equal(pair).Required.Millimeters, 0.01);
        FemaleWall hexagon = new(Length.FromInches(1));
        Assert.Equal(0.761, pair.DilationOf(hexagon)!.Value, 0.0005);
    }

    /// <summary>
    /// A published example (handbook chapter, DOI 10.1201/9781482273786-99): M10x1.5 of 12.9 in 310 aluminum, 58 square millimeters at
    /// 1200 MPa, shear strength 130 MPa, gives 21.6 mm. It prints 9.968 as the least major diameter, which is the greatest of 6g; its own
    /// inputs are taken. Half of the tensile strength is the shear strength here.
    /// </summary>
    [Fact]
    public void A_published_example_comes_out()
    {
        ThreadMember male = Member("M10x1.5-6g", ThreadGender.External);
        PairStrength strength = PairStrength.Of(
            male,
            SizeLimits.External(10, 9.968, 9.026, 8.862, 8.376),
            SizeLimits.Internal(10, 9.026, 9.206, 8.376, 8.676));
        StripFactors factors = StripFactors.Of(null, false, 1);
        double needed = 1200 * 58 / strength.FemaleStrip(2 * 130, 1, factors);
        Assert.Equal(21.6, needed, 0.05);
        Assert.Equal(24.84, strength.FemaleShear, 0.005); // by hand: pi / 1.5 * 9.968 * (0.75 + 0.57735 (9.968 - 9.206))
    }

    /// <summary>
    /// A thread is stripped along a cylinder: the material that crosses it, by integrating the profile. As for the male, cut at the
    /// greatest minor diameter of the female; An, cut at the least major diameter of the male.
    /// </summary>
    [Theory]
    [InlineData("5/8-18 UNF-2A", "5/8-18 UNF-2B")]
    [InlineData("11/16-18 UNS-2A", "11/16-18 UNS-2B")]
    [InlineData("1-14 UNS-1A", "1-14 UNS-1B")]
    [InlineData("3/4-16 UNF-3A", "3/4-16 UNF-3B")]
    [InlineData("M18x1.5-6g", "M18x1.5-6H")]
    [InlineData("M12x1.25-8g", "M12x1.25-7H")]
    [InlineData("M30x3.5-6e", "M30x3.5-6G")]
    public void Shear_areas_are_what_the_profile_has_on_their_cylinders(string male, string female)
    {
        SizeLimits external = Member(male, ThreadGender.External).Exact!.Value;
        SizeLimits @internal = Member(female, ThreadGender.Internal).Exact!.Value;
        double pitch = Thread(male).Size.PitchMm;
        PairStrength strength = Strength(male, female);
        double ridge = MaterialOnCylinder(@internal.MinorMost, external.PitchLeast, pitch, male: true);
        double groove = MaterialOnCylinder(external.MajorLeast, @internal.PitchMost, pitch, male: false);
        Assert.Equal(ridge, strength.MaleShear, ridge * 1e-4);
        Assert.Equal(groove, strength.FemaleShear, groove * 1e-4);
    }

    /// <summary>The engagement that is required is the one at which the loads are even, and the first to give way is told right.</summary>
    [Theory]
    [InlineData(150, 30)]
    [InlineData(120, 120)]
    [InlineData(90, 200)]
    public void At_the_required_engagement_the_male_breaks_no_later_than_a_thread_strips(double maleKsi, double femaleKsi)
    {
        ThreadedPair pair = Pair("5/8-18 UNF-2A", "5/8-18 UNF-2B");
        var male = Pressure.FromKilopoundsForcePerSquareInch(maleKsi);
        var female = Pressure.FromKilopoundsForcePerSquareInch(femaleKsi);
        FemaleWall wall = new(Length.FromMillimeters(24)); // 1.51 diameters: dilation counts
        Length required = pair.RequiredEngagement(male, female, wall).Required;
        PairLoads loads = pair.Loads(male, female, required * 1.0001, wall);
        double weakest = Math.Min(loads.MaleStrip.Newtons, loads.FemaleStrip.Newtons);
        Assert.Equal(GivesWay.MaleBreaks, loads.First);
        Assert.InRange(weakest / (pair.StressArea.SquareMillimeters * male.Megapascals), 1, 1.001);
        PairLoads shorter = pair.Loads(male, female, required * 0.999, wall);
        Assert.Equal(
            shorter.MaleStrip <= shorter.FemaleStrip ? GivesWay.MaleStrips : GivesWay.FemaleStrips,
            pair.Loads(male, female, required * 0.5, wall).First);
        double breaks = pair.StressArea.SquareMillimeters * male.Megapascals;
        Assert.InRange(Math.Min(shorter.MaleStrip.Newtons, shorter.FemaleStrip.Newtons), 0, breaks);
    }

    /// <summary>A thread that is past its own flank has no area: such a pair does not hold.</summary>
    [Theory]
    [InlineData(1, 1, true)]
    [InlineData(0, 1, false)]
    [InlineData(1, 0, false)]
    [InlineData(-1, 1, false)]
    [InlineData(1, -1, false)]
    public void A_pair_holds_where_both_threads_have_area(double male, double female, bool holds) =>
        Assert.Equal(holds, new PairStrength(1, 1, male, female).Holds);

    /// <summary>5 in with 200 threads per inch: the tolerances of 1A and 1B are greater than the thread is high.</summary>
    [Fact]
    public void Threads_that_do_not_meet_are_no_pair()
    {
        ThreadDesignation male = new(ThreadSize.Unified(Length.FromInches(5), 200), Hand.Right) { ToleranceClass = "1A" };
        Assert.Null(ThreadedPair.Of(male, male with { ToleranceClass = "1B" }));
    }

    private static StrengthEngagement Equal(ThreadedPair pair) => pair.RequiredEngagement(Even, Even, FemaleWall.Unknown);

    /// <summary>
    /// Area per millimeter of axis where a cylinder meets a thread. The flanks, at 60 degrees to each other, are a triangle wave whose
    /// ridge is half a pitch wide at the pitch diameter; over one pitch the share of the axis that is material is counted: of the male
    /// what lies inside its flank, of the female what lies outside.
    /// </summary>
    private static double MaterialOnCylinder(double cylinder, double pitchDiameter, double pitch, bool male)
    {
        const int Slices = 200_000;
        double slope = 1 / Math.Tan(Math.PI / 6);
        int material = 0;
        for (int slice = 0; slice < Slices; slice++)
        {
            double fromMiddle = Math.Abs(((slice + 0.5) / Slices) - 0.5) * pitch;
            double outward = slope * ((pitch / 4) - fromMiddle);
            bool inside = male ? cylinder <= pitchDiameter + (2 * outward) : cylinder >= pitchDiameter - (2 * outward);
            material += inside ? 1 : 0;
        }

        return Math.PI * cylinder * material / Slices;
    }
}
