namespace TieRodCalc.Threads;

/// <summary>What was assumed or not checked of a thread or of a pair of them.</summary>
public enum ThreadWarningCode
{
    /// <summary>The tolerance class was not said; the usual one was taken.</summary>
    ClassAssumed,

    /// <summary>The pitch was not said; the coarse pitch was taken.</summary>
    CoarsePitchAssumed,

    /// <summary>No series of the standard has this diameter with this pitch.</summary>
    SpecialThread,

    /// <summary>The standard's tables of limits do not reach to this thread; its formulas were used.</summary>
    BeyondTables,

    /// <summary>The threads do not go together; what a pair needs was not computed.</summary>
    ThreadsDoNotMatch,

    /// <summary>The material of the female is not said; the rule for steel was taken.</summary>
    SteelAssumed,

    /// <summary>A tensile strength is not known: what strength asks for was not computed.</summary>
    StrengthNotChecked,

    /// <summary>At their loosest limits the threads do not meet, so that no strength can be computed.</summary>
    ThreadsMayNotMeet,

    /// <summary>The outside of the female is not known: dilation and bending were not counted.</summary>
    OutsideUnknown,

    /// <summary>The wall of the female is thinner than the method covers.</summary>
    SleeveTooThin,

    /// <summary>The female is slit, which the method does not cover.</summary>
    SleeveSlit,

    /// <summary>The bending of the weaker thread is outside the method.</summary>
    BendingBeyondRange,
}

/// <summary>A warning, with what its sentence needs.</summary>
/// <param name="Code">What it is about.</param>
/// <param name="Limits">The thread that it is about; in what is said of a pair, its male.</param>
/// <param name="Member">Whose strength is missing, null where both are; without meaning in other warnings.</param>
public sealed record ThreadWarning(ThreadWarningCode Code, ThreadLimits Limits, ThreadGender? Member = null);
