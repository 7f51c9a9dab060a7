using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What turns of the sleeve do from the setting, in the direction that lengthens; exact, not linear.</summary>
internal readonly struct TurnEffects(RodRequest request, RodDimensions rod, Turning turning, double target, double axial)
{
    /// <summary>The effect of a number of turns, or null where turning does not change the length.</summary>
    public TurnEffect? Of(double turns)
    {
        if (!turning.Adjusts)
        {
            return null;
        }

        double change = rod.Length(axial + turns * Math.Abs(turning.AxialPerTurn)) - target;
        Length lengthened = Length.FromMillimeters(target + change);
        Angle? before = ToeAt(Length.FromMillimeters(target));
        Angle? after = ToeAt(lengthened);
        Angle? toe = after - before;
        Length? atPlates = request.Plates is { } plates && before is { } from && after is { } to
            ? Toe.AtPlates(to, plates) - Toe.AtPlates(from, plates)
            : null;
        return new TurnEffect(Length.FromMillimeters(change), toe, atPlates);
    }

    private Angle? ToeAt(Length length) => request.Steering is { } steering ? Toe.FromLength(steering, length).Toe : null;
}
