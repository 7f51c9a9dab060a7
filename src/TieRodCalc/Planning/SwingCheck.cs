using TieRodCalc.Parts;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>The swing of the joint at one end of a rod over travel and steering, held against what it allows.</summary>
/// <param name="End">The end.</param>
/// <param name="Allowed">What the joint allows each way.</param>
/// <param name="StudKnown">Whether its end says how the stud stands; without that the swing is not known.</param>
/// <param name="Most">The greatest swing and where; null where it is not known, or the corner does not reach everywhere.</param>
public sealed record SwingCheck(RodSide End, Angle Allowed, bool StudKnown, JointSwing? Most)
{
    /// <summary>How small an angle counts as none, degrees.</summary>
    private const double Negligible = 1e-6;

    /// <summary>By how much the swing is more than allowed; zero where it is not, null where it is not known.</summary>
    public Angle? MissedBy => Most is { } most
        ? Angle.FromDegrees(Holds ? 0 : most.Most.Degrees - Allowed.Degrees)
        : null;

    /// <summary>Whether the joint is known to stay inside what it allows.</summary>
    public bool Holds => Most is { } most && most.Most.Degrees <= Allowed.Degrees + Negligible;

    /// <summary>Whether the joint stays inside what it allows, or cannot be checked for want of its stud's direction.</summary>
    public bool Passes => Holds || !StudKnown;

    /// <summary>Whether the joint is known to run out of what it allows.</summary>
    public bool RunsOut => Most is not null && !Holds;

    /// <summary>Checks the joints of a rod whose ends say what they allow.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="corner">The corner that it works on.</param>
    /// <param name="range">Travel and steering.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static IReadOnlyList<SwingCheck> Of(Rod rod, CornerGeometry corner, SwingRange range)
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(corner);
        ArgumentNullException.ThrowIfNull(range);
        RodParts parts = rod.Parts;
        (RodSide End, Angle? Swing, StudDirection? Stud)[] ends =
        [
            (RodSide.Inner, parts.Inner.Swing, parts.Inner.Stud),
            (RodSide.Outer, parts.Outer?.Swing ?? parts.Socket?.Swing, parts.Outer?.Stud ?? parts.Socket?.Stud),
        ];
        return
        [
            .. from end in ends
               where end.Swing is not null
               select new SwingCheck(end.End, end.Swing!.Value, end.Stud is not null, end.Stud is not { } stud ? null
                   : end.End == RodSide.Inner ? Swings.OfInner(corner, AxisOf(stud), range)
                   : Swings.OfOuter(corner, AxisOf(stud), range)),
        ];
    }

    private static StudAxis AxisOf(StudDirection stud) => stud switch
    {
        StudDirection.Vertical => StudAxis.Vertical,
        StudDirection.AlongAxle => StudAxis.AlongAxle,
        StudDirection.AlongCar => StudAxis.AlongCar,
        _ => throw new ArgumentOutOfRangeException(nameof(stud)),
    };
}
