using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What decides the required engagement of a joint.</summary>
public enum EngagementSource
{
    /// <summary>The rule in diameters.</summary>
    Rule,

    /// <summary>A length that the job or the rod sets.</summary>
    Job,

    /// <summary>The strength of the parts: with less the threads would strip before the male breaks.</summary>
    Strength,
}

/// <summary>
/// The engagement that a joint is required to have: the larger of what the job or the rule asks for and of what strength does.
/// </summary>
/// <param name="RuleDiameters">The rule in diameters of the male thread, the usual one or the job's.</param>
/// <param name="Rule">The same as a length.</param>
/// <param name="Job">The length that the job sets, or null; it stands in place of the rule.</param>
/// <param name="Strength">What strength asks for, or null where a strength is not known.</param>
public sealed record RequiredEngagement(double RuleDiameters, Length Rule, Length? Job, StrengthEngagement? Strength)
{
    /// <summary>What counts.</summary>
    public Length Required => GovernedBy == EngagementSource.Strength ? Strength!.Required : Asked;

    /// <summary>What decides; strength where it asks for more than the rule or the job.</summary>
    public EngagementSource GovernedBy =>
        Strength is { } strength && Millimeters.Of(strength.Required) > Millimeters.Of(Asked) ? EngagementSource.Strength
        : Job is null ? EngagementSource.Rule
        : EngagementSource.Job;

    /// <summary>What the job asks for, or else the rule.</summary>
    public Length Asked => Job ?? Rule;
}
