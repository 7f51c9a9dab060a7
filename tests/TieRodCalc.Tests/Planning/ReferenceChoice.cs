namespace TieRodCalc.Tests.Planning;

/// <summary>A rod that a catalog makes, as trying every combination finds it.</summary>
internal sealed record ReferenceChoice
{
    /// <summary>The rod; of a rod with one threaded joint its inner joint alone.</summary>
    public required RodCase Rod { get; init; }

    public required bool OneJoint { get; init; }

    public required (int Sleeve, int Inner, int Outer) Place { get; init; }

    public required string Inner { get; init; }

    /// <summary>Null where the rod has one threaded joint.</summary>
    public required string? Sleeve { get; init; }

    public required string Outer { get; init; }

    public required NutCase? InnerNut { get; init; }

    public required NutCase? OuterNut { get; init; }

    public required IReadOnlyList<CostCase> Costs { get; init; }

    public required CutPair Least { get; init; }

    /// <summary>The recommended cuts.</summary>
    public required CutPair Cut { get; init; }

    /// <summary>The middle setting at the recommended cuts.</summary>
    public required Setting Setting { get; init; }

    /// <summary>The smallest slack of any limit but the cut over the whole adjustment, at <see cref="Setting"/>.</summary>
    public required double Margin { get; init; }

    public bool IsCut => Least.Total > 0;

    public int LooseJoints => (IsLoose(Rod.Inner) ? 1 : 0) + (!OneJoint && IsLoose(Rod.Outer) ? 1 : 0);

    /// <summary>The sum of the prices; null where one is not said or the currencies differ.</summary>
    public (decimal Amount, string Currency)? Price =>
        Costs.All(cost => cost.Amount is not null) && Costs.Select(cost => cost.Currency).Distinct().Count() == 1
            ? (Costs.Sum(cost => cost.Amount!.Value), Costs[0].Currency)
            : null;

    /// <summary>The sum of the masses, null where one is not said.</summary>
    public decimal? Kilograms => Costs.All(cost => cost.Kilograms is not null) ? Costs.Sum(cost => cost.Kilograms!.Value) : null;

    private static bool IsLoose(JointCase joint) => joint is { Nut: null, Clamp: null };
}
