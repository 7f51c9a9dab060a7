using TieRodCalc.Parts;

namespace TieRodCalc.Planning;

/// <summary>A price or a mass: a group, as that of a currency, and in it a value.</summary>
/// <param name="Group">The group; without end where the value is not known, so that it comes last.</param>
/// <param name="Value">The value.</param>
internal readonly record struct Cost(double Group, decimal Value) : IComparable<Cost>
{
    /// <summary>What is not known.</summary>
    public static Cost Unknown { get; } = new(double.PositiveInfinity, 0);

    /// <summary>The sum; not known where one is not, or the currencies differ.</summary>
    public static Cost operator +(Cost one, Cost other) =>
        one.Group == other.Group ? one with { Value = one.Value + other.Value } : Unknown;

    public int CompareTo(Cost other) => (Group, Value).CompareTo((other.Group, other.Value));
}

/// <summary>What the parts of a choice cost or weigh, each looked up once.</summary>
internal sealed class ChoiceCosts(RodCandidates candidates, bool mass)
{
    /// <summary>Masses are compared to the microgram, and so are sums of pounds that are equal.</summary>
    private const int MassDigits = 9;

    private readonly Cost[] _inner = [.. candidates.Inner.Select(end => Of(end.Info, mass))];
    private readonly Cost[] _outer = [.. candidates.Outer.Select(end => Of(end.Info, mass))];
    private readonly Dictionary<EndGroup, decimal> _leastOuter = [];

    /// <summary>What all pairs of a block have in common.</summary>
    public Cost Of(ChoiceBlock block)
    {
        Cost cost = Of(block.Like.Female, mass);
        cost = block.Like.InnerNut is { } inner ? cost + Of(inner.Info, mass) : cost;
        return block.Like.OuterNut is { } outer ? cost + Of(outer.Info, mass) : cost;
    }

    /// <summary>What no pair of a block is below.</summary>
    public Cost AtLeast(ChoiceBlock block)
    {
        Cost shared = Of(block);
        return Compared(shared with { Value = shared.Value + block.Inner.Ends.Min(end => _inner[end.Place].Value) + LeastOuter(block) });
    }

    /// <summary>What no pair of a block with an inner end is below.</summary>
    public Cost AtLeast(ChoiceBlock block, Cost shared, int inner)
    {
        Cost cost = shared + _inner[inner];
        return Compared(cost with { Value = cost.Value + LeastOuter(block) });
    }

    /// <summary>The whole cost of a pair.</summary>
    public Cost Of(ChoiceBlock block, Cost shared, int inner, int outer)
    {
        Cost cost = shared + _inner[inner];
        return Compared(block.Like.OneJoint ? cost : cost + _outer[outer]);
    }

    private Cost Compared(Cost cost) => !double.IsFinite(cost.Group) ? Cost.Unknown
        : mass ? cost with { Value = Math.Round(cost.Value, MassDigits) }
        : cost;

    private static Cost Of(PartInfo part, bool mass) => mass
        ? part.Mass is { } known ? new(0, (decimal)known.Kilograms) : Cost.Unknown
        : part.Price is { } price ? new(PlaceOf(price.Currency), price.Amount) : Cost.Unknown;

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

    /// <summary>The least of a group's outer ends, of any currency: a sum of two currencies comes last anyway.</summary>
    private decimal LeastOuter(ChoiceBlock block)
    {
        if (block.Like.OneJoint)
        {
            return 0;
        }

        if (!_leastOuter.TryGetValue(block.Outer, out decimal least))
        {
            least = block.Outer.Ends.Min(end => _outer[end.Place].Value);
            _leastOuter.Add(block.Outer, least);
        }

        return least;
    }
}
