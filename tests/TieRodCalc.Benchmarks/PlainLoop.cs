using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Benchmarks;

/// <summary>The first rods of a catalog by trying every combination whose threads match, one after the other.</summary>
internal static class PlainLoop
{
    /// <summary>The ids of the first, in the best order.</summary>
    public static string[] First(RodCandidates candidates, RodRequest request, int top)
    {
        ChoiceBlocks blocks = new(candidates, request, every: true);
        List<(double, double, int, int, int, ChoiceBlock Block)> first = [];
        foreach (ChoiceBlock block in blocks.All)
        {
            foreach (EndLengths inner in block.Inner.Ends)
            {
                foreach (ref readonly EndLengths outer in block.Outer.Ends.AsSpan())
                {
                    if (!block.Fits(inner, outer, out double cut, out double margin))
                    {
                        continue;
                    }

                    double rank = block.Locked + (cut > 0 ? 3 : 0);
                    double metric = Math.Floor((cut > 0 ? cut : margin) / 1e-6 + 0.37) * (cut > 0 ? 1 : -1);
                    if (first.Count == top && (rank, metric).CompareTo((first[^1].Item1, first[^1].Item2)) > 0)
                    {
                        continue;
                    }

                    first.Add((rank, metric, block.Place, inner.Place, outer.Place, block));
                    first.Sort((one, other) => (one.Item1, one.Item2, one.Item3, one.Item4, one.Item5).CompareTo(
                        (other.Item1, other.Item2, other.Item3, other.Item4, other.Item5)));
                    if (first.Count > top)
                    {
                        first.RemoveAt(top);
                    }
                }
            }
        }

        return [.. first.Select(found => Name(blocks.Parts(found.Block, found.Item4, found.Item5)))];
    }

    /// <summary>The ids of a rod's parts.</summary>
    public static string Name(RodParts parts) => $"{parts.Inner.Info.Id} {parts.Sleeve!.Info.Id} {parts.Outer!.Info.Id}";
}
