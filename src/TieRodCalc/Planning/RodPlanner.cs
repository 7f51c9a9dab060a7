using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>Plans a rod.</summary>
public static class RodPlanner
{
    /// <summary>Plans a rod.</summary>
    public static RodPlan Plan(Rod rod, RodRequest request) => throw new NotImplementedException();
}
