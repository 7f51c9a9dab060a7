using UnitsNet;

namespace TieRodCalc.Threads;

/// <summary>What happens when a male thread is turned into a female one.</summary>
public enum FitOutcome
{
    /// <summary>Same form, diameter, pitch and hand: they go together.</summary>
    GoesTogether,

    /// <summary>No full turn goes in, or the hands differ.</summary>
    DoesNotStart,

    /// <summary>Some turns go in, then the error of the pitch has used up the clearance of the flanks.</summary>
    StartsAndBinds,

    /// <summary>
    /// It goes in by half a diameter or more, so that a jam nut goes on all the way, and holds by what is left of the overlap: the
    /// most dangerous, since it looks right.
    /// </summary>
    GoesInLoose,
}

/// <summary>
/// How a male thread goes into a female one, from the limits of size of both (docs/threads.md). A ridge of the male has the play
/// <c>(Pf - Pm)/2 + 0.57735 (D2 - d2)</c> in the groove of the female, and every turn takes <c>|Pf - Pm|</c> of it.
/// </summary>
/// <param name="Outcome">What happens.</param>
/// <param name="LeastTurns">
/// Turns from where the full threads catch until it binds, at the tightest limits; null where it never does.
/// </param>
/// <param name="MostTurns">The same at the loosest limits.</param>
/// <param name="LeastOverlap">How far the crests overlap on each side, at the loosest limits; zero where they do not touch.</param>
/// <param name="MostOverlap">The same at the tightest limits.</param>
public sealed record ThreadFit(FitOutcome Outcome, double? LeastTurns, double? MostTurns, Length LeastOverlap, Length MostOverlap)
{
    /// <summary>What is called all the way in: the thickness of a thin nut (ISO 4035), half a diameter.</summary>
    private const double Diameters = 0.5;

    /// <summary>How two threads go together.</summary>
    /// <param name="male">The external thread; a class that is not said is taken as 2A or 6g.</param>
    /// <param name="female">The internal thread; a class that is not said is taken as 2B or 6H.</param>
    /// <returns>Null where the standard has no such class for one of them.</returns>
    /// <exception cref="ArgumentNullException">A thread is null.</exception>
    public static ThreadFit? Of(ThreadDesignation male, ThreadDesignation female)
    {
        ArgumentNullException.ThrowIfNull(male);
        ArgumentNullException.ThrowIfNull(female);
        return ThreadLimits.Of(male, ThreadGender.External) is { } external && ThreadLimits.Of(female, ThreadGender.Internal) is { } @internal
            ? Of(external, @internal)
            : null;
    }

    internal static ThreadFit Of(ThreadLimits male, ThreadLimits female)
    {
        SizeLimits external = male.Printed;
        SizeLimits @internal = female.Printed;
        bool sameHand = male.Thread.Hand == female.Thread.Hand;
        double turnsInFull = Diameters * male.Member.DiameterMm / male.Member.PitchMm;
        double most = sameHand ? Turns(male, female, @internal.PitchMost - external.PitchLeast) : 0;
        bool crestsClear = @internal.MajorLeast >= external.MajorMost && @internal.MinorLeast >= external.MinorMost;
        double least = crestsClear && sameHand ? Turns(male, female, @internal.PitchLeast - external.PitchMost) : 0;
        FitOutcome outcome = !sameHand ? FitOutcome.DoesNotStart
            : male.Thread.Size.Matches(female.Thread.Size) ? FitOutcome.GoesTogether
            : most < 1 ? FitOutcome.DoesNotStart
            : most < turnsInFull ? FitOutcome.StartsAndBinds
            : FitOutcome.GoesInLoose;
        return new(
            outcome,
            Counted(least),
            Counted(most),
            Overlap(external.MajorLeast, @internal.MinorMost),
            Overlap(external.MajorMost, @internal.MinorLeast));
    }

    private static double Turns(ThreadLimits male, ThreadLimits female, double clearance)
    {
        double Pm = male.Member.PitchMm;
        double Pf = female.Member.PitchMm;
        double play = (Pf - Pm) / 2 + ThreadProfile.FlankTangent * clearance;
        double error = Math.Abs(Pf - Pm);
        return play < 0 ? 0 : error > Millimeters.Negligible ? play / error : double.PositiveInfinity;
    }

    private static double? Counted(double turns) => double.IsFinite(turns) ? turns : null;

    private static Length Overlap(double male, double female) => Length.FromMillimeters(Math.Max(0, (male - female) / 2));
}
