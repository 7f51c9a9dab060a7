using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>The orders in which rods that reach a length are listed; each breaks its ties by <see cref="Best"/>.</summary>
public enum ChoiceOrder
{
    /// <summary>
    /// Without a cut before cut; all joints locked before one, one before none; without a cut the greater worst margin first, cut the
    /// smaller least total cut first; then the catalog's order of sleeve, inner end, outer end.
    /// </summary>
    Best,

    /// <summary>The greater worst margin first.</summary>
    Margin,

    /// <summary>The cheaper first, each currency by itself; those of which a price is not known last.</summary>
    Price,

    /// <summary>The lighter first; those of which a mass is not known last.</summary>
    Mass,

    /// <summary>The smaller least total cut first.</summary>
    Cut,
}

/// <summary>The rods of a catalog that reach a length.</summary>
/// <param name="Combinations">How many combinations of inner end, sleeve and outer end have threads that match.</param>
/// <param name="WithoutClocking">How many of them have two bent ends and were left out, since no clocking was given.</param>
/// <param name="WithoutNut">How many were left out because a nut that the job names does not fit the end.</param>
/// <param name="Found">The first of those that reach the length, in the order asked for.</param>
public sealed record RodChoices(long Combinations, long WithoutClocking, long WithoutNut, IReadOnlyList<RodChoice> Found);

/// <summary>A rod that reaches the length.</summary>
/// <param name="Rod">The rod.</param>
/// <param name="Plan">Its plan.</param>
public sealed record RodChoice(Rod Rod, RodPlan Plan)
{
    /// <summary>The smallest slack of any limit over the whole wanted adjustment, at the plan's setting.</summary>
    public Length WorstMargin => Plan.Solution!.WorstMargin;

    /// <summary>The least total cut.</summary>
    public Length LeastCut => (Plan.Solution!.InnerCut?.Least ?? Length.Zero) + (Plan.Solution.OuterCut?.Least ?? Length.Zero);

    /// <summary>What all parts cost together; null where a price is not known or the currencies differ.</summary>
    public Price? Price => Totals.Price([.. Parts.Select(part => part.Price)]);

    /// <summary>What all parts weigh together, before a cut; null where a mass is not known.</summary>
    public Mass? Mass => Totals.Mass([.. Parts.Select(part => part.Mass)]);

    private IEnumerable<PartInfo> Parts => new[]
    {
        Rod.Parts.Inner.Info, Rod.Parts.Sleeve?.Info, Rod.Parts.Outer?.Info, Rod.Parts.Socket?.Info, Rod.Parts.InnerNut?.Info,
        Rod.Parts.OuterNut?.Info,
    }.OfType<PartInfo>();
}

/// <summary>Sums of what parts carry.</summary>
internal static class Totals
{
    /// <summary>The sum; null where one is not known or the currencies differ.</summary>
    public static Price? Price(ReadOnlySpan<Price?> prices)
    {
        decimal sum = 0;
        foreach (Price? price in prices)
        {
            if (price is null || price.Currency != prices[0]!.Currency)
            {
                return null;
            }

            sum += price.Amount;
        }

        return new Price(sum, prices[0]!.Currency);
    }

    /// <summary>The sum; null where one is not known.</summary>
    public static Mass? Mass(ReadOnlySpan<Mass?> masses)
    {
        double sum = 0;
        foreach (Mass? mass in masses)
        {
            if (mass is not { } known)
            {
                return null;
            }

            sum += known.Kilograms;
        }

        return UnitsNet.Mass.FromKilograms(sum);
    }
}
