using TieRodCalc.Threads;
using UnitsNet;
using static TieRodCalc.Tests.Threads.Pairs;

namespace TieRodCalc.Tests.Threads;

/// <summary>What must hold of the limits of every thread, and which thread is standard.</summary>
public class ThreadLimitsTests
{
    private const double Inch = 25.4;

    /// <summary>What rounding moves at most: half a digit each of a basic size, an allowance and a tolerance.</summary>
    private const double UnifiedRounding = 3 * 0.00005 * Inch;

    /// <summary>Half of 0.001 in more, two half digits before.</summary>
    private const double UnifiedMinorRounding = 0.0006 * Inch;

    /// <summary>A basic size of a metric thread; its tolerances are whole micrometers.</summary>
    private const double MetricRounding = 0.0005;

    public static TheoryData<string> Classes =>
        [.. RandomThreads.ExternalChains.Concat(RandomThreads.InternalChains).SelectMany(chain => chain).Distinct()];

    [Theory]
    [MemberData(nameof(Classes))]
    public void Limits_are_in_order_and_near_the_unrounded_ones(string toleranceClass)
    {
        ThreadForm form = toleranceClass[^1] is 'A' or 'B' ? ThreadForm.Unified : ThreadForm.Metric;
        ThreadGender gender = toleranceClass[^1] is 'A' or 'e' or 'f' or 'g' or 'h' ? ThreadGender.External : ThreadGender.Internal;
        int found = 0;
        foreach (ThreadSize size in RandomThreads.Standard.Where(size => size.Form == form))
        {
            if (ThreadLimits.Of(new(size, Hand.Right) { ToleranceClass = toleranceClass }, gender) is not { } limits)
            {
                continue;
            }

            found++;
            SizeLimits printed = limits.Printed;
            SizeLimits exact = limits.Member.Exact!.Value;
            Assert.True(printed.MajorLeast < printed.MajorMost && printed.PitchLeast < printed.PitchMost);
            Assert.True(printed.MinorLeast < printed.MinorMost && printed.PitchMost < printed.MajorMost, limits.ToString());
            Assert.True(printed.MinorMost < printed.PitchMost && printed.PitchLeast < printed.MajorLeast, limits.ToString());
            double rounding = form == ThreadForm.Unified ? UnifiedRounding : MetricRounding;
            double minor = form == ThreadForm.Unified && gender == ThreadGender.Internal ? UnifiedMinorRounding : rounding;
            Near(exact.MajorLeast, printed.MajorLeast, rounding, limits);
            Near(exact.MajorMost, printed.MajorMost, rounding, limits);
            Near(exact.PitchLeast, printed.PitchLeast, rounding, limits);
            Near(exact.PitchMost, printed.PitchMost, rounding, limits);
            Near(exact.MinorLeast, printed.MinorLeast, minor, limits);
            Near(exact.MinorMost, printed.MinorMost, minor, limits);
        }

        Assert.InRange(found, 100, 2000);
    }

    /// <summary>A male of any class of a size goes into a female of any class of it, both as printed.</summary>
    [Fact]
    public void A_male_of_a_size_goes_into_a_female_of_it() => Assert.All(RandomThreads.Standard, size =>
    {
        foreach (string male in RandomThreads.ExternalChains.SelectMany(chain => chain).Distinct())
        {
            foreach (string female in RandomThreads.InternalChains.SelectMany(chain => chain).Distinct())
            {
                if (ThreadLimits.Of(Said(male), ThreadGender.External) is { } external && external.ToleranceClass == male
                    && ThreadLimits.Of(Said(female), ThreadGender.Internal) is { } @internal && @internal.ToleranceClass == female)
                {
                    Assert.True(external.Printed.PitchMost <= @internal.Printed.PitchLeast + 1e-9, $"{external} {@internal}");
                    Assert.True(external.Printed.MajorMost <= @internal.Printed.MajorLeast + 1e-9, $"{external} {@internal}");
                }
            }
        }

        ThreadDesignation Said(string toleranceClass) => new(size, Hand.Right) { ToleranceClass = toleranceClass };
    });

    /// <summary>The standard has no 6H for the pitches 0.2 and 0.25; their limits are those of 4H.</summary>
    [Fact]
    public void Every_standard_size_has_limits_and_areas_and_is_not_special() => Assert.All(RandomThreads.Standard, size =>
    {
        const double Finest6H = 0.3;
        ThreadDesignation thread = new(size, Hand.Right);
        bool finer = size.Form == ThreadForm.Metric && size.Pitch.Millimeters < Finest6H;
        Assert.False(thread.IsSpecial);
        Assert.Equal(finer, ThreadLimits.Of(thread, ThreadGender.Internal) is null);
        ThreadedPair pair = ThreadedPair.Of(thread, finer ? thread with { ToleranceClass = "4H" } : thread)!;
        Assert.True(pair.StressArea.SquareMillimeters > 0);
        Assert.True(pair.MaleShearAreaPerMillimeter.SquareMillimeters > 0);
        Assert.True(pair.FemaleShearAreaPerMillimeter.SquareMillimeters > 0);
        Assert.True(pair.External.ClassAssumed && pair.Internal.ClassAssumed != finer);
        Assert.Equal(size.Form == ThreadForm.Unified ? "2A" : "6g", pair.External.ToleranceClass);
        Assert.Equal(size.Form == ThreadForm.Unified ? "2B" : finer ? "4H" : "6H", pair.Internal.ToleranceClass);
        Assert.Null(pair.External.Minor.Least);
        Assert.Null(pair.Internal.Major.Most);
    });

    /// <summary>Written or not, the series of a standard size is the same, and with it the limits.</summary>
    [Fact]
    public void A_series_that_is_said_changes_nothing_of_a_standard_size()
    {
        foreach (ThreadSize size in RandomThreads.Standard.Where(size => size.Form == ThreadForm.Unified))
        {
            ThreadDesignation thread = new(size, Hand.Left);
            ThreadDesignation said = thread with { Series = thread.SeriesInUse };
            Assert.Equal(
                ThreadLimits.Of(thread, ThreadGender.External)!.Printed, ThreadLimits.Of(said, ThreadGender.External)!.Printed);
            Assert.Equal(
                ThreadLimits.Of(thread, ThreadGender.Internal)!.Printed, ThreadLimits.Of(said, ThreadGender.Internal)!.Printed);
        }
    }

    /// <summary>ASME B1.1 table 1 and ISO 261, from memory; second place: threadlib, design/UIS_thread.csv, metric_thread.csv.</summary>
    [Theory]
    [InlineData("5/8-18", UnifiedSeries.Unf, false)]
    [InlineData("5/8-11", UnifiedSeries.Unc, false)]
    [InlineData("5/8-24", UnifiedSeries.Unef, false)]
    [InlineData("5/8-16", UnifiedSeries.Un, false)]
    [InlineData("5/8-14", UnifiedSeries.Uns, true)]
    [InlineData("11/16-16", UnifiedSeries.Un, false)]
    [InlineData("11/16-12", UnifiedSeries.Un, false)]
    [InlineData("11/16-24", UnifiedSeries.Unef, false)]
    [InlineData("11/16-18", UnifiedSeries.Uns, true)]
    [InlineData("2 1/16-16", UnifiedSeries.Uns, true)]
    [InlineData("2 1/8-16", UnifiedSeries.Un, false)]
    [InlineData("7/16-16", UnifiedSeries.Un, false)]
    [InlineData("3-20", UnifiedSeries.Un, false)]
    [InlineData("3 1/8-20", UnifiedSeries.Uns, true)]
    [InlineData("1/2-12", UnifiedSeries.Uns, true)]
    [InlineData("1 1/2-28", UnifiedSeries.Un, false)]
    [InlineData("1 9/16-28", UnifiedSeries.Uns, true)]
    [InlineData("15/16-8", UnifiedSeries.Uns, true)]
    [InlineData("1 1/16-8", UnifiedSeries.Un, false)]
    [InlineData("1 5/16-6", UnifiedSeries.Uns, true)]
    [InlineData("1 7/16-6", UnifiedSeries.Un, false)]
    [InlineData("2 3/8-4", UnifiedSeries.Uns, true)]
    [InlineData("2 5/8-4", UnifiedSeries.Un, false)]
    [InlineData("0.65-16", UnifiedSeries.Uns, true)]
    [InlineData("M18x1.5", null, false)]
    [InlineData("M18", null, false)]
    [InlineData("M18x1.25", null, true)]
    [InlineData("M16x1.5", null, false)]
    [InlineData("M16.5x1.5", null, true)]
    public void A_size_is_known_by_its_series(string thread, UnifiedSeries? series, bool special)
    {
        Assert.Equal(series, Thread(thread).SeriesInUse);
        Assert.Equal(special, Thread(thread).IsSpecial);
    }

    [Theory]
    [InlineData("5/8-18", false)]
    [InlineData("11/16-18", false)]
    [InlineData("1-80", false)]
    [InlineData("1/4-81", true)]
    [InlineData("0.059-80", true)]
    [InlineData("2-3.5", true)]
    [InlineData("M18x1.5", false)]
    [InlineData("M18x1.25", false)]
    [InlineData("M16.5x1.5", false)]
    [InlineData("M18x1.1", true)]
    [InlineData("M16x0.75", true)]
    public void Where_the_tables_end_is_told(string thread, bool beyond)
    {
        Assert.Equal(beyond, ThreadLimits.Of(Thread(thread), ThreadGender.External)!.BeyondTables);
        Assert.Equal(beyond, ThreadLimits.Of(Thread(thread), ThreadGender.Internal)!.BeyondTables);
    }

    [Theory]
    [InlineData("M10x1.5-5g", ThreadGender.External)]
    [InlineData("M5x0.5-8g", ThreadGender.External)]
    [InlineData("M2x0.25-7H", ThreadGender.Internal)]
    [InlineData("M2x0.4-6e", ThreadGender.External)]
    [InlineData("M2x0.25-6f", ThreadGender.External)]
    public void A_class_that_the_standard_does_not_have_gives_no_limits(string thread, ThreadGender gender) =>
        Assert.Null(ThreadLimits.Of(Thread(thread), gender));

    /// <summary>
    /// What no printed row at hand shows, by hand from the formulas of ASME B1.1. 3 1/8-4 UN: the length of engagement is the diameter,
    /// Td2 = 0.002193 + 0.002652 + 0.005953 = 0.0108. 3-3.5 UNS: coarser than 4, TD1 = 0.15 P = 0.0429, on D1 = 2.6907. 2-13 UNS: 13 is
    /// among the finer ones, TD1 of 3B = 0.23 P - 1.5 P^2 = 0.0088, on D1 = 1.9167.
    /// </summary>
    [Fact]
    public void Coarse_threads_follow_their_own_formulas()
    {
        Assert.Equal(1.9255, ThreadLimits.Of(Thread("2-13-3B"), ThreadGender.Internal)!.Minor.Most!.Value.Inches, 1e-7);
        DiameterLimits pitch = ThreadLimits.Of(Thread("3 1/8-4-2A"), ThreadGender.External)!.Pitch;
        Assert.Equal(0.0108, (pitch.Most - pitch.Least)!.Value.Inches, 1e-7);
        DiameterLimits minor = ThreadLimits.Of(Thread("3-3.5-2B"), ThreadGender.Internal)!.Minor;
        Assert.Equal(2.691, minor.Least!.Value.Inches, 1e-7);
        Assert.Equal(2.734, minor.Most!.Value.Inches, 1e-7);
    }

    /// <summary>
    /// The crest has its own position. By hand on the basic sizes 18, 17.026 and 16.376 of M18x1.5, with 32 micrometers of G, 67 of e and
    /// the tolerances 236 (Td 6) and 300 (TD1 6).
    /// </summary>
    [Fact]
    public void The_crest_has_a_position_of_its_own()
    {
        SizeLimits external = ThreadLimits.Of(Thread("M18x1.5-6e6h"), ThreadGender.External)!.Printed;
        Assert.Equal(18, external.MajorMost, 1e-9);
        Assert.Equal(17.764, external.MajorLeast, 1e-9);
        Assert.Equal(16.959, external.PitchMost, 1e-9);
        Assert.Equal(16.309, external.MinorMost, 1e-9);
        SizeLimits @internal = ThreadLimits.Of(Thread("M18x1.5-6H6G"), ThreadGender.Internal)!.Printed;
        Assert.Equal(17.026, @internal.PitchLeast, 1e-9);
        Assert.Equal(16.408, @internal.MinorLeast, 1e-9);
        Assert.Equal(16.708, @internal.MinorMost, 1e-9);
    }

    /// <summary>A class of the other member says nothing of this one.</summary>
    [Theory]
    [InlineData("5/8-18-1A", ThreadGender.Internal, "2B")]
    [InlineData("5/8-18-3B", ThreadGender.External, "2A")]
    [InlineData("M18x1.5-4h", ThreadGender.Internal, "6H")]
    [InlineData("M18x1.5-5H", ThreadGender.External, "6g")]
    public void A_class_of_the_other_member_leaves_the_usual_one(string thread, ThreadGender gender, string taken)
    {
        ThreadLimits limits = ThreadLimits.Of(Thread(thread), gender)!;
        Assert.Equal(taken, limits.ToleranceClass);
        Assert.True(limits.ClassAssumed);
    }

    private static void Near(double exact, double printed, double rounding, ThreadLimits limits) => Assert.True(
        exact.Equals(printed) || Math.Abs(exact - printed) <= rounding + 1e-9, $"{limits}: {exact:R} {printed:R}");
}
