using TieRodCalc.Steering;

namespace TieRodCalc.Planning;

/// <summary>What to turn to bring the toe of a car from what it is to what is wanted.</summary>
public sealed record ToePlan
{
    /// <summary>Toe now.</summary>
    public required WheelToes Now { get; init; }

    /// <summary>Toe wanted, as it was asked for.</summary>
    public required WheelToes Want { get; init; }

    /// <summary>What to do at each rod that is to be turned, left before right.</summary>
    public required IReadOnlyList<ToeMove> Moves { get; init; }

    /// <summary>The rod that is not turned, as it is; null where there is none or it was not given.</summary>
    public required ToeMove? Stays { get; init; }

    /// <summary>Toe with the rounded turns made; null where a move cannot be made.</summary>
    public required WheelToes? After { get; init; }

    /// <summary>
    /// Toe with what can be turned of each rod; null where that is not known, or where <see cref="After"/> says it.
    /// </summary>
    public required WheelToes? Reachable { get; init; }

    /// <summary>Warnings, and what was taken for granted.</summary>
    public required IReadOnlyList<ToeWarning> Warnings { get; init; }

    /// <summary>True where every move can be made and keeps all limits, and the rod that is not turned keeps its own.</summary>
    public bool Holds => Moves.All(move => move.Holds) && Stays is not { PastALimit: true };
}
