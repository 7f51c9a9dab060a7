using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>Plans a rod: whether it can be made, what to cut, how to set it, and what limits it.</summary>
public static class RodPlanner
{
    /// <summary>
    /// Plans a rod at its nominal dimensions. The limits hold over the whole wanted adjustment, as it is reached by turning
    /// the sleeve alone; every answer is in closed form.
    /// </summary>
    /// <param name="rod">The parts.</param>
    /// <param name="request">What is wanted of them.</param>
    /// <exception cref="ArgumentException">
    /// A length of the request is negative or not finite, the mark grid is not above zero, or the shortest wanted length is
    /// not above <see cref="Rod.Offset"/>.
    /// </exception>
    public static RodPlan Plan(Rod rod, RodRequest request)
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(request);
        return new RodPlanning(rod, request).Plan();
    }
}
