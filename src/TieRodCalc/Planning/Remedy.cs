using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>One thing that can be changed about a rod that cannot be built.</summary>
public enum ChangeKind
{
    /// <summary>Cut an end further than the part is said to allow.</summary>
    Cut,

    /// <summary>A shorter sleeve, its threads as deep as before.</summary>
    ShorterSleeve,

    /// <summary>A longer sleeve, its threads as deep as before.</summary>
    LongerSleeve,

    /// <summary>An outer end with a socket whose ball center is nearer to the face.</summary>
    ShorterOuterEnd,

    /// <summary>An outer end with a socket whose ball center is further from the face.</summary>
    LongerOuterEnd,

    /// <summary>Chase the thread of an end further up its shank.</summary>
    Chase,

    /// <summary>Accept less adjustment toward shorter.</summary>
    LessShorter,

    /// <summary>Accept less adjustment toward longer.</summary>
    LessLonger,

    /// <summary>Accept less adjustment, as much less each way.</summary>
    LessAdjustment,

    /// <summary>A shorter rod.</summary>
    ShorterTarget,

    /// <summary>A longer rod.</summary>
    LongerTarget,

    /// <summary>Accept less engagement at a joint.</summary>
    LessEngagement,

    /// <summary>Leave out a jam nut; the joint is then not locked by it.</summary>
    NoNut,
}

/// <summary>A change with its size.</summary>
/// <param name="Kind">What is changed.</param>
/// <param name="End">At which end; null where it belongs to the whole rod.</param>
/// <param name="By">By how much at least; the thickness of a nut that is left out.</param>
/// <param name="To">
/// What it becomes: the most that is cut off the end, the length of the sleeve, ball center to face, the length of thread, the
/// adjustment, the target or the required engagement; zero for a nut that is left out.
/// </param>
public sealed record RodChange(ChangeKind Kind, RodSide? End, Length By, Length To);

/// <summary>A change, or two together, that makes a rod buildable, each of the least size that does.</summary>
/// <param name="Changes">One change, or two where no single one is enough.</param>
/// <param name="Binding">The limit that keeps a smaller change from being enough, or null where it is that the rod cannot adjust.</param>
/// <param name="Rod">The changed rod.</param>
/// <param name="Request">What is wanted of it then.</param>
/// <param name="Plan">Its plan, solved anew.</param>
public sealed record Remedy(IReadOnlyList<RodChange> Changes, BindingLimit? Binding, Rod Rod, RodRequest Request, RodPlan Plan)
{
    /// <summary>What the changes add up to.</summary>
    public Length Size => Length.FromMillimeters(Changes.Sum(change => Millimeters.Of(change.By)));

    /// <summary>Whether a jam nut is left out: a last resort.</summary>
    public bool LeavesOutNut => Changes.Any(change => change.Kind == ChangeKind.NoNut);
}
