using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>Checks a rod that is made up already, by what can be measured on it.</summary>
public static class AsBuilt
{
    /// <summary>
    /// Insertion, engagement, room and verdict from thread showing, center to center, and the cut or a depth reading of each end.
    /// Outside measurements cannot show what was cut off inside: an end that may be cut is never taken as uncut.
    /// </summary>
    /// <param name="rod">The parts.</param>
    /// <param name="request">What is wanted of them.</param>
    /// <param name="readings">What was measured.</param>
    /// <exception cref="ArgumentException">
    /// As <see cref="RodPlanner.Plan"/>, or the measured length is not above <see cref="Rod.Offset"/>.
    /// </exception>
    public static BuiltRod Check(Rod rod, RodRequest request, BuiltReadings readings)
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(readings);
        return new BuiltCheck(rod, request, readings).Check();
    }
}
