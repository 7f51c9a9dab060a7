using TieRodCalc.Planning;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>The rules that a job or a rod says; null where it is silent.</summary>
internal sealed record Rules(EngagementRule? Engagement, Length? TipGap, Length? Mark, Length? Allowance, Force? Load)
{
    /// <summary>Reads the rules of a job or a rod.</summary>
    /// <param name="map">The rules, or null where nothing is said.</param>
    public static Rules Read(MapReader? map)
    {
        if (map is null)
        {
            return new Rules(null, null, null, null, null);
        }

        return new Rules(
            map.Object("engagement", ValueText.ParseEngagement),
            map.Exact("tip_gap", Least.Zero),
            map.Exact("mark", Least.AboveZero),
            map.Exact("allowance", Least.Zero),
            map.Value("load", ValueText.ParseForce));
    }

    /// <summary>These rules where they say something, others where not.</summary>
    public PlanRules Over(PlanRules others) => others with
    {
        Engagement = Engagement ?? others.Engagement,
        TipGap = TipGap ?? others.TipGap,
        Mark = Mark ?? others.Mark,
        Allowance = Allowance ?? others.Allowance,
        Load = Load ?? others.Load,
    };
}
