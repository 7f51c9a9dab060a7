using TieRodCalc.Threads;
using UnitsNet;
using static TieRodCalc.Tests.Threads.Pairs;

namespace TieRodCalc.Tests.Threads;

/// <summary>What happens when a male is turned into a female.</summary>
public class ThreadFitTests
{
    [Theory]
    [InlineData("M16x1.5", "5/8-18", FitOutcome.StartsAndBinds)]
    [InlineData("1/2-13", "1/2-20", FitOutcome.DoesNotStart)]
    [InlineData("1/2-20", "1/2-13", FitOutcome.DoesNotStart)]
    [InlineData("3/4-16", "3/4-16 LH", FitOutcome.DoesNotStart)]
    [InlineData("3/4-16 LH", "3/4-16", FitOutcome.DoesNotStart)]
    [InlineData("M16x1.5 LH", "5/8-18", FitOutcome.DoesNotStart)]
    [InlineData("3/4-16", "3/4-16", FitOutcome.GoesTogether)]
    [InlineData("3/4-16 LH", "3/4-16 LH", FitOutcome.GoesTogether)]
    [InlineData("M18x1.5-4h", "M18x1.5-7H", FitOutcome.GoesTogether)]
    [InlineData("M18x1.5", "M18x1", FitOutcome.DoesNotStart)]
    [InlineData("M18x1.5", "M20x1.5", FitOutcome.GoesInLoose)]
    [InlineData("M20x1.5", "M18x1.5", FitOutcome.DoesNotStart)]
    public void A_fit_is(string male, string female, FitOutcome outcome) =>
        Assert.Equal(outcome, ThreadFit.Of(Thread(male), Thread(female))!.Outcome);

    /// <summary>Common practice, no source: known in the trade.</summary>
    [Fact]
    public void A_10_32_goes_loose_into_M5x0_8() =>
        Assert.Equal(FitOutcome.GoesInLoose, ThreadFit.Of(Thread("0.190-32"), Thread("M5x0.8"))!.Outcome);

    /// <summary>
    /// By hand: M12x1.25-6g has the major diameter 11.760 to 11.972 and the pitch diameter 11.028 to 11.160; 1/2-20-2B the minor diameter
    /// 0.446 to 0.457 in, 11.3284 to 11.6078 mm, and the pitch diameter 0.4675 to 0.4731 in, 11.8745 to 12.0167 mm. The crests overlap by
    /// (11.760 - 11.6078) / 2 to (11.972 - 11.3284) / 2 mm a side. The pitches are 1.25 and 1.27: a ridge has 0.02 / 2 + 0.57735 (D2 - d2)
    /// of play along the axis, and loses 0.02 of it a turn.
    /// </summary>
    [Fact]
    public void An_M12x1_25_goes_loose_into_1_2_20()
    {
        ThreadFit fit = ThreadFit.Of(Thread("M12x1.25"), Thread("1/2-20"))!;
        Assert.Equal(FitOutcome.GoesInLoose, fit.Outcome);
        Assert.Equal((11.760 - 11.6078) / 2, fit.LeastOverlap.Millimeters, 1e-9);
        Assert.Equal((11.972 - 11.3284) / 2, fit.MostOverlap.Millimeters, 1e-9);
        Assert.Equal((0.02 + (2 * 0.57735026919 * (11.8745 - 11.160))) / 2 / 0.02, fit.LeastTurns!.Value, 1e-6);
        Assert.Equal((0.02 + (2 * 0.57735026919 * (12.01674 - 11.028))) / 2 / 0.02, fit.MostTurns!.Value, 1e-6);
    }

    /// <summary>What goes in by half a diameter has a thin nut all the way on.</summary>
    [Fact]
    public void What_goes_in_by_half_a_diameter_is_loose_and_less_binds() => Assert.All(
        AllPairs(),
        pair =>
        {
            ThreadFit fit = ThreadFit.Of(pair.Male, pair.Female)!;
            double turns = fit.MostTurns ?? double.PositiveInfinity;
            double half = 0.5 * pair.Male.Size.Diameter.Millimeters / pair.Male.Size.Pitch.Millimeters;
            FitOutcome expected = turns < 1 ? FitOutcome.DoesNotStart : turns < half ? FitOutcome.StartsAndBinds : FitOutcome.GoesInLoose;
            Assert.Equal(expected, fit.Outcome);
        });

    [Fact]
    public void The_least_is_at_most_the_most() => Assert.All(AllPairs(), pair =>
    {
        ThreadFit fit = ThreadFit.Of(pair.Male, pair.Female)!;
        Assert.True((fit.LeastTurns ?? double.PositiveInfinity) <= (fit.MostTurns ?? double.PositiveInfinity));
        Assert.True(Length.Zero <= fit.LeastOverlap && fit.LeastOverlap <= fit.MostOverlap);
    });

    /// <summary>At the tightest limits nothing goes in where a crest meets a root, whatever play the flanks have.</summary>
    [Fact]
    public void Where_a_crest_meets_a_root_not_even_a_turn_is_certain()
    {
        int major = 0;
        int minor = 0;
        foreach ((ThreadDesignation male, ThreadDesignation female) in AllPairs())
        {
            SizeLimits external = ThreadLimits.Of(male, ThreadGender.External)!.Printed;
            SizeLimits @internal = ThreadLimits.Of(female, ThreadGender.Internal)!.Printed;
            bool majorMeets = external.MajorMost > @internal.MajorLeast;
            bool minorMeets = external.MinorMost > @internal.MinorLeast;
            double play = ((female.Size.Pitch - male.Size.Pitch).Millimeters / 2)
                + ((@internal.PitchLeast - external.PitchMost) * Math.Tan(Math.PI / 6));
            if ((majorMeets || minorMeets) && play > 0)
            {
                major += majorMeets && !minorMeets ? 1 : 0;
                minor += minorMeets && !majorMeets ? 1 : 0;
                Assert.Equal(0, ThreadFit.Of(male, female)!.LeastTurns);
            }
        }

        Assert.Equal(0, major); // no pair of standard sizes has its major diameters meet while its flanks have play
        Assert.InRange(minor, 100, 1000);
    }

    /// <summary>Same pitch, no error: no count of turns where the flanks have play.</summary>
    [Fact]
    public void Without_an_error_of_the_pitch_it_never_binds()
    {
        ThreadFit fit = ThreadFit.Of(Thread("M18x1.5"), Thread("M20x1.5"))!;
        Assert.Null(fit.LeastTurns);
        Assert.Null(fit.MostTurns);
        Assert.Equal(0, ThreadFit.Of(Thread("M20x1.5"), Thread("M18x1.5"))!.MostTurns);
    }

    [Fact]
    public void A_class_that_the_standard_does_not_have_gives_no_fit()
    {
        Assert.Null(ThreadFit.Of(Thread("M10x1.5-5g"), Thread("M10x1.5")));
        Assert.Null(ThreadFit.Of(Thread("M10x1.5"), Thread("M2x0.25-7H")));
    }

    /// <summary>
    /// The turns of the formula against a model: ridges and grooves as intervals on the axis, the ridges of the male (k + 1 of them, a
    /// pitch Pm apart, after k turns) put at one offset after another; the largest k at which every ridge lies within its groove.
    /// </summary>
    [Theory]
    [InlineData("M16x1.5", "5/8-18")]
    [InlineData("5/8-18", "M16x1.5")]
    [InlineData("0.190-32", "M5x0.8")]
    [InlineData("M12x1.25", "1/2-20")]
    [InlineData("1/2-20", "M14x1.5")]
    [InlineData("M20x1.5", "13/16-16")]
    [InlineData("3/4-16", "M20x1.5")]
    [InlineData("M8x1.25", "5/16-18")]
    [InlineData("5/16-18", "M8x1.25")]
    [InlineData("M10x1.5", "3/8-16")]
    [InlineData("3/8-16", "M10x1.5")]
    [InlineData("M22x1.5", "7/8-14")]
    public void The_turns_are_those_of_a_model_of_ridges_in_grooves(string male, string female)
    {
        ThreadLimits external = ThreadLimits.Of(Thread(male), ThreadGender.External)!;
        ThreadLimits @internal = ThreadLimits.Of(Thread(female), ThreadGender.Internal)!;
        double Pm = Thread(male).Size.Pitch.Millimeters;
        double Pf = Thread(female).Size.Pitch.Millimeters;
        ThreadFit fit = ThreadFit.Of(Thread(male), Thread(female))!;
        int most = Turns(Pm, Pf, @internal.Pitch.Most!.Value.Millimeters - external.Pitch.Least!.Value.Millimeters);
        Assert.Equal((int)Math.Floor(fit.MostTurns!.Value), most);
        bool clear = @internal.Major.Least >= external.Major.Most && @internal.Minor.Least >= external.Minor.Most;
        int least = clear ? Turns(Pm, Pf, @internal.Pitch.Least!.Value.Millimeters - external.Pitch.Most!.Value.Millimeters) : 0;
        Assert.Equal((int)Math.Floor(fit.LeastTurns!.Value), least);
    }

    /// <summary>
    /// Whole turns of a male thread: after k of them it has k + 1 ridges in k + 1 grooves. Ridge and groove are half of their own pitch
    /// wide at their pitch diameters; at the female's one the ridge has lost half of the gap on each of its 30 degree flanks.
    /// </summary>
    private static int Turns(double Pm, double Pf, double gap)
    {
        const int Offsets = 2000;
        const int Enough = 500;
        double groove = Pf / 2;
        double ridge = (Pm / 2) - (Math.Tan(Math.PI / 6) * gap);
        for (int turns = 0; turns < Enough; turns++)
        {
            bool fits = false;
            for (int at = 0; at <= Offsets && !fits; at++)
            {
                double shift = ((double)at / Offsets - 0.5) * Pf;
                fits = true;
                for (int n = 0; n <= turns && fits; n++)
                {
                    double middle = shift + (n * Pm) - (n * Pf);
                    fits = Math.Abs(middle) <= (groove - ridge) / 2;
                }
            }

            if (!fits)
            {
                return Math.Max(0, turns - 1);
            }
        }

        return Enough;
    }

    private static IEnumerable<(ThreadDesignation Male, ThreadDesignation Female)> AllPairs()
    {
        ThreadSize[] sizes = [.. RandomThreads.Standard.Where(size => size.Diameter.Millimeters is > 6 and < 26)];
        return from male in sizes
               from female in sizes
               where !male.Matches(female)
                   && Math.Abs(male.Diameter.Millimeters - female.Diameter.Millimeters) < 4
               select (new ThreadDesignation(male, Hand.Right), new ThreadDesignation(female, Hand.Right));
    }
}
