namespace TieRodCalc.Steering;

/// <summary>A side of the car, seen in the direction of travel.</summary>
public enum CarSide
{
    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,
}

/// <summary>Where the outer joint stands against the axle.</summary>
public enum JointPlace
{
    /// <summary>Behind the axle: a longer rod gives toe-in.</summary>
    BehindAxle,

    /// <summary>Ahead of the axle: a longer rod gives toe-out.</summary>
    AheadOfAxle,
}
