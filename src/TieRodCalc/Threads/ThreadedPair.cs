using UnitsNet;

namespace TieRodCalc.Threads;

/// <summary>What is known of the wall around an internal thread.</summary>
/// <param name="Width">Width across the flats of a hexagon, or 0.95 of the diameter of a round; null where it is not known.</param>
/// <param name="Slit">Whether it is slit, as where a clamp closes it.</param>
public sealed record FemaleWall(Length? Width, bool Slit = false)
{
    /// <summary>Nothing is known.</summary>
    public static FemaleWall Unknown { get; } = new(Width: null);
}

/// <summary>What gives way when a pair of threads is pulled apart.</summary>
public enum GivesWay
{
    /// <summary>The male part breaks in its thread.</summary>
    MaleBreaks,

    /// <summary>The male thread strips.</summary>
    MaleStrips,

    /// <summary>The female thread strips.</summary>
    FemaleStrips,
}

/// <summary>The engagement that the strengths of a pair ask for.</summary>
/// <param name="Required">At this engagement the male breaks before either thread strips.</param>
/// <param name="StrengthRatio"><c>J</c>: above 1 the female thread is the weaker one.</param>
/// <param name="Dilation"><c>C1</c>, or null where it was not computed.</param>
/// <param name="MaleBending"><c>C2</c>, or null where it was not computed.</param>
/// <param name="FemaleBending"><c>C3</c>, or null where it was not computed.</param>
/// <param name="Caveats">What was left out.</param>
public sealed record StrengthEngagement(
    Length Required, double StrengthRatio, double? Dilation, double? MaleBending, double? FemaleBending, StrengthCaveats Caveats);

/// <summary>The loads, pulled once and steadily along the axis, at which a pair of threads gives way.</summary>
/// <param name="Tensile">Breaks the male in its thread.</param>
/// <param name="MaleStrip">Strips the male thread.</param>
/// <param name="FemaleStrip">Strips the female thread.</param>
/// <param name="Caveats">What was left out.</param>
public sealed record PairLoads(Force Tensile, Force MaleStrip, Force FemaleStrip, StrengthCaveats Caveats)
{
    /// <summary>
    /// Two loads that differ by no more than this are one: at the required engagement breaking and stripping come together, and only
    /// what arithmetic leaves tells them apart.
    /// </summary>
    private const double Same = 1 + 1e-9;

    /// <summary>Which comes first; the male's breaking where they come together.</summary>
    public GivesWay First => Tensile.Newtons <= Math.Min(MaleStrip.Newtons, FemaleStrip.Newtons) * Same ? GivesWay.MaleBreaks
        : MaleStrip.Newtons <= FemaleStrip.Newtons * Same ? GivesWay.MaleStrips
        : GivesWay.FemaleStrips;
}

/// <summary>
/// A male and a female thread of the same size, at their loosest limits: areas, the engagement that strength asks for, and the
/// loads at which they give way (FED-STD-H28/2B, ASME B1.1 appendix B; docs/threads.md). Areas are from the limits before they are
/// rounded to the printed ones.
/// </summary>
public sealed record ThreadedPair
{
    private readonly PairStrength _strength;

    private ThreadedPair(ThreadLimits external, ThreadLimits @internal, in PairStrength strength)
    {
        External = external;
        Internal = @internal;
        _strength = strength;
    }

    /// <summary>The male's limits.</summary>
    public ThreadLimits External { get; }

    /// <summary>The female's limits.</summary>
    public ThreadLimits Internal { get; }

    /// <summary>Tensile stress area of the male.</summary>
    public Area StressArea => Area.FromSquareMillimeters(_strength.StressArea);

    /// <summary>Shear area of the male thread at one millimeter of engagement.</summary>
    public Area MaleShearAreaPerMillimeter => Area.FromSquareMillimeters(_strength.MaleShear);

    /// <summary>Shear area of the female thread at one millimeter of engagement.</summary>
    public Area FemaleShearAreaPerMillimeter => Area.FromSquareMillimeters(_strength.FemaleShear);

    /// <summary>A pair.</summary>
    /// <param name="male">The external thread.</param>
    /// <param name="female">The internal thread.</param>
    /// <returns>
    /// Null where the standard has no such class for one of them, or where they do not meet at their loosest limits.
    /// </returns>
    /// <exception cref="ArgumentException">Form, diameter or pitch differ.</exception>
    public static ThreadedPair? Of(ThreadDesignation male, ThreadDesignation female)
    {
        ArgumentNullException.ThrowIfNull(male);
        ArgumentNullException.ThrowIfNull(female);
        if (!male.Size.Matches(female.Size))
        {
            throw new ArgumentException("The threads of a pair have one form, diameter and pitch.", nameof(female));
        }

        if (ThreadLimits.Of(male, ThreadGender.External) is not { } external
            || ThreadLimits.Of(female, ThreadGender.Internal) is not { } @internal)
        {
            return null;
        }

        var strength = PairStrength.Of(external.Member, external.Member.Exact!.Value, @internal.Member.Exact!.Value);
        return strength.Holds ? new(external, @internal, strength) : null;
    }

    /// <summary>The engagement at which the male breaks before either thread strips.</summary>
    /// <param name="maleTensile">Tensile strength of the male, above zero.</param>
    /// <param name="femaleTensile">Tensile strength of the female, above zero.</param>
    /// <param name="wall">What is known of the wall around the female thread.</param>
    /// <exception cref="ArgumentException">A strength or the width is not finite or not above zero.</exception>
    public StrengthEngagement RequiredEngagement(Pressure maleTensile, Pressure femaleTensile, FemaleWall wall)
    {
        double ratio = Ratio(maleTensile, femaleTensile);
        StripFactors factors = Factors(ratio, wall);
        bool bends = wall.Width is not null;
        return new(
            Length.FromMillimeters(_strength.RequiredEngagement(ratio, factors)),
            ratio,
            DilationOf(wall),
            bends && 1 / ratio < StripFactors.StrongFemale ? factors.MaleBending : null,
            bends && 1 / ratio > StripFactors.WeakFemale ? factors.FemaleBending : null,
            factors.Caveats);
    }

    /// <summary><c>C1</c>: how much of its strength the dilation of the wall leaves a pair; null where it is not computed.</summary>
    public double? DilationOf(FemaleWall wall)
    {
        StripFactors factors = Factors(1, wall);
        const StrengthCaveats Outside = StrengthCaveats.OutsideUnknown | StrengthCaveats.SleeveTooThin | StrengthCaveats.SleeveSlit;
        return (factors.Caveats & Outside) == 0 ? factors.Dilation : null;
    }

    /// <summary>The load that breaks the male in its thread.</summary>
    /// <param name="maleTensile">Tensile strength of the male, above zero; above 100 ksi the smaller stress area counts.</param>
    /// <exception cref="ArgumentException">The strength is not finite or not above zero.</exception>
    public Force TensileLoad(Pressure maleTensile)
    {
        double mpa = MPa(maleTensile);
        return Force.FromNewtons(mpa * _strength.TensileArea(mpa));
    }

    /// <summary>The loads at which the pair gives way.</summary>
    /// <param name="maleTensile">Tensile strength of the male, above zero.</param>
    /// <param name="femaleTensile">Tensile strength of the female, above zero.</param>
    /// <param name="engaged">Engaged thread, zero or more.</param>
    /// <param name="wall">What is known of the wall around the female thread.</param>
    /// <exception cref="ArgumentException">A strength or a length is not finite or out of range.</exception>
    public PairLoads Loads(Pressure maleTensile, Pressure femaleTensile, Length engaged, FemaleWall wall)
    {
        StripFactors factors = Factors(Ratio(maleTensile, femaleTensile), wall);
        double length = Millimeters.NotNegative(engaged, nameof(engaged));
        return new(
            TensileLoad(maleTensile),
            Force.FromNewtons(_strength.MaleStrip(MPa(maleTensile), length, factors)),
            Force.FromNewtons(_strength.FemaleStrip(MPa(femaleTensile), length, factors)),
            factors.Caveats);
    }

    private double Ratio(Pressure maleTensile, Pressure femaleTensile) => _strength.Ratio(MPa(maleTensile), MPa(femaleTensile));

    private StripFactors Factors(double ratio, FemaleWall wall)
    {
        ArgumentNullException.ThrowIfNull(wall);
        double? width = wall.Width is { } known ? Millimeters.Positive(known, nameof(wall)) / External.Member.DiameterMm : null;
        var factors = StripFactors.Of(width, wall.Slit, ratio);
        return External.BeyondTables || Internal.BeyondTables
            ? factors with { Caveats = factors.Caveats | StrengthCaveats.BeyondTables }
            : factors;
    }

    private static double MPa(Pressure strength)
    {
        double value = strength.Megapascals;
        return double.IsFinite(value) && value > 0
            ? value
            : throw new ArgumentException("A strength must be finite and above zero.", nameof(strength));
    }
}
