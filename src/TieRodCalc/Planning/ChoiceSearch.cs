using TieRodCalc.Parts;
using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>
/// Finds the first so many pairs of all blocks in an order. In the best order the blocks are gone through best first by a bound of
/// what they can reach, and left where no pair of theirs can come before those found; for each inner end a window is laid on the
/// outer ends. Nothing that could be among the first is passed over.
/// </summary>
internal sealed class ChoiceSearch(ChoiceBlocks blocks, ChoiceOrder order, int top)
{
    /// <summary>What is not known comes last.</summary>
    private static readonly (double Group, decimal Value) s_unknown = (double.PositiveInfinity, 0);

    private readonly List<Candidate> _first = [];

    /// <summary>The parts of the first pairs, in their order.</summary>
    public IEnumerable<RodParts> Find()
    {
        if (order == ChoiceOrder.Best)
        {
            for (int locked = 0; locked <= 2 && _first.Count < top; locked++)
            {
                Uncut(locked);
            }

            for (int locked = 0; locked <= 2 && _first.Count < top; locked++)
            {
                Cut(locked);
            }
        }
        else
        {
            All();
        }

        return _first.Select(candidate => blocks.Parts(candidate.Block, candidate.Inner, candidate.Outer));
    }

    /// <summary>
    /// A value compared to 1e-6 mm, as a whole number of them. Values that people give lie on halves, quarters and eighths of it
    /// again and again; the shift keeps what arithmetic adds to them from parting equal ones.
    /// </summary>
    private static double Compared(double value)
    {
        const double Shift = 0.37;
        return Math.Floor(value / Millimeters.Negligible + Shift);
    }

    /// <summary>What a value that is compared as the same is at least.</summary>
    private static double AtLeast(double compared) => (compared - 1) * Millimeters.Negligible;

    /// <summary>Those that need no cut; greatest worst margin first.</summary>
    private void Uncut(int locked)
    {
        foreach (ChoiceBlock block in blocks.All
            .Where(block => block.Locked == locked)
            .OrderByDescending(block => Compared(block.MostMargin))
            .ThenBy(block => block.Place))
        {
            if (Compared(block.MostMargin) < -1 || Passed(block, block.MostMargin))
            {
                // The rest is no better: the blocks come by their bounds.
                break;
            }

            foreach (EndLengths inner in block.Inner.Ends)
            {
                double most = block.MostMarginOf(inner);
                if (Compared(most) < -1 || Passed(block, most, inner.Place))
                {
                    continue;
                }

                double needed = Math.Max(
                    -Millimeters.Negligible, _first.Count < top ? double.NegativeInfinity : AtLeast(-_first[^1].Metric));
                (int from, int to) = block.Window(inner, needed, 0);
                for (int i = from; i < to; i++)
                {
                    ref readonly EndLengths outer = ref block.Outer.Ends[i];
                    if (block.Fits(inner, outer, out double cut, out double margin) && cut == 0)
                    {
                        Offer(new(block, 0, locked, -Compared(margin), inner.Place, outer.Place));
                    }
                }
            }
        }

        // Whether nothing better can come: all that is found is full, and comes before a margin and a place.
        bool Passed(ChoiceBlock block, double margin, int inner = 0) => _first.Count == top
            && new Candidate(block, 0, locked, -Compared(margin), inner, 0).CompareTo(_first[^1]) >= 0;
    }

    /// <summary>Those that must be cut; smallest least total cut first.</summary>
    private void Cut(int locked)
    {
        foreach (ChoiceBlock block in blocks.All.Where(block => block.Locked == locked))
        {
            foreach (EndLengths inner in block.Inner.Ends)
            {
                double most = inner.MostCut + block.Outer.MostCut;
                if (_first.Count == top)
                {
                    most = Math.Min(most, (_first[^1].Metric + 1) * Millimeters.Negligible);
                }

                (int from, int to) = block.Window(inner, 0, most);
                for (int i = from; i < to; i++)
                {
                    ref readonly EndLengths outer = ref block.Outer.Ends[i];
                    if (block.Fits(inner, outer, out double cut, out _) && cut > 0)
                    {
                        Offer(new(block, 3, locked, Compared(cut), inner.Place, outer.Place));
                    }
                }
            }
        }
    }

    /// <summary>Every pair that reaches the length, in another order.</summary>
    private void All()
    {
        foreach (ChoiceBlock block in blocks.All)
        {
            if (order == ChoiceOrder.Margin && _first.Count == top && (decimal)-Compared(block.MostMarginCut) > _first[^1].Primary.Value)
            {
                continue;
            }

            foreach (EndLengths inner in block.Inner.Ends)
            {
                (int from, int to) = block.Window(inner, 0, inner.MostCut + block.Outer.MostCut);
                for (int i = from; i < to; i++)
                {
                    ref readonly EndLengths outer = ref block.Outer.Ends[i];
                    if (block.Fits(inner, outer, out double cut, out double margin))
                    {
                        double metric = cut > 0 ? Compared(cut) : -Compared(margin);
                        Candidate candidate = new(block, cut > 0 ? 3 : 0, block.Locked, metric, inner.Place, outer.Place);
                        Offer(candidate with { Primary = Primary(candidate, cut, margin) });
                    }
                }
            }
        }
    }

    private (double Group, decimal Value) Primary(Candidate candidate, double cut, double margin)
    {
        switch (order)
        {
            case ChoiceOrder.Cut:
                return (0, (decimal)Compared(cut));
            case ChoiceOrder.Margin when cut == 0:
                return (0, (decimal)-Compared(margin));
            case ChoiceOrder.Margin:
                Rod.Make(blocks.Parts(candidate.Block, candidate.Inner, candidate.Outer), out Rod? rod);
                return (0, (decimal)-Compared(Millimeters.Of(RodPlanner.Plan(rod!, blocks.Request).Solution!.WorstMargin)));
            case ChoiceOrder.Mass:
                return Totals.Mass(Infos(candidate).Masses) is { } mass ? (0, Math.Round((decimal)mass.Kilograms, 9)) : s_unknown;
            default:
                return Totals.Price(Infos(candidate).Prices) is { } price ? (PlaceOf(price.Currency), price.Amount) : s_unknown;
        }
    }

    /// <summary>Currencies in the order of their codes.</summary>
    private static double PlaceOf(string currency)
    {
        double place = 0;
        foreach (char letter in currency)
        {
            place = place * (char.MaxValue + 1) + letter;
        }

        return place;
    }

    private (Price?[] Prices, UnitsNet.Mass?[] Masses) Infos(Candidate candidate)
    {
        RodParts like = candidate.Block.Like;
        PartInfo[] parts =
        [
            .. new[]
            {
                blocks.Candidates.Inner[candidate.Inner].Info,
                like.Female,
                like.OneJoint ? null : blocks.Candidates.Outer[candidate.Outer].Info,
                like.InnerNut?.Info,
                like.OuterNut?.Info,
            }.OfType<PartInfo>(),
        ];
        return ([.. parts.Select(part => part.Price)], [.. parts.Select(part => part.Mass)]);
    }

    private void Offer(Candidate candidate)
    {
        if (_first.Count == top && candidate.CompareTo(_first[^1]) >= 0)
        {
            return;
        }

        int place = _first.BinarySearch(candidate);
        _first.Insert(place < 0 ? ~place : place, candidate);
        if (_first.Count > top)
        {
            _first.RemoveAt(top);
        }
    }

    /// <summary>A pair that reaches the length; the one that compares less comes first.</summary>
    private readonly record struct Candidate(ChoiceBlock Block, int Cut, int Locked, double Metric, int Inner, int Outer)
        : IComparable<Candidate>
    {
        /// <summary>What another order compares first: a group, such as the currency, and in it a value.</summary>
        public (double Group, decimal Value) Primary { get; init; }

        // With one joint the socket is the outer end, and comes last.
        private (int, int, int) Places => Block.Like.OneJoint ? (0, Inner, Block.Place) : (Block.Place, Inner, Outer);

        public int CompareTo(Candidate other) =>
            (Primary, Cut + Locked, Metric, Places).CompareTo((other.Primary, other.Cut + other.Locked, other.Metric, other.Places));
    }
}
