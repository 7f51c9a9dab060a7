using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>The engagement that a job asks for: in diameters it replaces the usual rule, as a length it stands for itself.</summary>
public sealed record EngagementRule
{
    private EngagementRule(double? diameters, Length? length) => (InDiameters, AsLength) = (diameters, length);

    /// <summary>Nominal diameters of the male thread, or null.</summary>
    public double? InDiameters { get; }

    /// <summary>A length, or null.</summary>
    public Length? AsLength { get; }

    /// <summary>A rule in nominal diameters of the male thread.</summary>
    /// <exception cref="ArgumentException">The number is not finite or not above zero.</exception>
    public static EngagementRule Diameters(double diameters) => double.IsFinite(diameters) && diameters > 0
        ? new(diameters, null)
        : throw new ArgumentException("The number of diameters must be finite and above zero.", nameof(diameters));

    /// <summary>A length of engagement.</summary>
    /// <exception cref="ArgumentException">The length is not finite or not above zero.</exception>
    public static EngagementRule FromLength(Length length) =>
        new(null, Length.FromMillimeters(Millimeters.Positive(length, nameof(length))));
}
