using TieRodCalc.Planning;

namespace TieRodCalc.Text;

/// <summary>The sentences that say what tolerances leave of a plan.</summary>
/// <param name="unit">The unit that lengths are told in first.</param>
public sealed class WorstCaseSentences(LengthDisplay unit)
{
    /// <summary>Whether the plan holds in the worst case.</summary>
    public string Of(WorstCase worst)
    {
        ArgumentNullException.ThrowIfNull(worst);
        if (worst is { TolerancesStated: false, Slack: null })
        {
            return "No dimension of the parts carries a tolerance, and nothing is cut: nominal dimensions were trusted.";
        }

        string off = worst.TolerancesStated
            ? "every dimension off by its tolerance and every cut by one mark"
            : "every cut off by one mark";
        if (worst.PlanIsSafe)
        {
            return $"It holds with {off}.";
        }

        string missed = LengthFormat.Both(-worst.Slack!.Value, unit, LengthRounding.Up);
        return $"It holds only at nominal dimensions: with {off} it misses by {missed}. {Better(worst)}";
    }

    private string Better(WorstCase worst)
    {
        string[] cuts =
        [
            .. new[] { (worst.InnerCut, "inner"), (worst.OuterCut, "outer") }
                .Where(cut => cut.Item1 > UnitsNet.Length.Zero)
                .Select(cut => $"{LengthFormat.Both(cut.Item1!.Value, unit)} off the {cut.Item2} end"),
        ];
        return cuts.Length > 0 ? $"It would be safe with {string.Join(" and ", cuts)}."
            : worst.Dimensions.Any(effect => effect.Needed is not null)
                ? "No cut is safe then; the dimensions below must be measured better."
            : "No cut is safe then, and measuring better does not change that.";
    }

    /// <summary>One dimension that the plan depends on.</summary>
    public string Of(ToleranceEffect effect)
    {
        ArgumentNullException.ThrowIfNull(effect);
        string needed = effect.Needed is { } better
            ? $"; it holds if known to ± {LengthFormat.Decimal(better, unit, LengthRounding.Down)}, and the others named as much better"
            : string.Empty;
        return $"± {LengthFormat.Both(effect.PlusMinus, unit)}, takes {LengthFormat.Decimal(effect.Takes, unit)}{needed}";
    }
}
