using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>A point of the car: x forward, y to the car's left, z up.</summary>
/// <param name="X">Forward.</param>
/// <param name="Y">To the left.</param>
/// <param name="Z">Up.</param>
public readonly record struct Point(Length X, Length Y, Length Z)
{
    internal Vector Millimeter => new(Millimeters.Of(X), Millimeters.Of(Y), Millimeters.Of(Z));

    /// <summary>Distance to another point.</summary>
    public Length DistanceTo(Point other) => Length.FromMillimeters((Millimeter - other.Millimeter).Norm);
}
