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
        string off = worst.TolerancesStated
            ? "every dimension off by its tolerance and every cut by one mark"
            : "every cut off by one mark";
        if (worst.PlanIsSafe)
        {
            return $"It holds with {off}.";
        }

        string missed = LengthFormat.Both(-worst.Slack!.Value, unit, LengthRounding.Up);
        string safe = worst is { LeastCut: { } least, InnerCut: { } inner, OuterCut: { } outer }
            ? $"A cut of {LengthFormat.Both(least, unit, LengthRounding.Up)} in all or more would be safe: "
                + $"{LengthFormat.Both(inner, unit)} off the inner end, {LengthFormat.Both(outer, unit)} off the outer end."
            : "No cut is safe then; the parts below must be measured better.";
        return $"It holds only at nominal dimensions: with {off} it misses by {missed}. {safe}";
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
