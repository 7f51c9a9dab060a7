namespace TieRodCalc.Threads;

/// <summary>Whether a thread is cut on the outside or in a hole.</summary>
public enum ThreadGender
{
    /// <summary>External thread: the male end.</summary>
    External,

    /// <summary>Internal thread: sleeve, socket or nut.</summary>
    Internal,
}
