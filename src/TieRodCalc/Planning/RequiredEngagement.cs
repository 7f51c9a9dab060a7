using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What decides the required engagement of a joint.</summary>
public enum EngagementSource
{
    /// <summary>The rule in diameters.</summary>
    Rule,

    /// <summary>A length that the job or the rod sets.</summary>
    Job,
}

/// <summary>The engagement that a joint is required to have.</summary>
/// <param name="Required">What counts.</param>
/// <param name="RuleDiameters">The rule in diameters of the male thread that applies where the job sets no length.</param>
/// <param name="GovernedBy">What decides.</param>
public sealed record RequiredEngagement(Length Required, double RuleDiameters, EngagementSource GovernedBy);
