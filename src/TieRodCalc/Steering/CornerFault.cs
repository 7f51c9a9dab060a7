namespace TieRodCalc.Steering;

/// <summary>Why points are none of a corner.</summary>
public enum CornerFault
{
    /// <summary>The two points of the lower arm's axis are the same.</summary>
    LowerAxisIsAPoint,

    /// <summary>The two points of the upper arm's axis are the same.</summary>
    UpperAxisIsAPoint,

    /// <summary>The lower ball joint lies on its arm's axis (nearer than 1 mm, our own choice).</summary>
    LowerBallOnAxis,

    /// <summary>The upper ball joint lies on its arm's axis (nearer than 1 mm, our own choice).</summary>
    UpperBallOnAxis,

    /// <summary>The two ball joints are the same (nearer than 1 mm, our own choice).</summary>
    BallsMeet,

    /// <summary>The upper arm and the upright are in line: the next move of the corner is not determined.</summary>
    UprightInLine,

    /// <summary>The rod is in line with the steer axis: the wheel's toe is not determined.</summary>
    RodInLine,

    /// <summary>Raising the lower arm does not raise the wheel.</summary>
    WheelDoesNotRise,
}
