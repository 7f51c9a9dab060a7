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
    internal static Travel Of(in RodDimensions rod, in Motion motion, double axial, in Setting from, bool longer) =>
        Of(Way.Of(rod, motion, axial, from, longer));

    internal static Travel Of(in Way way) => new(Length.FromMillimeters(way.Length), way.Turns, way.EndsAt, way.End);
}
