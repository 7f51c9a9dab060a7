using TieRodCalc.Parts;
using TieRodCalc.Rods;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What a joint's strength follows from.</summary>
/// <param name="Male">The thread of the end.</param>
/// <param name="Sleeve">The material of the sleeve, or null.</param>
/// <param name="Pair">The pair of threads, or null where the standard has no such class for one of them.</param>
/// <param name="MaleTensile">Tensile strength of the end, or null.</param>
/// <param name="FemaleTensile">Tensile strength of the sleeve, or null.</param>
/// <param name="Wall">What is known of the sleeve's wall; where a clamp closes it, it is slit.</param>
internal readonly record struct JointMaterials(
    ThreadDesignation Male, Material? Sleeve, ThreadedPair? Pair, Pressure? MaleTensile, Pressure? FemaleTensile, FemaleWall Wall)
{
    /// <summary>Of a joint that the rod has. Nothing is known of the wall of a socket.</summary>
    public static JointMaterials Of(RodParts parts, RodSide side) =>
        Of(parts.EndAt(side), parts.HoleAt(side), parts.Female.Material, parts.Sleeve?.Outside);

    /// <summary>What keeps strength from being checked.</summary>
    public MissingStrength Missing => (MaleTensile is null ? MissingStrength.End : 0)
        | (FemaleTensile is null ? MissingStrength.Sleeve : 0)
        | (Pair is null ? MissingStrength.Limits : 0);

    public static JointMaterials Of(ThreadedEnd end, TappedHole hole, Material? female, Outside? outside)
    {
        bool slit = hole.Clamp is not null;
        return new(
            end.Thread,
            female,
            ThreadedPair.Of(end.Thread, hole.Thread),
            end.Info.Material?.TensileStrength,
            female?.TensileStrength,
            outside?.Wall(slit) ?? FemaleWall.Unknown with { Slit = slit });
    }
}
