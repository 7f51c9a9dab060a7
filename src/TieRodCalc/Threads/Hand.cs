namespace TieRodCalc.Threads;

/// <summary>Hand of a thread: which way a screw turns to go in.</summary>
public enum Hand
{
    /// <summary>Right-hand: clockwise goes in.</summary>
    Right,

    /// <summary>Left-hand: counterclockwise goes in.</summary>
    Left,
}
