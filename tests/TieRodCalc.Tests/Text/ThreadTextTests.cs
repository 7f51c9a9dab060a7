using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Text;

public class ThreadTextTests
{
    private const Hand R = Hand.Right;
    private const Hand L = Hand.Left;

    public static TheoryData<string, double, double, UnifiedSeries?, string?, Hand> GoodUnified => new()
    {
        { "5/8-18 UNF-2A LH", 0.625, 18, UnifiedSeries.Unf, "2A", L },
        { "5/8-18 UNF-2A-LH", 0.625, 18, UnifiedSeries.Unf, "2A", L },
        { "5/8-18 UNF-2A RH", 0.625, 18, UnifiedSeries.Unf, "2A", R },
        { "5/8-18 unf-2a lh", 0.625, 18, UnifiedSeries.Unf, "2A", L },
        { "5/8-18UNF-2B", 0.625, 18, UnifiedSeries.Unf, "2B", R },
        { "5/8 - 18 UNF - 2A - LH", 0.625, 18, UnifiedSeries.Unf, "2A", L },
        { "5/8-18-UNF-2A", 0.625, 18, UnifiedSeries.Unf, "2A", R },
        { "5/8-18 UNF", 0.625, 18, UnifiedSeries.Unf, null, R },
        { "5/8-18", 0.625, 18, null, null, R },
        { "  5/8-18\u00A0LH ", 0.625, 18, null, null, L },
        { "0.6875-18 UNS-2B", 0.6875, 18, UnifiedSeries.Uns, "2B", R },
        { ".6875-18", 0.6875, 18, null, null, R },
        { "11/16-18 LH", 0.6875, 18, null, null, L },
        { "11/16-18-2A LH", 0.6875, 18, null, "2A", L },
        { "11/16-18 2A LH", 0.6875, 18, null, "2A", L },
        { "11/16-18LH", 0.6875, 18, null, null, L },
        { "1 1/8-12", 1.125, 12, null, null, R },
        { "1-1/8-12 UNF", 1.125, 12, UnifiedSeries.Unf, null, R },
        { "1 1/8-12 UNF-3A LH", 1.125, 12, UnifiedSeries.Unf, "3A", L },
        { "1-8", 1, 8, null, null, R },
        { "1-12 UNF-1B", 1, 12, UnifiedSeries.Unf, "1B", R },
        { "1-14 UNS", 1, 14, UnifiedSeries.Uns, null, R },
        { "2-4.5 UNC", 2, 4.5, UnifiedSeries.Unc, null, R },
        { "2-12 UN-2A", 2, 12, UnifiedSeries.Un, "2A", R },
        { "4-4 UNC", 4, 4, UnifiedSeries.Unc, null, R },
        { "0.190-32", 0.19, 32, null, null, R },
        { "0.190-32 UNF-2A", 0.19, 32, UnifiedSeries.Unf, "2A", R },
        { "0.216-32 UNEF", 0.216, 32, UnifiedSeries.Unef, null, R },
        { "1.000-64", 1, 64, null, null, R },
        { "3/4-16 UNF", 0.75, 16, UnifiedSeries.Unf, null, R },
        { "1 1/16-18 UNEF", 1.0625, 18, UnifiedSeries.Unef, null, R },
    };

    public static TheoryData<string, double, double, string?, Hand, bool> GoodMetric => new()
    {
        { "M18x1.5-6g LH", 18, 1.5, "6g", L, false },
        { "M18x1.5-6g-LH", 18, 1.5, "6g", L, false },
        { "M18x1.5 - 6g - LH", 18, 1.5, "6g", L, false },
        { "M18x1.5 6g LH", 18, 1.5, "6g", L, false },
        { "M 18 x 1.5", 18, 1.5, null, R, false },
        { "M18×1.5", 18, 1.5, null, R, false },
        { "M18X1.5LH", 18, 1.5, null, L, false },
        { "m18x1.5 lh", 18, 1.5, null, L, false },
        { "M18x1.5 RH", 18, 1.5, null, R, false },
        { "M18x1.5-6H", 18, 1.5, "6H", R, false },
        { "M18x1.5-5g6g", 18, 1.5, "5g6g", R, false },
        { "M18x1.5-4H5H LH", 18, 1.5, "4H5H", L, false },
        { "M18x1.5-6e", 18, 1.5, "6e", R, false },
        { "M18x1.5-8f", 18, 1.5, "8f", R, false },
        { "M18x1.5-9h", 18, 1.5, "9h", R, false },
        { "M18x1.5-3G", 18, 1.5, "3G", R, false },
        { "M18x2", 18, 2, null, R, false },
        { "M18x2.5", 18, 2.5, null, R, false },
        { "M18", 18, 2.5, null, R, true },
        { "M18 LH", 18, 2.5, null, L, true },
        { "M18-LH", 18, 2.5, null, L, true },
        { "M18-6g LH", 18, 2.5, "6g", L, true },
        { "M2.5", 2.5, 0.45, null, R, true },
        { "M1x0.25", 1, 0.25, null, R, false },
        { "M150x6", 150, 6, null, R, false },
    };

    public static TheoryData<string, int, int, string> Bad => new()
    {
        // The size.
        { "", 0, 0, "expected a thread as M" },
        { "abc", 0, 3, "expected a thread as M" },
        { "NPT 1/2", 0, 3, "expected a thread as M" },
        { "MJ18x1.5", 0, 2, "expected a thread as M" },
        { "Tr18x4", 0, 2, "expected a thread as M" },
        { "G1/2", 0, 1, "expected a thread as M" },
        { "5/8", 3, 0, "expected - and the threads per inch, as in 5/8-18" },
        { "5/8\"-18", 3, 1, "expected - and the threads per inch" },
        { "5/8x18", 3, 1, "expected - and the threads per inch" },
        { "5/8-", 4, 0, "expected the threads per inch" },
        { "5/8-UNF", 4, 3, "expected the threads per inch" },
        { "5/0-18", 2, 1, "cannot be zero" },
        { "1 9/8-12", 2, 3, "below 1" },
        { "0,625-18", 0, 5, "decimal sign is a point" },
        { "5/8-18,5", 4, 4, "decimal sign is a point" },
        { "2-4 1/2", 4, 1, "written as a decimal, 4.5" },
        { "5/8-18.3", 4, 4, "a whole number or a half" },
        { "5/8-0", 4, 1, "a whole number or a half" },
        { "6-4", 0, 1, "the diameter is out of range" },
        { "0.03-80", 0, 4, "the diameter is out of range" },
        { "5/8-4", 4, 1, "a third of the diameter" },
        { "5/8-200", 4, 3, "the pitch is out of range" },
        { "0.6875001-18", 0, 9, "at most 6 decimals" },

        // Number sizes.
        { "10-32", 0, 5, "10-32 is a number size: write its diameter in inches, 0.190-32" },
        { "10-24 UNC-2A", 0, 5, "0.190-24" },
        { "1-64", 0, 4, "0.073-64" },
        { "2-56 UNC", 0, 4, "0.086-56" },
        { "12-24", 0, 5, "0.216-24" },
        { "12-32 UNEF", 0, 5, "0.216-32" },
        { "0-80 UNF", 0, 4, "0.060-80" },
        { "5-44", 0, 4, "0.125-44" },
        { "8 - 32", 0, 6, "0.164-32" },
        { "#10-32", 0, 6, "number sizes are not read" },

        // Metric sizes.
        { "M", 0, 1, "expected a thread as M" },
        { "M18x", 4, 0, "expected the pitch" },
        { "M18xPh3", 3, 3, "expected the end or x and the pitch" },
        { "M18*1.5", 3, 1, "expected the end or x and the pitch" },
        { "M18-1.5", 4, 3, "a pitch stands behind an x" },
        { "M18x1,5", 4, 3, "decimal sign is a point" },
        { "M17", 1, 2, "ISO 261 has no coarse pitch for M17: write the pitch" },
        { "M72 LH", 1, 2, "no coarse pitch for M72" },
        { "M0.9", 1, 3, "out of range" },
        { "M151x6", 1, 3, "out of range" },
        { "M6x2.5", 3, 3, "a third of the diameter" },
        { "M6x0", 3, 1, "the pitch is out of range" },
        { "M6x0.1", 3, 3, "the pitch is out of range" },
        { "M5/8", 2, 1, "expected the end or x and the pitch" },

        // Series.
        { "5/8-18 UNC", 7, 3, "5/8-18 is not UNC, it is UNF; UNC has 11 threads per inch there" },
        { "5/8-18 UNC-2A LH", 7, 3, "it is UNF" },
        { "5/8-24 UNF", 7, 3, "it is UNEF" },
        { "0.625-11 UNF", 9, 3, "0.625-11 is not UNF, it is UNC; UNF has 18" },
        { "5/8-20 UNF", 7, 3, "it is UN or UNS; UNF has 18 threads per inch there" },
        { "1-14 UNF", 5, 3, "it is UN or UNS; UNF has 12" },
        { "2-8 UNC", 4, 3, "it is UN or UNS; UNC has 4.5" },
        { "11/16-18 UNF", 9, 3, "UNF does not have that diameter" },
        { "1/2-14 NPT", 7, 3, "expected a series (UNC, UNF, UNEF, UN or UNS), a class such as 2A or LH, found 'NPT'" },
        { "5/8-18 UNR", 7, 3, "expected a series" },
        { "5/8-18 UNRF-2A", 7, 4, "expected a series" },
        { "5/8-18 UNJF-3A", 7, 4, "expected a series" },
        { "5/8-18 NF", 7, 2, "expected a series" },
        { "M18x1.5 UNF", 8, 3, "expected the end or a class such as 6g" },

        // Class.
        { "5/8-18 UNF-4A", 11, 2, "expected a tolerance class such as 1A, 2A, 3A" },
        { "5/8-18 UNF-2C", 11, 2, "expected a tolerance class" },
        { "5/8-18 UNF-2", 11, 1, "expected a tolerance class" },
        { "5/8-18 UNF-2AG", 11, 3, "expected a tolerance class" },
        { "5/8-18 UNF-6g", 11, 2, "expected a tolerance class such as 1A" },
        { "M18x1.5-2A", 8, 2, "expected a tolerance class such as 6g" },
        { "M18x1.5-6k", 8, 2, "expected a tolerance class" },
        { "M18x1.5-6E", 8, 2, "expected a tolerance class" },
        { "M18x1.5-2g", 8, 2, "expected a tolerance class" },
        { "M18x1.5-10g", 8, 3, "expected a tolerance class" },
        { "M18x1.5-6g6H", 8, 4, "expected a tolerance class" },
        { "M18x1.5-6gLH", 8, 4, "expected a tolerance class" },
        { "M18x1.5-6H/6g", 10, 1, "found '/'" },

        // What follows.
        { "5/8-18 UNF-2A LEFT", 14, 4, "in this order, found 'LEFT'" },
        { "5/8-18 UNF banana", 11, 6, "found 'banana'" },
        { "5/8-18 LH UNF", 10, 3, "nothing more was expected after the hand, found 'UNF'" },
        { "M18x1.5-6g LH x", 14, 1, "nothing more was expected after the hand" },
        { "M18x1.5 LH-6g", 10, 1, "nothing more was expected after the hand" },
        { "5/8-18 UNF-", 11, 0, "behind the hyphen" },
        { "5/8-18 UNF--2A", 11, 1, "found '-'" },
        { "M18x1.5-", 8, 0, "behind the hyphen" },
        { "M18x1.5-6g ± 1", 11, 1, "found '±'" },
    };

    public static TheoryData<string, ThreadGender, int, int, string> WrongGender => new()
    {
        { "M18x1.5-6H LH", ThreadGender.External, 8, 2, "6H is a class of internal threads; this one is external: 6g" },
        { "M18x1.5-6g LH", ThreadGender.Internal, 8, 2, "6g is a class of external threads; this one is internal: 6H" },
        { "M18x1.5-4H5H", ThreadGender.External, 8, 4, "4H5H is a class of internal threads" },
        { "5/8-18 UNF-2B", ThreadGender.External, 11, 2, "2B is a class of internal threads; this one is external: 2A" },
        { "5/8-18 UNF-3a", ThreadGender.Internal, 11, 2, "3A is a class of external threads; this one is internal: 3B" },
    };

    [Theory]
    [MemberData(nameof(GoodUnified))]
    public void A_unified_thread_is_read(
        string text, double inches, double threadsPerInch, UnifiedSeries? series, string? tolerance, Hand hand)
    {
        ThreadDesignation thread = ThreadText.Parse(text).Value;
        Assert.Equal(ThreadForm.Unified, thread.Size.Form);
        Assert.Equal(Millimeters.FromInches(inches), thread.Size.DiameterMm);
        Assert.Equal(25.4 / threadsPerInch, thread.Size.PitchMm);
        Assert.Equal((series, tolerance, hand, false), (thread.Series, thread.ToleranceClass, thread.Hand, thread.CoarsePitchAssumed));
    }

    [Theory]
    [MemberData(nameof(GoodMetric))]
    public void A_metric_thread_is_read(string text, double diameter, double pitch, string? tolerance, Hand hand, bool coarse)
    {
        ThreadDesignation thread = ThreadText.Parse(text).Value;
        Assert.Equal((ThreadForm.Metric, diameter, pitch), (thread.Size.Form, thread.Size.DiameterMm, thread.Size.PitchMm));
        Assert.Equal((tolerance, hand, coarse), (thread.ToleranceClass, thread.Hand, thread.CoarsePitchAssumed));
        Assert.Null(thread.Series);
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void A_bad_thread_is_a_fault_at_its_place(string text, int offset, int length, string phrase) =>
        Expect.Fault(ThreadText.Parse(text).Fault, offset, length, phrase);

    [Theory]
    [MemberData(nameof(WrongGender))]
    public void A_class_of_the_wrong_gender_is_a_fault(string text, ThreadGender gender, int offset, int length, string message)
    {
        Expect.Fault(ThreadText.Parse(text, gender).Fault, offset, length, message);
        Assert.Null(ThreadText.Parse(text).Fault);
        ThreadGender other = gender == ThreadGender.External ? ThreadGender.Internal : ThreadGender.External;
        Assert.Null(ThreadText.Parse(text, other).Fault);
    }

    [Theory]
    [InlineData(ThreadGender.External)]
    [InlineData(ThreadGender.Internal)]
    public void A_thread_without_a_class_suits_either_gender(ThreadGender gender)
    {
        Assert.Equal(ThreadText.Parse("5/8-18 UNF LH"), ThreadText.Parse("5/8-18 UNF LH", gender));
        Assert.Equal(ThreadText.Parse("M18x1.5"), ThreadText.Parse("M18x1.5", gender));
    }

    [Theory]
    [InlineData("5/8-18unf-2a-lh", "5/8-18 UNF-2A LH")]
    [InlineData("0.625-18", "5/8-18")]
    [InlineData("0.6875-18 UNS-2B", "11/16-18 UNS-2B")]
    [InlineData("11/16-18 2A rh", "11/16-18-2A")]
    [InlineData("1-1/8-12.0", "1 1/8-12")]
    [InlineData("2-4.50 UNC", "2-4.5 UNC")]
    [InlineData("1.0-8", "1-8")]
    [InlineData("1.0-64", "1.000-64")]
    [InlineData("0.19-32", "0.190-32")]
    [InlineData("0.125-44", "1/8-44")]
    [InlineData("0.328125-24", "21/64-24")]
    [InlineData("0.687501-18", "0.687501-18")]
    [InlineData("0.6880-18", "0.688-18")]
    [InlineData("M18 × 1.50 - 6g - LH", "M18x1.5-6g LH")]
    [InlineData("M18x2.0", "M18x2")]
    [InlineData("M18 LH", "M18x2.5 LH")]
    [InlineData("m2.5", "M2.5x0.45")]
    public void A_thread_is_written_as_the_standard_does(string text, string expected) =>
        Assert.Equal(expected, ThreadText.Format(ThreadText.Parse(text).Value));

    [Fact]
    public void A_null_is_the_callers_fault()
    {
        Assert.Throws<ArgumentNullException>(() => ThreadText.Parse(null!));
        Assert.Throws<ArgumentNullException>(() => ThreadText.Format(null!));
    }
}
