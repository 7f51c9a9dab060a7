using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>Toe of a car's two steered wheels as it is measured or wanted: the total of both, or that of each.</summary>
public sealed record CarToe
{
    private CarToe(ToeReading? total, ToeReading? left, ToeReading? right) => (Total, Left, Right) = (total, left, right);

    /// <summary>The total of both wheels, or null where each was given.</summary>
    public ToeReading? Total { get; }

    /// <summary>That of the left wheel, or null where the total was given.</summary>
    public ToeReading? Left { get; }

    /// <summary>That of the right wheel, or null where the total was given.</summary>
    public ToeReading? Right { get; }

    /// <summary>The readings: the total, or left and right.</summary>
    public IReadOnlyList<ToeReading> Readings => Total is { } total ? [total] : [Left!, Right!];

    /// <summary>The total of both wheels.</summary>
    public static CarToe OfTotal(ToeReading total)
    {
        ArgumentNullException.ThrowIfNull(total);
        return new(total, null, null);
    }

    /// <summary>That of each wheel.</summary>
    public static CarToe OfEach(ToeReading left, ToeReading right)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        return new(null, left, right);
    }

    /// <summary>Toe of each wheel as an angle; of a total each wheel takes half.</summary>
    /// <param name="width">The width that lengths are measured across, above zero, or null where no toe is a length.</param>
    /// <returns>The angles, or null where a length is beyond the width, or there is no width for it.</returns>
    public WheelToes? ToWheels(Length? width)
    {
        Angle? left = (Total ?? Left)!.OfWheel(width, Total is null ? 1 : 2);
        Angle? right = (Total ?? Right)!.OfWheel(width, Total is null ? 1 : 2);
        return left is { } one && right is { } other ? new WheelToes(one, other) : null;
    }
}
