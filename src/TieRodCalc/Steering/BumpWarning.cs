using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>What the reading of bump sheets warns of, or cannot tell.</summary>
public enum BumpWarningCode
{
    /// <summary>Fewer than two readings: slope and curvature cannot be told apart.</summary>
    TooFewReadings,

    /// <summary>Two readings: two terms go through them exactly, and nothing checks them.</summary>
    NothingToCheckBy,

    /// <summary>All readings are on one side of ride height.</summary>
    OneSided,

    /// <summary>The resolution of the indicators was not said: no uncertainty is told.</summary>
    ResolutionNotGiven,

    /// <summary>The readings lie further from a smooth curve than the indicators explain. Value: by how much, at the gauge.</summary>
    ReadingsScatter,

    /// <summary>
    /// The two terms leave more than half of the readings' toe: height and length do not explain them. Value: what is left, root of the
    /// mean square at the gauge.
    /// </summary>
    TwoTermsMiss,

    /// <summary>The height's change cannot be told from none. Value: its uncertainty.</summary>
    HeightNotTold,

    /// <summary>The length's change cannot be told from none. Value: its uncertainty.</summary>
    LengthNotTold,

    /// <summary>No rod of a finite length swings as the outer joint goes.</summary>
    NoLengthDoes,

    /// <summary>The change is more than a quarter of the rod: further than two terms can be trusted.</summary>
    FarChange,

    /// <summary>The wheel's steering or its rod is not known: no advice.</summary>
    WheelNotGiven,

    /// <summary>The rod is in line with the steer axis: no advice.</summary>
    RodInLine,

    /// <summary>Two sheets contradict each other and the change between them. Sheet: the number of the first, from 1.</summary>
    SheetsContradict,

    /// <summary>The same, and they would not, had the indicators of the second sheet grown the other way.</summary>
    SheetsContradictSense,

    /// <summary>What the limits hold for is a gauge of about a wheel's width, and this one is not. Value: its spacing.</summary>
    GaugeUnusual,
}

/// <summary>A warning of bump sheets.</summary>
/// <param name="Code">What it is about.</param>
/// <param name="Value">A length, or null; its meaning is said at the code.</param>
/// <param name="Sheet">The number of a sheet, from 1, or null.</param>
public sealed record BumpWarning(BumpWarningCode Code, Length? Value = null, int? Sheet = null);
