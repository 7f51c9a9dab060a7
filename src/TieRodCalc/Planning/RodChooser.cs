using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>Chooses the parts of a rod from catalogs.</summary>
public static class RodChooser
{
    /// <summary>
    /// The first of all combinations of the candidates that reach the length with the wanted adjustment, as if every one were planned:
    /// combinations are joined on their threads, and what cannot come before those found already is passed over unseen.
    /// </summary>
    /// <param name="candidates">What to choose from.</param>
    /// <param name="request">What is wanted.</param>
    /// <param name="order">The order.</param>
    /// <param name="top">How many are wanted, one or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">None is wanted.</exception>
    /// <exception cref="ArgumentException">A length of the request is negative or not finite.</exception>
    public static RodChoices Choose(RodCandidates candidates, RodRequest request, ChoiceOrder order, int top)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        ArgumentNullException.ThrowIfNull(request);
        ArgumentOutOfRangeException.ThrowIfLessThan(top, 1);
        ChoiceBlocks blocks = new(candidates, request);
        List<RodChoice> found = [];
        foreach (RodParts parts in new ChoiceSearch(blocks, order, top).Find())
        {
            Rod.Make(parts, out Rod? rod);
            found.Add(new(rod!, RodPlanner.Plan(rod!, request)));
        }

        return new RodChoices(blocks.Combinations, blocks.WithoutClocking, blocks.WithoutNut, found);
    }
}
