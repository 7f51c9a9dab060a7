using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>A <see cref="Travel"/> in doubles.</summary>
/// <param name="Length">How far, millimeters, zero or more.</param>
/// <param name="Turns">Turns of the part that is turned, zero or more.</param>
/// <param name="EndsAt">The limit that ends it, or null where turning cannot adjust the rod at all.</param>
/// <param name="End">The end that the limit belongs to, or null.</param>
internal readonly record struct Way(double Length, double Turns, Limit? EndsAt, RodSide? End)
{
    /// <summary>The way from a setting to the first limit that is met.</summary>
    public static Way Of(in RodDimensions rod, in Motion motion, double axial, in Setting from, bool longer)
    {
        if (!motion.Adjusts)
        {
            return default;
        }

        // Of limits that are met together the first one gives the name: inner end, outer end, tips.
        (double Axial, Limit Limit, RodSide? End) first = (double.PositiveInfinity, Limit.Tips, null);
        for (RodSide side = RodSide.Inner; side <= RodSide.Outer; side++)
        {
            double insertion = from[side];
            double inward = longer ? motion[side] : -motion[side];
            if (inward == 0)
            {
                continue;
            }

            Bound room = inward > 0 ? RoomInward(rod, side, insertion, from.Cuts[side]) : RoomOutward(rod[side].Least, insertion);
            first = Earlier(first, (room.At / Math.Abs(inward), room.Limit, side));
        }

        if (!longer)
        {
            first = Earlier(first, (rod.Sleeve - rod.TipGap - from.Inner - from.Outer, Limit.Tips, null));
        }

        double reached = Math.Max(0, first.Axial);
        double length = Math.Abs(rod.Length(axial + (longer ? reached : -reached)) - rod.Length(axial));
        return new Way(length, reached / motion.AxialPerTurn, first.Limit, first.End);
    }

    private static (double Axial, Limit Limit, RodSide? End) Earlier(
        (double Axial, Limit Limit, RodSide? End) first, (double Axial, Limit Limit, RodSide? End) other) =>
        other.Axial < first.Axial - Millimeters.Negligible ? other : first with { Axial = Math.Min(first.Axial, other.Axial) };

    private static Bound RoomOutward(Bound least, double insertion) => least with { At = insertion - least.At };

    private static Bound RoomInward(in RodDimensions rod, RodSide side, double insertion, double cut)
    {
        Bound deepest = rod.Deepest(side);
        double nutRoom = rod[side].NutRoom(insertion, cut);
        double boreRoom = deepest.At - insertion;
        return new(Math.Min(nutRoom, boreRoom), nutRoom <= boreRoom + Millimeters.Negligible ? Limit.NutRoom : deepest.Limit);
    }
}
