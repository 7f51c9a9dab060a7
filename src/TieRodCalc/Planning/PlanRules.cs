using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>The rules that a plan keeps to. The defaults are common practice, no source.</summary>
public sealed record PlanRules
{
    /// <summary>The rules of an inch job: mark 1/32 in, allowance 1/16 in, tip gap 3 mm.</summary>
    public static PlanRules Inch { get; } = new()
    {
        Mark = Length.FromInches(0.03125),
        Allowance = Length.FromInches(0.0625),
    };

    /// <summary>The rules of a metric job: mark 0.5 mm, allowance 1.5 mm, tip gap 3 mm.</summary>
    public static PlanRules Metric { get; } = new()
    {
        Mark = Length.FromMillimeters(0.5),
        Allowance = Length.FromMillimeters(1.5),
    };

    /// <summary>Required engagement, or null for the usual rule: 1.5 diameters, 2 where the sleeve is aluminum.</summary>
    public EngagementRule? Engagement { get; init; }

    /// <summary>Required engagement of the inner joint where it differs from <see cref="Engagement"/>, or null.</summary>
    public EngagementRule? InnerEngagement { get; init; }

    /// <summary>Required engagement of the outer joint where it differs from <see cref="Engagement"/>, or null.</summary>
    public EngagementRule? OuterEngagement { get; init; }

    /// <summary>A steering load along the rod to hold the strength of the joints against, above zero, or null.</summary>
    public Force? Load { get; init; }

    /// <summary>Least distance between the tips inside the sleeve, zero or more.</summary>
    public Length TipGap { get; init; } = Length.FromMillimeters(3);

    /// <summary>The grid that a cut is rounded to, above zero.</summary>
    public required Length Mark { get; init; }

    /// <summary>What is cut beyond the least, zero or more.</summary>
    public required Length Allowance { get; init; }

    internal EngagementRule? EngagementAt(RodSide side) =>
        (side == RodSide.Inner ? InnerEngagement : OuterEngagement) ?? Engagement;
}
