using System.Globalization;
using System.Numerics;
using TieRodCalc.Rods;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>The sentences that say what happens when a male thread is turned into a female one.</summary>
/// <param name="unit">The unit that lengths are told in first.</param>
public sealed class FitSentences(LengthDisplay unit)
{
    /// <summary>How turns are counted.</summary>
    public static string HowTurnsAreCounted { get; } =
        "Turns are counted from where the full threads catch, at the tightest and at the loosest limits of both; a turn more or less, "
            + "since nobody knows where a thread catches.";

    /// <summary>What not to do.</summary>
    public static string NeverForce { get; } =
        "Never force two threads together. If it does not run in by hand, all the way, without play: stop, back it out, and measure "
            + "diameter and pitch.";

    /// <summary>That nothing was found.</summary>
    public static string NoLookAlike { get; } =
        "None among UNC, UNF, UNEF, UN and the threads of ISO 261 starts in it or takes it, but for itself.";

    /// <summary>What happens to all of a group of look-alikes, in the worse of their two directions.</summary>
    public static string GroupHeadline(FitOutcome outcome) => outcome switch
    {
        FitOutcome.GoesInLoose => "GOES IN LOOSE AND HOLDS NEXT TO NOTHING, though it looks right, even with a jam nut on it:",
        FitOutcome.StartsAndBinds => "Starts, and binds:",
        _ => $"{char.ToUpperInvariant(Names.Of(outcome)[0])}{Names.Of(outcome)[1..]}:",
    };

    /// <summary>What happens, as a headline.</summary>
    public static string Headline(ThreadFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return fit.Outcome switch
        {
            FitOutcome.GoesInLoose when !Touches(fit) => "DROPS IN LOOSE AND HOLDS NOTHING",
            FitOutcome.GoesInLoose => "GOES IN LOOSE AND HOLDS NEXT TO NOTHING",
            FitOutcome.StartsAndBinds => "STARTS AND BINDS",
            FitOutcome.DoesNotStart => "DOES NOT START",
            _ => "GOES TOGETHER",
        };
    }

    /// <summary>Whether what is said of it counts turns.</summary>
    public static bool CountsTurns(ThreadFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return fit.Outcome == FitOutcome.StartsAndBinds || (fit.Outcome == FitOutcome.GoesInLoose && Touches(fit));
    }

    /// <summary>What keeps two threads from going together.</summary>
    public static string OfDifference(ThreadDifference difference) => difference == ThreadDifference.None
        ? "Form, diameter, pitch and hand are the same."
        : $"THE THREADS DO NOT MATCH: {Names.Of(difference)} {(BitOperations.IsPow2((int)difference) ? "differs" : "differ")}.";

    /// <summary>What happens and what comes of it, in a sentence or two.</summary>
    /// <param name="male">The male thread.</param>
    /// <param name="female">The female thread.</param>
    /// <param name="fit">How they go together.</param>
    public string Of(ThreadDesignation male, ThreadDesignation female, ThreadFit fit)
    {
        ArgumentNullException.ThrowIfNull(male);
        ArgumentNullException.ThrowIfNull(female);
        ArgumentNullException.ThrowIfNull(fit);
        return fit.Outcome switch
        {
            FitOutcome.GoesTogether =>
                "They go together.",
            FitOutcome.DoesNotStart when male.Hand != female.Hand =>
                $"A {Names.Of(male.Hand)} thread does not start in a {Names.Of(female.Hand)} one. Do not drive it in.",
            FitOutcome.DoesNotStart =>
                "The male does not start: not one full turn goes in. Forced, it ruins both threads.",
            FitOutcome.StartsAndBinds =>
                $"It starts as if it were right, and {Binds(fit)}. Forced further it ruins both threads, and holds by a few damaged turns.",
            _ when !Touches(fit) =>
                "The male is too small: it slides in without touching the crests of the female, and nothing holds it.",
            _ =>
                $"It turns in by half a diameter or more and looks right, even with a jam nut on it, and PULLS OUT: the crests overlap by "
                    + $"only {Overlap(fit)} a side, where the right male has {Shown(Whole(female.Size))}. "
                    + $"It {Binds(fit)}.",
        };
    }

    /// <summary>What happens in one direction, in a few words.</summary>
    public string Short(ThreadFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return fit.Outcome switch
        {
            FitOutcome.GoesTogether => "goes together",
            FitOutcome.DoesNotStart => "does not start",
            FitOutcome.StartsAndBinds => $"starts, {Binds(fit)}",
            _ when !Touches(fit) => "drops in loose, nothing holds it",
            _ => $"goes in loose, overlap {Overlap(fit)} a side; {Binds(fit)}",
        };
    }

    private LengthDisplay Other => unit == LengthDisplay.Inch ? LengthDisplay.Millimeter : LengthDisplay.Inch;

    private static bool Touches(ThreadFit fit) => fit.MostOverlap > Length.Zero;

    private static Length Whole(ThreadSize size) => (size.Diameter - size.MinorDiameter) / 2;

    /// <summary>From the least, rounded down, to the most, rounded up.</summary>
    private static string Binds(ThreadFit fit) => (fit.LeastTurns, fit.MostTurns) switch
    {
        (null, null) => "never binds",
        ({ } least, null) => $"binds after {Turns(least, up: false)} turns or never",
        ( < 0.1, { } most) => $"binds after at most {Turns(most, up: true)} turns, if it starts at all",
        ({ } least, { } most) => $"binds after {Turns(least, up: false)} to {Turns(most, up: true)} turns",
        (null, { } most) => $"binds after {Turns(most, up: true)} turns",
    };

    private static string Turns(double turns, bool up)
    {
        // What arithmetic adds to a tenth of a turn does not make it the next one.
        const double Noise = 1e-6;
        double tenths = up ? Math.Ceiling(turns * 10 - Noise) : Math.Floor(turns * 10 + Noise);
        return (tenths / 10).ToString("0.0", CultureInfo.InvariantCulture);
    }

    private string Overlap(ThreadFit fit)
    {
        return $"{Span(unit)} ({Span(Other)})";

        // The unit is written once, behind the most.
        string Span(LengthDisplay shown)
        {
            string least = LengthFormat.Decimal(fit.LeastOverlap, shown, LengthRounding.Down);
            string most = LengthFormat.Decimal(fit.MostOverlap, shown, LengthRounding.Up);
            return $"{least[..least.IndexOf(' ', StringComparison.Ordinal)]} to {most}";
        }
    }

    private string Shown(Length length) => $"{LengthFormat.Decimal(length, unit)} ({LengthFormat.Decimal(length, Other)})";
}
