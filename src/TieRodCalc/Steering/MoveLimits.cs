using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>How far something may be moved one way and the other; zero or more each.</summary>
/// <param name="Less">Down, or shorter.</param>
/// <param name="More">Up, or longer.</param>
public readonly record struct MoveRange(Length Less, Length More)
{
    /// <summary>As far one way as the other.</summary>
    public static MoveRange EachWay(Length most) => new(most, most);
}

/// <summary>How far the joints of a rod may be moved.</summary>
/// <param name="Outer">The outer joint, down and up.</param>
/// <param name="Inner">The inner joint, down and up.</param>
/// <param name="Rod">The inner joint along the rod: the rod shorter and longer.</param>
public sealed record MoveLimits(MoveRange Outer, MoveRange Inner, MoveRange Rod)
{
    /// <summary>
    /// What is taken where nothing is said: the outer joint 25 mm, the rod 50 mm each way, the inner joint's height kept. Our
    /// own choice.
    /// </summary>
    public static MoveLimits Usual { get; } =
        new(MoveRange.EachWay(Length.FromMillimeters(25)), default, MoveRange.EachWay(Length.FromMillimeters(50)));
}
