namespace TieRodCalc.Threads;

/// <summary>What the strength of a pair of threads leaves out.</summary>
[Flags]
public enum StrengthCaveats
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The outside of the female part is not known: its dilation and the bending of the threads were not counted.</summary>
    OutsideUnknown = 1,

    /// <summary>
    /// The wall of the female part is thinner than the method covers (width below 1.4 diameters). It was counted as if it were
    /// 1.4 diameters wide: the real need is greater, by how much is not known.
    /// </summary>
    SleeveTooThin = 2,

    /// <summary>The female part is slit, which the method does not cover: the real need is greater, by how much is not known.</summary>
    SleeveSlit = 4,

    /// <summary>
    /// One thread is so much stronger than the other that the bending of the weaker one is outside the method (<c>1/J</c> not
    /// between 0.4 and 2.2).
    /// </summary>
    BendingBeyondRange = 8,

    /// <summary>The standard's tables of limits do not reach to this thread; its formulas were used.</summary>
    BeyondTables = 16,
}
