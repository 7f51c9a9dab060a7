using TieRodCalc.Parts;
using TieRodCalc.Threads;

namespace TieRodCalc.Rods;

/// <summary>What keeps two threads from going together.</summary>
[Flags]
public enum ThreadDifference
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>One is Unified, the other metric.</summary>
    Form = 1,

    /// <summary>The nominal diameters differ.</summary>
    Diameter = 2,

    /// <summary>The pitches differ.</summary>
    Pitch = 4,

    /// <summary>The hands differ.</summary>
    Hand = 8,
}

/// <summary>The part that a male end goes into.</summary>
public enum FemalePart
{
    /// <summary>The sleeve.</summary>
    Sleeve,

    /// <summary>The jam nut.</summary>
    JamNut,

    /// <summary>The outer end that carries the internal thread itself.</summary>
    Socket,
}

/// <summary>A male and a female thread of one rod that do not go together.</summary>
/// <param name="Side">The end of the rod.</param>
/// <param name="Female">Which part it is that differs from the end.</param>
/// <param name="MaleId">Id of the end.</param>
/// <param name="MaleThread">Its thread.</param>
/// <param name="FemaleId">Id of the sleeve, outer end or nut.</param>
/// <param name="FemaleThread">Its thread.</param>
/// <param name="Difference">Everything that differs.</param>
/// <param name="Fit">
/// What happens when they are turned together all the same, from their limits of size; null where the standard has no such
/// class for one of them.
/// </param>
public sealed record ThreadMismatch(
    RodSide Side,
    FemalePart Female,
    string MaleId,
    ThreadDesignation MaleThread,
    string FemaleId,
    ThreadDesignation FemaleThread,
    ThreadDifference Difference,
    ThreadFit? Fit);

/// <summary>A part whose own dimensions contradict each other.</summary>
/// <param name="PartId">Its id.</param>
/// <param name="Fault">What contradicts.</param>
public sealed record FaultyPart(string PartId, PartFault Fault);

/// <summary>Why parts cannot be made into a rod.</summary>
/// <param name="Mismatches">Threads that do not go together.</param>
/// <param name="PartFaults">Parts whose own dimensions contradict each other.</param>
/// <param name="ClockingMissing">True where both ends are bent and the angle between their offsets was not given.</param>
public sealed record RodFaults(
    IReadOnlyList<ThreadMismatch> Mismatches,
    IReadOnlyList<FaultyPart> PartFaults,
    bool ClockingMissing);
