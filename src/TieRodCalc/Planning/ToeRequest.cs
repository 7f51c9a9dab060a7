using TieRodCalc.Parts;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>Which rods make up a change of the total toe.</summary>
public enum ToeShare
{
    /// <summary>Each wheel goes to its own wanted toe: of a total, half of the change is each rod's.</summary>
    BothRods,

    /// <summary>The left rod alone makes up the whole change of the total; the right wheel stays.</summary>
    LeftOnly,

    /// <summary>The right rod alone makes up the whole change of the total; the left wheel stays.</summary>
    RightOnly,
}

/// <summary>A rod on the car, and the wheel that it turns.</summary>
public sealed record ToeRod
{
    /// <summary>The rod.</summary>
    public required Rod Rod { get; init; }

    /// <summary>
    /// What was wanted of the rod when it was planned. Its plan gives the cuts and the setting; a present length beside the target
    /// was reached from there by turning what is turned for toe: the sleeve, or an end off its pin.
    /// </summary>
    public required RodRequest Request { get; init; }

    /// <summary>The rod's length now, ball center to ball center: the measured toe belongs to it.</summary>
    public required Length Present { get; init; }

    /// <summary>Whether <see cref="Present"/> was measured; otherwise it is what was planned.</summary>
    public bool PresentMeasured { get; init; }

    /// <summary>What was measured on the rod beside its length, or null.</summary>
    public BuiltReadings? Built { get; init; }

    /// <summary>The wheel.</summary>
    public required SteeringGeometry Steering { get; init; }

    /// <summary>Camber of the wheel now, positive where it leans outward at the top.</summary>
    public Angle Camber { get; init; }
}

/// <summary>What shall be done about the toe of a car.</summary>
public sealed record ToeRequest
{
    /// <summary>Toe now.</summary>
    public required WheelToes Now { get; init; }

    /// <summary>Whether only the total was measured, so that each wheel is taken to stand at half of it.</summary>
    public bool OnlyTotalMeasured { get; init; }

    /// <summary>Whether one rod joins both wheels: the share then says which wheel it turns, and the steering holds the other.</summary>
    public bool OneRod { get; init; }

    /// <summary>Toe wanted.</summary>
    public required WheelToes Want { get; init; }

    /// <summary>Which rods make up the change.</summary>
    public ToeShare Share { get; init; }

    /// <summary>The rod of the left wheel; where it is not to be turned, it is held against its limits as it is, or null.</summary>
    public ToeRod? Left { get; init; }

    /// <summary>The rod of the right wheel; where it is not to be turned, it is held against its limits as it is, or null.</summary>
    public ToeRod? Right { get; init; }
}
