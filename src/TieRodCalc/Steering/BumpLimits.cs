using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>How much a wheel steers itself.</summary>
public enum BumpGrade
{
    /// <summary>Very good.</summary>
    VeryGood,

    /// <summary>Between very good and felt.</summary>
    Fair,

    /// <summary>Felt by the driver.</summary>
    Felt,

    /// <summary>More than that.</summary>
    StronglyFelt,
}

/// <summary>
/// Where the grades begin: toe change at the gauge per inch of travel. The defaults are common practice, no source, for a gauge of
/// about a wheel's width.
/// </summary>
/// <param name="VeryGood">Very good is below it.</param>
/// <param name="Felt">Felt by the driver from here.</param>
/// <param name="StronglyFelt">Strongly felt above it.</param>
/// <param name="Spacing">The spacing of the indicators that they hold for; null: that of the sheet, whatever it is.</param>
public sealed record BumpLimits(Length VeryGood, Length Felt, Length StronglyFelt, Length? Spacing = null)
{
    /// <summary>0.010, 0.020 and 0.030 in per inch of travel.</summary>
    public static BumpLimits Usual { get; } = new(Length.FromInches(0.01), Length.FromInches(0.02), Length.FromInches(0.03));

    /// <summary>The same toe at another spacing of the indicators; unchanged where no spacing is said.</summary>
    public BumpLimits At(Length spacing)
    {
        double factor = Spacing is { } own ? Millimeters.Of(spacing) / Millimeters.Of(own) : 1;
        return factor == 1 ? this : new(VeryGood * factor, Felt * factor, StronglyFelt * factor, spacing);
    }

    /// <summary>The grade of a toe change per inch of travel, its sign left out.</summary>
    public BumpGrade Of(Length perInch)
    {
        double value = Math.Abs(Millimeters.Of(perInch));
        return value < Millimeters.Of(VeryGood) - Millimeters.Negligible ? BumpGrade.VeryGood
            : value < Millimeters.Of(Felt) - Millimeters.Negligible ? BumpGrade.Fair
            : value <= Millimeters.Of(StronglyFelt) + Millimeters.Negligible ? BumpGrade.Felt
            : BumpGrade.StronglyFelt;
    }
}
