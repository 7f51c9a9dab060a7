using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>Counts the turns that bring the toe of a car from what it is to what is wanted.</summary>
public static class ToePlanner
{
    /// <summary>
    /// What to turn at each rod, from exact geometry; the limits are those of the plan, at the setting after the move and on the
    /// way to it.
    /// </summary>
    /// <param name="request">Toe now and wanted, and the rods on the car.</param>
    /// <exception cref="ArgumentException">
    /// A rod that the share asks for is missing, a rod is neither of the two kinds or both, its present length cannot be had, an
    /// angle is not below 90 degrees, or <see cref="RodPlanner.Plan"/> refuses its request.
    /// </exception>
    public static ToePlan Plan(ToeRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        foreach (Angle toe in (ReadOnlySpan<Angle>)[request.Now.Left, request.Now.Right, request.Want.Left, request.Want.Right])
        {
            // The total goes by sines, which are those of another wheel from a right angle on.
            if (!(Math.Abs(toe.Radians) < Math.PI / 2))
            {
                throw new ArgumentException("Toe must lie between -90 and 90 degrees.", nameof(request));
            }
        }

        List<ToeMove> moves = [];
        ToeMove? stays = null;
        foreach (CarSide side in (ReadOnlySpan<CarSide>)[CarSide.Left, CarSide.Right])
        {
            if (Turns(request.Share, side))
            {
                ToeRod rod = (side == CarSide.Left ? request.Left : request.Right)
                    ?? throw new ArgumentException($"The rod of the {side} wheel is missing.", nameof(request));
                Angle? want = request.Share == ToeShare.BothRods
                    ? request.Want[side]
                    : request.Now.AloneFor(side, request.Want);
                moves.Add(new ToeMoving(side, rod, request.Now[side]).To(want));
            }
            else if ((side == CarSide.Left ? request.Left : request.Right) is { } other)
            {
                stays = new ToeMoving(side, other, request.Now[side]).To(request.Now[side]);
            }
        }

        WheelToes? after = Toes(request.Now, moves, move => move.After);
        return new ToePlan
        {
            Now = request.Now,
            Want = request.Want,
            Moves = moves,
            Stays = stays,
            Warnings = ToeWarnings.Of(request, moves, stays),
            After = after,
            Reachable = after is null ? Toes(request.Now, moves, move => move.After ?? move.Refusal?.ReachableToe) : null,
        };
    }

    private static WheelToes? Toes(WheelToes now, List<ToeMove> moves, Func<ToeMove, Angle?> toeOf)
    {
        WheelToes? toes = now;
        foreach (ToeMove move in moves)
        {
            toes = toeOf(move) is { } toe ? toes?.With(move.Side, toe) : null;
        }

        return toes;
    }

    private static bool Turns(ToeShare share, CarSide side) =>
        share == ToeShare.BothRods || share == ToeShare.LeftOnly == (side == CarSide.Left);
}
