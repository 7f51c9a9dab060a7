using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>Rod length and toe over turns from the present length; turns above zero lengthen.</summary>
/// <param name="Wheel">The wheel as it stands now.</param>
/// <param name="Offset">Distance of the ball centers at axial length zero.</param>
/// <param name="Axial">Axial length now.</param>
/// <param name="AxialPerTurn">What a turn adds to it.</param>
internal sealed record MoveCurve(SteeringGeometry Wheel, double Offset, double Axial, double AxialPerTurn)
{
    /// <summary>Length after so many turns, or null where the axial length would not be above zero.</summary>
    public double? LengthAt(double turns)
    {
        double axial = Axial + turns * AxialPerTurn;
        return axial > 0 ? Math.Sqrt(axial * axial + Offset * Offset) : null;
    }

    /// <summary>The turns to a length that is not below the offset.</summary>
    public double TurnsTo(double length) =>
        (Math.Sqrt(Math.Max(0, (length - Offset) * (length + Offset))) - Axial) / AxialPerTurn;

    /// <summary>Toe after so many turns, or null where there is none.</summary>
    public Angle? ToeAt(double turns) =>
        LengthAt(turns) is { } length ? Toe.FromLength(Wheel, Length.FromMillimeters(length)).Toe : null;
}
