using TieRodCalc.Parts;
using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>
/// Finds the first so many pairs of all blocks in an order. In the best order the blocks are gone through best first by a bound of
/// what they can reach, and left where no pair of theirs can come before those found; for each inner end a window is laid on the
/// outer ends. The other orders go by bounds of their own. Nothing that could be among the first is passed over.
/// </summary>
internal sealed class ChoiceSearch(ChoiceBlocks blocks, ChoiceOrder order, int top)
{
    private readonly List<Candidate> _first = [];

    /// <summary>How many blocks, inner ends and pairs were looked at.</summary>
    public long LookedAt { get; private set; }

    /// <summary>The parts of the first pairs, in their order.</summary>
    public IEnumerable<RodParts> Find()
    {
        switch (order)
        {
            case ChoiceOrder.Margin:
                ByMargin();
                break;
            case ChoiceOrder.Price:
            case ChoiceOrder.Mass:
                ByCost(new ChoiceCosts(blocks.Candidates, order == ChoiceOrder.Mass));
                break;
            default:
                ByCut();
                break;
        }

        return _first.Select(candidate => blocks.Parts(candidate.Block, candidate.Inner, candidate.Outer));
    }

    /// <summary>
    /// In both orders what needs no cut comes first, locked before not locked; what is cut then goes by the locking first in the best
    /// order, and by the cut first in the other.
    /// </summary>
    private void ByCut()
    {
        for (int locked = 0; locked <= 2 && _first.Count < top; locked++)
        {
            Uncut(locked);
        }

        for (int locked = 0; locked <= 2 && order == ChoiceOrder.Best && _first.Count < top; locked++)
        {
            Cut(blocks.All.Where(block => block.Locked == locked));
        }

        if (order == ChoiceOrder.Cut && _first.Count < top)
        {
            Cut(blocks.All);
        }
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

            LookedAt++;
            foreach (EndLengths inner in block.Inner.Ends)
            {
                double most = block.MostMarginOf(inner);
                if (Compared(most) < -1 || Passed(block, most, inner.Place))
                {
                    continue;
                }

                double needed = Math.Max(
                    -Millimeters.Negligible, _first.Count < top ? double.NegativeInfinity : AtLeast(-_first[^1].Metric));
                foreach (ref readonly EndLengths outer in Window(block, inner, needed, 0))
                {
                    if (block.Fits(inner, outer, out double cut, out double margin) && cut == 0)
                    {
                        Offer(Found(block, inner, outer, cut, margin));
                    }
                }
            }
        }

        // Whether nothing better can come: all that is found is full, and comes before a margin and a place.
        bool Passed(ChoiceBlock block, double margin, int inner = 0) => _first.Count == top
            && new Candidate(block, 0, locked, -Compared(margin), inner, 0).CompareTo(_first[^1]) >= 0;
    }

    /// <summary>Those that must be cut; smallest least total cut first.</summary>
    private void Cut(IEnumerable<ChoiceBlock> among)
    {
        foreach (ChoiceBlock block in among)
        {
            foreach (EndLengths inner in block.Inner.Ends)
            {
                double most = inner.MostCut + block.Outer.MostCut;
                if (_first.Count == top)
                {
                    most = Math.Min(most, (_first[^1].Metric + 1) * Millimeters.Negligible);
                }

                foreach (ref readonly EndLengths outer in Window(block, inner, 0, most))
                {
                    if (block.Fits(inner, outer, out double cut, out _) && cut > 0)
                    {
                        Candidate candidate = Found(block, inner, outer, cut, 0);
                        Offer(order == ChoiceOrder.Cut ? candidate with { Primary = new(0, (decimal)candidate.Metric) } : candidate);
                    }
                }
            }
        }
    }

    /// <summary>All that reach the length, the greatest margin first, whether cut or not.</summary>
    private void ByMargin()
    {
        foreach (ChoiceBlock block in blocks.All.OrderByDescending(block => block.MostMarginCut))
        {
            if (IsPassed(OfMargin(block.MostMarginCut)))
            {
                break;
            }

            LookedAt++;
            foreach (EndLengths inner in block.Inner.Ends)
            {
                foreach (ref readonly EndLengths outer in Window(block, inner, 0, inner.MostCut + block.Outer.MostCut))
                {
                    // The margin of a pair that is cut follows from its plan; it is planned where it may be one of the first.
                    if (block.Fits(inner, outer, out double cut, out double margin)
                        && !IsPassed(OfMargin(cut > 0 ? margin + Millimeters.Negligible : margin)))
                    {
                        Offer(Found(block, inner, outer, cut, margin) with
                        {
                            Primary = OfMargin(cut > 0 ? PlannedMargin(block, inner, outer) : margin),
                        });
                    }
                }
            }
        }
    }

    /// <summary>All that reach the length, the least price or mass first.</summary>
    private void ByCost(ChoiceCosts costs)
    {
        foreach ((ChoiceBlock block, Cost least) in blocks.All.Select(block => (block, costs.AtLeast(block))).OrderBy(bound => bound.Item2))
        {
            if (IsPassed(least))
            {
                break;
            }

            LookedAt++;
            Cost shared = costs.Of(block);
            foreach (EndLengths inner in block.Inner.Ends)
            {
                if (IsPassed(costs.AtLeast(block, shared, inner.Place)))
                {
                    continue;
                }

                foreach (ref readonly EndLengths outer in Window(block, inner, 0, inner.MostCut + block.Outer.MostCut))
                {
                    Cost cost = costs.Of(block, shared, inner.Place, outer.Place);
                    if (!IsPassed(cost) && block.Fits(inner, outer, out double cut, out double margin))
                    {
                        Offer(Found(block, inner, outer, cut, margin) with { Primary = cost });
                    }
                }
            }
        }
    }

    private ReadOnlySpan<EndLengths> Window(ChoiceBlock block, in EndLengths inner, double margin, double cut)
    {
        ReadOnlySpan<EndLengths> window = block.Window(inner, margin, cut);
        LookedAt += 1 + window.Length;
        return window;
    }

    /// <summary>Whether all that is wanted is found and comes before what is at least so much.</summary>
    private bool IsPassed(Cost least) => _first.Count == top && least.CompareTo(_first[^1].Primary) > 0;

    private static Cost OfMargin(double margin) => new(0, (decimal)-Compared(margin));

    private double PlannedMargin(ChoiceBlock block, in EndLengths inner, in EndLengths outer)
    {
        Rod.Make(blocks.Parts(block, inner.Place, outer.Place), out Rod? rod);
        return Millimeters.Of(RodPlanner.Plan(rod!, blocks.Request).Solution!.WorstMargin);
    }

    private static Candidate Found(ChoiceBlock block, in EndLengths inner, in EndLengths outer, double cut, double margin) => new(
        block, cut > 0 ? 3 : 0, block.Locked, cut > 0 ? Compared(cut) : -Compared(margin), inner.Place, outer.Place);

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
        /// <summary>What another order than the best one compares first.</summary>
        public Cost Primary { get; init; }

        // With one joint the socket is the outer end, and comes last.
        private (int, int, int) Places => Block.Like.OneJoint ? (0, Inner, Block.Place) : (Block.Place, Inner, Outer);

        public int CompareTo(Candidate other) =>
            (Primary, Cut + Locked, Metric, Places).CompareTo((other.Primary, other.Cut + other.Locked, other.Metric, other.Places));
    }
}
