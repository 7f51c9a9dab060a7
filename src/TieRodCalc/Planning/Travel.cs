using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>How far a rod adjusts one way by turning one part alone: the sleeve, or an end off its pin.</summary>
/// <param name="Length">How far, zero or more.</param>
/// <param name="Turns">Turns of that part, zero or more.</param>
/// <param name="EndsAt">The limit that ends it, or null where turning cannot adjust the rod at all.</param>
/// <param name="End">The end that the limit belongs to, or null.</param>
public sealed record Travel(Length Length, double Turns, Limit? EndsAt, RodSide? End)
{
    /// <summary>The travel from a setting to the first limit that is met on the way.</summary>
    internal static Travel Of(
        in RodDimensions rod, in Motion motion, double axial, Setting from, bool longer)
    {
        if (!motion.Adjusts)
        {
            return new Travel(Length.Zero, 0, null, null);
        }

        // Of limits that are met together the first one gives the name: inner end, outer end, tips.
        (double Axial, Limit Limit, RodSide? End) first = (double.PositiveInfinity, Limit.Tips, null);
        foreach (RodSide side in (ReadOnlySpan<RodSide>)[RodSide.Inner, RodSide.Outer])
        {
            double insertion = from[side];
            double inward = longer ? motion[side] : -motion[side];
            if (inward == 0)
            {
                continue;
            }

            (double room, Limit limit) = inward > 0
                ? RoomInward(rod, side, insertion, from.Cuts[side])
                : (insertion - rod[side].Least.At, rod[side].Least.Limit);
            first = Earlier(first, (room / Math.Abs(inward), limit, side));
        }

        if (!longer)
        {
            first = Earlier(first, (rod.Sleeve - rod.TipGap - from.Inner - from.Outer, Limit.Tips, null));
        }

        double reached = Math.Max(0, first.Axial);
        double length = Math.Abs(rod.Length(axial + (longer ? reached : -reached)) - rod.Length(axial));
        return new Travel(Length.FromMillimeters(length), reached / motion.AxialPerTurn, first.Limit, first.End);
    }

    private static (double Axial, Limit Limit, RodSide? End) Earlier(
        (double Axial, Limit Limit, RodSide? End) first, (double Axial, Limit Limit, RodSide? End) other) =>
        other.Axial < first.Axial - Millimeters.Negligible ? other : first with { Axial = Math.Min(first.Axial, other.Axial) };

    private static (double Room, Limit Limit) RoomInward(in RodDimensions rod, RodSide side, double insertion, double cut)
    {
        Bound deepest = rod.Deepest(side);
        double nutRoom = rod[side].NutRoom(insertion, cut);
        double boreRoom = deepest.At - insertion;
        return (Math.Min(nutRoom, boreRoom), nutRoom <= boreRoom + Millimeters.Negligible ? Limit.NutRoom : deepest.Limit);
    }
}
