using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>Toe of the two steered wheels, each against the car's center line, toe-in positive.</summary>
/// <param name="Left">Of the left wheel.</param>
/// <param name="Right">Of the right wheel.</param>
public readonly record struct WheelToes(Angle Left, Angle Right)
{
    /// <summary>The angle between the two wheels.</summary>
    public Angle Total => Left + Right;

    /// <summary>Of one wheel.</summary>
    public Angle this[CarSide side] => side == CarSide.Left ? Left : Right;

    /// <summary>Total toe as a length across a width <c>W</c>: <c>W (sin left + sin right)</c>, behind less in front.</summary>
    /// <param name="width">Width of the toe plates, or diameter of the tire.</param>
    public Length Across(Length width) => Toe.AtPlates(Left, width) + Toe.AtPlates(Right, width);

    /// <summary>The same with another toe of one wheel.</summary>
    public WheelToes With(CarSide side, Angle toe) => side == CarSide.Left ? this with { Left = toe } : this with { Right = toe };

    /// <summary>
    /// The toe that one wheel must have so that the total across any width is the wanted one, while the other wheel stays.
    /// </summary>
    /// <param name="side">The wheel that turns.</param>
    /// <param name="want">The wanted toes; what counts is the sum of their sines.</param>
    /// <returns>The toe, or null where no toe below 90 degrees does.</returns>
    public Angle? AloneFor(CarSide side, WheelToes want)
    {
        Angle stays = side == CarSide.Left ? Right : Left;
        double sine = Math.Sin(want.Left.Radians) + Math.Sin(want.Right.Radians) - Math.Sin(stays.Radians);
        return Math.Abs(sine) < 1 ? Angle.FromRadians(Math.Asin(sine)) : null;
    }
}
